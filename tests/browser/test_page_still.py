"""What is typed into stays where it is on the screen, whatever the answer says meanwhile."""

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import Settle

pytestmark = pytest.mark.browser
ROUNDING_PX = 1.5
# Where the field with focus stands on the screen, once what has changed is painted.
TOP = """() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(
  document.activeElement.getBoundingClientRect().top))))"""


def _start(name: str) -> Callable[[Page], None]:
    def press(page: Page) -> None:
        page.locator(f"[data-start={name}]").click()
        expect(page.locator(f"[data-start={name}]")).to_have_attribute("aria-pressed", "true")

    return press


def _on_units(page: Page) -> None:
    page.locator("#rests-kind").select_option("units")


# What is typed one after the other: other units are taken, nothing can be read, nothing made.
TYPED: dict[str, tuple[Callable[[Page], object], str, tuple[str, ...]]] = {
    "a run on our units": (_on_units, "#outline-length", ("1200", "2650", "so long", "1780")),
    "a kitchen sink": (_start("sink"), "#outline-width", ("480", "380", "610")),
    "an L's arm": (_start("l-left"), "#arms-back", ("1500", "5000", "2300")),
    "a shelf": (_start("shelf"), "#outline-length", ("3200", "nothing", "800")),
    "its postcode": (
        lambda page: page.locator("#delivery-kind").select_option("pallet"),
        "#delivery-postcode",
        ("HR", "HR0 7XX"),
    ),
}


@pytest.mark.parametrize("state", TYPED)
def test_a_field_keeps_its_place_while_it_is_typed_into(
    phone: Page, settle: Settle, state: str
) -> None:
    """With a notice of other units above it, a fault beside it, a picture of another size."""
    settle(phone)
    does, where, texts = TYPED[state]
    does(phone)
    settle(phone)
    phone.locator(where).focus()
    phone.locator(where).evaluate("e => e.scrollIntoView({block: 'center', behavior: 'instant'})")
    phone.locator(where).press("ControlOrMeta+a")
    stood = phone.evaluate(TOP)
    for text in texts:
        phone.locator(where).press("ControlOrMeta+a")
        phone.locator(where).press_sequentially(text)
        settle(phone)
        assert phone.evaluate(TOP) == pytest.approx(stood, abs=ROUNDING_PX), text
