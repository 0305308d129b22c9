"""Which way a middle is: "centred front to back", "in der Tiefe mittig"."""

from __future__ import annotations

import re
from typing import Final

from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import AXES
from ledgerstone.enquiry.words.word_sets import word_set

_NO_AXIS: Final = word_set("wide long deep lang breit tief quer")
_ARTICLES: Final = frozenset({"the", "its", "der", "slab", "top", "worktop"})
_VORN_HINTEN: Final = re.compile(r"\bvorne? (?:und|nach|bis) hinten\b")
_DIMENSIONS: Final = {"depth": "y", "tiefe": "y", "length": "x", "länge": "x"}
_AND: Final = (["and"], ["und"])
_WAYS: Final = word_set("width breite length länge depth tiefe")
_BOTH_WAYS: Final = word_set("ways way directions richtungen")
_ALL: Final = frozenset(["both", "all", "each", "beide", "alle"])


def axis_after(sentence: Sentence, start: int) -> str:
    """Return the way that the words after a middle name; "" for none, or for both."""
    words = sentence.words
    if _ALL & set(words[start : start + 1]) and _BOTH_WAYS & set(words[start + 1 : start + 2]):
        return ""
    axis = AXES.at(words, start) if words[start : start + 1] and words[start] else None
    named = axis[0] if axis is not None and words[start] not in _NO_AXIS else ""
    named = _axis_named(words, start) or named
    if named:
        return named
    joined = " ".join(words[start : start + 9])
    if "front and back" in joined or "front to back" in joined or _VORN_HINTEN.search(joined):
        return "y"
    for i in range(start, min(start + 6, len(words))):
        if sentence.atoms[i].kind == "size":
            return ""
        axis = AXES.at(words, i) if words[i] else None
        if axis is not None and words[i] not in _NO_AXIS:
            return axis[0]
    return ""


def _axis_named(words: list[str], start: int) -> str:
    """Return the way of "in the middle of the depth"; a width after a place along is the depth."""
    if words[start : start + 1] not in (["of"], ["der"], ["on"], ["across"]):
        return ""
    after = next((word for word in words[start + 1 : start + 4] if word not in _ARTICLES), "")
    if after in ("width", "breite"):
        return "y" if {"left", "right", "links", "rechts"} & set(words[:start]) else ""
    return {"depth": "y", "tiefe": "y", "length": "x", "länge": "x"}.get(after, "")


def axis_before(sentence: Sentence, at: int) -> str:
    """Return the way that the words before a middle name."""
    for i in range(at - 1, max(-1, at - 6), -1):
        if sentence.atoms[i].kind != "word":
            break
        named = _DIMENSIONS.get(sentence.words[i])
        if named:
            other = sentence.words[max(0, i - 2) : i]
            return "" if other[1:] in _AND and other[0] in _WAYS else named  # "in width and depth"
    joined = " ".join(sentence.words[max(0, at - 5) : at]).removesuffix(" and")
    if joined.endswith("front to back"):
        return "" if "left to right" in joined else "y"
    return "x" if joined.endswith(("left to right", "side to side")) else ""
