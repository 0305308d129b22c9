"""What is typed into stays where it is on the screen, whatever the answer adds or takes away."""

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import Settle

pytestmark = pytest.mark.browser
MOST_PX = 2
FIELDS = """() => Array
  .from(document.querySelectorAll("#order input:not([type]), #order input[type=text]"))
  .map((e, i) => [e, i])
  .filter(([e]) => e.checkVisibility({visibilityProperty: true}) && e.dataset.as === "length")
  .map(([, i]) => i)"""
FOCUS = """i => {
  const e = document.querySelectorAll("#order input:not([type]), #order input[type=text]")[i];
  e.scrollIntoView({block: "center"});
  e.focus({preventScroll: true});
  const start = e.getBoundingClientRect().top;
  window.farthest = 0;
  const look = () => {
    if (document.activeElement !== e) return;
    window.farthest = Math.max(window.farthest, Math.abs(e.getBoundingClientRect().top - start));
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
  return `${e.id} ${e.closest("[data-scope]").dataset.scope} ${e.dataset.at}`;
}"""


def _as_it_starts(page: Page) -> None:
    expect(page.locator("#order")).to_be_visible()


def _worktop_on_units(page: Page) -> None:
    page.locator("[data-start=sink]").click()
    expect(page.locator("[data-list=cutouts] > li")).to_have_count(2)
    page.locator("#step-rests summary").first.click()
    page.locator("[data-list=cutouts] summary").first.click()


def _an_l(page: Page) -> None:
    page.locator("[data-start=l-left]").click()
    expect(page.locator("#slabs button")).to_have_count(2)


@pytest.mark.parametrize("state", [_as_it_starts, _worktop_on_units, _an_l])
def test_a_field_stays_where_it_is_while_it_is_typed_into(
    phone: Page, settle: Settle, state: Callable[[Page], None]
) -> None:
    """A size too large, one that does not read, and the first again: it never moves by itself."""
    phone.emulate_media(reduced_motion="reduce")
    settle(phone)
    state(phone)
    settle(phone)
    moved = {}
    for i in phone.evaluate(FIELDS):
        name = phone.evaluate(FOCUS, i)
        field = phone.locator(":focus")
        was = field.input_value()
        for text in ("3999", "so"):
            phone.keyboard.press("ControlOrMeta+a")
            phone.keyboard.type(text, delay=30)
            phone.wait_for_timeout(1300)
        expect(field).to_have_attribute("aria-invalid", "true")
        phone.keyboard.press("ControlOrMeta+a")
        phone.keyboard.type(was or "0") if was else phone.keyboard.press("Delete")
        expect(field).not_to_have_attribute("aria-invalid", "true", timeout=100)  # at once
        settle(phone)
        moved[name] = phone.evaluate("window.farthest")
    print(moved)
    assert all(px <= MOST_PX for px in moved.values()), moved
