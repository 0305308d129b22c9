"""Where a person is tried on a slab: corners, overhangs, sides, beside openings, and a grid."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

import numpy as np
import shapely
from shapely.geometry import LineString, MultiPolygon, Point, Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.outline import XY, unit_vector
from ledgerstone.shape import Shape
from ledgerstone.strength._exchange import BoolArray
from ledgerstone.strength._outline import FloatArray

MOST_PLACES = 44
APART_SHARE = 0.75  # of a seat's side: places nearer to each other than that are one
RIM_STEP_MM = 220.0  # between places along edges, where nothing else brought one
MOST_STRIPS = 8
SEAT_STEP_MM = 40.0
FINE_STEP_MM = 15.0  # where what a person does changes
MOST_SEATS = 1500  # of all: a larger slab's lie further apart
PANEL_MM = 18.0  # a hull runs through the middle of a unit's side panel
CORNER_OUT_MM = 300.0  # a corner that hangs out further, or both ways, is sat and stood on
NEAR_A_CORNER_MM = 100.0  # a corner's places reach so much further along the edge than it is out
CORNER_ASIDE_MM = 50.0  # an overhang of so much is a worktop's front edge, not a second way out
MOST_FARTHEST = 12
RIM_SMOOTH_MM = 10.0
NEARLY = 0.925  # of a seat's side: a strip at least so wide is sat and stood on
AT_THE_HULL_MM = 40.0
EDGE_STEP_MM = 40.0  # places along an edge that are compared by how far they lie from the rests


Kind = Literal["free-corner", "anywhere", "strip"]
KINDS: tuple[Kind, ...] = ("free-corner", "anywhere", "strip")


@dataclass(frozen=True, slots=True)
class Place:
    """One place for a load, and what kind: a free corner, an ordinary place, or a narrow strip.

    A free corner is the corner of an overhang in one direction, at most 300 mm out: it is leant
    on. Common practice, no source.
    """

    xy: XY
    kind: Kind


def load_places(shape: Shape, side_mm: float, rests: Sequence[BaseGeometry]) -> tuple[Place, ...]:
    """List where a person is tried, at least sixteen places on any slab with room for them.

    Every place keeps a square of ``side_mm`` on the slab where the slab is wide enough. The
    outline's corners come first; then the narrow concrete beside openings; the edges, and the rims
    of openings, where they lie farthest from what carries them; the tips of overhangs, opposite
    the ends of each rest; every 220 mm along the edges; and a grid.

    Parameters
    ----------
    rests
        What carries the slab, in plane mm.
    """
    room = _room(shape, side_mm)
    under = plane.union(rests)
    hull = _hull(under, shape)
    wished = (
        *shape.corners,
        *_beside_openings(shape, room, side_mm),
        *_farthest_from(under, room, side_mm),
        *_overhang_tips(rests, hull, room),
    )
    filling = (*_along_rims(room), *_grid(shape))
    shapely.prepare(room)
    rim = room.boundary
    places: list[XY] = []
    for apart, some in ((APART_SHARE * side_mm, wished), (0.5 * RIM_STEP_MM, filling)):
        for xy in some:
            near = _onto(room, rim, xy)
            if all(math.dist(near, other) > apart for other in places):
                places.append(near)
    places = places[:MOST_PLACES]
    strips = [Place(xy, "strip") for xy in _narrow_strips(shape, side_mm)]
    return (*of_their_kinds(np.array(places), shape, hull), *strips[:MOST_STRIPS])


def seats(shape: Shape, side_mm: float, rests: Sequence[BaseGeometry]) -> tuple[Place, ...]:
    """List a grid of places all over a slab, and along every edge: where a person may be.

    They are ``SEAT_STEP_MM`` apart, the same from the left as from the right and from the front
    as from the back.
    """
    room = _room(shape, side_mm)
    x0, y0, x1, y1 = room.bounds
    step = max(SEAT_STEP_MM, math.sqrt((x1 - x0) * (y1 - y0) / MOST_SEATS))
    nx, ny = (math.ceil(d / step - 1e-9) + 1 for d in (x1 - x0, y1 - y0))
    gx, gy = np.meshgrid(np.linspace(x0, x1, max(nx, 2)), np.linspace(y0, y1, max(ny, 2)))
    grid = np.column_stack([gx.ravel(), gy.ravel()])
    grid = grid[shapely.intersects_xy(plane.buffer(room, 1e-6), grid[:, 0], grid[:, 1])]
    hull = _hull(plane.union(rests), shape)
    rings = shapely.get_rings(shapely.get_parts(room))
    rims = [_around(ring, 0.5 * step) for ring in rings]
    leant_on = [at for at in shape.corners if _is_leant_on(Point(at), hull)]
    beside = [_beside_leant_on(at, room, hull) for at in leant_on]
    every = np.concatenate([grid, *rims, *beside])
    return of_their_kinds(np.unique(np.round(every, 3), axis=0), shape, hull)


def _around(ring: LineString, step: float) -> FloatArray:
    count = max(math.ceil(ring.length / step), 4)
    points = shapely.line_interpolate_point(ring, np.arange(count) / count, normalized=True)
    return np.asarray(shapely.get_coordinates(points))


def _beside_leant_on(corner: XY, room: BaseGeometry, hull: BaseGeometry) -> FloatArray:
    """Places just too far from a corner to be leant on only, shape (n, 2)."""
    reach = hull.distance(Point(corner)) + NEAR_A_CORNER_MM + FINE_STEP_MM
    near = plane.intersection(room, plane.buffer(Point(corner), reach))
    if near.is_empty:  # the slab is so narrow there that nobody sits so near
        return np.empty((0, 2))
    x0, y0, x1, y1 = near.bounds
    nx, ny = (max(math.ceil(d / FINE_STEP_MM), 1) + 1 for d in (x1 - x0, y1 - y0))
    gx, gy = np.meshgrid(np.linspace(x0, x1, nx), np.linspace(y0, y1, ny))
    xy = np.column_stack([gx.ravel(), gy.ravel()])
    xy = xy[shapely.intersects_xy(plane.buffer(room, 1e-6), xy[:, 0], xy[:, 1])]
    out = shapely.distance(shapely.points(xy), hull)
    beyond = np.hypot(*(xy - corner).T) - (out + NEAR_A_CORNER_MM)
    return np.asarray(xy[(out > 1.0) & (beyond > 0.0) & (beyond <= FINE_STEP_MM)])


def _room(shape: Shape, side_mm: float) -> Polygon | MultiPolygon:
    """Where the middle of a person may be: so that the whole square, or nearly so, is on the slab.

    A strip that is narrower than the square by no more than a few millimetres counts as wide.
    """
    whole = plane.buffer(shape.net, -side_mm / 2, join_style="mitre")
    nearly = plane.buffer(shape.net, -NEARLY * side_mm / 2, join_style="mitre")
    around = plane.buffer(whole, side_mm * (1.0 - NEARLY), join_style="mitre")
    parts = plane.polygons_in(plane.union([whole, plane.difference(nearly, around)]))
    return MultiPolygon(parts) if parts else shape.net


def _hull(rests: BaseGeometry, shape: Shape) -> BaseGeometry:
    """The hull of what meets the slab."""
    return plane.intersection(rests, plane.buffer(shape.net, 1.0, join_style="mitre")).convex_hull


def of_their_kinds(xy: FloatArray, shape: Shape, hull: BaseGeometry) -> tuple[Place, ...]:
    """Places (n, 2) with what each is."""
    corner = _near_a_free_corner(xy, shape, hull)
    kinds: list[Kind] = ["free-corner" if free else "anywhere" for free in corner.tolist()]
    return tuple(Place((x, y), kind) for (x, y), kind in zip(xy.tolist(), kinds, strict=True))


def _near_a_free_corner(xy: FloatArray, shape: Shape, hull: BaseGeometry) -> BoolArray:
    """Whether places (n, 2) on an overhang are near a corner that is leant on, shape (n,)."""
    near = np.zeros(len(xy), dtype=bool)
    leant_on = [at for at in shape.corners if _is_leant_on(Point(at), hull)]
    if not leant_on:
        return near
    out = shapely.distance(shapely.points(xy), hull)
    for at in leant_on:
        near |= (out > 1.0) & (np.hypot(*(xy - at).T) <= out + NEAR_A_CORNER_MM)
    return near


def _is_leant_on(corner: Point, hull: BaseGeometry) -> bool:
    """Whether a corner hangs out in one direction only, and no further than 300 mm."""
    if hull.is_empty:
        return False
    (x0, y0), (x1, y1) = shapely.shortest_line(hull, corner).coords
    aside, out = sorted([abs(x1 - x0), abs(y1 - y0)])
    return 1.0 < out <= CORNER_OUT_MM + PANEL_MM and aside <= CORNER_ASIDE_MM


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


def _onto(room: Polygon | MultiPolygon, rim: BaseGeometry, xy: XY) -> XY:
    """The place in ``room`` nearest to a wished one."""
    point = Point(xy)
    if not room.contains(point):
        point = rim.interpolate(rim.project(point))
    return round(point.x, 3), round(point.y, 3)


def _along_rims(room: Polygon | MultiPolygon) -> Iterable[XY]:
    """Places along every edge, the longest first, its corners among them."""
    rings = shapely.get_rings(shapely.get_parts(room))
    for ring in sorted(rings, key=lambda ring: -ring.length):
        corners = shapely.get_coordinates(ring.simplify(RIM_SMOOTH_MM))
        for a, b in pairwise(corners.tolist()):
            count = max(math.ceil(math.dist(a, b) / RIM_STEP_MM), 1)
            for k in range(count):
                yield (a[0] + (b[0] - a[0]) * k / count, a[1] + (b[1] - a[1]) * k / count)


def _beside_openings(shape: Shape, room: BaseGeometry, side_mm: float) -> Iterable[XY]:
    """The middle of each opening's two narrowest strips; of one too narrow, both its ends."""
    for opening in shape.openings:
        mine = [strip for strip in shape.strips if strip.opening == opening.index]
        for strip in sorted(mine, key=lambda strip: strip.width_mm)[:2]:
            (x0, y0), (x1, y1) = strip.line_mm
            middle = ((x0 + x1) / 2, (y0 + y1) / 2)
            if strip.width_mm >= NEARLY * side_mm or strip.width_mm < 1.0:
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
        if strip.width_mm >= NEARLY * side_mm or strip.width_mm < 1.0:
            continue
        if opening.longer_mm <= side_mm:
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
