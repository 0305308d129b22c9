"""Whole orders as a structural engineer would judge them: what is loaded, what carries, what holds.

Source of the figures, where none stands beside one: worked out independently of this code, with a
second plate solver (scikit-fem's Morley element on push-only springs) or by hand.
"""

from datetime import date
from itertools import pairwise
from typing import Any, Final

import pytest

from laws.test_seat_laws import lying_of
from ledgerstone.checks import Facts
from ledgerstone.codec.order_in import read_order
from ledgerstone.quote import Quote, SentBack, quote
from ledgerstone.strength._rails import on_levels
from ledgerstone.strength.plate import PatchLoad
from ledgerstone.strength.rests import Level
from ledgerstone.strength.verdict import Verdict
from ledgerstone.workshop import Workshop
from unit.slabs import box, cut, facts_of, slab_json
from validation.test_calibration import on_units

Json = dict[str, Any]
TODAY: Final = date(2026, 11, 25)
COLLECT: Final = {"kind": "collect"}
BEYOND: Final = ("somebody-standing", "somebody-sitting", "somebody-leaning")


def answered(workshop: Workshop, *slabs: Json, delivery: Json = COLLECT) -> Quote | SentBack:
    """Read an order and answer it."""
    order = read_order({"slabs": list(slabs), "delivery": delivery}, workshop)
    return quote(order, workshop=workshop, bookings=None, today=TODAY)


def facts(workshop: Workshop, slab: Json) -> Facts:
    """Collect the facts of an order of one slab."""
    return facts_of(read_order({"slabs": [slab], "delivery": COLLECT}, workshop), workshop, TODAY)


def in_place(workshop: Workshop, slab: Json) -> dict[str, Verdict]:
    """Verdicts of a slab on its rests, by case."""
    return {v.case: v for v in facts(workshop, slab).strength[0].in_place.verdicts}


def stops(answer: Quote | SentBack) -> set[str]:
    """The checks that stop an order."""
    return {finding.check for finding in answer.findings if finding.level == "stops"}


# --- overhangs ---------------------------------------------------------------------------------


def _overhang(right: int, thickness: int) -> Json:
    rests = {**on_units(600, 600, 600, front=20, right=right), "fixed": True}
    return slab_json(box(1800 + right, 620), thickness=thickness, rests=rests)


@pytest.mark.parametrize(("right", "thickness"), [(255, 30), (260, 30), (400, 30), (600, 40)])
def test_an_overhang_that_would_crack_is_sent_back(
    right: int, thickness: int, workshop: Workshop
) -> None:
    """Over 1.0 stops, at every place beyond the rests that is loaded."""
    assert stops(answered(workshop, _overhang(right, thickness))) == {"cracks-in-place"}


def test_a_longer_overhang_is_never_used_less(workshop: Workshop) -> None:
    """Moment about the rests grows with the lever: 3 % for the mesh and the rests' stations."""
    used = []
    for right in (120, 180, 240, 300, 360, 480, 600):
        beyond = [
            verdict.utilisation
            for case, verdict in in_place(workshop, _overhang(right, 40)).items()
            if case in BEYOND and verdict.where_mm[0] > 1700
        ]
        used.append(max(beyond, default=0.0))
    assert all(later > 0.97 * before for before, later in pairwise(used)), used


def test_a_corner_that_hangs_out_both_ways_is_stood_on(workshop: Workshop) -> None:
    """300 mm to the front and to the right, 40 mm thick: at least 1.2 (second solver)."""
    rests = on_units(800, 800, front=300, right=300)
    verdicts = in_place(workshop, slab_json(box(1900, 900), rests=rests))
    assert verdicts["somebody-standing"].utilisation >= 1.2


# --- places ------------------------------------------------------------------------------------


def test_a_sink_moved_by_a_millimetre_has_the_same_verdict(workshop: Workshop) -> None:
    """Three places of one sink on cabinet rails: all are stopped, within 3 % of each other."""
    used = []
    for y in (299, 300, 301):
        sink = cut("rectangle", (520, 400), (1035, y), label="sink")
        rests = {**on_units(600, (780, "basin")), "rails": "cabinet"}
        slab = slab_json(box(1380, 600), sink, thickness=34, rests=rests)
        assert "cracks-in-place" in stops(answered(workshop, slab))
        used.append(in_place(workshop, slab)["somebody-standing"].utilisation)
    assert max(used) <= 1.03 * min(used), used


# --- balance -----------------------------------------------------------------------------------


def test_a_slab_balanced_on_the_edge_of_one_unit_tips(workshop: Workshop) -> None:
    """By hand, about the panel's middle at 591 mm: 0.9 × 591² < 1.1 × 589² (EN 1990 A1.2(A))."""
    slab = slab_json(box(1180, 600), rests=on_units(600, right=580))
    assert "tips-over" in stops(answered(workshop, slab))


# --- rails -------------------------------------------------------------------------------------

HOB_600 = (cut("rectangle", (560, 490), (900, 310)), on_units(600, (600, "hob"), 600, front=20))
HOB_900 = (cut("rectangle", (860, 490), (1050, 310)), on_units(600, (900, "hob"), 600, front=20))
# MPa under 500 N in the middle of the front strip of 2100 × 620 × 40, by the second solver.
STRIPS: Final = {
    (560, "hardwood"): 1.41,
    (560, "cabinet"): 1.89,
    (860, "hardwood"): 2.21,
    (860, "cabinet"): 2.98,
}


def _leant_on(workshop: Workshop, opening: Json, rests: Json, at: tuple[float, float]) -> float:
    slab = slab_json(box(2100, 620), opening, rests=rests)
    lying = lying_of(slab, workshop)
    assert lying is not None
    level: Level = rests["rails"]
    levels = dict.fromkeys({b.unit for b in lying.carrying if b.unit is not None}, level)
    railed = on_levels(lying, levels)
    patch = PatchLoad(x=at[0], y=at[1], length=100, width=100, newtons=500)
    return railed.rested.cases([[railed.weight, patch]]).worst_stresses()[0]


@pytest.mark.parametrize(("length", "rails"), STRIPS)
def test_a_strip_before_a_hob_bends_with_its_rail(
    length: int, rails: str, workshop: Workshop
) -> None:
    """Chipboard on edge within 5 %, hardwood within 15 %: its softness in shear counts here."""
    opening, rests = HOB_600 if length == 560 else HOB_900
    x = 900 if length == 560 else 1050
    found = _leant_on(workshop, opening, {**rests, "rails": rails}, (x, 32))
    near = 0.05 if rails == "cabinet" else 0.15
    assert found == pytest.approx(STRIPS[length, rails], rel=near)


def test_a_unit_of_900_stands_on_its_own_rails_at_3_5_to_4_mpa(workshop: Workshop) -> None:
    """1.5 kN on a 900 mm unit without an opening, chipboard on edge: 3.5 to 3.8 MPa."""
    rests = {**on_units((900, "basin"), front=20), "rails": "cabinet"}
    found = in_place(workshop, slab_json(box(900, 620), rests=rests))["somebody-standing"]
    assert 3.5 <= found.stress_mpa <= 3.9


def test_a_stronger_rail_is_a_condition_where_the_cabinets_own_would_not_do(
    workshop: Workshop,
) -> None:
    """A 900 mm hob unit: quoted on a rail of hardwood or steel, said among what it rests on."""
    opening, rests = HOB_900
    answer = answered(workshop, slab_json(box(2100, 620), opening, rests=rests))
    assert isinstance(answer, Quote), stops(answer)
    assert [finding.level for finding in answer.findings if finding.check == "rails-needed"] == [
        "caution"
    ]
    assert any("fitted across the front and back" in says for says in answer.depends_on)
    told = {**rests, "rails": "cabinet"}
    refused = answered(workshop, slab_json(box(2100, 620), opening, rests=told))
    assert stops(refused) == {"cracks-in-place"}
