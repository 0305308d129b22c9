"""Prices, hours and yields by a measure, as things are sold there: read as pint reads them."""

from collections.abc import Mapping
from decimal import Decimal
from typing import Final

import pytest
from pint import UnitRegistry

from ledgerstone.workshop import DEMONSTRATION, load_profile
from ledgerstone.workshop.keys.measures import measured, rated

UNITS: Final[UnitRegistry[float]] = UnitRegistry()
# At which key, the text, and the same by pint's names and in the units of the key.
READ: Final[Mapping[tuple[str, str], tuple[float, str, str]]] = {
    ("price_per_kg", "0.19 per lb"): (0.19, "1/lb", "1/kg"),
    ("price_per_kg", "3.40/oz"): (3.4, "1/oz", "1/kg"),
    ("price_per_l", "128.70 per gal"): (128.7, "1/gallon", "1/liter"),
    ("price_per_l", "34 / qt"): (34, "1/quart", "1/liter"),
    ("consumables_per_m2", "1 1/2 per ft²"): (1.5, "1/ft**2", "1/m**2"),
    ("hours_per_m2", "0.3 per sq ft"): (0.3, "1/ft**2", "1/m**2"),
    ("hours_per_m2_coat", "0.02 per ft2"): (0.02, "1/ft**2", "1/m**2"),
    ("side_per_m", "0.03 per ft"): (0.03, "1/ft", "1/m"),
    ("extra_per_m3", "222 per yd³"): (222, "1/yd**3", "1/m**3"),
    ("coverage_m2_per_l", "370 ft² per gal"): (370, "ft**2/gallon", "m**2/liter"),
    ("steel_kg_per_m2", "0.4 lb per ft²"): (0.4, "lb/ft**2", "kg/m**2"),
    ("l_per_m2", "0.01 gal per ft²"): (0.01, "gallon/ft**2", "liter/m**2"),
    ("even_n_per_m2", "40 lb per ft²"): (40, "lbf/ft**2", "N/m**2"),
    ("price_per_kg", "0.42 per kg"): (0.42, "1/kg", "1/kg"),
    ("price_per_kg", "$0.19/lb"): (0.19, "1/lb", "1/kg"),
    ("price_per_l", "$34.00 / quart"): (34, "1/quart", "1/liter"),
    ("extra_per_m3", "222 per cu yd"): (222, "1/yd**3", "1/m**3"),
    ("coverage_m2_per_l", "370 sq. ft. per gallon"): (370, "ft**2/gallon", "m**2/liter"),
    ("hours_per_m2", "20 min / sq ft"): (20, "minute/ft**2", "hour/m**2"),
    ("steel_kg_per_m2", "0.5 lb/sq ft"): (0.5, "lb/ft**2", "kg/m**2"),
    ("even_n_per_m2", "40 psf"): (40, "lbf/ft**2", "N/m**2"),
    ("fresh_kg_per_m3", "150 lb/cu ft"): (150, "lb/ft**3", "kg/m**3"),
    ("fresh_kg_per_m3", "150 pcf"): (150, "lb/ft**3", "kg/m**3"),
    ("kg_per_m3", "810 lb per cubic yard"): (810, "lb/yd**3", "kg/m**3"),
}


@pytest.mark.parametrize(("key", "text"), READ)
def test_a_rate_is_read_in_the_units_that_things_are_sold_in(key: str, text: str) -> None:
    """To six decimals, by the key's own units."""
    amount, unit, in_unit = READ[key, text]
    expected = UNITS.Quantity(amount, unit).to(in_unit).magnitude
    assert float(rated(text, key) or 0) == pytest.approx(expected, abs=0.6e-6)


# At which key, the text, and the same by pint's names and in the unit of the key.
MEASURED: Final[Mapping[tuple[str, str], tuple[float, str, str]]] = {
    ("length_mm", "122 in"): (122, "inch", "mm"),
    ("length_mm", "10'"): (10, "foot", "mm"),
    ("length_mm", "10' 2\""): (122, "inch", "mm"),
    ("length_mm", "10 ft 2 in"): (122, "inch", "mm"),
    ("length_mm", "4 ft 2 1/2 in"): (50.5, "inch", "mm"),
    ("heat_limit_c", "248 °F"): (248, "degF", "degC"),
    ("heat_limit_c", "70 F"): (70, "degF", "degC"),
    ("warmth_c", "-4 °F"): (-4, "degF", "degC"),
    ("warmth_c", "15 °C"): (15, "degC", "degC"),
    ("bag_kg", "80 lbs"): (80, "lb", "kg"),
    ("bag_kg", "94 pounds"): (94, "lb", "kg"),
    ("yield_l", "0.6 cu ft"): (0.6, "ft**3", "liter"),
    ("water_l_per_bag", "3 qt"): (3, "quart", "liter"),
    ("strength_mpa", "5800 psi"): (5800, "psi", "megapascal"),
    ("minutes_per_batch", "4 min"): (4, "minute", "minute"),
    ("open_minutes", "1.5 hours"): (1.5, "hour", "minute"),
    ("hours", "45 min"): (45, "minute", "hour"),
    ("days", "2 days"): (2, "day", "day"),
    ("person_n", "220 lb"): (220, "lbf", "newton"),
}


@pytest.mark.parametrize(("key", "text"), MEASURED)
def test_a_measure_is_read_as_people_write_it(key: str, text: str) -> None:
    """Feet and inches, °F, pounds, quarts, cubic feet and minutes, to six decimals."""
    amount, unit, in_unit = MEASURED[key, text]
    expected = UNITS.Quantity(amount, unit).to(in_unit).magnitude
    assert float(measured(text, key) or 0) == pytest.approx(expected, abs=0.6e-6)


@pytest.mark.parametrize(
    ("key", "text"),
    [
        ("length_mm", "10 lb"),
        ("length_mm", "10"),
        ("bag_kg", "10 in"),
        ("heat_limit_c", "70"),
        ("heat_limit_c", "70 K"),
        ("hours_per_m2", "0.3 sq ft"),
        ("strength_mpa", "40 kg"),
    ],
)
def test_a_measure_of_another_kind_is_not_read(key: str, text: str) -> None:
    """Nor a number alone, which is no text."""
    assert measured(text, key) is None


@pytest.mark.parametrize(
    ("key", "text"),
    [
        ("price_per_kg", "0.19 per gal"),
        ("price_per_kg", "0.19"),
        ("price_per_kg", "per lb"),
        ("price_per_kg", "0.19 lb per lb"),
        ("price_per_sheet", "68 per bag"),
        ("coverage_m2_per_l", "370 per gal"),
        ("hour", "52 per day"),
    ],
)
def test_what_is_no_such_rate_is_not_read(key: str, text: str) -> None:
    """Another measure, none, or an amount whose own unit is missing or none of its kind."""
    assert rated(text, key) is None


def test_bags_are_weighed_as_they_are_sold() -> None:
    """94 lb of cement and 80 lb of bagged mix, by the pound of 0.45359237 kg."""
    assert measured("94 lb", "pack_kg") == Decimal("42.637683")
    assert measured("80 lb", "bag_kg") == Decimal("36.28739")


def test_the_american_workshop_is_priced_by_american_measures() -> None:
    """Its file names pounds, feet and gallons, and no price by the kilogram, litre or metre."""
    path = DEMONSTRATION.with_name("united_states.toml")
    workshop = load_profile(path)
    cement = next(c for c in workshop.recipe.constituents if c.role == "cement")
    assert float(cement.price_per_kg) == pytest.approx(0.19 / 0.45359237, abs=1e-6)
    lines = path.read_text(encoding="utf-8").splitlines()
    bare = [
        line
        for line in lines
        if (key := line.partition("=")[0].strip()).startswith(("price_per_", "consumables_per_"))
        and key.endswith(("_kg", "_l", "_m2"))
        and '"' not in line
    ]
    assert bare == []
