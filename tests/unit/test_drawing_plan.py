"""The plan: read back from its SVG, it is the order's own slab, and safe to show anywhere."""

import dataclasses
import math
from xml.etree import ElementTree as ET

import pytest

from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.drawing import Pin, TitleBlock, pin_at
from ledgerstone.drawing.beneath import unit_boxes
from ledgerstone.drawing.frame import SMALL
from ledgerstone.drawing.lettering import ACCENT, text_width
from ledgerstone.order import Cutout, Polygon, Rectangle, Rests, Unit
from ledgerstone.shape import shape_of
from ledgerstone.workshop import Workshop
from support.drawing_reader import SVG, area_of, texts
from support.drawn_slabs import GALLERY, Drawn, L, at, bench, disc, elbow, made
from support.hardest import many_sided
from unit.drawn_plans import parts, plan_of

WITHIN_MM = 0.1


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


def test_sides_too_short_for_a_letter_have_none(workshop: Workshop) -> None:
    """An outline of very many sides is drawn though no side has room for a letter."""
    points = many_sided(200, 2600, 1150)["points"]
    slab = made(Polygon(tuple(at(p["x"], p["y"]) for p in points)))
    drawn = plan_of(Drawn(slab), workshop)
    assert len(list(parts(drawn, "outline"))) == 1
    letters = [node for node in drawn.iter(f"{SVG}text") if node.text == "a"]
    assert [node.get("text-anchor") for node in letters] == [None]  # its section's alone


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
def test_an_inside_radius_is_reported_at_the_notch(corner: str, workshop: Workshop) -> None:
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
            {
                "type": "MultiPolygon",
                "coordinates": [
                    [[[0, 0], [1, 0], [1, 1], [0, 0]]],
                    [[[5, 0], [9, 0], [9, 9], [5, 0]]],
                ],
            },
            ((5.0, 0.0), (9.0, 0.0), (9.0, 9.0), (5.0, 0.0)),
        ),
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
    assert "Back: unseen" in said
    assert any(text.startswith("Right, left: square") for text in said)


def test_every_side_has_its_sections_letter(workshop: Workshop) -> None:
    """Front, back and both ends carry the letter of their section."""
    said = texts(plan_of(bench(), workshop))
    assert [said.count(letter) for letter in "abc"] == [2, 2, 3]


def test_of_many_sides_alike_one_is_lettered(workshop: Workshop) -> None:
    """A cog of two hundred sides has its section's letter on one of them, and at the section."""
    said = texts(plan_of(GALLERY["cog"], workshop))
    assert said.count("a") == 2


def test_a_gap_between_units_is_named_and_carries_nothing(workshop: Workshop) -> None:
    """Of three units and a gap, three are dotted."""
    assert len(list(parts(plan_of(GALLERY["long"], workshop), "rest"))) == 3


@pytest.mark.parametrize("corner", ["back-left", "back-right"])
def test_units_stand_no_deeper_than_the_slab(corner: str, workshop: Workshop) -> None:
    """Under an L, units are as deep as the slab is over their middle."""
    units = tuple(Unit(L(width)) for width in (600, 900, 600))
    slab = dataclasses.replace(elbow(corner), rests=Rests("units", units=units))  # type: ignore[arg-type]  # a corner's name
    assert slab.rests is not None
    deep = [y1 - y0 for (_, y0, _, y1), _ in unit_boxes(slab.rests, shape_of(slab, workshop))]
    assert deep == ([650.0, 650.0, 1500.0] if corner == "back-left" else [1500.0, 650.0, 650.0])


def test_figures_keep_off_the_lines_at_the_slabs_ends(workshop: Workshop) -> None:
    """A figure near an end stands beside the line that the overall hangs on, not on it."""
    slab = made(Rectangle(L(2100), L(600)), disc(40, 40, 300), disc(40, 2060, 300))
    shape = shape_of(slab, workshop)
    root = plan_of(slab, workshop)
    (group,) = (g for g in root.iter() if g.get("data-unit") == "mm")
    a, _, _, _, e, _ = map(float, group.attrib["transform"][7:-1].split())
    ends = [a * x + e for x in (shape.outline.bounds[0], shape.outline.bounds[2])]
    for node in root.iter(f"{SVG}text"):
        said = "".join(node.itertext())
        if said not in {"20", "40", "60", "2040", "2060", "2080"}:
            continue
        at, half = float(node.attrib["x"]), text_width(said, SMALL) / 2
        upright = "transform" in node.attrib  # from its foot up it lies left of its place
        low, high = (at - 0.75 * SMALL, at + 0.25 * SMALL) if upright else (at - half, at + half)
        assert not any(low < end < high for end in ends), said


@pytest.mark.parametrize(("unit", "bar"), [("mm", "200 mm"), ("cm", "20 cm"), ("m", "0.2 m")])
def test_the_scale_bar_speaks_the_sheets_unit(unit: str, bar: str, workshop: Workshop) -> None:
    """Who wrote centimetres reads them on the bar."""
    size = {"mm": ("1450 mm", "560 mm"), "cm": ("145 cm", "56 cm"), "m": ("1.45 m", "0.56 m")}[unit]
    assert bar in texts(plan_of(made(Rectangle(L(size[0]), L(size[1]))), workshop))


def test_rests_are_dotted_and_units_are_named(workshop: Workshop) -> None:
    """Each unit is dotted beneath and says what it is for."""
    root = plan_of(bench(), workshop)
    assert len(list(parts(root, "rest"))) == 2
    assert {"base 650 mm", "bowl 800 mm"} <= set(texts(root))


def test_the_title_block_says_what_it_is_reported(workshop: Workshop) -> None:
    """Reference, date, shade and workshop stand as they were passed in."""
    root = plan_of(bench(), workshop)
    said = " | ".join(texts(root))
    for told in ("TC-4821-A", "25 November 2026", "graphite", "Tarnside Casting"):
        assert told in said
    (swatch,) = parts(root, "shade")
    assert swatch.attrib["fill"] == "#4d4f50"


@pytest.mark.parametrize(("name", "wide_mm"), [("bench", 190.0), ("long", 190.0), ("feet", 190.5)])
def test_the_scale_is_that_of_the_printed_sheet(
    name: str, wide_mm: float, workshop: Workshop
) -> None:
    """Printed as wide as it says, a slab is as much smaller as it says, within half a part."""
    root = plan_of(GALLERY[name], workshop)
    (said,) = (text for text in texts(root) if text.startswith("Scale 1 : "))
    (group,) = (g for g in root.iter() if g.get("data-unit") == "mm")
    units_per_mm = float(group.attrib["transform"][7:].split()[0])
    sheet_mm = float(root.attrib["viewBox"].split()[2]) / units_per_mm
    assert float(said.split()[3]) == pytest.approx(sheet_mm / wide_mm, abs=0.5)
    assert ("7 1/2 in" if name == "feet" else "190 mm") in said


def test_a_sheet_without_a_shade_has_no_swatch(workshop: Workshop) -> None:
    """Nothing is coloured that was not told."""
    assert not list(parts(plan_of(bench(), workshop, TitleBlock()), "shade"))
