"""Openings under the middle of what is on the wall: "centred under the window"."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.cupboards import Cupboard
from ledgerstone.enquiry.scene.focus import Focus
from ledgerstone.enquiry.scene.said import say
from ledgerstone.enquiry.scene.subjects import ROUND_HOLES
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_ABOVE: Final = word_set(
    "window windows hood extractor mirror fenster fensters dunstabzug dunstabzugshaube haube"
    " spiegel spiegels"
)
_BEGINS: Final = word_set("begins starts begin start beginning beginnt fängt startet is ist")
_NEAR: Final = 5
_WIDE: Final = frozenset({"wide", "long"})


def is_under(words: Sequence[str], end: int) -> bool:
    """Return whether "in the middle", which ends at a word, is of what is on the wall."""
    return bool(_ABOVE & set(words[end : end + _NEAR]))


def without_above(
    focus: Focus, sentence: Sentence, sizes: list[Measure], rank: tuple[int, int]
) -> list[Measure]:
    """Leave out a window's width and how far it begins from an end, where both are said."""
    words = sentence.words
    named = next((i for i, word in enumerate(words) if word in _ABOVE), len(words))
    starts = [one for one in sizes if one.side in ("left", "right") and one.at > named]
    widths = [one for one in sizes if one.role in _WIDE and one.of == 1 and one.at > named]
    if len(starts) != 1 or len(widths) != 1 or not _BEGINS & set(words[named : starts[0].at]):
        return sizes
    start = focus.assigner.claim(starts[0], "place", rank)
    width = focus.assigner.claim(widths[0], "place", rank)
    if start is None or width is None:
        return sizes
    focus.above = Cupboard(width, starts[0].side, start)
    return [size for size in sizes if size is not starts[0] and size is not widths[0]]


def note_below(focus: Focus, sentence: Sentence) -> None:
    """Place what is under the middle of a window, once it is known where the window is."""
    for i, count in sentence.marks("centred"):
        if is_under(sentence.words, i + count):
            focus.below = [one for one in focus.subjects.openings if one.what not in ROUND_HOLES]
    middle = focus.above.middle() if focus.above is not None else None
    if focus.above is None or middle is None:
        return
    for opening in focus.below:
        say(opening.claims, focus.above.side, middle)
    focus.below = []
