"""A slab laid out where nobody said how."""

from dataclasses import replace
from datetime import date

import numpy as np
import pytest

from ledgerstone.checks import check_plan
from ledgerstone.checks.units import standing_units
from ledgerstone.layout import (
    CUTOUT_NAMES,
    START_NAMES,
    FreeParts,
    laid_out,
    new_cutout,
    new_relief,
    started,
)
from ledgerstone.layout.units import Span, units_along
from ledgerstone.order import Order, Point, Rests, Slab
from ledgerstone.quantities import Length, UnitName
from ledgerstone.shape import shape_of
from ledgerstone.stages import StageContext, plan
from ledgerstone.workshop import Workshop
from support.slabs import box, slab_of

NAMES = {name: name for name in CUTOUT_NAMES}


@pytest.fixture(name="context")
def _context(workshop: Workshop, today: date) -> StageContext:
    return StageContext(workshop, (), today)


def _with(slab: Slab, *pieces: str, unit: UnitName = "mm") -> tuple[Slab, FreeParts]:
    cutouts = tuple(new_cutout(name, name, unit) for name in pieces)
    return replace(slab, cutouts=cutouts), FreeParts(frozenset(range(len(pieces))), unit=unit)


def _stops(slab: Slab, context: StageContext) -> list[str]:
    return [f.check for f in check_plan(plan(Order((slab,)), context)) if f.level == "stops"]


def _at(slab: Slab, k: int) -> tuple[float, float]:
    centre = slab.cutouts[k].centre
    assert centre is not None
    return centre.x.mm, centre.y.mm


def test_two_basins_share_the_run(workshop: Workshop, context: StageContext) -> None:
    """Openings have as much slab at their left as at their right, and taps stand behind them."""
    slab, free = _with(slab_of(workshop, box(1200, 600)), "basin", "tap", "basin", "tap")
    laid = laid_out(slab, free, context)
    assert laid is not None
    assert (_at(laid, 0)[0], _at(laid, 2)[0]) == (340, 860)
    assert (_at(laid, 1)[0], _at(laid, 3)[0]) == (340, 860)
    assert _at(laid, 1)[1] > _at(laid, 0)[1] + 180


def test_what_is_there_stays(workshop: Workshop, context: StageContext) -> None:
    """An opening that has its place keeps it, and the next one goes beside it."""
    slab, _ = _with(slab_of(workshop, box(1800, 600)), "basin", "hob")
    there = replace(slab.cutouts[0], centre=Point(Length.of_mm(500), Length.of_mm(280)))
    laid = laid_out(
        replace(slab, cutouts=(there, slab.cutouts[1])), FreeParts(frozenset({1})), context
    )
    assert laid is not None
    assert _at(laid, 0) == (500, 280)
    assert _at(laid, 1)[0] > 500 + 180 + 280


def test_an_opening_goes_into_its_own_unit(workshop: Workshop, context: StageContext) -> None:
    """Where the units stay, a hob is put over the unit that is told to be a hob's."""
    rests = {
        "kind": "units",
        "units": [{"width": w, "for": f} for w, f in ((600, "base"), (600, "hob"), (600, "basin"))],
    }
    slab, free = _with(slab_of(workshop, box(1800, 620), rests=rests), "basin", "hob")
    laid = laid_out(slab, free, context)
    assert laid is not None
    assert (_at(laid, 0)[0], _at(laid, 1)[0]) == (1500, 900)


def test_units_stand_where_openings_leave_them(workshop: Workshop, context: StageContext) -> None:
    """No side of a unit that is laid out lies under a bowl or a hob, and the units fill the run."""
    slab, free = _with(slab_of(workshop, box(2100, 620)), "sink", "hob", "basin")
    laid = laid_out(slab, replace(free, rests="units"), context)
    assert laid is not None
    assert laid.rests is not None
    assert sum(unit.width.mm for unit in laid.rests.units) == pytest.approx(2100)
    assert [unit.use for unit in laid.rests.units if unit.use not in ("base", "gap")] == [
        "basin",
        "hob",
        "basin",
    ]
    shape = shape_of(laid, workshop)
    for unit in standing_units(laid.rests, shape):
        assert not any(side.intersects(o.polygon) for side in unit.sides for o in shape.openings)


@pytest.mark.parametrize("length_mm", [700, 1234, 2690])
def test_units_without_openings_fill_the_run(length_mm: float) -> None:
    """Cupboards are at most 600 mm wide and as long together as the run."""
    units = units_along(length_mm, (), "mm")
    assert sum(unit.width.mm for unit in units) == pytest.approx(length_mm)
    assert all(unit.width.mm <= 601 for unit in units)


METRIC_MM = {150, 200, 300, 400, 450, 500, 600, 800, 900, 1000, 1200}
INCHES = {9, 12, 15, 18, 21, 24, 27, 30, 33, 36, 42, 48}


@pytest.mark.parametrize("seed", range(40))
def test_assumed_units_are_sold_in_their_widths(seed: int) -> None:
    """Units are as sold, the rest are fillers under 150 mm, and no side is under an opening.

    Widths as kitchen makers list them, metric and in inches.
    """
    rng = np.random.default_rng(seed)
    unit: UnitName = "in" if seed % 2 else "mm"
    per = 25.4 if unit == "in" else 1.0
    length_mm = per * round(rng.uniform(900, 3300) / per)
    wide_mm = rng.uniform(300, 560)
    start_mm = rng.uniform(40, length_mm - wide_mm - 40)
    span = Span(start_mm, start_mm + wide_mm, "basin")
    units = units_along(length_mm, (span,), unit)
    assert sum(one.width.mm for one in units) == pytest.approx(length_mm, abs=1.6)
    for one in units:
        width = round(one.width.mm / per, 3)
        fills = one.use == "gap" and one.width.mm <= 150
        assert fills or width in (INCHES if unit == "in" else METRIC_MM)
    assert [one.use for one in units].count("basin") == 1
    at, sides = 0.0, []
    for one in units:
        if one.use != "gap":
            sides += [(at, at + 18), (at + one.width.mm - 18, at + one.width.mm)]
        at += one.width.mm
    assert not any(a < span.end_mm and span.start_mm < b for a, b in sides)


@pytest.mark.parametrize("half_mm", [150, 200, 225, 250])
def test_a_basin_in_the_middle_is_near_its_unit_s_middle(half_mm: float) -> None:
    """Within 30 mm over every run that was tried: our own bound, from no source."""
    off: dict[float, float] = {}
    for length_mm in range(900, 3001, 47):
        middle_mm, at = length_mm / 2, 0.0
        span = Span(middle_mm - half_mm, middle_mm + half_mm, "basin")
        for one in units_along(length_mm, (span,), "mm"):
            if one.use == "basin":
                off[length_mm] = abs(at + one.width.mm / 2 - middle_mm)
            at += one.width.mm
    assert len(off) == len(range(900, 3001, 47))
    assert {length_mm: mm for length_mm, mm in off.items() if mm > 30} == {}


def test_a_run_of_usual_units_is_all_of_them() -> None:
    """72 in are three units of 24 in, and 3 m five of 600 mm."""
    hob = Span(25 * 25.4, 47 * 25.4, "hob")
    inches = units_along(72 * 25.4, (hob,), "in")
    assert [(one.width.text(), one.use) for one in inches] == [
        ("24 in", "base"),
        ("24 in", "hob"),
        ("24 in", "base"),
    ]
    assert [one.width.text() for one in units_along(3000, (), "mm")] == ["600 mm"] * 5


@pytest.mark.parametrize(
    ("length_mm", "bowl_mm", "unit"),
    [(62 * 25.4, 22 * 25.4, "in"), (1500.0, 360.0, "mm"), (1300.0, 450.0, "mm")],
)
def test_a_bowl_in_the_middle_is_over_the_middle_of_its_unit(
    length_mm: float, bowl_mm: float, unit: UnitName
) -> None:
    """Where units that are sold can stand so: by fillers at both ends, not half an inch beside."""
    low, high = (length_mm - bowl_mm) / 2, (length_mm + bowl_mm) / 2
    at = 0.0
    for one in units_along(length_mm, (Span(low, high, "basin"),), unit):
        if one.use == "basin":
            assert at + one.width.mm / 2 == pytest.approx(length_mm / 2, abs=0.5)
        at += one.width.mm


def test_near_openings_share_a_unit() -> None:
    """Where two have no room for two sides of units between them, one unit is under both."""
    units = units_along(1500, (Span(300, 600, "basin"), Span(620, 900, "base")), "mm")
    assert [unit.use for unit in units].count("basin") == 1


def test_legs_keep_clear_of_openings(workshop: Workshop, context: StageContext) -> None:
    """An opening is not put over a leg that is there."""
    slab, free = _with(slab_of(workshop, box(900, 500)), "round")
    leg = Point(Length.of_mm(450), Length.of_mm(250))
    rests = Rests("legs", at=(leg,), pad=Length.of_mm(60))
    laid = laid_out(replace(slab, rests=rests), free, context)
    assert laid is not None
    assert max(abs(_at(laid, 0)[0] - 450), abs(_at(laid, 0)[1] - 250)) > 75 + 30


def test_a_relief_goes_beside_what_is_there(workshop: Workshop, context: StageContext) -> None:
    """A drainer is put beside the sink, on the slab."""
    slab, free = _with(slab_of(workshop, box(1800, 600)), "sink")
    slab = replace(slab, reliefs=(new_relief("drainer", "drainer", "mm"),))
    laid = laid_out(slab, replace(free, reliefs=frozenset({0})), context)
    assert laid is not None
    shape = shape_of(laid, workshop)
    assert shape.reliefs[0].distance(shape.openings[0].polygon) >= 50
    assert shape.outline.covers(shape.reliefs[0])


def test_what_has_no_room_is_not_laid_out(workshop: Workshop, context: StageContext) -> None:
    """A hob 480 mm deep has no place on a slab of 480 mm."""
    slab, free = _with(slab_of(workshop, box(1800, 480)), "hob")
    assert laid_out(slab, free, context) is None


def test_places_are_in_the_customers_unit(workshop: Workshop, context: StageContext) -> None:
    """In inches a place is on a quarter of one."""
    slab, free = _with(slab_of(workshop, box("60 in", "24 in")), "basin", unit="in")
    laid = laid_out(slab, free, context)
    assert laid is not None
    centre = laid.cutouts[0].centre
    assert centre is not None
    assert (centre.x.text(), centre.y.text()) == ("30 in", "12 in")


@pytest.mark.parametrize("name", START_NAMES)
@pytest.mark.parametrize("unit", ["mm", "in"])
def test_a_start_can_be_made(
    name: str, unit: UnitName, workshop: Workshop, context: StageContext
) -> None:
    """No slab of a start is stopped by its shape, and an L has two and a join."""
    made = started(name, slab_of(workshop, box(1500, 600)), NAMES, unit, context)
    assert not any(_stops(slab, context) for slab in made.slabs)
    assert (len(made.slabs), len(made.joins)) == ((2, 1) if name.startswith("l-") else (1, 0))
    assert len(made.free) == len(made.slabs)
