"""What customers read of strength: levels, sentences, places in their own words and units."""

import re
from dataclasses import replace
from datetime import date

import pytest

from ledgerstone.checks import GROUP_OF, Finding
from ledgerstone.checks.where import spot
from ledgerstone.quantities import Length
from ledgerstone.quote import run_stages
from ledgerstone.shape import shape_of
from ledgerstone.stages import StageContext
from ledgerstone.wording import Message
from ledgerstone.workshop import Workshop
from support.calibration import BREAKERS, JOBS, in_a_cold_workshop
from support.documents import Json
from support.in_english import in_english
from support.slabs import box, cut, hole, order_of, slab_json, slab_of

JARGON = re.compile(
    r"utilis|verdict|moment\b|stress|MPa|plate|node|mesh|hull|finding|check|slabs\[|\bnone\b|nan|inf\b",
    re.IGNORECASE,
)
OURS = {
    *(name for name, stage in GROUP_OF.items() if stage == "strength"),
    "aggregate-too-large", "cover-too-thin", "steel-rusts",
}  # fmt: skip
UNITS = {"kind": "units", "units": [{"width": 600}] * 2, "overhang": {"front": 20}}


def _found(workshop: Workshop, *slabs: Json, **more: object) -> tuple[Finding, ...]:
    order = order_of(workshop, *slabs, **more)
    return run_stages(order, StageContext(workshop, None, date(2026, 11, 25))).findings


def _one(findings: tuple[Finding, ...], check: str) -> Finding:
    (finding,) = [one for one in findings if one.check == check]
    return finding


@pytest.mark.parametrize("name", [*JOBS, *BREAKERS])
def test_every_sentence_is_plain_and_short(name: str, workshop: Workshop) -> None:
    """At most 240 characters, no jargon, a capital first and a full stop last."""
    document = JOBS[name] if name in JOBS else BREAKERS[name][0]
    found = [one for one in _found(workshop, *document["slabs"]) if one.check in OURS]
    assert found or name in ("a 40 mm strip behind a 900 mm opening", "a hearth")
    for finding in found:
        assert len(in_english(finding)) <= 240
        assert not JARGON.search(in_english(finding)), in_english(finding)
        assert re.match(r"^[“]?[A-Z0-9]", in_english(finding))
        assert in_english(finding).endswith(".")


def test_a_slab_is_called_by_its_label(workshop: Workshop) -> None:
    """The customer's own word stands in the sentence, and its place in the customer's unit."""
    slab = slab_json(box("1.8 m", "90 cm"), label="Bar", thickness="1 1/2 in", rests={
        "kind": "units", "units": [{"width": "60 cm"}] * 3, "overhang": {"front": "30 cm"},
    })  # fmt: skip
    finding = _one(_found(workshop, slab), "tips-when-sat-on")
    assert "“Bar” would tip" in in_english(finding)


def test_one_day_is_a_day(workshop: Workshop) -> None:
    """After one day it is "1 day"; after four, "4 days"."""
    oven = cut("rectangle", (900, 480), (800, 400), label="oven", rim="covered")
    frame = {"kind": "frame", "sides": ["front", "back", "left", "right"], "width": 60}
    slab = slab_json(box(1600, 800), oven, rests=frame)
    finding = _one(_found(in_a_cold_workshop(workshop), slab), "cracks-when-moved")
    assert "edge 1 day after casting" in in_english(finding)
    assert finding.level == "stops"


def test_a_unit_beside_the_slab_is_a_caution_and_a_leg_there_stops(workshop: Workshop) -> None:
    """A unit further along carries nothing and harms nothing; a leg under a hole is a mistake."""
    units = {"kind": "units", "units": [{"width": 600}] * 3}
    finding = _one(_found(workshop, slab_json(box(1200, 600), rests=units)), "rest-under-nothing")
    assert finding.level == "caution"
    assert in_english(finding).startswith("Unit 3 ")
    at = [{"x": x, "y": y} for x in (100, 1100) for y in (100, 400)] + [{"x": 600, "y": 250}]
    slab = slab_json(
        box(1200, 500), hole(300, 600, 250), rests={"kind": "legs", "pad": 40, "at": at}
    )
    finding = _one(_found(workshop, slab), "rest-under-nothing")
    assert finding.level == "stops"
    assert finding.at == ("/slabs/0/rests/at/4",)
    assert in_english(finding).startswith("Rest 5 ")


def test_rests_that_carry_nothing_stop(workshop: Workshop) -> None:
    """Where no rest meets the slab it lies on nothing."""
    units = {"kind": "units", "units": [{"width": 600}], "overhang": {"left": 5000}}
    finding = _one(_found(workshop, slab_json(box(1200, 600), rests=units)), "rest-under-nothing")
    assert finding.level == "stops"


def test_what_tips_by_itself_stops(workshop: Workshop) -> None:
    """Legs under one half only: sent back, with the place of its weight."""
    at = [{"x": x, "y": y} for x in (100, 400) for y in (100, 400)]
    slab = slab_json(box(1400, 500), rests={"kind": "legs", "pad": 60, "at": at})
    finding = _one(_found(workshop, slab), "tips-over")
    assert finding.level == "stops"
    assert finding.where_mm is not None
    assert finding.where_mm["coordinates"] == pytest.approx([700, 250], abs=2)


def test_missing_rests_are_a_finding(workshop: Workshop) -> None:
    """A worktop without rests is quoted with a question; a hearth is bedded and asks nothing."""
    assert _one(_found(workshop, slab_json(box(900, 500))), "rests-not-told").level == "caution"
    checks = {f.check for f in _found(workshop, slab_json(box(900, 500), use="hearth"))}
    assert "rests-not-told" not in checks


@pytest.mark.parametrize("width", [3, 20])
def test_a_strip_like_a_wafer_is_a_finding(width: int, workshop: Workshop) -> None:
    """A strip of 3 mm, and one of 20 mm, are stopped by name, never a fault."""
    hob = cut("rectangle", (560, 600 - width - 100), (600, 100 + (500 - width) / 2), rim="covered")
    findings = _found(workshop, slab_json(box(1200, 600), hob, rests=UNITS))
    assert "strip-too-narrow" in {one.check for one in findings if one.level == "stops"}


def test_a_slab_that_falls_in_two_is_a_finding(workshop: Workshop) -> None:
    """An opening from edge to edge leaves two pieces."""
    across = cut("rectangle", (60, 700), (600, 300))
    findings = _found(workshop, slab_json(box(1200, 600), across, rests=UNITS))
    assert "two-pieces" in {one.check for one in findings}


def test_places_are_stated_in_the_customers_unit(workshop: Workshop) -> None:
    """Corners, ends and edges by name; elsewhere by distances in the unit that was written."""
    slab = slab_of(workshop, box("2 m", "60 cm"), thickness="4 cm")
    shape = shape_of(slab, workshop)
    assert spot(slab, shape, (20, 20)) == Message("spot-corner", corner="front-left")
    assert spot(slab, shape, (1000, 300)) == Message("spot-middle")
    assert spot(slab, shape, (1000, 590)) == Message("spot-middle-of-edge", row="back")
    assert spot(slab, shape, (1950, 300)) == Message("spot-end", side="right")
    left, front = Length.of_mm(610, "cm"), Length.of_mm(200, "cm")
    assert spot(slab, shape, (614, 203)) == Message("spot-inside", left=left, front=front)


def test_beside_a_cut_out_the_strip_is_named(workshop: Workshop) -> None:
    """Near an opening its label and the concrete's width are stated, rounded down."""
    slab = slab_of(workshop, box(1200, 620), cut("rectangle", (560, 490), (600, 310), label="hob"))
    hob, width = Message("cutout-labelled", label="hob"), Length.of_mm(65)
    beside = Message("spot-beside-narrow", cutout=hob, width=width)
    assert spot(slab, shape_of(slab, workshop), (600, 30)) == beside


def test_coarse_grains_are_stopped_where_they_do_not_pass(workshop: Workshop) -> None:
    """Grains of 16 mm do not go into 40 mm: a third of it is 13.3 (ACI 318-19 26.4.2.1)."""
    recipe = replace(workshop.recipe, largest_aggregate_mm=16.0)
    coarse = replace(workshop, recipe=recipe)
    finding = _one(_found(coarse, slab_json(box(900, 500))), "aggregate-too-large")
    assert finding.level == "stops"
    assert "13.3 mm" in in_english(finding)


def test_plain_steel_outdoors_is_stopped_for_lack_of_cover(workshop: Workshop) -> None:
    """40 mm cannot keep 30 mm over plain steel outdoors; stainless may lie nearer."""
    plain = replace(workshop, steel=replace(workshop.steel, material="plain"))
    assert _one(_found(plain, slab_json(box(900, 500), place="outdoors")), "steel-rusts").level == (
        "stops"
    )
    checks = {f.check for f in _found(workshop, slab_json(box(900, 500), place="outdoors"))}
    assert not checks & {"steel-rusts", "cover-too-thin"}


def test_a_thin_slab_says_that_its_steel_lies_near_the_face(workshop: Workshop) -> None:
    """25 mm keeps 8 mm over its stainless steel, where bond wants 10; 30 mm keeps enough."""
    finding = _one(_found(workshop, slab_json(box(900, 300), thickness=25)), "cover-too-thin")
    assert finding.level == "caution"
    assert "8 mm" in in_english(finding)
    usual = _found(workshop, slab_json(box(900, 300), thickness=30))
    assert "cover-too-thin" not in {one.check for one in usual}


@pytest.mark.parametrize("across", [700, 900, 1100])
def test_a_top_on_a_pedestal_stands_on_the_plate_that_is_named(
    across: int, workshop: Workshop
) -> None:
    """The plate that a sentence names is wide enough, and one much narrower is not."""
    top = {"kind": "round", "diameter": across}

    def on(plate: float) -> tuple[Finding, ...]:
        rests = {"kind": "pedestal", "plate": plate}
        return _found(workshop, slab_json(top, use="table", thickness=50, rests=rests))

    finding = _one(on(across / 2), "tips-when-sat-on")
    plate = finding.message.values["plate"]
    assert isinstance(plate, Length)
    assert [one for one in on(plate.mm) if one.check == "tips-when-sat-on"] == []
    assert [one for one in on(plate.mm - 40) if one.check == "tips-when-sat-on"]


@pytest.mark.parametrize("length", [1500, 1800, 2100])
def test_a_slab_that_sags_does_not_at_the_thickness_that_is_named(
    length: int, workshop: Workshop
) -> None:
    """The thickness that a sentence names keeps the sag out of sight; else two pieces are named."""

    def of(thickness: float) -> list[Finding]:
        slab = slab_json(
            box(length, 300), use="shelf", thickness=thickness, rests={"kind": "ends", "depth": 50}
        )
        return [one for one in _found(workshop, slab) if one.check == "sags"]

    (finding,) = of(min(workshop.shaping.thicknesses_mm))
    if finding.message.name == "sags":
        thickness = finding.message.values["thickness"]
        assert isinstance(thickness, Length)
        assert of(thickness.mm) == []
    else:
        assert finding.message.name == "sags-far"


def test_the_most_that_is_turned_is_as_the_profile_has_it(workshop: Workshop) -> None:
    """113.4 kg, that is 250 lb: not rounded down to 113 kg, which is 249 lb."""
    ways = tuple(replace(way, most_kg=113.4) for way in workshop.handling.ways)
    weak = replace(workshop, handling=replace(workshop.handling, ways=ways))
    found = _one(_found(weak, slab_json(box(1600, 900))), "too-heavy-to-handle")
    assert found.limit == {"slab_and_mould_kg": 113.4}
    assert "113.4 kg" in in_english(found)
