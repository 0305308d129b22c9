"""Cut-outs that have a length, a width and a centre."""

from __future__ import annotations

from shapely import affinity
from shapely.geometry import Polygon

from ledgerstone.order import Cutout
from ledgerstone.outline import XY, rounded


def centre_mm(cutout: Cutout) -> XY:
    """Return the centre of a cut-out."""
    return (cutout.centre.x.mm, cutout.centre.y.mm) if cutout.centre else (0.0, 0.0)


def boxed_size_mm(cutout: Cutout) -> XY:
    """Return the length and width in the order."""
    length, width = cutout.length, cutout.width
    return (length.mm if length else 0.0, width.mm if width else 0.0)


def placed_box(cutout: Cutout, radius_mm: float) -> tuple[Polygon, float]:
    """Place a box with rounded corners, turned about its centre; and its exact area, mm².

    Source
    ------
    Geometry: ``a b - (4 - π) r²``.
    """
    length, width = boxed_size_mm(cutout)
    corners = ((0.0, 0.0), (length, 0.0), (length, width), (0.0, width))
    radius = min(radius_mm, length / 2, width / 2)
    polygon, _, area = rounded(corners, (radius,) * 4, ("",) * 4)
    centre = centre_mm(cutout)
    placed = affinity.translate(polygon, centre[0] - length / 2, centre[1] - width / 2)
    return affinity.rotate(placed, cutout.turn_degrees, origin=centre), area
