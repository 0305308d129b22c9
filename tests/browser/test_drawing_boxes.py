"""Labels of the awkward gallery, measured where a browser puts them."""

from collections.abc import Iterator
from itertools import combinations

import pytest
from playwright.sync_api import Browser, Page

from ledgerstone.drawing import DrawnSlab, draw_plan, draw_view
from ledgerstone.drawing.frame import PHONE_WIDTH, SHEET_WIDTH
from ledgerstone.shape import shape_of
from ledgerstone.workshop import Workshop
from support.drawn_slabs import GALLERY, TITLE

WIDTH = 1200
TOUCHING_PX = 0.5  # of 1200: a twentieth of a letter, as boxes are rounded by the browser

MEASURE = """() => {
  const sheet = document.querySelector('svg').getBoundingClientRect();
  return [sheet, ...[...document.querySelectorAll('text')].map((t) => t.getBoundingClientRect())]
    .map((b) => [b.left, b.top, b.right, b.bottom]);
}"""
WORDS = "() => [...document.querySelectorAll('text')].map((t) => t.textContent)"

DrawnBox = tuple[float, float, float, float]


@pytest.fixture(scope="module")
def paper(chromium: Browser) -> Iterator[Page]:
    """An empty page, for one drawing after another."""
    page = chromium.new_page(viewport={"width": WIDTH, "height": 900})
    yield page
    page.close()


def measured(svg: str, page: Page) -> tuple[DrawnBox, list[tuple[str, DrawnBox]]]:
    """Show a drawing and measure the sheet and every text on it, in pixels."""
    page.set_content(f'<body style="margin:0">{svg}</body>')
    page.evaluate(
        "(w) => { const s = document.querySelector('svg');"
        " s.setAttribute('width', w); s.removeAttribute('height'); }",
        WIDTH,
    )
    sheet, *boxes = page.evaluate(MEASURE)
    words = page.evaluate(WORDS)
    return sheet, list(zip(words, boxes, strict=True))


def overlap(one: DrawnBox, other: DrawnBox) -> float:
    """How far two boxes reach into each other, px: the lesser of across and down."""
    across = min(one[2], other[2]) - max(one[0], other[0])
    down = min(one[3], other[3]) - max(one[1], other[1])
    return min(across, down)


@pytest.mark.browser
@pytest.mark.parametrize("wide", [SHEET_WIDTH, PHONE_WIDTH])
@pytest.mark.parametrize("name", GALLERY)
def test_no_two_labels_of_a_plan_overlap(
    name: str, wide: float, paper: Page, workshop: Workshop
) -> None:
    """However crowded the slab, every figure and letter of its plan stands clear of the others."""
    drawn, shape = GALLERY[name], shape_of(GALLERY[name].slab, workshop)
    svg = draw_plan(drawn.slab, shape, title=TITLE, pins=drawn.pins, wide=wide)
    sheet, labels = measured(svg, paper)
    assert len(labels) > 8
    met = [
        (a, b, overlap(box, other))
        for (a, box), (b, other) in combinations(labels, 2)
        if overlap(box, other) > TOUCHING_PX
    ]
    assert met == []
    outside = [
        word
        for word, box in labels
        if overlap(box, sheet) < min(box[3] - box[1], box[2] - box[0]) - 1
    ]
    assert outside == []


@pytest.mark.browser
@pytest.mark.parametrize("name", GALLERY)
def test_a_views_words_are_on_its_sheet(name: str, paper: Page, workshop: Workshop) -> None:
    """The rule's length can be read whole."""
    slab = GALLERY[name].slab
    shape = shape_of(slab, workshop)
    svg = draw_view([DrawnSlab(slab, shape, "#5b5d5a", 0.3, name)], title=name)
    sheet, labels = measured(svg, paper)
    assert len(labels) == 1
    (_, box) = labels[0]
    assert sheet[0] <= box[0] <= box[2] <= sheet[2]
    assert sheet[1] <= box[1] <= box[3] <= sheet[3]
