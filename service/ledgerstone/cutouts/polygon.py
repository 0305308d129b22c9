"""A cut-out with straight sides, given by its corners."""

from __future__ import annotations

from shapely.geometry import Polygon

from ledgerstone.cutouts.kind import CutoutKind
from ledgerstone.order import Cutout
from ledgerstone.outline import XY, largest_radius_mm, rounded


def _points_mm(cutout: Cutout) -> tuple[XY, ...]:
    return tuple((point.x.mm, point.y.mm) for point in cutout.points)


def _size_mm(cutout: Cutout) -> XY:
    xs, ys = zip(*_points_mm(cutout), strict=True)
    return max(xs) - min(xs), max(ys) - min(ys)


def _placed(cutout: Cutout, inside_radius_mm: float) -> tuple[Polygon, float]:
    points = _points_mm(cutout)
    usual = min(inside_radius_mm, largest_radius_mm(points))
    radius = cutout.corner_radius.mm if cutout.corner_radius is not None else usual
    if not Polygon(points).exterior.is_ccw:
        points = points[::-1]
    polygon, _, area = rounded(points, (radius,) * len(points), ("",) * len(points))
    return polygon, area


def _corner_radius_mm(cutout: Cutout, inside_radius_mm: float) -> float:
    return cutout.corner_radius.mm if cutout.corner_radius is not None else inside_radius_mm


POLYGON = CutoutKind(
    name="polygon",
    sizes=("points",),
    docstring="An opening with straight sides.",
    has_corners=True,
    size_mm=_size_mm,
    placed=_placed,
    corner_radius_mm=_corner_radius_mm,
)
