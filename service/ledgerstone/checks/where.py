"""Names of places on a slab, such as a corner or beside a cut-out."""

from __future__ import annotations

from shapely.geometry import Point

from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape
from ledgerstone.wording import Message, cutout_name

_BESIDE_MM = 150.0  # a place so near to an opening is named by it: our own choice
_NAMED_STRIP_MM = 150.0  # a wider one is no strip
_NEAR = 0.2  # of the way across: an end, an edge
_MIDDLE = 0.4  # within a tenth of the middle: our own choice
_STEP_MM = 10.0  # a place is said to the centimetre


def spot(slab: Slab, shape: Shape, xy: XY) -> Message:
    """Name a place: beside a cut-out, at a corner, at an edge, or in the middle."""
    point = Point(xy)
    near = [(o.polygon.distance(point), o.index) for o in shape.openings if not o.polygon.is_empty]
    distance, index = min(near, default=(float("inf"), -1))
    if distance <= _BESIDE_MM:
        return _beside(slab, shape, index)
    return _region(slab, shape, xy)


def _beside(slab: Slab, shape: Shape, index: int) -> Message:
    """Return a place beside an opening, with the width of its narrowest strip if that is narrow."""
    widths = [s.width_mm for s in shape.strips if index in (s.opening, s.faces)]
    narrowest = min(widths, default=float("inf"))
    cutout = cutout_name(slab, index)
    if not 1.0 <= narrowest <= _NAMED_STRIP_MM:
        return Message("spot-beside", cutout=cutout)
    width: Length = slab.thickness.like(narrowest, "down")
    return Message("spot-beside-narrow", cutout=cutout, width=width)


def _region(slab: Slab, shape: Shape, xy: XY) -> Message:
    """A corner, an end, an edge or the middle; elsewhere how far in from the left and the front."""
    x0, y0, x1, y1 = shape.outline.bounds
    across, deep = (xy[0] - x0) / (x1 - x0), (xy[1] - y0) / (y1 - y0)
    side = "left" if across < _NEAR else "right" if across > 1.0 - _NEAR else ""
    row = "front" if deep < _NEAR else "back" if deep > 1.0 - _NEAR else ""
    if side and row:
        return Message("spot-corner", corner=f"{row}-{side}")
    middle = _MIDDLE < across < 1.0 - _MIDDLE
    if row and middle:
        return Message("spot-middle-of-edge", row=row)
    if side:
        return Message("spot-end", side=side)
    if middle and _MIDDLE < deep < 1.0 - _MIDDLE:
        return Message("spot-middle")
    left, front = (slab.thickness.like(_rounded(mm)) for mm in (xy[0] - x0, xy[1] - y0))
    if row:
        return Message("spot-edge", row=row, left=left)
    return Message("spot-inside", left=left, front=front)


def _rounded(mm: float) -> float:
    return round(mm / _STEP_MM) * _STEP_MM
