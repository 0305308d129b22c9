"""Slips in words that matter: a letter left out, doubled, or changed with its neighbour.

"windowsil", "worktopp" and "lenght" are read as the words that they are nearest to. Each slip of a
listed word is looked up, so that a word costs the same however many are listed.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from typing import Final

from ledgerstone.enquiry.words.lexicon import is_listed
from ledgerstone.enquiry.words.word_sets import word_set

_WORDS: Final = word_set(
    "worktop worktops countertop countertops windowsill windowsills splashback splashbacks"
    " backsplash upstand upstands hearth hearths shelves counter counters island vanity cutout"
    " cutouts thickness diameter length undermount mantelpiece tabletop washstand centred centered"
    " faucet parasol concrete basin arbeitsplatte arbeitsplatten fensterbank fensterbänke"
    " tischplatte waschtisch waschtischplatte durchmesser ausschnitt ausschnitte küchenplatte"
    " betonplatte rückwand spritzschutz waschbecken kochfeld"
)
# What is a word of its own though it is a slip of one above.
_OWN: Final = word_set(
    "heath heaths earth earths heart hearts basic basis centre center count lengthy"
    " island's inland upstanding concert basins facet facets"
)
_SIDES: Final = ("vorderkante", "hinterkante", "vorderseite", "rückseite")
_SHORTEST: Final = 5
# What is written between two sizes for "by": Dutch, Spanish, French, Italian.
_BY_ABROAD: Final = word_set("bij por sur per")


def spelled(word: str, *, is_between: bool = False) -> str:
    """Return a word as the tables spell it, where it is one slip from one of their words.

    Parameters
    ----------
    is_between
        Whether a size stands right before the word, and a number right after it.
    """
    if is_between and word in _BY_ABROAD:
        return "by"
    if len(word) < _SHORTEST or word in _OWN or not word.isalpha():
        return word
    for side in _SIDES:
        if word.endswith(side):
            return side  # "Plattenvorderkante"
    known = _slips().get(word)
    return known if known is not None and not is_listed(word) else word


@cache
def _slips() -> dict[str, str]:
    """Return each listed word by each of its slips; what may be two words is none."""
    found: dict[str, str] = {}
    twice: set[str] = set()
    for known in sorted(_WORDS):
        for slip in {*_slips_of(known)} - _WORDS - _OWN:
            if found.setdefault(slip, known) != known:
                twice.add(slip)
    return {slip: known for slip, known in found.items() if slip not in twice}


def _slips_of(word: str) -> Iterator[str]:
    for i in range(1, len(word)):
        yield word[:i] + word[i + 1 :]
        yield word[:i] + word[i] + word[i:]
        if i + 1 < len(word):
            yield word[:i] + word[i + 1] + word[i] + word[i + 2 :]
