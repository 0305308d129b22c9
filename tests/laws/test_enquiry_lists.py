"""Laws of reading for lists of lengths, sums beside a size, and thousands set apart by blanks."""

from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import read_as_told
from support.strategies import enquiry_lists as lists
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

MANY = settings(max_examples=cases(10), suppress_health_check=[HealthCheck.too_slow])


@MANY
@given(lists.counted_lengths())
def test_each_length_has_its_number(told: Several) -> None:
    """One at 2440 and two at 610 are two slabs, of the second of which two are wanted."""
    slabs = read_as_told(told)["order"]["slabs"]
    counts = ",".join(str(slab.get("quantity", 1)) for slab in slabs)
    assert counts == told.words["counts"]


@MANY
@given(lists.one_thickness())
def test_a_thickness_after_a_list_is_each_ones(told: Several) -> None:
    """Pairs under one name have the one thickness that ends them."""
    read_as_told(told)


@MANY
@given(lists.worked_out())
def test_of_a_sum_the_result_is_the_size(told: Several) -> None:
    """2400 less 20 so 2380 is 2380, and nothing else of it is taken."""
    read_as_told(told)


@MANY
@given(lists.blank_thousands())
def test_a_blank_after_thousands_never_gives_the_rest_of_the_number(told: Several) -> None:
    """One slab of 2400, two of 400 where several are named after it, else a question."""
    read = read_as_told(told)
    if not told.lengths:
        assert {"/slabs/0/outline/length"} <= {one["at"] for one in read["missing"]}
