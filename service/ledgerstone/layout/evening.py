"""Openings moved apart until the strips on both sides of each are alike, as far as they can be."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import replace
from typing import Final, Literal

from ledgerstone.layout.runs import Run
from ledgerstone.outline import XY
from ledgerstone.siting import PlacedOpening

_ROUNDS: Final = 12  # three in a row are alike to 1 mm then
PlanAxis = Literal["x", "y"]


def evened(run: Run, placed: Mapping[int, PlacedOpening], moving: Collection[int]) -> dict[int, XY]:
    """Move openings into the middle of what is free about each, from front to back and along.

    Parameters
    ----------
    placed
        All openings, by number, clear of each other.
    moving
        The openings that may move.

    Returns
    -------
    The middle of each of the openings, mm, by number.

    Source
    ------
    Our own choice: of two strips between the same openings the narrower one cracks first.
    """
    at = dict(placed)
    for _ in range(_ROUNDS):
        for k in moving:
            for axis in ("y", "x"):
                at[k] = _centred(run, at[k], [at[j] for j in at if j != k], axis)
    return {k: (opening.x_mm, opening.y_mm) for k, opening in at.items()}


def _centred(
    run: Run, opening: PlacedOpening, others: Collection[PlacedOpening], axis: PlanAxis
) -> PlacedOpening:
    """Return an opening in the middle between its neighbours, or the run's ends, on an axis."""
    across: PlanAxis = "x" if axis == "y" else "y"
    start, end = (run.left_mm, run.right_mm) if axis == "x" else (run.front_mm, run.back_mm)
    low, high = _span(opening, axis)
    for other in others:
        (a, b), (c, d) = _span(opening, across), _span(other, across)
        if c < b and a < d:
            other_low, other_high = _span(other, axis)
            start = max(start, other_high) if other_high <= low else start
            end = min(end, other_low) if other_low >= high else end
    middle = (start + end) / 2
    return replace(opening, x_mm=middle) if axis == "x" else replace(opening, y_mm=middle)


def _span(opening: PlacedOpening, axis: PlanAxis) -> tuple[float, float]:
    middle, size = (
        (opening.x_mm, opening.length_mm) if axis == "x" else (opening.y_mm, opening.width_mm)
    )
    return middle - size / 2, middle + size / 2
