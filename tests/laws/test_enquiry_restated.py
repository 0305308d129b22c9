"""Laws of reading a slab that is told twice, and of numbers in words."""

from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import read_as_told
from support.strategies import enquiry_restated as restated
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

MANY = settings(max_examples=cases(8), suppress_health_check=[HealthCheck.too_slow])
WIDTH = "/slabs/0/outline/width"


@MANY
@given(restated.at_odds())
def test_a_summary_at_odds_with_the_text_is_asked(told: Several) -> None:
    """Both widths are readings of the one slab, and neither is taken."""
    (doubt,) = (one for one in read_as_told(told)["doubtful"] if one["at"] == WIDTH)
    both = {one["value"].split()[0] for one in doubt["readings"]}
    assert both == set(told.words["width"].split()), told.text


@MANY
@given(restated.told_again())
def test_a_summary_adds_nothing(told: Several) -> None:
    """What it says again is the slab and the hole that were told."""
    assert not read_as_told(told)["doubtful"], told.text


@MANY
@given(restated.of_two())
def test_two_slabs_that_differ_little_are_two(told: Several) -> None:
    """Where words or a list tell one more."""
    read_as_told(told)


@MANY
@given(restated.in_words())
def test_numbers_in_words_are_read(told: Several) -> None:
    """By their thousands, and as they are spoken: "eighteen fifty"."""
    read_as_told(told)


@MANY
@given(restated.in_german_words())
def test_german_compounds_are_numbers(told: Several) -> None:
    """One word, as "achtzehnhundertfünfzig", is one number."""
    read_as_told(told)


@MANY
@given(restated.in_feet())
def test_feet_and_parts_of_inches_in_words_are_read(told: Several) -> None:
    """As in "five foot six by one foot nine, an inch and three quarters thick"."""
    read_as_told(told)
