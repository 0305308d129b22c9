"""What a maker types into a form, written as TOML: by the kind of its place, as people write it."""

from __future__ import annotations

import json
import re
import textwrap
from collections.abc import Sequence
from datetime import date
from typing import Final

from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.countries.public_holidays import part_named
from ledgerstone.workshop.entry.as_toml import LINE_WIDTH
from ledgerstone.workshop.entry.entries import entry_of, middle_taken, postcodes_of
from ledgerstone.workshop.entry.local_units import is_fraction, local_unit, unit_shown, with_unit
from ledgerstone.workshop.keys.measures import canonical, without_thing
from ledgerstone.workshop.keys.numerals import decimal_of, number_of
from ledgerstone.workshop.keys.steel_sizes import size_named
from ledgerstone.workshop.keys.warmth import WARMTH_KEY, months_of
from ledgerstone.workshop.records.members import Member, MemberKind

NUMBERS: Final[frozenset[MemberKind]] = frozenset({"number", "numbers", "whole", "wholes", "money"})
_LISTS: Final[frozenset[MemberKind]] = frozenset({"lines", "words", "numbers", "wholes", "choices"})
EMPTY: Final = '""'
_REGION: Final = "region"  # of a country, by its letters
_LARGEST_FACTOR: Final = 4
_WITH_UNIT: Final = re.compile(r"[£$€]?\s*([\d.,]*\d)(\D.*)", re.ASCII)
_FRACTION: Final = re.compile(r"((?:\d+[ -])?\d+/[1-9]\d*)(?!\d)(.*)", re.ASCII)
_NONE: Final = frozenset({"none", "no", "-", "–", "—", "n/a", "nein", "keine", "keiner", "keins"})


def is_none(member: Member, value: str) -> bool:
    """Return whether an entry says that there is none, at a place that may be left out."""
    return not member.needed and member.kind in NUMBERS and value.strip(" .").casefold() in _NONE


def is_list(member: Member) -> bool:
    """Return whether a place holds a list of values."""
    return member.kind in _LISTS


def toml_of(member: Member, value: str, mark: str, place: RegionalSettings) -> str:
    """Return one value as TOML writes it; what does not read as its kind is written as a text.

    Parameters
    ----------
    mark
        Between whole and tenth in the maker's language: ``.`` or ``,``.
    place
        The units that the workshop works in: those of a number without one.
    """
    if member.kind == "yes-no" and value in ("true", "false"):
        return value
    if member.kind == "day" and _is_day(value):
        return value
    if member.name == _REGION:
        return _text(part_named(value, place.country) or value)
    if member.kind not in NUMBERS or is_factor(value, member.name, mark):
        return _text(value)
    return _number_written(member, value, mark, place)


def taken_of(
    member: Member, typed: Sequence[str], mark: str, place: RegionalSettings, currency: str
) -> str:
    """Return what is taken of a span, with its unit, or the months of a year; else nothing."""
    unit = unit_shown(member, place, currency)
    if member.name == WARMTH_KEY:
        months = months_of(typed, mark, place.country)
        return "" if list(months) == list(typed) else _in_unit("; ".join(months), unit)
    if member.kind not in NUMBERS or len(typed) != 1:
        return ""
    taken = middle_taken(typed[0], member, mark)
    return "" if taken is None else _in_unit(taken, unit)


def _in_unit(taken: str, unit: str) -> str:
    return f"{taken} {unit}".rstrip() if taken[-1:].isdigit() and unit != "d" else taken


def _number_written(member: Member, value: str, mark: str, place: RegionalSettings) -> str:
    """A number as TOML writes it, with a unit as a text; one that does not read as it was typed."""
    named = size_named(value, member.name, local_unit(member, place))
    entry = without_thing(entry_of(named, member, mark), member.name)
    number = number_of(entry, mark)
    if local_unit(member, place) != member.unit and (number or is_fraction(entry)):
        return _text(with_unit(number or entry.strip(), member, place))
    if number is not None:
        return number
    key = key_of(member)
    if member.unit != "mm" and canonical(entry, key) is None:  # a length is no part of a mm
        entry = _without_fraction(entry, mark)
    read = _measured(entry, mark)
    if number_of(read, ".") is not None:
        return read
    return _text(value if canonical(read, key) is None else read)


def _without_fraction(entry: str, mark: str) -> str:
    """An entry that begins with a fraction, with a decimal: ``0.5 h`` of ``1/2 h``."""
    found = _FRACTION.fullmatch(entry)
    return entry if found is None else f"{decimal_of(found[1], mark)}{found[2]}"


def key_of(member: Member) -> str:
    """Return the key by which a text is read: a day's or an hour's by its unit alone."""
    return {"d": "days", "h": "hours"}.get(member.unit, member.name)


def is_factor(value: str, key: str, mark: str) -> bool:
    """Return whether a markup was entered that may be a factor: 1.35, by which 35 % is meant."""
    number = number_of(value, mark) if key == "margin_percent" and "%" not in value else None
    return number is not None and 1 < float(number) < _LARGEST_FACTOR


def _measured(value: str, mark: str) -> str:
    """A number with its unit, the number as TOML has it; any other text as it is."""
    found = _WITH_UNIT.fullmatch(value)
    if found is None:
        return value
    number = number_of(found[1], mark)
    return value if number is None else f"{number}{found[2]}"


def toml_list_of(member: Member, values: Sequence[str], mark: str, place: RegionalSettings) -> str:
    """Return a list of values in TOML, wrapped if it is long."""
    if member.name == "postcodes":
        values = [code for value in values for code in postcodes_of(value)]
    elif member.name == WARMTH_KEY:
        values = months_of(values, mark, place.country)
    items = [toml_of(member, value, mark, place) for value in values]
    line = f"[{', '.join(items)}]"
    if len(line) + len(member.name) + 3 <= LINE_WIDTH:
        return line
    if member.kind == "lines":
        return "\n".join(["[", *(f"  {item}," for item in items), "]"])
    joined = ", ".join(item.replace(" ", "\0") for item in items) + ","
    inside = textwrap.wrap(joined, LINE_WIDTH - 2, break_long_words=False, break_on_hyphens=False)
    return "\n".join(["[", *(f"  {row}".replace("\0", " ") for row in inside), "]"])


def _is_day(value: str) -> bool:
    try:
        return date.fromisoformat(value).isoformat() == value
    except ValueError:
        return False


def _text(value: str) -> str:
    return json.dumps(value, ensure_ascii=False).replace("\x7f", "\\u007f")
