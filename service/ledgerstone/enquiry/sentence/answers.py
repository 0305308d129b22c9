"""What an answer says to what stands above it: yes, no, or that it stands but for one size."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import LABELS
from ledgerstone.enquiry.words.word_sets import word_set

_YES: Final = word_set("yes yep yeah yup correct right exactly ja genau stimmt richtig korrekt")
_ALL_OF: Final = word_set("all that that's everything looks sounds good fine perfect alles spot")
_GOOD: Final = word_set("good fine ok okay perfect spot right correct gut richtig passt stimmt")
_EXCEPT: Final = word_set("except but apart only außer bis aber nur")
_STANDS: Final = word_set("passt stimmt bleibt stays fits right correct fine ok okay same good")
_SIZED: Final = frozenset({"long", "deep", "wide", "thick"})
_IT_IS: Final = frozenset({("it", "is"), ("they", "are"), ("that", "is"), ("das", "ist")})
_NO: Final = word_set("no not nope nein nicht isn't")


def affirms(sentence: Sentence) -> bool:
    """Return whether an answer begins with a yes, and with no size of its own."""
    first_words = set(sentence.words[:3])
    has_size = any(atom.kind == "size" for atom in sentence.atoms)
    if sentence.words[0] in _ALL_OF and _GOOD & first_words and not first_words & _NO:
        return not has_size or bool(_EXCEPT & set(sentence.words))  # "all good except the depth"
    says_yes = bool(first_words & _YES) or tuple(sentence.words[:2]) in _IT_IS
    return says_yes and not first_words & _NO and not has_size


def is_answered_between(sentences: Sequence[Sentence]) -> bool:
    """Return whether answers stand between a quoted mail's lines, at more than one place."""
    turns = [one for one, after in pairwise(sentences) if one.is_quoted and not after.is_quoted]
    return len(turns) > 1


def denies(sentence: Sentence) -> bool:
    """Return whether an answer begins with a no."""
    return bool(_NO & set(sentence.words[:2]))


def affirms_in_part(sentence: Sentence) -> bool:
    """Whether an answer changes one size and lets another stand: "depth now 52, length ok"."""
    roles = {tag for _, _, tag in LABELS.all_in(sentence.words)} & _SIZED
    return bool(_STANDS & set(sentence.words)) and len(roles) > 1
