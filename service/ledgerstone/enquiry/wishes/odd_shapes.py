"""Shapes that a slab is said to have and whose sizes are not read: a T, a U, a hexagon."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import SaidWord
from ledgerstone.enquiry.text.tokens import TextSpan

_SHAPE: Final = re.compile(
    r"\b(?P<letter>[tuzh])[ -](?:shaped?|förmige?[nrs]?)\b"
    r"|\b(?:hexagon(?:al)?|octagon(?:al)?|horseshoe|kidney|boomerang|tear[ -]?drop)"
    r"(?:[ -]shaped?)?\b"
    r"|\b(?:sechseckige?[nrs]?|achteckige?[nrs]?|nierenförmige?[nrs]?)\b",
    re.IGNORECASE,
)
# What else has such a shape, or that it is refused.
_OTHERS: Final = re.compile(
    r"\s(?:[\w-]+\s)?(?:kitchen|room|layout|house|space|run|brackets?|rails?|nuts?|bolts?|bars?"
    r"|legs?|frames?|base|feet|plates?|trestles?|supports?|sections?|küche|raum|profil\w*"
    r"|\w*gestell|beine?n?|füßen?)\b",
    re.IGNORECASE,
)
_REFUSED: Final = re.compile(r"\b(?:not|no|nicht|kein\w*)\s(?:a |an )?\Z", re.IGNORECASE)
_BEFORE: Final = 16  # characters


def odd_shape(text: str, spans: Sequence[TextSpan]) -> SaidWord | None:
    """Return the words that give a slab such a shape."""
    for start, end in spans:
        for found in _SHAPE.finditer(text, start, end):
            before = text[max(start, found.start() - _BEFORE) : found.start()]
            if not _OTHERS.match(text, found.end()) and not _REFUSED.search(before):
                return SaidWord(found[0], (found.span(),))
    return None
