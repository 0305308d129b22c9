"""Laws of reading for wordings that messages from outside had, each as a family."""

import re

import pytest
from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from ledgerstone.quantities import Length
from support.strategies import enquiry_sides as sides
from support.strategies import enquiry_sizes as sizes
from support.strategies import enquiry_wordings as wordings
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_families import dimensions
from support.strategies.orders import cases

MANY = settings(max_examples=cases(10), suppress_health_check=[HealthCheck.too_slow])


@MANY
@given(wordings.over_cupboards())
def test_a_sink_is_over_the_middle_of_its_cupboard(told: Several) -> None:
    """Half the cupboard's width past where it starts, as worked out from both."""
    read = read_as_told(told)
    (x,) = (one for one in read["read"] if one["at"] == "/slabs/0/cutouts/0/centre/x")
    assert x["how"] == "worked-out"
    assert len(x["from"]) >= 2


@MANY
@given(wordings.places_first())
def test_a_place_told_first_is_of_the_hole_that_follows(told: Several) -> None:
    """The distance is the hole's, and none of the slab's."""
    read_as_told(told)


@MANY
@given(wordings.thousands())
def test_thousands_set_apart_are_one_number(told: Several) -> None:
    """A narrow blank, a no-break one, an apostrophe, and a plain blank before millimetres."""
    read_as_told(told)


@MANY
@given(wordings.answers_between())
def test_a_quoted_question_that_repeats_the_size_is_confirmed(told: Several) -> None:
    """What the workshop says again and the customer confirms is the slab's."""
    read_as_told(told)


@MANY
@given(wordings.bores_corrected())
def test_a_bare_number_has_the_unit_of_what_it_replaces(told: Several) -> None:
    """60 for a hole of 80 mm is 60 mm."""
    read_as_told(told)


@MANY
@given(wordings.without_sizes())
def test_two_slabs_without_sizes_are_both_asked_for(told: Several) -> None:
    """Each is a slab of the draft; its sizes are missing, and none is made up."""
    read = read_as_told(told)
    assert [slab["use"] for slab in read["order"]["slabs"]][1:] == [told.words["second"]]
    asked = {one["at"] for one in read["missing"]}
    for i in (0, 1):
        assert {f"/slabs/{i}/outline/length", f"/slabs/{i}/thickness"} <= asked


@MANY
@given(wordings.broken_numbers())
def test_nothing_is_taken_of_a_group_that_begins_with_no_size(told: Several) -> None:
    """An exponent or sixty digits are no length, and what follows them is unsure."""
    read_as_told(told)


@MANY
@given(wordings.lettered())
def test_letters_name_the_three_sizes(told: Several) -> None:
    """A name "L x D x T:" is one for all three; what a note wants it to be is how thick it is."""
    read_as_told(told)


@MANY
@given(wordings.said_again())
def test_a_size_said_again_counts_once_it_is_confirmed(told: Several) -> None:
    """Without a yes the workshop's own words are no size of the customer's."""
    read_as_told(told)


@MANY
@given(wordings.bowls())
def test_a_bowl_that_stands_on_the_slab_has_no_cutout(told: Several) -> None:
    """Its waste is cut and nothing is asked about the bowl."""
    assert len(read_as_told(told)["order"]["slabs"][0]["cutouts"]) == 1


@MANY
@given(wordings.inch_tables())
def test_a_row_s_last_number_has_the_table_s_unit(told: Several) -> None:
    """A number before a line's end is no pressure in bar, and 2 is two inches."""
    read_as_told(told)


@MANY
@given(sizes.after_a_name())
def test_a_size_right_after_a_name_is_whole(told: Several) -> None:
    """In "Worktop a metre eighty" the a is no item's letter."""
    read_as_told(told)


@MANY
@given(sizes.ranges())
def test_a_range_is_a_doubt(told: Several) -> None:
    """A thickness between two is neither of them, and both are offered."""
    read = read_as_told(told)
    (doubt,) = (one for one in read["doubtful"] if one["at"] == "/slabs/0/thickness")
    assert len(doubt["readings"]) == 2


@MANY
@given(sizes.shortened())
def test_short_words_name_sizes(told: Several) -> None:
    """A size is named by lg, wd, dp and thk as by the whole words."""
    read_as_told(told)


@MANY
@given(sizes.across())
def test_after_a_place_along_a_middle_is_across(told: Several) -> None:
    """From an end so far and "central on the width": in the middle of the depth."""
    read_as_told(told)


@MANY
@given(wordings.inches_before_words())
def test_inches_are_inches_before_any_word(told: Several) -> None:
    """In "25 in with a sink" the 25 are inches, as the 72 before them are."""
    outline = dimensions(read_enquiry(told.text, WORKSHOP))
    assert {key: outline[key] for key in told.lengths} == pytest.approx(told.lengths), told.text


@MANY
@given(wordings.mixed_units())
def test_a_proposal_speaks_one_metric_unit(told: Several) -> None:
    """What is taken and quoted is in millimetres or in centimetres, and as long as said."""
    read = read_enquiry(told.text, WORKSHOP)
    (slab,) = read["proposal"]["slabs"]
    sizes = [slab["outline"]["length"], slab["outline"]["width"], slab["thickness"]]
    assert [Length.parse(size).mm for size in sizes] == list(told.lengths.values())
    for cutout in slab["cutouts"]:
        sizes += [*cutout["centre"].values(), cutout.get("diameter") or cutout["length"]]
    units = {size.split()[1] for size in sizes}
    assert units in ({"mm"}, {"cm"}), told.text
    for one in read["assumed"]:
        assert set(re.findall(r"[0-9] (mm|cm|m)\b", one["says"])) <= units


@MANY
@given(sides.bare_places())
def test_a_place_without_a_unit_lies_on_the_slab(told: Several) -> None:
    """300 from the front of a slab told in centimetres is 300 mm, and nothing is asked."""
    assert read_as_told(told)["doubtful"] == []
