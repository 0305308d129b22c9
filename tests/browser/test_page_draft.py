"""Leaving and coming back: undo, the kept draft, a quote's link, paper."""

import base64
import json
import re
from urllib.parse import unquote

import pytest
from playwright.sync_api import Browser, Page, Route, expect

from browser.conftest import Look, Settle, with_requests
from browser.gestures import unfold
from support.page_texts import page_text

pytestmark = pytest.mark.browser

# What every copy of the order that the page begins with says: size, look, place, way and tax.
WHOLE_ORDER = (
    "1500 mm × 600 mm",
    "graphite",
    "as cast",
    "matt",
    "indoors",
    "with 20% VAT",
    page_text("delivery.collect"),
)
# What a service finds wrong, as it is answered to the page here.
REACH_FAULT = "No telephone rings there."


def test_everything_can_be_undone_and_done_again(desk: Page, settle: Settle) -> None:
    """A typed size, an added opening and another shape go back one by one, and come again."""
    settle(desk)
    length = desk.get_by_label("Length", exact=True)
    length.fill("1700")
    desk.get_by_role("button", name="Basin", exact=True).click()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(1)
    desk.get_by_label("Shape", exact=True).select_option("round")
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
    expect(desk.locator(".draft")).to_contain_text(page_text("draft.kept"))
    desk.get_by_label(page_text("unit.label")).select_option("in")
    desk.get_by_label("Length", exact=True).fill("60 1/2")
    desk.get_by_role("button", name="Hob", exact=True).click()
    settle(desk)
    desk.reload()
    settle(desk)
    expect(desk.get_by_label("Length", exact=True)).to_have_value("60 1/2")
    expect(desk.get_by_label(page_text("unit.label"))).to_have_value("in")
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(1)
    expect(desk.locator(".draft")).to_contain_text(page_text("draft.restored"))
    desk.get_by_role("button", name=page_text("draft.clear")).click()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(0)
    settle(desk)
    desk.reload()
    settle(desk)
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(0)


def test_a_quotes_link_is_copied(desk: Page, settle: Settle) -> None:
    """One press puts the signed link on the clipboard, and says so."""
    desk.context.grant_permissions(["clipboard-read", "clipboard-write"])
    settle(desk)
    unfold(desk, page_text("keep.title"))
    desk.get_by_role("button", name=page_text("answer.copy")).click()
    expect(desk.locator("#status")).to_have_text(page_text("answer.copied"))
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


def test_a_link_that_cannot_be_opened_is_stated_plainly(
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
    link = desk.locator("a.main").get_attribute("href") or ""
    token = unquote(link).split("#quote=")[1]
    length.fill("1100")
    settle(desk)
    desk.goto("about:blank")
    desk.goto(f"{address}#quote={token}")
    offered = desk.locator(".offered")
    expect(offered).to_contain_text(f"{price} with")
    expect(offered).to_contain_text(page_text("answer.rates", day="").strip(), ignore_case=True)
    expect(offered).to_contain_text(page_text("quote.today-same"))
    expect(length).to_have_value("1720")
    settle(desk)
    no_violations(desk, "an opened quote")
    length.fill("1730")
    settle(desk)
    changes = desk.get_by_role("heading", name="What differs from").locator("..")
    expect(changes.get_by_role("listitem")).to_have_count(2)
    expect(changes).to_contain_text("1730 mm")
    expect(changes).to_contain_text(re.compile(r"£\d+\.\d\d more"))
    desk.get_by_role("button", name=page_text("quote.close")).click()
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
        body["says"] = "Offered in June."
        body["because"] = [{"reason": "expired", "says": "Its last day was 1 July 2026."}]
        body["price"]["total"] = "1.00"
        route.fulfill(json=body)

    link = desk.locator("a.main").get_attribute("href") or ""
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
    letter = desk.get_by_role("link", name=page_text("ask.make"))
    href = unquote(letter.get_attribute("href") or "")
    assert href.startswith("mailto:hello@tarnside.example.com?subject=Quote ")
    assert desk.locator(".price .first").inner_text() in href
    for said in WHOLE_ORDER:
        assert said in href
    assert "/#quote=" in href
    letter.click()
    went = desk.locator(".went")
    expect(went).to_contain_text("Wilf or Ottoline")
    unfold(desk, "Your copy")
    expect(went).to_contain_text(desk.locator(".price .first").inner_text())
    desk.context.grant_permissions(["clipboard-read", "clipboard-write"])
    unfold(desk, page_text("keep.title"))
    desk.get_by_role("button", name=page_text("answer.copy-text")).last.click()
    expect(desk.locator("#status")).to_have_text(page_text("answer.text-copied"))
    assert desk.evaluate("navigator.clipboard.readText()") in href


def test_a_quote_is_sent_by_the_service_where_it_relays(
    desk: Page, address: str, settle: Settle, no_violations: Look
) -> None:
    """Name and reach go with the token; a fault stands by its field; the outcome is stated."""
    desk.route("**/v1/choices", with_requests)
    asked: list[dict[str, str]] = []

    def relay(route: Route) -> None:
        asked.append(json.loads(route.request.post_data or "{}"))
        if not asked[-1]["reach"]:
            fault = {"pointer": "/reach", "says": REACH_FAULT}
            route.fulfill(status=400, json={"detail": "Not understood.", "faults": [fault]})
        else:
            route.fulfill(json={"reference": "X", "says": "Your request is with Tarnside Casting."})

    desk.route("**/v1/requests", relay)
    desk.goto("about:blank")
    desk.goto(address)
    settle(desk)
    unfold(desk, page_text("ask.make"))
    desk.get_by_label("Your name").fill("Ada")
    send = desk.get_by_role("button", name="Send it", exact=True)
    send.click()
    reach = desk.get_by_label(page_text("request.reach"))
    expect(reach).to_be_focused()
    expect(reach).to_have_accessible_description(f"{page_text('form.error')} {REACH_FAULT}")
    no_violations(desk, "a request with a fault")
    reach.fill("01632 960000")
    send.click()
    went = desk.locator(".went")
    expect(went).to_be_focused()
    expect(went).to_contain_text("Your request is with Tarnside Casting.")
    expect(went).to_contain_text("Wilf or Ottoline")
    assert set(asked[-1]) == {"token", "name", "reach", "note"}
    assert (asked[-1]["name"], asked[-1]["reach"]) == ("Ada", "01632 960000")


def test_where_nothing_can_be_kept_the_page_says_so_at_once(
    chromium: Browser, address: str
) -> None:
    """Storage that a browser refuses, as in many a frame, is told before anything is entered."""
    context = chromium.new_context(locale="en-GB")
    page = context.new_page()
    refuse = "{ get() { throw new DOMException('refused', 'SecurityError'); } }"
    page.add_init_script(f"Object.defineProperty(window, 'localStorage', {refuse})")
    page.goto(address)
    expect(page.locator("#draft-says")).to_contain_text("does not keep")
    context.close()


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
