"""Where a letter is signed: its closing words, or a line that is only its writer's name."""

from __future__ import annotations

import re
from typing import Final

from ledgerstone.enquiry.text.lines import TextLine

CLOSING: Final = re.compile(
    r"[ \t]*(?:(?:with |mit )?(?:many |kind |best |warm |kindest |warmest |friendly "
    r"|very best |all the "
    r"|yours |freundlichen |freundlicher |freundliche |viele |beste |liebe |herzliche |schöne "
    r"|kindly )*"
    r"(?:regards|thanks|thank you|cheers|wishes|greetings|best|faithfully|sincerely|truly|ta"
    r"|rgds|br|kr|thx|tx"
    r"|danke und (?:viele |schöne |liebe |beste )?gr(?:uß|üße|uss|üsse)|grüßen|grüße|gruß|gruss"
    r"|gruessen|grüsse|dank|danke|vg|mfg|lg|obrigado|merci|warmly"
    r"|yours|ttfn"
    r"|cordially|bye|love|respectfully|warmest|many thanks|ciao|sincerest)\b(?: (?:in advance"
    r"|again|so much|very much|a lot|and regards"
    r"|and best wishes|for reading to the end|eh|aus \w+))?)[ \t]*[,.!-]*[ \t]*(.{0,60})\Z",
    re.IGNORECASE,
)


_ADDRESS_LAST: Final = re.compile(r"[\w.+%-]{1,64}@[\w.-]{1,120}\Z")
_DEVICE_LAST: Final = re.compile(r"[.!?]?[ \t]*\bsent from my\b.{0,80}\Z", re.IGNORECASE)
_PHONE_LAST: Final = re.compile(
    r"[ \t,]*(?:\b(?:tel|phone|mob|mobile|ph)\b[.:]?[ \t]*)?\+?\d[\d ()/-]{7,20}\Z", re.IGNORECASE
)
_FIRM_LAST: Final = re.compile(r"[ \t]*\([^()\n]{2,40}\)\Z")
_KISSES_LAST: Final = re.compile(r"(?<=\w)[ \t]+[xX]{1,4}\Z")
_DASH_FIRST: Final = re.compile(r"\A[ \t]*[-–—~][ \t]?(?=[^\W\d_])")
# "Marek, Unit 7 fit-out": a name, a comma, and who that is. "jaz 07700 900125": and a number.
_NAME_COMMA: Final = re.compile(
    r"[ \t]*(?P<name>[A-ZÀ-Ý][\w'’-]+(?:[ \t][A-ZÀ-Ý][\w'’-]+){0,2}),[ \t][^.!?\n]{2,48}\Z"
)
_NAME_NUMBER: Final = re.compile(r"[ \t]*(?P<name>[a-zà-ÿ]{2,14})[ \t]+0\d[\d ]{7,14}\Z")
POSTSCRIPT: Final = re.compile(r"[ \t]*p\.?\s?s\b", re.IGNORECASE)


_TITLES: Final = frozenset({"mr", "mrs", "ms", "miss", "dr", "herr", "frau"})


_LONGEST_SIGNATURE: Final = 8


def is_closing(words: str) -> bool:
    """Return whether a line is only the closing words of a letter."""
    found = CLOSING.match(words.strip())
    return found is not None and not found[1].strip()


def _is_name_of(words: str, name: str) -> bool:
    """Return whether a line is only a person's name, or the first or the last part of it."""
    own = set(re.findall(r"[^\W\d_]{2,}", name.lower()))
    said = [one for one in re.findall(r"[^\W\d_]{2,}", words.lower()) if one not in _TITLES]
    is_plain = len(words) <= 60 and not re.search(r"[\d:?!]", words)
    return bool(said) and is_plain and set(said) <= own


def signed_from(lines: list[TextLine], name: str = "") -> int:
    """Return the line that closes a letter, or one past the last: few lines follow it."""
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


def name_words(line: TextLine) -> str:
    """Return a line without what stands after a name: kisses, a firm, a number, an address."""
    words = line.words.rstrip()
    words = _DASH_FIRST.sub("", words)
    for pattern in (_DEVICE_LAST, _ADDRESS_LAST, _PHONE_LAST, _FIRM_LAST, _KISSES_LAST):
        words = pattern.sub("", words).rstrip(" ,;\t")
    return words


def name_before_comma(line: TextLine) -> str:
    """Return the name that a short last line begins with, before who that is or their number."""
    words = line.words.rstrip()
    found = _NAME_NUMBER.match(words) or _NAME_COMMA.match(words)
    return found["name"] if found else ""
