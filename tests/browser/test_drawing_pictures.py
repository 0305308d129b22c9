"""The PNG that we paint, beside a browser's picture of the same drawing."""

import io
from collections.abc import Iterator

import numpy as np
import numpy.typing as npt
import pytest
from PIL import Image
from playwright.sync_api import Browser, Page

from ledgerstone.drawing import DrawnSlab, draw_assembled, draw_plan, draw_view, rasterise
from ledgerstone.drawing.raster import FONT_FOLDER
from ledgerstone.order import Join, JoinEnd
from ledgerstone.shape import shape_of
from ledgerstone.wording import speech_in
from ledgerstone.workshop import Workshop
from support.drawn_slabs import GALLERY, TITLE, L, bench

WIDTH = 1200
# Of 255, over the whole picture. Two renderers differ along every line and letter, which they
# smooth each in its own way: a plan is all lines, a view has few.
PLAN_MEAN, VIEW_MEAN = 2.0, 1.0
# A part of the picture 60 px square that one of them left out or moved differs by far more.
PATCH_PX, PATCH_MEAN = 60, 20.0

Pixels = npt.NDArray[np.float64]


@pytest.fixture(scope="module")
def paper(chromium: Browser) -> Iterator[Page]:
    """An empty page that has the letters that we ship, for one drawing after another."""
    page = chromium.new_page(viewport={"width": WIDTH, "height": 900})
    page.route("**/*.ttf", lambda route: route.fulfill(
        path=FONT_FOLDER / route.request.url.rpartition("/")[2],
        headers={"Access-Control-Allow-Origin": "*"},
    ))  # fmt: skip
    yield page
    page.close()


def in_the_browser(svg: str, page: Page) -> Pixels:
    """Show a drawing in the browser and photograph it."""
    faces = "".join(
        f"@font-face{{font-family:'Liberation Sans';font-weight:{weight};"
        f"src:url(http://fonts.test/sans-{name}.ttf)}}"
        for name, weight in (("regular", 400), ("bold", 700))
    )
    page.set_content(f"<style>{faces}body{{margin:0}}svg{{display:block}}</style>{svg}")
    page.evaluate(
        "async (w) => { const s = document.querySelector('svg');"
        " s.setAttribute('width', w); s.removeAttribute('height'); await document.fonts.ready; }",
        WIDTH,
    )
    shot = page.locator("svg").screenshot(omit_background=True)
    return _on_white(shot)


def _on_white(png: bytes) -> Pixels:
    shown = Image.open(io.BytesIO(png)).convert("RGBA")
    ground = Image.new("RGBA", shown.size, "#ffffff")
    return np.asarray(Image.alpha_composite(ground, shown).convert("RGB"), dtype=np.float64)


def difference(svg: str, paper: Page) -> tuple[float, float]:
    """How far the two pictures are apart: over the whole, and over the worst patch."""
    ours, theirs = _on_white(rasterise(svg, WIDTH, speech_in("en"))), in_the_browser(svg, paper)
    assert abs(ours.shape[0] - theirs.shape[0]) <= 1
    assert ours.shape[1] == theirs.shape[1]
    rows = min(ours.shape[0], theirs.shape[0])
    apart = np.abs(ours[:rows] - theirs[:rows]).mean(axis=2)
    high, wide = (size // PATCH_PX * PATCH_PX for size in apart.shape)
    patches = apart[:high, :wide].reshape(high // PATCH_PX, PATCH_PX, -1, PATCH_PX)
    return float(apart.mean()), float(patches.mean(axis=(1, 3)).max())


@pytest.mark.browser
@pytest.mark.parametrize("name", ["bench", "long", "L front-left", "round", "nine sides", "inches"])
def test_a_plans_png_is_the_browsers_picture(name: str, paper: Page, workshop: Workshop) -> None:
    """Nothing of a plan is missing, moved or lettered otherwise: mean difference within 2."""
    drawn = GALLERY[name]
    shape = shape_of(drawn.slab, workshop)
    mean, patch = difference(draw_plan(drawn.slab, shape, title=TITLE, pins=drawn.pins), paper)
    print(f"{name}: mean {mean:.2f}, worst patch {patch:.1f}")
    assert mean <= PLAN_MEAN
    assert patch <= PATCH_MEAN


@pytest.mark.browser
@pytest.mark.parametrize("name", ["bench", "long", "L front-left", "round", "nine sides", "tiny"])
def test_a_views_png_is_the_browsers_picture(name: str, paper: Page, workshop: Workshop) -> None:
    """Shade, light, shadow and mottling agree: mean difference within 1."""
    slab = GALLERY[name].slab
    shape = shape_of(slab, workshop)
    svg = draw_view([DrawnSlab(slab, shape, "#7d6a58", 0.5, name)], title=name)
    mean, patch = difference(svg, paper)
    print(f"{name}: mean {mean:.2f}, worst patch {patch:.1f}")
    assert mean <= VIEW_MEAN
    assert patch <= PATCH_MEAN


@pytest.mark.browser
def test_an_assembled_png_is_the_browsers_picture(paper: Page, workshop: Workshop) -> None:
    """Joined pieces, their hand and their words agree."""
    slabs = [bench(), bench()]
    shapes = [shape_of(slab, workshop) for slab in slabs]
    joins = [Join(JoinEnd(0, "front"), JoinEnd(1, "left"), L(2))]
    mean, patch = difference(draw_assembled(slabs, shapes, joins, speech_in("en")), paper)
    assert mean <= PLAN_MEAN
    assert patch <= PATCH_MEAN
