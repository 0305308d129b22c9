"""Slabs that are alike until one is told apart: "the left one has a hole", "two of them"."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.identity import CANON
from ledgerstone.enquiry.scene.piece_keys import without_whole
from ledgerstone.enquiry.scene.said import SaidPiece
from ledgerstone.enquiry.words.lexicon import NUMBERS
from ledgerstone.enquiry.words.word_sets import word_set

_FIRST: Final = {"left": ("left", "right"), "right": ("right", "left")}
_ORDER: Final = {
    **dict.fromkeys(("first", "erste", "ersten"), ("first", "second")),
    **dict.fromkeys(("second", "zweite", "zweiten"), ("second", "first")),
}
_ONES: Final = word_set(
    "one slab top piece section half platte teil stück hat bekommt has gets needs"
)
_THEM: Final = word_set("them these those davon denen")
_DEFINITE: Final = word_set("the die der das in on")
_HOLES: Final = ("open", "hole")
_MIDDLES: Final = frozenset({"middle", "centre", "center", "mittlere", "mittleren"})
_PAIR: Final = 2


@dataclass(frozen=True, slots=True)
class _Apart:
    """How many are told apart, what they are called, and what the others are."""

    count: int
    called: str
    others: str


def tell_apart(focus: Focus, parsed: ParsedSentence) -> None:
    """Make two slabs of several alike where a hole is in some of them only."""
    piece = focus.subjects.piece
    holes = [one for one in parsed.found if one.kind in _HOLES and not one.is_denied]
    is_alone = piece is not None and sum(one.has_size() for one in focus.subjects.scene.pieces) == 1
    if piece is None or not is_alone or piece.quantity < _PAIR or not holes or focus.is_l():
        return
    apart = _apart(parsed, piece.quantity)
    if apart is None or not (piece.claims.get("length") or piece.claims.get("diameter")):
        return
    without_whole(piece)
    others = _copy(piece, piece.quantity - apart.count)
    piece.quantity, piece.called = apart.count, {*piece.called, apart.called}
    piece.quantity_spans = () if apart.count == 1 else piece.quantity_spans
    others.called.add(apart.others)
    pieces = focus.subjects.scene.pieces
    at = next(i for i, one in enumerate(pieces) if one is piece)
    pieces.insert(at if apart.called in ("right", "second", "some") else at + 1, others)


def _copy(piece: SaidPiece, count: int) -> SaidPiece:
    """Return so many slabs alike, without holes of their own."""
    made = SaidPiece(piece.use, piece.shape, count)
    made.quantity_spans = piece.quantity_spans if count > 1 else ()
    made.claims = {key: list(claims) for key, claims in piece.claims.items()}
    made.called, made.nouns, made.use_spans = set(piece.called), set(piece.nouns), piece.use_spans
    made.spans, made.is_further = list(piece.spans), True
    made.like, made.like_in = piece, frozenset({"length", "width", "thickness"})
    return made


def _apart(parsed: ParsedSentence, quantity: int) -> _Apart | None:
    words = parsed.sentence.words
    for i, word in enumerate(words):
        count = NUMBERS.get(word, 0)
        if words[i + 1 : i + 3][-1:] and words[i + 2 : i + 3] and words[i + 1] in ("of", "von"):
            is_some = words[i + 2] in _THEM and 0 < count < quantity
            if is_some:
                return _Apart(int(count), "some", "others")
        if words[i + 1 : i + 2] == ["davon"] and 0 < count < quantity:
            return _Apart(int(count), "some", "others")
        is_one = bool(_ONES & set(words[i + 1 : i + 3]))
        if word in _MIDDLES and i and words[i - 1] in _DEFINITE and is_one and quantity % 2:
            return _Apart(1, "middle", "outer")
        side = _FIRST.get(CANON.get(word, word)) or _ORDER.get(word)
        is_led = i > 0 and words[i - 1] in _DEFINITE and words[i + 1 : i + 2] != [""]
        if side and is_led and quantity == _PAIR and is_one:
            return _Apart(1, *side)
    return None
