"""Where each key of a TOML text stands: its path, such as ``("palette", 1, "name")``, to its place.

``tomllib`` judges the text; this reader only finds positions, and always reaches the end.
"""

from __future__ import annotations

import re
from contextlib import suppress
from dataclasses import dataclass
from typing import Final

from ledgerstone.json_types import KeyPath

LineSpan = tuple[int, int]

_BLANK: Final = " \t\r"
_BLANKS: Final = re.compile(r"[ \t\r]*+")
_BLANKS_AND_COMMENTS: Final = re.compile(r"(?:[ \t\r\n]++|#[^\n]*+)*+")
_BARE_KEY: Final = re.compile(r"[\w-]*+")
_BARE_VALUE: Final = re.compile(r"[^,\]}#\n]*+")
# What a string of each of TOML's four kinds holds, by the mark at either end of it.
_INSIDE: Final = {
    '"': re.compile(r'(?:[^"\\]++|\\.?)*+', re.DOTALL),
    "'": re.compile(r"[^']*+"),
    '"""': re.compile(r'(?:[^"\\]++|\\.?|"(?!""))*+', re.DOTALL),
    "'''": re.compile(r"(?:[^']++|'(?!''))*+"),
}


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
        self._noted: dict[KeyPath, int] = {}  # where each path is first met
        self._tables: dict[KeyPath, int] = {}  # occurrences of each [[name]] so far
        self.headers: list[Header] = []
        self.values: dict[KeyPath, LineSpan] = {}
        self.pairs: dict[KeyPath, LineSpan] = {}
        self._statement = 0  # where the last statement begins
        with suppress(RecursionError):  # as deep as the parser goes; the lines found so far do
            self._document()

    def line(self, path: KeyPath) -> int:
        """Line of the key, else of the nearest table around it; 0 if none is written."""
        for length in range(len(path), 0, -1):
            if path[:length] in self._noted:
                return self._line_of(self._noted[path[:length]])
        return 0

    @property
    def last_statement(self) -> int:
        """The line on which the last statement begins."""
        return self._line_of(self._statement)

    # --- statements -------------------------------------------------------------------------

    def _document(self) -> None:
        inside: KeyPath = ()
        self._skip_blank()
        while self._peek():
            self._statement = self._at
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
            self._pass(_BLANKS)
            parts.append(self._key_part())
            self._pass(_BLANKS)
            if self._peek() != ".":
                return tuple(parts)
            self._at += 1

    def _key_part(self) -> str:
        if self._peek() in ('"', "'"):
            return self._string()
        return self._pass(_BARE_KEY)

    # --- values -----------------------------------------------------------------------------

    def _value(self, path: KeyPath) -> None:
        self._pass(_BLANKS)
        self._note(path)
        start, first = self._at, self._peek()
        if first in ('"', "'"):
            self._string()
        elif first == "[":
            self._list(path)
        elif first == "{":
            self._inline_table(path)
        else:
            self._pass(_BARE_VALUE)
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
        inner = self._pass(_INSIDE[mark])
        self._at += len(mark)
        while len(mark) == 3 and self._peek() == quote:  # a long string may end in five quotes
            self._at += 1
        return inner

    # --- small steps ------------------------------------------------------------------------

    def _peek(self) -> str:
        return self._text[self._at : self._at + 1]

    def _pass(self, pattern: re.Pattern[str]) -> str:
        """Pass over what a pattern matches from here on, which may be nothing, and return it."""
        found = pattern.match(self._text, self._at)
        if found is None:
            return ""
        self._at = found.end()
        return found[0]

    def _skip_blank(self) -> None:
        self._pass(_BLANKS_AND_COMMENTS)

    def _line_of(self, at: int) -> int:
        return self._text.count("\n", 0, at) + 1

    def _note(self, path: KeyPath) -> None:
        self._noted.setdefault(path, self._at)
