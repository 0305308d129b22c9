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
from ledgerstone.arrays import BoolArray, FloatArray
from ledgerstone.outline import XY, unit_vector
from ledgerstone.shape import Shape, Strip
from ledgerstone.strength._leaning_ends import where_leaning_ends
from ledgerstone.strength._seat_area import NARROW, NEARLY, SeatArea
from ledgerstone.strength._turning import inward_corners

MAX_PLACES = 44  # settled at first, which bounds the work
APART_SHARE = 0.75  # of a seat's side: places nearer to each other than that are one
RIM_STEP_MM = 220.0  # between places along edges where no other rule gives one
MAX_STRIPS = 8  # the narrowest, which bounds the work
SEAT_STEP_MM = 40.0  # of the grid that is searched; fine enough by tests/laws/test_seat_laws.py
MAX_SEATS = 1500  # in all; a larger slab has a coarser grid
MAX_FARTHEST = 12  # from the rests, which bounds the work
# A rest's end this near to the hull is one about which a slab turns: our own choice.
AT_THE_HULL_MM = 40.0
# Off a corner of the outline that turns inward, where a person makes most of the stress at it.
ROUND_A_CORNER_MM = (120.0, 200.0, 280.0)
ROUND_A_CORNER = np.radians([-60.0, -30.0, 0.0, 30.0, 60.0])  # from what halves it
OFF_THE_MIDDLE = (0.0, -0.25, 0.25)  # of an opening's length, along the strip beside it
# Places all over a slab, the middle first, in sixths of its length and quarters of its width.
SIXTHS, QUARTERS = (3, 1, 5, 2, 4), (2, 1, 3)
EDGE_STEP_MM = 40.0  # places along an edge that are compared by how far they lie from the rests


PlaceKind = Literal["free-corner", "anywhere", "strip"]


@dataclass(frozen=True, slots=True)
class LoadPlace:
    """One place for a load, and what kind: a free corner, an ordinary place, or a narrow strip.

    A free corner is the corner of an overhang in one direction, at most 300 mm out: it is leant
    on. Common practice, no source.

    Attributes
    ----------
    wide
        How wide the concrete is: from 0, where it is leant on only, to 1, where it bears all of a
        person who sits or stands there.
    """

    xy: XY
    kind: PlaceKind
    wide: float = 1.0


@dataclass(frozen=True, slots=True)
class Seats:
    """Places where a person may be, mm, shape (n, 2), and which are a free corner's, (n,)."""

    xy: FloatArray
    at_a_corner: BoolArray

    def __len__(self) -> int:
        """How many places there are."""
        return len(self.xy)

    def place(self, k: int) -> LoadPlace:
        """Place number ``k``."""
        x, y = self.xy[k].tolist()
        return LoadPlace((x, y), "free-corner" if self.at_a_corner[k] else "anywhere")


def load_places(area: SeatArea) -> tuple[LoadPlace, ...]:
    """List where a person is tried, at least sixteen places on any slab with room for them.

    Every place keeps a square of the person's size on the slab where the slab is wide enough. The
    outline's corners come first; then the narrow concrete beside openings; the edges, and the rims
    of openings, where they lie farthest from what carries them; the tips of overhangs, opposite
    the ends of each rest; round corners of the outline that turn inward; every 220 mm along the
    edges; and a grid.
    """
    shape, side_mm, room = area.shape, area.side_mm, area.room
    wished = [
        *(
            area.in_order(np.array(list(some)).reshape(-1, 2))
            for some in (shape.corners, _beside_openings(shape, room, side_mm))
        ),
        _farthest_from_rests(area),
        area.in_order(np.array(list(_overhang_tips(area))).reshape(-1, 2)),
    ]
    inward = area.in_order(_round_inward_corners(area.meshed))
    wished.append(inward)
    along = np.concatenate([rim.places(RIM_STEP_MM) for rim in area.rims])
    filling = [area.in_order(along), area.in_order(np.array(list(_grid(shape))))]
    many = [sum(len(some) for some in group) for group in (wished, filling)]
    apart = np.repeat([APART_SHARE * side_mm, 0.5 * RIM_STEP_MM], many)
    places = _onto(room, np.concatenate([*wished, *filling]))
    kept: list[int] = []
    for k, away in enumerate(apart.tolist()):
        if len(kept) == MAX_PLACES + len(inward):
            break
        if (np.hypot(*(places[kept] - places[k]).T) > away).all():
            kept.append(k)
    return (*of_their_kinds(places[kept], area), *_narrow_strips(shape, side_mm))


def seats(area: SeatArea) -> Seats:
    """List a grid of places all over a slab, and along every edge: where a person may be.

    They are ``SEAT_STEP_MM`` apart, the same from the left as from the right and from the front
    as from the back.
    """
    x0, y0, x1, y1 = area.room.bounds
    step = max(SEAT_STEP_MM, math.sqrt((x1 - x0) * (y1 - y0) / MAX_SEATS))
    nx, ny = (math.ceil(d / step - 1e-9) + 1 for d in (x1 - x0, y1 - y0))
    grid = _in(area.room_and_rim, np.linspace(x0, x1, max(nx, 2)), np.linspace(y0, y1, max(ny, 2)))
    rims = [rim.places(0.5 * step) for rim in area.rims]
    beside = where_leaning_ends(area)
    every = np.unique(np.round(np.concatenate([grid, *rims, beside]), 3), axis=0)
    places = area.in_order(every)
    return Seats(places, area.is_near_a_free_corner(places))


def _in(room: BaseGeometry, x: FloatArray, y: FloatArray) -> FloatArray:
    """Places of a grid that are in a room, mm, shape (n, 2)."""
    gx, gy = np.meshgrid(x, y)
    xy = np.column_stack([gx.ravel(), gy.ravel()])
    return np.asarray(xy[shapely.intersects_xy(room, xy[:, 0], xy[:, 1])])


def of_their_kinds(xy: FloatArray, area: SeatArea) -> tuple[LoadPlace, ...]:
    """Load places of each kind at some points, mm, shape (n, 2)."""
    some = Seats(xy, area.is_near_a_free_corner(xy))
    return tuple(some.place(k) for k in range(len(some)))


def _farthest_from_rests(area: SeatArea) -> FloatArray:
    """Places along every edge that lie farther from the rests than those on either side of them.

    The farthest come first, shape (n, 2), mm.
    """
    found, far = [np.empty((0, 2))], [np.empty(0)]
    for rim in area.rims:
        places = rim.places(EDGE_STEP_MM)
        away = np.round(shapely.distance(shapely.points(places), area.under), 1)
        before, after = away - np.roll(away, 1), away - np.roll(away, -1)
        level = (before >= 0.0) & (after >= 0.0)
        top = level & ((before > 0.0) | (after > 0.0)) & (away > area.side_mm / 2)
        found.append(places[top])
        far.append(away[top])
    every, away = np.concatenate(found), np.concatenate(far)
    keys = np.round(area.seen(every), 1) + 0.0
    return np.asarray(every[np.lexsort((*keys.T, -away))][:MAX_FARTHEST])


def _round_inward_corners(meshed: Polygon) -> FloatArray:
    """Places round each corner at which the outline turns inward, mm, shape (n, 2)."""
    found = [np.empty((0, 2))]
    for corner in inward_corners(meshed):
        turn = corner.middle + ROUND_A_CORNER
        off = np.column_stack([np.cos(turn), np.sin(turn)])
        found += [corner.at + radius * off for radius in ROUND_A_CORNER_MM]
    return np.concatenate(found)


def _overhang_tips(area: SeatArea) -> Iterable[XY]:
    """The places on an overhang nearest to the ends of each rest."""
    hull, room = area.hull, area.room
    over = plane.difference(room, plane.buffer(hull, 1.0))
    if over.is_empty:
        return
    rim = plane.intersection(over, room.boundary)
    if rim.is_empty:
        return
    coords = shapely.get_coordinates(list(area.rests))
    ends = shapely.points(np.unique(np.round(coords, 1), axis=0))
    near = np.asarray(ends)[shapely.distance(ends, hull.boundary) <= AT_THE_HULL_MM]
    lines = shapely.get_coordinates(shapely.shortest_line(near, rim))
    yield from ((x, y) for x, y in lines[1::2].tolist())


def _onto(room: Polygon | MultiPolygon, places: FloatArray) -> FloatArray:
    """The places in ``room`` nearest to given ones, mm, shape (n, 2) each."""
    out = ~shapely.contains_xy(room, places[:, 0], places[:, 1])
    points, rim = shapely.points(places[out]), room.boundary
    near = shapely.line_interpolate_point(rim, shapely.line_locate_point(rim, points))
    found = places.copy()
    found[out] = shapely.get_coordinates(near)
    return np.asarray(np.round(found, 3))


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


def _narrow_strips(shape: Shape, side_mm: float) -> Iterable[LoadPlace]:
    """The middles of strips too narrow to sit on, beside openings that a hand can span no more.

    They are leant on. Wider than 0.7 of a person's square they also bear some of a person who sits
    or stands, the more the wider they are.

    Source
    ------
    Common practice, no source.
    """
    narrow = [
        strip
        for strip in sorted(shape.strips, key=lambda strip: strip.width_mm)
        if 1.0 <= strip.width_mm < NEARLY * side_mm
        and shape.openings[strip.opening].longer_mm > side_mm
    ]
    for strip in narrow[:MAX_STRIPS]:
        for xy in _along_a_strip(shape, strip, (0.0,)):
            yield LoadPlace(xy, "strip")
        wide = (strip.width_mm / side_mm - NARROW) / (NEARLY - NARROW)
        if wide > 0.0:
            for xy in _along_a_strip(shape, strip, OFF_THE_MIDDLE):
                yield LoadPlace(xy, "anywhere", wide)


def _along_a_strip(shape: Shape, strip: Strip, shares: Sequence[float]) -> Iterable[XY]:
    """Places in mid-width of a strip: its middle, and off it by shares of the opening's length.

    Along a straight-sided opening the nearest place is anywhere on it: its middle is taken.
    """
    opening = shape.openings[strip.opening]
    if isinstance(strip.faces, int):
        (x0, y0), (x1, y1) = strip.line_mm
        yield (x0 + x1) / 2, (y0 + y1) / 2
        return
    side = shape.side(strip.faces).line
    middle = opening.polygon.centroid
    (x0, y0), (x1, y1) = shapely.shortest_line(middle, side).coords
    across = unit_vector((x0, y0), (x1, y1))
    for share in shares:
        off = share * opening.longer_mm
        start = (x0 - across[1] * off, y0 + across[0] * off)
        ray = _ray(start, across, math.dist((x0, y0), (x1, y1)))
        beside = plane.intersection(plane.difference(ray, opening.polygon), shape.net)
        if not beside.is_empty:
            centre = beside.centroid
            yield centre.x, centre.y


def _grid(shape: Shape) -> Iterable[XY]:
    x0, y0, x1, y1 = shape.outline.bounds
    for i in SIXTHS:
        for j in QUARTERS:
            yield x0 + (x1 - x0) * i / 6, y0 + (y1 - y0) * j / 4  # sixths and quarters
