"""Where a person is tried on a slab: corners, overhangs, sides, beside openings, and a grid."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

import shapely
from shapely.geometry import MultiPolygon, Point, Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone.outline import XY
from ledgerstone.shape import Shape

MOST_PLACES = 32
MOST_STRIPS = 8
NEAR_A_CORNER_MM = 100.0


@dataclass(frozen=True, slots=True)
class Place:
    """One place for a load, and what kind: a free corner, an ordinary place, or a narrow strip."""

    xy: XY
    kind: Literal["free-corner", "anywhere", "strip"]


def load_places(shape: Shape, side_mm: float, rests: BaseGeometry) -> tuple[Place, ...]:
    """List where a person is tried, at least sixteen places on any slab with room for them.

    Every place keeps a square of ``side_mm`` on the slab where the slab is wide enough; the
    outline's corners and the middles and quarters of its sides, where overhangs have their tips,
    are always among them. A place out on an overhang by a corner counts as a free corner.

    Parameters
    ----------
    rests
        The hull of what carries the slab, in plane mm.
    """
    inset = shape.net.buffer(-side_mm / 2, join_style="mitre")
    room = shape.net if inset.is_empty else inset
    free = [Point(c) for c in shape.corners if rests.distance(Point(c)) > 1.0]
    wished = (*shape.corners, *_along_sides(shape), *_beside_openings(shape), *_grid(shape))
    places: list[Place] = []
    for xy in wished:
        near = _onto(room, xy)
        _add(places, near, _kind(Point(near), free, rests), side_mm)
    strips = [Place(xy, "strip") for xy in _narrow_strips(shape, side_mm)]
    return (*places[:MOST_PLACES], *strips[:MOST_STRIPS])


def _kind(
    place: Point, free: list[Point], rests: BaseGeometry
) -> Literal["free-corner", "anywhere"]:
    """A place out on an overhang, no further from its free corner than from the rests."""
    out = rests.distance(place)
    near = any(place.distance(corner) <= out + NEAR_A_CORNER_MM for corner in free)
    return "free-corner" if out > 1.0 and near else "anywhere"


def _add(
    places: list[Place], xy: XY, kind: Literal["free-corner", "anywhere"], side_mm: float
) -> None:
    if all(math.dist(xy, other.xy) > side_mm / 2 for other in places):
        places.append(Place(xy, kind))


def _onto(room: Polygon | MultiPolygon, xy: XY) -> XY:
    """The place in ``room`` nearest to a wished one."""
    point = Point(xy)
    if not room.contains(point):
        point = room.boundary.interpolate(room.boundary.project(point))
    return round(point.x, 3), round(point.y, 3)


def _along_sides(shape: Shape) -> Iterable[XY]:
    for side in shape.sides:
        shares = [i / 16 for i in range(16)] if side.name == "rim" else [0.5, 0.25, 0.75]
        for share in shares:
            point = side.line.interpolate(share, normalized=True)
            yield point.x, point.y


def _beside_openings(shape: Shape) -> Iterable[XY]:
    """The middle of each opening's two narrowest strips."""
    for opening in shape.openings:
        mine = [strip for strip in shape.strips if strip.opening == opening.index]
        for strip in sorted(mine, key=lambda strip: strip.width_mm)[:2]:
            (x0, y0), (x1, y1) = strip.line_mm
            yield (x0 + x1) / 2, (y0 + y1) / 2


def _narrow_strips(shape: Shape, side_mm: float) -> Iterable[XY]:
    """The middles of strips too narrow to sit on, beside openings that a hand can span no more.

    Along a straight-sided opening the nearest place is anywhere on it: its middle is taken.
    """
    for strip in sorted(shape.strips, key=lambda strip: strip.width_mm):
        opening = shape.openings[strip.opening]
        if strip.width_mm >= side_mm or opening.longer_mm <= side_mm or strip.width_mm < 1.0:
            continue
        if isinstance(strip.faces, int):
            (x0, y0), (x1, y1) = strip.line_mm
            yield (x0 + x1) / 2, (y0 + y1) / 2
            continue
        middle = opening.polygon.centroid
        across = shapely.shortest_line(middle, shape.side(strip.faces).line)
        beside = across.difference(opening.polygon).intersection(shape.net)
        if not beside.is_empty:
            centre = beside.centroid
            yield centre.x, centre.y


def _grid(shape: Shape) -> Iterable[XY]:
    x0, y0, x1, y1 = shape.outline.bounds
    for i in (3, 1, 5, 2, 4):
        for j in (2, 1, 3):
            yield x0 + (x1 - x0) * i / 6, y0 + (y1 - y0) * j / 4
