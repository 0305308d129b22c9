"""The pedestal that a slab stands on: "on a steel pedestal, the plate on top is 40 cm square"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass
from typing import Final

from ledgerstone.enquiry.text.size_words import written_length
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length

_PEDESTAL: Final = re.compile(
    r"\b(?:on|onto|over|supported by|auf)\s(?:\w+\s){0,4}?(?P<name>pedestals?(?: base)?"
    r"|cent(?:ral|re|er) (?:column|leg|post)|single (?:column|leg)"
    r"|mittelsäule|säulenfuß|mittelfuß)\b",
    re.IGNORECASE,
)
# Before it: what stands on a pedestal of its own, and what stands there now.
_OTHERS: Final = re.compile(
    r"\b(?:\w*basin|sink|bowl|toilet|wc|\w*becken)\b[^.;\n]{0,20}\Z"
    r"|\b(?:at the moment|at present|currently|replac\w+|old|bisher|zur ?zeit)\b[^.;\n]{0,60}\Z",
    re.IGNORECASE,
)
_PLATE: Final = re.compile(
    r"\b(?P<which>top |base |foot |floor |bottom |kopf|fuß|boden)?(?:plate|platte)\b"
    r"(?P<on> on top)?(?!\s(?:bolts?|holes?|screws?|schrauben)\b)",
    re.IGNORECASE,
)
_SIZE: Final = (
    r"(?P<n>\d{1,3}(?:[.,]\d)?)\s?(?P<u>mm|cm|inch(?:es)?|in\b|\")?"
    r"(?:\s?[x×]\s?\d{1,3}(?:\s?(?:mm|cm|in\b|\"))?)?"
)
_AFTER: Final = re.compile(rf"(?:\s(?!\d)\w+){{0,4}}[\s,:(]{{1,2}}{_SIZE}", re.IGNORECASE)
_BEFORE: Final = re.compile(rf"{_SIZE}\s(?:square\s|steel\s|wide\s){{0,2}}\Z", re.IGNORECASE)
_FAR: Final = 120  # characters between a pedestal and its plate
_NEAR: Final = 40  # and between a plate and its size
_ON_TOP: Final = frozenset({"top", "kopf"})
_BELOW: Final = frozenset({"base", "foot", "floor", "bottom", "fuß", "boden"})
_LEAST_MM: Final = 80.0  # side of a plate that carries a top; common practice, no source
_MOST_MM: Final = 1000.0


@dataclass(frozen=True, slots=True)
class PedestalSaid:
    """A pedestal, the side of its square plate if it is told, and the words that say so."""

    plate: Length | None
    span: TextSpan


@dataclass(frozen=True, slots=True)
class _PlateSaid:
    """The side of a plate, where it is told, and whether that is the one on top."""

    side: Length
    span: TextSpan
    is_on_top: bool


def pedestal_of(text: str, spans: Sequence[TextSpan]) -> PedestalSaid | None:
    """Return the pedestal that a slab is said to stand on; a plate told in two ways is untold."""
    for start, end in spans:
        for found in _PEDESTAL.finditer(text, start, end):
            if _OTHERS.search(text[max(start, found.start() - _FAR) : found.start()]):
                continue
            told = [*_plates(text, max(start, found.start() - _FAR), min(end, found.end() + _FAR))]
            told = [plate for plate in told if plate.is_on_top] or told
            if len({plate.side.mm for plate in told}) != 1:
                return PedestalSaid(None, found.span())
            low, high = told[0].span
            return PedestalSaid(told[0].side, (min(found.start(), low), max(found.end(), high)))
    return None


def _plates(text: str, low: int, high: int) -> Iterator[_PlateSaid]:
    """Yield the plates whose size is told between two places, but those on the floor."""
    for plate in _PLATE.finditer(text, low, high):
        which = (plate["which"] or "").strip().lower()
        after = _AFTER.match(text, plate.end(), min(high, plate.end() + _NEAR))
        before = _BEFORE.search(text[max(low, plate.start() - _NEAR) : plate.start()])
        for size in (after, before):
            side = _side(size) if size is not None else None
            if side is not None and which not in _BELOW:
                ends = after.end() if size is after and after is not None else plate.end()
                yield _PlateSaid(side, (plate.start(), ends), which in _ON_TOP or bool(plate["on"]))
                break


def _side(size: re.Match[str]) -> Length | None:
    with suppress(QuantityError):
        side = written_length(size["n"], size["u"])
        if _LEAST_MM <= side.mm <= _MOST_MM:
            return side
    return None
