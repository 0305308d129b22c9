"""Laws of reading for stairs and units: their numbers are said, or asked for, never guessed."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies import enquiry_stairs as stairs
from support.strategies.enquiry_stairs import WayIn
from support.strategies.orders import cases

WORKSHOP = load_profile(DEMONSTRATION)
AT = "/delivery/steps"


@settings(max_examples=cases(40))
@given(st.one_of(stairs.counted(), stairs.uncounted()))
def test_steps_are_counted_or_asked_for(told: WayIn) -> None:
    """Stairs without their number are marked with their words and asked about."""
    read = read_enquiry(told.text, WORKSHOP)
    assert read["order"]["delivery"].get("steps") == told.steps, told.text
    doubts = [one for one in read["doubtful"] if one["at"] == AT]
    words = [span["text"] for one in doubts for way in one["readings"] for span in way["from"]]
    assert words == ([] if told.said is None else [told.said])
    assert all(one["asks"] for one in doubts)


@pytest.mark.parametrize("aside", ["I collect it.", "We'll pick it up, it goes up the stairs."])
def test_who_collects_carries_it_in(aside: str) -> None:
    """Nobody asks for the steps of a slab that is collected."""
    read = read_enquiry(f"Please quote for a shelf 900 x 220 x 40. {aside}", WORKSHOP)
    assert all(one["at"] != AT for one in (*read["missing"], *read["doubtful"]))


@settings(max_examples=cases(25))
@given(stairs.on_units())
def test_units_without_widths_are_asked_about(told: tuple[str, str]) -> None:
    """What a slab lies on is marked, and the widths that its strength depends on are asked."""
    text, units = told
    (doubt,) = read_enquiry(text, WORKSHOP)["doubtful"]
    assert doubt["at"] == "/slabs/0/rests"
    assert doubt["asks"]
    (span,) = doubt["readings"][0]["from"]
    assert span["text"].endswith(units), text


@pytest.mark.parametrize(
    "aside",
    [
        "It sits on two 600 units.",
        "It goes on cupboards, 800 and 600 wide.",
        "There are cupboards above it.",
        "The unit beside it stays.",
    ],
)
def test_units_with_widths_or_beside_it_are_not_asked_about(aside: str) -> None:
    """Widths that are told, and units that carry nothing, leave no question."""
    read = read_enquiry(f"Please quote for a shelf 900 x 220 x 40. {aside}", WORKSHOP)
    assert all(one["at"] != "/slabs/0/rests" for one in read["doubtful"])
