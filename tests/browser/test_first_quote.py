"""A maker in Oregon goes the shortest way to a first quote, in inches and pounds, on a phone."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, Route, expect

from browser.conftest import Look, Served, at_form
from browser.first_quote_minutes import OREGON, box_of, counted, minutes
from browser.states import SMALL_TARGETS, TOO_WIDE
from ledgerstone.workshop import load_profile
from support.page_texts import workshop_text

pytestmark = pytest.mark.browser
# What a maker has at hand: invented, like every maker of our tests.
ANSWERS = {
    "/workshop/name": "Burnt Ridge Concrete",
    "/workshop/town": "Alder Fork",
    "/workshop/email": "hello@burntridge.example",
    "/workshop/telephone": "(541) 555-0142",
    "/table/length_mm": "120",  # as the file begins: typed, it is the maker's
    "/table/width_mm": "48 1/2",
    "/recipe/fck_mpa": "5500",
    "/mixer/working_l": "2",
    "/steel/bar_mm": "#3",
    "/steel/mesh_pitch_mm": "6 x 6",
    "/steel/mesh_wire_mm": "10 gauge",
    "/lifting/most_people": "4",
    "/handling/ways/0/most_kg": "260",
    "/areas/0/postcodes": "974, 97701-97799",
    "/areas/0/own_van": "80",
    "/areas/0/fitted": "275",
    "/rates/hour": "65",
    "/calendar/hands": "3",
    "/handling/workshop_c": "50 to 70",
}
JOB = {"job-1": "13", "job-materials": "$190", "job-asked": "1,600"}
MUCH_PERCENT = 60
MOST_MINUTES = 23  # of half an hour, seven are left to stop and wonder
MOST_ANSWERS = 26  # deposit, tax, pallets and hours of a day stand as they are


def test_some_25_answers_end_the_trial(
    chromium: Browser, own_service: Served, profile: Path, no_violations: Look
) -> None:
    """The form opens on them, says what is left, and what is saved is no trial."""
    context, page = at_form(chromium, own_service, **OREGON)
    page.locator(".jobs input").first.wait_for()
    takes = page.locator("#job-1-now")  # told before anything is changed
    expect(takes).to_contain_text(re.compile(r"[1-9]\d*(\.\d)?"))
    stands = page.locator('#step-money [data-pointer="stands-money"] > summary')
    expect(stands).to_contain_text("50 %")  # what is not asked is told where it stands
    left = page.locator("#outcome li a[href^='#first-']")
    expect(left).to_have_count(11)
    no_violations(page, "the first quote")
    assert minutes(counted(page)) <= MOST_MINUTES
    assert page.evaluate(TOO_WIDE) == 0
    assert page.evaluate(SMALL_TARGETS) == []

    answers = strokes = 0
    page.locator('.field[data-pointer="/steel/material"] select').select_option("plain")
    for pointer, text in ANSWERS.items():
        page.locator(f'.field[data-pointer="{pointer}"] :is(input, textarea)').first.fill(text)
        answers, strokes = answers + 1, strokes + len(text) + 1
    for name, text in JOB.items():
        page.locator(f"#{name}").fill(text)
        answers, strokes = answers + 1, strokes + len(text) + 1
    for step in ("shades", "looks"):
        box = page.locator(f"#rest-{step}")
        box.check()
        expect(box).to_have_count(0)
        answers, strokes = answers + 1, strokes + 1
    expect(left).to_have_count(0)
    expect(page.locator("#outcome")).to_contain_text(workshop_text("outcome.honest"))
    print(f"a first quote: {answers + 1} answers, {strokes} keystrokes")
    assert answers < MOST_ANSWERS
    expect(page.locator("#job-asked-now")).to_contain_text("1,60")
    followed = page.locator('.field[data-pointer="/steel/material"] .taken')
    expect(followed).to_contain_text("60 ksi")

    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.locator("#status")).to_have_text(workshop_text("outcome.saved"))
    assert is_in_use(page, own_service)
    shop = load_profile(profile)
    assert not shop.standing.trial
    assert shop.table.width_mm == pytest.approx(48.5 * 25.4)
    assert shop.steel.bar_mm == pytest.approx(9.525, abs=0.01)
    assert shop.areas[0].pallet is None
    assert shop.workshop.name == "Burnt Ridge Concrete"
    look_again(page, own_service)
    context.close()


def is_in_use(page: Page, service: Served) -> bool:
    """Whether the service answers by the file that was saved."""
    offered = page.request.get(f"{service.url}v1/choices").json()
    return bool(offered["workshop"]["name"] == ANSWERS["/workshop/name"])


def look_again(page: Page, service: Served) -> None:
    """The form opens where its maker left off, on what was typed, in the workshop's units."""
    page.goto("about:blank")
    page.goto(f"{service.url}desk/workshop/")
    page.locator(".jobs input").first.wait_for()
    expect(box_of(page, "/steel/bar_mm")).to_have_value("3/8")
    expect(box_of(page, "/steel/mesh_wire_mm")).to_have_value("0.135")


def test_a_rate_that_was_not_asked_for_yet_is_no_fault(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """Who says that tax is charged sees no fault before the rate's field was left without one."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, **OREGON)
    page.locator('.field[data-pointer="/tax/registered"] select').select_option("true")
    rate = page.locator('#step-money .field[data-pointer="/tax/percent"]')
    expect(page.locator("#outcome")).to_contain_text(workshop_text("outcome.missing"))
    expect(rate.locator(".fault")).to_have_count(0)
    rate.locator("input").first.focus()
    rate.locator("input").first.blur()
    expect(rate.locator(".fault")).to_have_count(1)
    expect(rate.locator("input").first).to_have_attribute("aria-invalid", "true")
    context.close()


def test_asking_less_than_it_costs_is_said_beside_it(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """No markup below nothing is set; a fault stands there until it is more than the cost."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, **OREGON)
    page.locator("#job-asked").fill("300")
    fault = page.locator("#job-asked-fault")
    expect(fault).not_to_be_empty()
    page.locator("#job-asked").fill("2000")
    expect(fault).to_be_empty()
    expect(page.locator("#job-asked-now")).to_contain_text("2,000")
    page.locator("#step-job summary").last.click()
    markup = page.locator('#step-job .field[data-pointer="/rates/margin_percent"] input').first
    assert float(markup.input_value()) > MUCH_PERCENT  # what follows stands there as it is by now
    page.locator('#step-lifting a[href="#/handling/ways"]').click()
    ways = page.locator('section[data-pointer="/handling/ways"]')
    expect(ways.locator("summary").first).to_be_focused()
    expect(ways.locator("summary").first).to_be_in_viewport()
    context.close()


def test_what_can_t_be_bought_for_a_job_is_told_beside_it(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """By the prices that were typed: a fault and no offer to take it again, until it can be met."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, **OREGON)
    page.locator("#step-job summary").last.click()
    page.locator('#step-job .field[data-pointer="/boards/price_per_sheet"] input').first.fill("900")
    page.locator("#job-materials").fill("150")
    fault = page.locator("#job-materials-fault")
    expect(fault).to_contain_text("$")
    expect(page.locator("#refit")).to_be_hidden()
    page.locator("#job-materials").fill("5000")
    expect(fault).to_be_empty()
    expect(page.locator("#job-materials-now")).to_contain_text(re.compile(r"4,9\d\d|5,0\d\d"))
    context.close()


def test_a_tick_while_it_works_out_what_was_taken_out_is_kept(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """An edge is taken out; before the service has answered, the tick of the step is pressed."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, "#finishes", **OREGON)
    refused: list[str] = []
    page.on("response", lambda got: refused.append(got.url) if got.status == 400 else None)
    edges = page.locator('section[data-pointer="/edges"] > details')
    count = edges.count()

    def answer_late(route: Route) -> None:
        page.wait_for_timeout(1500)
        route.continue_()

    page.route("**/v1/workshop", answer_late)
    edges.last.locator("summary").click()
    edges.last.get_by_role("button", name=workshop_text("table.remove")).last.click()
    expect(edges).to_have_count(count - 1)
    page.get_by_role("link", name=workshop_text("subject.first")).click()
    box = page.locator("#rest-looks")
    box.check()
    expect(box).to_have_count(0)
    page.unroute("**/v1/workshop")
    expect(page.locator("#busy")).to_be_hidden()
    expect(page.locator("#step-looks .done")).not_to_be_empty()
    assert refused == []
    context.close()


def test_nothing_is_entered_while_places_move(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """A pigment goes with its shades, a recipe gives way to a bag and is back: the form waits."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, "#shades", **OREGON)
    form = page.locator("#subject")

    def answer_late(route: Route) -> None:
        page.wait_for_timeout(500)
        route.continue_()

    names = page.locator('[data-pointer^="/palette/"][data-pointer$="/name"] > input')
    names.last.wait_for(state="attached")
    was = [one.input_value() for one in names.all()]
    pigments = page.locator('section[data-pointer="/pigments"] > details')
    pigments.first.locator("> summary").click()
    expect(page.locator("#outcome tr")).to_have_count(3)
    page.route("**/v1/workshop", answer_late)
    pigments.first.get_by_role("button", name=workshop_text("table.remove")).last.click()
    expect(form).to_have_attribute("inert", "")  # its shades go with it
    expect(form).not_to_have_attribute("inert", "")
    left = [one.input_value() for one in names.all()]
    assert left == [name for name in was if name in left]
    assert 0 < len(left) < len(was)
    page.get_by_role("link", name=workshop_text("subject.first")).click()
    bags = page.locator("#from-bags")
    trust = page.get_by_text(workshop_text("first.bag-trust", percent=75))
    for is_ticked in (True, False):
        bags.set_checked(is_ticked)
        expect(form).to_have_attribute("inert", "")
        expect(form).not_to_have_attribute("inert", "")
        expect(bags).to_be_focused()
        expect(trust).to_have_count(int(is_ticked))
    page.unroute("**/v1/workshop")
    context.close()


def test_hours_that_cannot_be_read_get_a_reason_beside_the_figures_before(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """A unit is taken, a span is told; beside a fault the figures say which state they are of."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, **OREGON)
    hours, fault = page.locator("#job-1"), page.locator("#job-1-fault")
    hours.fill("a morning")
    expect(fault).to_be_visible()
    hours.fill("about 19 to 21 h")
    expect(fault).to_be_hidden()
    outcome = page.locator("#outcome tr").nth(1)
    expect(outcome.locator(".hint")).to_contain_text("20 h")
    changed = outcome.locator("strong").inner_text()
    page.locator('.field[data-pointer="/rates/hour"] input').first.fill("a lot")
    expect(page.locator("#outcome-place")).to_contain_text(workshop_text("outcome.earlier"))
    expect(outcome.locator("strong")).to_have_text(changed)
    context.close()


def test_each_link_leads_to_its_place_as_often_as_it_is_pressed(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """A heading opens its item, a step comes into view again, and the bar keeps the subject."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, **OREGON)
    page.locator('#step-shades a[href="#/palette/0"]').click()
    entry = page.locator('details[data-pointer="/palette/0"]')
    expect(entry).to_have_attribute("open", "")
    expect(entry.locator("input").first).to_be_focused()
    page.get_by_role("link", name=workshop_text("subject.first")).click()
    step = page.locator("#step-delivery")
    for _ in range(2):
        page.locator("#outcome a[href='#first-delivery']").click()
        expect(step).to_be_in_viewport()
    page.locator("#live").click()
    expect(page.locator("#outcome-title")).to_be_in_viewport()
    expect(step).to_have_count(1)
    hour = page.locator('.field[data-pointer="/rates/hour"] input').first
    total = page.locator("#outcome td strong").first
    for price in ("61", "62"):  # what is as it was stays, so that a press is never between two
        was = total.inner_text()
        kept = page.locator("#outcome a[href='#first-delivery']").element_handle()
        hour.fill(price)
        expect(total).not_to_have_text(was)
    assert kept.evaluate("link => link.isConnected")
    hour.fill("a lot")
    link = page.locator("#outcome a[href='#/rates/hour']")
    for _ in range(2):
        link.click()
        expect(hour).to_be_focused()
    context.close()
