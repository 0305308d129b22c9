"""The desk and what a customer's message left open: the day, the questions, what is answered."""

import re
from datetime import timedelta

import pytest
from playwright.sync_api import expect

from browser.conftest import Look, Maker
from browser.gestures import eventually
from ledgerstone.wording import Message, english, speech_in
from support.day import TODAY
from support.page_texts import desk_text

pytestmark = pytest.mark.browser
NO_YEAR = """Hello,

could you quote for a worktop for our island please: 2000 x 800 mm, 50 mm thick, polished.
We'd need it by {day}. We can collect it.

Regards
Morten Eskdale
"""
TOO_NEAR = """Hello,

a worktop please, 2000 x 620 mm, 40 mm thick, honed, on two base units of 1000 each, with a round
sink, diameter 400 mm, its centre 1000 from the left and 230 from the front. We can collect it.

Regards
Morten Eskdale
"""


def test_a_day_without_a_year_and_a_way_left_open_offer_their_readings(maker: Maker) -> None:
    """Of a pasted text, which has no date: the next such day; and collected, or on a pallet."""
    page = maker.page
    maker.paste(
        "Could I have a price for a shelf, 900 x 220 x 40 mm, charcoal, by the end of March?\n"
        "Delivery to HR0 2AB or we collect, whichever is cheaper.\n"
    )
    doubts = page.locator("#points-list .doubtful")
    expect(doubts).to_have_count(2)
    day = doubts.get_by_role("button", name="31 March")
    day.click()
    expect(page.locator("#needed-by")).to_have_value(re.compile(r"^\d{4}-03-31$"))
    doubts.get_by_role("button", name="pallet").click()
    expect(page.locator("#delivery-kind")).to_have_value("pallet")
    expect(doubts).to_have_count(0)


def test_the_day_a_customer_asked_for_stays_in_the_letter(maker: Maker) -> None:
    """Left doubtful it is asked; confirmed, and moved by a fix, the letter says it can't be met.

    A letter that was copied and has changed since is said to be copied again.
    """
    page = maker.page
    wished = TODAY + timedelta(days=9)
    maker.paste(NO_YEAR.format(day=f"{wished.day} {wished:%B}"))
    page.locator("#marked .phrase").first.wait_for()
    maker.settle()
    maker.press(desk_text("reply.write"))
    letter = page.locator("#letter")
    asks = Message("enquiry-ask-day", said=f"{wished.day} {wished:%B}")
    expect(letter).to_contain_text(speech_in("en").say(asks))
    maker.press("Copy it")
    expect(page.locator("#reply .said")).to_have_text(desk_text("reply.copied"))
    doubt = page.locator("#points-list .doubtful", has_text=f"{wished.day} {wished:%B}")
    expect(page.locator("#stopped")).to_be_hidden()
    doubt.get_by_role("button", name=f"{wished.day} {wished:%B}").click()
    expect(page.locator("#stopped")).to_be_in_viewport()
    expect(page.locator("#reply .said")).to_have_text(desk_text("reply.anew"))
    expect(page.get_by_role("button", name=desk_text("reply.copy-again"))).to_be_visible()
    maker.settle()
    page.locator("ledgerstone-answer").get_by_role("button", name="Give us until").first.click()
    maker.settle()
    late = speech_in("en").say(Message("letter-day-not-met", wished=wished))
    expect(letter).to_contain_text(f"{late} Ready to collect from")
    expect(letter).not_to_contain_text(", in time")
    expect(page.locator("#stopped")).to_be_hidden()
    page.reload()
    maker.settle()
    maker.press(desk_text("reply.write"))
    expect(letter).to_contain_text(late)
    maker.press("Copy it")
    expect(page.locator("#reply .said")).to_have_text(desk_text("reply.copied"))


def test_a_letter_tells_every_change_that_the_maker_took(maker: Maker) -> None:
    """What a fix moved is stated by how far and which way, after the page is loaded again too."""
    page = maker.page
    maker.paste(TOO_NEAR)
    page.locator("#marked .phrase").first.wait_for()
    expect(page.locator("#stopped")).to_be_visible()
    page.locator("ledgerstone-answer").get_by_role("button", name="Move").first.click()
    expect(page.locator("#stopped")).to_be_hidden()
    maker.settle()
    maker.press(desk_text("reply.write"))
    letter = page.locator("#letter")
    changed = english(Message("letter-changed"))
    expect(letter).to_contain_text(changed)
    moved = letter.get_by_text("towards the back: it is centred", exact=False)
    expect(moved).to_contain_text("sink")
    page.reload()
    maker.settle()
    maker.press(desk_text("reply.write"))
    expect(moved).to_be_visible()


def test_a_yes_with_an_open_question_says_so_until_it_is_answered(
    maker: Maker, no_violations: Look
) -> None:
    """In the list, on the yes and on the job sheet; what was offered is drawn with its sizes.

    The deposit is asked for from the list, and the list says once it is here.
    """
    page = maker.page
    day = TODAY + timedelta(days=60)
    maker.replied(NO_YEAR.format(day=f"{day.day} {day:%B}"))
    asks = speech_in("en").say(Message("enquiry-ask-day", said=f"{day.day} {day:%B}"))
    page.get_by_role("link", name="Offers").click()
    row = page.locator("#view-offers li.entry")
    expect(row).to_contain_text(desk_text("offers.asked-count", n=1))
    row.locator("select").select_option("yes")
    row.get_by_role("button", name=desk_text("papers.deposit")).click()
    expect(page.locator("#opened .letter-text")).to_contain_text("deposit")
    expect(page.locator("#opened .why").first).to_contain_text(asks)
    row.get_by_role("button", name="Open ").click()
    drawn = page.locator("#opened .drawn figure")
    expect(drawn).to_contain_text("2000 mm")
    drawing = page.locator("#opened .drawn img").first
    eventually(page, lambda: drawing.evaluate("img => img.naturalWidth > 0"))
    expect(page.locator("#opened .asked")).to_contain_text(asks)
    no_violations(page, "an offer with an open question")
    with page.expect_request("**/v1/job-sheets") as sent:
        page.locator("#opened").get_by_role("button", name="Job sheet", exact=True).click()
    told = sent.value.post_data_json or {}
    assert [one["asks"] for one in told["missing"]] == [asks]
    assert told["customer"] == "Morten Eskdale"
    maker.press(desk_text("offers.answered"))
    expect(page.locator("#opened .asked")).not_to_contain_text(asks)
    expect(row).not_to_contain_text("question")
    maker.press(desk_text("offers.paid"))
    expect(row).to_contain_text(desk_text("offers.is-paid"))
    expect(row.get_by_role("button", name=desk_text("papers.deposit"))).to_have_count(0)


def test_the_empty_desk_calls_an_offer_what_the_customers_page_calls_it(
    maker: Maker, address: str
) -> None:
    """As the profile says, and in the letter too."""
    page = maker.page
    standing = page.locator(".cell.standing .first")
    here = standing.inner_text()
    customer = page.context.new_page()
    customer.goto(address)
    expect(customer.locator(".cell.standing .first")).to_have_text(here)
    maker.settle()
    maker.press(desk_text("reply.write"))
    expect(page.locator("#letter .subject")).to_contain_text(here)


ON_UNITS = """Hello,

a worktop please, 1800 x 640 mm, 40 mm thick, honed, graphite. It sits on base units. We collect.

Regards
Morten Eskdale
"""


def test_units_that_were_taken_are_told_until_they_are_confirmed(maker: Maker) -> None:
    """Confirmed, nobody is asked about them; chosen on the form, they are told as taken."""
    page = maker.page
    maker.paste(ON_UNITS)
    points = page.locator("#points-list li")
    asked = page.locator("#points-list .missing")
    expect(asked).to_have_count(1)
    units = page.locator("#points-list .assumed", has_text="600 mm")
    units.get_by_role("button", name=desk_text("points.right")).click()
    expect(asked).to_have_count(0)
    for _ in range(points.count()):
        points.first.get_by_role("button").last.click()
    title = page.locator("#points-title")
    expect(title).to_have_text(desk_text("points.estimate"))
    page.locator("#rests-kind").select_option("frame")
    page.locator("#rests-kind").select_option("units")
    asked.get_by_role("button", name=desk_text("points.not-asked")).click()
    expect(title).to_have_text(desk_text("points.units-taken"))


def test_what_goes_as_an_estimate_with_nothing_open_says_so(maker: Maker) -> None:
    """Beside the points, with what to choose; once it is chosen no more."""
    page = maker.page
    maker.paste(TOO_NEAR)
    maker.settle()
    title = page.locator("#points-title")
    page.locator("#points-list button").first.wait_for()
    for _ in range(page.locator("#points-list li").count()):
        page.locator("#points-list li").first.locator("button").last.click()
    expect(title).to_have_text(desk_text("points.estimate"))
    page.get_by_label("It is", exact=True).select_option("quotation")
    expect(title).to_have_text(desk_text("points.none"))
