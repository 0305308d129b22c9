"""Which slab a sentence calls by its row, its item or its side: "in pos. 1", "Worktop B"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene import Piece
from ledgerstone.enquiry.sentences import Atom, Sentence
from ledgerstone.enquiry.word_sets import word_set

_LABEL_WORDS: Final = re.compile(r"[^\W_]+")
_HAS: Final = word_set("has have needs gets is takes carries with")
_ROW_NAMES: Final = word_set(
    "pos position item piece no number worktop top slab nr teil platte part row line counter shelf"
)


def named_in(pieces: Sequence[Piece], sentence: Sentence) -> Piece | None:
    """Give the piece that a sentence calls by its row or item: "in pos. 1", "Worktop B"."""
    if len(pieces) < 2:
        return None
    words = sentence.words
    for piece in pieces:
        label = [word.lower() for word in _LABEL_WORDS.findall(piece.label)]
        if not label:
            continue
        if words[0] == label[-1] and words[1:2] and words[1] in _HAS:
            return piece
        for i, atom in enumerate(sentence.atoms):
            if atom.word in _ROW_NAMES:
                following = [one for one in sentence.atoms[i + 1 : i + 3] if one.word != "."]
                said = following[:1] and _as_label(following[0])
                if said and said == label[-1]:
                    return piece
    return _by_side(pieces, words)


def _by_side(pieces: Sequence[Piece], words: Sequence[str]) -> Piece | None:
    """Give the piece that is the left or the right one: "in the right hand one"."""
    for side in ("left", "right"):
        if side not in words[:6]:
            continue
        at = words.index(side)
        if not {"one", "piece", "top", "worktop", "slab", "run"} & set(words[at + 1 : at + 3]):
            continue
        named = [piece for piece in pieces if side in piece.names]
        if len(named) == 1:
            return named[0]
    return None


def _as_label(atom: Atom) -> str:
    if atom.size is not None and atom.size.unit is None:
        return str(atom.size.amount)
    return atom.word if len(atom.word) == 1 else ""
