"""Laws of reading for turns from slab to slab, sums, named groups, and what asks for nothing."""

import re

from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_turns as turning
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

MANY = settings(max_examples=cases(10), suppress_health_check=[HealthCheck.too_slow])


@MANY
@given(turning.turns())
def test_one_sentence_may_tell_of_two_slabs(told: Several) -> None:
    """Each opening is in the slab that its clause is about."""
    read_as_told(told)


@MANY
@given(turning.sums())
def test_a_slab_over_cupboards_is_as_long_as_they_are(told: Several) -> None:
    """What is added up is one length, worked out or said."""
    read_as_told(told)


@MANY
@given(turning.rows_of_lengths())
def test_each_length_of_a_row_is_a_slab(told: Several) -> None:
    """As many slabs as are named, each of its own length."""
    assert len(read_as_told(told)["order"]["slabs"]) == 3


@MANY
@given(turning.named_groups())
def test_a_group_takes_the_names_after_it(told: Several) -> None:
    """The order of the names is that of the sizes; dots lead from a name to its size."""
    read_as_told(told)


@MANY
@given(turning.lettered_places())
def test_a_side_may_be_a_letter(told: Several) -> None:
    """L, R, F and B are sides after "from"."""
    read_as_told(told)


@MANY
@given(turning.squares())
def test_a_round_slab_makes_no_round_hole(told: Several) -> None:
    """The hole is as its two sizes say."""
    assert read_as_told(told)["order"]["slabs"][1]["cutouts"][0]["kind"] == "rectangle"


@MANY
@given(turning.no_enquiries())
def test_offers_and_applications_ask_for_no_slab(text: str) -> None:
    """Whatever sizes they have."""
    read = read_enquiry(text, WORKSHOP)
    assert not read["is_enquiry"]
    assert read["unread"] == []


@MANY
@given(turning.no_fitting())
def test_what_others_fit_is_not_fitted_by_us(told: Several) -> None:
    """No fitting is read."""
    assert read_as_told(told)["order"].get("delivery", {}).get("kind") != "fitted"


@MANY
@given(turning.fitting())
def test_fitting_put_off_or_called_for_is_ours(told: Several) -> None:
    """To want it not before May refuses nothing; what the workshop should fit, it fits."""
    assert read_as_told(told)["order"]["delivery"]["kind"] == "fitted", told.text


@MANY
@given(turning.terse())
def test_a_thing_of_ours_with_one_size_is_an_enquiry(text: str) -> None:
    """Nothing speaks against it, and a customer missed costs more than a spare draft."""
    assert read_enquiry(text, WORKSHOP)["is_enquiry"], text


@MANY
@given(turning.standing())
def test_what_stands_where_it_belongs_is_no_enquiry(text: str) -> None:
    """Its size is told of what is done."""
    assert not read_enquiry(text, WORKSHOP)["is_enquiry"], text


@MANY
@given(turning.walls())
def test_a_wall_that_it_must_fit_makes_a_doubt(told: Several) -> None:
    """The length is told two ways, and both are offered."""
    doubts = read_as_told(told)["doubtful"]
    (length,) = [one for one in doubts if one["at"] == "/slabs/0/outline/length"]
    assert len(length["readings"]) == 2


@MANY
@given(turning.in_inches())
def test_what_is_taken_beside_inches_is_in_inches(text: str) -> None:
    """No sentence of what was taken, and no length of the proposal, speaks millimetres."""
    read = read_enquiry(text, WORKSHOP)
    assert read["assumed"]
    told = " ".join(one["says"] for one in read["assumed"]) + str(read["proposal"]["slabs"])
    assert not re.search(r"\d (?:mm|cm)\b", told), told


@MANY
@given(turning.signed())
def test_a_last_line_that_begins_with_a_name_signs(told: tuple[str, str]) -> None:
    """Whoever they say they are."""
    text, name = told
    assert read_enquiry(text, WORKSHOP)["customer"]["name"] == name


@MANY
@given(turning.numbered())
def test_a_slab_is_called_by_its_number_or_its_side(told: Several) -> None:
    """Each opening is in the slab that is named so."""
    read_as_told(told)


@MANY
@given(turning.radii())
def test_a_radius_is_half_of_what_it_is_across(told: Several) -> None:
    """A round slab's own, and no edge's."""
    read_as_told(told)


@MANY
@given(turning.changes())
def test_a_change_is_told_from_what_to_what(told: Several) -> None:
    """The second size stands, and what is left unsaid is as it was offered."""
    read_as_told(told)


@MANY
@given(turning.by_length())
def test_a_slab_is_called_by_its_length(told: Several) -> None:
    """The number that names it is no size of its own."""
    read_as_told(told)


@MANY
@given(turning.counted())
def test_so_many_of_each_are_two_slabs(told: Several) -> None:
    """Each with its own number."""
    slabs = read_as_told(told)["order"]["slabs"]
    assert [str(one["quantity"]) for one in slabs] == told.words["counts"].split(",")


@MANY
@given(turning.behind_by())
def test_a_tap_may_be_so_far_behind_a_basin(told: Several) -> None:
    """Its place follows from the basin's."""
    read_as_told(told)
