"""What a plan says, and that nothing a customer writes is more than text in it."""

import dataclasses

import pytest

from ledgerstone.drawing import TitleBlock, describe, draw_plan
from ledgerstone.drawing.frame import PHONE_WIDTH
from ledgerstone.drawing.lettering import ACCENT, INK, PAPER, PENCIL, SLAB_FILL
from ledgerstone.order import Edge, Slab
from ledgerstone.quantities import Length
from ledgerstone.shape import shape_of
from ledgerstone.wording import Listed, Message, english
from ledgerstone.workshop import Workshop
from support.drawing_reader import SVG, read, texts
from support.drawn_slabs import GALLERY, TITLE, Drawn, bench, disc
from unit.contrast import contrast
from unit.drawn_plans import plan_of

HOSTILE = "</text><script>alert(1)</script>\"'&<b>\u202eknis\u202c\x00\x08" + "W" * 90


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


def test_a_phone_shows_letters_of_twelve_pixels(workshop: Workshop) -> None:
    """On a phone 390 px wide, 16 px of margin at each side, no letter of a plan is under 12 px."""
    slab = bench()
    svg = draw_plan(slab, shape_of(slab, workshop), title=TITLE, wide=PHONE_WIDTH)
    sizes = [float(node.attrib["font-size"]) for node in read(svg).iter(f"{SVG}text")]
    assert min(sizes) * (390 - 2 * 16) / PHONE_WIDTH >= 12


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
@pytest.mark.parametrize("ground", [PAPER, SLAB_FILL])
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


def mm(length: float) -> Length:
    """A length in millimetres."""
    return Length.of_mm(length)


def box(length: Length, width: Length, thickness: Length) -> dict[str, Length]:
    """The sizes of a slab over all."""
    return {"length": length, "width": width, "thickness": thickness}


def across(diameter: float) -> Message:
    """The size of a round opening."""
    return Message("plan-size-round", across=mm(diameter))


def listed(*things: Message) -> Listed:
    """Things with commas between them."""
    return Listed(things, joined="comma")


def along(side: str, edge: Message) -> Message:
    """What is along one side."""
    return Message(
        "plan-edge", sides=listed(Message("plan-side-word", side=side)), edge=listed(edge)
    )


def rectangle(length: Length, width: Length, thickness: Length) -> Message:
    """The first sentence of a rectangular slab."""
    return Message("plan-rectangle", **box(length, width, thickness))


def test_the_drawing_says_itself(workshop: Workshop) -> None:
    """A bench is described with its size, openings, edges and rests in the order's words."""
    slab = bench()
    basin = (across(360), Message("plan-centre", x=mm(980), y=mm(270)))
    tap = (across(35), Message("plan-centre", x=mm(980), y=mm(505)), Message("plan-rim-covered"))
    units = (("base", 650), ("basin", 800))
    rests = tuple(Message("rest-unit", use=use, width=mm(width)) for use, width in units)
    told = (
        rectangle(mm(1450), mm(560), mm(40)),
        Message("plan-opening-labelled", label="basin", facts=listed(*basin)),
        Message("plan-opening-labelled", label="tap", facts=listed(*tap)),
        along("front", Message("plan-edge-bevel", size=mm(5))),
        along("back", Message("plan-edge-profile", profile="wall")),
        Message("plan-rests", rests=listed(Message("rest-units", count=2, units=listed(*rests)))),
    )
    assert describe(slab, shape_of(slab, workshop)) == " ".join(map(english, told))


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
        ("round", english(Message("plan-round", across=mm(900), thickness=mm(40)))),
        (
            "nine sides",
            english(Message("plan-polygon", sides=9, **box(mm(1073.5), mm(1080.6), mm(40)))),
        ),
        ("inches", english(rectangle(*map(Length.parse, ("57 in", "22 1/16 in", "1 1/2 in"))))),
    ],
)
def test_every_outline_is_stated(name: str, begins: str, workshop: Workshop) -> None:
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
