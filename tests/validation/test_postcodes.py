"""Postcodes against the published pattern: rows 22 to 27 of sources §7.

Source: the schema pattern of BS 7666 v2.0 (National Archives), with P added to the third letter of
A9A districts: N1P and W1P are in use, and the pattern alone rejects them. GIR 0AA, which it
accepts, was a bank's and is no place that a slab goes to. Northern Ireland, the Channel Islands
and the islands of Scotland are what carriers price as remote (carriers' tables, secondary).
"""

import pytest

from ledgerstone.order import Delivery
from ledgerstone.transport import area_of, tidy_postcode
from ledgerstone.workshop import Workshop

# Formats of the pattern, one of each: A9, A99, AA9, AA99, A9A, AA9A (Royal Mail, Programmers'
# guide to PAF, "Postcode format").
FORMATS = ("M1 1AE", "B33 8TH", "CR2 6XH", "DN55 1PT", "W1A 0AX", "EC1A 1BB")
REMOTE = (
    "IV27 4TH", "ZE1 0AA", "HS1 2AA", "BT1 5GS", "KW15 1AA", "PO30 1AA", "TR21 0AA", "JE2 3AB",
)  # fmt: skip


@pytest.mark.parametrize("typed", [" sw1a1aa ", "SW1A-1AA", "sw1a 1aa", "SW1A 1AA"])
def test_a_postcode_is_read_however_it_is_typed(typed: str) -> None:
    """Row 22: it is written SW1A 1AA."""
    assert tidy_postcode(typed) == "SW1A 1AA"


@pytest.mark.parametrize("typed", ["QA1 1AA", "AI1 1AA", "EC1A 1BI", "NPT 1AA"])
def test_letters_that_stand_in_no_postcode_are_refused(typed: str) -> None:
    """Row 23: no area begins with Q, has I second, no inward part has I, and NPT is retired."""
    assert tidy_postcode(typed) is None


@pytest.mark.parametrize("typed", ["N1P 1AA", "W1P 1AA"])
def test_districts_of_central_london_with_p_are_real(typed: str) -> None:
    """Row 24: N1P is in use."""
    assert tidy_postcode(typed) == typed


def test_a_bank_is_no_place_to_deliver(workshop: Workshop) -> None:
    """Row 25: GIR 0AA has no delivery."""
    assert tidy_postcode("GIR 0AA") is None
    assert area_of(Delivery(kind="pallet", postcode="GIR 0AA"), workshop) is None


@pytest.mark.parametrize("postcode", REMOTE)
def test_remote_places_are_real_and_are_asked_about(workshop: Workshop, postcode: str) -> None:
    """Row 26: each is a postcode; this workshop serves none of them at a listed price."""
    assert tidy_postcode(postcode) == postcode
    assert area_of(Delivery(kind="pallet", postcode=postcode), workshop) is None


def test_a_mainland_postcode_of_the_north_is_real() -> None:
    """Row 27: AB10 1XG is one, whoever serves it."""
    assert tidy_postcode("AB10 1XG") == "AB10 1XG"


@pytest.mark.parametrize("postcode", FORMATS)
def test_every_published_format_is_read(postcode: str) -> None:
    """One postcode of each format of the guide, with and without its space."""
    assert tidy_postcode(postcode) == postcode
    assert tidy_postcode(postcode.replace(" ", "").lower()) == postcode
