"""Openings told by where they begin and end: "from 84 to 140 cm from the left"."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.said import SaidOpening, say
from ledgerstone.enquiry.scene.size_assigner import worked_out
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.words.word_sets import word_set

_BEGINS: Final = word_set("begins starts begin start beginning starting beginnt fängt startet from")
_ENDS: Final = word_set("ends finishes end finish stops ending finishing endet hört to")
_BOTH: Final = word_set("begins starts begin start beginnt ends finishes finish stops endet")
_FAR: Final = 5
_SIDES: Final = {"left": "length", "right": "length", "front": "width", "back": "width"}


def read_extents(focus: Focus, parsed: ParsedSentence) -> None:
    """Give the opening in hand its size and its middle from where it begins and where it ends."""
    words = parsed.sentence.words
    if not _BOTH & set(words):
        return
    named = [
        mention
        for mention in parsed.found
        if mention.kind in ("open", "hole") and not mention.is_denied
    ]
    subjects = focus.subjects
    held = subjects.openings_for(named[0], parsed.sentence) if named else subjects.openings
    if not held:
        return
    opening = held[0]
    before = ""
    for first, second in pairwise(list(parsed.sizes)):
        side = second.side or first.side or _side_said(words, first) or before
        begins = _BEGINS & set(words[max(0, first.at - _FAR) : first.at])
        ends = _ENDS & set(words[max(first.at, second.at - _FAR) : second.at])
        if side in _SIDES and begins and ends and first.of == second.of == 1:
            _give(focus, parsed, opening, (first, second), side)
            before = side


def _side_said(words: list[str], measure: Measure) -> str:
    led = set(words[max(0, measure.at - 2 * _FAR) : measure.at])
    return "front" if {"front", "back"} <= led or {"vorn", "hinten"} <= led else ""


def _give(
    focus: Focus,
    parsed: ParsedSentence,
    opening: SaidOpening,
    between: tuple[Measure, Measure],
    side: str,
) -> None:
    claims = [focus.assigner.claim(one, "place", parsed.rank) for one in between]
    low, high = claims
    if low is None or high is None or high.mm <= low.mm:
        return
    size = worked_out(high.length, high.mm - low.mm, [low, high])
    middle = worked_out(high.length, (high.mm + low.mm) / 2, [low, high])
    say(opening.claims, _SIDES[side], size)
    say(opening.claims, side, middle)
    opening.is_asked = True
    for one in between:
        one.replaced = True
