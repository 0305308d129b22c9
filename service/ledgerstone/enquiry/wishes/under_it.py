"""The cupboards under a slab by their widths: "on three 600 base units", "for a 36" cabinet"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import islice
from typing import Final

from ledgerstone.enquiry.text.size_words import UNITS
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.words.lexicon import NUMBERS
from ledgerstone.quantities import Length, UnitName

_UNITS: Final = re.compile(
    r"\b(?:units?|cupboards?|cabinets?|carcass(?:es)?|(?:sink|drawer|base) ?bases?|bases"
    r"|(?:unter|küchen|spülen)?schr[aä]nken?|unterschrank)\b",
    re.IGNORECASE,
)
# What hangs on a wall or stands as high as a room carries no slab.
_HANGING: Final = re.compile(
    r"\b(?:wall|upper|overhead|tall|hanging|old|existing)\s(?:kitchen\s)?(?:units?|cupboards?"
    r"|cabinets?)\b|\b(?:hänge|hoch)schr[aä]nke?\b",
    re.IGNORECASE,
)
# Whoever only has cupboards does not say that the slab lies on them.
_HAS: Final = re.compile(
    r"\b(?:kitchen|room|house|we|i|they|he|she|küche|wir|ich) (?:\w+ )?(?:has|have|had|got|hat"
    r"|haben)\b",
    re.IGNORECASE,
)
_CLAUSE: Final = re.compile(r"(?<!\bno)\.(?=\s|$)|[;?!]|\n[ \t]{0,40}\n")
_NUMBER: Final = re.compile(
    r"(?<![\d.,£$€'’/])(?P<w>\d{2,4}(?:[.,]5)?)(?![\d/])\s?"
    r"(?P<u>mm\b|cm\b|inch(?:es)?\b|in\b|[\"”″])?(?P<t>s\b|er\b)?",
    re.IGNORECASE,
)
_TIMES_BEFORE: Final = re.compile(r"(?:\d\d|[m\"”″]|\bin)\s?(?:x|×|by|mal)\s?$", re.IGNORECASE)
_NO_WIDTH: Final = re.compile(
    r"\s?(?:(?:x|×|by|mal)\s?\d|(?:mm|cm)?\s?(?:deep|long|thick|high|tall|from|apart|tief|hoch|lang"
    r"|dick|stark|stärke|worktop|counter|top\b|1/2|½))",
    re.IGNORECASE,
)
_COUNT: Final = re.compile(r"\b(?P<n>\d|[a-zäöü]{2,7})\s?(?:x|×|no\.?|off|mal)?\s?$", re.IGNORECASE)
_COUNTED: Final = re.compile(
    r"\b(?P<n>\d|[a-zäöü]{2,7})\s(?:(?:base|kitchen|floor|sink|drawer)\s)?(?:units|cupboards"
    r"|cabinets|carcasses|bases|(?:unter|küchen)?schränken?)\b(?P<then>[^.;\d]{0,24})$",
    re.IGNORECASE,
)
_EACH: Final = re.compile(r"\b(?:each|je|jeweils|à|wide|breit|at|of|all)\b", re.IGNORECASE)
_ONE: Final = re.compile(r"\b(?:first|second|one|einer?|erste|zweite)\b", re.IGNORECASE)
_SIDES: Final = re.compile(
    r"[^,.;\d]{0,24}\b(?:either|each|both)\s(?:sides?|ends?)\b", re.IGNORECASE
)
_LOOK: Final = 48  # characters before a number in which its count stands
_LONGEST_ROW: Final = 12
_MOST: Final = 24  # numbers of a clause that tells of a row
_NARROWEST_MM: Final = 140.0  # of base units; common practice, no source
_WIDEST_MM: Final = 1300.0
# A row that carries a slab is about as long as it: end panels and overhangs make the rest.
_LEAST_SHARE: Final = 0.85
_MOST_SHARE: Final = 1.02
_LONGER_MM: Final = 51.0  # a slab than the one unit that it is for: an inch at each end
_ONE_NOUN: Final = (
    r"(?:(?:base|bathroom|bath|vanity|sink|single|kitchen|floor|existing|wide|breite[nmrs]?)[ -])*"
    r"(?:cabinet|unit|cupboard|carcass|vanity(?! (?:tops?|units?|cabinets?)\b)"
    r"|(?:wasch(?:tisch|becken)?)?(?:unter)?schrank)\b(?!s)"
)
_WIDE: Final = r"(?P<w>\d{2,4}(?:[.,]\d)?)[ -]?(?P<u>mm\b|cm\b|inch\b|in\b\.?|[\"”″]|er\b)"
_ON_ONE: Final = re.compile(
    r"\b(?:for|on|over|fits?|onto|auf|für|über) (?:top of )?(?:an? |our |my |the |his |her |one "
    rf"|(?:m?ein|unser|de)(?:e[nm]?|m|n)? )?{_WIDE}[ -]?{_ONE_NOUN}",
    re.IGNORECASE,
)
_BARE: Final[tuple[UnitName, ...]] = ("mm", "cm", "in")


@dataclass(frozen=True, slots=True)
class UnitRow:
    """Widths of cupboards as they are told, in that order, and where they are told."""

    widths: tuple[Length, ...]
    span: TextSpan


@dataclass(frozen=True, slots=True)
class OneUnder:
    """The width of the one unit that a slab is for, and where it is told."""

    width: Length
    span: TextSpan


@dataclass(frozen=True, slots=True)
class _Width:
    """A number that may be a cupboard's width, of so many; a pair stands to both sides."""

    amount: Fraction
    unit: UnitName | None
    count: int
    is_pair: bool
    span: TextSpan


def unit_row(text: str, spans: Sequence[TextSpan], length_mm: float) -> UnitRow | None:
    """Return the cupboards that a slab of a length is said to lie on, where they are as long.

    Numbers without a unit are in whichever one makes the row as long as the slab.
    """
    for start, end in spans:
        for low, high in _clauses(text, start, end):
            others = _HANGING.search(text, low, high) or _HAS.search(text, low, high)
            is_named = _UNITS.search(text, low, high) and not others
            row = (
                _row([*islice(_widths(text, low, high), _MOST + 1)], length_mm)
                if is_named
                else None
            )
            if row is not None:
                return row
    return None


def one_under(text: str, spans: Sequence[TextSpan], length_mm: float) -> OneUnder | None:
    """Return the one unit that a slab of a length is told to be for, an inch longer at each end.

    None where two are told, or one that is much shorter or longer than the slab.
    """
    found = [one for start, end in spans for one in _ON_ONE.finditer(text, start, end)]
    widths = {_one_width(one): one.span() for one in reversed(found)}
    if len(widths) != 1:
        return None
    ((width, span),) = widths.items()
    return OneUnder(width, span) if 0 <= length_mm - width.mm <= _LONGER_MM else None


def _one_width(found: re.Match[str]) -> Length:
    unit: UnitName = UNITS.get(found["u"].lower().rstrip("."), "cm")  # a German 90er is 90 cm
    return Length.of(Fraction(found["w"].replace(",", ".")), unit)


def _clauses(text: str, start: int, end: int) -> Iterator[TextSpan]:
    low = start
    for found in _CLAUSE.finditer(text, start, end):
        yield low, found.start()
        low = found.end()
    yield low, end


def _widths(text: str, low: int, high: int) -> Iterator[_Width]:
    """Yield the numbers of a clause that are no slab's size, each with how many are so wide."""
    for found in _NUMBER.finditer(text, low, high):
        before = text[max(low, found.start() - _LOOK) : found.start()]
        after = text[found.end() : min(high, found.end() + _LOOK)]
        if _NO_WIDTH.match(after) or _TIMES_BEFORE.search(before[-6:]):
            continue
        unit = UNITS.get((found["u"] or found["t"] or "").lower())
        amount = Fraction(found["w"].replace(",", "."))
        sides = bool(_SIDES.match(after))
        yield _Width(amount, unit, 1 if sides else _count(before, after), sides, found.span())


def _count(before: str, after: str) -> int:
    """Return how many cupboards are so wide: "two 800s", "3 units, 600 each", "the first 600"."""
    near, counted = _COUNT.search(before[-12:]), _COUNTED.search(before)
    number = _number(near["n"]) if near is not None else 0
    then = counted["then"] if counted is not None else ""
    if not number and counted and _EACH.search(f"{then} {after[:8]}") and not _ONE.search(then):
        number = _number(counted["n"])
    return number or 1


def _number(word: str) -> int:
    if word.isdigit():
        return int(word)
    return 0 if word.lower() in ("a", "an") else int(NUMBERS.get(word.lower(), 0))


def _row(widths: Sequence[_Width], length_mm: float) -> UnitRow | None:
    """Return the longest run of widths that is about as long as the slab."""
    if len(widths) > _MOST:
        return None
    runs = (
        widths[low : low + count]
        for count in range(min(len(widths), _LONGEST_ROW), 0, -1)
        for low in range(len(widths) - count + 1)
    )
    for run in runs:
        told = tuple(dict.fromkeys(one.unit for one in run if one.unit is not None))
        for bare in told or _BARE:
            lengths = _in_order(run, bare) if bare is not None else []
            if _carries([one.mm for one in lengths], length_mm):
                return UnitRow(tuple(lengths), (run[0].span[0], run[-1].span[1]))
    return None


def _in_order(run: Sequence[_Width], bare: UnitName) -> list[Length]:
    """Return each cupboard's width; of what stands to both sides one at each end."""
    row: list[Length] = []
    for one in run:
        width = Length.of(one.amount, one.unit or bare)
        row = [width, *row, width] if one.is_pair else [*row, *[width] * one.count]
    return row


def _carries(widths: Sequence[float], length_mm: float) -> bool:
    is_row = 1 < len(widths) <= _LONGEST_ROW
    is_row = is_row and all(_NARROWEST_MM <= width <= _WIDEST_MM for width in widths)
    return is_row and _LEAST_SHARE * length_mm <= sum(widths) <= _MOST_SHARE * length_mm
