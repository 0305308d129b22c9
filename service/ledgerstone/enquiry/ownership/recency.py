"""How new a sentence is, and whether it corrects what was said, so that it counts instead."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.focus import Focus
from ledgerstone.enquiry.scene.subjects import has_mark
from ledgerstone.enquiry.sentence import hearsay
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import SIDES
from ledgerstone.enquiry.words.word_sets import word_set

_POSTSCRIPT: Final = word_set("ps pps ppps pss nachtrag postscript")
_SPELT: Final = (["p", ".", "s"], ["p", ".", "p"])
_NOT: Final = frozenset({"not", "nicht"})
_LEADS: Final = word_set("from off at on the a its von vom am an der die das dem")
_FAR: Final = 4


def rank_of(focus: Focus, sentence: Sentence, layer: int) -> tuple[int, int]:
    """Return how new a sentence is, and whether it corrects or adds to what was said."""
    if sentence.starts_paragraph:
        focus.is_correcting, focus.is_told, focus.is_postscript = False, False, False
    focus.is_correcting = focus.is_correcting or has_mark(sentence, "correct")
    focus.is_postscript = focus.is_postscript or _begins_postscript(sentence)
    newer = 2 * layer + int(not sentence.is_quoted)  # an answer is newer than what it answers
    corrects = focus.is_correcting or focus.is_postscript or _denies_side(sentence)
    corrects = corrects or hearsay.takes_opinion(sentence)
    return newer, int(corrects)


def _begins_postscript(sentence: Sentence) -> bool:
    begun = [atom.word for atom in sentence.atoms[:3]]
    return sentence.words[0] in _POSTSCRIPT or begun in _SPELT


def _denies_side(sentence: Sentence) -> bool:
    """Return whether a distance is said to be from one side and not from the other."""
    words = sentence.words
    for i in (i for i, word in enumerate(words) if i and word in _NOT):
        for j in range(i + 1, min(i + _FAR, len(words))):
            if words[j] and words[j] not in _LEADS:
                if SIDES.at(words, j) is not None:
                    return True
                break
    return False
