"""The short path: pieces to start from, what was measured, and where an opening is."""

import pytest
from playwright.sync_api import Page, Request, Route, expect

from browser.conftest import Look, Settle
from browser.gestures import order_of, unfold
from support.page_texts import page_text

pytestmark = pytest.mark.browser
PIECES = (
    *("blank", "sink", "hob", "basin", "l-left"),
    *("l-right", "table", "shelf", "hearth", "outdoor"),
)


def start(page: Page, piece: str) -> None:
    """Press a starting piece and wait until it is on the sheet."""
    name = page_text(f"start.{piece}")
    page.get_by_role("button", name=name, exact=True).click()
    expect(page.locator("#status")).to_have_text(page_text("start.done", name=name))


def test_every_starting_piece_has_a_price(desk: Page, settle: Settle, no_violations: Look) -> None:
    """Each can be made here as it stands, and each is one press that one undo takes back."""
    settle(desk)
    first = desk.locator(".price .first").inner_text()
    for piece in PIECES:
        start(desk, piece)
        settle(desk)
        expect(desk.locator(".price .first")).to_contain_text("£")
        no_violations(desk, piece, contrast=False)
    for _ in PIECES:
        desk.get_by_role("button", name="Undo").click()
    settle(desk)
    expect(desk.locator(".price .first")).to_have_text(first)


def test_an_l_is_entered_by_its_arms(desk: Page, settle: Settle) -> None:
    """Each arm is as long as along its wall, on the side that was pressed or is chosen later."""
    settle(desk)
    start(desk, "l-right")
    expect(desk.locator("#slabs button")).to_have_count(2)
    desk.locator("#arms-back").fill("2600")
    desk.locator("#arms-side").fill("1900")
    desk.locator("#slabs button").nth(1).click()
    expect(desk.locator("#arms-side")).to_have_value("1900")
    expect(desk.locator("#outline-length")).to_have_value("1298")
    expect(desk.locator("#outline-length")).to_be_hidden()
    settle(desk)
    expect(desk.locator(".price .first")).to_contain_text("£")


def test_a_corner_between_walls_stays_square(desk: Page, settle: Settle) -> None:
    """Rounded corners leave the wall corner of an L as it is; a radius of its own is kept."""
    settle(desk)
    start(desk, "l-left")
    unfold(desk, "Rounded corners")
    desk.get_by_label(page_text("corner_radius.all")).fill("20")
    back_left = desk.locator("#outline-corner-radii-back-left")
    expect(back_left).to_have_value("0")
    expect(desk.locator("#outline-corner-radii-back-right")).to_have_value("")
    back_left.fill("5")
    desk.get_by_label(page_text("corner_radius.all")).fill("25")
    expect(back_left).to_have_value("5")
    settle(desk)


def test_the_finished_size_is_stated_for_what_was_measured(desk: Page, settle: Settle) -> None:
    """Between walls the fitting gaps come off; over units the overhangs come on."""
    settle(desk)
    finished = desk.locator("#finished")
    expect(finished).to_be_hidden()
    desk.get_by_label(page_text("size_from.label")).select_option("between-walls")
    settle(desk)
    # the demonstration's gap of 3 mm, off the left and the right wall
    expect(finished).to_have_text(
        page_text("size_from.finished-size", length="1,494", width="600 mm")
    )
    desk.get_by_label(page_text("size_from.label")).select_option("over-units")
    desk.get_by_label(page_text("rests.label"), exact=True).select_option("units")
    settle(desk)
    unfold(desk, "Overhang")
    desk.locator("#rests-overhang-front").fill("20")
    desk.locator("#rests-overhang-left").fill("15")
    settle(desk)
    expect(finished).to_have_text(
        page_text("size_from.finished-size", length="1,515", width="620 mm")
    )


def test_an_opening_is_placed_by_its_near_edge(desk: Page, settle: Settle) -> None:
    """A distance to an edge moves the centre by as much, from either end."""
    settle(desk)
    desk.get_by_role("button", name="Basin", exact=True).click()
    desk.get_by_text(page_text("place.title")).click()
    left = desk.get_by_label(page_text("place.left"))
    expect(left).to_have_value("570")
    left.fill("100")
    expect(desk.get_by_label(page_text("cutout.x"))).to_have_value("280")
    desk.get_by_label(page_text("place.back")).fill("10 cm")
    expect(desk.get_by_label(page_text("cutout.y"))).to_have_value("320")
    expect(desk.get_by_label(page_text("place.right"))).to_have_value("1040")
    left.fill("about so far")
    expect(desk.get_by_label(page_text("cutout.x"))).to_have_value("280")
    settle(desk)


def test_an_opening_is_centred_on_a_unit(desk: Page, settle: Settle) -> None:
    """A button a unit puts the opening over its middle; the overhang counts."""
    settle(desk)
    start(desk, "hob")
    unfold(desk, "Overhang", "hob")
    desk.get_by_text(page_text("place.title")).click()
    held: list[Route] = []

    def hold(route: Route) -> None:
        held.append(route)

    desk.route("**/v1/placings", hold)
    with desk.expect_request("**/v1/placings"):
        desk.locator("#rests-overhang-left").fill("30")
    unit = desk.get_by_role("group", name=page_text("place.on-unit"))
    unit.get_by_role("button", name="Unit 3").click()
    assert held
    for route in held:
        route.continue_()
    desk.unroute("**/v1/placings")
    # The third of 3 x 600 was shown, about 1530 mm. 1770 mm are then assumed as a filler, 500 and
    # 2 x 600, of which the last is about 30 + 70 + 500 + 600 + 600/2.
    expect(desk.get_by_label(page_text("cutout.x"))).to_have_value("1500")
    settle(desk)


def test_what_joined_slabs_have_alike_they_go_on_having(desk: Page, settle: Settle) -> None:
    """Another shade, surface, place or thickness of an L is that of both its arms; undo too."""
    settle(desk)
    start(desk, "l-left")
    settle(desk)
    desk.locator("[name=shade-name]").nth(2).check()
    desk.locator("[name=finish-surface]").nth(1).check()
    desk.locator("#thickness").fill("50")
    settle(desk)

    def looks() -> list[dict[str, object]]:
        names = ("shade", "finish", "thickness", "place")
        return [{name: slab.get(name) for name in names} for slab in order_of(desk)["slabs"]]

    one, other = looks()
    assert one == other
    assert one["thickness"] == "50 mm"
    expect(desk.locator('[id^="finding-join-of-unlike"]')).to_have_count(0)
    desk.locator("#slabs button").nth(1).click()
    desk.locator("#thickness-usual").select_option("40")
    settle(desk)
    assert [look["thickness"] for look in looks()] == ["40 mm", "40 mm"]
    desk.locator("#bar [data-do=undo]").click()
    settle(desk)
    assert looks() == [one, other]


def test_an_l_in_one_piece_is_offered_where_it_can_be_made(desk: Page, settle: Settle) -> None:
    """Of short arms one press makes one slab, which has a price; longer ones stay two."""

    def tries_one(request: Request) -> bool:
        return request.url.endswith("/v1/quotes") and "l-shape" in (request.post_data or "")

    settle(desk)
    offer = desk.locator("#one-piece button")
    with desk.expect_request_finished(tries_one) as asked:
        start(desk, "l-left")
    answer = asked.value.response()
    assert answer is not None
    assert answer.status == 422  # 2400 by 1500 mm is larger than the casting table
    expect(offer).to_be_hidden()
    desk.locator("#arms-back").fill("1500")
    desk.locator("#arms-side").fill("1100")
    settle(desk)
    offer.click()
    settle(desk)
    (slab,) = order_of(desk)["slabs"]
    assert slab["outline"]["kind"] == "l-shape"
    assert (slab["outline"]["length"], slab["outline"]["width"]) == ("1500 mm", "1100 mm")
    expect(desk.locator(".price .first")).to_contain_text("£")
    desk.get_by_role("button", name="Undo").click()
    expect(desk.locator("#slabs button")).to_have_count(2)
