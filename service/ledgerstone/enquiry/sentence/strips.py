"""Distances told without "from": what is left beside a hole, so far each way from a corner."""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import FROM, LABELS, SIDES
from ledgerstone.enquiry.words.word_sets import word_set

_FAR: Final = 7
_ENDS_BACK: Final = frozenset({",", ".", ";", ")", "and"})
_EACH_FAR: Final = 10
_WAYS: Final = frozenset({"way", "ways", "direction", "directions"})
_CORNERS: Final = frozenset({"corner", "ecke"})
_CUT: Final = word_set("cut cropped clipped chamfered off angled")
_LEAVES: Final = word_set("leave leaves leaving left remain remains remaining between")
_SLAB_LEFT: Final = word_set("concrete slab material stone strip")

_SIDES_ALONE: Final = MappingProxyType(
    {"back": "front", "up": "front", "front": "front", "left": "left", "right": "right"}
)
_SMALL_MM: Final = 60
_BREAKS: Final = frozenset({",", ";", "/", "|", "("})
_OUT: Final = 2  # words: "comes out"
_BEHIND: Final = frozenset({"behind", "dahinter", "hinter"})
# No hole for a tap is wider: what is less is its size, "tap hole 35 behind the sink". From memory.
_WIDEST_BORE: Final = MappingProxyType({"mm": 60.0, "cm": 6.0, "in": 2.4})
_CENTRED: Final = frozenset({"centred", "centered", "centres", "centers", "middles"})
_CENTRES: Final = frozenset({"centre", "center", "middle"})


def without_from(sentence: Sentence, measure: Measure) -> tuple[str, int] | None:
    """Find the side of a distance that is told without a "from", and where its words end."""
    side = set_back(sentence, measure.at + 1) or left_beside(sentence, measure)
    return side or each_way(sentence, measure)


def is_behind_by(sentence: Sentence, measure: Measure) -> bool:
    """Whether a size is how far behind another opening one is: "a tap hole, 220 behind it"."""
    is_led = sentence.words[measure.at + 1 : measure.at + 2]
    widest = _WIDEST_BORE.get(measure.size.unit or "mm", 0.0)
    return bool(is_led) and is_led[0] in _BEHIND and measure.size.amount > widest


def each_way(sentence: Sentence, measure: Measure) -> tuple[str, int] | None:
    """Take "back left corner, 100 in each way" for so far from both of the corner's sides."""
    words, at = sentence.words, measure.at
    i = at + 2 if words[at + 1 : at + 2] == ["in"] else at + 1
    is_each = words[i : i + 1] in (["each"], ["both"]) and bool(_WAYS & set(words[i + 1 : i + 2]))
    corners = [j for j in range(max(0, at - _EACH_FAR), at) if words[j] in _CORNERS]
    is_cut = bool(_CUT & set(words[max(0, at - _EACH_FAR) : at]))
    return ("corner", i + 2) if is_each and corners and not is_cut else None


def left_beside(sentence: Sentence, measure: Measure) -> tuple[str, int] | None:
    """Take what is to be left of the slab beside a hole: "leave 4 in in front of the opening"."""
    words = sentence.words
    near = {*words[max(0, measure.at - _FAR) : measure.at], *words[measure.at : measure.at + _FAR]}
    if not near & _LEAVES or not near & _SLAB_LEFT:
        return None
    for i in range(measure.at + 1, min(measure.at + _FAR, len(words))):
        in_front = words[i] == "front" and words[i - 1] in ("in", "at", "the")
        if in_front or words[i] == "behind":
            measure.to_edge = True
            return "front" if in_front else "back", i + 1
    return None


def set_back(sentence: Sentence, start: int) -> tuple[str, int] | None:
    """Take "700 from the left, 300 back", "… 300 up" or "… 300 front" for so far from a side."""
    atoms, words = sentence.atoms, sentence.words
    if words[start : start + 1] == ["in"]:
        return _set_in(sentence, start)
    side = _SIDES_ALONE.get("".join(words[start : start + 1]))
    if side is None:
        return None
    ends = start + 1 >= len(atoms) or atoms[start + 1].word in _ENDS_BACK
    is_from_side = ends and any(FROM.at(words, i) is not None for i in range(start) if words[i])
    is_middles = words[start] == "up" and bool((_CENTRES | _CENTRED) & set(words[:start]))
    is_from_side = is_from_side or (ends and is_middles)  # "both centred 225 up"
    return (side, start + 1) if is_from_side else None


def _set_in(sentence: Sentence, start: int) -> tuple[str, int] | None:
    """Take "at the back, 70 mm in" for so far from the back."""
    atoms, words = sentence.atoms, sentence.words
    if start + 1 < len(atoms) and atoms[start + 1].word not in _ENDS_BACK:
        return None
    for i in range(start - 2, max(0, start - 2 - _FAR), -1):
        side = SIDES.at(words, i) if words[i] else None
        if side is not None and {"at", "on", "along"} & set(words[max(0, i - 3) : i]):
            return side[0], start + 1
        if atoms[i].kind == "size":
            return None
    return None


def of_side(words: list[str], i: int) -> tuple[str, int] | None:
    """Return "of" as a distance's where a side of the slab follows at once."""
    at = i + 2 if words[i + 1 : i + 2] == ["the"] else i + 1
    side = SIDES.at(words, at) if at < len(words) and words[at] else None
    return (
        ("from", 1) if side is not None and side[0] in ("left", "right", "front", "back") else None
    )


def comes_out(sentence: Sentence, measure: Measure) -> bool:
    """Return whether the words right before a size say how far a slab comes out."""
    at = measure.at - _OUT
    label = LABELS.at(sentence.words, at) if at >= 0 and sentence.words[at] else None
    return label == ("deep", _OUT) and measure.of == 1


def to_middle(words: list[str], start: int) -> tuple[str, int] | None:
    """Find the side in '10" front edge to center', which says no "from"."""
    side = SIDES.at(words, start) if start < len(words) and words[start] else None
    if side is None:
        return None
    at = start + side[1]
    at += words[at : at + 1] in (["edge"], ["end"])
    said = words[at : at + 3]
    is_middle = said[:1] == ["to"] and bool(_CENTRES & set(said[1:]))
    return (side[0], at + 2) if is_middle else None


def beside(sentence: Sentence, measure: Measure, start: int) -> bool:
    """Take a distance to the left or the right of something: "150 mm to the right of it"."""
    ahead = sentence.atoms[start : start + 5]
    until = next((i for i, atom in enumerate(ahead) if atom.word in _BREAKS), len(ahead))
    following = sentence.words[start : start + until]
    if measure.size.unit in ("mm", None) and measure.size.amount <= _SMALL_MM:
        return False
    for word, sign in (("right", 1), ("left", -1), ("rechts", 1), ("links", -1)):
        if word not in following:
            continue
        at = following.index(word)
        is_of = following[at + 1 : at + 2] in (["of"], ["neben"], ["davon"], ["daneben"], [], [""])
        is_of = is_of and (word in ("rechts", "links") or following[:at] == ["to", "the"])
        if is_of and not {"from", "von"} & set(following[:at]):
            measure.beside, measure.role = sign, "beside"
            measure.cue = (start, start + at + 2)
            return True
    return False
