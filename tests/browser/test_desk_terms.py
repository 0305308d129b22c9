"""The maker's terms of one offer: in its letter, in no token, and in the offer that is kept."""

import re
from datetime import timedelta

import pytest
from playwright.sync_api import Route, expect

from browser.conftest import Maker, kept_offers
from ledgerstone.codec.tokens import Tokens
from support.day import TODAY
from support.desk_messages import POTTING
from support.in_english import value_in_english
from support.page_texts import desk_text

pytestmark = pytest.mark.browser
NO_SIZE = """Hello,

a round table top please, 1 m across and 40 mm thick, with a hole for a parasol in the middle, not
sure how big. I can collect it.

Kind regards,
Una Arkle
"""


def test_the_makers_terms_are_in_the_letter_and_in_no_token(maker: Maker) -> None:
    """A line, a margin, a deposit in tens and a note; what cannot be read is reported beside it."""
    page = maker.page
    maker.paste(POTTING)
    maker.settle()
    before = page.locator(".price .first").inner_text()
    maker.press(desk_text("hand.add"))
    page.get_by_label("What for").fill("Site visit")
    page.get_by_label(desk_text("hand.amount")).fill("forty")
    expect(page.locator("#terms .fault")).to_contain_text("40.00")
    page.get_by_label(desk_text("hand.amount")).fill("40")
    page.get_by_label(desk_text("hand.margin_percent")).fill("35")
    page.get_by_label(desk_text("hand.deposit_round_to")).fill("10")
    page.get_by_label(desk_text("hand.note")).fill("As agreed at the fair.")
    last = TODAY + timedelta(days=11)
    page.get_by_label(desk_text("hand.valid_until")).fill(last.isoformat())
    page.get_by_label("It is", exact=True).select_option("quotation")
    expect(page.locator("#margin")).to_contain_text("35%")
    for asked in page.get_by_role("button", name=desk_text("points.not-asked")).all():
        asked.click()  # while anything is asked the letter is an estimate
    expect(page.locator(".price .first")).not_to_have_text(before)
    maker.settle()
    maker.press(desk_text("reply.write"))
    letter = page.locator("#letter")
    expect(letter).to_contain_text("Site visit")
    expect(letter).to_contain_text("As agreed at the fair.")
    expect(letter).to_contain_text(re.compile(r"£\d+0\.00 deposit"))
    expect(letter).to_contain_text(value_in_english(last))
    expect(letter).to_contain_text("Quotation")
    maker.press("Copy it")
    kept = kept_offers(page)
    content = Tokens(("a signing key for the browser tests",)).open("quote", kept[0]["token"])
    assert "Site visit" in str(content["own"])
    assert (content["until"], content["standing"]) == (last.isoformat(), "quotation")
    assert "35" not in {str(value) for value in content.values()}
    assert not {"margin", "margin_percent", "costs", "hours"} & set(content)


def test_a_letter_that_asks_is_an_estimate_and_the_offer_that_is_kept(maker: Maker) -> None:
    """A quotation was chosen: answer, letter, papers and list have one name, and one standing.

    A change to that offer begins with the line, the markup and the name that it was made with;
    its last day is not taken over.
    """
    page = maker.page
    maker.paste(NO_SIZE)
    maker.settle()
    expect(page.locator("#points-list .missing")).to_have_count(1)
    maker.press(desk_text("hand.add"))
    page.get_by_label("What for").fill("Goodwill")
    page.get_by_label(desk_text("hand.amount")).fill("-20")
    page.get_by_label(desk_text("hand.margin_percent")).fill("33")
    page.get_by_label(desk_text("hand.valid_until")).fill((TODAY + timedelta(days=11)).isoformat())
    page.get_by_label("It is", exact=True).select_option("quotation")
    maker.settle()
    expect(page.locator(".cell.standing .first")).to_have_text("Estimate")
    maker.press(desk_text("reply.write"))
    subject = page.locator("#letter .subject")
    expect(subject).to_contain_text("Estimate")
    maker.press("Copy it")
    (offer,) = kept_offers(page)
    expect(subject).to_contain_text(offer["reference"])
    content = Tokens(("a signing key for the browser tests",)).open("quote", offer["token"])
    assert content["standing"] == "estimate"
    with page.expect_download() as paper:
        page.get_by_role("button", name="Approval sheet").click()
    assert paper.value.suggested_filename == f"{offer['reference']}-approval.pdf"
    page.get_by_role("link", name="Offers").click()
    maker.press(f"Open {offer['reference']}")
    today = desk_text("offers.today", total="|", day="").split("|")[0]
    expect(page.locator("#opened .today")).to_contain_text(today)
    maker.press(desk_text("offers.change"))
    maker.settle()
    expect(page.get_by_label("What for")).to_have_value("Goodwill")
    expect(page.get_by_label(desk_text("hand.margin_percent"))).to_have_value("33")
    expect(page.get_by_label(desk_text("hand.valid_until"))).to_have_value("")
    expect(page.locator("#letter-name")).to_have_value("Una Arkle")
    expect(page.locator("#margin")).to_contain_text("33%")


def test_an_offer_is_kept_though_its_price_comes_after_its_letter_is_asked_for(
    maker: Maker,
) -> None:
    """The letter waits for the price, so that what is kept is what it offers."""
    page = maker.page
    maker.paste(POTTING)
    maker.settle()
    held: list[Route] = []
    is_slow = True

    def hold(route: Route) -> None:
        if is_slow:
            held.append(route)
        else:
            route.continue_()

    page.route("**/v1/quotes", hold)
    page.get_by_label("Width", exact=True).fill("575")
    maker.press(desk_text("reply.write"))
    expect(page.locator("#letter-fault.hint")).to_be_visible()
    is_slow = False
    held[-1].continue_()
    subject = page.locator("#letter .subject")
    expect(subject).to_be_visible()
    expect(page.locator("#letter")).to_be_focused()
    maker.press("Copy it")
    (offer,) = kept_offers(page)
    expect(subject).to_contain_text(offer["reference"])
