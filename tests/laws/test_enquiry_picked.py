"""Laws of reading choices: what is picked is taken, what is passed over is not, one may differ."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from laws.enquiry_reading import read_as_told
from support.strategies import enquiry_picked as picked
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

SOME = settings(max_examples=cases(12), suppress_health_check=[HealthCheck.too_slow], deadline=None)


@pytest.mark.parametrize("family", sorted(picked.TAKEN))
@SOME
@given(data=st.data())
def test_what_is_picked_is_taken(family: str, data: st.DataObject) -> None:
    """Sizes are those picked; of sizes of which none is picked only what they share."""
    read_as_told(data.draw(picked.told(family)))


@SOME
@given(picked.told("picks_none"))
def test_a_length_of_which_none_is_picked_is_doubtful(told: Several) -> None:
    """Both lengths are readings."""
    doubtful = {one["at"]: one["readings"] for one in read_as_told(told)["doubtful"]}
    assert len(doubtful["/slabs/0/outline/length"]) == 2, told.text


@pytest.mark.parametrize("family", ["one_differs", "one_bored"])
@SOME
@given(data=st.data())
def test_one_of_four_that_differs_leaves_three(family: str, data: st.DataObject) -> None:
    """The one is a slab of its own, by its size or by its hole, and the others are one fewer."""
    told = data.draw(picked.told(family))
    slabs = read_as_told(told)["order"]["slabs"]
    assert [one.get("quantity", 1) for one in slabs] == [3, 1], told.text
