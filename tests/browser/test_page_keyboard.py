"""A customer without a mouse: every step by keyboard alone, with focus always in sight."""

import re

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import Settle
from browser.gestures import tab_to
from support.page_texts import page_text

pytestmark = pytest.mark.browser
MAX_TABS = 36

FOCUSED = """() => {
  const element = document.activeElement;
  const whole = element.closest(".pick") ?? element;
  const box = whole.getBoundingClientRect();
  const shown = getComputedStyle(whole);
  const [x, y] = [box.x + box.width / 2, box.y + Math.min(box.height / 2, 20)];
  const middle = document.elementFromPoint(x, y);
  return {
    tag: element.tagName,
    name: element.id || element.name || element.textContent.trim().slice(0, 40),
    label: (element.labels?.[0]?.textContent ?? element.textContent).trim(),
    outlined: shown.outlineStyle !== "none" && parseFloat(shown.outlineWidth) >= 2,
    inView: box.bottom > 0 && box.top < innerHeight && box.width > 0,
    covered: !(whole.contains(middle) || middle?.contains(whole)),
  };
}"""


def test_an_opening_is_added_moved_and_removed_by_keyboard(desk: Page, settle: Settle) -> None:
    """The new opening takes focus on the plan; its removal gives focus to the add buttons."""
    settle(desk)
    tab_to(desk, "Plain slab")
    tab_to(desk, "Basin")
    desk.keyboard.press("Enter")
    expect(desk.locator("#plan [data-key=opening-0]")).to_be_focused()
    tab_to(desk, page_text("cutout.x"))
    desk.keyboard.press("Control+a")
    desk.keyboard.type("500")
    settle(desk)
    expect(desk.locator("figure img")).to_have_attribute("alt", re.compile(r"An opening \(basin\)"))
    tab_to(desk, page_text("cutout.remove"))
    desk.keyboard.press("Space")
    expect(desk.get_by_role("button", name="Basin", exact=True)).to_be_focused()
    settle(desk)
    expect(desk.locator("figure img")).not_to_have_attribute("alt", re.compile("opening"))


@pytest.mark.parametrize("width", [360, 1440])
def test_focus_is_always_in_sight(desk: Page, settle: Settle, width: int) -> None:
    """Tab visits every control once, each outlined, in view, and under nothing else."""
    desk.set_viewport_size({"width": width, "height": 800})
    desk.emulate_media(reduced_motion="reduce")
    settle(desk)
    seen = []
    for _ in range(150):
        desk.keyboard.press("Tab")
        focused = desk.evaluate(FOCUSED)
        if focused["tag"] == "BODY":
            break
        seen.append(focused["name"])
        assert focused["outlined"], focused
        assert focused["inView"], focused
        assert not focused["covered"], focused
    assert len(seen) > 40
    assert {"outline-length", "thickness", "delivery-kind"} <= set(seen)


def test_the_skip_link_leads_to_the_answer(desk: Page, settle: Settle) -> None:
    """The first Tab offers a way past the form."""
    settle(desk)
    desk.keyboard.press("Tab")
    expect(desk.get_by_role("link", name=page_text("page.skip"))).to_be_focused()
    desk.keyboard.press("Enter")
    expect(desk.locator("#answer")).to_be_focused()


def test_a_plain_slab_is_priced_by_few_tabs(desk: Page, settle: Settle) -> None:
    """From the page as it loads to the button beside the price; of a row of buttons one."""
    settle(desk)
    tabs = 0
    while not desk.evaluate("document.activeElement.matches('.ask .main')"):
        desk.keyboard.press("Tab")
        tabs += 1
        assert tabs < 100
    print(f"from load to the price: {tabs} Tabs")
    assert tabs <= MAX_TABS


def test_arrows_lead_along_a_row_of_buttons(desk: Page, settle: Settle) -> None:
    """Tab comes to one of what to start from, arrows to the others, round and round."""
    settle(desk)
    tab_to(desk, "Plain slab")
    desk.keyboard.press("ArrowRight")
    expect(desk.locator("[data-start=sink]")).to_be_focused()
    desk.keyboard.press("ArrowLeft")
    desk.keyboard.press("ArrowLeft")
    expect(desk.locator("[data-start=outdoor]")).to_be_focused()
    desk.keyboard.press("Tab")
    tab_to(desk, "Outdoor top", back=True)
