"""Laws of reading for remarks about sizes: whose word they are, and what they run to."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_remarks as remarks
from support.strategies.orders import cases

SOME = settings(max_examples=cases(12), suppress_health_check=[HealthCheck.too_slow], deadline=None)


@pytest.mark.parametrize("family", sorted(remarks.TAKEN))
@SOME
@given(data=st.data())
def test_each_size_is_read_as_it_is_meant(family: str, data: st.DataObject) -> None:
    """Each size is taken for what it is of, and nothing is taken twice."""
    read_as_told(data.draw(remarks.told(family)))


OUTSIDE = (
    "A friend had a hearth from you and we were jealous.",
    "My brother got a desk top from you last year.",
    "The neighbours had a sill off you and love it.",
    "Freunde haben eine Bank von Ihnen und sind begeistert.",
)


@pytest.mark.parametrize("said", OUTSIDE)
def test_what_others_bought_does_not_end_an_enquiry(said: str) -> None:
    """A friend's slab is how the writer came to ask."""
    asked = "We want a concrete top in our scullery. It's 1640 wide and 560 deep, 40 thick."
    assert read_enquiry(f"{said} {asked}", WORKSHOP)["is_enquiry"]


SETTLED = (
    "The committee talked about a sink for an hour and decided against.",
    "We thought of a second hob but decided against it.",
    "We had wondered about a bowl and have decided against it.",
)


@pytest.mark.parametrize("said", SETTLED)
@pytest.mark.parametrize("sized", ["2100 x 600 x 40", "600 deep, 40 thick"])
def test_an_opening_that_was_decided_against_does_not_end_an_enquiry(said: str, sized: str) -> None:
    """Only who decides against the slab asks for none."""
    text = f"I am to get prices for a serving counter in concrete, {sized}. {said}"
    assert read_enquiry(text, WORKSHOP)["is_enquiry"]
    declined = f"Thank you for the price of the counter, {sized}. We have decided against it."
    assert not read_enquiry(declined, WORKSHOP)["is_enquiry"]
