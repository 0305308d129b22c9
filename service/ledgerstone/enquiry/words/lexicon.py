"""Phrases of all languages in one table each, found in a run of words without backtracking."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from functools import lru_cache
from typing import Final

from ledgerstone.enquiry.words import english, english_nouns, german

WordRun = tuple[str, ...]
_SHORTEST: Final = 5  # letters of a noun whose case may be taken off
_WORD: Final = re.compile(r"[^\W\d_]+(?:'(?!s\b)[^\W\d_]+)*|'s\b")


def plain(word: str) -> str:
    """Return a word as the tables have it: small letters, a straight apostrophe."""
    return word.lower().replace("\N{RIGHT SINGLE QUOTATION MARK}", "'")


class Phrases:
    """Phrases by their first word, the longest first; each has one tag."""

    def __init__(self, *tables: Mapping[str, str]) -> None:
        self._by_first: dict[str, list[tuple[WordRun, str]]] = {}
        self._words: set[str] = set()
        for table in tables:
            for tag, listed in table.items():
                self._add(tag, listed)
        for found in self._by_first.values():
            found.sort(key=lambda one: -len(one[0]))

    def _add(self, tag: str, listed: str) -> None:
        for phrase in listed.split(","):
            words = tuple(_WORD.findall(plain(phrase)))
            self._words.update(words)
            if words:
                self._by_first.setdefault(words[0], []).append((words, tag))

    def __contains__(self, word: str) -> bool:
        """Return whether any phrase has a word."""
        return word in self._words

    def at(self, words: Sequence[str], start: int) -> tuple[str, int] | None:
        """Return the tag of the longest phrase that begins at a word, and how many words it has."""
        for phrase, tag in self._by_first.get(words[start], ()):
            if tuple(words[start : start + len(phrase)]) == phrase:
                return tag, len(phrase)
        return None

    def all_in(self, words: Sequence[str]) -> Iterable[tuple[int, int, str]]:
        """Yield every phrase, left to right and apart: first word, count, tag."""
        end = 0
        for i, word in enumerate(words):
            if i < end or word not in self._by_first:
                continue
            found = self.at(words, i)
            if found is not None:
                yield i, found[1], found[0]
                end = i + found[1]


def _with_plurals(table: Mapping[str, str]) -> dict[str, str]:
    """Return a table of English nouns with the plural of each: "window ledge", "window ledges"."""
    return {
        tag: ",".join(form for noun in listed.split(",") for form in _forms(noun.strip()))
        for tag, listed in table.items()
    }


def _forms(noun: str) -> Iterable[str]:
    yield noun
    if not noun.endswith("s"):
        yield noun + ("es" if noun.endswith(("ch", "sh", "x")) else "s")


def _only(table: Mapping[str, str], *tags: str) -> dict[str, str]:
    return {tag: table[tag] for tag in tags if tag in table}


NOUNS: Final = Phrases(_with_plurals(english_nouns.NOUNS), german.NOUNS)
PLACES: Final = Phrases(english_nouns.PLACES, german.PLACES)
LABELS: Final = Phrases(english.LABELS, german.LABELS)
SIDES: Final = Phrases(english.SIDES, german.SIDES)
FROM: Final = Phrases({"from": english.FROM}, {"from": german.FROM})
_SIZE_ROLES: Final = (
    "long",
    "wide",
    "deep",
    "thick",
    "high",
    "dia",
    "across",
    "radius",
    "apart",
    "square",
)
ROLES: Final = Phrases(_only(english.ROLES, *_SIZE_ROLES), _only(german.ROLES, *_SIZE_ROLES))
AXES: Final = Phrases(_only(english.ROLES, "x", "y"), _only(german.ROLES, "x", "y"))
NUMBERS: Final[Mapping[str, float]] = {**german.NUMBERS, **english.NUMBERS}
_TABLES: Final = (NOUNS, PLACES, LABELS, SIDES, FROM, ROLES, AXES)
_MARKS: Final = {
    tag: Phrases(_only(english.MARKS, tag), _only(german.MARKS, tag)) for tag in english.MARKS
}


def mark(tag: str) -> Phrases:
    """Return the phrases of one kind of mark, like ``not`` or ``centred``."""
    return _MARKS[tag]


def is_hole(words: Sequence[str]) -> bool:
    """Return whether words begin with a name of a hole, or of what goes into one."""
    found = NOUNS.at(words, 0)
    return found is not None and found[0].startswith(("hole:", "open:"))


def is_listed(word: str) -> bool:
    """Return whether any table has a word."""
    return word in NUMBERS or any(word in table for table in (*_TABLES, *_MARKS.values()))


@lru_cache(maxsize=4096)
def noun_ending(word: str) -> str | None:
    """Return the tag of a German compound by how it ends, in any of its cases."""
    for form in (word, *(word.removesuffix(case) for case in german.CASES if word.endswith(case))):
        if form != word and (known := NOUNS.at((form,), 0)) and len(form) >= _SHORTEST:
            return known[0]
        for ending, tag in german.ENDINGS.items():
            if form.endswith(ending) and len(form) > len(ending):
                return tag
    return None
