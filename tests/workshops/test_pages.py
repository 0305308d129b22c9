"""The three workshops' pages on a phone of their country: its words, and sizes as typed there."""

import re
from collections.abc import Iterator
from typing import Any, Final

import pytest
from playwright.sync_api import Browser, Page, Response

from ledgerstone.wording import LANGUAGES
from support.page_texts import OPEN_ALL, SAID, page_text
from support.page_waits import PATIENCE_MS, settled
from workshops.conftest import WorkshopCase
from workshops.strange_words import STRANGE

pytestmark = pytest.mark.browser
HABITS: Final = {
    "demonstration": ("en-GB", "Europe/London"),
    "germany": ("de-DE", "Europe/Berlin"),
    "united_states": ("en-US", "America/Los_Angeles"),
}
# The hint that any unit may be typed names them all.
ANY_UNIT: Final = tuple(page_text("unit.hint", each).split(".")[0] for each in LANGUAGES)
# What is typed as a length there, and how long that is: mm.
SIZES: Final = {
    "demonstration": {"1,400 mm": 1400.0, "1.2 m": 1200.0},
    "germany": {"1.400 mm": 1400.0, "1,2 m": 1200.0},
    "united_states": {"1,400 mm": 1400.0, '55 1/8"': 1400.175, "3' 11 1/4\"": 1200.15},
}


@pytest.fixture
def page(chromium: Browser, shop: WorkshopCase, address: str) -> Iterator[Page]:
    """The workshop's page on a phone, its first answer there."""
    locale, zone = HABITS[shop.name]
    context = chromium.new_context(
        locale=locale, timezone_id=zone, viewport={"width": 390, "height": 844}
    )
    context.set_default_timeout(PATIENCE_MS)
    page = context.new_page()
    page.goto(address)
    settled(page)
    yield page
    context.close()


def strange(shop: WorkshopCase, page: Page) -> list[str]:
    """What the page says, folded or not, that is another country's; what may be chosen too."""
    page.evaluate(OPEN_ALL)
    pattern = re.compile(f".{{0,40}}(?:{STRANGE[shop.name]}).{{0,40}}")
    said = [text for text in page.evaluate(SAID) if not text.startswith(ANY_UNIT)]
    return [found[0] for text in said for found in pattern.finditer(text)]


def answered(page: Page, typed: str) -> dict[str, Any]:
    """Type a length, and return the answer to it."""

    def is_answer(response: Response) -> bool:
        return response.url.endswith("/v1/quotes") and response.request.method == "POST"

    with page.expect_response(is_answer) as asked:
        page.locator("#outline-length").fill(typed)
    answer: dict[str, Any] = asked.value.json()
    settled(page)
    return answer


def test_a_page_speaks_as_its_country_and_reads_what_is_typed_there(
    shop: WorkshopCase, page: Page
) -> None:
    """No other's word as it opens, as it answers, and as it refuses; each size is the one meant.

    It offers no language but its country's own, and what the profile names beside it.
    """
    others = {"demonstration": ["Deutsch"]}.get(shop.name, [])
    assert page.locator("#languages a:visible").all_text_contents() == others
    assert strange(shop, page) == []
    for typed, mm in SIZES[shop.name].items():
        answer = answered(page, typed)
        assert answer["slabs"][0]["area_m2"] > 0
        held = answer["order"]["slabs"][0]["outline"]["length"]
        assert shop.mm(held) == pytest.approx(mm, abs=0.01), typed
        assert page.locator("#outline-length").input_value() == typed
    assert strange(shop, page) == []
    assert answered(page, {"united_states": "170 in"}.get(shop.name, "7 m"))["findings"]
    assert strange(shop, page) == []
