"""Where a slab is best gripped to be lifted, and where a rail is clamped across its openings."""

from __future__ import annotations

from typing import Final

from shapely.geometry import Polygon

from ledgerstone import plane
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength._holding import BEST_LIFT, Holding

# Of concrete beyond the opening, each way: common practice, no source.
_RAIL_HOLDS_MM: Final = 200.0
_FROM_THE_EDGE_MM: Final = 20.0  # where a rail ends at the latest; common practice, no source


def best_grips_mm(outline: Polygon) -> tuple[XY, bool]:
    """Return the two best places along a slab's long side to lift it, mm, and whether that is y.

    The centre of its area is between them in any plan.

    Source
    ------
    At ``(sqrt(2) - 1) / 2`` of the length from each end the moments over the grips and between
    them are equal: strength of materials; methods §1.6.
    """
    held = Holding(outline)
    return held.places_mm(BEST_LIFT), held.along_y


def rail_of(shape: Shape, *, along_y: bool) -> tuple[XY, XY]:
    """Return the ends of a rail across all openings, plane mm, along the long side.

    It runs through the middle of the largest, and onto the concrete beyond the outermost as far as
    a clamp needs, where there is enough.

    Source
    ------
    Common practice, no source.
    """
    openings = [opening.polygon for opening in shape.openings if not opening.polygon.is_empty]
    largest = max(openings, key=lambda opening: opening.area)
    x0, y0, x1, y1 = plane.union(openings).bounds
    a, b, c, d = shape.outline.bounds
    x, y = largest.centroid.x, largest.centroid.y
    if along_y:
        low, high = _beyond(y0, y1, (b, d))
        return (x, low), (x, high)
    low, high = _beyond(x0, x1, (a, c))
    return (low, y), (high, y)


def _beyond(low_mm: float, high_mm: float, slab_mm: XY) -> XY:
    """Ends of a rail that holds beyond openings from low to high, as far as the slab goes."""
    first, last = slab_mm[0] + _FROM_THE_EDGE_MM, slab_mm[1] - _FROM_THE_EDGE_MM
    return max(first, low_mm - _RAIL_HOLDS_MM), min(last, high_mm + _RAIL_HOLDS_MM)
