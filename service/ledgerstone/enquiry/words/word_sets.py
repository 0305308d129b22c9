"""Sets of words, written as running text."""

from __future__ import annotations


def word_set(listed: str) -> frozenset[str]:
    """Return the words of a text that are apart by blanks."""
    return frozenset(listed.split())
