"""Words that run from one side to the other, and so name neither: "from front to back"."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.words.lexicon import SIDES
from ledgerstone.enquiry.words.word_sets import word_set

_VIEWED: Final = word_set("seen viewed looking looked facing gesehen betrachtet geschaut")
_NO_SIDES: Final = word_set("the der dem side")
_OF_SIDES: Final = word_set("wall end edge wand")
_LEFT_RIGHT: Final = word_set("left right left-hand right-hand linken rechten hand")


def is_span(words: list[str], i: int) -> bool:
    """Whether "from front to back" or "seen from the front" begins here, which name no side."""
    if words[i] not in ("from", "von", "vom"):
        return False
    if _VIEWED & {*words[max(0, i - 2) : i], *words[i + 1 : i + 5]}:
        return True
    said = [
        word
        for before, word in pairwise(words[i : i + 8])
        if word not in _NO_SIDES and not (word in _OF_SIDES and before in _LEFT_RIGHT)
    ][:3]
    if len(said) < 3 or said[1] not in ("to", "nach", "zur", "bis"):
        return False
    if said[0] == said[2]:
        return True  # "from end to end"
    return SIDES.at(said, 2) is not None if said[2] else False
