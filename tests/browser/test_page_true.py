"""What the form and the plan say is what is ordered: colour, joins, units, what has moved."""

import base64
import json
import re
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from browser.conftest import PHONE, Served, Settle, opened
from browser.gestures import order_of, unfold
from browser.states import LOW
from support.page_texts import page_text

pytestmark = pytest.mark.browser
LENGTH = "#outline-length"
COVERED = """() => {
  const boxes = (selector) =>
    Array.from(document.querySelectorAll(selector), (e) => e.getBoundingClientRect());
  const words = boxes("#plan text:not(.pin text)");
  return boxes("#plan .pin circle").flatMap((pin) => words.filter((word) =>
    pin.left < word.right && word.left < pin.right &&
    pin.top < word.bottom && word.top < pin.bottom));
}"""


def slab_of(page: Page) -> dict[str, Any]:
    """The slab that is ordered, of one."""
    slab: dict[str, Any] = order_of(page)["slabs"][0]
    return slab


def test_a_colour_of_ones_own_is_the_one_that_is_chosen(
    chromium: Browser, matching: Served, settle: Settle
) -> None:
    """Typed or picked, it is chosen; a shade takes its place; none is never chosen beside it."""
    context, phone = opened(chromium, matching, viewport=PHONE, has_touch=True, is_mobile=True)
    settle(phone)
    chosen = phone.locator("#shade-name input:checked")
    own = phone.locator("#shade-name [value='#']")
    expect(own).to_be_hidden()
    assert phone.evaluate(LOW) == []
    for control, colour in (("#shade-hex", "#5b5d5a"), ("#shade-picker", "#c0ffee")):
        phone.locator(control).fill(colour)
        settle(phone)
        expect(chosen).to_have_value("#")
        expect(own).to_be_visible()
        assert slab_of(phone)["shade"] == {"match": colour}
        phone.locator("#shade-name input").first.check()
        settle(phone)
        expect(own).to_be_hidden()
        assert "match" not in slab_of(phone)["shade"]
    context.close()


def test_where_no_colour_is_matched_another_one_is_asked_for(desk: Page, settle: Settle) -> None:
    """The page then has no field for a colour's code, and one for its words."""
    settle(desk)
    expect(desk.get_by_text(page_text("shade.ask"))).to_be_visible()
    expect(desk.locator("#shade-wanted")).to_be_visible()
    expect(desk.locator("#shade-hex")).to_be_hidden()


def test_an_edge_at_a_join_is_said_to_be_there(phone: Page, settle: Settle) -> None:
    """Cut in two by one press, the ends that meet are named by their join, the others by a wall."""
    settle(phone)
    phone.locator(LENGTH).fill("4000")
    settle(phone)
    expect(phone.locator("#bar")).to_contain_class("stopped")
    more = phone.locator("#glance span")
    phone.set_viewport_size({"width": 390, "height": 844})
    assert more.evaluate("(e) => e.scrollHeight <= e.clientHeight + 1")
    two = phone.locator(".remedies > li", has_text="of two pieces").first
    expect(two).to_be_visible()
    two.locator("button").click()
    settle(phone)
    join = order_of(phone)["joins"][0]
    assert join["one"]["slab"] == 0
    unfold(phone, "Edges")
    rows = phone.locator("#edges > li")
    for row in rows.all():
        side = str(row.get_attribute("data-scope")).removeprefix("edges/")
        unseen = row.locator("option[value=wall]")
        says = (
            page_text("joins.one", number=1)
            if side == join["one"]["side"]
            else page_text("profile.wall")
        )
        expect(unseen).to_have_text(says)


def test_numbers_on_the_plan_leave_its_words_to_be_read(phone: Page, settle: Settle) -> None:
    """However many findings stand at one place, no number covers a size or a name."""
    settle(phone)
    phone.locator(LENGTH).fill("2600")
    for piece in ("sink", "tap", "hob"):
        phone.locator(f"[data-piece={piece}]").click()
        settle(phone)
    for y in ("60", "240"):
        phone.locator("[data-list=cutouts] [data-at='centre/y']").first.fill(y)
        settle(phone)
        assert phone.locator("#plan .pin").count() > 0
        assert phone.evaluate(COVERED) == []


def test_what_an_addition_moves_is_said(phone: Page, settle: Settle) -> None:
    """A tap moves the sink: its new place stands by the buttons; undo moves it back."""
    settle(phone)
    phone.locator("[data-piece=sink]").click()
    settle(phone)
    said = phone.locator("#adds-say")
    expect(said).to_be_hidden()
    before = slab_of(phone)["cutouts"]
    phone.locator("[data-piece=tap]").click()
    settle(phone)
    (sink, _tap) = slab_of(phone)["cutouts"]
    assert sink["centre"] != before[0]["centre"]
    expect(said).to_be_visible()
    expect(said).to_contain_text(sink["centre"]["y"])
    phone.locator("#bar [data-do=undo]").click()
    settle(phone)
    assert slab_of(phone)["cutouts"] == before


def sizes(page: Page) -> list[str]:
    """Length and width as they are ordered."""
    return [slab_of(page)["outline"][way] for way in ("length", "width")]


def test_a_unit_that_is_chosen_changes_no_slab_that_somebody_sized(
    phone: Page, settle: Settle
) -> None:
    """What nobody has changed begins anew in that unit; later only what is typed is read in it."""
    unit = phone.get_by_label(page_text("unit.label"))
    settle(phone)
    unit.select_option("in")
    settle(phone)
    assert sizes(phone) == ["60 in", "24 in"]
    phone.locator("[data-start=table]").click()
    settle(phone)
    unit.select_option("mm")
    expect(phone.locator("#outline-diameter")).to_have_value("900")
    settle(phone)
    phone.locator("[data-start=blank]").click()
    settle(phone)
    phone.locator(LENGTH).fill("1600")
    settle(phone)
    unit.select_option("in")
    settle(phone)
    assert sizes(phone) == ["1600 mm", "600 mm"]


def test_an_arm_of_an_l_is_seen_beside_the_other_and_has_no_wall_at_its_joint(
    phone: Page, settle: Settle
) -> None:
    """The plan shows both arms, whichever is chosen; an end that meets the other has no wall."""
    settle(phone)
    phone.locator("[data-start=l-left]").click()
    settle(phone)
    walls = {end: phone.locator(f"#wall-{end}") for end in ("left", "right")}
    expect(phone.locator("#plan .other")).to_have_attribute("d", re.compile("^M"))
    expect(walls["left"]).to_be_checked()
    expect(walls["right"]).to_be_visible()
    phone.locator("#slabs button").nth(1).click()
    expect(walls["left"]).to_be_visible()
    expect(walls["right"]).to_be_hidden()
    boxes = [phone.locator(f"#plan {part}").bounding_box() for part in (".stone", ".other")]
    assert all(box is not None and box["height"] > 20 for box in boxes)


def test_edges_of_a_link_are_ticked_in_the_form(phone: Page, settle: Settle) -> None:
    """What an order's link says of walls and profiles stands in the form that it opens."""
    units = [{"width": "600 mm"}] * 2
    slab = {
        "thickness": "40 mm",
        "outline": {"kind": "rectangle", "length": "1200 mm", "width": "600 mm"},
        "edges": {"left": {"profile": "wall"}, "front": {"profile": "bevel", "size": "5 mm"}},
        "rests": {"kind": "units", "units": units},
    }
    packed = base64.urlsafe_b64encode(json.dumps({"slabs": [slab]}).encode()).rstrip(b"=").decode()
    phone.goto(f"{phone.url.partition('#')[0]}#order={packed}")
    phone.reload()
    settle(phone)
    expect(phone.locator("#wall-left")).to_be_checked()
    expect(phone.locator("#wall-right")).not_to_be_checked()
    unfold(phone, "Edges")
    for side, profile in (("left", "wall"), ("front", "bevel"), ("back", "square")):
        row = phone.locator(f"#edges [data-scope='edges/{side}']")
        expect(row.locator("[data-at=profile]")).to_have_value(profile)


def test_no_picture_of_another_order_stands_beside_a_price(phone: Page, settle: Settle) -> None:
    """Where a picture does not come the page says so, and the bar shows none; the next one is."""
    settle(phone)
    expect(phone.locator("#bar img")).to_have_attribute("src", re.compile("view"))
    phone.route("**/view.svg*", lambda route: route.abort())
    phone.locator(LENGTH).fill("1610")
    settle(phone)
    expect(phone.locator("#bar .thumb")).to_be_hidden()
    expect(phone.locator("figure img")).to_be_hidden()
    expect(phone.get_by_text(page_text("drawing.missing"))).to_be_visible()
    phone.unroute("**/view.svg*")
    phone.locator(LENGTH).fill("1620")
    settle(phone)
    expect(phone.locator("#bar .thumb")).to_be_visible()
    expect(phone.locator("figure img")).to_be_visible()
