"""Postcodes of several countries, told by their form, a label, or a place's name beside them."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from ledgerstone.enquiry.scene.said import SaidWord

_POSTCODE: Final = re.compile(r"\b[A-Z]{1,2}\d{1,2}[A-Z]?[ \u00a0]?\d[A-Z]{2}\b")
_SMALL: Final = re.compile(
    r"(?<![\w.@-])[a-z]{1,2}\d{1,2}[a-z]?[ \u00a0]\d[a-z]{2}\b(?![ \u00a0]?(?:mm|cm|x|×))",
    re.IGNORECASE,
)
_EIRCODE: Final = re.compile(
    r"\b[A-Z]\d[\dW][ \u00a0]?[A-Z0-9]{4}\b|\b[A-Z]\d[A-Z][ \u00a0]?\d[A-Z]\d\b"
)
_PLACED: Final = re.compile(
    r"\b(?:at|to|in|near|nach|in|zu|an)[ \t](\d{5})\b(?![ \t]?(?:mm|cm|x|×))"
    r"|\b(?:to|in|near|nach)[ \t](?:[A-ZÄÖÜ][^\W\d_]{1,30},?[ \t]){1,3}(\d{5})\b"
    r"(?![ \t]?(?:mm|cm|x|×))|^[ \t]*(?:[^\W\d]{1,30},?[ \t]+)?(\d{5})[ \t]+[A-ZÄÖÜ]"
    r"|,[ \t]*(?!PO\b)[A-Z]{2}[ \t]+(\d{5})\b"
    r"|[.,:?!][ \t]+(\d{5})(?=[.,;][ \t\n])|[.,:?!][ \t]+(0\d{4})\b(?![ \t/-]?\d)"
    r"|\b(?:[Pp]alette|[Ll]iefer\w+|[Vv]ersand)\b[^.\n]{0,60}?,"
    r"[ \t]+(\d{4})[ \t]+[A-ZÄÖÜ][a-zäöüß]{3}"
    r"|[.,:][ \t]+(?:D-)?(\d{5})[ \t]+(?!Euro|EUR|St\u00fcck|Teile|Platten)[A-ZÄÖÜ][a-zäöüß]{2}",
    re.MULTILINE,
)
# Figures after a place's name: a postcode where the workshop delivers there.
_NAMED_PLACE: Final = re.compile(
    r"(?<![^\W_])(?!(?:PO|Po|Order|Ref|Job|Account|Auftrag|Invoice|Rechnung|No|Nr)\b)"
    r"[A-ZÄÖÜ][^\W\d_]{1,30}[.,]?[ \t]+(?:[A-Z]{2},?[ \t]+)?(\d{5})(?:-\d{4})?"
    r"(?![ \t]?(?:mm|cm|in|ft|x|×|[\d\"″]))"
)
_POSTCODE_LABEL: Final = re.compile(
    r"\b(?:post ?code|plz|zip(?: code)?"
    r"|code postal)(?:[ \t]?[/,+&][ \t]?(?:ort|town|city"
    r"|stadt))?\b[^\w\n]{0,4}(?:is |ist )?([A-Z]{0,2}-?\d{4,5}\b"
    r"|[A-Z]{1,2}\d{1,2}[A-Z]?[ \u00a0]?\d[A-Z]{2}\b)",
    re.IGNORECASE,
)


def postcode_in(text: str, start: int, end: int, is_ours: Callable[[str], bool]) -> SaidWord | None:
    """Return the first postcode of a stretch of text; ``is_ours`` tells where figures are one."""
    return _told(text, start, end) or _named(text, start, end, is_ours)


def _named(text: str, start: int, end: int, is_ours: Callable[[str], bool]) -> SaidWord | None:
    """Return the first figures after a place's name that are a postcode of the workshop's areas."""
    for one in _NAMED_PLACE.finditer(text, start, end):
        if is_ours(one[1]):
            return SaidWord(one[1], (one.span(1),))
    return None


def _told(text: str, start: int, end: int) -> SaidWord | None:
    labelled = _POSTCODE_LABEL.search(text, start, end)
    if labelled:
        return SaidWord(labelled[1], (labelled.span(1),))
    found = _POSTCODE.search(text, start, end) or _EIRCODE.search(text, start, end)
    found = found or _SMALL.search(text, start, end)
    if found is not None:
        return SaidWord(" ".join(found[0].split()).upper(), (found.span(),))
    placed = _PLACED.search(text, start, end)
    if placed is None:
        return None
    group = placed.lastindex or 0
    return SaidWord(placed[group], (placed.span(group),))
