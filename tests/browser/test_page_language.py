"""The page in the visitor's language: its words, numbers and days, and what they type."""

import json
import re
from collections.abc import Iterator, Sequence
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, Request, ViewportSize, expect

from browser.conftest import DESK, PHONE, Look, Served, Settle
from browser.states import BROKEN_WORDS
from ledgerstone.wording.page import page_messages
from support.page_texts import OPEN_ALL, SAID, page_text
from support.page_waits import PATIENCE_MS, settled

pytestmark = pytest.mark.browser

SCREENS: Sequence[ViewportSize] = (PHONE, {"width": 390, "height": 844}, DESK)
TOO_WIDE = "document.documentElement.scrollWidth - document.documentElement.clientWidth"
CLIPPED = """() => Array
  .from(document.querySelectorAll("button, legend, label, dt, dd, th, td, summary"))
  .filter((e) => e.checkVisibility({visibilityProperty: true}) && !e.closest(".unseen"))
  .filter((e) => e.scrollWidth > e.clientWidth + 1 && getComputedStyle(e).display !== "inline")
  .map((e) => `${e.tagName} ${e.textContent.trim()}`)"""


def visit(browser: Browser, url: str, locale: str, **options: Any) -> Iterator[Page]:
    """A visitor whose browser wants a language."""
    context = browser.new_context(locale=locale, timezone_id="Europe/Berlin", **options)
    context.set_default_timeout(PATIENCE_MS)
    page = context.new_page()
    page.goto(url)
    settled(page)
    yield page
    context.close()


@pytest.fixture
def german(chromium: Browser, served: Served) -> Iterator[Page]:
    """A German visitor at a desk."""
    yield from visit(chromium, served.url, "de-DE", viewport=DESK)


def english_left(page: Page) -> list[str]:
    """What the page says in English that it has German for."""
    first, other = page_messages("en"), page_messages("de")
    english = {text for key, text in first.items() if isinstance(text, str) and text != other[key]}
    spoken = {text for text in other.values() if isinstance(text, str)}
    return [text for text in page.evaluate(SAID) if text in english - spoken]


def asked(request: Request) -> dict[str, Any]:
    """The order that was sent."""
    order: dict[str, Any] = json.loads(request.post_data or "")
    return order


def test_a_german_visitor_reads_german(german: Page) -> None:
    """Words, amounts and days are German, no page's English is left, and the document says so."""
    expect(german.locator("html")).to_have_attribute("lang", "de-DE")
    expect(german.get_by_role("heading", name=page_text("page.title", "de"))).to_be_visible()
    price = german.locator(".price .first").inner_text()
    assert re.fullmatch(r"\d{1,3}(\.\d{3})*,\d\d\s£", price)
    expect(german.locator(".day .first")).to_have_text(
        re.compile(r"Abholbereit am [A-Z][a-z]+, \d{1,2}\. [A-ZÄ][a-zä]+ \d{4}")
    )
    assert english_left(german) == []


@pytest.mark.parametrize(
    ("locale", "query", "loaded"),
    [
        ("de-AT", "", "de"),
        ("en-US", "", "en"),
        ("fr-FR", "", "en"),
        ("en-GB", "?lang=de", "de"),
        ("de-DE", "?lang=en", "en"),
        ("de-DE", "?lang=../x", "de"),
    ],
)
def test_one_language_is_loaded(
    chromium: Browser, served: Served, locale: str, query: str, loaded: str
) -> None:
    """The one asked for in the address, else the browser's, else the workshop's; and no other."""
    context = chromium.new_context(locale=locale)
    page = context.new_page()
    files: list[str] = []
    spoken: list[str] = []
    page.on("request", lambda request: files.append(request.url.rpartition("/")[2]))
    page.on(
        "request",
        lambda request: (
            spoken.append(request.headers.get("accept-language", ""))
            if request.url.endswith("/v1/quotes")
            else None
        ),
    )
    page.goto(f"{served.url}{query}")
    settled(page)
    assert [name for name in files if name.startswith("messages.")] == [f"messages.{loaded}.js"]
    assert set(spoken) == {loaded}
    expect(page.locator("html")).to_have_attribute("lang", re.compile(f"^{loaded}-"))
    context.close()


def test_a_link_leads_to_the_other_language(german: Page, settle: Settle) -> None:
    """Each language names itself; what was entered and the rest of the address stay."""
    german.locator("#outline-length").fill("1440")
    settle(german)
    german.goto(f"{german.url}?radius=8px")
    settle(german)
    expect(german.locator("#languages a:visible")).to_have_text("English")
    german.get_by_role("link", name="English").click()
    expect(german.get_by_role("heading", name=page_text("page.title"))).to_be_visible()
    assert "radius=8px" in german.url
    expect(german.locator("#outline-length")).to_have_value("1440")
    expect(german.locator("#languages a:visible")).to_have_text("Deutsch")


def test_a_decimal_comma_is_read(german: Page, settle: Settle) -> None:
    """A length typed as in Germany goes to the service with a point, and is shown as typed."""
    for typed, wire, shown in (
        ("1.450", "1450 mm", "1450"),
        ("1,45 m", "1.45 m", "1,45 m"),
        ("120,5 cm", "120.5 cm", "120,5 cm"),
        ("1.200,5", "1200.5 mm", "1200,5"),
    ):
        with german.expect_request(lambda request: request.url.endswith("/v1/quotes")) as sent:
            german.locator("#outline-length").fill(typed)
        assert asked(sent.value)["slabs"][0]["outline"]["length"] == wire
        german.locator("#outline-width").focus()
        expect(german.locator("#outline-length")).to_have_value(shown)
        settle(german)
        expect(german.locator("#order .fault")).to_have_count(0)


def test_german_fits_every_screen(german: Page, settle: Settle, no_violations: Look) -> None:
    """Every part of a slab opened, a stopped one, an unread one: nothing wide, cut or amiss."""
    page = german

    def look(state: str) -> None:
        page.evaluate(OPEN_ALL)
        assert english_left(page) == [], state
        for screen in SCREENS:
            page.set_viewport_size(screen)
            no_violations(page, f"German, {state}, {screen}", contrast=False)
            assert page.evaluate(TOO_WIDE) == 0, (state, screen)
            assert page.evaluate(CLIPPED) == [], (state, screen)
            assert page.evaluate(BROKEN_WORDS) == [], (state, screen)

    page.locator("[data-start=hob]").click()
    page.evaluate(OPEN_ALL)
    page.locator("[data-piece=drainer]").click()
    page.locator("[data-do=add-slab]").click()
    page.locator("[data-do=add-join]").click()
    settle(page)
    look("two slabs")
    page.locator("#thickness").fill("12,5")
    settle(page)
    look("stopped")
    page.locator("#thickness").fill("dick")
    page.locator("button[type=submit]:visible").first.click()
    page.locator("#problems").wait_for()
    settle(page)
    look("unread")
