"""Where a slab is best gripped to be lifted."""

from __future__ import annotations

from shapely.geometry import Polygon

from ledgerstone.outline import XY
from ledgerstone.strength._holding import BEST_LIFT, Holding


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
