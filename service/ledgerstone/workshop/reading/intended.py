"""What was meant by a value that is written as at home, and how a profile has it.

In a German file ``52,00`` is 52.00, in an American one ``1,200`` is 1200 and ``3/5/2027`` the
fifth of March. An amount with another unit than its key's stays one: ``8 ft`` is no 8 mm.
"""

from __future__ import annotations

import re
from contextlib import suppress
from datetime import date
from typing import Final

from ledgerstone.message import Message
from ledgerstone.workshop.countries import RegionalSettings, usual_in
from ledgerstone.workshop.entry.typed import key_of, toml_of
from ledgerstone.workshop.keys.measures import canonical
from ledgerstone.workshop.records.members import Member

_DAY: Final = re.compile(r"(\d{1,2}) ?([./-]) ?(\d{1,2}) ?[./-] ?(\d{4}|\d{2})", re.ASCII)
_NO_YEAR: Final = re.compile(r"(\d{1,2}) ?([./-]) ?(\d{1,2})\.?", re.ASCII)
_COUNTED: Final = re.compile(r"([\d.,]*\d)\s*[^\W\d_]+")  # two hours, where a key has no unit
_LEAP_YEAR: Final = 2028  # it has every day that a year can have


def intended(value: str, member: Member, country: str) -> Message | None:
    """Return what to write in the place of a value; None where that cannot be told.

    Parameters
    ----------
    value
        What stands there, without quotation marks.
    country
        Of the file, which says how numbers and days are written; empty if it names none.
    """
    place = usual_in(country)
    if member.kind == "day":
        return _day(value, is_month_first=place.is_month_first)
    if member.kind in ("number", "whole", "money"):
        return _amount(value, member, place)
    return None


def _amount(value: str, member: Member, place: RegionalSettings) -> Message | None:
    """Say how a number is written: alone in its key's unit, else in quotation marks with its own.

    A number without a unit is in its key's, whatever the workshop works in.
    """
    counted = _COUNTED.fullmatch(value) if not member.unit else None
    number, text = _written(value, member, place)
    if number is None and counted is not None:
        number, _ = _written(counted[1], member, place)
    if number is not None:
        return _as_number(number, value)
    read = canonical(text, key_of(member))
    return Message("fault-write-text", text=text) if read is not None else None


def _written(value: str, member: Member, place: RegionalSettings) -> tuple[str | None, str]:
    """Return a value as TOML has it, the country's mark in it or the other: a number, or a text."""
    bare = RegionalSettings(place.country)
    marks = (place.decimal_mark, "." if place.decimal_mark == "," else ",")
    written = [toml_of(member, value, mark, bare) for mark in marks]
    number = next((toml for toml in written if not toml.startswith('"')), None)
    return number, written[0].strip('"')


def _as_number(number: str, value: str) -> Message | None:
    """Say a number as TOML has it; none where it stands so already."""
    if number == value:
        return None
    is_decimal = "." in number and re.fullmatch(r"[\d.,]+", value)
    return Message("fault-write-point" if is_decimal else "fault-write-number", number=number)


def _day(value: str, *, is_month_first: bool) -> Message | None:
    """Say how a day is written; one that can be only a month and a day is taken as these."""
    found = _DAY.fullmatch(value)
    if found is not None:
        year = int(found[4]) + (2000 if int(found[4]) < 100 else 0)
        day = _in_year(year, found, is_month_first=is_month_first)
        return None if day is None else Message("fault-write-day", day=day.isoformat())
    found = _NO_YEAR.fullmatch(value)
    if found is None:
        return None
    day = _in_year(_LEAP_YEAR, found, is_month_first=is_month_first)
    return None if day is None else Message("fault-write-year", day=f"{day:%m-%d}")


def _in_year(year: int, found: re.Match[str], *, is_month_first: bool) -> date | None:
    first, other = int(found[1]), int(found[3])
    orders = [(other, first), (first, other)]  # a month and a day
    if is_month_first and found[2] != ".":
        orders.reverse()
    for month, day in orders:
        with suppress(ValueError):
            return date(year, month, day)
    return None
