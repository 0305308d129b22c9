"""What is said after several sizes, or at the end of their clause, of all of them."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence.declared import UNIT_NAMES
from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import SIDES
from ledgerstone.enquiry.words.word_sets import word_set

_SHARED: Final = frozenset(["thick", "long", "deep", "wide", "high", "dia"])
SPACINGS: Final = word_set("achsmaß achsabstand achsmass stichmaß mittenabstand spacing abstand")
_FILLERS: Final = word_set(": = of is von ist ca about")
_METRIC: Final = frozenset({"mm", "cm"})
_MAX_BETWEEN: Final = 5
_AT_FAR: Final = 4
_BESIDE: Final = 5  # atoms


def share_sides(sentence: Sentence, found: list[Measure]) -> None:
    """Give both of two sizes at two sides their one role: "600 deep left, 620 right"."""
    words = sentence.words
    for before, after in pairwise(found):
        is_bare = after.of == 1 and not (after.role or after.side or after.axis)
        if not is_bare or before.of > 1 or before.role not in _SHARED:
            continue
        if _at_side(words[before.at + 1 : after.at]) and _at_side(words[after.at + 1 :][:_AT_FAR]):
            after.role = before.role


def _at_side(words: list[str]) -> bool:
    """Return whether words say at which side: "at the left"."""
    return any(
        word in ("at", "on", "am") and any(SIDES.at(words, j) for j in range(i + 1, len(words)))
        for i, word in enumerate(words)
        if all(words[i + 1 : i + 3])
    )


def read_spacings(sentence: Sentence, found: list[Measure]) -> None:
    """Take a size that is called a spacing for how far apart things are: "Achsmaß 80 cm"."""
    for measure in found:
        at = measure.at - 1
        while at > 0 and sentence.atoms[at].word in _FILLERS:
            at -= 1
        is_bare = measure.of == 1 and not (measure.role or measure.side or measure.axis)
        if is_bare and at >= 0 and sentence.words[at] in SPACINGS:
            measure.role = "apart"


def read_units_after(sentence: Sentence, found: list[Measure]) -> None:
    """Take units that are said after their sizes: "a 17 x 13 oval in inches"."""
    for measure in found:
        _read_unit_after(sentence, measure)


def read_units_before(sentence: Sentence, found: list[Measure]) -> None:
    """Take a unit that leads a size or its group: "measures: cm 135 x 51"."""
    for measure in found:
        members = measure.members or [measure]
        first = members[0].at
        if measure.unit_from_label or first == 0 or any(one.size.unit for one in members):
            continue
        led, before = sentence.words[first - 1], sentence.atoms[max(0, first - 2)]
        is_led = first == 1 or before.kind != "size"
        if led in _METRIC and is_led:
            measure.unit_from_label = led


def _read_unit_after(sentence: Sentence, measure: Measure) -> None:
    """Take the unit that is said after a size's clause: "a 17 x 13 oval in inches"."""
    if measure.size.unit is not None or measure.unit_from_label:
        return
    last = measure.members[-1].at if measure.members else measure.at
    for i in range(last + 1, min(last + _MAX_BETWEEN, len(sentence.atoms) - 1)):
        atom = sentence.atoms[i]
        if atom.kind == "size" or atom.word in ";:":
            return
        if atom.word == "in" and sentence.words[i + 1] in UNIT_NAMES:
            measure.unit_from_label = UNIT_NAMES[sentence.words[i + 1]]
            return


def mark_breadths(found: list[Measure]) -> None:
    """Take "460 across and 410 front to back" for two sides, and no diameter."""
    for before, after in pairwise(found):
        for one, other in ((before, after), (after, before)):
            is_plain = one.of == other.of == 1 and not (one.side or other.side)
            is_other = other.axis == "y" and other.role in ("deep", "")
            if is_plain and is_other and one.role == "across" and after.at - before.at <= _BESIDE:
                one.role, one.axis = "wide", "x"
