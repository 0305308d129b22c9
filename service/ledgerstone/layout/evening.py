"""Openings moved apart until the strips about them are as alike as they can be."""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping, Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.layout.runs import Run
from ledgerstone.outline import XY
from ledgerstone.siting import PlacedOpening
from ledgerstone.strip_rules import clear_mm
from ledgerstone.workshop.records import StripRule

_STEPS_MM: Final = (40.0, 20.0, 10.0, 5.0)
_ROUNDS: Final = 20  # of one step, at most
_SHARPNESS: Final = 4  # the higher, the more the narrowest strip counts


def evened(
    run: Run,
    placed: Mapping[int, PlacedOpening],
    moving: Collection[int],
    rules: Sequence[StripRule],
) -> dict[int, XY]:
    """Move openings to where their strips, each by the width that it needs, are widest.

    Parameters
    ----------
    placed
        All openings, by number, clear of each other.
    moving
        The openings that may move.
    rules
        The workshop's strips.

    Returns
    -------
    The middle of each of the openings, mm, by number.

    Source
    ------
    Our own choice: the openings repel each other and the edges, step by step; of two strips
    between the same openings the narrower one cracks first.
    """
    at = dict(placed)
    for step_mm in _STEPS_MM:
        for _ in range(_ROUNDS):
            before = dict(at)
            for k in moving:
                at[k] = _widest_nearby(run, at, k, step_mm, rules)
            if at == before:
                break
    return {k: (opening.x_mm, opening.y_mm) for k, opening in at.items()}


def _widest_nearby(
    run: Run, at: Mapping[int, PlacedOpening], k: int, step_mm: float, rules: Sequence[StripRule]
) -> PlacedOpening:
    """Return an opening one step further where its strips are wider there, else as it is."""
    others = [at[j] for j in at if j != k]
    here = at[k]
    ways = ((step_mm, 0.0), (-step_mm, 0.0), (0.0, step_mm), (0.0, -step_mm))
    there = [replace(here, x_mm=here.x_mm + x, y_mm=here.y_mm + y) for x, y in ways]
    return min((here, *there), key=lambda opening: _crowding(run, opening, others, rules))


def _crowding(
    run: Run, opening: PlacedOpening, others: Sequence[PlacedOpening], rules: Sequence[StripRule]
) -> float:
    """Sum how narrow the strips about an opening are; without end where there is none."""
    half_x, half_y = opening.length_mm / 2, opening.width_mm / 2
    keep = _keep_mm(opening, rules)
    strips = [
        (keep, opening.x_mm - half_x - run.left_mm),
        (keep, run.right_mm - opening.x_mm - half_x),
        (keep, opening.y_mm - half_y - run.front_mm),
        (keep, run.back_mm - opening.y_mm - half_y),
        *((min(keep, _keep_mm(other, rules)), _between_mm(opening, other)) for other in others),
    ]
    if any(gap <= 0.0 for _, gap in strips):
        return math.inf
    return math.fsum((need / gap) ** _SHARPNESS for need, gap in strips)


def _keep_mm(opening: PlacedOpening, rules: Sequence[StripRule]) -> float:
    longer_mm = max(opening.length_mm, opening.width_mm)
    return clear_mm(rules, longer_mm, opening.rim, least=True)


def _between_mm(one: PlacedOpening, other: PlacedOpening) -> float:
    """Return the strip between two openings; a round one is its middle with its radius about it."""
    radii = sum(opening.length_mm / 2 for opening in (one, other) if opening.is_round)
    boxes = [
        (0.0, 0.0) if opening.is_round else (opening.length_mm / 2, opening.width_mm / 2)
        for opening in (one, other)
    ]
    x = abs(one.x_mm - other.x_mm) - boxes[0][0] - boxes[1][0]
    y = abs(one.y_mm - other.y_mm) - boxes[0][1] - boxes[1][1]
    return math.hypot(max(x, 0.0), max(y, 0.0)) - radii
