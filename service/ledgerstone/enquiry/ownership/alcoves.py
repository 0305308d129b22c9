"""A slab that must fit exactly between walls whose length differs from its own: both are read."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.said import newest, say
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.words.word_sets import word_set

# A slab is a little shorter than its alcove, so that it can be fitted; a length that differs by
# more is another wall's. Common practice, no source.
_ROOM_MM: Final = 25.0
_FAR: Final = 1.1
_WALLS: Final = word_set("wall walls alcove gap space recess nische wand wände")
_EXACTLY: Final = word_set("exactly exact tight tightly genau passgenau")
_BETWEEN: Final = frozenset(
    {("wall", "to"), ("between", "the"), ("between", "two"), ("von", "wand"), ("zwischen", "den")}
)


def note_walls(focus: Focus, parsed: ParsedSentence) -> None:
    """Add the length of a wall that a slab must fit exactly as a second reading of its own."""
    piece, words = focus.subjects.piece, parsed.sentence.words
    is_exact = bool(_EXACTLY & set(words)) or bool(_BETWEEN & set(pairwise(words)))
    known = newest(piece.claims.get("length", [])) if piece is not None else []
    if piece is None or not is_exact or len(known) != 1:
        return
    for measure in parsed.sizes:
        is_bare = measure.of == 1 and not measure.side and measure.role in ("", "wide", "long")
        if not is_bare or not any(
            _is_walls(parsed, mention, measure.at) for mention in parsed.found
        ):
            continue
        claim = focus.assigner.claim(measure, "length", known[0].rank)
        if claim is None:
            continue
        low, high = sorted((claim.mm, known[0].mm))
        if high - low > _ROOM_MM and high <= _FAR * low:
            say(piece.claims, "length", replace(claim, how="worked-out"))


def _is_walls(parsed: ParsedSentence, mention: Mention, at: int) -> bool:
    """Return whether a mention is of a wall, and the size after it is the wall's."""
    near = mention.end <= at <= mention.end + 5
    return mention.kind == "thing" and near and parsed.sentence.words[mention.end - 1] in _WALLS
