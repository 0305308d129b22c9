"""Paper at true size, measured in another library's rendering of the PDF, never in our own."""

import math
from dataclasses import replace

import numpy as np
import numpy.typing as npt
import pypdfium2
import pytest

from ledgerstone.drawing import TooManySheets, corner_drawn, cutout_drawn, true_size_pdf
from ledgerstone.drawing.tiling import MAX_SHEETS, PAPERS, SheetSize, Tiling, tiling_of
from ledgerstone.order import CORNERS, Cutout, Polygon, Rectangle, Slab
from ledgerstone.shape import shape_of
from ledgerstone.wording import Message, speech_in
from ledgerstone.workshop import Workshop
from support.drawn_slabs import GALLERY, L, at, bench, disc, elbow, made, oblong

PT_PER_MM = 72 / 25.4
PX_PER_MM = 10
# The pen is 0.35 mm wide and a pixel is 0.1 mm: an edge is found to a pixel at each end.
WITHIN_MM = 0.25
Dark = npt.NDArray[np.bool_]

ENGLISH = speech_in("en")


def printed(slab: Slab, cutout: int, workshop: Workshop, paper: SheetSize = "a4") -> bytes:
    """Print one cut-out."""
    radius = workshop.shaping.inside_radius_mm
    drawn = cutout_drawn(slab, shape_of(slab, workshop), cutout, radius)
    assert drawn is not None
    pdf = true_size_pdf(drawn, paper, ENGLISH, workshop="Tarnside Casting")
    assert isinstance(pdf, bytes)
    return pdf


def pages(pdf: bytes) -> list[Dark]:
    """Every page at ten pixels a millimetre: true where there is ink of the solid black pen."""
    document = pypdfium2.PdfDocument(pdf)
    scale = PX_PER_MM / PT_PER_MM
    shown = [page.render(scale=scale).to_numpy()[:, :, :3] for page in document]
    document.close()
    return [picture.max(axis=2) < 110 for picture in shown]


def extent_mm(dark: Dark, axis: int) -> float:
    """How far the ink of a window reaches along an axis, between the middles of its lines."""
    along = np.flatnonzero(np.any(dark, axis=axis))
    return float(along[-1] - along[0] + 1) / PX_PER_MM - 0.35


def tile_of(page: Dark, tiling: Tiling) -> Dark:
    """Return the part of a page that shows the plane."""
    x0, y0, x1, y1 = (round(PX_PER_MM * mm) for mm in tiling.tile)
    part: Dark = page[y0:y1, x0:x1]
    return part


@pytest.mark.parametrize("paper", PAPERS)
def test_pages_are_of_the_paper_asked_for(paper: SheetSize, workshop: Workshop) -> None:
    """Every page is A4 or A3 to a hundredth of a millimetre. Source: ISO 216."""
    document = pypdfium2.PdfDocument(printed(bench(), 0, workshop, paper))
    for page in document:
        size_mm = (page.get_width() / PT_PER_MM, page.get_height() / PT_PER_MM)
        assert size_mm == pytest.approx(PAPERS[paper], abs=0.01)


@pytest.mark.parametrize("diameter", [35, 120.5, 170])
def test_a_round_opening_is_as_wide_on_paper(diameter: float, workshop: Workshop) -> None:
    """A circle on one sheet, rendered by another library, has its own diameter."""
    slab = made(Rectangle(L(1450), L(560)), disc(diameter, 980, 270))
    (page,) = pages(printed(slab, 0, workshop))
    window = tile_of(page, tiling_of((0, 0, diameter, diameter), "a4"))
    middle = window.shape[0] // 2
    # Along a row just off the centre's cross, the outermost ink is the circle's.
    off = 12
    row = np.flatnonzero(window[middle + off * PX_PER_MM])
    chord = 2 * math.sqrt((diameter / 2) ** 2 - off**2)
    assert (row[-1] - row[0] + 1) / PX_PER_MM == pytest.approx(
        chord + 0.35 * (diameter / 2) / (chord / 2), abs=WITHIN_MM
    )


def test_sheets_put_together_make_the_whole(workshop: Workshop) -> None:
    """A rectangle over four sheets, trimmed at their marks and laid edge to edge, measures true."""
    slab = made(Rectangle(L(1450), L(760)), oblong("rectangle", (330, 400), (700, 380)))
    drawn = cutout_drawn(slab, shape_of(slab, workshop), 0, workshop.shaping.inside_radius_mm)
    assert drawn is not None
    tiling = tiling_of(drawn.window, "a4")
    assert (tiling.columns, tiling.rows) == (2, 2)
    parts = [tile_of(page, tiling) for page in pages(printed(slab, 0, workshop))]
    whole: Dark = np.vstack([np.hstack(parts[:2]), np.hstack(parts[2:])])
    # Off the centre's cross, which reaches past the cut.
    middle = [size // 2 for size in whole.shape]
    across = whole[middle[0] + 1000 : middle[0] + 1200, :]
    down = whole[:, middle[1] + 1000 : middle[1] + 1200]
    assert extent_mm(across, 0) == pytest.approx(330, abs=WITHIN_MM)
    assert extent_mm(down, 1) == pytest.approx(400, abs=WITHIN_MM)


def test_the_rulers_are_as_long_as_they_say(workshop: Workshop) -> None:
    """Both rulers under the sheet, rendered by another library, are 100 mm and 4 in."""
    (page,) = pages(printed(bench(), 1, workshop))
    x0, _, _, y1 = Tiling("a4", 1, 1, (0.0, 0.0)).tile
    for down_mm, long_mm in ((15.0, 100.0), (23.0, 101.6)):
        at_px = round(PX_PER_MM * (y1 + down_mm))
        band: Dark = np.asarray(page[at_px - 2 : at_px + 3].any(axis=0), dtype=np.bool_)
        left = round(PX_PER_MM * x0)
        start = left - 5 + int(np.argmax(band[left - 5 :]))
        run = int(np.argmin(band[start:]))
        assert run / PX_PER_MM == pytest.approx(long_mm, abs=0.4)


def test_it_says_to_check_the_print_and_what_it_is(workshop: Workshop) -> None:
    """Each sheet has its name, what is drawn, and to measure the rulers before cutting."""
    document = pypdfium2.PdfDocument(printed(bench(), 0, workshop))
    assert len(document) == 4
    for page, name in zip(document, ("A1", "B1", "A2", "B2"), strict=True):
        said = " ".join(page.get_textpage().get_text_range().split())
        assert ENGLISH.say(Message("true-size-check")) in said
        assert f"Sheet {name}" in said
        assert "basin (A) of “Seed-tray bench”" in said
        assert "round, 360 mm across" in said


def test_customers_words_are_words(workshop: Workshop) -> None:
    """A label that looks like markup of the printer's is printed as it stands."""
    label = '#panic("x") *bold* $x$ \\ "quoted" @see <a>'
    slab = made(Rectangle(L(900), L(500)), disc(100, 400, 250, label))
    document = pypdfium2.PdfDocument(printed(slab, 0, workshop))
    said = " ".join(document[0].get_textpage().get_text_range().split())
    assert label.split(maxsplit=1)[0] in said
    assert "*bold* $x$" in said


def test_it_is_the_same_each_time_and_tagged(workshop: Workshop) -> None:
    """The same order gives the same bytes; no clock is in them."""
    pdf = printed(bench(), 0, workshop)
    assert pdf == printed(bench(), 0, workshop)
    assert pdf.startswith(b"%PDF-")
    assert b"/CreationDate" not in pdf
    assert b"/StructTreeRoot" in pdf


@pytest.mark.parametrize("corner", CORNERS)
def test_every_corner_of_an_l_is_drawn_with_its_radius(corner: str, workshop: Workshop) -> None:
    """The notch's corner is the inside one; the others are the box's own."""
    slab = elbow("front-right")
    drawn = corner_drawn(slab, shape_of(slab, workshop), corner, 10.0)
    assert drawn is not None
    rounded = Message("true-size-radius", radius=L(30))
    expected = rounded if corner == "front-right" else Message("true-size-sharp")
    assert drawn.facts == (expected,)
    cut = next(course.line for course in drawn.courses if course.pen == "cut")
    near = {"front-left": (0, 0), "front-right": (700, 850), "back-right": (2100, 1500),
            "back-left": (0, 1500)}[corner]  # fmt: skip
    gap = math.dist(cut.centroid.coords[0], near)
    assert gap < 60


def test_a_corner_of_a_polygon_goes_by_its_number(workshop: Workshop) -> None:
    """Corners are counted from the order's first point, whichever way round it was given."""
    points = [at(0, 0), at(0, 700), at(900, 700), at(900, 0)]
    slab = made(Polygon(tuple(points), L(25)))
    shape = shape_of(slab, workshop)
    for number, point in enumerate(points, start=1):
        drawn = corner_drawn(slab, shape, str(number), 10.0)
        assert drawn is not None
        x0, y0, x1, y1 = drawn.window
        assert x0 <= point.x.mm <= x1
        assert y0 <= point.y.mm <= y1
    assert corner_drawn(slab, shape, "5", 10.0) is None
    assert corner_drawn(slab, shape, "0", 10.0) is None
    assert corner_drawn(slab, shape, "front-left", 10.0) is None


def test_a_round_slab_has_no_corner(workshop: Workshop) -> None:
    """A round top has nothing to draw at a corner."""
    slab = GALLERY["round"].slab
    assert corner_drawn(slab, shape_of(slab, workshop), "front-left", 10.0) is None


def test_what_takes_too_many_sheets_is_reported(workshop: Workshop) -> None:
    """More sheets than anybody tapes together are counted, not printed."""
    slab = made(Rectangle(L(12000), L(6000)), oblong("rectangle", (11000, 5000), (6000, 3000)))
    drawn = cutout_drawn(slab, shape_of(slab, workshop), 0, 10.0)
    assert drawn is not None
    told = true_size_pdf(drawn, "a4", ENGLISH, workshop="")
    assert isinstance(told, TooManySheets)
    assert told.sheets > MAX_SHEETS


def test_sheets_without_a_line_are_left_out(workshop: Workshop) -> None:
    """In the middle of a large opening nothing is cut: those sheets are not printed."""
    slab = made(Rectangle(L(2000), L(1200)), oblong("rectangle", (900, 900), (800, 600)))
    drawn = cutout_drawn(slab, shape_of(slab, workshop), 0, 10.0)
    assert drawn is not None
    tiling = tiling_of(drawn.window, "a4")
    document = pypdfium2.PdfDocument(printed(slab, 0, workshop))
    assert 0 < len(document) < tiling.columns * tiling.rows


@pytest.mark.parametrize("name", GALLERY)
def test_every_cutout_of_the_gallery_can_be_printed(name: str, workshop: Workshop) -> None:
    """Slots, polygons, turned and open cut-outs print, or say how many sheets they would take."""
    slab = replace(GALLERY[name].slab)
    shape = shape_of(slab, workshop)
    for index in range(min(3, len(slab.cutouts))):
        drawn = cutout_drawn(slab, shape, index, workshop.shaping.inside_radius_mm)
        assert drawn is not None
        assert isinstance(true_size_pdf(drawn, "a3", ENGLISH, workshop="x"), bytes)
    assert cutout_drawn(slab, shape, len(slab.cutouts), 10.0) is None


def test_a_cutout_without_a_centre_has_no_cross(workshop: Workshop) -> None:
    """A polygon is drawn by its points alone."""
    shaped = Cutout("polygon", "vent", points=(at(200, 100), at(400, 100), at(300, 260)))
    slab = made(Rectangle(L(900), L(500)), shaped)
    drawn = cutout_drawn(slab, shape_of(slab, workshop), 0, 10.0)
    assert drawn is not None
    assert {course.pen for course in drawn.courses} == {"cut"}
