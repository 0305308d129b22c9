"""Where a person is tried on a slab: corners, overhangs, sides, beside openings, and a grid."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
import shapely
from shapely.geometry import LineString, MultiPolygon, Point, Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.outline import XY, unit_vector
from ledgerstone.shape import Shape

MOST_PLACES = 28
MOST_STRIPS = 8
NEAR_A_CORNER_MM = 100.0
MOST_FARTHEST = 12
AT_THE_HULL_MM = 40.0
EDGE_STEP_MM = 40.0  # places along an edge that are compared by how far they lie from the rests


@dataclass(frozen=True, slots=True)
class Place:
    """One place for a load, and what kind: a free corner, an ordinary place, or a narrow strip."""

    xy: XY
    kind: Literal["free-corner", "anywhere", "strip"]


def load_places(shape: Shape, side_mm: float, rests: Sequence[BaseGeometry]) -> tuple[Place, ...]:
    """List where a person is tried, at least sixteen places on any slab with room for them.

    Every place keeps a square of ``side_mm`` on the slab where the slab is wide enough. The
    outline's corners come first; then the narrow concrete beside openings; the edges, and the rims
    of openings, where they lie farthest from what carries them; the tips of overhangs, opposite
    the ends of each rest; the middles and quarters of the sides; and a grid. A place out on an
    overhang by a corner counts as a free corner.

    Parameters
    ----------
    rests
        What carries the slab, in plane mm.
    """
    inset = plane.buffer(shape.net, -side_mm / 2, join_style="mitre")
    room = shape.net if inset.is_empty else inset
    under = plane.union(rests)
    hull = plane.intersection(under, plane.buffer(shape.net, 1.0, join_style="mitre")).convex_hull
    free = [Point(c) for c in shape.corners if hull.distance(Point(c)) > 1.0]
    wished = (
        *shape.corners,
        *_beside_openings(shape, room, side_mm),
        *_farthest_from(under, room, side_mm),
        *_overhang_tips(rests, hull, room),
        *_along_sides(shape),
        *_grid(shape),
    )
    shapely.prepare(room)
    rim = room.boundary
    places: list[Place] = []
    for xy in wished:
        near = _onto(room, rim, xy)
        if all(math.dist(near, other.xy) > 0.75 * side_mm for other in places):
            places.append(Place(near, _kind(Point(near), free, hull)))
            if len(places) == MOST_PLACES:
                break
    strips = [Place(xy, "strip") for xy in _narrow_strips(shape, side_mm)]
    return (*places, *strips[:MOST_STRIPS])


def _farthest_from(rests: BaseGeometry, room: BaseGeometry, side_mm: float) -> Iterable[XY]:
    """Places along every edge that lie farther from the rests than those on either side of them."""
    found: list[tuple[float, XY]] = []
    for ring in shapely.get_rings(shapely.get_parts(room)):
        count = max(math.ceil(ring.length / EDGE_STEP_MM), 8)
        points = shapely.line_interpolate_point(ring, np.arange(count) / count, normalized=True)
        away = np.round(shapely.distance(points, rests), 1)
        top = (away >= np.roll(away, 1)) & (away > np.roll(away, -1)) & (away > side_mm / 2)
        found += [(float(away[k]), (points[k].x, points[k].y)) for k in np.flatnonzero(top)]
    return (xy for _, xy in sorted(found, key=lambda row: -row[0])[:MOST_FARTHEST])


def _overhang_tips(
    rests: Sequence[BaseGeometry], hull: BaseGeometry, room: BaseGeometry
) -> Iterable[XY]:
    """The places on an overhang nearest to the ends of each rest."""
    over = plane.difference(room, plane.buffer(hull, 1.0))
    if over.is_empty:
        return
    rim = plane.intersection(over, room.boundary)
    ends = {
        (round(x, 1), round(y, 1))
        for rest in rests
        for x, y in shapely.get_coordinates(rest).tolist()
    }
    edge = hull.boundary
    for end in sorted(ends):
        point = Point(end)
        if rim.is_empty or edge.distance(point) > AT_THE_HULL_MM:
            continue
        near = shapely.shortest_line(point, rim)
        yield near.coords[-1][0], near.coords[-1][1]


def _kind(
    place: Point, free: list[Point], rests: BaseGeometry
) -> Literal["free-corner", "anywhere"]:
    """A place out on an overhang, no further from its free corner than from the rests."""
    out = rests.distance(place)
    near = any(place.distance(corner) <= out + NEAR_A_CORNER_MM for corner in free)
    return "free-corner" if out > 1.0 and near else "anywhere"


def _onto(room: Polygon | MultiPolygon, rim: BaseGeometry, xy: XY) -> XY:
    """The place in ``room`` nearest to a wished one."""
    point = Point(xy)
    if not room.contains(point):
        point = rim.interpolate(rim.project(point))
    return round(point.x, 3), round(point.y, 3)


def _along_sides(shape: Shape) -> Iterable[XY]:
    for side in shape.sides:
        shares = [i / 16 for i in range(16)] if side.name == "rim" else [0.5, 0.25, 0.75]
        for share in shares:
            point = side.line.interpolate(share, normalized=True)
            yield point.x, point.y


def _beside_openings(shape: Shape, room: BaseGeometry, side_mm: float) -> Iterable[XY]:
    """The middle of each opening's two narrowest strips; of one too narrow, both its ends."""
    for opening in shape.openings:
        mine = [strip for strip in shape.strips if strip.opening == opening.index]
        for strip in sorted(mine, key=lambda strip: strip.width_mm)[:2]:
            (x0, y0), (x1, y1) = strip.line_mm
            middle = ((x0 + x1) / 2, (y0 + y1) / 2)
            if strip.width_mm >= side_mm or strip.width_mm < 1.0:
                yield middle
                continue
            across = unit_vector((x0, y0), (x1, y1))
            for way in (1.0, -1.0):
                ray = _ray(middle, (-way * across[1], way * across[0]), 2.0 * opening.longer_mm)
                seat = plane.intersection(plane.buffer(ray, side_mm, cap_style="flat"), room)
                if not seat.is_empty:
                    near = shapely.shortest_line(Point(middle), seat).coords[-1]
                    yield near[0], near[1]


def _ray(start: XY, along: XY, length: float) -> LineString:
    return LineString([start, (start[0] + length * along[0], start[1] + length * along[1])])


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
        beside = plane.intersection(plane.difference(across, opening.polygon), shape.net)
        if not beside.is_empty:
            centre = beside.centroid
            yield centre.x, centre.y


def _grid(shape: Shape) -> Iterable[XY]:
    x0, y0, x1, y1 = shape.outline.bounds
    for i in (3, 1, 5, 2, 4):
        for j in (2, 1, 3):
            yield x0 + (x1 - x0) * i / 6, y0 + (y1 - y0) * j / 4
