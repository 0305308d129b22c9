"""A profile's measures in the units that its workshop works in: as shown, and as written.

A number alone is in the unit of its key, ``length_mm``; a workshop that works in inches is shown
inches, and what it enters without a unit is written with its own: ``"96 in"``.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from contextlib import suppress
from decimal import ROUND_HALF_EVEN, Decimal
from fractions import Fraction
from typing import Any, Final

from ledgerstone.quantities import MM_PER
from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.keys.measures import canonical
from ledgerstone.workshop.keys.values import ValueRejected
from ledgerstone.workshop.records._conventions import Conventions, place_of
from ledgerstone.workshop.records.members import Member, members_of
from ledgerstone.workshop.records.schemas import read_value

_CHOSEN: Final = tuple(member.name for member in members_of(Conventions) if member.kind == "choice")
_LENGTHS: Final = {"mm": "in", "m": "ft", "m²": "ft²", "m³": "yd³"}
_DENSITIES: Final = ("density", "weighed", "fresh")  # by the cubic foot, a mix by the yard
# In cubic feet where other volumes are in gallons: as bags and mixers have them printed on.
_CUBIC_FEET: Final = ("yield_l", "working_l")
_BARE: Final = frozenset({"", "h", "d"})  # no unit is written of these before "per"
_SIXTEENTH_MM: Final = MM_PER["in"] / 16
_NEAR_MM: Final = Fraction(2, 100)
_MILLION: Final = 10**6
_DIGITS: Final = 4  # significant, of what is converted to be shown
_LEADING: Final = re.compile(r"[£$€]?\s*((?:\d+[ -])?\d+/\d+|-?\d+(?:\.\d+)?)(?![\d.])", re.ASCII)
_FRACTION: Final = re.compile(r"(?:\d+[ -])?\d+/[1-9]\d*", re.ASCII)


def working_place(raw: Mapping[str, Any]) -> RegionalSettings:
    """Return the units that the workshop of a parsed profile works in, as far as they read."""
    identity, conventions = raw.get("workshop"), raw.get("conventions")
    country = identity.get("country") if isinstance(identity, Mapping) else None
    units: dict[str, Any] = {}
    given = conventions if isinstance(conventions, Mapping) else {}
    for key in set(_CHOSEN) & given.keys():
        with suppress(ValueRejected):
            units[key] = read_value(Conventions, key, given[key])
    return place_of(country if isinstance(country, str) else "", Conventions(**units)).at_work()


def currency_of(raw: Mapping[str, Any]) -> str:
    """Return the code of the money that the workshop of a parsed profile takes, if it has one."""
    identity = raw.get("workshop")
    found = identity.get("currency") if isinstance(identity, Mapping) else None
    return found if isinstance(found, str) else ""


def local_unit(member: Member, place: RegionalSettings) -> str:
    """Return the unit in which a value is shown, and read where it is entered without one."""
    amount, slash, per = member.unit.partition("/")
    units = _units_of(member, place)
    if member.unit == "N/mm²" and place.strengths == "psi":
        return "psi"
    if per and per not in units.values() and units.get(per, per) == per:
        return member.unit
    return f"{units.get(amount, amount)}{slash}{units.get(per, per)}"


def unit_named(member: Member, place: RegionalSettings) -> str:
    """Return the same as it is called there: N/mm² where nobody says MPa, which is as much."""
    unit = local_unit(member, place)
    return "N/mm²" if unit == "MPa" and place.strengths == "N/mm2" else unit


def unit_shown(member: Member, place: RegionalSettings, currency: str) -> str:
    """Return the unit beside a value: of money with its currency, ``USD/lb``."""
    unit = unit_named(member, place)
    return f"{currency}{unit}" if member.kind == "money" and unit != "%" else unit


def is_fraction(text: str) -> bool:
    """Return whether a text is a fraction as inches are written: ``1 1/4``."""
    return _FRACTION.fullmatch(text.strip()) is not None


def with_unit(number: str, member: Member, place: RegionalSettings) -> str:
    """Return a number in a workshop's unit as a profile writes it: ``96 in``, ``0.19 per lb``."""
    amount, slash, per = local_unit(member, place).partition("/")
    if not slash:
        return f"{number} {amount}"
    return f"{number} per {per}" if amount in _BARE else f"{number} {amount} per {per}"


def number_shown(
    value: object, member: Member, place: RegionalSettings, rounding: str = ROUND_HALF_EVEN
) -> str | None:
    """Return a value as a number in the workshop's unit; None for one in another unit, or none.

    Parameters
    ----------
    rounding
        One of ``decimal``'s, of what is converted.
    """
    if isinstance(value, str):
        return _number_of(value, member, place)
    if isinstance(value, bool) or not isinstance(value, int | Decimal):
        return None
    if local_unit(member, place) == member.unit:
        return format(Decimal(value), "f")
    return _converted(Fraction(value), member, place, rounding)


def in_local_unit(member: Member, toml: str, place: RegionalSettings) -> str:
    """Return a number or a measure as TOML writes it, with the workshop's unit; else nothing."""
    bare = toml.strip('"')
    value = canonical(Decimal(bare) if toml == bare and _is_number(bare) else bare, member.name)
    number = None if value is None else number_shown(value, member, place)
    return "" if number is None else f"{number} {local_unit(member, place)}"


def _is_number(text: str) -> bool:
    return re.fullmatch(r"\d+(?:\.\d+)?", text) is not None


def _units_of(member: Member, place: RegionalSettings) -> dict[str, str]:
    """The workshop's unit for each of ours that it does not use."""
    units: dict[str, str] = {}
    if place.lengths == "in":
        units |= _LENGTHS
    if place.lengths == "in" and any(word in member.name for word in _DENSITIES):
        units["m³"] = "ft³"
    if place.masses == "lb":
        units |= {"kg": "lb", "N": "lb"}
    if place.volumes == "gal":
        units["l"] = "ft³" if member.name in _CUBIC_FEET else "gal"
    if place.temperatures == "F":
        units["°C"] = "°F"
    if place.strengths == "psi":
        units["MPa"] = "psi" if member.name.startswith("fck") else "ksi"
    return units


def _number_of(text: str, member: Member, place: RegionalSettings) -> str | None:
    """The number of a text, if it is in the workshop's unit."""
    found, read = _LEADING.match(text), canonical(text, member.name)
    if found is None or read is None:
        return None
    here = canonical(with_unit(found[1], member, place), member.name)
    return found[1] if here == read else None


def _converted(
    amount: Fraction, member: Member, place: RegionalSettings, rounding: str
) -> str | None:
    if local_unit(member, place) == "°F":
        return rounded(amount * Fraction(9, 5) + 32, rounding)
    if local_unit(member, place) == "in":
        return _inches(amount, rounding)
    a_million = canonical(with_unit(str(_MILLION), member, place), member.name)  # for its digits
    return rounded(amount * _MILLION / Fraction(a_million), rounding) if a_million else None


def _inches(mm: Fraction, rounding: str) -> str:
    """A length in inches: in sixteenths where it is so many, else with decimals."""
    count = round(mm / _SIXTEENTH_MM)
    near = _NEAR_MM if rounding == ROUND_HALF_EVEN else Fraction(0)
    if abs(mm - count * _SIXTEENTH_MM) > near:
        return rounded(mm / (16 * _SIXTEENTH_MM), rounding)
    whole, part = divmod(Fraction(count, 16), 1)
    return f"{whole} {part}" if whole and part else str(whole + part)


def rounded(amount: Fraction, rounding: str) -> str:
    """Return an amount to four significant digits, without an exponent."""
    exact = Decimal(amount.numerator) / Decimal(amount.denominator)
    if not exact:
        return "0"
    step = Decimal(1).scaleb(exact.adjusted() - _DIGITS + 1)
    return format(exact.quantize(step, rounding).normalize(), "f")
