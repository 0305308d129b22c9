"""How much of one unit is in another, held to published tables."""

from fractions import Fraction

import pytest

from ledgerstone._unit_factors import factor
from ledgerstone.quantities import INCH_MM, KG_PER_LB, MPA_PER_PSI


@pytest.mark.parametrize(
    ("unit", "to", "published"),
    [
        ("psi", "MPa", 6.894757e-3),
        ("lbf", "N", 4.448222),
        ("gal", "l", 3.785412),
        ("ft ** 3", "l", 28.31685),
        ("yd ** 2", "m ** 2", 8.361274e-1),
        ("lb / yd ** 3", "kg / m ** 3", 5.932764e-1),
        ("lb / ft ** 3", "kg / m ** 3", 1.601846e1),
    ],
)
def test_a_factor_is_the_published_one(unit: str, to: str, published: float) -> None:
    """NIST SP 811 (2008), appendix B.8, which gives seven figures."""
    assert float(factor(unit, to)) == pytest.approx(published, rel=5e-7)


def test_those_that_are_definitions_are_exact() -> None:
    """24 FR 5348: an inch is 25.4 mm and a pound 0.45359237 kg; a gallon is 231 cubic inches."""
    assert factor("in", "mm") == Fraction(254, 10)
    assert factor("lb", "kg") == Fraction(45359237, 100000000)
    assert factor("gal", "in ** 3") == 231
    assert (INCH_MM, KG_PER_LB) == (25.4, 0.45359237)


def test_factors_turn_round() -> None:
    """There and back is one, exactly."""
    assert factor("psi", "MPa") * factor("MPa", "psi") == 1
    assert float(factor("psi", "MPa")) == MPA_PER_PSI
