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


WRONG_GOODS = (
    "It came, and it is the wrong one. We ordered {} with the basin on the left. When will ours?",
    "The worktop your driver brought is the wrong size. We want the {} that we paid for.",
    "We ordered a desk top {} and what came is 1200 x 500. I have not signed for it.",
    "Please tell me when you are collecting it: I ordered {} and got somebody else's hearth.",
    "Ihr Fahrer hat die falsche Platte gebracht. Bestellt hatten wir {}, gekommen sind 900 x 500.",
)


@pytest.mark.parametrize("text", WRONG_GOODS)
@pytest.mark.parametrize("size", ["1800 x 600 x 40", "1250 x 500"])
def test_who_was_brought_another_slab_asks_for_none(text: str, size: str) -> None:
    """What was ordered and what came are both told with their sizes."""
    quoted = f"\n\nOn Mon, 29 Nov 2027, Tarnside Casting wrote:\n\n> Your top, {size}, has left.\n"
    for message in (text.format(size), text.format(size) + quoted):
        read = read_enquiry(message, WORKSHOP)
        assert not read["is_enquiry"], message
        assert read["order"]["slabs"] == []


@pytest.mark.parametrize(
    "said",
    [
        "I gave you the wrong size this morning, please take these.",
        "The old top came from a shop and was the wrong colour for the room.",
        "A driver can park in the yard.",
    ],
)
def test_a_size_that_was_told_wrong_is_no_complaint(said: str) -> None:
    """Who was wrong, or what is there now, does not end an enquiry."""
    text = f"We want a worktop in concrete, 1640 x 560 x 40, please price it. {said}"
    assert read_enquiry(text, WORKSHOP)["is_enquiry"]
