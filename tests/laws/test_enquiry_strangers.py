"""Laws of reading for what strangers wrote: every family is taken as a careful maker takes it."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_strangers as strangers
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

SOME = settings(max_examples=cases(3), suppress_health_check=[HealthCheck.too_slow], deadline=None)


@pytest.mark.parametrize("family", sorted(strangers.TAKEN))
@SOME
@given(data=st.data())
def test_sizes_are_those_told_and_no_others(family: str, data: st.DataObject) -> None:
    """Each size has its slab, its name and its place."""
    read_as_told(data.draw(strangers.told(family)))


@SOME
@given(strangers.told("nothing_more"))
def test_nothing_is_asked_of_a_hole_that_is_none(told: Several) -> None:
    """A hole that is denied, a plate of the frame and a sink's own tap are no openings."""
    read = read_as_told(told)
    assert not read["order"]["slabs"][0].get("cutouts"), told.text
    assert not [one for one in read["missing"] if "cutouts" in one["at"]]


@SOME
@given(strangers.told("fitting_refused"))
def test_fitting_that_is_refused_is_not_asked_for(told: Several) -> None:
    """No delivery is "fitted", and no postcode is asked for it."""
    read = read_as_told(told)
    assert read["order"].get("delivery", {}).get("kind") != "fitted", told.text


@SOME
@given(strangers.told("no_postcode_asked"))
def test_a_postcode_in_small_letters_is_one(told: Several) -> None:
    """It is read in capitals."""
    read = read_as_told(told)
    assert read["order"]["delivery"]["postcode"] in ("HR0 7XY", "LD0 1BB", "HR0 7XX"), told.text


def test_a_newsletter_asks_for_nothing() -> None:
    """Sizes in the news of others are no order, wherever "Unsubscribe" stands."""
    for size in ("10 ft", "3 m", "2400 mm"):
        text = f"The Hotline, issue 88\n\nThis month: a reader's {size} counter cast in one pour."
        assert not read_enquiry(f"{text}\n\nUnsubscribe", WORKSHOP)["is_enquiry"]
