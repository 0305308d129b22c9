"""Places on a slab in the customer's words."""

from __future__ import annotations

from shapely.geometry import Point

from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape
from ledgerstone.wording import cutout_words

_BESIDE_MM = 150.0
_NAMED_STRIP_MM = 150.0
_NEAR = 0.2  # of the way across: an end, an edge
_MIDDLE = 0.4
_STEP_MM = 10.0


def spot_words(slab: Slab, shape: Shape, xy: XY) -> str:
    """Say where a place is: beside a cut-out, at a corner, at an edge, or in the middle."""
    point = Point(xy)
    near = [(o.polygon.distance(point), o.index) for o in shape.openings if not o.polygon.is_empty]
    distance, index = min(near, default=(float("inf"), -1))
    if distance <= _BESIDE_MM:
        return f"beside {cutout_words(slab, index)}{_strip_there(slab, shape, index)}"
    return _region(slab, shape, xy)


def _strip_there(slab: Slab, shape: Shape, index: int) -> str:
    """How wide the narrowest strip beside an opening is, where it is narrow enough to matter."""
    mine = [s.width_mm for s in shape.strips if index in (s.opening, s.faces)]
    narrowest = min(mine, default=float("inf"))
    if not 1.0 <= narrowest <= _NAMED_STRIP_MM:
        return ""
    width: Length = slab.thickness.like(narrowest, "down")
    return f" (the concrete there is {width} wide)"


def _region(slab: Slab, shape: Shape, xy: XY) -> str:
    """A corner, an end, an edge or the middle; elsewhere how far in from the left and the front."""
    x0, y0, x1, y1 = shape.outline.bounds
    across, deep = (xy[0] - x0) / (x1 - x0), (xy[1] - y0) / (y1 - y0)
    side = "left" if across < _NEAR else "right" if across > 1.0 - _NEAR else ""
    row = "front" if deep < _NEAR else "back" if deep > 1.0 - _NEAR else ""
    if side and row:
        return f"near the {row} {side} corner"
    middle = _MIDDLE < across < 1.0 - _MIDDLE
    if row and middle:
        return f"at the middle of the {row} edge"
    if side:
        return f"near the {side} end"
    if middle and _MIDDLE < deep < 1.0 - _MIDDLE:
        return "in the middle"
    left, front = (slab.thickness.like(_rounded(mm)) for mm in (xy[0] - x0, xy[1] - y0))
    if row:
        return f"at the {row} edge, about {left} from the left"
    return f"about {left} from the left and {front} from the front"


def _rounded(mm: float) -> float:
    return round(mm / _STEP_MM) * _STEP_MM
