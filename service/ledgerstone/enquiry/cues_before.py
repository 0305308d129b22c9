"""The words before a size that say what it measures."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.cues import ADJECTIVES, NAMED, SINGLE, is_span, take_cue
from ledgerstone.enquiry.lexicon import FROM, LABELS, ROLES, SIDES, mark
from ledgerstone.enquiry.measure import Measure
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.word_sets import word_set

_BEFORE_FILLERS: Final = word_set(
    ": ( ) = is of be about approx the are wird ist von mit at should will mm cm in inch "
    "inches exactly to now must needs a | - – can has want wants please ca für sind soll "
    "sollte beträgt auf betragen need it being roughly around full make either stays remains"
    " still was m "
    "ft 's it's total finished overall we i you they brauchen ich wir i'd we'd like changed"
    " change wise thought think increased reduced now"
)


_UNITS: Final = word_set("mm cm m in inch inches ft")


_FROM_FAR: Final = 16
_SIDE_NEAR: Final = 5
_BEING: Final = word_set("is was are would looks seems ist war sind wäre mm cm")


_TOO: Final = frozenset({"too", "zu"})


_TOO_MUCH: Final = word_set(
    "long short wide narrow deep shallow thick thin big small large much heavy lang kurz breit"
    " schmal"
    " tief dick dünn groß klein viel schwer"
)


_SAID_FIRST: Final = (ADJECTIVES - {"front"}) | word_set("length depth width thickness")


def read_before(sentence: Sentence, measure: Measure, start: int, used: set[int]) -> None:
    """Read the words before a size, back to an atom, that name no other."""
    words, atoms = sentence.words, sentence.atoms
    measure.side = _side_before(sentence, measure, start, used)
    if measure.side or (measure.of > 1 and measure.place > 1):
        return
    if atoms[measure.at - 1].word == ":" and measure.at:
        measure.role = _asked_before(words[start : measure.at])  # "how thick they are: 30"
        if measure.role:
            return
    led = measure.at - 2
    if led >= start and atoms[led + 1].word == "," and words[led] in _SAID_FIRST:
        last = measure.at + 1 == len(atoms) or atoms[measure.at + 1].word in ".;!?"
        if led not in used and last and _label_before(sentence, measure, start, led, used):
            return  # "I want it thick, 5 cm."
    for steps, i in enumerate(range(measure.at - 1, max(start, measure.at - 8) - 1, -1)):
        if i in used or _label_before(sentence, measure, start, i, used):
            return
        if _edge_before(sentence, measure, i, used):
            return
        is_struck = atoms[i].kind == "other" and steps < 2
        is_role = bool(words[i]) and ROLES.at(words, i) is not None
        if atoms[i].word not in _BEFORE_FILLERS and not is_struck and not is_role:
            return


def read_question(sentence: Sentence, sizes: list[Measure], asked: str) -> str:
    """Give the first size the role that a form asked for on its line; give what is asked now.

    "How long is it? 1250 mm"
    """
    if asked and sizes and not sentence.starts_line and not (sizes[0].role or sizes[0].side):
        sizes[0].role = asked
    is_asking = sentence.ends == "?" and sentence.words[:1] == ["how"] and not sizes
    return _asked_before(sentence.words) if is_asking else ""


def _asked_before(words: list[str]) -> str:
    """Give the role of "how thick", if that is said."""
    at = words.index("how") + 1 if "how" in words else len(words)
    role = ROLES.at(words, at) if at < len(words) and words[at] else None
    return role[0] if role is not None else ""


def _label_before(
    sentence: Sentence, measure: Measure, start: int, end: int, used: set[int]
) -> bool:
    """Take a name of up to six words that ends at an atom: "overall length"."""
    words = sentence.words
    if words[end] in SINGLE and measure.at - end > 2:
        return False
    for count in range(1, 7):
        first = end - count + 1
        label = LABELS.at(words, first) if first >= start and words[first] else None
        if label is not None and label[0] in NAMED and label[1] == count:
            measure.role = label[0]
            _label_unit(sentence, measure, end + 1)
            take_cue(measure, first, end + 1, used)
            return True
    return False


def _label_unit(sentence: Sentence, measure: Measure, start: int) -> None:
    """Take the unit in ``Length (mm): 2650``."""
    for atom in sentence.atoms[start : measure.at]:
        if atom.word in _UNITS:
            measure.unit_from_label = {"inch": "in", "inches": "in"}.get(atom.word, atom.word)


def _edge_before(sentence: Sentence, measure: Measure, i: int, used: set[int]) -> bool:
    """Take the length of one side: "back edge 1480 mm"."""
    words = sentence.words
    if words[i] not in ("edge", "side", "kante", "seite") or i == 0 or not words[i - 1]:
        return False
    side = SIDES.at(words, i - 1)
    led = FROM.at(words, i - 2) if i > 1 and words[i - 2] else None
    if side is None or led is not None or measure.of > 1:
        return False
    measure.role = f"edge:{side[0]}"
    take_cue(measure, i - 1, i + 1, used)
    return True


def _side_before(sentence: Sentence, measure: Measure, start: int, used: set[int]) -> str:
    """Find ``from left: 700``, where no earlier size has taken those words."""
    words, atoms = sentence.words, sentence.atoms
    for i in range(measure.at - 1, max(start, measure.at - _FROM_FAR) - 1, -1):
        if i in used or atoms[i].word in {",", ";", "."}:
            return ""
        if not words[i] or FROM.at(words, i) is None or is_span(words, i):
            continue
        for j in range(i + 1, min(i + _SIDE_NEAR, measure.at)):
            if words[j] and (side := SIDES.at(words, j)) is not None:
                take_cue(measure, i, measure.at, used)
                return side[0]
    return ""


def read_marks(sentence: Sentence, measure: Measure, start: int) -> None:
    """Note that a size is said to be replaced, or to be approximate."""
    words = sentence.words
    for i in range(max(start, measure.at - 3), measure.at):
        if not words[i]:
            continue
        if mark("instead").at(words, i) is not None or words[i] in ("not", "nicht"):
            measure.replaced = True
        if mark("about").at(words, i) is not None:
            measure.about = True
    after = words[measure.at + 1 : measure.at + 6]
    too = any(one in _TOO and two in _TOO_MUCH for one, two in pairwise(after))
    if too and after[0] in _BEING and not measure.side:
        measure.replaced = True  # "200 is too long"
