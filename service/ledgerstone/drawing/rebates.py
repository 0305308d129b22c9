"""Reliefs in the view: those sunk within the top, and rebates that step an edge down.

A slab with rebates is a stack: each level that a rebate lays bare is the flat top of all that
reaches no higher. Seen from above, a stack painted from its foot up hides what it should.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from shapely.geometry import LinearRing, MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from ledgerstone import plane
from ledgerstone.drawing import solid
from ledgerstone.drawing.arcs import curved_path
from ledgerstone.drawing.covering import back_to_front
from ledgerstone.drawing.frame import course_of, ring_points, simpler
from ledgerstone.drawing.painting import Paint, ribbon_path
from ledgerstone.drawing.scene import Scene
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.drawing.tint import depths, lit
from ledgerstone.order import Relief
from ledgerstone.shape import Shape

_MIN_MM2: Final = 1.0
_FLOOR: Final = 0.93  # a lower face's light, against the top's


@dataclass(frozen=True, slots=True)
class Shelf:
    """All that reaches up to one level below the top, flat there."""

    level_mm: float
    left: MultiPolygon


def sunk(scene: Scene) -> list[tuple[Polygon, Relief]]:
    """Return the reliefs that lie wholly within the concrete, anticlockwise."""
    return [
        (orient(polygon), relief)
        for relief, polygon in zip(scene.slab.reliefs, scene.shape.reliefs, strict=True)
        if scene.shape.net.contains_properly(polygon)
    ]


def _at_edges(scene: Scene) -> list[tuple[Polygon, float]]:
    """Return the reliefs that reach an edge or an opening, and their depths, mm."""
    net, thick = scene.shape.net, scene.shape.thickness_mm
    return [
        (polygon, min(relief.depth.mm, thick))
        for relief, polygon in zip(scene.slab.reliefs, scene.shape.reliefs, strict=True)
        if not net.contains_properly(polygon) and plane.intersection(polygon, net).area > _MIN_MM2
    ]


def shelves(scene: Scene) -> list[Shelf]:
    """Levels that rebates lay bare, the deepest first."""
    cut = _at_edges(scene)
    return [
        Shelf(
            -depth, _without(scene.shape.net, [polygon for polygon, other in cut if other > depth])
        )
        for depth in sorted({depth for _, depth in cut}, reverse=True)
        if depth < scene.shape.thickness_mm
    ]


def whole(scene: Scene) -> MultiPolygon:
    """Return the concrete whose top no rebate has taken."""
    return _without(scene.shape.net, [polygon for polygon, _ in _at_edges(scene)])


def untouched(concrete: BaseGeometry, shape: Shape) -> MultiPolygon:
    """Return the concrete whose top is as it was cast: no relief of any kind."""
    return _without(concrete, list(shape.reliefs))


def _without(concrete: BaseGeometry, cut: list[Polygon]) -> MultiPolygon:
    left = plane.difference(concrete, plane.union(cut)) if cut else concrete
    return MultiPolygon([piece for piece in plane.polygons_in(left) if piece.area > _MIN_MM2])


def draw_shelf(shelf: Shelf, foot_mm: float, scene: Scene, paint: Paint) -> list[SvgElement]:
    """Paint what stands from a foot up to a shelf, holes and all."""
    pieces = [orient(piece) for piece in shelf.left.geoms]
    drawn, ribbons, pose = [], [], scene.camera.pose
    for piece in pieces:
        courses = [course_of(simpler(ring, scene.fine_mm)) for ring in _rings(piece)]
        for hole in courses[1:]:
            points = [scene.camera.at(p[0], p[1], shelf.level_mm) for p in hole]
            path = path_of(points, places=1)
            drawn.append(element("path", d=path, fill=depths(scene.colour)))
            ribbons += solid.hanging(hole, shelf.level_mm, -scene.shape.thickness_mm, pose=pose)
        ribbons += solid.hanging(courses[0], shelf.level_mm, foot_mm, pose=pose)
    drawn += [ribbon_path(ribbon, scene, paint) for ribbon in back_to_front(ribbons, pose)]
    path = "".join(curved_path(ring_points(ring)) for piece in pieces for ring in _rings(piece))
    floor = element("path", d=path, fill=lit(scene.face, _FLOOR), fill_rule="evenodd")
    plane = scene.camera.plane(shelf.level_mm)
    return [*drawn, element("g", floor, transform=plane, data_part="shelf")]


def _rings(piece: Polygon) -> list[LinearRing]:
    return [piece.exterior, *piece.interiors]
