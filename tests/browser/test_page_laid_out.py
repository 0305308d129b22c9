"""What a button has the service lay out, and its past."""

import json

import pytest
from playwright.sync_api import Page, Response, Route, expect

from browser.conftest import Settle

pytestmark = pytest.mark.browser


def order_kept(page: Page) -> str:
    """The order as it stands, as the draft keeps it."""
    kept = "key => Object.entries(localStorage).find(([name]) => name.includes(key))[1]"
    return json.dumps(json.loads(str(page.evaluate(kept, "draft")))["order"])


def test_what_was_laid_out_is_undone_and_done_again_as_it_was(desk: Page, settle: Settle) -> None:
    """Undo and redo bring each order back to the letter, and nothing is laid out again for it."""
    settle(desk)
    desk.locator("[data-start=basin]").click()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(2)
    settle(desk)
    steps = [order_kept(desk)]
    desk.locator("[data-piece=basin]").first.click()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(3)
    settle(desk)
    steps.append(order_kept(desk))
    desk.locator("#outline-length").fill("1800")
    settle(desk)
    steps.append(order_kept(desk))
    assert len(set(steps)) == len(steps)
    asked: list[str] = []
    desk.on("request", lambda request: asked.append(request.url))
    for name, then in (
        ("Undo", steps[1]),
        ("Undo", steps[0]),
        ("Redo", steps[1]),
        ("Redo", steps[2]),
    ):
        desk.get_by_role("button", name=name, exact=True).click()
        settle(desk)
        assert order_kept(desk) == then
    assert not any("placings" in url for url in asked)
    assert any("quotes" in url for url in asked)


def test_what_was_laid_out_follows_a_new_size_after_a_reload_too(
    desk: Page, settle: Settle
) -> None:
    """The draft keeps what the service has placed: a basin stands in the middle of a longer top."""
    settle(desk)
    desk.locator("[data-start=basin]").click()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(2)
    settle(desk)
    desk.reload()
    settle(desk)
    with desk.expect_response("**/v1/placings"):
        desk.locator("#outline-length").fill("1800")
    settle(desk)
    (slab,) = json.loads(order_kept(desk))["slabs"]
    x = slab["cutouts"][0]["centre"]["x"]
    assert float(str(x).removesuffix(" mm")) == pytest.approx(900)


def test_what_is_pressed_is_answered_in_turn(desk: Page, settle: Settle) -> None:
    """A basin whose place is slow to come is laid before the tap that was pressed after it."""
    settle(desk)
    held: list[Route] = []

    def hold(route: Route) -> None:
        held.append(route)

    desk.route("**/v1/placings", hold, times=1)
    with desk.expect_request("**/v1/placings"):
        desk.locator("[data-piece=basin]").first.click()
    desk.locator("[data-piece=tap]").first.click()
    desk.wait_for_timeout(300)  # in which a tap that did not wait for the basin would be there
    for route in held:
        route.continue_()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(2)
    settle(desk)
    (slab,) = json.loads(order_kept(desk))["slabs"]
    assert [cutout["label"] for cutout in slab["cutouts"]] == ["basin", "tap"]


def test_assumed_units_follow_an_opening_that_is_moved(desk: Page, settle: Settle) -> None:
    """The rows are those of the answer, wherever the sink is moved to; a told unit stays."""
    settle(desk)
    desk.locator("[data-start=sink]").click()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(2)
    settle(desk)
    opened = "e => { e.open = true; }"
    desk.locator("[data-list=cutouts] > li > details").first.evaluate(opened)
    answers: list[Response] = []
    desk.on("response", lambda one: answers.append(one) if "v1/quotes" in one.url else None)
    for x_mm in ("520", "1010", "1360"):
        desk.locator("[data-list=cutouts] [data-at='centre/x']").first.fill(x_mm)
        desk.locator("[data-list=cutouts] [data-at='centre/x']").first.blur()
        desk.locator("#plan [data-key=opening-0]").press("ArrowRight")
        settle(desk)
        units = answers[-1].json()["order"]["slabs"][0]["rests"]["units"]
        (slab,) = json.loads(order_kept(desk))["slabs"]
        assert [one["width"] for one in slab["rests"]["units"]] == [one["width"] for one in units]
        fields = desk.locator("[data-list='rests/units'] [data-at=width]")
        expect(fields).to_have_count(len(units))
        assert [field.input_value() for field in fields.all()] == [
            one["width"].removesuffix(" mm") for one in units
        ]
    told = desk.locator("[data-list='rests/units'] [data-at=width]").first
    desk.locator("details:has([data-list='rests/units'])").evaluate(opened)
    told.fill("450")
    settle(desk)
    desk.locator("#plan [data-key=opening-0]").press("ArrowLeft")
    settle(desk)
    expect(told).to_have_value("450")
