"""Movements as messages: all of one slab in one sentence."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.order import Point
from ledgerstone.outline import XY
from ledgerstone.wording import Listed, Message

Steps = tuple[Message, ...]
_SEEN_MM = 0.05  # less is not said: half of the least digit
# A sentence of movements stays within what is read at once: each name and each step has its share.
_LONGEST: Final = 9
_WAYS: Final = (("left", "right"), ("front", "back"))


def moves_messages(
    moves: Sequence[tuple[Message, Steps]], on: Message | None = None
) -> Iterator[Message]:
    """State all movements in one sentence, what moves alike together; in more where it gets long.

    Parameters
    ----------
    on
        The slab, if the moved part's name does not include it.
    """
    by_steps: dict[Steps, list[Message]] = {}
    for name, steps in moves:
        if steps:
            by_steps.setdefault(steps, []).append(name)
    messages: list[Message] = []
    long = 0
    for steps, names in by_steps.items():
        if messages and long + len(names) + len(steps) > _LONGEST:
            yield _moved(messages, on)
            messages, long = [], 0
        messages.append(Message("move-each", things=Listed(tuple(names)), steps=Listed(steps)))
        long += len(names) + len(steps)
    if messages:
        yield _moved(messages, on)


def _moved(messages: Sequence[Message], on: Message | None) -> Message:
    moves = Listed(tuple(messages), joined="semicolon")
    return Message("move", moves=moves) if on is None else Message("move-on", slab=on, moves=moves)


def describe_steps(was: Point, now: Point, from_mm: XY) -> Steps:
    """State how far and which way a place moved; the new one is relative to its own corner."""
    steps = []
    for k, (old, new) in enumerate(((was.x, now.x), (was.y, now.y))):
        by = new.exact_mm - old.exact_mm + old.in_unit(from_mm[k]).exact_mm
        if abs(by) >= _SEEN_MM:
            length = replace(old.in_unit(0.0), exact_mm=abs(by))
            steps.append(Message("move-step", by=length, way=_WAYS[k][by > 0]))
    return tuple(steps)
