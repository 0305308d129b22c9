"""The maker's page: from a pasted message to a reply on the clipboard, for whoever has the key."""

import re
import time
from collections.abc import Callable

import pytest
from playwright.sync_api import Browser, Page, expect

from browser.conftest import MAKER_KEY, Maker, Served, at_desk, enter
from browser.gestures import tab_to
from browser.states import SMALL_TARGETS, TOO_WIDE
from support.desk_messages import MESSAGES, POTTING

pytestmark = pytest.mark.browser
Look = Callable[[Page, str], None]
PHONE = {"width": 390, "height": 844}
MOST_ACTIONS, MOST_S = 10, 180


def test_five_messages_become_five_replies(maker: Maker, no_violations: Look) -> None:
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
    no_violations(page, "what cannot be made")


def test_a_doubtful_value_offers_its_readings(maker: Maker) -> None:
    """Of a mail's file too: a press enters one reading, and its mark is gone."""
    page = maker.page
    mail = (
        "From: Jo Marsh <jo@marsh.example>\r\nSubject: top\r\n"
        "Content-Type: text/plain; charset=utf-8\r\n\r\n"
        "I would like a concrete worktop 1500 or 1600 mm long, 600 mm deep and 40 mm thick.\r\n"
    )
    file = {"name": "top.eml", "mimeType": "message/rfc822", "buffer": mail.encode()}
    page.locator("#file").set_input_files(file)  # type: ignore[arg-type]  # a payload
    doubt = page.locator("#points-list .doubtful", has_text="1500 mm and 1600 mm")
    doubt.get_by_role("button", name="1600 mm").click()
    expect(doubt).to_be_hidden()
    expect(page.get_by_label("Length", exact=True)).to_have_value(re.compile("^1600"))
    expect(page.locator("#reading-says")).to_contain_text("Jo Marsh")
    expect(page.locator("#letter-name")).to_have_value("Jo Marsh")


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
    chromium: Browser, served: Served, no_violations: Look
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
    no_violations(page, "a wrong key")
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


def test_the_desk_is_worked_by_keyboard_alone(maker: Maker) -> None:
    """Paste, follow a phrase to its field, confirm what was assumed, write and copy the reply."""
    page = maker.page
    maker.paste(POTTING)
    maker.settle()
    expect(page.locator("#points")).to_be_focused()
    tab_to(page, "That’s right")
    open_before = page.locator("#points-list li").count()
    page.keyboard.press("Enter")
    expect(page.locator("#points-list li")).to_have_count(open_before - 1)
    tab_to(page, "Write the reply")
    page.keyboard.press("Enter")
    expect(page.locator("#letter")).to_be_focused()
    for _ in range(40):
        page.keyboard.press("Shift+Tab")
        if page.evaluate("document.activeElement.textContent") == "Copy it":
            break
    page.keyboard.press("Enter")
    expect(page.locator("#reply .said")).to_contain_text("Copied")
