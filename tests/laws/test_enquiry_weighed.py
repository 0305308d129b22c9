"""Laws of reading where a size has several readings: the one meant is taken, and no other."""

from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_weighed as weighed
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

MANY = settings(max_examples=cases(8), suppress_health_check=[HealthCheck.too_slow])


@MANY
@given(weighed.with_asides())
def test_sizes_of_other_things_make_no_doubt(told: Several) -> None:
    """A bowl's, an opening's, a room's or a notch's sizes are neither taken nor readings."""
    assert not read_as_told(told)["doubtful"], told.text


@MANY
@given(weighed.old_and_new())
def test_the_old_slab_is_told_by_its_label(told: Several) -> None:
    """The sizes after "Old top:" are of what is there now."""
    read_as_told(told)


@MANY
@given(weighed.unknown())
def test_what_has_three_sizes_and_a_price_asked_is_a_slab(told: Several) -> None:
    """A slab is one by any name."""
    assert read_as_told(told)["is_enquiry"], told.text


@MANY
@given(weighed.told_of_one())
def test_an_opening_is_in_the_slab_that_is_named_for_it(told: Several) -> None:
    """Whichever of two slabs was told last."""
    read_as_told(told)


@MANY
@given(weighed.lettered())
def test_an_opening_is_in_the_slab_of_its_letter(told: Several) -> None:
    """Items and lines are called by their letters."""
    read_as_told(told)


@MANY
@given(weighed.in_centimetres())
def test_a_place_has_the_unit_that_lies_on_the_slab(told: Several) -> None:
    """The middle of an opening is no nearer to a side than half its size."""
    read_as_told(told)


@MANY
@given(weighed.one_each())
def test_two_bowls_have_two_wastes(told: Several) -> None:
    """Each has its own place."""
    read_as_told(told)


@MANY
@given(weighed.also_a_hole())
def test_a_hole_with_its_own_size_is_another(told: Several) -> None:
    """It moves no opening that was told before."""
    read_as_told(told)


@MANY
@given(weighed.letters())
def test_letters_name_the_sizes_of_an_opening(told: Several) -> None:
    """B and T are its breadth and its depth, wherever they stand."""
    read_as_told(told)


@MANY
@given(weighed.one_and_one())
def test_one_of_a_length_and_one_of_another_are_two(told: Several) -> None:
    """What is said of both is of each."""
    read_as_told(told)


@MANY
@given(weighed.turned())
def test_an_opening_lies_the_way_that_fits(told: Several) -> None:
    """Of two bare numbers the one that the slab has no room for runs along it."""
    read_as_told(told)


@MANY
@given(weighed.by_its_edge())
def test_what_is_too_near_for_a_middle_is_an_edge(told: Several) -> None:
    """A distance less than half of an opening runs to its edge."""
    read_as_told(told)


@MANY
@given(weighed.lists())
def test_slabs_are_told_by_their_rooms(told: Several) -> None:
    """Each room of a list has its own slab."""
    read_as_told(told)


@MANY
@given(weighed.across())
def test_tables_told_across_are_round(told: Several) -> None:
    """No length and no width is taken for a distance across."""
    read_as_told(told)


@MANY
@given(weighed.corrected())
def test_what_is_taken_back_is_gone(told: Several) -> None:
    """A hole that is scrapped, sizes after "no, wait", and what a wife says and is agreed to."""
    read_as_told(told)


@MANY
@given(weighed.for_no_slab())
def test_who_looks_for_work_asks_for_no_slab(text: str) -> None:
    """A slab that was cast once is none that is asked for."""
    assert not read_enquiry(text, WORKSHOP)["is_enquiry"], text
