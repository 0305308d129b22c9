"""A profile's text, with the positions of tables, keys and values, while it is changed."""

from __future__ import annotations

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.reading.lines import Header, KeyLines, LineSpan


class NoSuchPlace(Exception):
    """A profile has no such key or table for what is to be changed there."""


class PlacedText:
    """The text of a profile, what is to be written in it, and the places of what stands there.

    Parameters
    ----------
    text
        The whole TOML document.
    """

    def __init__(self, text: str) -> None:
        self._text = text
        self._pending: dict[KeyPath, str] = {}
        self._places: KeyLines | None = None

    @property
    def text(self) -> str:
        """The text with all changes in it."""
        self.settle()
        return self._text

    # --- where things stand -----------------------------------------------------------------

    def found(self) -> KeyLines:
        """The places of the text as it is now."""
        if self._places is None:
            self._places = KeyLines(self._text)
        return self._places

    def written(self, path: KeyPath) -> str:
        """What is written at a key or as an item; nothing if it has no value of its own.

        What is pending at the key itself counts, so that a form full of values is read once.
        """
        if path in self._pending:
            return self._pending[path]
        start, end = self.found().values.get(path, (0, 0))
        return self._text[start:end]

    def header(self, path: KeyPath) -> Header | None:
        """The header of a table that has one."""
        return next((h for h in self.found().headers if h.path == path), None)

    def headers_within(self, path: KeyPath) -> list[Header]:
        """The headers of a table, of its items and of what is inside it."""
        return [header for header in self.found().headers if within(header.path, path)]

    def region(self, path: KeyPath) -> LineSpan:
        """From a table's header to the last line that is its own or its inner tables'."""
        inside = self.headers_within(path)
        ends = [self.body_end(header) for header in inside]
        return self.line_start(inside[0].span[0]), max(ends)

    def body_end(self, header: Header) -> int:
        """The end of the last line of a header's own keys, and of the comments right under it."""
        headers = self.found().headers
        after = [h.span[0] for h in headers if h.span[0] > header.span[0]]
        limit = min(after, default=len(self._text))
        inside = [s[1] for s in self.found().pairs.values() if header.span[1] <= s[0] < limit]
        end = self.line_end(max(inside, default=header.span[1]))
        while self._text.startswith("#", under := self._text.find("\n", end) + 1) and under > end:
            end = self.line_end(under)
        return end

    def count(self, path: KeyPath) -> int:
        """How many items a list has, as tables or on a line."""
        found = self.found()
        count = 0
        while (*path, count) in found.values or self.header((*path, count)) is not None:
            count += 1
        return count

    def is_items(self, path: KeyPath) -> bool:
        """Return whether a list on a line holds tables."""
        return (*path, 0) in self.found().values and self.written((*path, 0)).startswith("{")

    def line_start(self, at: int) -> int:
        """Where the line of a place begins."""
        return self._text.rfind("\n", 0, at) + 1

    def line_end(self, at: int) -> int:
        """Where the line of a place ends, before its break."""
        end = self._text.find("\n", at)
        return len(self._text) if end < 0 else end - (self._text[end - 1] == "\r")

    def keys_end(self, header: Header) -> int:
        """The end of the line of a table's last own key."""
        inside = [span[1] for path, span in self.found().pairs.items() if path[:-1] == header.path]
        return self.line_end(max(inside, default=header.span[1]))

    # --- the text ---------------------------------------------------------------------------

    def settle(self) -> None:
        """Write what is pending, from the end so that no place moves before it is used."""
        places = sorted((self.found().values[path], toml) for path, toml in self._pending.items())
        self._pending = {}
        for (start, end), toml in reversed(places):
            self.replace((start, end), toml)

    def replace(self, span: LineSpan, text: str) -> None:
        """Replace a span of the text by another text."""
        self._text = self._text[: span[0]] + text + self._text[span[1] :]
        self._places = None


def within(path: KeyPath, table: KeyPath) -> bool:
    """Return whether a path is a table's or of something inside it."""
    return path[: len(table)] == table
