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


@settings(max_examples=cases(15))
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


@settings(max_examples=cases(10))
@given(stairs.on_units())
def test_units_without_widths_are_read_and_asked_about(told: tuple[str, str]) -> None:
    """A slab lies on units as said, and the widths that its strength depends on are asked."""
    text, units = told
    read = read_enquiry(text, WORKSHOP)
    assert read["order"]["slabs"][0]["rests"] == {"kind": "units"}
    (rests,) = (one for one in read["read"] if one["at"] == "/slabs/0/rests/kind")
    (span,) = rests["from"]
    assert span["text"].endswith(units), text
    assert [one["at"] for one in read["missing"]] == ["/slabs/0/rests"]


@pytest.mark.parametrize(
    "aside",
    [
        "It sits on two 600 units.",
        "It goes on cupboards, 800 and 600 wide.",
        "There are cupboards above it.",
        "The unit beside it stays.",
        "We have new handles on the cabinets.",
        "There is a light, on the wall cabinets.",
        "The paint on our kitchen units is grey.",
    ],
)
def test_units_with_widths_or_beside_it_are_not_asked_about(aside: str) -> None:
    """Widths that are told, and units that carry nothing, leave no question."""
    read = read_enquiry(f"Please quote for a shelf 900 x 220 x 40. {aside}", WORKSHOP)
    assert all(one["at"] != "/slabs/0/rests" for one in read["missing"])


def test_worktops_lie_on_units_and_what_stands_behind_them_does_not() -> None:
    """Of several slabs the worktops lie on the units that are told of; one question is put."""
    text = "Two worktops 1800 x 620 x 40 and a splashback 1800 x 400 x 20. They sit on cabinets."
    read = read_enquiry(f"Please quote for: {text}", WORKSHOP)
    rests = [slab.get("rests") for slab in read["order"]["slabs"]]
    kinds = [slab["use"] for slab in read["order"]["slabs"]]
    assert [kind for kind, on in zip(kinds, rests, strict=True) if on] == ["worktop"]
    assert len([one for one in read["missing"] if one["at"].endswith("/rests")]) == 1
