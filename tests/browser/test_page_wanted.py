"""A colour that the workshop does not have, in the customer's words: it goes with what is sent."""

import json
from urllib.parse import unquote

import pytest
from playwright.sync_api import Page, Route, expect

from browser.conftest import Settle, with_requests
from browser.gestures import order_of, unfold
from support.page_texts import page_text

pytestmark = pytest.mark.browser
COLOUR = "sage green, like RAL 6021"
SAID = page_text("shade.wanted", colour=COLOUR)


def test_a_colour_in_words_goes_with_the_letter_and_the_kept_text(
    desk: Page, settle: Settle
) -> None:
    """Its line stands in the letter, in the copy and in the text; the service is not sent it."""
    settle(desk)
    sent: list[str] = []
    desk.on("request", lambda request: sent.append(request.post_data or ""))
    desk.locator("#shade-wanted").fill(COLOUR)
    settle(desk)
    desk.locator("[data-start=basin]").click()
    settle(desk)
    assert not any("sage" in body or "own" in json.loads(body) for body in sent if body)
    assert order_of(desk)["own"]["wanted"] == COLOUR
    letter = desk.get_by_role("link", name=page_text("ask.make"))
    assert SAID in unquote(letter.get_attribute("href") or "")
    letter.click()
    unfold(desk, page_text("ask.copy"))
    went = desk.locator(".went")
    expect(went).to_contain_text(SAID)
    expect(went).to_contain_text(page_text("ask.letter"))
    desk.context.grant_permissions(["clipboard-read", "clipboard-write"])
    unfold(desk, page_text("keep.title"))
    desk.get_by_role("button", name=page_text("answer.copy-text")).last.click()
    expect(desk.locator("#status")).to_have_text(page_text("answer.text-copied"))
    assert SAID in desk.evaluate("navigator.clipboard.readText()")
    desk.reload()
    settle(desk)
    expect(desk.locator("#shade-wanted")).to_have_value(COLOUR)
    desk.locator("#shade-wanted").fill("")
    settle(desk)
    assert SAID not in unquote(letter.get_attribute("href") or "")


def test_a_colour_in_words_goes_with_a_request(desk: Page, address: str, settle: Settle) -> None:
    """Where the service relays, it is the first line of the note."""
    desk.route("**/v1/choices", with_requests)
    asked: list[dict[str, str]] = []

    def relay(route: Route) -> None:
        asked.append(json.loads(route.request.post_data or "{}"))
        route.fulfill(json={"reference": "X", "says": "Your request is with us."})

    desk.route("**/v1/requests", relay)
    desk.goto("about:blank")
    desk.goto(address)
    settle(desk)
    desk.locator("#shade-wanted").fill(COLOUR)
    settle(desk)
    unfold(desk, page_text("ask.make"))
    desk.get_by_label(page_text("request.name")).fill("Ada")
    desk.get_by_label(page_text("request.reach")).fill("01632 960000")
    desk.get_by_label(page_text("request.note")).fill("By Easter, if it can be.")
    desk.get_by_role("button", name=page_text("request.send"), exact=True).click()
    expect(desk.locator(".went")).to_be_focused()
    assert asked[-1]["note"] == f"{SAID}\nBy Easter, if it can be."
