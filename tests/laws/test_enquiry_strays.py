"""Laws of reading for sizes and words beside a slab's own, which must not stray into it."""

from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_strays as strays
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

MANY = settings(max_examples=cases(10), suppress_health_check=[HealthCheck.too_slow])


@MANY
@given(strays.beside_what_was_made())
def test_what_the_writer_made_is_no_slab(told: Several) -> None:
    """What a stand or a frame measures contradicts no slab."""
    read_as_told(told)


@MANY
@given(strays.letters_with_units())
def test_a_letter_with_its_unit_names_a_size(told: Several) -> None:
    """A field "L (cm) : 162.5" is a length in centimetres."""
    read_as_told(told)


@MANY
@given(strays.hole_by_its_sides())
def test_a_hole_across_and_front_to_back_has_two_sides(told: Several) -> None:
    """It is no round one."""
    read_as_told(told)


@MANY
@given(strays.corrected_at_once())
def test_a_size_taken_back_at_once_is_replaced(told: Several) -> None:
    """Only the one that follows stands."""
    read_as_told(told)


@MANY
@given(strays.turned_round())
def test_a_distance_turned_round_is_from_the_other_end(told: Several) -> None:
    """The end that is said last counts."""
    read_as_told(told)


@MANY
@given(strays.level_in_depth())
def test_what_is_in_line_front_to_back_is_as_far_back(told: Several) -> None:
    """It has the other's distance from the front."""
    read_as_told(told)


@MANY
@given(strays.middle_before_its_hole())
def test_a_middle_said_first_is_its_holes(told: Several) -> None:
    """One hole after "in the middle" is no name of a slab."""
    read_as_told(told)


@MANY
@given(strays.of_other_stuff_once())
def test_a_top_of_other_stuff_is_gone(told: Several) -> None:
    """Its length is none of the new one's."""
    read_as_told(told)


@MANY
@given(strays.beside_the_piece())
def test_a_way_along_a_piece_is_no_slabs_name(told: Several) -> None:
    """The words "left to right" are not the left one."""
    read_as_told(told)


@MANY
@given(strays.one_more_thing())
def test_each_thing_has_its_own_hole(told: Several) -> None:
    """A thing and a colon lead to a hole of its own."""
    read_as_told(told)


@MANY
@given(strays.depth_of_the_run())
def test_the_depth_of_a_run_is_a_depth(told: Several) -> None:
    """A leg called a run has no other length by that."""
    read_as_told(told)


@MANY
@given(strays.round_in_a_list())
def test_a_round_one_in_a_list_is_a_slab(told: Several) -> None:
    """It has its own diameter and takes no sizes over."""
    read_as_told(told)


@MANY
@given(strays.round_in_a_table())
def test_a_diameter_in_a_column_of_lengths_is_one(told: Several) -> None:
    """The slab is round."""
    read_as_told(told)


@MANY
@given(strays.picked_and_changed())
def test_an_offer_picked_and_changed_is_taken(told: Several) -> None:
    """The rest of what was offered stands."""
    read_as_told(told)


@MANY
@given(strays.up_the_drive())
def test_a_drive_to_come_by_is_no_other_trade(told: Several) -> None:
    """The message is an enquiry."""
    read_as_told(told)


@MANY
@given(strays.for_outside())
def test_so_many_for_outside_are_counted(told: Several) -> None:
    """The word for where they go hides no number."""
    slab = read_as_told(told)["order"]["slabs"][0]
    assert slab["quantity"] == int(told.words["count"])


@MANY
@given(strays.ordered_before())
def test_what_was_ordered_is_not_asked_for(told: Several) -> None:
    """A message about an order that is booked or paid is no enquiry."""
    assert not read_enquiry(told.text, WORKSHOP)["is_enquiry"], told.text
