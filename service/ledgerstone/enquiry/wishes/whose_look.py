"""Which of several slabs a shade or a finish is said of: the one in whose stretch it stands."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import NOWHERE, SaidPiece, SaidWord
from ledgerstone.enquiry.text.tokens import TextSpan

_OF_ALL: Final = re.compile(
    r"\b(?:all|both|everything|same|every|lot|alle|alles|beide|beides|sämtliche|each piece)\b",
    re.IGNORECASE,
)
_SENTENCE_END: Final = re.compile(r"[.!?;]\s|\n\s*\n|\n[ \t]*(?:[-*•]|\(?\w{1,2}[.)])")


def said_of(
    piece: SaidPiece, pieces: Sequence[SaidPiece], said: Sequence[SaidWord], text: str
) -> SaidWord | None:
    """Return what is said of one slab: in its own stretch, else of all, else before the first.

    Parameters
    ----------
    pieces
        All slabs of the message.
    said
        Shades or finishes, the surest first.
    """
    if not said:
        return None
    if len(pieces) == 1 or len({word.value.lower() for word in said}) == 1:
        return said[0]
    stretches = _stretches(pieces, text)
    own = stretches.get(id(piece))
    in_own = [word for word in said if own and own[0] <= word.spans[0][0] < own[1]]
    if in_own:
        return in_own[0]
    of_all = [word for word in said if _OF_ALL.search(text, *_sentence(text, word.spans[0]))]
    first = min((low for low, _ in stretches.values()), default=0)
    before = [word for word in said if word.spans[0][0] < first]
    last = max((high for _, high in stretches.values()), default=0)
    after = [word for word in said if word.spans[0][0] >= last]
    return next(iter((*of_all, *before, *after)), None)


def _stretches(pieces: Sequence[SaidPiece], text: str) -> dict[int, TextSpan]:
    """Return where in the text each slab is told: up to the next, or its sentence's end."""
    starts = sorted((_start(piece), id(piece)) for piece in pieces if _start(piece) >= 0)
    found: dict[int, TextSpan] = {}
    for i, (start, key) in enumerate(starts):
        low = _sentence_start(text, start) if i == 0 else start
        if i + 1 < len(starts):
            high = starts[i + 1][0]
        else:
            end = _SENTENCE_END.search(text, _end(pieces, key))
            high = end.start() + 1 if end else len(text)
        found[key] = (low, high)
    return found


def _start(piece: SaidPiece) -> int:
    spans = [span for claims in piece.claims.values() for claim in claims for span in claim.spans]
    return min((low for low, _ in (*spans, *piece.spans) if (low, _) != NOWHERE), default=-1)


def _end(pieces: Sequence[SaidPiece], key: int) -> int:
    piece = next(piece for piece in pieces if id(piece) == key)
    spans = [span for claims in piece.claims.values() for claim in claims for span in claim.spans]
    spans += [
        span
        for opening in piece.openings
        for claims in opening.claims.values()
        for claim in claims
        for span in claim.spans
    ]
    return max((high for _, high in (*spans, *piece.spans)), default=0)


def _sentence_start(text: str, at: int) -> int:
    ends = [found.end() for found in _SENTENCE_END.finditer(text, max(0, at - 400), at)]
    return ends[-1] if ends else max(0, at - 400)


def _sentence(text: str, span: TextSpan) -> TextSpan:
    end = _SENTENCE_END.search(text, span[1])
    return _sentence_start(text, span[0]), end.start() if end else len(text)
