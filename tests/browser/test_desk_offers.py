"""The desk's kept offers, a service that fails, and two tabs."""

import re

import pytest
from playwright.sync_api import Route, expect

from browser.conftest import MAKER_KEY, Look, Maker, enter, kept_offers
from support.desk_messages import MESSAGES, POTTING
from support.page_texts import desk_text, page_text

pytestmark = pytest.mark.browser
REACH = page_text("page.reach", email="|", telephone="|").split("|")[0]


def test_an_offer_is_kept_opened_and_becomes_a_job(maker: Maker, no_violations: Look) -> None:
    """By its reference or its link, with its state; a yes gives job sheet, calendar and letter."""
    page = maker.page
    maker.replied(POTTING)
    link = page.locator("#letter a[href*='#quote=']").first.get_attribute("href")
    page.get_by_role("link", name="Offers").click()
    row = page.locator("#view-offers li.entry")
    expect(row).to_have_count(1)
    expect(row.locator("select")).to_have_value("sent")
    reference = row.locator("strong").inner_text()
    for text in (reference, f"see {link} again"):
        page.locator("#offer-field").fill(text)
        maker.press("Open it")
        expect(page.locator("#opened .offered")).to_contain_text(reference)
        maker.press(page_text("quote.close"))
    maker.press(f"Open {reference}")
    files: list[str] = []
    page.on("download", lambda file: files.append(file.suggested_filename))
    maker.press(desk_text("papers.yes"))
    page.locator("#note .letter-text").wait_for()
    expect(page.locator("#note .letter-text")).to_contain_text("deposit")
    expect(row).to_contain_text(desk_text("offers.why-unpaid"))
    assert files == [f"{reference}-job.pdf", f"{reference}-calendar.ics"]
    for name in ("Approval sheet", desk_text("papers.dxf"), desk_text("papers.svg")):
        with page.expect_download():
            page.locator("#opened").get_by_role("button", name=name).click()
    no_violations(page, "an offer opened")
    maker.press(desk_text("offers.paid"))
    expect(page.locator("#view-offers")).to_contain_text(desk_text("offers.nothing-waits"))
    page.get_by_role("link", name="The week").click()
    maker.press(desk_text("week.make"))
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
    page.get_by_label(desk_text("hand.note")).fill("See you soon.")
    expect(page.locator(".trouble .notice")).to_be_visible()
    expect(page.locator(".trouble .notice")).not_to_contain_text(REACH)
    page.unroute("**/v1/quotes")
    page.route("**/v1/replies", lambda route: route.abort())
    maker.press(desk_text("reply.write"))
    expect(page.locator("#letter-fault")).to_be_visible()
    page.unroute("**/v1/replies")
    page.reload()
    maker.settle()
    expect(page.get_by_label("Width", exact=True)).to_have_value("575")
    expect(page.get_by_label(desk_text("hand.note"))).to_have_value("See you soon.")
    expect(page.locator("#marked .phrase").first).to_be_visible()
    maker.press(desk_text("reply.write"))
    expect(page.locator("#letter")).to_contain_text("575 mm")


def test_a_slow_service_is_stated_and_loses_nothing(maker: Maker) -> None:
    """While a message is read it says so; terms stay when its words are changed, then go."""
    page = maker.page
    held: list[Route] = []

    def hold(route: Route) -> None:
        held.append(route)

    page.route("**/v1/enquiries", hold)
    maker.paste(POTTING)
    slow = page.locator("#enquiry-fault.hint")
    expect(slow).to_be_visible()
    expect(page.locator("#message")).to_have_value(re.compile("potting bench"))
    held.pop().continue_()
    page.locator("#marked .phrase").first.wait_for()
    expect(slow).to_be_hidden()
    page.get_by_label(desk_text("hand.note")).fill("See you soon.")
    maker.press(desk_text("enquiry.edit"))
    page.locator("#message").press_sequentially(" In a hurry.")
    maker.press("Read it")
    expect(slow).to_be_visible()
    held.pop().continue_()
    expect(page.locator("#marked")).to_contain_text("In a hurry")
    expect(page.get_by_label(desk_text("hand.note"))).to_have_value("See you soon.")
    maker.press("Next enquiry")
    expect(page.get_by_label(desk_text("hand.note"))).to_have_value("")


def test_a_key_that_is_taken_back_is_asked_for_and_nothing_is_lost(maker: Maker) -> None:
    """What stands on the page stays there, and goes on once a right key is entered."""
    page = maker.page
    maker.paste(POTTING)
    maker.settle()
    refused = {"status": 401, "content_type": "application/problem+json", "body": "{}"}
    page.route("**/v1/quotes", lambda route: route.fulfill(**refused))
    page.get_by_label("Width", exact=True).fill("575")
    expect(page.locator("#key")).to_be_focused()
    page.unroute("**/v1/quotes")
    enter(page, MAKER_KEY)
    maker.settle()
    expect(page.get_by_label("Width", exact=True)).to_have_value("575")
    maker.press(desk_text("reply.write"))
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
    maker.press(desk_text("reply.write"))
    first.locator("#letter .subject").wait_for()
    maker.press("Copy it")
    expect(second.locator("#view-offers li.entry")).to_have_count(1)
    second.bring_to_front()
    second.get_by_role("link", name=desk_text("view.offer")).click()
    second.locator("#message").click()
    other.paste(MESSAGES[3])
    other.settle()
    first.reload()
    expect(first.locator("#marked")).to_contain_text("potting bench")
    expect(first.get_by_label("Width", exact=True)).to_have_value("560")
    expect(second.get_by_label("Width", exact=True)).to_have_value("900")


def test_the_weeks_list_to_buy_holds_what_two_offers_use(maker: Maker) -> None:
    """Each material once, as much of it as their job sheets add up to; both on their days."""
    page = maker.page
    maker.replied(POTTING)
    maker.press("Next enquiry")
    maker.replied(MESSAGES[3])
    page.get_by_role("link", name="The week").click()
    boxes = page.locator("#view-week input[type=checkbox]")
    expect(boxes).to_have_count(2)
    for box in boxes.all():
        box.check()
    maker.press(desk_text("week.make"))
    expect(page.locator("#week-sheet table")).to_have_count(2)
    days, bought = page.locator("#week-sheet table").all()
    kept = kept_offers(page)
    expect(page.locator("#week-sheet")).to_contain_text(desk_text("week.alone"))
    expect(days).to_contain_text(kept[0]["reference"])
    expect(days).to_contain_text(kept[1]["reference"])
    jobs = [
        page.request.post(
            page.url.split("desk/")[0] + "v1/job-sheets",
            data={"token": offer["token"]},
            headers={"Authorization": f"Bearer {MAKER_KEY}", "Accept": "application/json"},
        ).json()
        for offer in kept
    ]
    used: dict[str, float] = {}
    for material in (one for job in jobs for one in job["materials"]):
        used[material["name"]] = used.get(material["name"], 0.0) + material["used"]
    rows = [row.locator("td").all_inner_texts() for row in bought.locator("tbody tr").all()]
    assert sorted(name for name, *_ in rows) == sorted(used)
    for name, amount, _ in rows:
        assert float(amount.split()[0].replace(",", "")) == pytest.approx(used[name], abs=0.005)
