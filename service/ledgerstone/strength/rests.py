"""What carries a slab in place, as supports of the plate: each kind of rest of the contract."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from shapely.geometry import LineString, Point, Polygon, box

from ledgerstone.order import Rests, Slab, Unit
from ledgerstone.outline import XY, Side
from ledgerstone.shape import Shape
from ledgerstone.strength.plate import AreaSupport, LineSupport, PointSupport, Support

PANEL_MM = 18.0  # a base unit's side panel; common practice, no source
RAIL_IN_MM = 25.0  # a rail's middle, in from the unit's front or back; common practice, no source
RAIL_BEARS_EVERY_MM = 600.0  # a wooden rail is trusted at places no further apart (design.md §2)


@dataclass(frozen=True, slots=True)
class Bearing:
    """One thing that carries the slab.

    ``pointer`` is where the order asks for it, from the slab; ``inner`` says that it stands
    between others, so that it may turn out to be low.
    """

    support: Support
    pointer: str
    inner: bool = False
    footprint: Polygon | LineString | Point | None = None


def bearings(slab: Slab, shape: Shape) -> tuple[Bearing, ...]:
    """List what carries a slab; empty where nothing was told or it is bedded all over."""
    if slab.rests is None or slab.rests.kind == "full":
        return ()
    return tuple(_KINDS[slab.rests.kind](slab.rests, shape))


def _units(rests: Rests, shape: Shape) -> Iterable[Bearing]:
    front, back, start = _unit_lines(rests, shape)
    edges = [start]
    for unit in rests.units:
        edges.append(edges[-1] + unit.width.mm)
    for i, x in enumerate(edges):
        beside = rests.units[max(i - 1, 0) : i + 1] if 0 < i < len(rests.units) else ()
        if not _has_panel(rests.units, i):
            continue
        x_in = _panel_x(rests.units, i, x)
        line = LineString([(x_in, front), (x_in, back)])
        inner = bool(beside) and 0 < i < len(edges) - 1
        yield from _line(line, "/rests/units", shape, inner=inner)
    for i, unit in enumerate(rests.units):
        if unit.use != "gap":
            yield from _rails(edges[i], edges[i + 1], front, back, shape)


def _unit_lines(rests: Rests, shape: Shape) -> tuple[float, float, float]:
    """Front and back of the units and their left end, in slab millimetres."""
    over = {name: length.mm for name, length in rests.overhang.items()}
    back = shape.width_mm - over.get("back", 0.0)
    return over.get("front", 0.0), back, over.get("left", 0.0)


def _has_panel(units: tuple[Unit, ...], i: int) -> bool:
    """Whether a side panel stands at the i-th edge between units."""
    left = units[i - 1].use != "gap" if i > 0 else False
    right = units[i].use != "gap" if i < len(units) else False
    return left or right


def _panel_x(units: tuple[Unit, ...], i: int, x_mm: float) -> float:
    """The middle of the panel or panels at the i-th edge."""
    left = i > 0 and units[i - 1].use != "gap"
    right = i < len(units) and units[i].use != "gap"
    if left and right:
        return x_mm
    return x_mm - PANEL_MM / 2 if left else x_mm + PANEL_MM / 2


def _rails(
    start: float, end: float, front: float, back: float, shape: Shape
) -> Iterable[Bearing]:
    """Places where a unit's front and back rails are trusted to bear, between its panels."""
    bays = max(1, math.ceil((end - start) / RAIL_BEARS_EVERY_MM - 1e-9))
    for k in range(1, bays):
        x = start + (end - start) * k / bays
        for y in (front + RAIL_IN_MM, back - RAIL_IN_MM):
            if shape.net.contains(Point(x, y)):
                yield Bearing(PointSupport(x, y), "/rests/units", inner=True, footprint=Point(x, y))


def _line(line: LineString, pointer: str, shape: Shape, *, inner: bool = False) -> Iterable[Bearing]:
    """A line support on each part of a line that meets the slab's outline."""
    met = line.intersection(shape.outline)
    if met.length < 1.0:
        return
    points = [(float(x), float(y)) for x, y in line.coords]
    yield Bearing(LineSupport(points), pointer, inner, line)


def _frame(rests: Rests, shape: Shape) -> Iterable[Bearing]:
    width = rests.width.mm if rests.width is not None else PANEL_MM
    for side in shape.sides:
        if not rests.sides or side.name in rests.sides:
            yield from _line(_inside(side, width / 2, shape), "/rests/sides", shape)


def _inside(side: Side, in_mm: float, shape: Shape) -> LineString:
    """The line that runs beside a side, so far inside the slab."""
    if side.name == "rim":
        return LineString(shape.outline.buffer(-in_mm).exterior.coords)
    return side.line.offset_curve(in_mm)


def _ends(rests: Rests, shape: Shape) -> Iterable[Bearing]:
    depth = rests.depth.mm if rests.depth is not None else PANEL_MM
    x0, y0, x1, y1 = shape.outline.bounds
    for strip in (box(x0, y0, x0 + depth, y1), box(x1 - depth, y0, x1, y1)):
        yield Bearing(AreaSupport(strip), "/rests/depth", footprint=strip)


def _legs(rests: Rests, shape: Shape) -> Iterable[Bearing]:
    half = (rests.pad.mm if rests.pad is not None else 2.0) / 2
    middle = _middle(rests)
    for i, leg in enumerate(rests.at):
        x, y = leg.x.mm, leg.y.mm
        pad = box(x - half, y - half, x + half, y + half)
        inner = len(rests.at) > 4 and _nearest_to(middle, [(p.x.mm, p.y.mm) for p in rests.at]) == i
        yield Bearing(AreaSupport(pad), f"/rests/at/{i}", inner, pad)


def _middle(rests: Rests) -> XY:
    n = len(rests.at)
    return sum(p.x.mm for p in rests.at) / n, sum(p.y.mm for p in rests.at) / n


def _nearest_to(place: XY, points: list[XY]) -> int:
    return min(range(len(points)), key=lambda i: math.dist(place, points[i]))


def _ledges(rests: Rests, shape: Shape) -> Iterable[Bearing]:
    for i, ledge in enumerate(rests.lines):
        line = LineString([(ledge.start.x.mm, ledge.start.y.mm), (ledge.end.x.mm, ledge.end.y.mm)])
        strip = line.buffer(ledge.depth.mm / 2, cap_style="flat")
        yield Bearing(AreaSupport(strip), f"/rests/lines/{i}", footprint=strip)


_KINDS: dict[str, Callable[[Rests, Shape], Iterable[Bearing]]] = {
    "units": _units,
    "frame": _frame,
    "ends": _ends,
    "legs": _legs,
    "ledges": _ledges,
}


def load_places(shape: Shape, side_mm: float) -> tuple[XY, ...]:
    """Where a concentrated load is tried: corners, sides, beside openings, and a grid.

    Every place keeps a square of ``side_mm`` on the slab where the slab is wide enough; free
    corners and the tips of overhangs are always among them. Between sixteen and forty places.
    """
    room = shape.net.buffer(-side_mm / 2, join_style="mitre")
    if room.is_empty:
        room = shape.net
    wished = [*shape.corners, *_along_sides(shape), *_beside_openings(shape), *_grid(shape)]
    places: list[XY] = []
    for xy in wished:
        near = _onto(room, xy)
        if all(math.dist(near, other) > side_mm / 2 for other in places):
            places.append(near)
    return tuple(places[:40])


def _onto(room: object, xy: XY) -> XY:
    """The place in ``room`` nearest to a wished one."""
    point = Point(xy)
    if not room.contains(point):  # type: ignore[attr-defined]
        boundary = room.boundary  # type: ignore[attr-defined]
        point = boundary.interpolate(boundary.project(point))
    return round(point.x, 3), round(point.y, 3)


def _along_sides(shape: Shape) -> Iterable[XY]:
    for side in shape.sides:
        shares = [i / 8 for i in range(8)] if side.name == "rim" else [0.5, 0.25, 0.75]
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


def _grid(shape: Shape) -> Iterable[XY]:
    x0, y0, x1, y1 = shape.outline.bounds
    for i in (3, 1, 5, 2, 4):
        for j in (2, 1, 3):
            yield x0 + (x1 - x0) * i / 6, y0 + (y1 - y0) * j / 4
