"""Reading a message of a family, and holding what was read to what the family says."""

from typing import Any, Final

import pytest

from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_families import dimensions

WORKSHOP: Final = load_profile(DEMONSTRATION)


def read_as_told(told: Several) -> dict[str, Any]:
    """Read a message, whose lengths are those that its family wrote into it, and no others."""
    read = read_enquiry(told.text, WORKSHOP)
    assert dimensions(read) == pytest.approx(told.lengths, abs=0.5), told.text
    return read
