"""The slab's soft shadow on the floor: thin layers, each a little wider than the last."""

from __future__ import annotations

from typing import Final

import numpy as np
import shapely
from shapely import affinity
from shapely.geometry import LinearRing, Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.drawing.camera import Camera, behind, shadow_of
from ledgerstone.drawing.frame import course_of, simpler
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.shape import Shape

_FEW_LAYERS: Final = 8  # of a jagged outline, whose shadow is painted whole
_LAYERS: Final = 12  # enough that no step is seen; an image would cost the renderer more
_DARKEST: Final = 0.3
_FALL_MOST: Final = 0.12  # a shadow from high up is kept near, so that it stays in the picture
_MANY_POINTS: Final = 160  # points of an outline above which its hull throws the shadow
_FINE: Final = 1.0  # units that a shadow's edge may stray


def drop_of(shape: Shape, floor_mm: float) -> float:
    """How far a shadow falls, mm: less than the floor is below where that is far."""
    return min(-floor_mm, _FALL_MOST * max(shape.length_mm, shape.width_mm))


def shadow(shape: Shape, camera: Camera, floor_mm: float) -> list[SvgElement]:
    """Lay the shadow on the floor, but for most of what the slab hides: that is not painted."""
    drop, fine_mm = drop_of(shape, floor_mm), _FINE / camera.per_mm
    pieces = [(ring, _jagged(ring, fine_mm)) for ring in _rings_of(shape)]
    reach_mm = 0.016 * max(shape.length_mm, shape.width_mm) + 0.17 * drop
    cast = plane.union([_cast(*piece, drop, fine_mm) for piece in pieces])
    layers = _LAYERS if all(jagged is None for _, jagged in pieces) else _FEW_LAYERS
    reaches = reach_mm * np.linspace(1.0, -1.0, layers)
    soft = [plane.buffer(cast, float(mm), quad_segs=3).simplify(fine_mm) for mm in reaches]
    smooth = [ring for ring, jagged in pieces if jagged is None]
    hidden = plane.union([_hidden(ring, -floor_mm, fine_mm) for ring in smooth])
    opacity = f"{1 - (1 - _DARKEST) ** (1 / layers):.4f}"
    shown = soft if hidden.is_empty else [plane.difference(layer, hidden) for layer in soft]
    paths = (_path(layer, camera, floor_mm) for layer in shown)
    drawn = [element("path", d=path, fill_rule="evenodd") for path in paths if path]
    return [element("g", *drawn, fill="#000000", fill_opacity=opacity, data_part="shadow")]


def _rings_of(shape: Shape) -> list[LinearRing]:
    return [piece.exterior for piece in plane.polygons_in(shape.net)]


def _jagged(ring: LinearRing, fine_mm: float) -> shapely.Geometry | None:
    """Return an outline's course where it is too jagged to throw its own shadow.

    A smooth curve, however many its points, is not.
    """
    if shapely.get_num_points(ring) <= _MANY_POINTS:
        return None
    course = simpler(ring, fine_mm)
    return course if shapely.get_num_points(course) > _MANY_POINTS else None


def _hidden(ring: LinearRing, drop_mm: float, fine_mm: float) -> BaseGeometry:
    """Return where the floor lies behind a piece's top, well within it, in plane mm."""
    top = plane.buffer(Polygon(ring.simplify(fine_mm).coords), -9 * fine_mm, join_style="mitre")
    return affinity.translate(top.simplify(6 * fine_mm), *behind(drop_mm))


def _cast(
    ring: LinearRing, jagged: shapely.Geometry | None, drop_mm: float, fine_mm: float
) -> Polygon:
    """Return what one piece's outline throws on the floor, in plane mm."""
    if jagged is None:
        course = course_of(ring.simplify(fine_mm))
    else:
        course = course_of(simpler(shapely.boundary(shapely.convex_hull(jagged)), fine_mm))
    return Polygon([shadow_of((x, y), drop_mm) for x, y in course])


def _path(layer: BaseGeometry, camera: Camera, floor_mm: float) -> str:
    rings = [
        ring for piece in plane.polygons_in(layer) for ring in (piece.exterior, *piece.interiors)
    ]
    courses = (camera.all_at((x, y, floor_mm) for x, y in course_of(ring)) for ring in rings)
    return "".join(path_of(course, places=1) for course in courses)
