"""Measures with their units, as things are sold in other countries, against published factors.

Sources: NIST SP 811 (2008) appendix B.8; EN 206 table 12 (strength classes: cylinder/cube, from
memory); a US bag of Portland cement is 94 lb (ASTM C150); a sheet of plywood is 4 ft by 8 ft.
"""

from decimal import Decimal

import pytest

from ledgerstone.workshop import DEMONSTRATION, read_profile
from ledgerstone.workshop.keys.measures import measured, rated


@pytest.mark.parametrize(
    ("text", "key", "metric"),
    [
        ("96 in", "length_mm", "2438.4"),
        ("8 ft", "length_mm", "2438.4"),
        ('3/4"', "thickness_mm", "19.05"),
        ("47 1/4 in", "length_mm", "1200.15"),
        ("94 lb", "pack_kg", "42.637683"),
        ("5 gal", "working_l", "18.927059"),
        ("5800 psi", "fck_mpa", "39.989592"),
        ("60 ksi", "yield_mpa", "413.685438"),
        ("50 MPa cube", "fck_mpa", "40"),
        ("37 N/mm² by cube", "fck_mpa", "30"),
        ("40 MPa", "fck_mpa", "40"),
    ],
)
def test_a_measure_is_read_in_its_own_unit(text: str, key: str, metric: str) -> None:
    """It comes to what the published factor makes of it."""
    assert measured(text, key) == Decimal(metric)


def test_a_rate_is_read_in_its_own_unit() -> None:
    """Cement of 800 lb in a cubic yard comes to what the published factors make of it."""
    assert rated("800 lb/yd³", "kg_per_m3") == Decimal("474.621137")


@pytest.mark.parametrize(
    ("text", "key"),
    [("96", "length_mm"), ("5 lb", "length_mm"), ("3 bar", "fck_mpa")],
)
def test_what_is_no_measure_of_the_key_is_none(text: str, key: str) -> None:
    """A number without a unit, or with one of another kind, is not read."""
    assert measured(text, key) is None


def test_a_profile_says_sizes_as_they_are_sold() -> None:
    """Boards in inches, bags in pounds, strength in psi: the records hold mm, kg and MPa."""
    text = DEMONSTRATION.read_text(encoding="utf-8")
    changes = {
        "length_mm = 3050\nwidth_mm = 1525": 'length_mm = "96 in"\nwidth_mm = "4 ft"',
        "fck_mpa = 40 ": 'fck_mpa = "5000 psi" ',
        "price_per_kg = 0.38\npack_kg = 25": 'price_per_kg = 0.38\npack_kg = "94 lb"',
    }
    for was, now in changes.items():
        assert was in text
        text = text.replace(was, now, 1)
    shop = read_profile(text)
    assert (shop.boards.length_mm, shop.boards.width_mm) == (2438.4, 1219.2)
    assert shop.recipe.fck_mpa == pytest.approx(34.474, abs=0.001)
    assert shop.recipe.constituents[2].pack_kg == pytest.approx(42.638, abs=0.001)
