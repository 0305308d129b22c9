"""Picture, price and day in sight while the order is changed, and a page that is short."""

import re

import pytest
from playwright.sync_api import Page, Route, ViewportSize, expect

from browser.conftest import Settle
from browser.gestures import eventually, price
from browser.states import LOW
from support.page_texts import page_text

pytestmark = pytest.mark.browser
SCREENS: tuple[ViewportSize, ...] = (
    {"width": 390, "height": 844},
    {"width": 768, "height": 1024},
    {"width": 1440, "height": 900},
)
MAX_BAR_PX = 96
MAX_PLAIN_PX, MAX_BASIN_PX = 4500, 6000
MAX_CONTROLS = 60
CONTROLS = """() => Array
  .from(document.querySelectorAll("a[href], button, input, select, textarea, summary, [tabindex]"))
  .filter((e) => e.checkVisibility({visibilityProperty: true}) && !e.closest(".skip"))
  .filter((e) => e.tabIndex >= 0)
  .length"""
FILLS = """() => {
  const paper = document.querySelector(".large .paper"), picture = paper.querySelector("img");
  const off = paper.scrollLeft - (paper.scrollWidth - paper.clientWidth) / 2;
  return picture.complete && Math.abs(off) <= 1
    && picture.clientWidth >= 0.98 * paper.clientWidth
    && picture.clientHeight >= 0.98 * paper.clientHeight;
}"""
HEIGHT = "document.documentElement.scrollHeight"


def height(page: Page, of: str) -> float:
    """How high something is on the screen."""
    box = page.locator(of).bounding_box()
    assert box is not None
    return box["height"]


def test_the_page_is_short_and_its_first_screen_shows_picture_and_price(
    desk: Page, settle: Settle
) -> None:
    """On a phone: a plain slab, then a basin top; nothing rare is open."""
    desk.set_viewport_size(SCREENS[0])
    settle(desk)
    plain = (desk.evaluate(HEIGHT), desk.evaluate(CONTROLS))
    assert desk.evaluate(LOW) == []
    desk.get_by_role("button", name="Basin top", exact=True).click()
    settle(desk)
    basin = (desk.evaluate(HEIGHT), desk.evaluate(CONTROLS))
    print(f"at 390 px: a plain slab {plain[0]} px, {plain[1]} controls; a basin top {basin}")
    assert plain[0] <= MAX_PLAIN_PX
    assert plain[1] <= MAX_CONTROLS
    assert basin[0] <= MAX_BASIN_PX
    for part in ("figure img", "#glance strong"):
        expect(desk.locator(part)).to_be_in_viewport(ratio=1)
    order = [section.get_attribute("id") for section in desk.locator("section.step").all()]
    asked = ["what", "rests", "shape", "openings", "look", "delivery", "extras"]
    assert order == [f"step-{part}" for part in asked]


def test_picture_price_and_day_stay_in_sight(desk: Page, settle: Settle) -> None:
    """In a bar of two lines at every width; on a low screen it goes with the rest."""
    settle(desk)
    bar = desk.locator("#bar")
    desk.get_by_role("button", name="Basin top", exact=True).click()
    for screen in SCREENS:
        desk.set_viewport_size(screen)
        settle(desk)
        desk.locator("#step-look").scroll_into_view_if_needed()
        for part in ("#glance", "#bar img", "[data-do=undo]"):
            expect(desk.locator(part)).to_be_in_viewport()
        assert height(desk, "#bar") <= MAX_BAR_PX
        assert min(height(desk, part) for part in ("#glance", ".thumb", "[data-do=undo]")) >= 44
        expect(bar).to_contain_text(price(desk))
        expect(bar).to_contain_text(re.compile(r"collect \d+ \w+", re.IGNORECASE))
    desk.set_viewport_size({"width": 900, "height": 470})
    expect(bar).not_to_be_in_viewport()
    bar.get_by_role("link", name=page_text("bar.picture")).click()
    large = desk.get_by_role("dialog")
    picture = large.get_by_role("img")
    before = picture.evaluate("picture => picture.clientWidth")
    large.get_by_role("button", name="Closer").click()
    assert picture.evaluate("picture => picture.clientWidth") > before
    desk.keyboard.press("Escape")
    expect(large).to_have_count(0)


def test_the_picture_fills_the_screen_when_it_is_enlarged(desk: Page, settle: Settle) -> None:
    """On a phone held upright it is as high as there is room, its middle first."""
    settle(desk)
    for screen in SCREENS:
        desk.set_viewport_size(screen)
        settle(desk)
        desk.locator(".thumb").click()
        large = desk.get_by_role("dialog")
        eventually(desk, lambda: desk.evaluate(FILLS))
        large.get_by_role("button", name=page_text("large.close"), exact=True).click()
        expect(large).to_have_count(0)


def test_the_bar_says_that_what_carries_it_is_not_checked(desk: Page, settle: Settle) -> None:
    """While nobody said what it rests on; once that is said it is only price and day."""
    desk.set_viewport_size(SCREENS[0])
    settle(desk)
    more = desk.locator("#glance span")
    expect(more).to_contain_text(page_text("bar.rests-open"))
    assert more.evaluate("e => e.scrollHeight <= e.clientHeight + 1")
    assert more.evaluate("e => e.scrollWidth <= e.clientWidth + 1")
    assert height(desk, "#bar") <= MAX_BAR_PX
    desk.locator("#rests-kind").select_option("full")
    settle(desk)
    expect(more).not_to_contain_text(page_text("bar.rests-open"))


@pytest.mark.parametrize("answer", ["gone", 503])
def test_a_last_answer_is_announced_as_one(desk: Page, settle: Settle, answer: str | int) -> None:
    """Away or busy: whose answer it is stands with the price; it is asked again by itself."""
    desk.set_viewport_size(SCREENS[0])
    settle(desk)
    was = price(desk)

    def refuse(route: Route) -> None:
        if isinstance(answer, int):
            route.fulfill(status=answer, headers={"Retry-After": "1"}, body="{}")
        else:
            route.abort()

    desk.route("**/v1/quotes", refuse)
    desk.get_by_label("Length", exact=True).fill("1630")
    glance = desk.locator("#glance")
    expect(glance).to_contain_text(f"Last answer: {was}")
    expect(glance).to_contain_text("1500 mm × 600 mm")
    expect(desk.locator(".live")).to_contain_text("1500 mm × 600 mm")
    assert height(desk, "#bar") <= MAX_BAR_PX
    desk.unroute("**/v1/quotes")
    settle(desk)
    expect(glance).not_to_contain_text(was)


def test_a_fix_is_drawn_before_it_is_taken(desk: Page, settle: Settle) -> None:
    """A small plan shows what goes and what comes, the plan too, and what it costs is stated."""
    settle(desk)
    desk.get_by_role("button", name="Basin", exact=True).click()
    front = desk.get_by_label(page_text("cutout.y"))
    front.fill("410")
    settle(desk)
    fix = desk.locator(".remedies > li").first
    drawn = fix.get_by_role("img", name=page_text("remedy.ghost"))
    expect(drawn.locator(".comes")).to_have_count(1)
    expect(drawn.locator(".goes")).to_have_count(1)
    expect(fix.locator(".cost")).to_contain_text("£")
    fix.get_by_role("button").hover()
    expect(desk.locator("#plan .comes")).to_have_count(1)
    expect(front).to_have_value("410")
    fix.get_by_role("button").click()
    settle(desk)
    expect(desk.locator("#plan .comes")).to_have_count(0)
    assert price(desk).startswith("£")
