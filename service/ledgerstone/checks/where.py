"""Places on a slab in the customer's words."""

from __future__ import annotations

from shapely.geometry import Point

from ledgerstone.checks.finding import cutout_words
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape

_BESIDE_MM = 150.0
_NAMED_STRIP_MM = 150.0


def spot_words(slab: Slab, shape: Shape, xy: XY) -> str:
    """Say where a place is: beside a cut-out, at a corner, at an edge, or in the middle."""
    point = Point(xy)
    near = [(o.polygon.distance(point), o.index) for o in shape.openings if not o.polygon.is_empty]
    distance, index = min(near, default=(float("inf"), -1))
    if distance <= _BESIDE_MM:
        return f"beside {cutout_words(slab, index)}{_strip_there(slab, shape, index)}"
    return _region(shape, xy)


def _strip_there(slab: Slab, shape: Shape, index: int) -> str:
    """How wide the narrowest strip beside an opening is, where it is narrow enough to matter."""
    mine = [s.width_mm for s in shape.strips if index in (s.opening, s.faces)]
    narrowest = min(mine, default=float("inf"))
    if not 1.0 <= narrowest <= _NAMED_STRIP_MM:
        return ""
    width: Length = slab.thickness.like(narrowest, "down")
    return f" (the concrete there is {width} wide)"


def _region(shape: Shape, xy: XY) -> str:
    x0, y0, x1, y1 = shape.outline.bounds
    across, deep = (xy[0] - x0) / (x1 - x0), (xy[1] - y0) / (y1 - y0)
    side = "left" if across < 0.2 else "right" if across > 0.8 else ""
    row = "front" if deep < 0.2 else "back" if deep > 0.8 else ""
    if side and row:
        return f"near the {row} {side} corner"
    if row:
        return f"at the {row} edge"
    if side:
        return f"near the {side} end"
    return "in the middle"
