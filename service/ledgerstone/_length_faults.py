"""Why a typed length was not read, as a message that says how to write it.

Every one repeats a text only where it is short enough to have been read, shows anything in it
that does not print as a dot, and ends by saying what would put it right.
"""

import re
import unicodedata
from collections.abc import Callable, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from ledgerstone.message import Listed, Message, Spelled, Spoken

__all__ = [
    "CANONICAL",
    "Marks",
    "inches_past_a_foot",
    "mixed_units",
    "more_than_one",
    "not_a_length",
    "odd_fraction",
    "over_bound",
    "too_long",
    "why_unread",
]

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


def not_a_length() -> Message:
    """State what a length is, to who sent something else."""
    return Message("length-is-text-or-number")


@dataclass(frozen=True, slots=True)
class Marks:
    """The decimal and thousands separators of typed numbers.

    Attributes
    ----------
    point
        Between whole and tenth.
    groups
        Each mark that is set between thousands there.
    """

    point: str = "."
    groups: tuple[str, ...] = ()


CANONICAL: Final = Marks()


def why_unread(typed: str, tidy: str, units: AbstractSet[str]) -> Message:
    """Return why a text is no length; ``tidy`` is ``typed`` with its separators normalised."""
    shown = _shown(typed)
    for fault in _FAULTS:
        why = fault(shown, tidy, units)
        if why is not None:
            return why
    return Message("length-unread", typed=shown)


def too_long(count: int, longest: int) -> Message:
    """State that the text has too many characters, repeating none of them."""
    return Message("length-too-long", count=count, longest=longest)


def over_bound(bound: Spoken) -> Message:
    """State that the length passes what any slab could be."""
    return Message("length-over-bound", bound=bound)


def odd_fraction(tidy: str) -> Message:
    """State which fractions are read."""
    return Message("length-odd-fraction", typed=_shown(tidy))


def more_than_one(found: re.Match[str]) -> Message:
    """State every way in which a fraction of one or more could have been meant."""
    start = found.start("over") if found["whole"] is None else found.start("whole")
    head, tail = found.string[:start], found.string[found.end("under") :]
    readings = [f"{head}{mixed}{tail}" for mixed in _mixed_readings(found)]
    shown = _shown(found.string)
    if len(readings) == 1:
        return Message("length-fraction-over-one", typed=shown, meant=_shown(readings[0]))
    return Message("length-several-fractions", typed=shown, readings=_either(readings))


def mixed_units(tidy: str) -> Message:
    """State that one length has one unit, feet and inches apart."""
    return Message("length-mixed-units", typed=_shown(tidy))


def inches_past_a_foot(tidy: str) -> Message:
    """State that inches after feet stay under twelve."""
    return Message("length-inches-past-a-foot", typed=_shown(tidy))


def _shown(text: str) -> str:
    """Return what was typed in characters that print."""
    return "".join(
        " " if unicodedata.category(c) == "Zs" else c if c.isprintable() else "·" for c in text
    )


def _either(readings: Sequence[str | Spelled]) -> Listed:
    return Listed(tuple(readings), joined="or")


def _mixed_readings(found: re.Match[str]) -> list[str]:
    """Return "5 3/8" and "6 5/8" for "53/8": a blank left out, or the fraction as it stands."""
    over, under = found["over"], int(found["under"])
    splits = [
        f"{over[:i]} {over[i:]}/{under}"
        for i in range(1, len(over))
        if found["whole"] is None and over[i] != "0" and int(over[i:]) < under
    ]
    whole, rest = divmod(int(over), under)
    whole += int(found["whole"] or 0)
    return [*splits, f"{whole} {rest}/{under}" if rest else f"{whole}"]


def _empty(_shown_text: str, tidy: str, _units: AbstractSet[str]) -> Message | None:
    return None if tidy else Message("length-empty")


def _foreign_digits(shown: str, tidy: str, _units: AbstractSet[str]) -> Message | None:
    foreign = [c for c in tidy if c.isnumeric() and not c.isascii()]
    if not foreign:
        return None
    if unicodedata.numeric(foreign[0]) % 1:
        return odd_fraction(shown)
    return Message("length-foreign-digits", typed=shown)


def _no_unit(shown: str, tidy: str, _units: AbstractSet[str]) -> Message | None:
    if not _BARE.match(tidy):
        return None
    if "/" in tidy:
        return Message("length-fraction-without-unit", typed=shown, number=tidy)
    return Message("length-without-unit", typed=shown, number=tidy)


def _no_inch_mark(shown: str, tidy: str, _units: AbstractSet[str]) -> Message | None:
    if not _BARE_INCHES.match(tidy):
        return None
    return Message("length-without-inch-mark", typed=shown, number=tidy)


def _two_readings(shown: str, tidy: str, units: AbstractSet[str]) -> Message | None:
    """Show both readings of a comma, a blank or a second point between digits."""
    found = _GROUPED.match(tidy)
    if found is None or found[3].lower() not in {*units, ""}:
        return None
    sign, digits, unit = found.groups()
    spelled = [Spelled(f"{sign}{number} {unit}".strip()) for number in _readings(digits)]
    readings = _either(spelled)
    if not unit:
        return Message("length-two-readings-without-unit", typed=shown, readings=readings)
    if re.search(r"\A\d*,(?!\d{3}\Z)\d+\Z", digits, re.ASCII):
        return Message("length-with-comma", typed=shown, readings=readings, meant=spelled[0])
    return Message("length-two-readings", typed=shown, readings=readings)


def _readings(digits: str) -> list[str]:
    """Return two numbers for digits in groups: with a decimal point, and with another or none."""
    groups = re.split("[ .,]+", digits)
    joined = "".join(groups)
    marks = re.findall("[ .,]+", digits)
    last = _trimmed("".join(groups[:-1]), groups[-1])
    alike = all(mark == other for mark, other in pairwise(marks))
    return [last, joined if alike else _trimmed(groups[0], "".join(groups[1:]))]


def _trimmed(whole: str, decimals: str) -> str:
    return f"{whole or 0}.{decimals}".rstrip("0").rstrip(".")


def _exponent(shown: str, tidy: str, _units: AbstractSet[str]) -> Message | None:
    return Message("length-with-exponent", typed=shown) if _EXPONENT.search(tidy) else None


def _endless(shown: str, tidy: str, _units: AbstractSet[str]) -> Message | None:
    return Message("length-without-number", typed=shown) if _ENDLESS.match(tidy) else None


def _a_sum(shown: str, tidy: str, _units: AbstractSet[str]) -> Message | None:
    return Message("length-as-sum", typed=shown) if _SUM.search(tidy) else None


def _strange_unit(shown: str, tidy: str, units: AbstractSet[str]) -> Message | None:
    found = _NUMBER_AND_WORD.match(tidy)
    if found is None or found[1].lower() in units:
        return None
    return Message("length-strange-unit", typed=shown)


def _several_units(shown: str, tidy: str, _units: AbstractSet[str]) -> Message | None:
    return mixed_units(shown) if _TWO_UNITS.search(tidy) else None


_FAULTS: Final[tuple[Callable[[str, str, AbstractSet[str]], Message | None], ...]] = (
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
