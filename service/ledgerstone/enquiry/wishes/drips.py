"""A drip under an edge, as it is asked for."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.wishes.edges import sides_named

_DRIP: Final = re.compile(
    r"\bdrip[ -](?:grooves?|edges?|channels?|moulds?|mouldings?|lines?|slots?|details?)\b"
    r"|\b(?:a|with|and) drip\b(?! (?:tray|coffee|feed|tap))|\bthroating\b"
    r"|\b(?:wasser|tropf)nasen?\b|\b(?:ab)?tropfkanten?\b|\btropfrillen?\b",
    re.IGNORECASE,
)
_REFUSED: Final = re.compile(
    r"\b(?:no|not|never|without|skip|ohne|kein\w*|nicht)\b|n['’]t\b", re.IGNORECASE
)
_CLAUSE: Final = re.compile(r"[^.!?;,\n]{1,200}")
_ASKED: Final = re.compile(r"[^.!;\n]{0,200}\?")


@dataclass(frozen=True, slots=True)
class DripSaid:
    """The sides under which a drip runs, and the words that say so."""

    sides: tuple[str, ...]
    span: TextSpan


def drip_of(text: str, spans: Sequence[TextSpan]) -> DripSaid | None:
    """Return the drip that is asked for; where no side is named, it is under the front.

    One that is refused, or only asked about, is none.
    """
    for start, end in spans:
        for found in _DRIP.finditer(text, start, end):
            clause = next(
                one for one in _CLAUSE.finditer(text, start, end) if one.end() >= found.end()
            )
            if not _REFUSED.search(clause[0]) and not _ASKED.match(text, found.end(), end):
                return DripSaid(tuple(sides_named(clause[0])) or ("front",), found.span())
    return None
