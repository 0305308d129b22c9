"""Sizes that are of an edge or a corner: a chamfer, a rounding, an overhang, a corner cut back."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import ROLES
from ledgerstone.enquiry.words.word_sets import word_set

_EDGES: Final = word_set(
    "edge edges corner corners kante kanten vorderkante ecke ecken rim arris sides"
)
_SHAPED: Final = word_set(
    "round rounded chamfer bevel radius bevelled beveled chamfered radiused eased fase gefast "
    "rund abgerundet gerundet cut off cropped"
)
_OVERHANGS: Final = word_set(
    "overhang overhangs overhanging oversail oversails proud überstehen überstand"
)
_OVER: Final = frozenset({("hang", "over"), ("hangs", "over"), ("sails", "over")})
_OUT: Final = word_set(
    "stick sticks sticking jut juts jutting poke pokes project projects steht ragt"
)
_OUTWARD: Final = word_set("out beyond over hinaus heraus vor über")
_CUT_MOST: Final = 350  # mm, of what a corner loses along a side: common practice, no source
_WAYS: Final = word_set("along up each both per entlang auf beiden")
_CORNERS: Final = word_set("corner corners ecke ecken")
_CUT: Final = word_set(
    "cut loses lose clipped chopped cropped angled splayed chamfered snipped"
    " abgeschnitten abgeschrägt schräg gekappt"
)
_NEAR: Final = 5


def is_feature(sentence: Sentence, measure: Measure, found: list[Mention]) -> bool:
    """Return whether a size is of a chamfer, a rounding, a drip or an overhang."""
    if measure.of == 1 and (_sticks_out(sentence, measure) or _is_cut_off(sentence, measure)):
        return True
    if measure.of > 1 or measure.role or measure.side or _is_of_hole(measure, found):
        return False
    near = sentence.words[max(0, measure.at - 4) : measure.at + 4]
    if _OVERHANGS & set(near) or _OVER & set(pairwise(near)):
        return True
    for mention in found:
        if mention.kind != "feature":
            continue
        low, high = sorted((measure.at, mention.start))
        between = sentence.atoms[low:high]
        apart = mention.end <= measure.at and any(atom.word in ",;" for atom in between)
        if high - low <= _NEAR + 1 and not apart:
            return True
    size = measure.size
    small = (
        size.amount <= 30 if size.unit in ("mm", None) else size.unit == "in" and size.amount <= 1
    )
    words = set(sentence.words)
    return small and bool(words & _EDGES) and bool(words & _SHAPED)


def _is_of_hole(measure: Measure, found: list[Mention]) -> bool:
    """Whether a hole is named right before a size, or after it: "lifting holes of 25 mm each"."""
    holes = [one for one in found if one.kind in ("open", "hole")]
    is_led = any(0 <= measure.at - one.end <= 1 for one in holes)
    return is_led or any(one.start <= measure.at + 1 < one.end for one in holes)


def _is_cut_off(sentence: Sentence, measure: Measure) -> bool:
    """Whether a size is how far a corner is cut back: "each corner loses 150 along the front"."""
    words = set(sentence.words)
    is_small = measure.size.amount <= _CUT_MOST and measure.size.unit in ("mm", None)
    is_way = bool(measure.axis) or bool(_WAYS & set(sentence.words[measure.at + 1 :][:2]))
    return is_small and is_way and bool(words & _CORNERS) and bool(words & _CUT)


def _sticks_out(sentence: Sentence, measure: Measure) -> bool:
    """Whether a size is how far something sticks out: "it sticks out 350 mm at the back"."""
    if measure.role == "deep" and _lists_sizes(sentence):
        return False  # "1050 wide, sticks out 180, 30 thick"
    before = sentence.words[max(0, measure.at - _NEAR) : measure.at]
    sizes = [i for i, word in enumerate(before) if not word and i]
    before = before[sizes[-1] :] if sizes else before  # what a size before it does is no matter
    after = sentence.words[measure.at + 1 : measure.at + _NEAR + 1]
    return bool(_OUT & set(before) and _OUTWARD & {*before, *after})


def _lists_sizes(sentence: Sentence) -> bool:
    """Return whether a sentence tells a slab's length and thickness by their names."""
    roles = {tag for _, _, tag in ROLES.all_in(sentence.words)}
    return "thick" in roles and bool(roles & {"wide", "long"})
