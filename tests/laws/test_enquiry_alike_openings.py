"""Laws of proposed places: several alike openings share the slab's length."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.enquiry import read_enquiry
from ledgerstone.quantities import Length
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies.orders import cases

WORKSHOP = load_profile(DEMONSTRATION)
COUNTS = {2: "two", 3: "three"}


@settings(max_examples=cases(12))
@given(
    st.sampled_from([*COUNTS]),
    st.integers(32, 44),
    st.sampled_from(("basins {} mm dia", "sinks {0} x {0}", "waste holes of {} mm")),
    st.booleans(),
)
def test_alike_openings_have_a_part_of_the_length_each(
    count: int, tens: int, named: str, has_taps: bool
) -> None:
    """So many basins stand in the middles of as many parts, each with its own tap behind it."""
    size = 45 if "waste" in named else 10 * tens
    length = 750 * count
    taps = f" and {COUNTS[count]} tap holes 35 mm" if has_taps else ""
    read = read_enquiry(
        f"Price for a vanity top {length} x 620 x 40 mm with {COUNTS[count]} "
        f"{named.format(size)}{taps}.",
        WORKSHOP,
    )
    cutouts = read["proposal"]["slabs"][0]["cutouts"]
    xs = [Length.parse(one["centre"]["x"]).mm for one in cutouts]
    middles = [float(Fraction(length * (2 * k + 1), 2 * count)) for k in range(count)]
    assert xs[:count] == pytest.approx(middles, abs=1.0)
    if has_taps:
        assert sorted(xs[count:]) == pytest.approx(middles, abs=size / 2)
