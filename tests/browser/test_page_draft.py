"""Leaving and coming back: undo, the kept draft, a quote's link, paper."""

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

pytestmark = pytest.mark.browser
Settle = Callable[[Page], None]


def test_everything_can_be_undone_and_done_again(desk: Page, settle: Settle) -> None:
    """A typed size, an added opening and another shape go back one by one, and come again."""
    settle(desk)
    length = desk.get_by_label("Length", exact=True)
    length.fill("1700")
    desk.get_by_role("button", name="Basin").click()
    desk.get_by_text("Round", exact=True).click()
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
    expect(desk.locator(".draft")).to_contain_text("kept in this browser, on this device only")
    desk.get_by_text("inches", exact=True).click()
    desk.get_by_label("Length", exact=True).fill("60 1/2")
    desk.get_by_role("button", name="Hob").click()
    settle(desk)
    desk.reload()
    settle(desk)
    expect(desk.get_by_label("Length", exact=True)).to_have_value("60 1/2")
    expect(desk.get_by_role("radio", name="inches")).to_be_checked()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(1)
    expect(desk.locator(".draft")).to_contain_text("This is where you left off.")
    desk.get_by_role("button", name="Clear it and start again").click()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(0)
    settle(desk)
    desk.reload()
    settle(desk)
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(0)


def test_a_quotes_link_is_copied(desk: Page, settle: Settle) -> None:
    """One press puts the signed link on the clipboard, and says so."""
    desk.context.grant_permissions(["clipboard-read", "clipboard-write"])
    settle(desk)
    desk.get_by_role("button", name="Copy the link to this quote").click()
    expect(desk.locator("#status")).to_have_text("The link is copied.")
    link = desk.evaluate("navigator.clipboard.readText()")
    assert "/#quote=" in link


def test_a_link_that_cannot_be_opened_is_said_plainly(
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


def test_the_print_is_the_answer_on_one_sheet(desk: Page, settle: Settle) -> None:
    """On paper there are price, drawing, lines and days, and no buttons."""
    settle(desk)
    desk.emulate_media(media="print")
    expect(desk.locator(".block")).to_be_visible()
    expect(desk.locator("figure img")).to_be_visible()
    expect(desk.get_by_role("button")).to_have_count(0)
    pages = desk.pdf(format="A4").count(b"/Type /Page\n")
    assert pages == 1
