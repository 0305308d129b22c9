"""Laws of reading for words and marks of other languages."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from laws.enquiry_reading import read_as_told
from support.strategies import enquiry_abroad as abroad
from support.strategies.orders import cases

SOME = settings(max_examples=cases(8), suppress_health_check=[HealthCheck.too_slow], deadline=None)


@pytest.mark.parametrize("family", sorted(abroad.TAKEN))
@SOME
@given(data=st.data())
def test_sizes_are_those_told_and_no_others(family: str, data: st.DataObject) -> None:
    """Each size has its slab, its name and its place."""
    read_as_told(data.draw(abroad.told(family)))
