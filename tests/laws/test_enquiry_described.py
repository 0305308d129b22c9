"""Laws of reading for what is described: an L leg by leg, what is struck, what is no slab."""

from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_clauses_about import (
    aside_in_brackets,
    cut_up,
    denied_but_one,
    headed_runs,
    legs_told,
    now_so,
    other_things,
    struck,
    two_systems,
)
from support.strategies.enquiry_families import dimensions
from support.strategies.orders import cases

WORKSHOP = load_profile(DEMONSTRATION)
SOME = settings(max_examples=cases(6), suppress_health_check=[HealthCheck.too_slow])


def _read(told: Several) -> dict[str, Any]:
    read = read_enquiry(told.text, WORKSHOP)
    assert dimensions(read) == pytest.approx(told.lengths, abs=0.5), told.text
    return read


@SOME
@given(legs_told())
def test_an_l_is_read_by_the_leg_that_each_clause_is_about(told: Several) -> None:
    """Outside lengths, depths and the side of the short leg stand where the legs were told."""
    notch = _read(told)["order"]["slabs"][0]["outline"]["notch"]
    assert notch["corner"] == told.words["corner"], told.text


@SOME
@given(struck())
def test_a_size_that_is_struck_is_replaced_by_the_next(told: Several) -> None:
    """Only the size that stands for it is taken."""
    _read(told)


@SOME
@given(headed_runs())
def test_a_line_that_calls_a_slab_by_a_letter_begins_it(told: Several) -> None:
    """Each heading's list is of its own slab."""
    _read(told)


@SOME
@given(denied_but_one())
def test_a_denial_ends_where_only_one_is_asked_for(told: Several) -> None:
    """What is asked for after "just" or "only" is no more denied."""
    _read(told)


@SOME
@given(two_systems())
def test_two_systems_that_differ_are_asked(told: Several) -> None:
    """A bracket that converts a size repeats it; one that contradicts it is a doubt with both."""
    read = _read(told)
    doubts = [one for one in read["doubtful"] if one["at"] == "/slabs/0/thickness"]
    assert bool(doubts) == ("/slabs/0/thickness" not in told.lengths), told.text


@SOME
@given(other_things())
def test_what_stands_ready_or_carries_it_home_is_no_slab(told: Several) -> None:
    """Neither the frame told as "it" nor a loading bed in a bracket is taken for a slab."""
    _read(told)


@SOME
@given(cut_up())
def test_a_slab_that_is_cut_up_is_no_more_asked_for(told: Several) -> None:
    """Two newer pieces that add up to an older slab stand in its place."""
    _read(told)


@SOME
@given(now_so())
def test_what_is_so_now_stands_for_what_was_quoted(told: Several) -> None:
    """The last of two sizes stands where its sentence says that it is so now."""
    _read(told)


@SOME
@given(aside_in_brackets())
def test_a_bracket_about_another_thing_ends_with_it(told: Several) -> None:
    """The sizes after a bracket go on with the slab before it."""
    _read(told)


ASKING = (
    (
        "Good morning, we thought about a sink and decided against it. What we need is the counter,"
        " 2500 x 760 and 50 mm thick, sealed against grease."
    ),
    (
        "Excuse my English. I search a bench for the terrace, length 1750, depth 420, thickness"
        " 80 mm. If you can deliver to LD0 5VA it is perfect."
    ),
    "Need window boards, 1200 x 200 x 30, three of them.",
    "Yes, go ahead on that basis but make it 50 thick not 40. The island is 2100 x 950.",
)
NOT_ASKING = (
    "The bench stands! All 2.2 m of it. The 5 cm were just right, thank you for the advice.",
    "Good news. Goods: 1 pallet, concrete hearth. Please do not answer this message.",
    "Yes please go ahead with the worktop as quoted, thanks.",
)


@pytest.mark.parametrize("text", ASKING)
def test_a_slab_wished_for_with_its_sizes_is_an_enquiry(text: str) -> None:
    """Words that thanks have too do not outweigh a slab that is wished for with all its sizes."""
    assert read_enquiry(text, WORKSHOP)["is_enquiry"]


@pytest.mark.parametrize("text", NOT_ASKING)
def test_a_slab_that_is_only_named_is_no_enquiry(text: str) -> None:
    """Who names a slab and wishes for none asks nothing."""
    assert not read_enquiry(text, WORKSHOP)["is_enquiry"]
