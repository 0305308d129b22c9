"""Laws of reading slabs that share all but their lengths, and follow-ups that choose or change."""

import pytest
from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_rows as rows
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

MANY = settings(max_examples=cases(8), suppress_health_check=[HealthCheck.too_slow])


@MANY
@given(rows.counted())
def test_each_length_has_its_own_number(told: Several) -> None:
    """Each is a slab of its own, with the depth and the thickness of all."""
    slabs = read_as_told(told)["order"]["slabs"]
    assert " ".join(str(one.get("quantity", 1)) for one in slabs) == told.words["counts"], told.text


@MANY
@given(rows.one_each())
def test_each_length_is_a_slab(told: Several) -> None:
    """What is told of both is of each, and "the same but" changes one size."""
    read_as_told(told)


@MANY
@given(rows.on_units())
def test_widths_of_units_are_no_lengths(told: Several) -> None:
    """However many there are of each."""
    read_as_told(told)


@MANY
@given(rows.under_sink())
def test_widths_of_units_are_no_opening_s(told: Several) -> None:
    """They are no readings of the slab or of the opening that was told before, but its rests."""
    read = read_as_told(told)
    told_twice = [one["at"] for one in read["doubtful"] if one["at"].endswith(("length", "width"))]
    assert not told_twice, told.text
    assert len(read["order"]["slabs"][0]["rests"]["units"]) == 2, told.text


@MANY
@given(rows.made_round())
def test_a_newer_shape_takes_the_place_of_the_older(told: Several) -> None:
    """The rectangle's sizes are gone, and its thickness stays."""
    read_as_told(told)


@MANY
@given(rows.chosen())
def test_an_answer_chooses_among_what_was_offered(told: Several) -> None:
    """By "the thicker one" or "slimmer"."""
    read_as_told(told)


@MANY
@given(rows.beside_supports())
def test_what_bears_a_slab_is_none(told: Several) -> None:
    """As the counter frame is a frame."""
    read_as_told(told)


@MANY
@given(rows.lying_beside())
def test_what_stands_apart_or_is_cut_off_is_no_size(told: Several) -> None:
    """Neither a bowl on the slab nor a grill beside it is a hole, and a corner's cut is no side."""
    read_as_told(told)


@MANY
@given(rows.named_sizes())
def test_sizes_are_named_before_them_or_by_their_ends(told: Several) -> None:
    """A form's bracket names each of a group, and from the wall to the front is the depth."""
    read_as_told(told)


@MANY
@given(rows.in_a_table())
def test_a_sink_is_in_the_slab_that_lies_flat(told: Several) -> None:
    """Though the upright one stands last in the table, and each row has its own name."""
    read_as_told(told)


@pytest.mark.parametrize("hole", ["", " One tap hole 35."])
@pytest.mark.parametrize("legs", ["600 deep on the back and 640 on the right", "600 or 640 deep"])
def test_an_l_whose_arms_are_contested_is_no_order(legs: str, hole: str) -> None:
    """Its readings are asked about, and nothing is proposed where an arm's depth is unsettled."""
    text = (
        f"L-shaped worktop: 2860 along the back wall, 1740 down the right wall, {legs}. 40 thick."
    )
    read = read_enquiry(text + hole, WORKSHOP)
    notch = read["order"]["slabs"][0]["outline"].get("notch", {})
    assert (read["proposal"] is None) == (not {"length", "width"} <= notch.keys())
    assert read["proposal"] is not None or read["missing"] or read["doubtful"]
