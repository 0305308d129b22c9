"""Sheets of paper over a window of the plane: what lies on each, in the page's own millimetres."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, Final, Literal

import shapely
from shapely.geometry import LineString, box

from ledgerstone import plane

SheetSize = Literal["a4", "a3", "letter", "tabloid"]
Pen = Literal["cut", "edge", "centre"]
# ISO 216; ANSI/ASME Y14.1, sizes A and B: 8 1/2 by 11 in, and 11 by 17 in.
PAPERS: Final[Mapping[str, tuple[float, float]]] = MappingProxyType(
    {
        "a4": (210.0, 297.0),
        "a3": (297.0, 420.0),
        "letter": (215.9, 279.4),
        "tabloid": (279.4, 431.8),
    }
)
MAX_SHEETS: Final = 60

_LEFT: Final = 13.0  # room for the cut marks beyond what a printer leaves blank
_TOP: Final = 21.0
_FOOT: Final = 42.0
_BLEED: Final = 2.0  # lines run on a little past the cut, so that a slip of the knife shows none
_KEY: Final = (30.0, 26.0)

Window = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Course:
    """A line of the plane, in mm, and the pen it is drawn with."""

    line: LineString
    pen: Pen


@dataclass(frozen=True, slots=True)
class SheetWord:
    """A word and the place in the plane where it begins, in mm."""

    at: tuple[float, float]
    text: str


@dataclass(frozen=True, slots=True)
class Tiling:
    """Columns and rows of sheets over a window of the plane, the window in their middle."""

    paper: SheetSize
    columns: int
    rows: int
    low: tuple[float, float]

    @property
    def tile(self) -> Window:
        """Where a sheet's part of the plane lies on its page: x0, y0, x1, y1 from the top left."""
        wide, high = PAPERS[self.paper]
        return _LEFT, _TOP, wide - _LEFT, high - _FOOT

    @property
    def step(self) -> tuple[float, float]:
        """How much of the plane a sheet shows, mm."""
        x0, y0, x1, y1 = self.tile
        return x1 - x0, y1 - y0

    def bounds(self, column: int, row: int) -> Window:
        """Part of the plane on one sheet; the first row is at the back."""
        wide, high = self.step
        x = self.low[0] + column * wide
        y = self.low[1] + (self.rows - 1 - row) * high
        return x, y, x + wide, y + high

    def cells(self) -> Iterable[tuple[int, int, str]]:
        """Every sheet's column, row and name: A1 is at the back left."""
        for row in range(self.rows):
            for column in range(self.columns):
                yield column, row, f"{_letters(column)}{row + 1}"


def _letters(column: int) -> str:
    first, last = divmod(column, 26)
    return (chr(ord("A") + first - 1) if first else "") + chr(ord("A") + last)


def tiling_of(window: Window, paper: SheetSize) -> Tiling:
    """Lay sheets over a window of the plane."""
    x0, y0, x1, y1 = window
    wide, high = Tiling(paper, 1, 1, (0.0, 0.0)).step
    columns, rows = (math.ceil(span - 1e-6) for span in ((x1 - x0) / wide, (y1 - y0) / high))
    low = ((x0 + x1 - columns * wide) / 2, (y0 + y1 - rows * high) / 2)
    return Tiling(paper, columns, rows, low)


def sheets(
    tiling: Tiling, courses: Sequence[Course], words: Sequence[SheetWord] = ()
) -> list[dict[str, Any]]:
    """Write what is drawn on each sheet that has a line to cut by, in the page's own mm."""
    written = []
    for column, row, name in tiling.cells():
        part = box(*tiling.bounds(column, row))
        if any(c.pen == "cut" and c.line.intersects(part) for c in courses):
            bounds = tiling.bounds(column, row)
            drawn = _drawn(tiling, bounds, courses)
            sheet_words = _words_on_sheet(tiling, bounds, words)
            written.append({"name": name, "courses": drawn, "words": sheet_words})
    return written


def _drawn(tiling: Tiling, part: Window, courses: Sequence[Course]) -> list[dict[str, Any]]:
    """Courses within one sheet's part of the plane and a little beyond, y down the page."""
    left, top, _, _ = tiling.tile
    window = plane.buffer(box(*part), _BLEED, join_style="mitre")
    drawn = []
    for course in courses:
        inside = plane.intersection(course.line, window)
        merged = shapely.line_merge(inside) if inside.geom_type == "MultiLineString" else inside
        for piece in shapely.get_parts(merged):
            if isinstance(piece, LineString) and piece.length > 0:
                points = [
                    (round(left + x - part[0], 3), round(top + part[3] - y, 3))
                    for x, y in piece.coords
                ]
                drawn.append({"pen": course.pen, "points": points})
    return drawn


def _words_on_sheet(
    tiling: Tiling, part: Window, words: Sequence[SheetWord]
) -> list[tuple[float, float, str]]:
    """Words that begin within one sheet's part of the plane."""
    left, top, _, _ = tiling.tile
    x0, y0, x1, y1 = part
    return [
        (round(left + word.at[0] - x0, 3), round(top + y1 - word.at[1], 3), word.text)
        for word in words
        if x0 <= word.at[0] < x1 and y0 <= word.at[1] < y1
    ]


def key(tiling: Tiling, courses: Sequence[Course], printed: Iterable[str]) -> dict[str, Any]:
    """Write a small map of the sheets, with the lines to cut by."""
    wide, high = tiling.step
    small = min(_KEY[0] / (tiling.columns * wide), _KEY[1] / (tiling.rows * high))
    names = set(printed)
    top = tiling.low[1] + tiling.rows * high
    return {
        "wide_mm": round(small * tiling.columns * wide, 3),
        "cell_mm": (round(small * wide, 3), round(small * high, 3)),
        "cells": [
            {
                "name": name,
                "x": round(small * column * wide, 3),
                "y": round(small * row * high, 3),
                "printed": name in names,
            }
            for column, row, name in tiling.cells()
        ],
        "courses": [
            [
                (round(small * (x - tiling.low[0]), 2), round(small * (top - y), 2))
                for x, y in course.line.simplify(0.5).coords
            ]
            for course in courses
            if course.pen == "cut"
        ],
    }
