"""Where a letter is signed: its closing words, or a line that is only its writer's name."""

from __future__ import annotations

import re
from typing import Final

from ledgerstone.enquiry.lines import Line

CLOSING: Final = re.compile(
    r"[ \t]*(?:(?:with |mit )?(?:many |kind |best |warm |kindest |warmest |friendly "
    r"|very best |all the "
    r"|yours |freundlichen |freundlicher |freundliche |viele |beste |liebe |herzliche |schöne "
    r"|kindly )*"
    r"(?:regards|thanks|thank you|cheers|wishes|greetings|best|faithfully|sincerely|truly|ta"
    r"|rgds|br|kr|thx|tx"
    r"|grüßen|grüße|gruß|gruss|gruessen|grüsse|dank|danke|vg|mfg|lg|obrigado|merci|warmly"
    r"|yours|ttfn"
    r"|cordially|bye|love|respectfully|warmest|many thanks|ciao|sincerest)(?: (?:in advance"
    r"|again|so much|very much|a lot|and regards"
    r"|and best wishes|for reading to the end|eh|aus \w+))?)[ \t]*[,.!-]*[ \t]*(.{0,60})\Z",
    re.IGNORECASE,
)


POSTSCRIPT: Final = re.compile(r"[ \t]*p\.?\s?s\b", re.IGNORECASE)


_TITLES: Final = frozenset({"mr", "mrs", "ms", "miss", "dr", "herr", "frau"})


_LONGEST_SIGNATURE: Final = 8


def is_closing(words: str) -> bool:
    """Whether a line is only the closing words of a letter."""
    found = CLOSING.match(words.strip())
    return found is not None and not found[1].strip()


def _is_name_of(words: str, name: str) -> bool:
    """Whether a line is only a person's name, or the first or the last part of it."""
    own = set(re.findall(r"[^\W\d_]{2,}", name.lower()))
    said = [one for one in re.findall(r"[^\W\d_]{2,}", words.lower()) if one not in _TITLES]
    is_plain = len(words) <= 60 and not re.search(r"[\d:?!]", words)
    return bool(said) and is_plain and set(said) <= own


def signed_from(lines: list[Line], name: str = "") -> int:
    """Give the line that closes a letter, or one past the last: few lines follow it."""
    own = min((line.depth for line in lines if line.words.strip()), default=0)
    filled = [i for i, line in enumerate(lines) if line.words.strip() and line.depth == own]
    for back, i in enumerate(reversed(filled[-14:])):
        words = lines[i].words.strip()
        found = CLOSING.match(words)
        if found is None or len(found[1].split()) > 6 or re.search(r"\d", found[1]):
            continue
        if back <= 7 or any(POSTSCRIPT.match(lines[j].words) for j in filled[-back:]):
            return i
    for back, i in enumerate(reversed(filled[-_LONGEST_SIGNATURE:])):
        has_more = back < len(filled) - 1
        if name and has_more and lines[i].depth == 0 and _is_name_of(lines[i].words, name):
            return i
    return len(lines)
