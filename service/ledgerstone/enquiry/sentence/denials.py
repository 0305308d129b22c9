"""A size that the words after it take back, and the one that stands for it."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import SIDES
from ledgerstone.enquiry.words.word_sets import word_set

_NO: Final = frozenset({"no", "nein", "nope"})
_DENIES: Final = word_set(", - – — make it that sorry wait es sind eher doch lieber actually")
_DENIED: Final = 4
_STRIKES: Final = word_set("scratch forget ignore strike scrap disregard vergiss vergesst")
_IT_IS: Final = word_set("it it's its is 's es ist sind make sondern")
_INSTEAD: Final = frozenset({"instead", "stattdessen", "dafür"})
_NOW: Final = frozenset({"now", "jetzt", "nun"})
_WAS: Final = word_set("was were previously formerly war waren vorher bisher")
_NAMED: Final = frozenset({"long", "wide", "deep", "thick", "dia"})
_DECIDES: Final = word_set("decided settled entschieden")
_DECIDED_FAR: Final = 24
_LEADS: Final = frozenset({",", "-", "–", "—", ":", "that", "sorry", "actually", "to"})
_OPPOSITE: Final = {"left": "right", "right": "left", "front": "back", "back": "front"}
_LED: Final = 3
_FAR: Final = 12


def mark_denials(sentence: Sentence, found: list[Measure]) -> None:
    """Take "said 4 cm, then said no, 5" for the second size instead of the first.

    The first, said once more, is told only as a reason: "no, make that 40, since 30 bends".
    """
    _mark_denied(sentence, found)
    gone = {(one.size.amount, one.size.unit): one for one in found if one.replaced and one.of == 1}
    for measure in found:
        first = gone.get((measure.size.amount, measure.size.unit))
        if first is not None and measure.at > first.at and not (measure.role or measure.side):
            measure.replaced = True


def _mark_denied(sentence: Sentence, found: list[Measure]) -> None:
    atoms = sentence.atoms
    _mark_dropped(sentence, found)
    _mark_past(sentence, found)
    _mark_turned(sentence, found)
    for before, after in pairwise(found):
        led = [atom.word for atom in atoms[max(before.at + 1, after.at - _DENIED) : after.at]]
        if _is_struck(sentence, before, after) or _is_corrected(sentence, before, after):
            before.replaced = True
            after.role = after.role or before.role
            continue
        is_no = bool(_NO & set(led)) and all(word in _NO | _DENIES for word in led[_at_no(led) :])
        if is_no and before.of == after.of > 1 and after.place == 1:
            for one in before.members:
                one.replaced = True  # "1400 x 250 - no, wait, 1500 x 250"
        if not is_no or before.of > 1 or after.of > 1 or before.side != after.side:
            continue
        before.replaced = True
        if not (after.role or after.side):
            after.role = before.role
            after.unit_from_label = after.unit_from_label or str(before.size.unit or "")


def _mark_dropped(sentence: Sentence, found: list[Measure]) -> None:
    """Take back "forget the single 3 m top, two pieces instead"."""
    words = sentence.words
    turns = [i for i, word in enumerate(words) if word in _INSTEAD]
    for measure in found:
        led = set(words[max(0, measure.at - _DENIED) : measure.at])
        if led & _STRIKES and any(i > measure.at for i in turns):
            measure.replaced = True


def _mark_past(sentence: Sentence, found: list[Measure]) -> None:
    """Take back what something was, where it tells what it is now: "now 880 x 510, was 590"."""
    words = sentence.words
    now = next((i for i, word in enumerate(words) if word in _NOW), len(words))
    for measure in found:
        first = measure.members[0].at if measure.members else measure.at
        is_past = bool(_WAS & set(words[max(0, first - 2) : first]))
        if is_past and any(now < one.at < first for one in found):
            measure.replaced = True


def _is_struck(sentence: Sentence, before: Measure, after: Measure) -> bool:
    """Return whether a size is taken back and the next stands for it: "scratch the 25, it's 24"."""
    words = sentence.words
    is_pair = before.of == after.of == 1 and not after.side and not before.side
    is_led = bool(_STRIKES & set(words[max(0, before.at - _LED) : before.at]))
    between = set(words[before.at + 1 : after.at])
    return is_pair and is_led and bool(between & _IT_IS) and after.at - before.at <= _FAR


def _is_corrected(sentence: Sentence, before: Measure, after: Measure) -> bool:
    """Return whether the next size stands for one with a name: "2480 long, scratch that, 2455"."""
    is_pair = before.of == after.of == 1 and not (after.side or before.side)
    is_named = before.role in _NAMED and after.role in ("", before.role)
    led = sentence.atoms[after.at - 1].word
    if _DECIDES & set(sentence.words[before.at : after.at]) and after.role in _NAMED:
        is_named = before.role in ("", after.role)  # "she says 150, but I decided: length 140"
        return is_pair and is_named and after.at - before.at <= _DECIDED_FAR
    corrects = any(before.at < i < after.at for i, _ in sentence.marks("correct"))
    is_near = after.at - before.at <= _FAR and led in _LEADS | _IT_IS
    return is_pair and is_named and corrects and is_near


def _mark_turned(sentence: Sentence, found: list[Measure]) -> None:
    """Turn a distance to the side that is said instead: "690 from the left, sorry, the right"."""
    words = sentence.words
    ends = [one.at for one in found[1:]] + [len(words)]
    for measure, until in zip(found, ends, strict=False):
        starts = [i for i, _ in sentence.marks("correct") if measure.at < i < until]
        if measure.side not in _OPPOSITE or not starts:
            continue
        said = [
            side[0]
            for i in range(starts[0], min(until, starts[0] + _FAR))
            if words[i] and (side := SIDES.at(words, i)) is not None
        ]
        if said[:1] == [_OPPOSITE[measure.side]]:
            measure.side = said[0]


def _at_no(words: list[str]) -> int:
    return next((i for i, word in enumerate(words) if word in _NO), 0)
