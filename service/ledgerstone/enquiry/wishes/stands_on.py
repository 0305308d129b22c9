"""What a slab is said to stand on, without the sizes that its strength is worked out from."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import SaidWord
from ledgerstone.enquiry.text.tokens import TextSpan

_UNITS: Final = (
    r"(?:(?:base |kitchen |floor |sink |vanity )?(?:cabinets?|units?)|cupboards?|carcass(?:es)?"
    r"|drawers)"
)
# What hangs on a wall or stands as high as a room carries no slab.
_WHOSE: Final = r"(?:(?!(?:wall|upper|top|overhead|tall|high|hanging)\b)[a-z]+ ){0,3}?"
_ON_UNITS: Final = re.compile(
    r"\b(?:(?:it|they|that|which|top|worktop|countertop|slab|counter|vanity|island)"
    r" (?:will |should |is |are |'s )?(?:to )?"
    r"(?:sits?|sitting|rests?|resting|lies|lie|goes|go|going|stands?|standing) (?:\w+ )?"
    rf"(?:on top of|on|over|across)|supported (?:by|on)) {_WHOSE}{_UNITS}\b"
    # an aside of its own: "…, 50 mm thick, on base cabinets", "sitting on our kitchen units"
    r"|(?:[,;:(] ?|[–-] |^[ \t]*|\b(?:to go|to sit|thick|deep|sitting|resting|laid|lying|top"
    r"|worktop|countertop|counter|island|slab) )"
    rf"(?:on top of|on) {_WHOSE}(?!drawers\b){_UNITS}\b"
    r"|\b(?:liegt|steht|kommt|ruht|liegen|stehen) auf (?:\w+ ){0,3}?(?:unter|küchen)?schränken\b",
    re.IGNORECASE | re.MULTILINE,
)
_WIDTHS: Final = re.compile(
    rf"\d\s?(?:mm|cm|in|\")?,?\s(?:wide |deep )?{_UNITS}\b|{_UNITS}\b[^.\n]{{0,30}}?\d{{2,}}"
    r"|\b\d{2,3}er\b",
    re.IGNORECASE,
)


def stands_on(text: str, spans: Sequence[TextSpan]) -> SaidWord | None:
    """Return the words that say that a slab lies on units, where none of their widths is told."""
    for start, end in spans:
        found = _ON_UNITS.search(text, start, end)
        if found is not None and not _WIDTHS.search(text):
            return SaidWord("units", (found.span(),))
    return None
