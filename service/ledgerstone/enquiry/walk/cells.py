"""The cells of a line of a table: between bars, tabs, dashes, semicolons, commas or blanks."""

from __future__ import annotations

import re
from typing import Final

from ledgerstone.enquiry.text.lines import TextLine

_BARS: Final = re.compile(r"[ \t]*\|[ \t]*")
_TABS: Final = re.compile(r"\t")
_DASHES: Final = re.compile(r"(?<=\S)[ \t]{1,9}[-–—/;][ \t]{1,9}(?=\S)")
_SEMICOLONS: Final = re.compile(r"[ \t]*;[ \t]*")
_COMMAS: Final = re.compile(r"(?<=\S),(?=\S)")
_APART: Final = re.compile(r",\s|\s,")
_FEWEST_DASHES: Final = 2
_FEWEST_COMMAS: Final = 3
_BLANKS: Final = re.compile(r" {2,}")


def cells_of(line: TextLine) -> list[tuple[int, int]]:
    """Return the spans of a line's cells."""
    start = line.end - len(line.words)
    cells: list[tuple[int, int]] = []
    at = 0
    pattern = _BARS if "|" in line.words else _TABS if "\t" in line.words else _BLANKS
    if pattern is _BLANKS and len(_DASHES.findall(line.words)) >= _FEWEST_DASHES:
        pattern = _DASHES
    if pattern is _BLANKS and line.words.count(";") >= _FEWEST_DASHES:
        pattern = _SEMICOLONS
    commas = len(_COMMAS.findall(line.words))
    if pattern is _BLANKS and commas >= _FEWEST_COMMAS and not _APART.search(line.words):
        pattern = _COMMAS
    for found in pattern.finditer(line.words):
        is_blank = pattern is _BARS and not found.start() and found[0][:1].isspace()
        if is_blank:
            cells.append((start, start))  # the cell goes on from the row above
        elif found.start() > at or (cells and pattern is not _BLANKS) or pattern is _TABS:
            cells.append((start + at, start + found.start()))
        at = found.end()
    if at < len(line.words.rstrip()):
        cells.append((start + at, start + len(line.words.rstrip())))
    return cells
