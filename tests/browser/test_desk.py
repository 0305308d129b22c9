"""The maker's page: from a pasted message to a reply on the clipboard, for whoever has the key."""

import time
from collections.abc import Callable, Iterator

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from browser.conftest import DESK, MAKER_KEY, PATIENCE_MS, Served
from browser.states import SMALL_TARGETS, TOO_WIDE
from support.desk_messages import MESSAGES, POTTING

pytestmark = pytest.mark.browser
Look = Callable[[Page, str], None]
PHONE = {"width": 390, "height": 844}
MOST_ACTIONS, MOST_S = 10, 180


class Maker:
    """Somebody at the desk, whose presses and pastes are counted."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.actions = 0

    def press(self, name: str) -> None:
        """Press the button of this name."""
        self.actions += 1
        self.page.get_by_role("button", name=name, exact=True).click()

    def paste(self, text: str) -> None:
        """Paste a text into the field that has focus, as from the clipboard."""
        self.actions += 1
        self.page.evaluate("text => navigator.clipboard.writeText(text)", text)
        self.page.keyboard.press("ControlOrMeta+V")

    def settle(self) -> None:
        """Wait for the whole answer to the order as it stands."""
        self.page.locator("ledgerstone-answer[data-state=settled]").wait_for()


def at_desk(browser: Browser, served: Served, **options: object) -> tuple[BrowserContext, Page]:
    """Open the desk and enter the key."""
    context = browser.new_context(
        locale="en-GB",
        permissions=["clipboard-read", "clipboard-write"],
        **options,  # type: ignore[arg-type]  # playwright's many
    )
    context.set_default_timeout(PATIENCE_MS)
    page = context.new_page()
    page.goto(f"{served.url}desk/")
    enter(page, MAKER_KEY)
    page.locator("#message").wait_for()
    return context, page


def enter(page: Page, key: str) -> None:
    """Enter a key."""
    page.locator("#key").fill(key)
    page.locator("#key").press("Enter")


@pytest.fixture
def maker(chromium: Browser, served: Served) -> Iterator[Maker]:
    """Somebody at a laptop, the key entered."""
    context, page = at_desk(chromium, served, viewport=DESK)
    faults: list[str] = []
    page.on("console", lambda message: faults.append(message.text))
    page.on("pageerror", lambda fault: faults.append(str(fault)))
    yield Maker(page)
    context.close()
    assert [fault for fault in faults if "Security" in fault or "Error" in fault] == []


def test_five_messages_become_five_replies(maker: Maker) -> None:
    """Each in at most ten actions and three minutes, one of them what to change first."""
    page = maker.page
    for i, message in enumerate(MESSAGES):
        if i:
            maker.press("Next enquiry")
        maker.actions = 0
        begun = time.monotonic()
        maker.paste(message)
        page.locator("#marked .phrase").first.wait_for()
        maker.settle()
        maker.press("Write the reply")
        expect(page.locator("#letter .subject")).not_to_be_empty()
        maker.press("Copy it")
        expect(page.locator("#reply .said")).to_have_text("Copied. Paste it into your mail.")
        html = page.evaluate(
            "async () => (await (await navigator.clipboard.read())[0].getType('text/html')).text()"
        )
        taken = time.monotonic() - begun
        print(f"message {i + 1}: {maker.actions} actions, {taken:.1f} s")
        assert maker.actions <= MOST_ACTIONS
        assert taken <= MOST_S
        assert "style=" in html
        stops = i == len(MESSAGES) - 1
        assert ("£" in page.locator("#letter .subject").inner_text()) != stops
    expect(page.locator("ledgerstone-answer .stops").first).to_be_visible()


def test_each_phrase_leads_to_its_field_and_back(maker: Maker) -> None:
    """The words, the field they filled, and what was only assumed until it is confirmed."""
    page = maker.page
    maker.paste(POTTING)
    phrase = page.locator("#marked .phrase", has_text="560 mm")
    phrase.click()
    width = page.get_by_label("Width", exact=True)
    expect(width).to_be_focused()
    expect(width).to_have_value("560")
    width.locator("..").get_by_role("button", name="From: 560 mm").click()
    expect(phrase).to_be_focused()
    place = page.locator("#place .mark.assumed")
    expect(place).to_contain_text("indoors")
    page.locator("#place").get_by_text("Outdoors").click()
    expect(place).to_be_hidden()
    page.get_by_role("button", name="Undo").click()
    expect(place).to_be_visible()
    matt = page.locator("#points-list li", has_text="matt sealer")
    matt.get_by_role("button", name="That’s right").click()
    expect(matt).to_be_hidden()
    maker.settle()
    maker.press("Write the reply")
    letter = page.locator("#letter")
    expect(letter).to_contain_text("for indoors")
    expect(letter).not_to_contain_text("usual matt sealer")
    width.fill("570")
    expect(width.locator("..").get_by_role("button", name="From: 560 mm")).to_be_hidden()
    expect(page.locator("#letter")).to_contain_text("570 mm")


def test_a_wrong_key_opens_nothing_and_a_right_one_is_kept_as_asked(
    chromium: Browser, served: Served
) -> None:
    """It is in no address; another tab asks for it again, unless it is kept on the device."""
    context = chromium.new_context(locale="en-GB")
    page = context.new_page()
    addresses: list[str] = []
    page.on("request", lambda request: addresses.append(request.url))
    page.goto(f"{served.url}desk/")
    enter(page, "not the maker's key")
    expect(page.locator("#key-fault")).to_contain_text("not the maker’s key")
    expect(page.locator("#view-offer")).to_be_hidden()
    enter(page, MAKER_KEY)
    expect(page.locator("#message")).to_be_focused()
    page.reload()
    expect(page.locator("#message")).to_be_visible()
    other = context.new_page()
    other.goto(f"{served.url}desk/")
    expect(other.locator("#key")).to_be_focused()
    other.get_by_label("Keep it on this device").check()
    enter(other, MAKER_KEY)
    expect(other.locator("#message")).to_be_visible()
    third = context.new_page()
    third.goto(f"{served.url}desk/")
    expect(third.locator("#message")).to_be_visible()
    assert all("key" not in address.replace("key-form", "") for address in addresses), addresses
    assert all(address.startswith((served.url, "blob:")) for address in addresses)
    context.close()


def test_nothing_is_amiss_on_a_phone(
    chromium: Browser, served: Served, no_violations: Look
) -> None:
    """No rule of axe-core is broken, nothing scrolls sideways, every target can be touched."""
    context, page = at_desk(chromium, served, viewport=PHONE, has_touch=True, is_mobile=True)
    maker = Maker(page)

    def look(state: str) -> None:
        no_violations(page, state)
        assert page.evaluate(TOO_WIDE) == 0, state
        assert page.evaluate(SMALL_TARGETS) == [], state

    look("nothing pasted")
    maker.paste(POTTING)
    maker.settle()
    look("read")
    page.evaluate("for (const part of document.querySelectorAll('details')) part.open = true")
    page.locator("#side figure img").wait_for()
    look("all opened")
    maker.press("Add a line to the price")
    maker.press("Write the reply")
    page.locator("#letter .subject").wait_for()
    look("written")
    context.close()
