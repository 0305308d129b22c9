"""The parts of one mould: base, side strips, curved strips, formers, beads and drips."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import shapely
from shapely.geometry import Polygon

from ledgerstone.cutouts import kind_of
from ledgerstone.mould.nesting import SheetPart, equal_parts
from ledgerstone.order import Cutout, Edge, Profile, Slab
from ledgerstone.outline import XY, Side
from ledgerstone.shape import Opening, Shape
from ledgerstone.workshop.records import Boards, EdgeOffered, Workshop

ON_THE_SIDE_MM = 1e-3  # a point nearer than this to a side's line is on its straight part
_PLAIN = Edge()


@dataclass(frozen=True, slots=True)
class Curve:
    """A flexible strip bent round a curve."""

    name: str
    length_mm: float
    height_mm: float


@dataclass(frozen=True, slots=True)
class Former:
    """What keeps concrete out: a turned plug, or foam glued up in layers and cut to shape.

    ``length_mm`` and ``width_mm`` are of the smallest rectangle round it, ``height_mm`` as tall as
    it stands; ``layers`` is zero for a plug.
    """

    name: str
    kind: str
    length_mm: float
    width_mm: float
    height_mm: float
    perimeter_mm: float
    layers: int


@dataclass(frozen=True, slots=True)
class Bead:
    """Sealant drawn along an edge of the form: a bevel of its size, a round, or a small arris."""

    along: str
    profile: Profile
    size_mm: float
    length_mm: float


@dataclass(frozen=True, slots=True)
class SideRun:
    """The straight part of one side, and the arc that follows it; zero if there is none.

    ``turn_radians`` is the turn at its far end: positive at an outside corner.
    """

    side: str
    straight_mm: float
    arc_mm: float
    turn_radians: float


def runs(shape: Shape) -> tuple[SideRun, ...]:
    """Return each side's straight part and the arc at its far end; a round is one arc."""
    if not shape.corners:
        return tuple(SideRun(side.name, 0.0, side.length_mm, math.tau) for side in shape.sides)
    n = len(shape.corners)
    ends = [(shape.corners[i], shape.corners[(i + 1) % n]) for i in range(n)]
    straight = [_straight_mm(side, *end) for side, end in zip(shape.sides, ends, strict=True)]
    return tuple(_run(shape, straight, i) for i in range(n))


def _run(shape: Shape, straight: list[tuple[float, float]], i: int) -> SideRun:
    n = len(shape.corners)
    at = (i + 1) % n
    turn = _turn(shape.corners[i], shape.corners[at], shape.corners[(at + 1) % n])
    starts, ends = straight[i]
    tangent = math.dist(shape.corners[i], shape.corners[at]) - ends
    half = abs(turn) / 2
    arc = 2 * half * tangent / math.tan(half) if tangent > ON_THE_SIDE_MM and half > 0 else 0.0
    return SideRun(shape.sides[i].name, max(0.0, ends - starts), arc, turn)


def _straight_mm(side: Side, first: XY, last: XY) -> tuple[float, float]:
    """Where a side's straight part starts and ends, from its first sharp corner."""
    length = math.dist(first, last) or 1.0
    ux, uy = (last[0] - first[0]) / length, (last[1] - first[1]) / length
    along = [
        (x - first[0]) * ux + (y - first[1]) * uy
        for x, y in side.line.coords
        if abs((y - first[1]) * ux - (x - first[0]) * uy) <= ON_THE_SIDE_MM
    ]
    return (min(along), max(along)) if along else (length / 2, length / 2)


def _turn(before: XY, corner: XY, after: XY) -> float:
    """Angle through which an anticlockwise outline turns left at a corner, in radians."""
    into = math.atan2(corner[1] - before[1], corner[0] - before[0])
    out = math.atan2(after[1] - corner[1], after[0] - corner[0])
    return (out - into + math.pi) % math.tau - math.pi


def base_pieces(shape: Shape, boards: Boards) -> tuple[SheetPart, ...]:
    """Return the base board with its margin, joined of equal parts where no sheet holds it."""
    sides = (shape.length_mm + 2 * boards.margin_mm, shape.width_mm + 2 * boards.margin_mm)
    return _in_parts("base", max(sides), min(sides), boards.length_mm, boards.width_mm)


def _in_parts(
    name: str, length_mm: float, width_mm: float, sheet_mm: float, sheet_width_mm: float
) -> tuple[SheetPart, ...]:
    along, across = equal_parts(length_mm, sheet_mm), equal_parts(width_mm, sheet_width_mm)
    return (SheetPart(name, along[0], across[0], len(along) * len(across)),)


def side_pieces(slab: Slab, shape: Shape, boards: Boards) -> Iterator[SheetPart]:
    """Yield the board strips of the sides, butted at the corners in one sense round the slab.

    A strip runs past an outside corner by the board's thickness and stops short of an inside one
    by as much; at a rounded corner it ends where the curve begins. It stands as high as the slab
    is thick, with what is sanded off; where the edge drops, as high as the drop too, and the
    drop's inner face is a strip of its own.
    """
    height = shape.thickness_mm + boards.sanding_mm
    for run in runs(shape):
        if run.straight_mm <= ON_THE_SIDE_MM:
            continue
        past = math.copysign(boards.thickness_mm, run.turn_radians) if not run.arc_mm else 0.0
        length = max(1.0, run.straight_mm + past)
        drop = slab.edges.get(run.side, _PLAIN).drop
        deep = drop.depth.mm if drop is not None else 0.0
        sheet = (boards.length_mm, boards.width_mm)
        yield from _in_parts(f"side {run.side}", length, height + deep, *sheet)
        if drop is not None:
            yield from _in_parts(f"drop {run.side}", run.straight_mm, deep, *sheet)


def curves(shape: Shape, boards: Boards) -> Iterator[Curve]:
    """Yield the flexible strips of rounded corners and round slabs."""
    height = shape.thickness_mm + boards.sanding_mm
    for run in runs(shape):
        if run.arc_mm:
            yield Curve(f"curve after {run.side}", run.arc_mm, height)


def formers(slab: Slab, shape: Shape, boards: Boards) -> Iterator[Former]:
    """Yield the knockouts of the cut-outs and the formers of the reliefs."""
    height = shape.thickness_mm + boards.sanding_mm
    for cutout, opening in zip(slab.cutouts, shape.openings, strict=True):
        name = cutout.label or f"cut-out {opening.index + 1}"
        kind = "plug" if takes_plug(cutout, opening, boards) else "knockout"
        former = _former(name, kind, opening.polygon, height, boards)
        round_hole = kind_of(cutout).is_circle and cutout.open_to is None
        yield _exactly_round(former, opening.longer_mm) if round_hole else former
    for i, (relief, polygon) in enumerate(zip(slab.reliefs, shape.reliefs, strict=True)):
        name = relief.label or f"{relief.kind} {i + 1}"
        yield _former(name, relief.kind, polygon, relief.depth.mm, boards)


def takes_plug(cutout: Cutout, opening: Opening, boards: Boards) -> bool:
    """Return whether an opening is a small round one, formed by a turned plug and not by foam."""
    return kind_of(cutout).is_circle and opening.longer_mm <= boards.plug_up_to_mm


def _former(name: str, kind: str, polygon: Polygon, height_mm: float, boards: Boards) -> Former:
    sides = _rectangle_round(polygon)
    layers = 0 if kind == "plug" else len(equal_parts(height_mm, boards.foam.thickness_mm))
    return Former(name, kind, max(sides), min(sides), height_mm, polygon.length, layers)


def _exactly_round(former: Former, diameter_mm: float) -> Former:
    """Return a round former with its own diameter and girth, not those of the plan's chords."""
    girth = math.pi * diameter_mm
    return replace(former, length_mm=diameter_mm, width_mm=diameter_mm, perimeter_mm=girth)


def _rectangle_round(polygon: Polygon) -> tuple[float, float]:
    """Sides of the smallest rectangle round a polygon, however it is turned."""
    rectangle = shapely.oriented_envelope(polygon)
    if not isinstance(rectangle, Polygon) or rectangle.is_empty:
        return 1.0, 1.0
    points = list(rectangle.exterior.coords)
    return math.dist(points[0], points[1]), math.dist(points[1], points[2])


def foam_pieces(former: Former, boards: Boards) -> tuple[SheetPart, ...]:
    """Return the foam blanks of a former; a layer larger than a sheet is of several."""
    if not former.layers:
        return ()
    foam = boards.foam
    (part,) = _in_parts(
        former.name, former.length_mm, former.width_mm, foam.length_mm, foam.width_mm
    )
    return (SheetPart(part.name, part.length_mm, part.width_mm, part.count * former.layers),)


def beads(
    slab: Slab, shape: Shape, knockouts: Sequence[Former], workshop: Workshop
) -> Iterator[Bead]:
    """Yield the beads along seen edges and the rims that show; a wall side has none.

    ``knockouts`` are the slab's formers, those of its cut-outs first.
    """
    offered = {edge.profile: edge for edge in workshop.edges}
    for side in shape.sides:
        edge = slab.edges.get(side.name, _PLAIN)
        if edge.profile != "wall":
            size = edge.size.mm if edge.size is not None else _smallest_mm(offered, edge.profile)
            yield Bead(side.name, edge.profile, size, side.length_mm)
    for cutout, former in zip(slab.cutouts, knockouts, strict=False):  # reliefs' formers follow
        if cutout.rim == "shown":
            arris = _smallest_mm(offered, "square")
            yield Bead(former.name, "square", arris, former.perimeter_mm)


def _smallest_mm(offered: dict[Profile, EdgeOffered], profile: Profile) -> float:
    return offered[profile].smallest_mm if profile in offered else 0.0


def drips_mm(slab: Slab, shape: Shape, boards: Boards) -> dict[str, float]:
    """Length of the drip former by side, mm: the side, less a stop at each end.

    Source
    ------
    Geometry; the stop is the profile's ``boards.drip_stop_mm``.
    """
    return {
        side.name: max(0.0, side.length_mm - 2 * boards.drip_stop_mm)
        for side in shape.sides
        if slab.edges.get(side.name, _PLAIN).drip
    }


def screws_for(length_mm: float, boards: Boards) -> int:
    """Screws, and pilot holes, along one strip: at both ends and no farther apart than the pitch.

    A strip shorter than the pitch takes two.

    Source
    ------
    Geometry; the pitch is the profile's ``boards.screw_pitch_mm``.
    """
    return max(2, math.ceil(length_mm / boards.screw_pitch_mm - 1e-9) + 1)
