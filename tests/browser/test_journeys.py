"""Seven customers, from the first look to a quote in hand, each in a way of their own."""

import re
from collections.abc import Callable
from pathlib import Path
from urllib.parse import unquote

import pytest
from playwright.sync_api import Browser, Page, expect

from browser.conftest import ROOT, Look, Served, Settle
from browser.gestures import drag, pounds, price, tab_to, touch, unfold
from support.page_texts import page_text

pytestmark = pytest.mark.browser
PROFILE = ROOT / "service/ledgerstone/workshop/demonstration.toml"


def test_a_basin_top_by_touch_on_a_phone(phone: Page, settle: Settle, no_violations: Look) -> None:
    """Piece, finger, shade, pallet: a price whose lines add up, a day, a weight, a letter."""
    settle(phone)
    phone.get_by_role("button", name="Basin top", exact=True).tap()
    settle(phone)
    unfold(phone, "basin")
    x = phone.get_by_label(page_text("cutout.x")).first
    expect(x).to_have_value("600")
    touch(phone, "opening-0", 12, 0)
    expect(x).not_to_have_value("600")
    phone.locator("#shade-name label").nth(1).tap()
    phone.get_by_label(page_text("delivery.label")).select_option("pallet")
    phone.get_by_label("Postcode").fill("HR9 7XX")
    settle(phone)
    bar = phone.locator("#glance")
    expect(bar).to_contain_text(price(phone))
    bar.tap()
    expect(phone.locator(".block")).to_be_in_viewport()
    expect(phone.locator(".day .first")).to_have_text(
        re.compile(r"^With you by \w+ \d+ \w+ \d{4}$")
    )
    expect(phone.locator(".weight .first")).to_contain_text("people and a trolley")
    expect(phone.locator("figure img")).to_have_attribute("alt", re.compile(r"\(basin\).*\(tap\)"))
    phone.get_by_text(page_text("answer.lines")).tap()
    table = phone.locator("details[open] table").first
    lines = [pounds(line) for line in table.locator("tbody tr").all_inner_texts()]
    net, tax, total = (pounds(line) for line in table.locator("tfoot tr").all_inner_texts())
    assert round(sum(lines), 2) == net
    assert round(net + tax, 2) == total == pounds(price(phone))
    letter = phone.get_by_role("link", name=page_text("ask.make")).get_attribute("href") or ""
    assert price(phone) in unquote(letter)
    no_violations(phone, "a basin top on a phone")


def test_an_l_shaped_run_by_mouse(desk: Page, settle: Settle) -> None:
    """One slab in an L, both legs drawn by their handles, a basin set down and dragged."""
    settle(desk)
    desk.get_by_label("Shape", exact=True).select_option("l-shape")
    desk.get_by_label("Width", exact=True).fill("1200")
    desk.get_by_label("Length", exact=True).fill("2000")
    settle(desk)
    before = pounds(price(desk))
    drag(desk, "handle-length", 200, 0, length_mm=2000)
    desk.mouse.up()
    long = int(desk.get_by_label("Length", exact=True).input_value())
    assert 2150 <= long <= 2250
    cut = int(desk.get_by_label(page_text("notch.length")).input_value())
    drag(desk, "handle-notch", -60, 0, length_mm=long)
    desk.mouse.up()
    assert int(desk.get_by_label(page_text("notch.length")).input_value()) > cut
    settle(desk)
    assert pounds(price(desk)) != before
    desk.get_by_role("button", name="Basin", exact=True).click()
    drag(desk, "opening-0", 0, 60, length_mm=long)
    expect(desk.locator("#plan .measure")).to_have_count(2)
    desk.mouse.up()
    settle(desk)
    expect(desk.locator("figure img")).to_have_attribute("alt", re.compile(r"\(basin\)"))
    unfold(desk, "Edges")
    desk.get_by_role("group", name="Back", exact=True).get_by_label("Profile").select_option("wall")
    desk.get_by_role("group", name="Front", exact=True).get_by_label("Profile").select_option(
        "round"
    )
    desk.get_by_label("Thickness", exact=True).fill("50")
    settle(desk)
    assert price(desk).startswith("£")
    expect(desk.locator(".weight")).to_contain_text(f"{long:,} × 1,200 × 50 mm")
    expect(desk.locator(".standing")).to_contain_text(re.compile("holds? until"))


def test_a_round_table_by_keyboard_alone(desk: Page, settle: Settle) -> None:
    """Shape, diameter, use, legs, pallet and postcode; the answer takes focus and is stated."""
    settle(desk)
    tab_to(desk, page_text("label.more"))
    desk.keyboard.press("Enter")
    tab_to(desk, page_text("use.label"))
    desk.keyboard.type("Table")
    expect(desk.get_by_label(page_text("use.label"), exact=True)).to_have_value("table")
    tab_to(desk, "Shape")
    desk.keyboard.type("Round")
    expect(desk.get_by_label("Shape", exact=True)).to_have_value("round")
    tab_to(desk, "Diameter")
    desk.keyboard.press("Control+a")
    desk.keyboard.type("90 cm")
    tab_to(desk, page_text("rests.label"), back=True)
    desk.keyboard.type("Legs")
    settle(desk)
    tab_to(desk, "Legs")
    desk.keyboard.press("Enter")
    expect(desk.get_by_label(page_text("point.x")).first).to_have_value("205")
    tab_to(desk, page_text("delivery.label"))
    desk.keyboard.type("On a pallet")
    tab_to(desk, "Postcode")
    desk.keyboard.type("HR9 7XX")
    tab_to(desk, page_text("form.check"))
    desk.keyboard.press("Enter")
    expect(desk.locator("#answer")).to_be_focused()
    settle(desk)
    expect(desk.locator(".weight")).to_contain_text("90 cm across, 4 cm thick")
    expect(desk.locator(".day .first")).to_contain_text("With you by")
    expect(desk.locator("#status")).to_contain_text(price(desk))


def too_near_the_back(page: Page) -> None:
    """Set a basin down, and move it back by its button until it is too near."""
    page.get_by_role("button", name="Basin", exact=True).click()
    back = page.get_by_role("button", name="Back 5 mm")
    for _ in range(20):
        back.click()


def longer_than_the_table(page: Page) -> None:
    """Draw the slab longer than anything that can be cast."""
    for _ in range(4):
        long = int(page.get_by_label("Length", exact=True).input_value())
        drag(page, "handle-length", long * 0.2, 0, length_mm=long)
        page.mouse.up()


def thin_and_outdoors_with_a_hob(page: Page) -> None:
    """Ask for an outdoor top round an appliance as thin as it comes."""
    page.get_by_role("button", name=page_text("start.outdoor")).click()
    expect(page.locator("[data-list=cutouts] > li")).to_have_count(1)
    page.locator("[data-quick]").select_option(index=1)


@pytest.mark.parametrize(
    "asked", [too_near_the_back, longer_than_the_table, thin_and_outdoors_with_a_hob]
)
def test_what_cannot_be_made_is_fixed_by_pressing(
    desk: Page, settle: Settle, no_violations: Look, asked: Callable[[Page], None]
) -> None:
    """Without a number typed: no price, then one press or two of what the service offers."""
    settle(desk)
    asked(desk)
    settle(desk)
    expect(desk.locator(".price .first")).to_have_text(page_text("answer.no-price"))
    expect(desk.locator(".findings li.stops").first).to_be_visible()
    no_violations(desk, asked.__name__)
    for _ in range(3):
        offered = desk.locator(".for-all button, .findings .remedies button").first
        expect(offered).to_be_visible()
        says = offered.inner_text()
        offered.click()
        expect(desk.locator("#status")).to_contain_text(page_text("remedy.done"))
        settle(desk)
        print(f"{asked.__name__}: {says!r}: {price(desk)}")
        if price(desk).startswith("£"):
            break
    assert price(desk).startswith("£")
    expect(desk.locator(".findings li.stops")).to_have_count(0)


def test_a_slab_in_inches(desk: Page, settle: Settle) -> None:
    """Fractions and feet as they are typed, findings and remedies in inches, millimetres exact."""
    settle(desk)
    desk.get_by_label(page_text("unit.label")).select_option("in")
    desk.get_by_label("Length", exact=True).fill("60 1/2")
    desk.get_by_label("Width", exact=True).fill("2' 1\"")
    desk.get_by_role("button", name="Basin", exact=True).click()
    desk.get_by_label(page_text("cutout.y")).fill("8 ½")
    settle(desk)
    # 25.4 mm an inch exactly (US Federal Register 24 FR 5348, 1959)
    finding = desk.locator(".findings li.stops", has_text="the front edge").first
    expect(finding).to_contain_text(re.compile(r"\d in wide; it needs \d.* in\b"))
    expect(finding).not_to_contain_text("mm")
    desk.locator(".for-all button, .findings .remedies button").first.click()
    settle(desk)
    assert price(desk).startswith("£")
    expect(desk.get_by_label("Length", exact=True)).to_have_value("60 1/2")
    expect(desk.get_by_label("Width", exact=True)).to_have_value("2' 1\"")
    expect(desk.get_by_label(page_text("cutout.y"))).not_to_have_value("8 ½")
    expect(desk.locator(".weight")).to_contain_text("60 1/2 × 25 × 1 9/16 in")


def test_back_by_link_after_the_rates_have_changed(
    chromium: Browser, own_service: Served, settle: Settle, tmp_path: Path, no_violations: Look
) -> None:
    """The workshop's file really changes: the offer stands as it was, today's price beside it."""
    profile = tmp_path / "workshop.toml"
    told = PROFILE.read_text()
    profile.write_text(told)
    own_service.also = {"LEDGERSTONE_WORKSHOP": str(profile)}
    own_service.start()
    context = chromium.new_context(locale="en-GB")
    page = context.new_page()
    page.goto(own_service.url)
    settle(page)
    page.get_by_label("Length", exact=True).fill("1720")
    settle(page)
    offered = price(page)
    letter = page.get_by_role("link", name=page_text("ask.make")).get_attribute("href") or ""
    link = unquote(letter).split()[-1]
    assert link.startswith(f"{own_service.url}#quote=")
    context.close()
    own_service.stop()
    dearer, found = re.subn(r"(?m)^hour = .*$", "hour = 77.00", told)
    assert found == 1
    profile.write_text(dearer)
    own_service.start()
    context = chromium.new_context(locale="en-GB")
    page = context.new_page()
    page.goto(link)
    notice = page.locator(".offered")
    expect(notice).to_contain_text(f"{offered} with")
    expect(notice.get_by_role("list")).to_contain_text(re.compile("rates|prices", re.IGNORECASE))
    settle(page)
    assert pounds(price(page)) > pounds(offered)
    expect(notice).to_contain_text(f"Today it would be {price(page)}, ready on")
    expect(page.get_by_label("Length", exact=True)).to_have_value("1720")
    no_violations(page, "an offer after rates changed")
    context.close()


def test_the_service_goes_down_and_returns(
    chromium: Browser, own_service: Served, settle: Settle, no_violations: Look
) -> None:
    """It is stated plainly, nothing is lost, people can be reached, the price returns by itself."""
    own_service.start()
    context = chromium.new_context(locale="en-GB")
    page = context.new_page()
    page.goto(own_service.url)
    settle(page)
    before = price(page)
    own_service.stop()
    page.get_by_label("Length", exact=True).fill("1900")
    notice = page.locator(".trouble .notice")
    expect(notice).to_contain_text(f"{page_text('trouble.down')} {page_text('trouble.kept')}")
    expect(notice.get_by_role("link", name="hello@tarnside.example.com")).to_be_visible()
    expect(notice.get_by_role("link", name="01632 960417")).to_be_visible()
    expect(page.locator("#status")).to_contain_text(page_text("trouble.down"))
    expect(page.locator(".live")).to_contain_text(
        page_text("answer.last-answer", what="1500 mm × 600 mm")
    )
    expect(page.locator("#glance")).to_contain_text(f"Last answer: {before}")
    assert price(page) == before
    no_violations(page, "service away")
    own_service.start()
    expect(page.locator(".price .first")).not_to_have_text(before)
    expect(notice).to_have_count(0)
    expect(page.get_by_label("Length", exact=True)).to_have_value("1900")
    settle(page)
    expect(page.get_by_text(page_text("keep.title"))).to_be_visible()
    context.close()
