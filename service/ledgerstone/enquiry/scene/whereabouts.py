"""Where a slab is to be: indoors, in a wet room or outdoors, by the rooms that are named."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import NOWHERE, SaidOrder, SaidPiece
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.words.lexicon import PLACES
from ledgerstone.enquiry.words.word_sets import word_set

_NOT_A_PLACE: Final = word_set("outside outsides")
_MEASURED: Final = word_set(
    "measurement measurements size sizes dimension dimensions edge edges of diameter face length"
    " corner along over line"
)
_UNLISTED: Final = ("", "named", "part", "line")
_OWNED: Final = word_set("the our my a back your for in at on from his her their this der im unser")


def note_places(sentence: Sentence, scene: SaidOrder, piece: SaidPiece | None) -> None:
    """Note the rooms that a sentence names, with the current piece."""
    words = sentence.words
    is_field = "indoor" in words and "outdoor" in words
    for i, count, name in PLACES.all_in(words):
        if _is_measured(words, i, i + count) or (is_field and i < len(words) - 1):
            continue
        if words[i] == "yard" and (not i or words[i - 1] not in _OWNED):
            continue
        atoms = sentence.atoms
        span = (atoms[i].start, atoms[i + count - 1].end)
        scene.rooms.append((name, span, piece))


def _is_measured(words: Sequence[str], start: int, end: int) -> bool:
    """Whether "outside" is of a size and no place: outside measurements, along the outside."""
    if words[start] not in _NOT_A_PLACE:
        return False
    around = set(words[max(0, start - 2) : start]) | set(words[end : end + 1])
    return bool(_MEASURED & around) or (
        words[start - 1 : start] == ["the"]
        and words[start - 2 : start - 1] in (["on"], ["along"], ["round"], ["of"])
    )


def _is_one_place(scene: SaidOrder) -> bool:
    """Whether all rooms named are alike, and none stands in an item's or a row's own line."""
    labelled = any(
        whose is not None and whose.label not in _UNLISTED for _, _, whose in scene.rooms
    )
    return len({name for name, _, _ in scene.rooms}) == 1 and not labelled


def place_of(scene: SaidOrder, piece: SaidPiece) -> tuple[str, TextSpan] | None:
    """Give where a piece is to be: by its own rooms, else by any that are named."""
    own = [(name, span) for name, span, whose in scene.rooms if whose is piece]
    several = len(scene.pieces) > 1 and not _is_one_place(scene)
    every = [(name, span) for name, span, whose in scene.rooms if not several or whose is None]
    rooms = (own if several else every) or every
    rooms = [room for room in rooms if room[1] != NOWHERE] or rooms
    wet = [room for room in rooms if room[0] == "wet-room"]
    return next(iter(wet or rooms), None)
