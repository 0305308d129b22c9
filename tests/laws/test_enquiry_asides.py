"""Laws of reading for what is taken back, what is someone else's, and what asks for nothing."""

from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_asides as asides
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

MANY = settings(max_examples=cases(10), suppress_health_check=[HealthCheck.too_slow])


@MANY
@given(asides.taken_back())
def test_a_slab_taken_back_is_gone(told: Several) -> None:
    """The other one is left, and a correction after it is the other one's."""
    assert len(read_as_told(told)["order"]["slabs"]) == 1


@MANY
@given(asides.concluded())
def test_what_a_hole_follows_from_is_not_its_size(told: Several) -> None:
    """A hole for a pole is as wide as is concluded, not as the pole."""
    read_as_told(told)


@MANY
@given(asides.returns())
def test_a_return_comes_forward_so_far(told: Several) -> None:
    """The L's width is how far the return comes, and its notch follows from the depths."""
    outline = read_as_told(told)["order"]["slabs"][0]["outline"]
    near = {"left": "front-right", "right": "front-left"}[told.words["side"]]
    assert outline["notch"]["corner"] == near


@MANY
@given(asides.recommended())
def test_somebody_elses_slab_does_not_speak_against_an_enquiry(told: Several) -> None:
    """Who was recommended by a neighbour asks for a slab of their own."""
    assert read_as_told(told)["is_enquiry"]


@MANY
@given(asides.praised())
def test_praise_does_not_speak_against_an_enquiry(told: Several) -> None:
    """Who praises what was made for others, and asks for a price, asks for a slab."""
    assert read_as_told(told)["is_enquiry"]


@MANY
@given(asides.price_lists())
def test_a_wish_for_a_price_list_does_not_speak_against_an_enquiry(told: Several) -> None:
    """A supplier sends a price list; a customer asks for one."""
    assert read_as_told(told)["is_enquiry"]


@MANY
@given(asides.no_enquiries())
def test_a_refusal_or_a_question_of_care_is_no_enquiry(told: Several) -> None:
    """Nobody asks for a slab, so no slab is drafted, whatever sizes stand there."""
    read = read_enquiry(told.text, WORKSHOP)
    assert not read["is_enquiry"], told.text
    assert read["order"].get("slabs", []) == []


@MANY
@given(asides.of_both())
def test_what_is_said_of_both_is_each_ones(told: Several) -> None:
    """Depth and thickness of both stand in each slab; a length is its own."""
    read_as_told(told)


@MANY
@given(asides.premises())
def test_a_hole_of_the_house_is_none_of_the_slabs(told: Several) -> None:
    """It is not cut, and nobody is asked where it goes."""
    read = read_as_told(told)
    assert read["missing"] == []
    assert "cutouts" not in read["order"]["slabs"][0]


@MANY
@given(asides.free_delivery())
def test_delivery_to_the_door_does_not_speak_against_an_enquiry(told: Several) -> None:
    """Delivery free to the door is what a supplier offers, and what a customer asks for."""
    assert read_as_told(told)["is_enquiry"]
