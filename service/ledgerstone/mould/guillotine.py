"""Rectangles packed on sheets by cuts from side to side, which are all that a panel saw makes.

A sheet is a list of free rectangles. A piece goes into the one whose shorter side it leaves least
of, at the corner nearest the origin, and a cut along one of the piece's sides divides what is left
in two. Offcuts are never merged: two that lie on either side of an earlier cut can make a
pinwheel, which no saw cuts.

Source
------
Jylänki, A Thousand Ways to Pack the Bin (2010), 2.2: the guillotine algorithm, best short
side fit, and the splits by shorter leftover axis and by shorter axis.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Literal, NamedTuple

Split = Literal["shorter leftover", "shorter side"]
SPLITS: tuple[Split, ...] = ("shorter leftover", "shorter side")


class SheetRectangle(NamedTuple):
    """A rectangle on a sheet, in whole steps, from the sheet's corner."""

    x: int
    y: int
    length: int
    width: int


@dataclass(slots=True)
class Packing:
    """Pieces placed one by one, each on the first sheet that takes it.

    Attributes
    ----------
    free
        The free rectangles of each sheet.
    """

    length: int
    width: int
    split: Split
    free: list[list[SheetRectangle]] = field(default_factory=list)

    def place(self, length: int, width: int) -> tuple[int, SheetRectangle]:
        """Place one piece; return which sheet it is on, and where.

        Raises
        ------
        ValueError
            It is larger than a sheet.
        """
        ways = ((length, width), (width, length))
        for number, free in enumerate(self.free):
            placed = self._placed(free, ways)
            if placed is not None:
                return number, placed
        fresh = [SheetRectangle(0, 0, self.length, self.width)]
        placed = self._placed(fresh, ways)
        if placed is None:
            raise ValueError(f"{length} × {width} steps is larger than a sheet")
        self.free.append(fresh)
        return len(self.free) - 1, placed

    def _placed(
        self, free: list[SheetRectangle], ways: Sequence[tuple[int, int]]
    ) -> SheetRectangle | None:
        """Place a piece on one sheet, taking what it leaves into what is free."""
        fits = (
            (min(rectangle.length - a, rectangle.width - b), turned, number)
            for number, rectangle in enumerate(free)
            for turned, (a, b) in enumerate(ways)
            if a <= rectangle.length and b <= rectangle.width
        )
        best = min(fits, default=None)
        if best is None:
            return None
        _, turned, number = best
        one, (a, b) = free.pop(number), ways[turned]
        free += [rest for rest in self._offcuts(one, a, b) if rest.length and rest.width]
        return SheetRectangle(one.x, one.y, a, b)

    def _offcuts(
        self, rectangle: SheetRectangle, a: int, b: int
    ) -> tuple[SheetRectangle, SheetRectangle]:
        """Return what is left beyond, and beside, a piece at the corner of a free rectangle."""
        beside, beyond = rectangle.length - a, rectangle.width - b
        leftover = self.split == "shorter leftover"
        along = beside < beyond if leftover else rectangle.length < rectangle.width
        return (
            SheetRectangle(rectangle.x, rectangle.y + b, rectangle.length if along else a, beyond),
            SheetRectangle(rectangle.x + a, rectangle.y, beside, b if along else rectangle.width),
        )


def packed(
    sides: Sequence[tuple[int, int]], sheet: tuple[int, int], split: Split
) -> list[tuple[int, SheetRectangle]]:
    """Pack rectangles, which may be turned, in the given order; return each one's sheet and place.

    Raises
    ------
    ValueError
        One is larger than a sheet.
    """
    packing = Packing(*sheet, split)
    return [packing.place(*side) for side in sides]
