"""Openings on the slab, apart, in one piece; strips and inside corners by the workshop's rules."""

from dataclasses import replace

import pytest

from ledgerstone.checks import Finding, shape
from ledgerstone.checks.shape import strip_rule
from ledgerstone.quantities import Length
from ledgerstone.wording import MAX_NAMED, Listed, Message, side_name
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.in_english import in_english
from support.slabs import box, cut, hole, order_of, plan_of, polygon, slab_json
from unit.checked import PlannedCheck, values_of


def strip_message(faced: Message, width_mm: int, limit_mm: int) -> Message:
    """What is said of the strip between the basin and what it faces."""
    return Message(
        "strip-too-narrow",
        cutout=Message("cutout-labelled", label="basin"),
        faced=Listed((faced,), most=MAX_NAMED),
        width=Length.of_mm(width_mm),
        limit=Length.of_mm(limit_mm),
    )


def found(check: PlannedCheck, workshop: Workshop, *slabs: Json) -> list[Finding]:
    """Run one check on an order."""
    order = order_of(workshop, *slabs)
    return list(check(plan_of(order, workshop)))


def beside(width_mm: float, diameter: float, rim: str) -> Json:
    """Write a slab with a hole that leaves one narrow strip, at the front."""
    return slab_json(box(1400, 900), hole(diameter, 700, diameter / 2 + width_mm, rim=rim))


@pytest.mark.parametrize(
    ("cutout", "on_it"),
    [
        (hole(100, 50, 50), True),
        (hole(100, 49, 50), False),
        (hole(100, 49.9, 50, open_to="left"), True),
        (hole(100, 5000, 50), False),
        (hole(100, 5000, 50, open_to="left"), False),
        (cut("slot", (300, 40), (140, 300), turn_degrees=90), True),
        (cut("slot", (300, 40), (140, 300)), False),
    ],
)
def test_openings_lie_on_the_slab_unless_they_are_open_to_a_side(
    workshop: Workshop, cutout: Json, *, on_it: bool
) -> None:
    """An opening that reaches past an edge is sent back, unless it says that it does."""
    findings = found(shape.cutouts_on_the_slab, workshop, slab_json(box(900, 600), cutout))
    assert (findings == []) is on_it


@pytest.mark.parametrize("x", [50.0, 49.9, 50.04])
def test_an_opening_that_touches_an_edge_is_sent_back(workshop: Workshop, x: float) -> None:
    """A hole with no concrete beside it is not made, however little it reaches past."""
    slab = slab_json(box(900, 600), hole(100, x, 300))
    checks = (shape.cutouts_on_the_slab, shape.strips_wide_enough)
    assert [f.level for check in checks for f in found(check, workshop, slab)] == ["stops"]


def test_an_opening_off_the_slab_is_named_and_shown(workshop: Workshop) -> None:
    """The finding names the opening by its label, and its place is what lies outside."""
    slab = slab_json(box(900, 600), hole(100, 900, 300, label="tap"))
    (finding,) = found(shape.cutouts_on_the_slab, workshop, slab)
    assert values_of(finding, "cutout-off-slab")["cutout"] == Message(
        "cutout-labelled", label="tap"
    )
    assert (finding.id, finding.at) == ("cutout-off-slab.0.0", ("/slabs/0/cutouts/0",))
    assert finding.where_mm is not None
    xs = [x for x, _ in finding.where_mm["coordinates"][0]]
    assert min(xs) == pytest.approx(900, abs=0.2)


@pytest.mark.parametrize(("x", "apart"), [(600.1, True), (600, False), (550, False), (500, False)])
def test_openings_are_apart(workshop: Workshop, x: float, *, apart: bool) -> None:
    """Two holes of 100 mm touch at 100 mm between their centres, and then are one."""
    slab = slab_json(box(900, 600), hole(100, 500, 300), hole(100, x, 300, label="tap"))
    findings = found(shape.cutouts_apart, workshop, slab)
    assert (findings == []) is apart
    for finding in findings:
        assert finding.at == ("/slabs/0/cutouts/0", "/slabs/0/cutouts/1")
        two = (Message("cutout", kind="circle", nth=0), Message("cutout-labelled", label="tap"))
        assert finding.message == Message("cutouts-overlap", cutouts=Listed(two, most=MAX_NAMED))


def test_what_is_left_is_one_piece(workshop: Workshop) -> None:
    """An opening from front to back makes two pieces, and says so."""
    through = slab_json(box(1400, 600), cut("rectangle", (60, 600), (700, 300), open_to="front"))
    assert found(shape.one_piece, workshop, slab_json(box(1400, 600), hole(300, 700, 300))) == []
    (finding,) = found(shape.one_piece, workshop, through)
    assert (finding.check, finding.level, finding.measured) == (
        "two-pieces",
        "stops",
        {"pieces": 2},
    )


@pytest.mark.parametrize(
    ("diameter", "rim", "width", "level"),
    [
        (60, "shown", 25.0, None),
        (60, "covered", 24.9, "stops"),
        (60.1, "covered", 75.0, None),
        (60.1, "covered", 74.9, "caution"),
        (60.1, "covered", 50.0, "caution"),
        (60.1, "covered", 49.9, "stops"),
        (400, "shown", 80.0, None),
        (400, "shown", 79.9, "caution"),
        (400, "shown", 60.0, "caution"),
        (400, "shown", 59.9, "stops"),
    ],
)
def test_strips_keep_the_rule_of_their_opening(
    workshop: Workshop, diameter: float, rim: str, width: float, level: str | None
) -> None:
    """A hole up to 60 mm, a covered rim and a shown one each have their own two limits."""
    findings = found(shape.strips_wide_enough, workshop, beside(width, diameter, rim))
    assert [f.level for f in findings] == ([level] if level else [])


def test_a_narrow_strip_says_how_much_is_missing(workshop: Workshop) -> None:
    """Measures are rounded down and what is needed up, and no change is said beside a remedy's."""
    slab = slab_json(box(1400, 600), hole(360, 700, 218, label="basin"))
    (finding,) = found(shape.strips_wide_enough, workshop, slab)
    assert finding.message == strip_message(side_name("front"), 38, 60)
    assert finding.id == "strip-too-narrow.0.0-front"
    assert (finding.measured, finding.limit) == ({"width_mm": 38.0}, {"width_mm": 60})
    assert finding.where_mm == {"type": "LineString", "coordinates": [[700, 38], [700, 0]]}


def test_a_narrow_strip_speaks_inches_to_inches(workshop: Workshop) -> None:
    """Lengths come back in the unit of the opening they are about."""
    slab = slab_json(box("60 in", "24 in"), hole("14 in", "30 in", "8 1/2 in", label="basin"))
    (finding,) = found(shape.strips_wide_enough, workshop, slab)
    assert "is 1 1/2 in wide; it needs 2 3/8 in." in in_english(finding)


def test_a_tap_beside_its_basin_keeps_the_taps_rule(workshop: Workshop) -> None:
    """Between two openings the milder of their rules holds."""
    basin, tap = hole(360, 700, 300, label="basin"), hole(35, 700, 530, label="tap")
    slab = slab_json(box(1400, 650), basin, tap)
    assert found(shape.strips_wide_enough, workshop, slab) == []
    tap["centre"]["y"] = 520
    (finding,) = found(shape.strips_wide_enough, workshop, slab)
    assert finding.message == strip_message(Message("cutout-labelled", label="tap"), 22, 25)
    assert finding.at == ("/slabs/0/cutouts/0", "/slabs/0/cutouts/1")


def test_a_cautioned_strip_is_made_with_care(workshop: Workshop) -> None:
    """Between the two limits it is made, and the customer knows."""
    (finding,) = found(shape.strips_wide_enough, workshop, beside(70, 400, "shown"))
    values = values_of(finding, "strip-made-with-care")
    assert (values["width"], values["limit"]) == (Length.of_mm(70), Length.of_mm(80))
    assert values["faced"] == Listed((side_name("front"),), most=MAX_NAMED)


def test_the_side_that_an_opening_is_open_to_has_no_strip(workshop: Workshop) -> None:
    """An apron sink is not told off for the strip that it takes away."""
    sink = cut("rectangle", (600, 400), (900, 200), open_to="front")
    assert found(shape.strips_wide_enough, workshop, slab_json(box(1800, 650), sink)) == []


def test_the_first_rule_that_fits_is_used(workshop: Workshop) -> None:
    """Rules stand from the smallest opening on; an opening past all of them has none."""
    order = order_of(workshop, beside(80, 400, "shown"))
    cutout = order.slabs[0].cutouts[0]
    rules = [strip_rule(cutout, longer, workshop) for longer in (35.0, 400.0, 30_000.0)]
    assert [rule.stops_mm if rule else None for rule in rules] == [25, 60, None]


@pytest.mark.parametrize(
    ("radius", "stops"), [(0, True), (9.9, True), (10, False), ("3/8 in", True), (None, False)]
)
def test_inside_corners_are_as_the_formers_make_them(
    workshop: Workshop, radius: object, *, stops: bool
) -> None:
    """10 mm is the smallest former; a corner that nobody sized gets it."""
    more = {} if radius is None else {"corner_radius": radius}
    slab = slab_json(box(900, 600), cut("rectangle", (400, 300), (450, 300), **more))
    findings = found(shape.inside_corners, workshop, slab)
    assert [f.at for f in findings] == ([("/slabs/0/cutouts/0/corner_radius",)] if stops else [])


@pytest.mark.parametrize(
    ("more", "stops"),
    [
        ({}, False),
        ({"corner_radius": 0}, True),
        ({"corner_radius": 12}, False),
        ({"corner_radii": {"back-right": 5}}, True),
        ({"corner_radii": {"front-left": 5}}, False),
        ({"corner_radius": 20, "corner_radii": {"front-left": 5}}, False),
    ],
)
def test_the_inside_corner_of_an_l_is_checked(
    workshop: Workshop, more: Json, *, stops: bool
) -> None:
    """Only the radius of the notch's own corner is an inside one."""
    notch = {"corner": "back-right", "length": 300, "width": 200}
    outline = {"kind": "l-shape", "length": 1000, "width": 600, "notch": notch, **more}
    findings = found(shape.inside_corners, workshop, slab_json(outline))
    assert [f.check for f in findings] == (["inside-corner-too-tight"] if stops else [])


def test_a_strip_to_a_polygons_side_names_it_by_number(workshop: Workshop) -> None:
    """A polygon's sides have no names but their numbers."""
    ring = polygon((0, 0), (1400, 0), (1400, 600), (0, 600))
    (finding,) = found(shape.strips_wide_enough, workshop, slab_json(ring, hole(200, 700, 140)))
    assert "between the round cut-out and side 1 is 40 mm wide" in in_english(finding)


@pytest.mark.parametrize("limit_in", [2.5, 3.0, 3.25, 3.3125, 4.0625])
def test_a_strip_as_wide_as_its_limit_in_inches_is_wide_enough(
    workshop: Workshop, limit_in: float
) -> None:
    """A limit that is no whole tenth of a millimetre is met by itself, and not by 0.2 mm less."""
    limit_mm = limit_in * 25.4
    rules = tuple(
        replace(rule, stops_mm=limit_mm, cautions_mm=limit_mm) for rule in workshop.shaping.strips
    )
    there = replace(workshop, shaping=replace(workshop.shaping, strips=rules))
    assert found(shape.strips_wide_enough, there, beside(limit_mm, 300, "shown")) == []
    narrow = found(shape.strips_wide_enough, there, beside(limit_mm - 0.2, 300, "shown"))
    assert [one.level for one in narrow] == ["stops"]
