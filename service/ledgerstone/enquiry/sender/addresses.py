"""A customer's postal address: from a form's field, a sentence that gives it, or under the name."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

_FIELD: Final = re.compile(
    r"[ \t]*(?:(?:postal|home|site|delivery|full|your) )?(?:address|adresse|anschrift"
    r"|lieferadresse)"
    r"[ \t]*[:|\t][ \t]*(?P<value>[^\n@]{5,160})",
    re.IGNORECASE,
)
_SENTENCE: Final = re.compile(
    r"\b(?:my|our|the|unsere|meine) (?:postal |home |delivery )?(?:address|adresse|anschrift)"
    r" (?:is|ist|lautet):?"
    r"[ \t]*(?P<value>[^\n@]{5,160}?)(?=\.(?:\s|\Z)|\n|\Z)",
    re.IGNORECASE,
)
_STREET: Final = re.compile(
    r"[ \t]*(?:\d{1,4}[a-z]?,?[ \t]+[A-Z][\w'’-]*(?:[ \t][A-Z][\w'’-]*){0,3}"
    r"|[A-ZÄÖÜ][\wäöüß-]*(?:straße|strasse|str\.|weg|gasse|platz|allee|ring|damm)[ \t]\d{1,4}[a-z]?"
    r"|(?:The )?[A-Z][\w'’-]+(?:[ \t][A-Z][\w'’-]+){0,2}[ \t](?:Cottage|House|Farm|Barn|Lodge"
    r"|Hall|Mill))"
    r"[ \t]*(?:,[ \t]*[^\n@:]{0,60})?\Z"
)
_ROAD: Final = re.compile(
    r"\b(?:street|road|lane|row|avenue|close|drive|way|hill|court|place|terrace|gardens?|grove"
    r"|crescent"
    r"|square|walk|st|rd|ln|ave|blvd|yard|cottage|house|farm|barn|lodge|hall|mill)\b|straße"
    r"|strasse|str\."
    r"|weg\b|gasse|platz|allee|ring\b|damm\b",
    re.IGNORECASE,
)
_POSTCODE: Final = re.compile(r"\b[A-Z]{1,2}\d{1,2}[A-Z]? ?\d[A-Z]{2}\b|\b\d{5}\b")
_PLACE: Final = re.compile(r"[ \t]*[\w'’., -]{2,60}\Z")
_MAX_LINES: Final = 5


def address_of(lines: Sequence[str]) -> str:
    """Return the address that a message's lines hold, its lines parted by commas; "" for none."""
    for line in lines:
        found = _FIELD.match(line)
        if found:
            return _tidy(found["value"])
    for line in lines:
        said = _SENTENCE.search(line)
        if said:
            return _tidy(said["value"])
    return _under_a_name(lines)


def _under_a_name(lines: Sequence[str]) -> str:
    """Return the lines from a street to a postcode, near the end of a message."""
    filled = [line for line in lines if line.strip()][-12:]
    for i, line in enumerate(filled):
        if not (_STREET.match(line) and _ROAD.search(line)):
            continue
        block = [line]
        for following in filled[i + 1 : i + _MAX_LINES]:
            if "@" in following or not _PLACE.match(following):
                break
            block.append(following)
            if _POSTCODE.search(following):
                return _tidy(", ".join(block))
    return ""


def _tidy(text: str) -> str:
    parts = (" ".join(part.split()) for part in text.split(","))
    return ", ".join(part for part in parts if part)[:200]
