"""Laws of reading for the forms in which sizes are written, and for sizes that are no slab's."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from laws.enquiry_reading import read_as_told
from support.strategies import enquiry_forms as forms
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

FAMILIES = (
    forms.pasted_fields,
    forms.spoken_numbers,
    forms.metres_and_millimetres,
    forms.inch_columns,
    forms.codes,
    forms.rooms,
    forms.depth_of_slab,
    forms.rested,
    forms.summed_up,
    forms.treads,
    forms.bowls_on_top,
    forms.old_in_brackets,
    forms.dotted_lines,
    forms.drained,
)


@pytest.mark.parametrize("family", FAMILIES, ids=lambda one: one.__name__)
@settings(max_examples=cases(8), suppress_health_check=[HealthCheck.too_slow])
@given(data=st.data())
def test_sizes_are_the_slabs_and_no_others(family: object, data: st.DataObject) -> None:
    """One slab with its own sizes is read, whatever form they have and whatever stands beside."""
    told: Several = data.draw(family())  # type: ignore[operator]
    assert len(read_as_told(told)["order"]["slabs"]) == 1


@settings(max_examples=cases(8), suppress_health_check=[HealthCheck.too_slow])
@given(told=forms.rows_of_panels())
def test_a_row_of_sizes_is_no_row_of_labels(told: Several) -> None:
    """Rows without labels are a slab each, the first one too."""
    assert len(read_as_told(told)["order"]["slabs"]) == 2
