"""The cupboards under a slab by their widths: "on three 600 base units", "two 800s and a 500"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.words.lexicon import NUMBERS

_COUNT: Final = r"(?:(?P<n>\d|[a-zäöü]{1,7})\s?(?:x|×|no\.?|off|mal)?\s)?"
_WIDTH: Final = r"(?P<w>\d{2,4})\s?(?P<u>mm|cm)?(?:s|er)?"
_ONE: Final = re.compile(_COUNT + _WIDTH, re.IGNORECASE)
_PART: Final = r"(?:(?:\d|[a-zäöü]{1,7})\s?(?:x|×|no\.?|off|mal)?\s)?\d{2,4}\s?(?:mm|cm)?(?:s|er)?"
_ON: Final = re.compile(
    r"\b(?:on|over|across|onto|auf|über)\s(?:top of\s)?(?:my\s|our\s|the\s)?"
    rf"(?P<row>{_PART}(?:(?:,\s?|\s?\+\s?|\s(?:and|und|plus|&)\s){_PART}){{0,7}})"
    r"\s?(?:wide\s)?(?:base\s|kitchen\s|floor\s)?(?:units?|cupboards?|cabinets?|carcass(?:es)?"
    r"|(?:unter|küchen)?schränken?)\b",
    re.IGNORECASE,
)
_EACH: Final = re.compile(
    r"\b(?:on|over|across|onto|auf|über)\s(?:top of\s)?(?:my\s|our\s|the\s)?"
    r"(?P<n>\d|[a-zäöü]{1,7})\s(?:base\s|kitchen\s|floor\s)?"
    r"(?:units|cupboards|cabinets|carcasses|(?:unter|küchen)?schränken?)"
    r"(?:,?\s(?:of\s|all\s|each\s|at\s)?(?P<w>\d{2,4})\s?(?P<u>mm|cm)?\s(?:wide\s)?"
    r"(?:each|wide|breit)\b|,?\s(?:each|je|jeweils|à|mit je)\s(?P<w2>\d{2,4})\s?(?P<u2>mm|cm)?\b"
    r"(?!\s?(?:deep|high|tief|hoch)))",
    re.IGNORECASE,
)
_SPLIT: Final = re.compile(r",\s?|\s?\+\s?|\s(?:and|und|plus|&)\s", re.IGNORECASE)
_MM_PER: Final = {"mm": 1.0, "cm": 10.0}
_LONGEST_ROW: Final = 12
_NARROWEST_MM: Final = 140.0  # of base units; common practice, no source
_WIDEST_MM: Final = 1300.0
# A row that carries a slab is about as long as it: end panels and overhangs make the rest.
_LEAST_SHARE: Final = 0.85
_MOST_SHARE: Final = 1.02


@dataclass(frozen=True, slots=True)
class UnitRow:
    """Widths of cupboards from left to right, mm, and where they are told."""

    widths_mm: tuple[float, ...]
    span: TextSpan


def unit_row(text: str, spans: Sequence[TextSpan], length_mm: float) -> UnitRow | None:
    """Return the cupboards that a slab of a length is said to lie on, where they are as long."""
    for start, end in spans:
        for found in _ON.finditer(text, start, end):
            widths = _widths(found["row"])
            is_row = bool(widths) and len(widths) <= _LONGEST_ROW
            if is_row and _carries(widths, length_mm):
                return UnitRow(tuple(widths), found.span())
        for found in _EACH.finditer(text, start, end):
            width, unit = found["w"] or found["w2"], found["u"] or found["u2"] or ""
            widths = _widths(f"{found['n']} {width}{unit}")
            if widths and _carries(widths, length_mm):
                return UnitRow(tuple(widths), found.span())
    return None


def _carries(widths: Sequence[float], length_mm: float) -> bool:
    return _LEAST_SHARE * length_mm <= sum(widths) <= _MOST_SHARE * length_mm


def _widths(row: str) -> list[float]:
    """Return each cupboard's width, mm; none where one of them could be no cupboard."""
    widths: list[float] = []
    for part in _SPLIT.split(row):
        one = _ONE.fullmatch(part.strip())
        if one is None:
            return []
        word = (one["n"] or "1").lower()
        count = int(word) if word.isdigit() else int(NUMBERS.get(word, 0))
        unit = (one["u"] or ("cm" if part.strip().endswith("er") else "mm")).lower()
        width = float(one["w"]) * _MM_PER[unit]
        if not count or not _NARROWEST_MM <= width <= _WIDEST_MM:
            return []
        widths += [width] * count
    return widths
