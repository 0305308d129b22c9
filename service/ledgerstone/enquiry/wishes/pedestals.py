"""The pedestal that a slab stands on: "on a steel pedestal, the plate on top is 40 cm square"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass
from typing import Final

from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length

_PEDESTAL: Final = re.compile(
    r"\b(?:on|onto|over|supported by|auf)\s(?:\w+\s){0,4}?(?P<name>pedestals?(?: base)?"
    r"|cent(?:ral|re|er) (?:column|leg|post)|single (?:column|leg)"
    r"|mittelsäule|säulenfuß|mittelfuß)\b",
    re.IGNORECASE,
)
_NUMBER: Final = r"(?P<n{0}>\d{{1,3}}(?:[.,]\d)?)\s?(?P<u{0}>mm|cm|inch(?:es)?|in\b|\")?"
_SQUARE: Final = rf"{_NUMBER.format('')}(?:\s?[x×]\s?\d{{1,3}}(?:\s?(?:mm|cm|in\b|\"))?)?"
_PLATE: Final = re.compile(
    rf"\b(?:top |kopf)?(?:plate|platte)\b(?:\s(?!\d)\w+){{0,4}}[\s,:(]{{1,2}}{_SQUARE}"
    rf"|{_NUMBER.format('2')}(?:\s?[x×]\s?\d{{1,3}}(?:\s?(?:mm|cm|in\b|\"))?)?"
    r"\s(?:square\s|steel\s|top\s|wide\s){0,2}(?:plate|(?:kopf)?platte)\b",
    re.IGNORECASE,
)
_FAR: Final = 120  # characters between a pedestal and its plate
_LEAST_MM: Final = 80.0  # side of a plate that carries a top; common practice, no source
_MOST_MM: Final = 1000.0
_UNITS: Final = {'"': "in", "inch": "in", "inches": "in"}


@dataclass(frozen=True, slots=True)
class PedestalSaid:
    """A pedestal, the side of its square plate if it is told, and the words that say so."""

    plate: Length | None
    span: TextSpan


def pedestal_of(text: str, spans: Sequence[TextSpan]) -> PedestalSaid | None:
    """Return the pedestal that a slab is said to stand on."""
    for start, end in spans:
        found = _PEDESTAL.search(text, start, end)
        if found is None:
            continue
        low, high = max(start, found.start() - _FAR), min(end, found.end() + _FAR)
        for plate in _PLATE.finditer(text, low, high):
            side = _side(plate)
            if side is not None:
                return PedestalSaid(side, (min(found.start(), plate.start()), plate.end()))
        return PedestalSaid(None, found.span())
    return None


def _side(plate: re.Match[str]) -> Length | None:
    number, unit = plate["n"] or plate["n2"], plate["u"] or plate["u2"] or ""
    unit = unit.lower()
    with suppress(QuantityError):
        side = Length.parse(f"{number.replace(',', '.')} {_UNITS.get(unit, unit) or 'mm'}")
        if _LEAST_MM <= side.mm <= _MOST_MM:
            return side
    return None
