"""What carries a slab in place, as supports of the plate: each kind of rest of the contract."""

from __future__ import annotations

import math
from collections.abc import Callable, Container, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

import numpy as np
import shapely
from shapely.geometry import LineString, Polygon, box
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.order import Rests, Slab
from ledgerstone.outline import XY, Side
from ledgerstone.shape import Shape
from ledgerstone.strength._beams import Beam
from ledgerstone.strength._strip_support import BEDDING_N_PER_MM3, strip_of, strip_support
from ledgerstone.strength.plate import AreaSupport, LineSupport, Support
from ledgerstone.workshop.records import Rails

PANEL_MM = 18.0  # a base unit's side panel; common practice, no source
SHORTEST_MM = 1.0  # of concrete that counts as carried: over any rounding
# A rail is taken flush with the fronts of the panels: a slab loaded on its overhang turns about
# that edge, and one loaded between the rails has the longer span. With the rail at its centre line,
# 25 mm in, the panels' ends alone would carry the slab and crack it, which they do not.

RestKind = Literal["rigid", "cabinet", "hardwood", "steel", "post"]


AN_OVERHANG_MM = 50.0  # less is a worktop's front edge
A_PAD_MM = 100.0  # a rest no longer than this presses most in its middle


@dataclass(frozen=True, slots=True)
class Bearing:
    """One thing that carries the slab.

    ``pointer`` is its place in the order, from the slab. Inner bearings, which may be low, have a
    ``group``: those of one group are low together.
    """

    support: Support
    pointer: str
    footprint: BaseGeometry
    group: int | None = None
    unit: int | None = None


def bearings(slab: Slab, shape: Shape) -> tuple[Bearing, ...]:
    """List what carries a slab, all rigid; empty if no rests are given or it is bedded."""
    if slab.rests is None or slab.rests.kind == "full":
        return ()
    if slab.rests.kind in _STRIPS:
        strips = tuple(_STRIPS[slab.rests.kind](slab.rests, shape))
        return tuple(
            Bearing(
                _bedded(strip)  # it spans to no other: its own depth keeps it from turning
                if len(strips) == 1
                else strip_support(line, depth, slab.thickness.mm, shape.net),
                at,
                strip,
            )
            for line, depth, at in strips
            for strip in [strip_of(line, depth)]
        )
    return tuple(_KINDS[slab.rests.kind](slab.rests, shape))


def on_rails(
    carrying: Sequence[Bearing],
    rests: Rests,
    rails: Rails,
    levels: Mapping[int, RestKind],
    *,
    upright: Container[int] = (),
) -> tuple[Bearing, ...]:
    """Return the same bearings, the rails of units bending and their panels crushing.

    Parameters
    ----------
    levels
        What carries across each unit, by its place in the list. A base unit's own rails lie flat;
        a hob's or a basin's stand upright, clear of the opening. At ``post`` a hardwood rail has a
        post under its middle.
    upright
        Base units whose own rails are upright too.
    """
    return tuple(
        bearing
        if bearing.unit is None or levels[bearing.unit] == "rigid"
        else replace(
            bearing,
            support=_with_compliance(
                bearing.support,
                rails,
                levels[bearing.unit],
                upright=rests.units[bearing.unit].use != "base" or bearing.unit in upright,
            ),
        )
        for bearing in carrying
    )


def _with_compliance(support: Support, rails: Rails, level: RestKind, *, upright: bool) -> Support:
    """A panel or a rail of a unit, with its compliance."""
    if not isinstance(support, LineSupport):
        return support
    (x0, _), (x1, _) = support.points[0], support.points[-1]
    if x0 == x1:
        return replace(support, crushes_n_per_mm2=rails.panel_n_per_mm2)
    own = rails.upright if upright else rails.flat
    sections = {"cabinet": own, "steel": rails.steel}
    section = sections.get(level, rails.hardwood)
    posts = (0.5,) if level == "post" else ()
    beam = Beam(section.e_mpa * section.i_mm4, section.g_mpa * section.shear_mm2, posts)
    return replace(support, beam=beam)


def crowded_units(rests: Rests, shape: Shape, rails: Rails) -> tuple[int, ...]:
    """List, by index, base units whose flat rail would reach into an opening: it must be upright.

    Source
    ------
    Common practice, no source.
    """
    holes = [opening.polygon for opening in shape.openings]
    found: list[int] = []
    start = rests.overhang["left"].mm if "left" in rests.overhang else 0.0
    front = rests.overhang["front"].mm if "front" in rests.overhang else 0.0
    back = shape.width_mm - (rests.overhang["back"].mm if "back" in rests.overhang else 0.0)
    for i, unit in enumerate(rests.units):
        end = start + unit.width.mm
        if unit.use == "base":
            wide, left, right = rails.flat.width_mm, start + PANEL_MM, end - PANEL_MM
            flat = [box(left, front, right, front + wide), box(left, back - wide, right, back)]
            if any(plane.intersection(h, rail).area > 1.0 for h in holes for rail in flat):
                found.append(i)
        start = end
    return tuple(found)


def _pressed(bearing: Bearing) -> BaseGeometry:
    """Where a bearing presses, in plan."""
    match bearing.support:
        case AreaSupport(polygon=polygon):
            return polygon
        case LineSupport(points=points) if len(points) > 1:
            return LineString(points)
        case _:
            return bearing.footprint


def turning_places(slab: Slab, shape: Shape) -> tuple[XY, ...]:
    """List the ends and corners of rests about which an overhang turns, plane mm, in order.

    They are on the hull of all that carries, beside a part that hangs over by more than
    `AN_OVERHANG_MM`. There the reaction is nearly a point load, so the mesh is finer.

    Source
    ------
    Statics; how small an overhang or a pad matters: common practice, no source.
    """
    footprints = [_pressed(bearing) for bearing in bearings(slab, shape)]
    if not footprints:
        return ()
    hull = plane.union(footprints).convex_hull
    over = plane.difference(shape.outline, plane.buffer(hull, AN_OVERHANG_MM))
    if over.is_empty:
        return ()
    pads = [part for part in footprints if part.area > 0.0 and part.length <= 4.0 * A_PAD_MM]
    ends = shapely.get_coordinates([part for part in footprints if part not in pads])
    middles = shapely.get_coordinates(shapely.centroid(pads))
    xy = np.unique(np.round(np.concatenate([ends, middles]), 3), axis=0)
    points = shapely.points(xy)
    is_pad = (xy[:, None] == np.round(middles, 3)).all(axis=2).any(axis=1)
    at_the_hull = np.where(is_pad, 0.5 * A_PAD_MM, 1.0)
    turning = shapely.distance(points, hull.boundary) <= at_the_hull
    turning &= shapely.distance(points, over) <= 1.2 * AN_OVERHANG_MM + at_the_hull
    turning &= shapely.intersects_xy(shape.net, xy[:, 0], xy[:, 1])
    return tuple((x, y) for x, y in xy[turning].tolist())


def _units(rests: Rests, shape: Shape) -> Iterable[Bearing]:
    """Each unit by itself: its two side panels, its front rail and its back rail.

    A unit with others on both sides may turn out to be low.
    """
    over = {name: length.mm for name, length in rests.overhang.items()}
    front, back = over.get("front", 0.0), shape.width_mm - over.get("back", 0.0)
    start = over.get("left", 0.0)
    standing = [i for i, unit in enumerate(rests.units) if unit.use != "gap"]
    for i, unit in enumerate(rests.units):
        end = start + unit.width.mm
        if i in standing:
            group = i if standing[0] < i < standing[-1] else None
            lines = list(_unit_lines(start, end, front, back))
            met = [
                line
                for line in lines
                if plane.intersection(line, shape.outline).length >= SHORTEST_MM
            ]
            for line in met or lines[:1]:
                yield replace(_line(line, f"/rests/units/{i}", group=group), unit=i)
        start = end


def _unit_lines(start: float, end: float, front: float, back: float) -> Iterable[LineString]:
    """The lines along which one unit carries."""
    left, right = start + PANEL_MM / 2, end - PANEL_MM / 2
    for x in (left, right):
        yield LineString([(x, front), (x, back)])
    for y in (front, back):
        yield LineString([(left, y), (right, y)])


def _line(line: LineString, pointer: str, *, group: int | None = None) -> Bearing:
    points = [(float(x), float(y)) for x, y in line.coords]
    return Bearing(LineSupport(points), pointer, line, group)


def _frame(rests: Rests, shape: Shape) -> Iterable[Bearing]:
    width = rests.width.mm if rests.width is not None else PANEL_MM
    for side in shape.sides:
        if not rests.sides or side.name in rests.sides:
            for line in _inside(side, width / 2, shape):
                yield _line(line, "/rests/sides")


def _inside(side: Side, in_mm: float, shape: Shape) -> list[LineString]:
    """The lines inside the slab parallel to a side; the side itself where there is no room."""
    if side.name == "rim":
        drawn_in = plane.buffer(shape.outline, -in_mm)
        beside: BaseGeometry = drawn_in.boundary
    else:
        beside = side.line.offset_curve(in_mm)
    met = shapely.get_parts(plane.intersection(beside, shape.outline))
    lines = [part for part in met if isinstance(part, LineString) and part.length >= SHORTEST_MM]
    return lines or [side.line]


def _ends(rests: Rests, shape: Shape) -> Iterable[_Strip]:
    depth = rests.depth.mm if rests.depth is not None else PANEL_MM
    x0, y0, x1, y1 = shape.outline.bounds
    for x in (x0 + depth / 2, x1 - depth / 2):
        yield LineString([(x, y0), (x, y1)]), depth, "/rests/depth"


def _ledges(rests: Rests, _shape: Shape) -> Iterable[_Strip]:
    for i, ledge in enumerate(rests.lines):
        ends = [(ledge.start.x.mm, ledge.start.y.mm), (ledge.end.x.mm, ledge.end.y.mm)]
        yield LineString(ends), ledge.depth.mm, f"/rests/lines/{i}"


def _legs(rests: Rests, _shape: Shape) -> Iterable[Bearing]:
    half = (rests.pad.mm if rests.pad is not None else 2.0) / 2
    nearest = _nearest_to(_middle(rests), [(p.x.mm, p.y.mm) for p in rests.at])
    for i, leg in enumerate(rests.at):
        x, y = leg.x.mm, leg.y.mm
        pad = box(x - half, y - half, x + half, y + half)
        inner = len(rests.at) > 4 and i == nearest  # of four legs each is at a corner
        yield Bearing(_bedded(pad), f"/rests/at/{i}", pad, i if inner else None)


def _pedestal(rests: Rests, shape: Shape) -> Iterable[Bearing]:
    plate = pedestal_plate(rests, shape)
    yield Bearing(_bedded(plate), "/rests/plate", plate)


def pedestal_plate(rests: Rests, shape: Shape) -> Polygon:
    """The plate of a pedestal, plane mm: under the slab's middle where no place is given."""
    middle = shape.outline.centroid
    x, y = (middle.x, middle.y) if rests.centre is None else (rests.centre.x.mm, rests.centre.y.mm)
    half = (rests.plate.mm if rests.plate is not None else PANEL_MM) / 2
    return box(x - half, y - half, x + half, y + half)


def _middle(rests: Rests) -> XY:
    n = len(rests.at)
    return sum(p.x.mm for p in rests.at) / n, sum(p.y.mm for p in rests.at) / n


def _nearest_to(place: XY, points: list[XY]) -> int:
    return min(range(len(points)), key=lambda i: math.dist(place, points[i]))


def _bedded(area: Polygon) -> Support:
    return AreaSupport(area, crushes_n_per_mm3=BEDDING_N_PER_MM3)


_KINDS: dict[str, Callable[[Rests, Shape], Iterable[Bearing]]] = {
    "units": _units,
    "frame": _frame,
    "legs": _legs,
    "pedestal": _pedestal,
}
_Strip = tuple[LineString, float, str]  # its middle line, its depth in mm, its place in the order
_STRIPS: dict[str, Callable[[Rests, Shape], Iterable[_Strip]]] = {"ends": _ends, "ledges": _ledges}
