"""A name in a sentence: what it names, and the words about it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from ledgerstone.enquiry.words.word_sets import word_set

_INDEFINITE: Final = word_set("a an one another ein eine einen einem einer some any")


@dataclass(slots=True)
class Mention:
    """Words of a sentence that name something.

    ``kind`` is slab, open, hole, thing, room, leg or feature; ``name`` is which one.
    """

    start: int
    end: int
    kind: str
    name: str
    preposition: str = ""
    determiner: str = ""
    count: int = 0
    is_plural: bool = False
    is_denied: bool = False
    is_old: bool = False
    names_hole: bool = False
    hole_kind: str = ""

    @property
    def is_indefinite(self) -> bool:
        """Whether it brings something new: a, one, another, a number."""
        return self.determiner in _INDEFINITE or self.count > 0
