"""The PNG: ours alone, in letters of our own, the same bytes each time, of the width asked for."""

import dataclasses
import io
import re
import struct
from pathlib import Path

import pytest
from PIL import Image

from ledgerstone.drawing import (
    NARROWEST_PX,
    WIDEST_PX,
    DrawnSlab,
    draw_assembled,
    draw_plan,
    draw_view,
    rasterise,
)
from ledgerstone.drawing.lettering import GLYPH_NOTE, text_width, with_known_glyphs
from ledgerstone.drawing.raster import FONT_FOLDER, MAX_PIXELS, painted_width_px
from ledgerstone.order import Rectangle
from ledgerstone.shape import shape_of
from ledgerstone.wording import speech_in
from ledgerstone.workshop import Workshop
from support.drawn_slabs import GALLERY, TITLE, L, bench, disc, made

ENGLISH = speech_in("en")
PLAIN = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100">{}</svg>'


def plan(workshop: Workshop, name: str = "bench") -> str:
    """Draw one plan of the gallery."""
    drawn = GALLERY[name]
    return draw_plan(drawn.slab, shape_of(drawn.slab, workshop), title=TITLE, pins=drawn.pins)


def picture(png: bytes) -> Image.Image:
    """Read a PNG back."""
    return Image.open(io.BytesIO(png))


@pytest.mark.parametrize("width_px", [320, 600, 1200, 1600])
def test_a_picture_is_as_wide_as_it_was_asked_for(width_px: int, workshop: Workshop) -> None:
    """The width is to the pixel, and the height keeps the sheet's own proportions."""
    svg = plan(workshop)
    size = re.search(r'viewBox="0 0 ([\d.]+) ([\d.]+)"', svg)
    assert size is not None
    shown = picture(rasterise(svg, width_px, ENGLISH))
    assert shown.format == "PNG"
    assert shown.width == width_px
    assert shown.height == pytest.approx(width_px * float(size[2]) / float(size[1]), abs=1)


@pytest.mark.parametrize(("wished", "painted"), [(-5, 320), (0, 320), (1, 320), (10**9, 1600)])
def test_a_width_is_kept_within_its_bounds(wished: int, painted: int) -> None:
    """No width asks for a picture that would fill the memory."""
    assert (NARROWEST_PX, WIDEST_PX) == (320, 1600)
    assert painted_width_px(wished, 1.0) == painted


@pytest.mark.parametrize("height_share", [0.3, 1.0, 3.0, 25.0])
def test_no_picture_has_more_pixels_than_may_be(height_share: float) -> None:
    """A very tall sheet comes out narrower."""
    width = painted_width_px(WIDEST_PX, height_share)
    assert width * width * height_share <= MAX_PIXELS
    assert width == WIDEST_PX or height_share > 1.9


def test_the_same_drawing_gives_the_same_bytes(workshop: Workshop) -> None:
    """Nothing in the picture hangs on the moment or on the machine's own fonts."""
    slab = bench()
    view = draw_view([DrawnSlab(slab, shape_of(slab, workshop), "#5b5d5a", 0.3, "x")], title="View")
    for svg in (plan(workshop), view):
        assert rasterise(svg, 600, ENGLISH) == rasterise(svg, 600, ENGLISH)


@pytest.mark.parametrize(
    "inside",
    [
        '<image href="/etc/hostname" width="9" height="9"/>',
        '<image xlink:href="file:///etc/hostname" width="9" height="9"/>',
        '<image href="http://example.org/a.png" width="9" height="9"/>',
        '<use href="#a"/>',
    ],
)
def test_a_drawing_that_leads_out_of_itself_is_refused(inside: str) -> None:
    """The renderer opens what a drawing names, so that nothing may be named."""
    with pytest.raises(ValueError, match="a drawing of ours"):
        rasterise(PLAIN.format(inside), 600, ENGLISH)


@pytest.mark.parametrize("svg", ["", "not a drawing", "<svg>", '<svg viewBox="1 2 3"/>'])
def test_what_has_no_size_is_refused(svg: str) -> None:
    """A picture without a size is none of ours."""
    with pytest.raises(ValueError, match="a drawing of ours"):
        rasterise(svg, 600, ENGLISH)


def _ink(text: str, weight: str = "normal") -> tuple[int, int]:
    """Left and right of the ink of a text 100 units high, in pixels of a unit each."""
    letters = (
        '<rect width="1600" height="200" fill="#fff"/><text x="100" y="130" font-size="100"'
        f' font-family="Liberation Sans, Arial, sans-serif" font-weight="{weight}">{text}</text>'
    )
    svg = PLAIN.format(letters).replace("0 0 200 100", "0 0 1600 200")
    grey = picture(rasterise(svg, 1600, ENGLISH)).convert("L")
    dark = grey.point(lambda value: 255 * (value < 128))
    box = dark.getbbox()
    assert box is not None
    return box[0], box[2]


@pytest.mark.parametrize("weight", ["normal", "bold"])
def test_letters_come_from_the_font_that_we_ship(weight: str) -> None:
    """A row of letters is as wide as the metrics by which labels are placed say.

    Source: the advance widths of Adobe's core fonts, in ``lettering``; two rows that differ by
    ten letters differ by ten advances, so that side bearings fall out.
    """
    for letter in "niMW8@":
        (_, long), (_, short) = _ink(letter * 12, weight), _ink(letter * 2, weight)
        advances = text_width(letter, 100, bold=weight == "bold") * 10
        assert long - short == pytest.approx(advances, abs=2)


def test_the_fonts_are_small_and_carry_their_licence() -> None:
    """Both weights together are under 200 kB, and their licence lies beside them."""
    fonts = sorted(FONT_FOLDER.glob("*.ttf"))
    assert [font.name for font in fonts] == ["sans-bold.ttf", "sans-regular.ttf"]
    assert sum(font.stat().st_size for font in fonts) <= 200_000
    licence = (FONT_FOLDER / "OFL.txt").read_text(encoding="utf-8")
    assert "SIL OPEN FONT LICENSE Version 1.1" in licence
    assert "Reserved Font Name" in licence


@pytest.mark.parametrize("letter", list("Éßøłžß½⅛×–“”€ΩπжшØ"))
def test_usual_letters_and_signs_are_there(letter: str) -> None:
    """Latin, Greek, Cyrillic and the signs of drawings leave ink of their own."""
    left, right = _ink(letter)
    assert right > left


def _in_the_font(path: Path) -> set[int]:
    """Letters that a font has, from its own table. Source: OpenType 1.9.1, cmap, format 4."""
    font = path.read_bytes()
    (tables,) = struct.unpack(">H", font[4:6])
    places = {font[12 + 16 * i : 16 + 16 * i]: 20 + 16 * i for i in range(tables)}
    (start,) = struct.unpack(">I", font[places[b"cmap"] : places[b"cmap"] + 4])
    (at,) = struct.unpack(">I", font[start + 8 : start + 12])
    table = font[start + at :]
    kind, twice = *struct.unpack(">H", table[:2]), *struct.unpack(">H", table[6:8])
    assert kind == 4
    ends = struct.unpack(f">{twice // 2}H", table[14 : 14 + twice])
    begins = struct.unpack(f">{twice // 2}H", table[16 + twice : 16 + 2 * twice])
    return {c for a, b in zip(begins, ends, strict=True) for c in range(a, b + 1)} - {0xFFFF}


@pytest.mark.parametrize("weight", ["regular", "bold"])
def test_we_know_which_letters_our_font_has(weight: str) -> None:
    """A letter gets a star exactly where the font has none."""
    has = _in_the_font(FONT_FOLDER / f"sans-{weight}.ttf")
    wide = [c for c in range(32, 0x10000) if not 0xD800 <= c < 0xE000]
    assert {c for c in wide if with_known_glyphs(chr(c)) == chr(c)} == has
    assert with_known_glyphs("\U0001f600") == "*"


@pytest.mark.parametrize(
    "label",
    ["水槽", "حوض", "आधार", "\U0001f600", "אגן", "שלום basin 水", "\u0e2d\u0e48\u0e32\u0e07"],
)
def test_letters_that_we_do_not_have_are_starred_and_said(label: str, workshop: Workshop) -> None:
    """A picture never shows boxes without a word: it is one line taller, which says so."""
    slab = made(Rectangle(L(1200), L(600)), disc(300, 600, 300, label), label=label, reliefs=())
    shape = shape_of(slab, workshop)
    told, plain = (
        draw_plan(dataclasses.replace(slab, label=name, cutouts=(
            dataclasses.replace(slab.cutouts[0], label=name),)), shape, title=TITLE)
        for name in (label, "*" * len(label))
    )  # fmt: skip
    assert label.split(maxsplit=1)[0] in told
    starred, other = (picture(rasterise(svg, 600, ENGLISH)) for svg in (told, plain))
    assert starred.width == 600
    assert starred.height - other.height in range(20, 40)
    assert ENGLISH.say(GLYPH_NOTE).startswith("* ")


def test_an_assembled_plan_in_other_letters_is_painted(workshop: Workshop) -> None:
    """Pieces named in any script are painted, and the size of the picture is still ours."""
    slabs = [made(Rectangle(L(900), L(600)), label="水槽" * 30)] * 2
    svg = draw_assembled(slabs, [shape_of(slab, workshop) for slab in slabs], [], ENGLISH)
    assert picture(rasterise(svg, 1200, ENGLISH)).width == 1200
