"""What follows from an answer of the first quote stands where it belongs, at once."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Browser, expect

from browser.conftest import Served, at_form
from browser.first_quote_minutes import OREGON, box_of, counted, minutes

pytestmark = pytest.mark.browser
MOST_MINUTES_OF_BAGS = 24


def test_what_follows_stands_in_its_box_at_once(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """Other ways to lift, a batch told in bags, the shades that go; one fault stops no price."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, **OREGON)
    page.locator("#from-bags").check()
    expect(page.locator("#with-bags")).to_contain_text("chalk")
    expect(page.locator("#busy")).to_be_hidden()
    found = counted(page)
    print(f"from bags {found}: {minutes(found):.1f} minutes")
    assert minutes(found) <= MOST_MINUTES_OF_BAGS
    box_of(page, "/handling/ways/0/most_kg").fill("250")
    told = page.locator('.field[data-pointer="/handling/ways/0/most_kg"] .taken')
    expect(told).to_contain_text("rail across the opening”: 250 lb; ")
    follows = re.findall(r"\d+(?= lb)", told.inner_text())[-1]
    page.locator("#step-lifting .way").click()
    expect(box_of(page, "/handling/ways/2/most_kg")).to_have_value(follows)
    page.locator("#subjects a").first.click()
    box_of(page, "/mixer/working_l").fill("2 bags")
    box_of(page, "/recipe/bag/price_per_bag").focus()  # nothing is red before it was left
    expect(page.locator('.field[data-pointer="/mixer/working_l"] .taken')).to_contain_text("1.2")
    expect(box_of(page, "/mixer/working_l")).to_have_value("1.2")
    expect(page.locator("#subject .fault:visible")).to_have_count(0)
    total = page.locator("#outcome td strong").nth(1)
    before = total.inner_text()
    box_of(page, "/rates/hour").fill("250")
    expect(total).not_to_have_text(before)
    box_of(page, "/recipe/bag/price_per_bag").focus()
    box_of(page, "/rates/hour").focus()
    expect(page.locator("#subject .fault:visible")).to_have_count(1)
    context.close()


def test_a_hoist_is_added_at_a_press(chromium: Browser, own_service: Served, profile: Path) -> None:
    """A new file holds none: the press leads to the empty fields of one more way to lift."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, **OREGON)
    page.locator("#step-lifting button").click()
    name = box_of(page, "/handling/ways/4/name")
    expect(name).to_be_focused()
    expect(name).to_have_value("")
    expect(page.locator('#subjects a[href="#mould"]')).to_have_attribute("aria-current", "page")
    way = {"name": "hoist", "most_kg": "1000", "people": "two", "hours": "0.2"}
    for key, text in way.items():
        box_of(page, f"/handling/ways/4/{key}").fill(text)
    held = page.locator('.field[data-pointer="/handling/ways/4/held"] select')
    held.select_option("flat")
    expect(page.locator("#busy")).to_be_hidden()
    expect(page.locator("#subject .fault:visible")).to_have_count(0)
    expect(page.locator("#outcome .care")).to_have_count(0)
    context.close()


@pytest.mark.parametrize("profile", ["CH"], indirect=True)
def test_what_is_left_of_the_known_job_is_unfolded(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """Small prices in another money stay to be ticked once the job is told: they are seen."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, **OREGON)
    for name, text in {"job-1": "14", "job-materials": "160", "job-asked": "2100"}.items():
        page.locator(f"#{name}").fill(text)
    tick = page.locator("#rest-job")
    expect(tick).to_be_visible()
    tick.check()
    expect(page.locator("#step-job .done")).not_to_be_empty()
    context.close()


def test_a_complaint_goes_at_the_first_letter(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """Of a value that was left empty, and of hours without a number, though no answer comes."""
    assert profile.exists()
    context, page = at_form(chromium, own_service, **OREGON)
    hour, name = box_of(page, "/rates/hour"), box_of(page, "/workshop/name")
    hour.fill("")
    name.focus()
    fault = page.locator('.field[data-pointer="/rates/hour"] .fault')
    expect(fault).to_have_count(1)
    page.locator("#job-1").fill("a morning")
    expect(page.locator("#job-1-fault")).not_to_be_empty()
    page.route("**/v1/workshop", lambda _: None)  # what is asked from here on stays unanswered
    hour.press_sequentially("7")
    name.focus()
    expect(fault).to_have_count(0)
    expect(hour).not_to_have_attribute("aria-invalid", "true")
    page.locator("#job-1").fill("1")
    expect(page.locator("#job-1-fault")).to_be_empty()
    context.close()
