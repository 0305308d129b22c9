"""The middle of a side: "at the back in the middle" says how far along, and not how far back."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import takewhile
from typing import Final

from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import SIDES
from ledgerstone.enquiry.words.word_sets import word_set

_ACROSS: Final = ("front", "back")
_NOT_THERE: Final = word_set("behind")  # of another opening
_LEADS: Final = word_set(
    "at to on of along towards toward near by against an am zum gegen entlang bei"
)
_ADVERBS: Final = word_set("hinten vorn vorne")  # nothing leads to them
_BETWEEN: Final = _LEADS | word_set(
    "the its my right just far very edge side wall slab top worktop counter desk der die das den"
    " dem des rand kante seite platte ganz , ( - –"
)
_FAR: Final = 7


@dataclass(frozen=True, slots=True)
class SideMiddle:
    """The side whose middle is meant, and where all the words of it stand."""

    side: str
    start: int
    end: int


def side_of_middle(sentence: Sentence, start: int, end: int) -> SideMiddle | None:
    """Give the side that "in the middle", from ``start`` to ``end``, is said of: front or back."""
    words, atoms = sentence.words, sentence.atoms
    stop = min(end + _FAR, len(atoms))
    for i in (*range(start, end), *_connected(sentence, range(end, stop))):
        side = _side(words, i)
        if side and (i <= end or _is_led_to(words, i)):
            return SideMiddle(side, start, max(end, i + 1))
    for i in _connected(sentence, range(start - 1, max(-1, start - _FAR), -1)):
        side = _side(words, i)
        if side and _is_led_to(words, i):
            return SideMiddle(side, i, end)
    return None


def _connected(sentence: Sentence, order: Iterable[int]) -> Iterable[int]:
    """Yield places as long as their words only lead from "in the middle" to a side."""
    words, atoms = sentence.words, sentence.atoms
    return takewhile(lambda i: atoms[i].word in _BETWEEN or _side(words, i), order)


def _side(words: list[str], i: int) -> str:
    found = SIDES.at(words, i) if words[i] and words[i] not in _NOT_THERE else None
    return found[0] if found is not None and found[0] in _ACROSS else ""


def _is_led_to(words: list[str], i: int) -> bool:
    is_span = words[i - 1 : i] == ["to"] and bool(i > 1 and _side(words, i - 2))
    return words[i] in _ADVERBS or (bool(_LEADS & set(words[max(0, i - 2) : i])) and not is_span)
