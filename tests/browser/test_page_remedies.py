"""Remedies as buttons: what each will change, its press, its undoing."""

import json
from typing import Any

import pytest
from playwright.sync_api import Error, Page, Route, expect

from browser.conftest import Look, Settle
from browser.gestures import unfold
from support.page_texts import page_text

pytestmark = pytest.mark.browser
Y = "/slabs/0/cutouts/0/centre/y"


def patch(pointer: str, old: str, new: str) -> list[dict[str, str]]:
    """Test what stands there, then put something else."""
    return [
        {"op": "test", "path": pointer, "value": old},
        {"op": "replace", "path": pointer, "value": new},
    ]


def with_remedies(
    page: Page,
    remedies: dict[str, Any],
    **sent_back: Any,
) -> None:
    """Let the real service answer, and add to its answer what it would say of remedies.

    The shapes are the contract's (methods §2): a finding's ``remedies``, a send-back's
    ``fix_all`` and ``nearest_makeable``, a quote's ``ways_to_save``.
    """

    def answer(route: Route) -> None:
        try:
            response = route.fetch()
            body = response.json()
        except Error:
            return  # the page let this question go
        if route.request.headers.get("prefer") == "return=minimal":
            route.fulfill(response=response, json=body)
            return
        for finding in body.get("findings", []):
            finding["remedies"] = remedies.get(finding["check"], [])
        ways = {key: value for key, value in sent_back.items() if key == "ways_to_save"}
        others = {key: value for key, value in sent_back.items() if key != "ways_to_save"}
        for key in ("fix_all", "nearest_makeable", "ways_to_save"):
            body.pop(key, None)
        body |= others if response.status == 422 else ways
        route.fulfill(response=response, body=json.dumps(body))

    page.route("**/v1/quotes", answer)


def too_near_the_back(page: Page, settle: Settle) -> None:
    """A basin 20 mm from the back edge."""
    page.get_by_role("button", name="Basin", exact=True).click()
    page.get_by_label(page_text("cutout.y")).first.fill("400")
    settle(page)


def test_the_services_own_remedies_end_in_a_price(
    desk: Page, settle: Settle, no_violations: Look
) -> None:
    """Pressing only what the service itself offers makes the order one that quotes."""
    too_near_the_back(desk, settle)
    desk.get_by_label("Thickness", exact=True).fill("18")
    settle(desk)
    offered = desk.locator(".for-all button")
    expect(offered).to_have_count(1)
    expect(desk.locator(".for-all .cost")).to_contain_text("It is then £")
    promised = desk.locator(".for-all .cost").inner_text().removeprefix("It is then ")
    no_violations(desk, "the service's own remedies")
    offered.click()
    settle(desk)
    expect(desk.locator(".price .first")).to_have_text(promised)
    desk.get_by_role("button", name="Undo").click()
    expect(desk.get_by_label("Thickness", exact=True)).to_have_value("18")


def test_a_remedy_says_what_it_changes_and_changes_it(
    desk: Page, settle: Settle, no_violations: Look
) -> None:
    """One press moves the basin, the price comes, and it is announced.

    What it changes stands on it, once; what it costs beside it.
    """
    remedy = {
        "says": "Move the basin 40 mm towards the front.",
        "patch": patch(Y, "400 mm", "360 mm"),
        "settles": ["strip-too-narrow.0.0-back"],
        "price": {"total": "812.00", "currency": "GBP"},
        "verified": True,
    }
    with_remedies(desk, {"strip-too-narrow": [remedy]})
    too_near_the_back(desk, settle)
    button = desk.get_by_role("button", name="Move the basin 40 mm towards the front.")
    expect(button).to_have_accessible_description("It is then £812.00")
    no_violations(desk, "a remedy")
    button.click()
    expect(desk.locator("#status")).to_contain_text(page_text("remedy.done"))
    expect(desk.get_by_label(page_text("cutout.y")).first).to_have_value("360")
    settle(desk)
    expect(desk.locator(".price .first")).to_contain_text("£")
    assert desk.evaluate("document.querySelector('#answer').contains(document.activeElement)")


def test_a_remedy_can_be_undone(desk: Page, settle: Settle) -> None:
    """Undo puts back what was typed, and redo the remedy."""
    remedy = {"says": "Move it.", "patch": patch(Y, "400 mm", "360 mm"), "settles": []}
    with_remedies(desk, {"strip-too-narrow": [remedy]})
    too_near_the_back(desk, settle)
    desk.get_by_role("button", name="Move it.").click()
    field = desk.get_by_label(page_text("cutout.y")).first
    expect(field).to_have_value("360")
    desk.get_by_role("button", name="Undo").click()
    expect(field).to_have_value("400")
    expect(desk.locator("#status")).to_have_text("Undone.")
    desk.get_by_role("button", name="Redo").click()
    expect(field).to_have_value("360")


def test_a_remedy_for_another_order_changes_nothing(desk: Page, settle: Settle) -> None:
    """A patch whose test fails is said to be out of date, and the order stays as typed."""
    stale = {"says": "Move it.", "patch": patch(Y, "399 mm", "360 mm"), "settles": []}
    with_remedies(desk, {"strip-too-narrow": [stale]})
    too_near_the_back(desk, settle)
    desk.get_by_role("button", name="Move it.").click()
    expect(desk.locator("#status")).to_contain_text("no longer fits")
    expect(desk.get_by_label(page_text("cutout.y")).first).to_have_value("400")


@pytest.mark.parametrize(
    ("member", "title"),
    [("fix_all", page_text("remedy.fix-all")), ("nearest_makeable", page_text("remedy.nearest"))],
)
def test_one_press_settles_everything(
    desk: Page, settle: Settle, no_violations: Look, member: str, title: str
) -> None:
    """A change for everything lists its sentences, and after one press the order has a price."""
    all_at_once = {
        "says": ["Move the basin 40 mm towards the front.", "Make the slab 50 mm thick."],
        "patch": [*patch(Y, "400 mm", "360 mm"), *patch("/slabs/0/thickness", "40 mm", "50 mm")],
        "price": {"total": "871.00", "currency": "GBP"},
    }
    with_remedies(desk, {}, **{member: all_at_once})
    too_near_the_back(desk, settle)
    for_all = desk.locator(".for-all")
    expect(for_all).to_contain_text("Make the slab 50 mm thick.")
    expect(for_all).not_to_contain_text("40 mm to 50 mm")  # its sentence has said so
    expect(for_all).to_contain_text("It is then £871.00")
    no_violations(desk, member)
    for_all.get_by_role("button", name=title).click()
    expect(desk.get_by_label("Thickness", exact=True)).to_have_value("50")
    settle(desk)
    expect(desk.locator(".price .first")).to_contain_text("£")


def test_a_way_to_save_is_one_press(desk: Page, settle: Settle, no_violations: Look) -> None:
    """What can be saved stands on its button, and pressing it changes the order."""
    way = {
        "says": "Leave the corners square.",
        "patch": [{"op": "add", "path": "/slabs/0/edges/front", "value": {"profile": "wall"}}],
        "price_change": {"amount": "-24.00", "currency": "GBP"},
        "lighter_by_kg": 12.3,
        "sooner_by_days": 1,
    }
    with_remedies(desk, {}, ways_to_save=[way])
    settle(desk)
    desk.get_by_label("Length", exact=True).fill("1510")
    settle(desk)
    unfold(desk, page_text("remedy.ways"))
    ways = desk.locator(".ways")
    expect(ways).to_contain_text("£24.00 less")
    expect(ways).to_contain_text("12.3 kg lighter")
    expect(ways).to_contain_text("1 day sooner")
    no_violations(desk, "ways to save")
    ways.get_by_role("button", name="Leave the corners square.").click()
    unfold(desk, "Edges")
    expect(desk.get_by_label("Profile").first).to_have_value("wall")
    settle(desk)
