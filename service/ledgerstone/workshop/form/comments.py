"""The comments of a profile's text, beside and above its keys and tables: the maker's help."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.reading.lines import KeyLines

_LEFT_OUT: Final = re.compile(r"#\s*(\[|[a-z_0-9]+\s*=|\]|\"|\{)")  # a key or a table, no comment


def is_remark(line: str) -> bool:
    """Whether a line is a comment that says something, and no key or table that is left out."""
    return line.lstrip(" \t").startswith("#") and not _LEFT_OUT.match(line.lstrip(" \t"))


class Comments:
    """The comments of a text, by key and table."""

    def __init__(self, text: str, places: KeyLines) -> None:
        self._text = text
        self._lines = text.splitlines()
        self._places = places

    def of(self, path: KeyPath) -> str:
        """Return the comments above and beside a key or a table as one text; "" if none."""
        line = self._places.line(path)
        if line == 0 or not self._has_line(path):
            return ""
        above = [] if self._shares_line(path) else self._above(line - 1)
        return " ".join(filter(None, [*above, self._beside(path)])).strip()

    def _has_line(self, path: KeyPath) -> bool:
        return path in self._places.pairs or any(h.path == path for h in self._places.headers)

    def _shares_line(self, path: KeyPath) -> bool:
        start = self._places.pairs.get(path, (0, 0))[0]
        return bool(self._text[self._text.rfind("\n", 0, start) + 1 : start].strip())

    def _above(self, at: int) -> Sequence[str]:
        """The lines of comment right above a line; what is above a key left out is of that one."""
        found: list[str] = []
        while at > 0 and is_remark(self._lines[at - 1]):
            at -= 1
            found.append(self._lines[at])
        return [line.removeprefix("#").strip() for line in reversed(found)]

    def _beside(self, path: KeyPath) -> str:
        """The comment on the line on which a key's value, or a table's header, ends."""
        if path in self._places.pairs:
            end = self._places.pairs[path][1]
        else:
            end = next(h.span[1] for h in self._places.headers if h.path == path)
        rest = self._text[end : self._text.find("\n", end) if "\n" in self._text[end:] else None]
        return rest.strip().removeprefix("#").strip() if rest.strip().startswith("#") else ""
