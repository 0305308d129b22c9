"""A profile's values in the units of its workshop: shown as numbers, and written with their unit.

Factors: NIST SP 811 (2008) appendix B.8 and B.9; the inch and the pound are exact there.
"""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.entry.local_units import (
    local_unit,
    number_shown,
    with_unit,
    working_place,
)
from ledgerstone.workshop.keys.measures import canonical
from ledgerstone.workshop.records.members import Member, member_at

US, GERMANY = usual_in("US").at_work(), usual_in("DE").at_work()
PLACES = {
    ("table", "length_mm"): "in",
    ("recipe", "fck_mpa"): "psi",
    ("steel", "yield_mpa"): "ksi",
    ("recipe", "constituents", 0, "price_per_kg"): "/lb",
    ("recipe", "constituents", 0, "kg_per_m3"): "lb/yd³",
    ("recipe", "constituents", 0, "density_kg_per_m3"): "lb/ft³",
    ("sealers", 0, "coverage_m2_per_l"): "ft²/gal",
    ("sealers", 0, "hours_per_m2_coat"): "h/ft²",
    ("hours", "per_mould", "side_per_m"): "h/ft",
    ("loads", "even_n_per_m2"): "lb/ft²",
    ("sealers", 0, "heat_limit_c"): "°F",
    ("handling", "mould_kg_per_m2"): "lb/ft²",
    ("palette", 0, "extra_per_m3"): "/yd³",
    ("sample", "litres"): "gal",
}


def at(*path: str | int) -> Member:
    """A place of a profile."""
    member = member_at(path)
    assert member is not None
    return member


@pytest.mark.parametrize(("path", "unit"), PLACES.items())
def test_each_measure_has_a_unit_of_the_workshop(path: tuple[str | int, ...], unit: str) -> None:
    """In the United States its customary one, in Germany the one of its key."""
    assert local_unit(at(*path), US) == unit
    assert local_unit(at(*path), GERMANY) == at(*path).unit


@pytest.mark.parametrize(
    ("path", "value", "shown"),
    [
        (("table", "length_mm"), Decimal(3048), "120"),
        (("shaping", "thinnest_mm"), Decimal("31.75"), "1 1/4"),
        (("shaping", "thinnest_mm"), "1 1/4 in", "1 1/4"),
        (("shaping", "thinnest_mm"), "3 cm", None),
        (("shaping", "inside_radius_mm"), Decimal("9.525"), "3/8"),
        (("shaping", "strips", 0, "stops_mm"), Decimal(60), "2.362"),
        (("lifting", "tail_lift_kg"), Decimal("907.18474"), "2000"),
        (("recipe", "fck_mpa"), Decimal(40), "5802"),
        (("recipe", "constituents", 0, "kg_per_m3"), Decimal(480), "809.1"),
        (("recipe", "constituents", 0, "density_kg_per_m3"), Decimal(3150), "196.6"),
        (("recipe", "constituents", 0, "price_per_kg"), "0.19 per lb", "0.19"),
        (("sealers", 0, "coverage_m2_per_l"), Decimal(10), "407.5"),
        (("sealers", 0, "heat_limit_c"), Decimal(120), "248"),
        (("loads", "even_n_per_m2"), Decimal(1500), "31.33"),
    ],
)
def test_a_value_is_shown_as_a_number_of_that_unit(
    path: tuple[str | int, ...], value: object, shown: str | None
) -> None:
    """Inches in sixteenths where it is so many; what is written in another unit stays a text.

    480 kg/m³ × 1.685 555 (lb/yd³) = 809.1; 3150 kg/m³ / 16.018 46 = 196.6 lb/ft³;
    10 m²/l × 10.763 91 × 3.785 412 = 407.5 ft²/gal; 1500 Pa / 47.880 26 = 31.33 lbf/ft².
    """
    assert number_shown(value, at(*path), US) == shown


@given(
    path=st.sampled_from([path for path, unit in PLACES.items() if unit != "°F"]),
    amount=st.decimals("0.001", "4000", places=3),
)
def test_what_is_shown_is_written_as_it_was(path: tuple[str | int, ...], amount: Decimal) -> None:
    """A number that is shown, written again with its unit, is the value within its four digits."""
    member = at(*path)
    number = number_shown(amount, member, US)
    assert number is not None
    again = canonical(with_unit(number, member, US), member.name)
    assert again is not None
    nearest = Decimal("0.02") if local_unit(member, US) == "in" else Decimal(0)
    assert abs(again - amount) <= max(nearest, Decimal("0.0006") * amount, Decimal("0.000001"))


def test_a_price_may_be_for_a_bag() -> None:
    """As on the invoice: 17.86 for 94 lb is 0.19 a pound, 0.418 878 a kilogram."""
    assert canonical("$17.86 per 94 pounds", "price_per_kg") == Decimal("0.418878")
    assert canonical("17.86/94 lb", "price_per_kg") == Decimal("0.418878")
    assert canonical("9.50 per 25 kilos", "price_per_kg") == Decimal("0.38")
    assert canonical("9.50 per 0 kg", "price_per_kg") is None


def test_the_units_are_those_of_the_file() -> None:
    """Of the country, or of what [conventions] says, as far as that reads."""
    assert working_place({"workshop": {"country": "US"}}).lengths == "in"
    ours = {"workshop": {"country": "US"}, "conventions": {"work_lengths": "mm", "masses": "stone"}}
    assert (working_place(ours).lengths, working_place(ours).masses) == ("mm", "lb")
    assert working_place({"workshop": 3}).lengths == "mm"
