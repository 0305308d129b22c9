"""Units that cannot be meant: "2.4 m x 650 cm" is no slab, and 650 mm may be meant, or not."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length

_MOST_CM: Final = 400  # no slab's size is written as more centimetres: common practice, no source
_DEPTHS_MM: Final = (150.0, 1600.0)  # usual from front to back: common practice, no source
_PAIR: Final = 2


def both_readings(measure: Measure) -> tuple[Length, Length] | None:
    """Return what a size of a pair may mean, where as written neither of the two is a depth.

    The size in millimetres comes first, then the one that is written. None where the pair may be
    a slab as it is written.
    """
    size = measure.size
    if size.unit != "cm" or size.amount < _MOST_CM:
        return None
    try:
        said = [
            Length.of(one.size.amount, one.size.unit) for one in measure.members if one.size.unit
        ]
        meant, written = Length.of(size.amount, "mm"), Length.of(size.amount, "cm")
    except QuantityError:
        return None
    low, high = _DEPTHS_MM
    is_usual = low <= meant.mm <= high
    no_depth = len(said) >= _PAIR and min(length.mm for length in said[:_PAIR]) > high
    return (meant, written) if is_usual and no_depth else None
