"""Movements in the customer's words: all of one slab in one sentence."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from ledgerstone.order import Point
from ledgerstone.outline import XY

_SEEN_MM = 0.05
_LONGEST = 230
_WAYS = (("to the left", "to the right"), ("towards the front", "towards the back"))


def moves_sentence(moves: Sequence[tuple[str, str]], on: str = "") -> Iterator[str]:
    """Say all movements in one sentence, what moves alike together; in more where it gets long.

    ``on`` names the slab where what moves does not say which one it is on.
    """
    by_step: dict[str, list[str]] = {}
    for name, step in moves:
        if step:
            by_step.setdefault(step, []).append(name)
    told = [f"{listed_all(names)} {step}" for step, names in by_step.items()]
    begin, said = (f"On {on}, move" if on else "Move"), ""
    for one in told:
        if said and len(f"{begin} {said}; {one}.") > _LONGEST:
            yield f"{begin} {said}."
            said = ""
        said = f"{said}; {one}" if said else one
    if said:
        yield f"{begin} {said}."


def listed_all(names: Sequence[str]) -> str:
    """Name every one of several things."""
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"


def step_words(was: Point, now: Point, from_mm: XY) -> str:
    """Say how far and which way a place moved; the new one is told from a corner of its own."""
    steps = []
    for k, (old, new) in enumerate(((was.x, now.x), (was.y, now.y))):
        by = new.exact_mm - old.exact_mm + old.in_unit(from_mm[k]).exact_mm
        if abs(by) >= _SEEN_MM:
            steps.append(f"{replace(old.in_unit(0.0), exact_mm=abs(by))} {_WAYS[k][by > 0]}")
    return " and ".join(steps)
