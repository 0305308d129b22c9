"""What several checks of a profile share."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message

FoundFaults = Iterator[tuple[KeyPath, Message]]


def at_least_one(items: Sequence[object], path: KeyPath, thing: str) -> FoundFaults:
    """Yield a message where a list of some thing is empty."""
    if not items:
        yield path, Message("fault-at-least-one", thing=thing)


def named_once(names: Sequence[str], section: str, key: str) -> FoundFaults:
    """Yield a message for every repeated name, in capitals or not."""
    seen: set[str] = set()
    for i, name in enumerate(names):
        if name.casefold() in seen:
            yield (section, i, key), Message("fault-twice-in", name=name, table=f"[[{section}]]")
        seen.add(name.casefold())


def each_once(words: Sequence[str], path: KeyPath) -> FoundFaults:
    """Yield a message for every repeated word."""
    for i, word in enumerate(words):
        if word in words[:i]:
            yield (*path, i), Message("fault-twice", name=word)
