"""Leaving and coming back: undo, the kept draft, a quote's link, paper."""

import base64
import json
import re
from collections.abc import Callable
from urllib.parse import unquote

import pytest
from playwright.sync_api import Page, Route, expect

from browser.conftest import Look

pytestmark = pytest.mark.browser
Settle = Callable[[Page], None]

# What every copy of the order that the page begins with says: size, look, place, way and tax.
WHOLE_ORDER = (
    "1500 mm × 600 mm",
    "graphite",
    "as cast",
    "matt",
    "indoors",
    "with 20% VAT",
    "I collect it",
)


def test_everything_can_be_undone_and_done_again(desk: Page, settle: Settle) -> None:
    """A typed size, an added opening and another shape go back one by one, and come again."""
    settle(desk)
    length = desk.get_by_label("Length", exact=True)
    length.fill("1700")
    desk.get_by_role("button", name="Basin", exact=True).click()
    desk.get_by_text("Round", exact=True).click()
    expect(length).to_be_hidden()
    undo = desk.get_by_role("button", name="Undo")
    undo.click()
    expect(length).to_have_value("1700")
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(1)
    undo.click()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(0)
    undo.click()
    expect(length).to_have_value("1500")
    expect(undo).to_have_attribute("aria-disabled", "true")
    for _ in range(3):
        desk.get_by_role("button", name="Redo").click()
    expect(length).to_be_hidden()
    settle(desk)


def test_a_draft_survives_a_reload_and_is_cleared_by_one_press(desk: Page, settle: Settle) -> None:
    """What was entered is there again, units and all; clearing starts afresh and can be undone."""
    settle(desk)
    expect(desk.locator(".draft")).to_contain_text("kept in this browser, on this device only")
    desk.get_by_text("inches", exact=True).click()
    desk.get_by_label("Length", exact=True).fill("60 1/2")
    desk.get_by_role("button", name="Hob", exact=True).click()
    settle(desk)
    desk.reload()
    settle(desk)
    expect(desk.get_by_label("Length", exact=True)).to_have_value("60 1/2")
    expect(desk.get_by_role("radio", name="inches")).to_be_checked()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(1)
    expect(desk.locator(".draft")).to_contain_text("This is where you left off.")
    desk.get_by_role("button", name="Clear it and start again").click()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(0)
    settle(desk)
    desk.reload()
    settle(desk)
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(0)


def test_a_quotes_link_is_copied(desk: Page, settle: Settle) -> None:
    """One press puts the signed link on the clipboard, and says so."""
    desk.context.grant_permissions(["clipboard-read", "clipboard-write"])
    settle(desk)
    desk.get_by_role("button", name="Copy the link to this quote").click()
    expect(desk.locator("#status")).to_have_text("The link is copied.")
    link = desk.evaluate("navigator.clipboard.readText()")
    assert "/#quote=" in link


def test_a_link_that_holds_an_order_puts_it_in_the_form(
    desk: Page, address: str, settle: Settle
) -> None:
    """What an email's link changes is there to be priced, and the order before comes back."""
    settle(desk)
    outline = {"kind": "rectangle", "length": "1234 mm", "width": "567 mm"}
    order = {"slabs": [{"label": "Bänk", "outline": outline, "thickness": "40 mm"}]}
    packed = base64.urlsafe_b64encode(json.dumps(order, ensure_ascii=False).encode())
    desk.goto(f"{address}#order={packed.decode().rstrip('=')}")
    expect(desk.get_by_label("Length", exact=True)).to_have_value("1234")
    settle(desk)
    desk.get_by_role("button", name="Undo").click()
    expect(desk.get_by_label("Length", exact=True)).to_have_value("1500")
    settle(desk)


def test_a_link_that_cannot_be_opened_is_said_plainly(
    desk: Page, address: str, settle: Settle
) -> None:
    """An unknown token says so, and the customer's own draft stands there instead."""
    settle(desk)
    desk.get_by_label("Length", exact=True).fill("1710")
    settle(desk)
    desk.goto("about:blank")
    desk.goto(f"{address}#quote=not-one-of-ours")
    expect(desk.locator(".draft")).to_contain_text("can’t be opened here")
    expect(desk.get_by_label("Length", exact=True)).to_have_value("1710")


def test_a_quotes_link_shows_it_as_offered(
    desk: Page, address: str, settle: Settle, no_violations: Look
) -> None:
    """Its price, day and standing as they were; its order in the form; the own draft by undo."""
    length = desk.get_by_label("Length", exact=True)
    length.fill("1720")
    settle(desk)
    price = desk.locator(".price .first").inner_text()
    link = desk.locator(".ways-to-send a").first.get_attribute("href") or ""
    token = unquote(link).split("#quote=")[1]
    length.fill("1100")
    settle(desk)
    desk.goto("about:blank")
    desk.goto(f"{address}#quote={token}")
    offered = desk.locator(".offered")
    expect(offered).to_contain_text(f"{price} with")
    expect(offered).to_contain_text("It stands until")
    expect(offered).to_contain_text("Today it would be the same.")
    expect(length).to_have_value("1720")
    settle(desk)
    no_violations(desk, "an opened quote")
    length.fill("1730")
    settle(desk)
    changes = desk.get_by_role("heading", name="What differs from").locator("..")
    expect(changes.get_by_role("listitem")).to_have_count(2)
    expect(changes).to_contain_text("1730 mm")
    expect(changes).to_contain_text(re.compile(r"£\d+\.\d\d more"))
    desk.get_by_role("button", name="Close this quote").click()
    expect(offered).to_have_count(0)
    assert "#" not in desk.url
    for _ in range(3):
        desk.get_by_role("button", name="Undo").click()
    expect(length).to_have_value("1100")


def test_a_quote_that_no_longer_stands_says_why_and_what_it_is_today(
    desk: Page, address: str, settle: Settle
) -> None:
    """With the service's answer of a later day: expired, other rates, another price and day."""
    settle(desk)

    def later(route: Route) -> None:
        body = route.fetch().json()
        body["stands"] = False
        body["says"] = "Offered on 1 June 2026. It no longer stands; today's answer is below."
        body["because"] = [{"reason": "expired", "says": "Its last day was 1 July 2026."}]
        body["price"]["total"] = "1.00"
        route.fulfill(json=body)

    link = desk.locator(".ways-to-send a").first.get_attribute("href") or ""
    now = desk.locator(".price .first").inner_text()
    desk.route("**/v1/quotes/*", later)
    desk.goto("about:blank")
    desk.goto(f"{address}#quote={unquote(link).split('#quote=')[1]}")
    offered = desk.locator(".offered")
    expect(offered).to_contain_text("Its last day was 1 July 2026.")
    expect(offered).to_contain_text("£1.00 with")
    expect(offered).to_contain_text(f"Today it would be {now}, ready on")
    expect(desk.locator("#answer")).to_be_focused()


def test_a_quote_is_sent_by_the_customers_own_mail(desk: Page, settle: Settle) -> None:
    """Where the workshop relays nothing, a letter is ready, with reference, price and link."""
    settle(desk)
    desk.get_by_text("Send it to Tarnside Casting").click()
    letter = desk.get_by_role("link", name="Write to us with it")
    href = unquote(letter.get_attribute("href") or "")
    assert href.startswith("mailto:hello@tarnside.example.com?subject=Quote ")
    assert desk.locator(".price .first").inner_text() in href
    for said in WHOLE_ORDER:
        assert said in href
    assert "/#quote=" in href
    call = desk.get_by_role("link", name="Call 01632 960417")
    expect(call).to_have_attribute("href", "tel:01632960417")
    desk.context.grant_permissions(["clipboard-read", "clipboard-write"])
    desk.get_by_role("button", name="Copy it as text").click()
    expect(desk.locator("#status")).to_have_text("The quote is copied as text.")
    assert desk.evaluate("navigator.clipboard.readText()") in href


def test_a_quote_is_sent_by_the_service_where_it_relays(
    desk: Page, address: str, settle: Settle, no_violations: Look
) -> None:
    """Name and reach go with the token; a fault stands by its field; the outcome is said."""
    desk.route("**/v1/choices", with_requests)
    asked: list[dict[str, str]] = []

    def relay(route: Route) -> None:
        asked.append(json.loads(route.request.post_data or "{}"))
        if not asked[-1]["reach"]:
            fault = {"pointer": "/reach", "says": "Enter an email address or a number."}
            route.fulfill(status=400, json={"detail": "Not understood.", "faults": [fault]})
        else:
            route.fulfill(json={"reference": "X", "says": "Your request is with Tarnside Casting."})

    desk.route("**/v1/requests", relay)
    desk.goto("about:blank")
    desk.goto(address)
    settle(desk)
    desk.get_by_text("Send it to Tarnside Casting").click()
    desk.get_by_label("Your name").fill("Ada")
    send = desk.get_by_role("button", name="Send it", exact=True)
    send.click()
    reach = desk.get_by_label("Your email address or telephone number")
    expect(reach).to_be_focused()
    expect(reach).to_have_accessible_description("Error: Enter an email address or a number.")
    no_violations(desk, "a request with a fault")
    reach.fill("01632 960000")
    send.click()
    expect(desk.locator("#status")).to_have_text("Your request is with Tarnside Casting.")
    assert set(asked[-1]) == {"token", "name", "reach", "note"}
    assert (asked[-1]["name"], asked[-1]["reach"]) == ("Ada", "01632 960000")


def with_requests(route: Route) -> None:
    """Answer the choices of a workshop whose profile names a mail server."""
    route.fulfill(json={**route.fetch().json(), "requests": True})


def test_the_print_is_the_answer_on_one_sheet(desk: Page, settle: Settle) -> None:
    """On paper there are the whole order, price, drawing, lines and days, and no buttons."""
    settle(desk)
    expect(desk.locator(".on-paper")).to_be_hidden()
    desk.emulate_media(media="print")
    expect(desk.locator(".block")).to_be_visible()
    for said in WHOLE_ORDER:
        expect(desk.locator(".answer")).to_contain_text(said)
    expect(desk.locator("figure img")).to_be_visible()
    expect(desk.get_by_role("button")).to_have_count(0)
    pages = desk.pdf(format="A4").count(b"/Type /Page\n")
    assert pages == 1
