"""Where each key of a TOML text stands: its path, such as ``("palette", 1, "name")``, to its place.

``tomllib`` judges the text; this reader only finds positions, and always reaches the end.
"""

from __future__ import annotations

from bisect import bisect_right
from contextlib import suppress
from dataclasses import dataclass

from ledgerstone.json_types import KeyPath

LineSpan = tuple[int, int]

_BLANK = " \t\r"
_BARE_END = ",]}#\n"


@dataclass(frozen=True, slots=True)
class Header:
    """One ``[table]`` or ``[[item]]``: its path, and from where to where its brackets stand."""

    path: KeyPath
    span: LineSpan


class KeyLines:
    """The places of every key, table and item of one TOML text.

    Parameters
    ----------
    text
        The whole TOML document.

    Attributes
    ----------
    headers
        In their order.
    values
        Of each key and each item of a list, the span of its value.
    pairs
        Of each key, the span of the key with its value.
    """

    def __init__(self, text: str) -> None:
        self._text = text
        self._at = 0
        self._breaks = [i for i, c in enumerate(text) if c == "\n"]
        self._lines: dict[KeyPath, int] = {}
        self._tables: dict[KeyPath, int] = {}  # occurrences of each [[name]] so far
        self.headers: list[Header] = []
        self.values: dict[KeyPath, LineSpan] = {}
        self.pairs: dict[KeyPath, LineSpan] = {}
        self.last_statement = 1  # the line on which the last statement begins
        with suppress(RecursionError):  # as deep as the parser goes; the lines found so far do
            self._document()

    def line(self, path: KeyPath) -> int:
        """Line of the key, else of the nearest table around it; 0 if none is written."""
        for length in range(len(path), 0, -1):
            if path[:length] in self._lines:
                return self._lines[path[:length]]
        return 0

    # --- statements -------------------------------------------------------------------------

    def _document(self) -> None:
        inside: KeyPath = ()
        self._skip_blank()
        while self._peek():
            self.last_statement = self._line_now()
            if self._peek() == "[":
                inside = self._header()
            else:
                self._pair(inside)
            self._skip_blank()

    def _header(self) -> KeyPath:
        start = self._at
        double = self._text.startswith("[[", self._at)
        self._at += 2 if double else 1
        parts = self._key()
        self._at += 2 if double else 1
        path = self._placed(parts[:-1])
        path = (*path, *parts[-1:])
        self._note(path)
        if double:
            count = self._tables.get(path, 0)
            self._tables[path] = count + 1
            path = (*path, count)
            self._note(path)
        self.headers.append(Header(path, (start, self._at)))
        return path

    def _placed(self, parts: KeyPath) -> KeyPath:
        """Path of a header's parts, each list of tables standing for its latest item."""
        path: KeyPath = ()
        for part in parts:
            path = (*path, part)
            self._note(path)
            if path in self._tables:
                path = (*path, self._tables[path] - 1)
        return path

    def _pair(self, inside: KeyPath) -> None:
        start = self._at
        path = inside
        for part in self._key():
            path = (*path, part)
            self._note(path)
        if self._peek() == "=":
            self._at += 1
        self._value(path)
        self.pairs[path] = (start, self.values[path][1])
        self._at = max(self._at, start + 1)  # always forwards, for any text

    # --- keys -------------------------------------------------------------------------------

    def _key(self) -> KeyPath:
        parts: list[str] = []
        while True:
            self._skip(_BLANK)
            parts.append(self._key_part())
            self._skip(_BLANK)
            if self._peek() != ".":
                return tuple(parts)
            self._at += 1

    def _key_part(self) -> str:
        if self._peek() in ('"', "'"):
            return self._string()
        start = self._at
        while self._peek().isalnum() or self._peek() in ("_", "-"):
            self._at += 1
        return self._text[start : self._at]

    # --- values -----------------------------------------------------------------------------

    def _value(self, path: KeyPath) -> None:
        self._skip(_BLANK)
        self._note(path)
        start, first = self._at, self._peek()
        if first in ('"', "'"):
            self._string()
        elif first == "[":
            self._list(path)
        elif first == "{":
            self._inline_table(path)
        else:
            while self._peek() and self._peek() not in _BARE_END:
                self._at += 1
        self.values[path] = (start, start + len(self._text[start : self._at].rstrip(_BLANK)))

    def _list(self, path: KeyPath) -> None:
        self._at += 1
        index = 0
        self._skip_blank()
        while self._peek() not in ("]", ""):
            start = self._at
            self._value((*path, index))
            index += 1
            self._comma(start)
        self._at += 1

    def _inline_table(self, path: KeyPath) -> None:
        self._at += 1
        self._skip_blank()
        while self._peek() not in ("}", ""):
            start = self._at
            self._pair(path)
            self._comma(start)
        self._at += 1

    def _comma(self, start: int) -> None:
        self._skip_blank()
        if self._peek() == ",":
            self._at += 1
        self._at = max(self._at, start + 1)
        self._skip_blank()

    def _string(self) -> str:
        """Pass over a string of any of TOML's four kinds; its text, escapes left as they stand."""
        quote = self._peek()
        mark = quote * 3 if self._text.startswith(quote * 3, self._at) else quote
        self._at += len(mark)
        start = self._at
        while self._at < len(self._text) and not self._text.startswith(mark, self._at):
            self._at += 2 if quote == '"' and self._peek() == "\\" else 1
        inner = self._text[start : self._at]
        self._at += len(mark)
        while len(mark) == 3 and self._peek() == quote:  # a long string may end in five quotes
            self._at += 1
        return inner

    # --- small steps ------------------------------------------------------------------------

    def _peek(self) -> str:
        return self._text[self._at : self._at + 1]

    def _skip(self, characters: str) -> None:
        while self._peek() and self._peek() in characters:
            self._at += 1

    def _skip_blank(self) -> None:
        self._skip(_BLANK + "\n")
        while self._peek() == "#":
            end = self._text.find("\n", self._at)
            self._at = len(self._text) if end < 0 else end
            self._skip(_BLANK + "\n")

    def _line_now(self) -> int:
        return bisect_right(self._breaks, self._at - 1) + 1

    def _note(self, path: KeyPath) -> None:
        self._lines.setdefault(path, self._line_now())
