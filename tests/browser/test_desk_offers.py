"""The desk's terms, its kept offers, a service that fails, and two tabs."""

import re
from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import MAKER_KEY, Maker, enter
from ledgerstone.codec.tokens import Tokens
from support.desk_messages import MESSAGES, POTTING

pytestmark = pytest.mark.browser
Look = Callable[[Page, str], None]


def replied(maker: Maker, message: str) -> None:
    """From a pasted message to its reply on the clipboard, noted as sent."""
    maker.paste(message)
    maker.settle()
    maker.press("Write the reply")
    maker.page.locator("#letter .subject").wait_for()
    maker.press("Copy it")
    maker.press("It is sent")


def test_the_makers_terms_are_in_the_letter_and_in_no_token(maker: Maker) -> None:
    """A line, a margin, a deposit in tens and a note; what cannot be read is told beside it."""
    page = maker.page
    maker.paste(POTTING)
    maker.settle()
    before = page.locator(".price .first").inner_text()
    maker.press("Add a line to the price")
    page.get_by_label("What for").fill("Site visit")
    page.get_by_label("Amount before tax").fill("forty")
    expect(page.locator("#terms .fault")).to_contain_text("40.00")
    page.get_by_label("Amount before tax").fill("40")
    page.get_by_label("Margin").fill("35")
    page.get_by_label("Round the deposit to").fill("10")
    page.get_by_label("A few words of yours").fill("As agreed at the fair.")
    expect(page.locator("#margin")).to_contain_text("Margin 35%")
    expect(page.locator(".price .first")).not_to_have_text(before)
    maker.settle()
    maker.press("Write the reply")
    letter = page.locator("#letter")
    expect(letter).to_contain_text("Site visit")
    expect(letter).to_contain_text("As agreed at the fair.")
    expect(letter).to_contain_text(re.compile(r"£\d+0\.00 deposit"))
    maker.press("Copy it")
    kept = page.evaluate("JSON.parse(localStorage.getItem('ledgerstone.offers.1'))")
    content = Tokens(("a signing key for the browser tests",)).open("quote", kept[0]["token"])
    assert "Site visit" in str(content["own"])
    assert "35" not in {str(value) for value in content.values()}
    assert not {"margin", "margin_percent", "costs", "hours"} & set(content)


def test_an_offer_is_kept_opened_and_becomes_a_job(maker: Maker, no_violations: Look) -> None:
    """By its reference or its link, with its state; a yes gives job sheet, calendar and letter."""
    page = maker.page
    replied(maker, POTTING)
    link = page.locator("#letter a[href*='#quote=']").first.get_attribute("href")
    page.get_by_role("link", name="Offers").click()
    row = page.locator("#view-offers li")
    expect(row).to_have_count(1)
    expect(row.locator("select")).to_have_value("sent")
    reference = row.locator("strong").inner_text()
    for text in (reference, f"see {link} again"):
        page.locator("#offer-field").fill(text)
        maker.press("Open it")
        expect(page.locator("#opened .offered")).to_contain_text(reference)
        maker.press("Close this quote")
    maker.press(f"Open {reference}")
    files: list[str] = []
    page.on("download", lambda file: files.append(file.suggested_filename))
    maker.press("A yes: job sheet, calendar, deposit request")
    expect(page.locator("#note .letter-text")).to_contain_text("deposit")
    expect(row).to_contain_text("a yes whose deposit is not here")
    assert files == [f"{reference}-job.pdf", f"{reference}-calendar.ics"]
    for name in ("Approval sheet", "Moulds as DXF", "Moulds as SVG"):
        with page.expect_download():
            page.locator("#opened").get_by_role("button", name=name).click()
    no_violations(page, "an offer opened")
    maker.press("The deposit is here")
    expect(page.locator("#view-offers")).to_contain_text("Nothing waits for you.")
    page.get_by_role("link", name="The week").click()
    maker.press("Make the sheet")
    sheet = page.locator("#week-sheet")
    expect(sheet).to_contain_text("Casting: ")
    expect(sheet).to_contain_text("washed sand")
    no_violations(page, "the week")
    page.get_by_role("link", name="Offers").click()
    page.locator("#offer-field").fill("ABCD-1234")
    maker.press("Open it")
    expect(page.locator("#offers-fault")).to_contain_text("ABCD-1234")


def test_a_failing_service_loses_nothing_that_was_typed(maker: Maker) -> None:
    """Away while reading, pricing and writing: it says so, and all of it is still there."""
    page = maker.page
    page.route("**/v1/enquiries", lambda route: route.abort())
    maker.paste(POTTING)
    expect(page.locator("#enquiry-fault")).to_be_visible()
    expect(page.locator("#message")).to_have_value(re.compile("potting bench"))
    page.reload()
    expect(page.locator("#message")).to_have_value(re.compile("potting bench"))
    page.unroute("**/v1/enquiries")
    maker.press("Read it")
    maker.settle()
    page.route("**/v1/quotes", lambda route: route.fulfill(status=503, body="{}"))
    page.get_by_label("Width", exact=True).fill("575")
    page.get_by_label("A few words of yours").fill("See you soon.")
    expect(page.locator(".trouble .notice")).to_be_visible()
    page.unroute("**/v1/quotes")
    page.route("**/v1/replies", lambda route: route.abort())
    maker.press("Write the reply")
    expect(page.locator("#letter-fault")).to_be_visible()
    page.unroute("**/v1/replies")
    page.reload()
    maker.settle()
    expect(page.get_by_label("Width", exact=True)).to_have_value("575")
    expect(page.get_by_label("A few words of yours")).to_have_value("See you soon.")
    expect(page.locator("#marked .phrase").first).to_be_visible()
    maker.press("Write the reply")
    expect(page.locator("#letter")).to_contain_text("575 mm")


def test_two_tabs_hold_two_enquiries_and_one_list_of_offers(maker: Maker) -> None:
    """What one tab reads stays in it; an offer that one keeps stands in the other's list."""
    first = maker.page
    maker.paste(POTTING)
    maker.settle()
    second = first.context.new_page()
    second.goto(first.url)
    enter(second, MAKER_KEY)
    other = Maker(second)
    second.locator("#message").wait_for()
    second.get_by_role("link", name="Offers").click()
    first.bring_to_front()
    maker.press("Write the reply")
    first.locator("#letter .subject").wait_for()
    maker.press("Copy it")
    expect(second.locator("#view-offers li")).to_have_count(1)
    second.bring_to_front()
    second.get_by_role("link", name="Write an offer").click()
    second.locator("#message").focus()
    other.paste(MESSAGES[3])
    other.settle()
    first.reload()
    expect(first.locator("#marked")).to_contain_text("potting bench")
    expect(first.get_by_label("Width", exact=True)).to_have_value("560")
    expect(second.get_by_label("Width", exact=True)).to_have_value("900")
