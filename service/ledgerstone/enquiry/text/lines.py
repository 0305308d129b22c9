"""One line of a message."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class TextLine:
    """One line: its place in the text, how deep it is quoted, and its own words."""

    start: int
    end: int
    depth: int
    words: str
