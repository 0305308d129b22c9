"""Drawing by hand: drag, touch, keys and buttons move one thing; undo takes it back."""

import re

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import Look, Settle
from browser.gestures import drag, middle, thing
from support.page_texts import page_text

pytestmark = pytest.mark.browser
LENGTH = "#outline-length"
# What the chosen opening's lines and figures cover of names and sizes, and of one another.
CROSSED = """() => {
  const plan = document.querySelector("#plan");
  const { left, top } = plan.getBoundingClientRect();
  const words = Array.from(plan.querySelectorAll("text:not(.pin text)"));
  const box = (word) => word.getBoundingClientRect();
  const meet = (one, other) => one.left < other.right && other.left < one.right &&
    one.top < other.bottom && other.top < one.bottom;
  const figures = words.filter((word) => word.matches(".measure"));
  const covered = figures.flatMap((figure) => words.filter((word) =>
    word !== figure && meet(box(figure), box(word))));
  const line = plan.querySelector(".dimension");
  const points = Array.from({ length: Math.ceil(line.getTotalLength()) }, (_, i) =>
    line.getPointAtLength(i + 0.5));
  const crossed = words.filter((word) => points.some(({ x, y }) => {
    const { left: l, right: r, top: t, bottom: b } = box(word);
    return x + left > l + 2 && x + left < r - 2 && y + top > t + 2 && y + top < b - 2;
  }));
  return [...covered, ...crossed].map((word) => word.textContent);
}"""
# How far the chosen opening's lines end from the slab's left end and from its front, in px.
SHORT = """() => {
  const [line, stone] = [".dimension", ".stone"].map((name) =>
    document.querySelector(`#plan ${name}`).getBBox());
  const foot = ({ y, height }) => y + height;
  return Math.max(Math.abs(line.x - stone.x), Math.abs(foot(line) - foot(stone)));
}"""


def test_an_opening_is_dragged_and_the_price_follows(desk: Page, settle: Settle) -> None:
    """Its sizes show while it moves, its fields follow at once, one undo takes the drag back."""
    desk.get_by_role("button", name="Basin", exact=True).click()
    settle(desk)
    drag(desk, "opening-0", -203, 0)
    expect(desk.locator("#plan .measure")).to_have_text(["545 mm", "300 mm"])
    expect(desk.get_by_label(page_text("cutout.x"))).to_have_value("545")
    asked = desk.wait_for_event("response", lambda r: "/v1/quotes" in r.url)
    assert asked.request.header_value("prefer") == "return=minimal"
    desk.mouse.up()
    settle(desk)
    expect(desk.locator("#status")).to_contain_text("£")
    desk.get_by_role("button", name="Undo").click()
    expect(desk.get_by_label(page_text("cutout.x"))).to_have_value("750")
    desk.get_by_role("button", name="Redo").click()
    expect(desk.get_by_label(page_text("cutout.x"))).to_have_value("545")


def test_a_drag_comes_to_rest_on_the_centre_line(desk: Page, settle: Settle) -> None:
    """Near the slab's middle the opening holds to it, and the line is drawn."""
    settle(desk)
    desk.get_by_role("button", name="Basin", exact=True).click()
    desk.get_by_label(page_text("cutout.x")).fill("700")
    drag(desk, "opening-0", 47, 0)
    expect(desk.locator("#plan .guide").first).to_be_attached()
    expect(desk.get_by_label(page_text("cutout.x"))).to_have_value("750")
    desk.mouse.up()
    expect(desk.locator("#plan .guide")).to_have_count(0)


def test_an_edge_is_dragged_to_another_length(desk: Page, settle: Settle) -> None:
    """The dot at the right end draws the slab longer, in whole steps of 5 mm."""
    settle(desk)
    before = desk.locator(".price .first").inner_text()
    drag(desk, "handle-length", 52, 0)
    desk.mouse.up()
    length = int(desk.get_by_label("Length", exact=True).input_value())
    assert 1530 <= length <= 1580
    assert length % 5 == 0
    settle(desk)
    assert desk.locator(".price .first").inner_text() != before


def sketch_top(page: Page) -> float:
    """Where the drawing stands in the window: what grows above it is no scrolling."""
    box = page.locator("#plan").bounding_box()
    assert box is not None
    return box["y"]


def test_a_finger_drags_without_scrolling_the_page(phone: Page, settle: Settle) -> None:
    """A touch that starts on an opening moves it; the page stays where it is."""
    phone.get_by_role("button", name="Basin", exact=True).tap()
    settle(phone)
    x, y = middle(phone, "opening-0")
    stood = sketch_top(phone)
    client = phone.context.new_cdp_session(phone)
    touch = "Input.dispatchTouchEvent"
    client.send(touch, {"type": "touchStart", "touchPoints": [{"x": x, "y": y}]})
    for step in range(1, 9):
        point = {"x": x - 5 * step, "y": y - step}
        client.send(touch, {"type": "touchMove", "touchPoints": [point]})
    client.send(touch, {"type": "touchEnd", "touchPoints": []})
    expect(phone.get_by_label(page_text("cutout.x"))).not_to_have_value("750")
    assert sketch_top(phone) == pytest.approx(stood, abs=2)
    settle(phone)


def test_keys_move_by_one_and_by_ten_and_say_where(desk: Page, settle: Settle) -> None:
    """A new opening takes focus: arrows move it by 1 mm, with Shift by 10; presses undo as one."""
    settle(desk)
    desk.get_by_role("button", name="Basin", exact=True).focus()
    desk.keyboard.press("Enter")
    expect(thing(desk, "opening-0")).to_be_focused()
    desk.keyboard.press("ArrowRight")
    desk.keyboard.press("Shift+ArrowUp")
    expect(desk.get_by_label(page_text("cutout.x"))).to_have_value("751")
    expect(desk.get_by_label(page_text("cutout.y"))).to_have_value("310")
    expect(desk.locator("#status")).to_have_text(
        page_text("sketch.opening", name="basin", x="751 mm", y="310 mm")
    )
    expect(thing(desk, "opening-0")).to_have_accessible_name(re.compile("751 mm from the left"))
    desk.keyboard.press("Control+z")
    expect(desk.get_by_label(page_text("cutout.x"))).to_have_value("750")
    settle(desk)


def test_every_drag_has_its_buttons(phone: Page, settle: Settle) -> None:
    """Pressing a thing shows buttons: 5 mm each way, centred, its fields, remove it."""
    settle(phone)
    phone.get_by_role("button", name="Basin", exact=True).tap()
    moves = phone.get_by_role("group", name="Move basin")
    moves.get_by_role("button", name="Left 5 mm").tap()
    moves.get_by_role("button", name="Back 5 mm").tap()
    expect(phone.get_by_label(page_text("cutout.x"))).to_have_value("745")
    expect(phone.get_by_label(page_text("cutout.y"))).to_have_value("305")
    moves.get_by_role("button", name=page_text("moves.centre-x")).tap()
    expect(phone.get_by_label(page_text("cutout.x"))).to_have_value("750")
    thing(phone, "handle-width").locator("circle").first.tap()
    phone.get_by_role("group", name="Move width").get_by_role("button", name="5 mm more").tap()
    expect(phone.get_by_label("Width", exact=True)).to_have_value("605")
    thing(phone, "opening-0").locator("circle").first.tap()
    moves.get_by_role("button", name=page_text("moves.field")).tap()
    expect(phone.locator("[data-list=cutouts] summary").first).to_be_focused()
    moves.get_by_role("button", name="Remove").tap()
    expect(phone.locator("[data-list=cutouts] > li")).to_have_count(0)
    settle(phone)


def test_a_finding_is_a_numbered_pin_on_the_plan(
    desk: Page, settle: Settle, no_violations: Look
) -> None:
    """The pin has the number of its sentence, is stated with it, and a press leads to it."""
    settle(desk)
    desk.get_by_role("button", name="Basin", exact=True).click()
    desk.get_by_label(page_text("cutout.y")).fill("400")
    settle(desk)
    pin = desk.locator("#plan .pin.stops").first
    number = pin.locator("text").inner_html()
    listed = desk.locator(f"#finding-{number}")
    expect(listed).to_contain_text("20 mm wide")
    expect(pin).to_have_accessible_name(re.compile(f"number {number}: .*20 mm wide"))
    no_violations(desk, "pins on the plan")
    pin.click()
    expect(listed).to_be_focused()
    desk.get_by_label(page_text("cutout.y")).fill("300")
    expect(desk.locator("#plan .pin.stops")).to_have_count(0)


def test_what_is_moved_is_easily_hit_with_a_finger(phone: Page, settle: Settle) -> None:
    """An opening's and a handle's place to press is 44 px across at least, however small it is."""
    settle(phone)
    phone.get_by_role("button", name="Tap", exact=True).tap()
    expect(thing(phone, "opening-0")).to_be_visible()
    for key in ("opening-0", "handle-length", "handle-width"):
        box = thing(phone, key).locator(".target").bounding_box()
        assert box is not None
        assert min(box["width"], box["height"]) >= 44
    settle(phone)


def test_dimensions_leave_names_and_sizes_to_be_read(phone: Page, settle: Settle) -> None:
    """Whichever opening is chosen, in a row or behind one another, no line or figure covers words.

    Both its figures are there, and its lines reach the slab's left end and its front.
    """
    settle(phone)
    phone.locator(LENGTH).fill("2400")
    for piece in ("basin", "basin", "tap", "hob"):
        phone.locator(f"[data-piece={piece}]").first.tap()
        settle(phone)
    for axis, to in (("y", "200"), ("y", "420"), ("x", "1200")):
        for i in range(4):
            thing(phone, f"opening-{i}").focus()
            expect(phone.locator("#plan .measure")).to_have_count(2)
            assert phone.evaluate(SHORT) < 2, (axis, i)
            assert phone.evaluate(CROSSED) == [], (axis, i)
        phone.locator(f"[data-list=cutouts] [data-at='centre/{axis}']").first.fill(to)
        settle(phone)
    thing(phone, "opening-0").focus()
    assert phone.evaluate(SHORT) < 2
    assert phone.evaluate(CROSSED) == []
