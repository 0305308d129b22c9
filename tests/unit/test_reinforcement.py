"""Where steel belongs: along narrow strips, across inside corners, under cover."""

import math
from dataclasses import replace
from datetime import date

import pytest
import shapely
from shapely.geometry import LineString

from ledgerstone.order import CORNERS
from ledgerstone.reinforcement import PlacedBar, SteelPlan
from ledgerstone.shape import shape_of
from ledgerstone.steel import bar_kg_per_m, mesh_kg_per_m2
from ledgerstone.steel_rules import (
    anchorage_mm,
    cover_of,
    lap_mm,
    lapped_parts,
    largest_aggregate_mm,
)
from ledgerstone.wording import english
from ledgerstone.workshop import Workshop
from support.calibration import JOBS
from support.documents import Json
from support.slabs import box, cut, hole, order_of, slab_json, slab_of, stages_of

UNITS = {"kind": "units", "units": [{"width": 600}] * 4}
HOB = cut("rectangle", (560, 490), (1200, 310), label="hob", rim="covered")


_BENCH = {
    key: value for key, value in JOBS["a bench on legs"]["slabs"][0].items() if key != "cutouts"
}


def _plan(workshop: Workshop, outline: Json, *cutouts: Json, **more: object) -> SteelPlan:
    order = order_of(workshop, slab_json(outline, *cutouts, **more))
    return stages_of(order, workshop, date(2026, 11, 25)).known.steel[0]


def test_bars_run_past_a_hob_by_their_anchorage(workshop: Workshop) -> None:
    """One bar in each 65 mm strip, past the hob on both sides by its anchorage at least."""
    plan = _plan(workshop, box(2400, 620), HOB, rests=UNITS)
    for front, back in ((0, 65), (555, 620)):
        along = [b for b in plan.bars if front < b.start_mm[1] < back and _is_lengthwise(b)]
        assert len(along) == 1
        assert along[0].start_mm[0] <= 1200 - 280 - anchorage_mm(workshop, 6.0) + 1
        assert along[0].end_mm[0] >= 1200 + 280 + anchorage_mm(workshop, 6.0) - 1


def _is_lengthwise(bar: PlacedBar) -> bool:
    return bar.start_mm[1] == bar.end_mm[1]


def test_a_wide_strip_takes_a_pair(workshop: Workshop) -> None:
    """A strip of 90 mm beside a bowl has room for two bars, 65 mm for one."""
    plan = _plan(workshop, box(1400, 540), hole(360, 700, 270), rests=UNITS)
    fronts = [bar for bar in plan.bars if bar.start_mm[1] < 90 and bar.end_mm[1] < 90]
    assert len(fronts) == 2


def test_every_bar_keeps_its_cover_in_plan(workshop: Workshop) -> None:
    """No bar comes nearer to an edge or an opening than its cover."""
    for name in ("a 2.4 m run round a hob", "a vanity with two bowls"):
        order = order_of(workshop, *JOBS[name]["slabs"])
        stages = stages_of(order, workshop, date(2026, 11, 25))
        shape = stages.shapes[0]
        plan = stages.known.steel[0]
        assert plan.bars
        for bar in plan.bars:
            line = LineString([bar.start_mm, bar.end_mm])
            assert shape.net.contains(line)
            assert line.distance(shape.net.boundary) >= workshop.steel.cover_mm - 0.2


def test_inside_corners_get_a_bar_across(workshop: Workshop) -> None:
    """A hob has four inside corners, an L one more, a bowl none."""
    assert _across(_plan(workshop, box(2400, 900), cut("rectangle", (560, 490), (1200, 450)))) == 4
    ell = {
        "kind": "l-shape",
        "length": 1800,
        "width": 1100,
        "notch": {"corner": "back-right", "length": 900, "width": 500},
    }
    assert _across(_plan(workshop, ell)) == 1
    assert _across(_plan(workshop, box(1400, 600), hole(300, 700, 300))) == 0


def _across(plan: SteelPlan) -> int:
    return sum(bar.why == "across an inside corner" for bar in plan.bars)


def test_anchorage_is_the_standards(workshop: Workshop) -> None:
    """At C30 a 10 mm bar of 500 MPa needs 36 diameters: f_bd = 3.0 MPa (EN 1992-1-1 8.4.2).

    36.2 diameters is the usual table value for good bond, B500 and C30/37.
    """
    c30 = replace(workshop, recipe=replace(workshop.recipe, fck_mpa=30.0))
    assert anchorage_mm(c30, 10.0) == pytest.approx(362, rel=0.02)


def test_lapped_bars_overlap_as_the_standard_asks(workshop: Workshop) -> None:
    """C30/37, good bond, all lapped at one section: 54 diameters; and never under 200 mm.

    EN 1992-1-1 8.7.3; the Concrete Centre's table of laps, from memory.
    """
    c30 = replace(workshop, recipe=replace(workshop.recipe, fck_mpa=30.0))
    assert lap_mm(c30, 10.0) == pytest.approx(54 * 10, rel=0.02)
    assert lap_mm(c30, 2.5) == 200.0


@pytest.mark.parametrize(
    ("length", "count", "each"),
    [(2900, 1, 2900), (3100, 2, 1700), (5700, 2, 3000), (5710, 3, 2104)],
)
def test_parts_of_a_longer_bar_overlap(length: float, count: int, each: float) -> None:
    """Of 3 m bars that overlap by 300 mm, as few as reach, all of one length."""
    parts, long = lapped_parts(length, 3000.0, 300.0)
    assert parts == count
    assert long == pytest.approx(each, abs=1.0)


@pytest.mark.parametrize(
    ("place", "wanted"), [("indoors", 15.0), ("wet-room", 25.0), ("outdoors", 30.0)]
)
def test_plain_steel_needs_the_cover_of_its_place(
    place: str, wanted: float, workshop: Workshop
) -> None:
    """EN 1992-1-1 table 4.4N, S4: XC1 15, XC3 25, XC4 30 mm. Stainless needs bond alone, 10 mm."""
    slab = slab_of(workshop, box(900, 500), place=place)
    plain = replace(workshop.steel, material="plain")
    assert cover_of(slab, plain).wanted_mm == wanted
    assert cover_of(slab, workshop.steel).wanted_mm == 10.0


def test_ten_millimetre_bars_take_the_cover_of_a_thin_slab(workshop: Workshop) -> None:
    """In 40 mm plain 10 mm bars keep 14 mm of 15: said so, and thinner bars are named first."""
    thick = replace(workshop, steel=replace(workshop.steel, bar_mm=10.0, material="plain"))
    plan = _plan(thick, box(900, 500), rests={"kind": "ends", "depth": 60})
    assert plan.cover.kept_mm == pytest.approx(0.5 * (40 - 10 - 2.5))
    assert not plan.cover.is_kept
    assert any("of cover" in english(note) for note in plan.notes)
    assert any("8 mm bars before 10" in english(note) for note in plan.notes)


@pytest.mark.parametrize(
    ("size", "thickness", "limit"), [((900, 500), 40, 13.3), ((900, 25), 40, 5.0)]
)
def test_the_largest_grain_is_row_27_of_the_mix_page(
    size: tuple[int, int], thickness: int, limit: float, workshop: Workshop
) -> None:
    """40 mm without steel 13.3 mm, with 50 mm clear mesh 13.3 mm; 25 mm between forms 5.0 mm."""
    slab = slab_of(workshop, box(*size), thickness=thickness)
    shape = shape_of(slab, workshop)
    clear = replace(workshop.steel, mesh_pitch_mm=50 + workshop.steel.mesh_wire_mm)
    for steel in (None, clear):
        assert largest_aggregate_mm(slab, shape, steel) == pytest.approx(limit, abs=0.05)


def test_its_mass_is_that_of_its_parts(workshop: Workshop) -> None:
    """Bars by their length and mesh by its area less the opening's and the cover round it."""
    plan = _plan(workshop, box(2400, 620), HOB, rests=UNITS)
    steel = workshop.steel
    bars = sum(bar.length_mm for bar in plan.bars) / 1000 * bar_kg_per_m(6.0)
    off, radius = 2 * steel.cover_mm, workshop.shaping.inside_radius_mm
    opening = (560 + off) * (490 + off) - (4 - math.pi) * (radius + steel.cover_mm) ** 2
    mesh = ((2400 - off) * (620 - off) - opening) / 1e6
    assert plan.kg == pytest.approx(
        bars + mesh * mesh_kg_per_m2(steel.mesh_wire_mm, steel.mesh_pitch_mm), rel=1e-3
    )


@pytest.mark.parametrize("corner", CORNERS)
def test_an_l_has_two_pieces_of_mesh_that_lap_at_its_inside_corner(
    workshop: Workshop, corner: str
) -> None:
    """Both in the concrete less cover, all of which they cover; in common they have the lap."""
    notch = {"corner": corner, "length": 1100, "width": 900}
    outline = {"kind": "l-shape", "length": 1800, "width": 1500, "notch": notch}
    steel, plan = workshop.steel, _plan(workshop, outline)
    shape = shape_of(slab_of(workshop, outline), workshop)
    inside = shape.outline.buffer(-steel.cover_mm, join_style="mitre")
    pieces = [
        shapely.box(x, y, x + one.length_mm, y + one.width_mm)
        for one, (x, y) in zip(plan.mesh, plan.mesh_at_mm, strict=True)
    ]
    assert [one.mark for one in plan.mesh] == ["M1", "M2"]
    every = shapely.union_all(pieces)
    assert every.symmetric_difference(inside).area < 1e-3 * inside.area
    lap = lap_mm(workshop, steel.mesh_wire_mm)
    common = pieces[0].intersection(pieces[1])
    x0, y0, x1, y1 = common.bounds
    assert min(x1 - x0, y1 - y0) == pytest.approx(lap)
    net_m2 = (inside.area + common.area) / 1e6
    kg = sum(one.kg for one in plan.mesh)
    a_m2 = mesh_kg_per_m2(steel.mesh_wire_mm, steel.mesh_pitch_mm)
    assert kg == pytest.approx(net_m2 * a_m2, rel=2e-3)


def test_of_a_disc_the_mesh_weighs_what_is_cut(workshop: Workshop) -> None:
    """A circle less its cover, from a square of it."""
    steel = workshop.steel
    across = 900 - 2 * steel.cover_mm
    (piece,) = _plan(workshop, {"kind": "round", "diameter": 900}).mesh
    assert (piece.length_mm, piece.width_mm) == pytest.approx((across, across), abs=0.1)
    a_m2 = mesh_kg_per_m2(steel.mesh_wire_mm, steel.mesh_pitch_mm)
    assert piece.kg == pytest.approx(math.pi / 4 * across**2 / 1e6 * a_m2, rel=2e-3)


def test_outdoors_the_steel_does_not_rust(workshop: Workshop) -> None:
    """Stainless or glass fibre is named outdoors and in a wet room."""
    assert "stainless steel or glass" in english(
        _plan(workshop, box(900, 500), place="outdoors").notes[0]
    )


def test_bars_are_listed_where_the_mesh_does_not_carry(workshop: Workshop) -> None:
    """A bench is given bars lengthwise for a crack, none across it; its notes say so."""
    plan = _plan(workshop, **_BENCH)
    assert plan.after is not None
    assert (plan.after.along.by, plan.after.across.by) == ("bars", "plain")
    assert all(bar.start_mm[1] == bar.end_mm[1] for bar in plan.bars)
    assert any("6 mm bars hold it" in english(note) for note in plan.notes)
    assert any("plain concrete across" in english(note) for note in plan.notes)


def test_a_bar_that_is_too_short_to_be_anchored_says_so(workshop: Workshop) -> None:
    """Beside a 65 mm strip a corner's bar has little room: its share is stated on the sheet."""
    plan = _plan(workshop, box(2400, 620), HOB, rests=UNITS)
    corner = [bar for bar in plan.bars if bar.why == "across an inside corner"]
    assert all(0.1 < bar.anchored < 0.9 for bar in corner), corner
    assert any(
        f"{corner[0].mark} {100 * corner[0].anchored:.0f}%" in english(note) for note in plan.notes
    )


def test_a_workshop_without_bars_lays_none(workshop: Workshop) -> None:
    """Glass mesh alone: no bar is listed, nor asked for."""
    glass = replace(workshop.steel, material="glass-fibre", bar_mm=None, yield_mpa=1000.0)
    plan = _plan(replace(workshop, steel=glass), box(900, 300), rests={"kind": "ends", "depth": 60})
    assert plan.bars == ()
    assert plan.mesh
