"""Why a typed length was not read, in a sentence that says how to write it.

Every sentence repeats a text only where it is short enough to have been read, shows anything in
it that does not print as a dot, and ends by saying what would put it right.
"""

import re
import unicodedata
from collections.abc import Callable
from collections.abc import Set as AbstractSet
from itertools import pairwise
from typing import Final

__all__ = [
    "NOT_A_LENGTH",
    "inches_past_a_foot",
    "mixed_units",
    "more_than_one",
    "odd_fraction",
    "over_bound",
    "too_long",
    "why_unread",
]

_LIKE: Final = "like 1450 mm, 1.45 m or 4 ft 9 in"

NOT_A_LENGTH: Final = (
    "Enter a length as a number of millimetres, like 1450, or as text with its unit, like 1.45 m."
)

_GROUPED: Final = re.compile(r"(-?) ?(\d*(?:[ .,]+\d+)+) ?([^\d., ]*)\Z", re.ASCII)
_BARE: Final = re.compile(r"-? ?(?:\d+(?:\.\d+)?|\.\d+|(?:\d+[ -])?\d+/\d+)\Z", re.ASCII)
_BARE_INCHES: Final = re.compile(
    r"-? ?\d+ ?(?:ft\.?|foot|feet|') ?-? ?[\d./ -]*\d\Z", re.ASCII | re.IGNORECASE
)
_EXPONENT: Final = re.compile(r"\d\.?e[+-]?\d", re.ASCII | re.IGNORECASE)
_ENDLESS: Final = re.compile(r"[+-]? ?(?:nan|inf|infinity)\b", re.ASCII | re.IGNORECASE)
_SUM: Final = re.compile(r"[*^()=×÷]|.\+|//")
_NUMBER_AND_WORD: Final = re.compile(r"-? ?[\d./ -]*\d ?([^\W\d_]+\.?)\Z")
_TWO_UNITS: Final = re.compile(
    r"\d ?(?:[a-z]+|'|\")\.?,? ?-? ?\d[\d./ ]*(?:[a-z]+|'|\")\.?\Z", re.IGNORECASE
)


def why_unread(typed: str, tidy: str, units: AbstractSet[str]) -> str:
    """Say why the text is no length: ``typed`` as it came, ``tidy`` with its marks made plain."""
    shown = _shown(typed)
    for fault in _FAULTS:
        says = fault(shown, tidy, units)
        if says is not None:
            return says
    return f"“{shown}” does not read as a length. Write a number and its unit, {_LIKE}."


def too_long(count: int, longest: int) -> str:
    """Say that the text has too many characters, repeating none of them."""
    return f"This has {count} characters; a length has at most {longest}. Write it {_LIKE}."


def over_bound(bound_m: int) -> str:
    """Say that the length passes what any slab could be."""
    return f"This is more than {bound_m} m. Check the number and its unit."


def odd_fraction(tidy: str) -> str:
    """Say which fractions are read."""
    return (
        f"The fraction in {_shown(tidy)} needs 2, 4, 8, 16, 32 or 64 below the line. "
        "Write it so, or as a decimal."
    )


def more_than_one(found: re.Match[str]) -> str:
    """Say every way in which a fraction of one or more could have been meant."""
    start = found.start("over") if found["whole"] is None else found.start("whole")
    head, tail = found.string[:start], found.string[found.end("under") :]
    readings = [f"{head}{mixed}{tail}" for mixed in _mixed_readings(found)]
    shown = _shown(found.string)
    if len(readings) == 1:
        return f"The fraction in {shown} comes to one or more. Write it as {_shown(readings[0])}."
    return f"{shown} could be {_listed(readings)}. Write the one you mean, with a space."


def mixed_units(tidy: str) -> str:
    """Say that one length has one unit, feet and inches apart."""
    return f"{_shown(tidy)} mixes units. Write it in one of them, {_LIKE}."


def inches_past_a_foot(tidy: str) -> str:
    """Say that inches after feet stay under twelve."""
    return f"In {_shown(tidy)} the inches make another foot. Write them under 12, like 4 ft 9 in."


def _shown(text: str) -> str:
    """Give what was typed in characters that print."""
    return "".join(
        " " if unicodedata.category(c) == "Zs" else c if c.isprintable() else "·" for c in text
    )


def _listed(readings: list[str]) -> str:
    return f"{', '.join(readings[:-1])} or {readings[-1]}"


def _mixed_readings(found: re.Match[str]) -> list[str]:
    """Give "5 3/8" and "6 5/8" for "53/8": a blank left out, or the fraction as it stands."""
    over, under = found["over"], int(found["under"])
    splits = [
        f"{over[:i]} {over[i:]}/{under}"
        for i in range(1, len(over))
        if found["whole"] is None and over[i] != "0" and int(over[i:]) < under
    ]
    whole, rest = divmod(int(over), under)
    whole += int(found["whole"] or 0)
    return [*splits, f"{whole} {rest}/{under}" if rest else f"{whole}"]


def _empty(_shown_text: str, tidy: str, _units: AbstractSet[str]) -> str | None:
    return None if tidy else f"Enter a length with its unit, {_LIKE}."


def _foreign_digits(shown: str, tidy: str, _units: AbstractSet[str]) -> str | None:
    foreign = [c for c in tidy if c.isnumeric() and not c.isascii()]
    if not foreign:
        return None
    if unicodedata.numeric(foreign[0]) % 1:
        return odd_fraction(shown)
    return f"Write the number in {shown} with the digits 0 to 9, {_LIKE}."


def _no_unit(shown: str, tidy: str, _units: AbstractSet[str]) -> str | None:
    if not _BARE.match(tidy):
        return None
    if "/" in tidy:
        return f"{shown} has no unit. Write {tidy} in if it is inches."
    return f"{shown} has no unit. Write {tidy} mm, {tidy} cm or {tidy} in, whichever you mean."


def _no_inch_mark(shown: str, tidy: str, _units: AbstractSet[str]) -> str | None:
    return f"{shown} ends without its unit. Write {tidy} in." if _BARE_INCHES.match(tidy) else None


def _two_readings(shown: str, tidy: str, units: AbstractSet[str]) -> str | None:
    """Show both readings of a comma, a blank or a second point between digits."""
    found = _GROUPED.match(tidy)
    if found is None or found[3].lower() not in {*units, ""}:
        return None
    sign, digits, unit = found.groups()
    readings = [f"{sign}{number} {unit}".strip() for number in _readings(digits)]
    says = f"{shown} could be {_listed(readings)}."
    if not unit:
        return f"{says} Write the one you mean with its unit, {_LIKE}."
    if re.search(r"\A\d*,(?!\d{3}\Z)\d+\Z", digits, re.ASCII):
        return f"{says} Write it with a point: {readings[0]}."
    return f"{says} Write the one you mean, with nothing between the digits but a decimal point."


def _readings(digits: str) -> list[str]:
    """Give two numbers for digits in groups: with a decimal point, and with another or none."""
    groups = re.split("[ .,]+", digits)
    joined = "".join(groups)
    marks = re.findall("[ .,]+", digits)
    last = _trimmed("".join(groups[:-1]), groups[-1])
    alike = all(one == other for one, other in pairwise(marks))
    return [last, joined if alike else _trimmed(groups[0], "".join(groups[1:]))]


def _trimmed(whole: str, decimals: str) -> str:
    return f"{whole or 0}.{decimals}".rstrip("0").rstrip(".")


def _exponent(shown: str, tidy: str, _units: AbstractSet[str]) -> str | None:
    return f"Write the number in {shown} out in full, {_LIKE}." if _EXPONENT.search(tidy) else None


def _endless(shown: str, tidy: str, _units: AbstractSet[str]) -> str | None:
    return f"{shown} has no number in it. Write it {_LIKE}." if _ENDLESS.match(tidy) else None


def _a_sum(shown: str, tidy: str, _units: AbstractSet[str]) -> str | None:
    return f"{shown} reads as a sum. Write its answer, {_LIKE}." if _SUM.search(tidy) else None


def _strange_unit(shown: str, tidy: str, units: AbstractSet[str]) -> str | None:
    found = _NUMBER_AND_WORD.match(tidy)
    if found is None or found[1].lower() in units:
        return None
    return f"{shown} is in a unit that is not read here. Write it in mm, cm, m, in or ft."


def _several_units(shown: str, tidy: str, _units: AbstractSet[str]) -> str | None:
    return mixed_units(shown) if _TWO_UNITS.search(tidy) else None


_FAULTS: Final[tuple[Callable[[str, str, AbstractSet[str]], str | None], ...]] = (
    _empty,
    _foreign_digits,
    _no_unit,
    _no_inch_mark,
    _two_readings,
    _endless,
    _exponent,
    _a_sum,
    _several_units,
    _strange_unit,
)
