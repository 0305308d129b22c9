"""What several checks of a profile share."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ledgerstone.workshop.lines import Path

Found = Iterator[tuple[Path, str]]


def at_least_one(items: Sequence[object], section: str, word: str) -> Found:
    """Yield a sentence where a list is empty."""
    if not items:
        yield (section,), f"write at least one {word}."


def named_once(names: Sequence[str], section: str, key: str) -> Found:
    """Yield a sentence for every name that stood before, in capitals or not."""
    seen: set[str] = set()
    for i, name in enumerate(names):
        if name.casefold() in seen:
            yield (section, i, key), f'"{name}" stands twice in [[{section}]]. Each stands once.'
        seen.add(name.casefold())


def each_once(words: Sequence[str], path: Path) -> Found:
    """Yield a sentence for every word that stood before."""
    for i, word in enumerate(words):
        if word in words[:i]:
            yield (*path, i), f'"{word}" stands twice.'
