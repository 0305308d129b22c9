"""Notes of a quote, folded by when the customer acts on them."""

import base64
import json
import re

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import Settle
from support.demonstration import EXAMPLE_ORDER

pytestmark = pytest.mark.browser


def test_notes_are_three_lines_until_they_are_opened(phone: Page, settle: Settle) -> None:
    """One line each for before, on delivery and in use, with how many; a pin opens its own.

    The first two warnings about what is ordered stand open above them.
    """
    order = base64.urlsafe_b64encode(json.dumps(EXAMPLE_ORDER).encode()).rstrip(b"=").decode()
    phone.goto(f"{phone.url.partition('#')[0]}#order={order}")
    phone.reload()
    settle(phone)
    folds = phone.locator(".findings > details")
    expect(folds).to_have_count(3)
    warned = phone.locator(".findings > ol > li")
    expect(warned).to_have_count(2)
    expect(phone.locator(".findings > ol > li.caution")).to_have_count(2)
    expect(warned.first).to_be_visible()
    assert [fold.evaluate("fold => fold.open") for fold in folds.all()] == [False] * 3
    items = phone.locator(".findings details > ol > li")
    summaries = " ".join(folds.locator("summary").all_inner_texts())
    assert sum(map(int, re.findall(r"\((\d+)\)", summaries))) == items.count() > 9
    expect(items.first).to_be_hidden()
    folded = {str(item.get_attribute("data-number")) for item in items.all()}
    pins = phone.locator("[data-pin]").all()
    number, pin = next(
        (number, pin) for pin in pins if (number := pin.get_attribute("data-pin")) in folded
    )
    pin.dispatch_event("click")
    found = phone.locator(f"#finding-{number}")
    expect(found).to_be_focused()
    expect(found).to_be_in_viewport()
    expect(phone.locator(".findings > details[open]")).to_have_count(1)
