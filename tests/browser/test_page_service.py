"""What a customer sees when the service is away, slow, busy or out of turn."""

import json
import re
import time
from typing import Protocol

import pytest
from playwright.sync_api import Browser, Page, Route, expect

from browser.conftest import Settle
from support.page_texts import page_text

pytestmark = pytest.mark.browser
QUOTES = "**/v1/quotes"


class Service(Protocol):
    """A service that can go and come back."""

    @property
    def url(self) -> str: ...  # noqa: D102  a protocol says it
    def start(self) -> None: ...  # noqa: D102  a protocol says it
    def stop(self) -> None: ...  # noqa: D102  a protocol says it


def test_a_reload_while_the_service_is_away_keeps_the_order(
    chromium: Browser, own_service: Service, settle: Settle
) -> None:
    """With only the calls failing, the form still fills from what was last heard."""
    own_service.start()
    context = chromium.new_context(locale="en-GB")
    page = context.new_page()
    page.goto(own_service.url)
    settle(page)
    page.get_by_label("Length", exact=True).fill("1910")
    settle(page)
    context.route("**/v1/**", lambda route: route.abort())
    page.reload()
    expect(page.get_by_label("Length", exact=True)).to_have_value("1910")
    expect(page.get_by_role("radio", name="graphite")).to_be_checked()
    expect(page.locator(".trouble")).to_contain_text("can’t be reached")
    context.unroute("**/v1/**")
    page.get_by_role("button", name="Try now").click()
    settle(page)
    expect(page.locator(".price .first")).to_contain_text("£")
    context.close()


def test_a_first_visit_while_the_service_is_away_recovers(
    chromium: Browser, address: str, settle: Settle
) -> None:
    """With nothing kept and no choices to be had it says so; pressing Try now starts the page."""
    context = chromium.new_context(locale="en-GB")
    page = context.new_page()
    page.route("**/v1/**", lambda route: route.abort())
    page.goto(address)
    expect(page.locator(".trouble")).to_contain_text("can’t be reached")
    page.unroute("**/v1/**")
    page.get_by_role("button", name="Try now").click()
    settle(page)
    expect(page.locator(".price .first")).to_contain_text("£")
    context.close()


def test_a_busy_service_is_left_alone_for_as_long_as_it_asks(desk: Page, settle: Settle) -> None:
    """A 429 says busy and when it is tried again: not before Retry-After."""
    settle(desk)
    asked: list[float] = []

    def busy(route: Route) -> None:
        asked.append(time.monotonic())
        route.fulfill(status=429, headers={"Retry-After": "3"}, body="{}")

    desk.route(QUOTES, busy)
    desk.get_by_label("Length", exact=True).fill("1600")
    expect(desk.locator(".trouble")).to_contain_text(
        f"{page_text('trouble.busy')} {page_text('trouble.kept')} {page_text('trouble.retry', n=3)}"
    )
    desk.wait_for_timeout(2500)
    assert len(asked) == 1
    desk.unroute(QUOTES)
    settle(desk)
    expect(desk.locator(".trouble")).to_be_empty()


def test_an_older_answer_never_shows_over_a_newer_one(desk: Page, settle: Settle) -> None:
    """The first size's answer is held back until after the second's; the second's price stays."""
    settle(desk)
    held: list[Route] = []

    def hold(route: Route) -> None:
        order = json.loads(route.request.post_data or "{}")
        if order["slabs"][0]["outline"]["length"] == "2000 mm":
            held.append(route)
        else:
            route.continue_()

    desk.route(QUOTES, hold)
    length = desk.get_by_label("Length", exact=True)
    length.fill("2000")
    desk.wait_for_timeout(600)
    assert held
    length.fill("1200")
    settle(desk)
    now = desk.locator(".price .first").inner_text()
    for route in held:
        route.fulfill(status=200, content_type="application/json", body='{"price": "old"}')
    desk.wait_for_timeout(500)
    expect(desk.locator(".price .first")).to_have_text(now)
    expect(desk.locator(".weight")).to_contain_text("1,200 × 600 × 40 mm")


def test_a_fault_of_the_service_is_stated_and_people_offered(desk: Page, settle: Settle) -> None:
    """A 500 is owned up to, with the workshop's address beside it."""
    settle(desk)
    desk.route(QUOTES, lambda route: route.fulfill(status=500, body="{}"))
    desk.get_by_label("Length", exact=True).fill("1650")
    expect(desk.locator(".trouble")).to_contain_text("failed on this")
    expect(desk.locator(".trouble").get_by_role("link", name=re.compile("@"))).to_be_visible()


def test_a_slow_service_is_reported_to_be_slow(desk: Page, settle: Settle) -> None:
    """After four seconds the page says that it takes longer than usual."""
    settle(desk)
    held: list[Route] = []

    def hold(route: Route) -> None:
        held.append(route)

    desk.route(QUOTES, hold)
    desk.get_by_label("Length", exact=True).fill("1660")
    expect(desk.locator(".live")).to_have_text(page_text("answer.slow"))
    for route in held:
        route.continue_()
    desk.unroute(QUOTES)
    settle(desk)
