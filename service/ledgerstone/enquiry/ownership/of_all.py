"""A size said of all slabs at once is their thickness: "everything in 60", "both 40"."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.ownership.enumerations import is_of_all
from ledgerstone.enquiry.scene.focus import ParsedSentence
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.words.word_sets import word_set

# No slab's thickness is less or more, in the unit written: common practice, no source.
_BETWEEN: Final = {None: (10, 120), "mm": (10, 120), "cm": (1, 12), "in": (0.5, 5)}
_LONGEST: Final = 14  # atoms: a longer sentence tells of other things too
_OTHERS: Final = frozenset({"open", "hole", "thing", "room", "leg", "feature"})
_NO_THICKNESS: Final = word_set(
    "round sides edges corners ends ways way front back apart between each end holes people steps"
    " weeks days miles years hinten vorn seiten kanten enden rundum"
)


def read_of_all(parsed: ParsedSentence) -> None:
    """Take the only size of a short sentence about all slabs for their thickness."""
    sentence = parsed.sentence
    plain = [size for size in parsed.sizes if not size.replaced]
    if len(plain) != 1 or len(sentence.atoms) > _LONGEST or not is_of_all(sentence):
        return
    size = plain[0]
    if size.of > 1 or size.role not in ("", "size") or size.side or size.axis:
        return
    named = any(mention.kind in _OTHERS for mention in parsed.found)
    if not named and not _NO_THICKNESS & set(sentence.words) and _is_thin(size):
        size.role = "thick"


def _is_thin(measure: Measure) -> bool:
    low, high = _BETWEEN.get(measure.size.unit, (1, 0))
    return low <= measure.size.amount <= high
