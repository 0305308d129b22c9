"""Thinner places, joins, walls beside units, and what is offered beside the slab."""

import json
import re
from typing import Any

import pytest
from playwright.sync_api import Page, Request, expect

from browser.conftest import Settle
from browser.gestures import drag, price, thing, unfold
from support.page_texts import page_text

pytestmark = pytest.mark.browser


def asked(page: Page) -> list[dict[str, Any]]:
    """Keep every order that the page asks the price of from now on."""
    orders: list[dict[str, Any]] = []

    def keep(request: Request) -> None:
        if request.url.endswith("/v1/quotes"):
            orders.append(json.loads(request.post_data or "{}"))

    page.on("request", keep)
    return orders


def test_a_drainer_is_set_down_drawn_and_priced(desk: Page, settle: Settle) -> None:
    """One press; it lies on the slab, has its fields, is moved by hand, and is taken off again."""
    settle(desk)
    desk.get_by_role("button", name="Basin top", exact=True).click()
    settle(desk)
    before = price(desk)
    orders = asked(desk)
    unfold(desk, "Another opening")
    desk.get_by_role("button", name="Drainer", exact=True).click()
    settle(desk)
    assert price(desk).startswith("£")
    assert price(desk) != before
    (relief,) = orders[-1]["slabs"][0]["reliefs"]
    assert relief["kind"] == "drainer"
    left = desk.get_by_label(page_text("relief.x"))
    there = int(left.input_value())
    drag(desk, "relief-0", -40, 0, length_mm=1200)
    desk.mouse.up()
    expect(left).not_to_have_value(str(there))
    assert 35 <= there - int(left.input_value()) <= 45
    desk.get_by_label(page_text("relief.grooves")).fill("5")
    settle(desk)
    (relief,) = orders[-1]["slabs"][0]["reliefs"]
    assert relief["grooves"] == 5
    desk.get_by_role("button", name="Remove: drainer").click()
    settle(desk)
    expect(desk.locator(".price .first")).to_have_text(before)


def test_a_recess_may_be_round(desk: Page, settle: Settle) -> None:
    """Its shape is chosen; it keeps its place, and the plan shows it."""
    settle(desk)
    orders = asked(desk)
    unfold(desk, "Another opening")
    desk.get_by_role("button", name="Recess", exact=True).click()
    desk.get_by_label("Its shape").select_option("round")
    desk.get_by_label("Diameter", exact=True).last.fill("90")
    settle(desk)
    (relief,) = orders[-1]["slabs"][0]["reliefs"]
    assert relief["outline"] == {"kind": "round", "diameter": "90 mm"}
    assert price(desk).startswith("£")
    expect(thing(desk, "relief-0").locator("path")).to_have_attribute("d", re.compile("a"))


def test_slabs_that_meet_are_shown_together(desk: Page, settle: Settle) -> None:
    """A join names slabs and sides, is priced, and adds a drawing; it counts anew when one goes."""
    settle(desk)
    add = desk.get_by_role("button", name=page_text("joins.add"))
    unfold(desk, "Another slab")
    expect(add).to_be_hidden()
    for _ in range(2):
        desk.get_by_role("button", name=page_text("slabs.add")).click()
    orders = asked(desk)
    add.click()
    expect(desk.get_by_label("This slab", exact=True)).to_be_focused()
    settle(desk)
    assert orders[-1]["joins"] == [
        {
            "one": {"slab": 1, "side": "right"},
            "other": {"slab": 2, "side": "left"},
            "gap": "2 mm",
        }
    ]
    desk.get_by_role("button", name="All together").click()
    picture = desk.locator("figure img")
    expect(picture).to_have_attribute("src", re.compile(r"/assembled\.svg$"))
    assert picture.evaluate("picture => picture.naturalWidth") > 0
    desk.get_by_role("button", name="Slab 1", exact=True).click()
    desk.get_by_role("button", name=page_text("slabs.remove")).click()
    settle(desk)
    ends = [(join["one"]["slab"], join["other"]["slab"]) for join in orders[-1]["joins"]]
    assert ends == [(0, 1)]


def test_a_slab_is_chosen_with_one_press_from_a_field(desk: Page, settle: Settle) -> None:
    """Leaving the field that was typed in takes no press away."""
    settle(desk)
    unfold(desk, "Another slab")
    desk.get_by_role("button", name=page_text("slabs.copy")).click()
    desk.get_by_label("Width", exact=True).fill("500")
    desk.get_by_role("button", name="Slab 1", exact=True).click()
    expect(desk.get_by_label("Width", exact=True)).to_have_value("600")
    expect(desk.get_by_role("button", name="Slab 1", exact=True)).to_be_focused()


def test_a_wall_beside_the_units_is_an_unseen_edge(desk: Page, settle: Settle) -> None:
    """The box and the edge's own field say the same."""
    settle(desk)
    desk.get_by_role("button", name="Hob run", exact=True).click()
    desk.get_by_label(page_text("units.wall-left")).check()
    unfold(desk, "Edges")
    left = desk.get_by_role("group", name="Left end", exact=True).get_by_label("Profile")
    expect(left).to_have_value("wall")
    left.select_option("square")
    expect(desk.get_by_label(page_text("units.wall-left"))).not_to_be_checked()
    settle(desk)


def test_a_sample_tile_and_measuring_are_offered(desk: Page, settle: Settle) -> None:
    """Each says what it costs before it is ticked, and then is a line of the price."""
    settle(desk)
    unfold(desk, page_text("answer.lines"), "A day, a sample")
    lines = desk.locator("#answer details[open] table").first
    for offer, line in (("A sample tile", "Sample tile"), ("Come and measure", "measure")):
        expect(lines).not_to_contain_text(line)
        box = desk.get_by_label(re.compile(f"{offer}.*£"))
        box.check()
        expect(lines).to_contain_text(line)
        settle(desk)
        box.uncheck()
        settle(desk)
