"""Polygons that are ovals: described by length and width, not by their many sides."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.order import Point

_FEWEST: Final = 16  # corners of what is drawn as a curve
_NEAR: Final = 0.02  # of the ellipse's equation: corners are given to 0.1 mm


def over_all_mm(points: Sequence[Point]) -> tuple[float, float]:
    """Return how long and how wide a ring of corners is, mm."""
    across, along = [point.x.mm for point in points], [point.y.mm for point in points]
    return max(across) - min(across), max(along) - min(along)


def is_oval(points: Sequence[Point]) -> bool:
    """Return whether many corners lie on one ellipse along the slab's sides.

    Source
    ------
    ``(x / a)² + (y / b)² = 1`` about the middle.
    """
    a, b = (size / 2 for size in over_all_mm(points))
    if len(points) < _FEWEST or not a or not b:
        return False
    x, y = min(p.x.mm for p in points) + a, min(p.y.mm for p in points) + b
    return all(abs(((p.x.mm - x) / a) ** 2 + ((p.y.mm - y) / b) ** 2 - 1) <= _NEAR for p in points)
