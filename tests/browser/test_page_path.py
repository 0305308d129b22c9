"""The short path: pieces to start from, what was measured, and where an opening is."""

import re
from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import Look

pytestmark = pytest.mark.browser
Settle = Callable[[Page], None]
PIECES = (
    "Plain slab",
    "Basin top",
    "Hob run",
    "Round table",
    "L, arm on the left",
    "L, arm on the right",
    "Hearth",
    "Outdoor top round an appliance",
)


def start(page: Page, piece: str) -> None:
    """Press a starting piece and wait until it is on the sheet."""
    page.get_by_role("button", name=piece, exact=True).click()
    expect(page.locator("#status")).to_have_text(re.compile(f"^{re.escape(piece)}: it is on"))


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


def test_the_hand_of_an_l_is_chosen_by_its_picture(desk: Page, settle: Settle) -> None:
    """The arm on the left leaves out the front right, with the wall corner behind it square."""
    settle(desk)
    start(desk, "L, arm on the left")
    expect(desk.get_by_role("radio", name="Front right")).to_be_checked()
    start(desk, "L, arm on the right")
    expect(desk.get_by_role("radio", name="Front left")).to_be_checked()
    expect(
        desk.get_by_role("group", name="Back", exact=True).get_by_label("Profile")
    ).to_have_value("wall")
    settle(desk)


def test_a_corner_between_walls_stays_square(desk: Page, settle: Settle) -> None:
    """Rounded corners leave the wall corner of an L as it is; a radius of its own is kept."""
    settle(desk)
    start(desk, "L, arm on the left")
    desk.get_by_label("Rounded corners").fill("20")
    desk.get_by_text("A different radius at one corner").click()
    back_left = desk.locator("#outline-corner-radii-back-left")
    expect(back_left).to_have_value("0")
    expect(desk.locator("#outline-corner-radii-back-right")).to_have_value("")
    back_left.fill("5")
    desk.get_by_label("Rounded corners").fill("25")
    expect(back_left).to_have_value("5")
    settle(desk)


def test_the_finished_size_is_said_for_what_was_measured(desk: Page, settle: Settle) -> None:
    """Between walls the fitting gaps come off; over units the overhangs come on."""
    settle(desk)
    finished = desk.locator("#finished")
    expect(finished).to_have_text("The finished slab is then 1,500 × 600 mm.")
    desk.get_by_text("The space between walls", exact=True).click()
    settle(desk)
    # the demonstration's gap of 3 mm, off the left and the right wall
    expect(finished).to_have_text("The finished slab is then 1,494 × 600 mm.")
    desk.get_by_text("The units it goes on", exact=True).click()
    desk.get_by_label("It rests on", exact=True).select_option("units")
    desk.locator("#rests-overhang-front").fill("20")
    desk.locator("#rests-overhang-left").fill("15")
    settle(desk)
    expect(finished).to_have_text("The finished slab is then 1,515 × 620 mm.")


def test_an_opening_is_placed_by_its_near_edge(desk: Page, settle: Settle) -> None:
    """A distance to an edge moves the centre by as much, from either end."""
    settle(desk)
    desk.get_by_role("button", name="Basin", exact=True).click()
    desk.get_by_text("Place it by its edges, or on a unit").click()
    left = desk.get_by_label("From its edge to the left end")
    expect(left).to_have_value("570")
    left.fill("100")
    expect(desk.get_by_label("Centre from the left end")).to_have_value("280")
    desk.get_by_label("From its edge to the back").fill("10 cm")
    expect(desk.get_by_label("Centre from the front")).to_have_value("320")
    expect(desk.get_by_label("From its edge to the right end")).to_have_value("1040")
    left.fill("about so far")
    expect(desk.get_by_label("Centre from the left end")).to_have_value("280")
    settle(desk)


def test_an_opening_is_centred_on_a_unit(desk: Page, settle: Settle) -> None:
    """A button a unit puts the opening over its middle; the overhang counts."""
    settle(desk)
    start(desk, "Hob run")
    desk.locator("#rests-overhang-left").fill("30")
    desk.get_by_text("Place it by its edges, or on a unit").click()
    desk.get_by_role("group", name="Centre it on").get_by_role("button", name="Unit 3").click()
    # 30 + 600 + 600 + 600/2
    expect(desk.get_by_label("Centre from the left end")).to_have_value("1530")
    settle(desk)
