"""The plan: read back from its SVG, it is the order's own slab, and safe to show anywhere."""

import dataclasses
import math
from collections.abc import Iterator
from xml.etree import ElementTree as ET

import pytest

from ledgerstone.drawing import Pin, TitleBlock, describe, draw_plan, pin_at
from ledgerstone.drawing.lettering import ACCENT, INK, PAPER, PENCIL, SLAB
from ledgerstone.order import Cutout, Edge, Slab
from ledgerstone.quantities import Length
from ledgerstone.shape import cutout_size_mm, shape_of
from ledgerstone.workshop import Workshop
from unit.drawn_slabs import (
    GALLERY,
    SVG,
    TITLE,
    Drawn,
    area_of,
    bench,
    contrast,
    disc,
    elbow,
    read,
    texts,
)

WITHIN_MM = 0.1
HOSTILE = "</text><script>alert(1)</script>\"'&<b>\u202eknis\u202c\x00\x08" + "W" * 90


def plan_of(drawn: Drawn | Slab, workshop: Workshop, title: TitleBlock = TITLE) -> ET.Element:
    """Draw a slab's plan and read it back."""
    drawn = drawn if isinstance(drawn, Drawn) else Drawn(drawn)
    shape = shape_of(drawn.slab, workshop)
    return read(draw_plan(drawn.slab, shape, title=title, pins=drawn.pins))


def parts(root: ET.Element, part: str) -> Iterator[ET.Element]:
    """Return the elements that are marked as a part."""
    return (node for node in root.iter() if node.get("data-part") == part)


def expected_area_mm2(cutout: Cutout, inside_radius_mm: float) -> float:
    """Area of an opening by hand: a circle, a slot's two halves, a box less its four corners."""
    length, width = cutout_size_mm(cutout)
    if cutout.kind == "circle":
        return math.pi * length**2 / 4
    radius = min(length, width) / 2
    if cutout.kind == "rectangle":
        radius = cutout.corner_radius.mm if cutout.corner_radius is not None else inside_radius_mm
    return length * width - (4 - math.pi) * radius**2


@pytest.mark.parametrize("name", GALLERY)
def test_openings_read_back_where_and_as_large_as_they_were_ordered(
    name: str, workshop: Workshop
) -> None:
    """Each opening's area and middle are the order's, within 0.1 mm of side."""
    slab = GALLERY[name].slab
    drawn = {
        int(node.attrib["data-index"]): node
        for node in parts(plan_of(GALLERY[name], workshop), "opening")
    }
    assert sorted(drawn) == list(range(len(slab.cutouts)))
    for i, cutout in enumerate(slab.cutouts):
        if cutout.open_to is not None or cutout.centre is None:
            continue
        area = area_of(drawn[i])
        side = math.sqrt(expected_area_mm2(cutout, workshop.shaping.inside_radius_mm))
        assert math.sqrt(area.area) == pytest.approx(side, abs=WITHIN_MM)
        assert area.centroid.x == pytest.approx(cutout.centre.x.mm, abs=WITHIN_MM)
        assert area.centroid.y == pytest.approx(cutout.centre.y.mm, abs=WITHIN_MM)


@pytest.mark.parametrize("name", GALLERY)
def test_the_outline_reads_back_with_its_exact_area(name: str, workshop: Workshop) -> None:
    """The outline drawn is the outline worked out."""
    shape = shape_of(GALLERY[name].slab, workshop)
    (outline,) = parts(plan_of(GALLERY[name], workshop), "outline")
    assert area_of(outline).area == pytest.approx(shape.outline_area_mm2, rel=1e-4)


def test_the_front_is_at_the_bottom(workshop: Workshop) -> None:
    """What is drawn to scale stands in plane millimetres, turned so that y runs up the sheet."""
    (group,) = (g for g in plan_of(bench(), workshop).iter() if g.get("data-unit") == "mm")
    a, b, c, d, _, _ = map(float, group.attrib["transform"][7:-1].split())
    assert a > 0
    assert d == -a
    assert (b, c) == (0, 0)


def test_an_opening_that_is_open_to_a_side_is_drawn_to_it(workshop: Workshop) -> None:
    """A sink that is open to the front reaches the front."""
    nodes = list(parts(plan_of(GALLERY["long"], workshop), "opening"))
    assert area_of(nodes[1]).bounds == pytest.approx((1775, 0, 2225, 480), abs=WITHIN_MM)


def test_a_bench_has_the_figures_that_its_order_gives(workshop: Workshop) -> None:
    """Overalls, centres and edges of the openings are figured along both axes, in mm."""
    said = texts(plan_of(bench(), workshop))
    assert {"1450", "560", "980", "270", "505", "800", "1160", "90", "450"} <= set(said)
    assert "Figures in mm" in said


def test_inches_are_figured_in_inches(workshop: Workshop) -> None:
    """A sheet speaks the unit in which the order came, and says so."""
    said = texts(plan_of(GALLERY["inches"], workshop))
    assert {"57", "22 1/16", "28", "11 3/8", "20 1/2", "35 1/2"} <= set(said)
    assert "Figures in inches" in said
    assert not any("mm" in text for text in said)


def test_feet_are_figured_in_feet_and_inches(workshop: Workshop) -> None:
    """Feet are written as a carpenter writes them."""
    assert {"4' 9\"", "1' 10 1/16\"", "2' 4\""} <= set(texts(plan_of(GALLERY["feet"], workshop)))


def test_a_round_slab_is_figured_by_its_diameter(workshop: Workshop) -> None:
    """Both overalls of a round slab are its diameter."""
    assert texts(plan_of(GALLERY["round"], workshop)).count("Ø 900") == 2


def test_places_without_room_for_a_figure_are_counted(workshop: Workshop) -> None:
    """A sheet says so when some places could not be figured."""
    said = texts(plan_of(GALLERY["cables"], workshop))
    assert any("more places without room" in text for text in said)


@pytest.mark.parametrize("corner", ["front-left", "front-right", "back-right", "back-left"])
def test_an_inside_radius_is_told_at_the_notch(corner: str, workshop: Workshop) -> None:
    """The radius given for an L's notched corner is shown by its inside corner."""
    slab = elbow(corner)  # type: ignore[arg-type]  # a corner's name
    assert "R 30" in texts(plan_of(slab, workshop))


def test_every_pin_is_numbered_and_its_strip_has_its_width(workshop: Workshop) -> None:
    """A pin has its number and level; a strip its width; a square stops, a circle goes on."""
    root = plan_of(GALLERY["bench"], workshop)
    pins = {node.attrib["data-pin"]: node for node in root.iter() if "data-pin" in node.attrib}
    assert {n: node.attrib["data-level"] for n, node in pins.items()} == {
        "1": "stops",
        "2": "caution",
        "3": "note",
        "4": "caution",
    }
    assert pins["1"].tag == f"{SVG}rect"
    assert pins["2"].tag == pins["3"].tag == f"{SVG}circle"
    assert {"37.5 mm", "90 mm", "1", "2", "3", "4"} <= set(texts(root))


def test_a_pin_far_off_the_slab_stays_on_the_sheet(workshop: Workshop) -> None:
    """A place twenty metres away is marked at the border."""
    drawn = Drawn(bench(), (Pin(1, "stops", ((20000.0, -20000.0),)),))
    (mark,) = (node for node in plan_of(drawn, workshop).iter() if "data-pin" in node.attrib)
    assert 0 <= float(mark.attrib["x"]) <= 600


@pytest.mark.parametrize(
    ("where", "at_mm"),
    [
        ({"type": "Point", "coordinates": [1, 2]}, ((1.0, 2.0),)),
        ({"type": "LineString", "coordinates": [[1, 2], [3, 4]]}, ((1.0, 2.0), (3.0, 4.0))),
        (
            {"type": "Polygon", "coordinates": [[[0, 0], [1, 0], [1, 1], [0, 0]]]},
            ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 0.0)),
        ),
    ],
)
def test_a_findings_place_becomes_a_pin(where: dict[str, object], at_mm: object) -> None:
    """GeoJSON-shaped places are pinned as they stand."""
    assert pin_at(1, "stops", where) == Pin(1, "stops", at_mm)  # type: ignore[arg-type]  # points


def test_a_finding_without_a_place_has_no_pin() -> None:
    """Nothing is pinned where nothing was measured."""
    assert pin_at(1, "note", None) is None
    assert pin_at(1, "note", {"type": "GeometryCollection", "geometries": []}) is None


def test_a_wall_is_hatched_and_a_covered_rim_is_dashed(workshop: Workshop) -> None:
    """Walls, flanges, heat, drops and drips are each marked."""
    bare = plan_of(
        Drawn(dataclasses.replace(bench(), edges={}, cutouts=bench().cutouts[:1])), workshop
    )
    full = plan_of(bench(), workshop)
    hatched = [n for n in full.iter() if n.get("fill", "").endswith("-hatch)")]
    assert len(hatched) == 2  # the wall in plan, and in its section
    assert not [n for n in bare.iter() if n.get("fill", "").endswith("-hatch)")]
    assert _dashes(full) > _dashes(bare)


def _dashes(root: ET.Element) -> int:
    (group,) = (g for g in root.iter() if g.get("data-unit") == "mm")
    return sum(1 for node in group if "stroke-dasharray" in node.attrib)


def test_a_hot_appliance_is_ringed_and_said(workshop: Workshop) -> None:
    """A heat opening is ringed in the accent and named in the table."""
    root = plan_of(GALLERY["long"], workshop)
    assert [n for n in root.iter() if n.get("stroke") == ACCENT]
    assert any("hot appliance" in text for text in texts(root))


def test_sides_made_alike_share_a_section(workshop: Workshop) -> None:
    """Each way that an edge is made has one section, with the sides it stands for."""
    said = texts(plan_of(bench(), workshop))
    assert "Front: bevel 5 mm" in said
    assert "Back: against a wall" in said
    assert any(text.startswith("Right, left: square") for text in said)


def test_every_side_has_its_sections_letter(workshop: Workshop) -> None:
    """Front, back and both ends carry the letter of their section."""
    said = texts(plan_of(bench(), workshop))
    assert [said.count(letter) for letter in "abc"] == [2, 2, 3]


def test_a_gap_between_units_is_named_and_carries_nothing(workshop: Workshop) -> None:
    """Of three units and a gap, three are dotted."""
    assert len(list(parts(plan_of(GALLERY["long"], workshop), "rest"))) == 3


def test_rests_are_dotted_and_units_are_named(workshop: Workshop) -> None:
    """Each unit is dotted beneath and says what it is for."""
    root = plan_of(bench(), workshop)
    assert len(list(parts(root, "rest"))) == 2
    assert {"base 650 mm", "basin 800 mm"} <= set(texts(root))


def test_the_title_block_says_what_it_is_told(workshop: Workshop) -> None:
    """Reference, date, scale, shade and workshop stand as they were passed in."""
    root = plan_of(bench(), workshop)
    said = " | ".join(texts(root))
    for told in ("TC-4821-A", "25 November 2026", "1 : 20 on A4", "graphite", "Tarnside Casting"):
        assert told in said
    (swatch,) = parts(root, "shade")
    assert swatch.attrib["fill"] == "#4d4f50"


def test_a_sheet_without_a_shade_has_no_swatch(workshop: Workshop) -> None:
    """Nothing is coloured that was not told."""
    assert not list(parts(plan_of(bench(), workshop, TitleBlock()), "shade"))


def hostile_slab() -> Slab:
    """Make a slab whose every text is meant to break out."""
    return dataclasses.replace(
        bench(), label=HOSTILE, cutouts=(disc(300, 700, 280, HOSTILE), disc(35, 980, 505, HOSTILE))
    )


def test_customers_texts_are_text_and_nothing_else(workshop: Workshop) -> None:
    """Markup, quotes, controls and direction marks in a label are never obeyed."""
    title = TitleBlock(reference=HOSTILE, label=HOSTILE, shade=HOSTILE, workshop=HOSTILE)
    root = plan_of(hostile_slab(), workshop, title)
    tags = {node.tag.removeprefix(SVG) for node in root.iter()}
    assert tags <= {
        "svg",
        "g",
        "path",
        "circle",
        "rect",
        "line",
        "text",
        "title",
        "desc",
        "defs",
        "pattern",
    }
    said = "".join("".join(node.itertext()) for node in root.iter())
    assert "<script>" in said
    assert not any(mark in said for mark in "\x00\x08\u202e\u202c")


@pytest.mark.parametrize("name", [*GALLERY, "hostile"])
def test_a_plan_is_safe_small_and_always_the_same(name: str, workshop: Workshop) -> None:
    """No style, no script, no way out, at most 60 kB, and the same bytes for the same order."""
    drawn = Drawn(hostile_slab()) if name == "hostile" else GALLERY[name]
    shape = shape_of(drawn.slab, workshop)
    svg = draw_plan(drawn.slab, shape, title=TITLE, pins=drawn.pins)
    assert svg == draw_plan(drawn.slab, shape, title=TITLE, pins=drawn.pins)
    assert len(svg.encode()) <= 60_000
    for node in read(svg).iter():
        for attribute, value in node.attrib.items():
            assert "style" not in attribute
            assert "href" not in attribute
            assert not attribute.startswith("on")
            assert "url(" not in value or value.startswith("url(#plan-")


def test_ids_of_two_drawings_do_not_meet(workshop: Workshop) -> None:
    """Two drawings can stand in one page: their ids differ, and none is used twice."""
    ids = [
        node.attrib["id"]
        for name in ("bench", "long")
        for node in plan_of(GALLERY[name], workshop).iter()
        if "id" in node.attrib
    ]
    assert len(ids) == len(set(ids))


@pytest.mark.parametrize("ink", [INK, PENCIL, ACCENT])
@pytest.mark.parametrize("ground", [PAPER, SLAB])
def test_lines_and_letters_stand_out_from_the_paper(ink: str, ground: str) -> None:
    """Every pen has a contrast of 4.5 : 1 on the paper and on the slab (WCAG 2.2, 1.4.3)."""
    assert contrast(ink, ground) >= 4.5


@pytest.mark.parametrize("name", GALLERY)
def test_the_sheet_brings_its_own_paper_and_keeps_to_its_pens(
    name: str, workshop: Workshop
) -> None:
    """The whole sheet is opaque paper, so a dark page changes nothing; letters use three pens."""
    root = plan_of(GALLERY[name], workshop)
    paper = root.find(f"{SVG}rect")
    assert paper is not None
    assert (paper.attrib["fill"], paper.attrib.get("fill-opacity")) == (PAPER, None)
    assert root.attrib["viewBox"] == f"0 0 {paper.attrib['width']} {paper.attrib['height']}"
    letters = [node for node in root.iter(f"{SVG}text") if node.attrib["fill"] != PAPER]
    assert {node.attrib["fill"] for node in letters} <= {INK, PENCIL, ACCENT}
    assert min(float(node.attrib["font-size"]) for node in letters) * 320 / 600 >= 8.0


def test_the_drawing_says_itself(workshop: Workshop) -> None:
    """A bench is described with its size, openings, edges and rests in the order's words."""
    slab = bench()
    assert describe(slab, shape_of(slab, workshop)) == (
        "A slab 1450 mm by 560 mm, 40 mm thick. "
        "An opening (basin): round, 360 mm across, its centre 980 mm from the left and 270 mm "
        "from the front. "
        "An opening (tap): round, 35 mm across, its centre 980 mm from the left and 505 mm from "
        "the front, rim covered. "
        "Front: bevel 5 mm. Back: against a wall. "
        "It rests on base 650 mm, basin 800 mm."
    )


def test_the_description_stands_in_the_drawing(workshop: Workshop) -> None:
    """A screen reader is given the title and the description."""
    root = plan_of(bench(), workshop)
    title, says = root[0], root[1]
    assert root.attrib["role"] == "img"
    assert root.attrib["aria-labelledby"] == f"{title.attrib['id']} {says.attrib['id']}"
    assert (title.text, says.text) == (
        "Plan: Seed-tray bench",
        describe(bench(), shape_of(bench(), workshop)),
    )


@pytest.mark.parametrize(
    ("name", "begins"),
    [
        (
            "L back-left",
            "An L-shaped slab 2100 mm by 1500 mm, 40 mm thick, less 1400 mm by 850 mm at its back",
        ),
        ("round", "A round slab 900 mm across, 40 mm thick."),
        ("nine sides", "A slab with 9 sides, 1073.5 mm by 1080.6 mm over all, 40 mm thick."),
        ("inches", "A slab 57 in by 22 1/16 in, 1 1/2 in thick."),
    ],
)
def test_every_outline_is_said(name: str, begins: str, workshop: Workshop) -> None:
    """Each kind of outline has its own first sentence."""
    slab = GALLERY[name].slab
    assert describe(slab, shape_of(slab, workshop)).startswith(begins)


def test_a_slab_cast_smaller_is_figured_as_cast(workshop: Workshop) -> None:
    """Between walls, the overall is what is left when the fitting gaps are off."""
    slab = dataclasses.replace(
        bench(), size_from="between-walls", edges={"left": Edge("wall"), "right": Edge("wall")}
    )
    gap = workshop.shaping.fitting_gap_mm
    figure = Length.of_mm(1450 - 2 * gap).text().removesuffix(" mm")
    assert figure in texts(plan_of(slab, workshop))
