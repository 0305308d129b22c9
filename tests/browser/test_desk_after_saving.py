"""What is saved in the workshop's form is what the desk then opens with."""

from pathlib import Path

import pytest
from playwright.sync_api import Browser, expect

from browser.conftest import Served, at_form
from browser.first_quote_minutes import OREGON, box_of
from support.page_texts import desk_text, workshop_text

pytestmark = pytest.mark.browser
NAME = "Burnt Ridge Concrete"


def test_the_desk_opens_by_the_file_that_was_saved(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """Who goes back before it is taken up reads so there, and then the new name, never the old."""
    assert NAME not in profile.read_text(encoding="utf-8")
    context, page = at_form(chromium, own_service, "#you", **OREGON)
    box_of(page, "/workshop/name").fill(NAME)
    expect(page.locator("#busy")).to_be_hidden()
    page.get_by_role("button", name="Save", exact=True).click()
    outcome = page.locator("#outcome")
    expect(outcome).to_contain_text(desk_text("desk.taking"))
    expect(outcome).not_to_contain_text(workshop_text("outcome.unchanged"))
    page.get_by_role("link", name=workshop_text("workshop.back")).click()
    expect(page.locator("#maker")).to_have_text(desk_text("desk.taking"))
    page.locator("#views").wait_for()
    assert NAME in page.locator("#maker").inner_text()
    context.close()
