"""Units against their definitions and against pint's own.

Source of the inch and the foot: since 1 July 1959 a yard is 0.9144 m exactly, so that an inch is
25.4 mm and a foot 304.8 mm (US Federal Register, 24 FR 5348; addendum of January 1960 to National
Bureau of Standards Circular 572, which names Australia, Canada, New Zealand, South Africa and the
United Kingdom as holding the same). The millimetre and centimetre are a thousandth and a hundredth
of a metre (BIPM, The International System of Units, 9th edition, table 7).

Each expected length below is worked by hand from those, in exact decimals; tolerance: none.
"""

from fractions import Fraction

import pint
import pytest

from ledgerstone.quantities import Length

# Typed, and millimetres worked by hand: (whole + n/d) x 25.4, feet x 304.8.
BY_HAND = {
    "1 in": "25.4",
    "1/64 in": "0.396875",
    "1/32 in": "0.79375",
    "1/16 in": "1.5875",
    "1/8 in": "3.175",
    "3/16 in": "4.7625",
    "5/32 in": "3.96875",
    "3/8 in": "9.525",
    "27/64 in": "10.715625",
    "11/16 in": "17.4625",
    "63/64 in": "25.003125",
    "1 3/8 in": "34.925",
    "1 1/2 in": "38.1",
    "2½ in": "63.5",
    "22 1/16 in": "560.3875",
    "25 1/2 in": "647.7",
    "57 3/32 in": "1450.18125",
    "96 5/8 in": "2454.275",
    "1 ft": "304.8",
    "3 ft": "914.4",
    "4 ft 9 in": "1447.8",
    "4 ft 9 1/2 in": "1460.5",
    "7 ft 10 1/2 in": "2400.3",
    "8 ft 0 7/16 in": "2449.5125",
    "6' 2 3/4\"": "1898.65",
    "2' 6\"": "762",
    "0 ft 11 63/64 in": "304.403125",
    "1 mm": "1",
    "1 cm": "10",
    "1 m": "1000",
    "1.45 m": "1450",
    "62.5 cm": "625",
}


@pytest.mark.parametrize(("typed", "mm"), BY_HAND.items())
def test_a_length_is_exactly_what_its_definition_gives(typed: str, mm: str) -> None:
    """Inch fractions, feet and inches and metric lengths are exact by the 1959 inch."""
    assert Length.parse(typed).exact_mm == Fraction(mm)
    assert Length.parse(typed).mm == float(mm)


@pytest.fixture(scope="module")
def reference() -> pint.UnitRegistry[Fraction]:
    """Return pint's default registry, with its own definitions, in exact fractions."""
    return pint.UnitRegistry(non_int_type=Fraction)


@pytest.mark.parametrize("unit", ["mm", "cm", "m", "in", "ft"])
@pytest.mark.parametrize("number", ["1", "0.5", "2.75", "36.125", "950", "0.0625"])
def test_a_plain_length_agrees_with_pint(
    reference: pint.UnitRegistry[Fraction], number: str, unit: str
) -> None:
    """A number with one unit is exactly what pint's default registry makes of it."""
    expected = reference.Quantity(Fraction(number), unit).to("millimetre").magnitude
    assert Length.parse(f"{number} {unit}").exact_mm == expected
