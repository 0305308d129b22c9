"""Movements as messages: all of one slab in one sentence."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.order import Point
from ledgerstone.outline import XY
from ledgerstone.wording import Listed, Message

Steps = tuple[Message, ...]
_SEEN_MM = 0.05
# A sentence of movements stays within what is read at once: each name and each step has its share.
_LONGEST: Final = 9
_WAYS: Final = (("left", "right"), ("front", "back"))


def moves_messages(
    moves: Sequence[tuple[Message, Steps]], on: Message | None = None
) -> Iterator[Message]:
    """Say all movements in one sentence, what moves alike together; in more where it gets long.

    Parameters
    ----------
    on
        The slab, where what moves does not say which one it is on.
    """
    by_steps: dict[Steps, list[Message]] = {}
    for name, steps in moves:
        if steps:
            by_steps.setdefault(steps, []).append(name)
    told: list[Message] = []
    long = 0
    for steps, names in by_steps.items():
        if told and long + len(names) + len(steps) > _LONGEST:
            yield _moved(told, on)
            told, long = [], 0
        told.append(Message("move-each", things=Listed(tuple(names)), steps=Listed(steps)))
        long += len(names) + len(steps)
    if told:
        yield _moved(told, on)


def _moved(told: Sequence[Message], on: Message | None) -> Message:
    moves = Listed(tuple(told), joined="semicolon")
    return Message("move", moves=moves) if on is None else Message("move-on", slab=on, moves=moves)


def steps_between(was: Point, now: Point, from_mm: XY) -> Steps:
    """Say how far and which way a place moved; the new one is told from a corner of its own."""
    steps = []
    for k, (old, new) in enumerate(((was.x, now.x), (was.y, now.y))):
        by = new.exact_mm - old.exact_mm + old.in_unit(from_mm[k]).exact_mm
        if abs(by) >= _SEEN_MM:
            length = replace(old.in_unit(0.0), exact_mm=abs(by))
            steps.append(Message("move-step", by=length, way=_WAYS[k][by > 0]))
    return tuple(steps)
