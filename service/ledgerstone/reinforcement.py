"""Where steel belongs in a slab: bars along strips and across corners, mesh elsewhere."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

import shapely
from shapely.geometry import LineString, Point, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from ledgerstone import plane
from ledgerstone.order import Slab
from ledgerstone.outline import XY, unit_vector
from ledgerstone.shape import Shape, Strip
from ledgerstone.steel import Bar, MeshPiece
from ledgerstone.steel_rules import Cover, anchorage_mm, cover_of, material_words
from ledgerstone.strength.cracked import IN_USE_DAYS, spacing_for_mm, steel_moment_nmm_per_mm
from ledgerstone.strength.slabs import SlabStrength, concrete_of
from ledgerstone.strength.verdict import Verdict
from ledgerstone.workshop.records import Workshop

# Common practice, no source: a strip as narrow as this always gets its bars, a wider one where
# the plate says that it works hard; no bar beside an opening that a hand spans.
BARS_UNDER_MM = 150.0
WIDEST_STRIP_MM = 400.0
WORKS_HARD = 0.6
OPENING_MM = 100.0
CLEAR_MM = 25.0  # between a pair of bars
SHARP_RADIANS = 0.6  # a rim that turns so much at one place has a corner there
ROUNDING_MM = 40.0  # a corner rounded less than this is a corner
SHORTEST_BAR_MM = 150.0
THICK_BAR_MM = 8.0


@dataclass(frozen=True, slots=True)
class PlacedBar:
    """A straight bar in mid-depth: its ends in plane slab mm, and why it is there."""

    mark: str
    diameter_mm: float
    start_mm: XY
    end_mm: XY
    why: str

    @property
    def length_mm(self) -> float:
        """Cut length, to the whole millimetre below."""
        return float(math.floor(math.dist(self.start_mm, self.end_mm)))


@dataclass(frozen=True, slots=True)
class SteelPlan:
    """The steel of one slab.

    Attributes
    ----------
    bars
        Where each lies.
    mesh
        Rectangles of mesh over the whole slab, openings to be cut out; ``mesh_at_mm`` are their
        lower left corners.
    cover
        What lies over the steel, wanted and kept.
    spacing_mm
        Widest spacing of bars that carries the worst section after a crack; infinite where the
        mesh does; None where no steel in this thickness could, and plain concrete must.
    notes
        What the workshop should know, in sentences.
    """

    bars: tuple[PlacedBar, ...]
    mesh: tuple[MeshPiece, ...]
    mesh_at_mm: tuple[XY, ...]
    cover: Cover
    spacing_mm: float | None
    notes: tuple[str, ...]

    def cut(self) -> tuple[Bar, ...]:
        """The bars to cut, one mark each."""
        return tuple(Bar(bar.mark, bar.diameter_mm, bar.length_mm) for bar in self.bars)

    @property
    def kg(self) -> float:
        """Mass of bars and mesh, the mesh before its openings are cut out."""
        return sum(one.kg for one in self.cut()) + sum(piece.kg for piece in self.mesh)


def advise(slab: Slab, shape: Shape, strength: SlabStrength, workshop: Workshop) -> SteelPlan:
    """Say where bars and mesh belong in a slab that can be made."""
    cover = cover_of(slab, workshop.steel)
    beside_mm = min(max(cover.wanted_mm, workshop.steel.cover_mm), cover.kept_mm)
    room = plane.buffer(shape.net, -beside_mm, join_style="mitre")
    lines = [*_strip_bars(shape, strength, workshop, room), *_corner_bars(shape, workshop, room)]
    single = _without_doubles(lines)
    bars = tuple(replace(bar, mark=f"B{n}") for n, bar in enumerate(single, start=1))
    mesh, places = _mesh(shape, workshop, cover)
    spacing = _spacing_mm(slab, strength, workshop)
    notes = tuple(_notes(slab, cover, spacing, workshop))
    return SteelPlan(bars, mesh, places, cover, spacing, notes)


def _without_doubles(bars: Iterable[PlacedBar]) -> list[PlacedBar]:
    """Leave out a bar that lies along one already there: concrete must get between two bars."""
    kept: list[PlacedBar] = []
    for bar in bars:
        line = LineString([bar.start_mm, bar.end_mm])
        if not any(_beside(one).contains(line) for one in kept):
            kept.append(bar)
    return kept


def _beside(bar: PlacedBar) -> BaseGeometry:
    return plane.buffer(LineString([bar.start_mm, bar.end_mm]), CLEAR_MM)


# --- along strips ---------------------------------------------------------------------------


def _strip_bars(
    shape: Shape, strength: SlabStrength, workshop: Workshop, room: BaseGeometry
) -> Iterator[PlacedBar]:
    """One bar, or a pair where there is room, along each strip that needs it."""
    verdicts = (*strength.handled.verdicts, *strength.in_place.verdicts)
    for strip in shape.strips:
        opening = shape.openings[strip.opening]
        if opening.longer_mm <= OPENING_MM or strip.width_mm < 1.0:
            continue
        if strip.width_mm >= BARS_UNDER_MM and not _works_hard(strip, verdicts):
            continue
        for place in _across(strip, workshop):
            yield from _along(shape, strip, place, workshop, room)


def _works_hard(strip: Strip, verdicts: Iterable[Verdict]) -> bool:
    line = LineString(strip.line_mm)
    return strip.width_mm < WIDEST_STRIP_MM and any(
        verdict.utilisation > WORKS_HARD
        and line.distance(Point(verdict.where_mm)) < strip.width_mm / 2
        for verdict in verdicts
    )


def _across(strip: Strip, workshop: Workshop) -> list[float]:
    """How far from the rim each bar's middle lies: a pair, or one in the middle."""
    bar, cover = workshop.steel.bar_mm, workshop.steel.cover_mm
    edge = cover + bar / 2
    if strip.width_mm >= 2 * edge + bar + CLEAR_MM:
        return [edge, strip.width_mm - edge]
    return [strip.width_mm / 2]


def _along(
    shape: Shape, strip: Strip, place: float, workshop: Workshop, room: BaseGeometry
) -> Iterator[PlacedBar]:
    """A bar along a strip, past the opening on both sides by its anchorage where there is room."""
    (x0, y0), (x1, y1) = strip.line_mm
    nx, ny = unit_vector((x0, y0), (x1, y1))
    tx, ty = -ny, nx
    beside = [shape.openings[strip.opening]]
    if isinstance(strip.faces, int):
        beside.append(shape.openings[strip.faces])
    reach = [x * tx + y * ty for o in beside for x, y in o.polygon.exterior.coords]
    anchor = anchorage_mm(workshop)
    at = x0 * tx + y0 * ty
    px, py = x0 + nx * place, y0 + ny * place
    ends = [
        (px + tx * (end - at), py + ty * (end - at))
        for end in (min(reach) - anchor, max(reach) + anchor)
    ]
    yield from _clipped(LineString(ends), Point(px, py), room, workshop, "along a narrow strip")


def _clipped(
    line: LineString, through: Point, room: BaseGeometry, workshop: Workshop, why: str
) -> Iterator[PlacedBar]:
    """The part of a line that lies in the concrete, by the place that it is for."""
    parts = [
        p for p in shapely.get_parts(plane.intersection(line, room)) if p.length >= SHORTEST_BAR_MM
    ]
    if not parts:
        return
    part = min(parts, key=lambda piece: piece.distance(through))
    (x0, y0), (x1, y1) = part.coords[0], part.coords[-1]
    start, end = sorted([(round(x0, 1), round(y0, 1)), (round(x1, 1), round(y1, 1))])
    yield PlacedBar("", workshop.steel.bar_mm, start, end, why)


# --- across corners -------------------------------------------------------------------------


def _corner_bars(shape: Shape, workshop: Workshop, room: BaseGeometry) -> Iterator[PlacedBar]:
    """A bar across each corner that turns into the slab, its anchorage to either side."""
    offset = workshop.steel.cover_mm + workshop.steel.bar_mm / 2
    anchor = anchorage_mm(workshop)
    for (x, y), (bx, by) in _inward_corners(shape):
        middle = Point(x + bx * offset, y + by * offset)
        across = LineString(
            [(middle.x + s * by * anchor, middle.y - s * bx * anchor) for s in (-1.0, 1.0)]
        )
        yield from _clipped(across, middle, room, workshop, "across an inside corner")


def _inward_corners(shape: Shape) -> Iterator[tuple[XY, XY]]:
    """Corners that turn into the concrete, and the direction from each into it, of length one.

    A corner's rounding is drawn out sharp first; a circle has no corner.
    """
    grown = plane.buffer(shape.net, ROUNDING_MM, join_style="mitre")
    sharp = plane.buffer(grown, -ROUNDING_MM, join_style="mitre")
    parts = [part for part in shapely.get_parts(sharp) if isinstance(part, Polygon)]
    for ring in (ring for part in parts for ring in shapely.get_rings(orient(part))):
        points = [(x, y) for x, y in ring.simplify(1.0).coords[:-1]]
        for k, here in enumerate(points):
            u = unit_vector(points[k - 1], here)
            v = unit_vector(here, points[(k + 1) % len(points)])
            turn = math.atan2(u[0] * v[1] - u[1] * v[0], u[0] * v[0] + u[1] * v[1])
            if turn < -SHARP_RADIANS:
                yield here, unit_vector((0.0, 0.0), (u[0] - v[0], u[1] - v[1]))


# --- mesh, and what is said -----------------------------------------------------------------


def _mesh(
    shape: Shape, workshop: Workshop, cover: Cover
) -> tuple[tuple[MeshPiece, ...], tuple[XY, ...]]:
    """One piece over the slab's box, its cover off every side."""
    x0, y0, x1, y1 = shape.outline.bounds
    off = cover.wanted_mm
    length, width = x1 - x0 - 2 * off, y1 - y0 - 2 * off
    steel = workshop.steel
    if min(length, width) < 2 * steel.mesh_pitch_mm:
        return (), ()
    piece = MeshPiece("M1", steel.mesh_wire_mm, steel.mesh_pitch_mm, length, width)
    return (piece,), ((x0 + off, y0 + off),)


def _spacing_mm(slab: Slab, strength: SlabStrength, workshop: Workshop) -> float | None:
    """Widest spacing of bars for 1.35 G + 1.5 Q across a crack; infinite where the mesh does."""
    verdicts = [v for v in strength.in_place.verdicts if v.case == "after-a-crack"]
    if not verdicts:
        return math.inf
    h, steel = slab.thickness.mm, workshop.steel
    concrete = concrete_of(workshop)
    moment = verdicts[0].stress_mpa * h**2 / 6.0
    gamma = concrete.basis.gamma_c
    wires = 0.25 * math.pi * steel.mesh_wire_mm**2 / steel.mesh_pitch_mm
    fck, fy = concrete.fck_mpa, steel.yield_mpa
    mesh = steel_moment_nmm_per_mm(wires, h / 2, yield_mpa=fy, fck_mpa=fck, gamma_c=gamma)
    if mesh >= moment:
        return math.inf
    return spacing_for_mm(moment, steel.bar_mm, h / 2, yield_mpa=fy, fck_mpa=fck, gamma_c=gamma)


def _notes(slab: Slab, cover: Cover, spacing_mm: float | None, workshop: Workshop) -> Iterator[str]:
    bar = workshop.steel.bar_mm
    yield material_words(slab.place, stainless=workshop.steel.stainless)
    if cover.kept_mm < cover.wanted_mm:
        yield (
            f"In {slab.thickness.text()} the steel has {cover.kept_mm:.0f} mm of cover; "
            f"{cover.wanted_mm:.0f} mm is wanted. Use thinner bars, glass fibre, or a thicker slab."
        )
    if bar > THICK_BAR_MM:
        yield f"Take 6 or 8 mm bars before {bar:g} mm: in a thin slab they leave more cover."
    yield (
        "Hang the steel from the mould's sides by wire, or lay it on the stiff first layer, so that"
        " it lies in mid-depth: it must not sink, or it shows through a dark face. Common"
        " practice, no source."
    )
    if slab.cutouts:
        yield "Cut the mesh back from every opening by the cover."
    if spacing_mm is None:
        plain = concrete_of(workshop).plain_tension_mpa(IN_USE_DAYS)
        yield (
            "No steel fits that would carry the worst place after a crack; the plain concrete is"
            f" what carries it, at {plain:.1f} MPa (EN 1992-1-1 12.3.1)."
        )
    elif math.isfinite(spacing_mm):
        yield (
            f"Across the worst place, {bar:g} mm bars no more than {math.floor(spacing_mm)} mm"
            " apart carry it after a crack (EN 1992-1-1 6.1)."
        )
