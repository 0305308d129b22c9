"""What the answer shows: the view and the plan, the weight in words, the weeks, the pins."""

import re
from datetime import date

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import Settle
from browser.gestures import unfold
from support.page_texts import page_text

pytestmark = pytest.mark.browser


def test_the_view_is_shown_large_and_the_plan_is_a_press_away(desk: Page, settle: Settle) -> None:
    """One picture at a time, each described in the service's own words; the choice is kept."""
    settle(desk)
    picture = desk.locator("figure img")
    expect(picture).to_have_attribute("src", re.compile(r"/view\.svg$"))
    expect(picture).to_have_attribute(
        "alt", re.compile(f"^{page_text('drawing.view-alt', says='.*1500 mm.* 600')}")
    )
    assert picture.evaluate("picture => picture.naturalWidth") > 400
    plan = desk.get_by_role("button", name="Plan", exact=True)
    plan.click()
    expect(picture).to_have_attribute("src", re.compile(r"/plan\.svg\?slab=0$"))
    expect(picture).to_have_attribute(
        "alt", re.compile(f"^{page_text('drawing.plan-alt', says='.*1500 mm.* 600')}")
    )
    desk.get_by_role("button", name="Basin", exact=True).click()
    settle(desk)
    expect(plan).to_have_attribute("aria-pressed", "true")
    expect(picture).to_have_attribute(
        "alt", re.compile(f"^{page_text('drawing.plan-alt', says='')}" + r".*\(basin\)")
    )


def test_the_weight_is_stated_with_the_hands_that_it_needs(desk: Page, settle: Settle) -> None:
    """Kilograms and people in one line, in the service's own words."""
    settle(desk)
    with desk.expect_response("**/v1/quotes") as asked:
        desk.get_by_label("Length", exact=True).fill("1490")
    settle(desk)
    told = asked.value.json()["weight"]["slabs"][0]
    assert told["says"].startswith(f"{told['slab_kg']:.1f} kg: ")
    assert told["says"].endswith(" people and a trolley")
    expect(desk.locator(".weight .first")).to_have_text(told["says"])


def test_who_does_not_know_how_thick_reads_what_was_taken(desk: Page, settle: Settle) -> None:
    """Not knowing leaves the thickness out: priced with the usual one, and a note says so."""
    settle(desk)
    usual = desk.get_by_label(page_text("thickness.usual"))
    usual.select_option("50")
    settle(desk)
    with desk.expect_response("**/v1/quotes") as asked:
        usual.select_option(label=page_text("rests.unknown"))
    settle(desk)
    answer = asked.value.json()
    assert "thickness" not in (asked.value.request.post_data_json or {})["slabs"][0]
    assert answer["order"]["slabs"][0]["thickness"] == "40 mm"
    (note,) = [one for one in answer["findings"] if one["check"] == "thickness-taken"]
    expect(desk.locator("ledgerstone-answer")).to_contain_text(note["says"])
    expect(desk.locator("ledgerstone-answer .price .first")).to_contain_text("£")
    expect(desk.locator("#thickness")).to_have_value("")
    expect(usual).to_have_value("0")
    usual.select_option("30")
    settle(desk)
    expect(usual).to_have_value("30")


def test_the_weeks_are_drawn_and_said(desk: Page, settle: Settle) -> None:
    """Each stage is a bar from its first day to its last, and the picture says them all."""
    settle(desk)
    unfold(desk, page_text("answer.stages"))
    strip = desk.get_by_role("img", name=re.compile(r"^From \w+ \d+ \w+ \d{4} to "))
    with desk.expect_response("**/v1/quotes") as asked:
        desk.get_by_label("Length", exact=True).fill("1480")
    settle(desk)
    stages = asked.value.json()["lead_time"]["stages"]
    expect(strip.locator("rect")).to_have_count(len(stages))
    for stage in stages:
        assert stage["name"] in (strip.get_attribute("aria-label") or "")
    longest = max(range(len(stages)), key=lambda i: days(stages[i]))
    widths = [float(bar.get_attribute("width") or 0) for bar in strip.locator("rect").all()]
    assert widths[longest] == max(widths)


def days(stage: dict[str, str]) -> int:
    """How many days a stage is spread over, by the calendar."""
    spread = date.fromisoformat(stage["ends"]) - date.fromisoformat(stage["starts"])
    return spread.days + 1
