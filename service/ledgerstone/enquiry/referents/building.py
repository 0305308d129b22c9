"""Openings of a building: a fireplace's, a window's, the stove's own pipe. None is a cut-out."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.said import SaidPiece
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.sentence.noun_phrases import is_noun
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_STOVES: Final = word_set("stove burner woodburner ofen kaminofen oven boiler")
_KNOWN: Final = word_set("the our my its der die das unsere")
_BUILT: Final = word_set("wall high hoch fireplace fire chimney wand breast")


def is_of_building(mention: Mention, sentence: Sentence, piece: SaidPiece | None) -> bool:
    """Return whether an opening is a fireplace's or a window's, or the stove's own pipe."""
    if mention.name == "flue":
        is_things = bool(_STOVES & set(sentence.words[: mention.start]))
        return not (mention.names_hole or (mention.is_indefinite and not is_things))
    is_known = mention.determiner == "the" or (piece is not None and piece.use == "hearth")
    bare = mention.kind == "hole" and is_known and not (mention.is_indefinite or mention.count)
    named = "opening" in sentence.words[mention.start]
    if named and mention.kind == "hole" and _is_called(mention, sentence):
        return True
    if named and (piece is None or not piece.openings):
        return bare or bool(_BUILT & set(sentence.words)) or sentence.words[0] == "opening"
    return False


def _is_called(mention: Mention, sentence: Sentence) -> bool:
    """Return whether a noun that no hole has leads to "opening": "the hatch opening is 700"."""
    is_led = is_noun(sentence, mention.start - 1)
    return mention.determiner in _KNOWN and is_led and not sentence.marks("round")
