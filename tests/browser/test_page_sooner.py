"""Needed sooner: the heated tent as a tick, and what is offered where the day comes too late."""

from collections.abc import Callable
from datetime import date, timedelta
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import Settle
from browser.gestures import unfold

pytestmark = pytest.mark.browser


def asked(desk: Page, settle: Settle, does: Callable[[], None]) -> dict[str, Any]:
    """Do something, and return what the service answers to it."""
    with desk.expect_response("**/v1/quotes") as answer:
        does()
    settle(desk)
    body: dict[str, Any] = answer.value.json()
    return body


def test_the_heated_tent_is_a_tick_that_cures_and_costs(desk: Page, settle: Settle) -> None:
    """With the workshop's tent the weeks say so, and the price shows what it costs."""
    settle(desk)
    plain = asked(desk, settle, lambda: desk.get_by_label("Length", exact=True).fill("1470"))
    unfold(desk, "A day, a sample")
    tick = desk.locator("[data-at=heated_curing]")
    heated = asked(desk, settle, tick.check)
    assert float(heated["price"]["total"]) > float(plain["price"]["total"])
    (cover,) = (s for s in heated["lead_time"]["stages"] if s["name"] == "Curing under cover")
    assert cover["why"].endswith(" in the heated tent.")


def test_a_day_too_soon_is_met_by_one_press(desk: Page, settle: Settle) -> None:
    """Needed a day before it can be there: pressing what is offered for all makes it quote."""
    settle(desk)
    plain = asked(desk, settle, lambda: desk.get_by_label("Length", exact=True).fill("1470"))
    arrives = date.fromisoformat(plain["lead_time"]["arrives"]["latest"])
    wanted = (arrives - timedelta(days=1)).isoformat()
    unfold(desk, "A day, a sample")
    desk.get_by_label("Needed by").fill(wanted)
    settle(desk)
    offered = desk.locator(".for-all button").first
    offered.click()
    settle(desk)
    expect(desk.locator(".for-all button")).to_have_count(0)
    expect(desk.locator(".price")).to_contain_text("£")
