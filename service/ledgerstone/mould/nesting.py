"""Pieces nested on stock: boards on sheets, and bars or strips on lengths, with the saw's kerf."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from ledgerstone.mould.guillotine import SPLITS, SheetRectangle, Split, packed

STEPS_PER_MM = 1000  # nests count in whole steps; what fits in mm still fits when rounded
MAX_ALL_SPLITS = 120  # up to this many, each way of splitting is tried and the best nest kept
MAX_IN_A_LOT = 200  # more are nested in lots, each on sheets of its own: time grows with the square


@dataclass(frozen=True, slots=True)
class SheetPart:
    """A rectangle to cut, and how many; it may be turned."""

    name: str
    length_mm: float
    width_mm: float
    count: int = 1


@dataclass(frozen=True, slots=True)
class NestedPiece:
    """One piece where it lies on its sheet, from the sheet's corner, as turned."""

    name: str
    sheet: int
    x_mm: float
    y_mm: float
    length_mm: float
    width_mm: float


@dataclass(frozen=True, slots=True)
class Nest:
    """All pieces on as few sheets as were found."""

    length_mm: float
    width_mm: float
    sheets: int
    placed: tuple[NestedPiece, ...]

    @property
    def used_mm2(self) -> float:
        """Area of the pieces, mm²."""
        return sum(part.length_mm * part.width_mm for part in self.placed)

    @property
    def waste_mm2(self) -> float:
        """Area of the sheets that no piece covers, saw cuts included, mm².

        Source
        ------
        Geometry.
        """
        return self.sheets * self.length_mm * self.width_mm - self.used_mm2

    @property
    def waste_percent(self) -> float:
        """Waste in percent of the sheets; zero if there is no sheet."""
        bought = self.sheets * self.length_mm * self.width_mm
        return 100 * self.waste_mm2 / bought if bought else 0.0


@dataclass(frozen=True, slots=True)
class CutLength:
    """One length to cut."""

    mark: str
    length_mm: float


@dataclass(frozen=True, slots=True)
class Stock:
    """One length as bought, and what is cut from it."""

    length_mm: float
    cuts: tuple[CutLength, ...]

    @property
    def waste_mm(self) -> float:
        """Length that no cut takes, saw cuts included, mm."""
        return self.length_mm - sum(cut.length_mm for cut in self.cuts)


def equal_parts(length_mm: float, most_mm: float) -> tuple[float, ...]:
    """Divide a length into the fewest equal parts, mm, that are at most ``most_mm`` long."""
    parts = max(1, math.ceil(length_mm / most_mm - 1e-9))
    return (length_mm / parts,) * parts


def nest(pieces: Iterable[SheetPart], length_mm: float, width_mm: float, kerf_mm: float) -> Nest:
    """Nest pieces on sheets, a saw's kerf between them.

    Raises
    ------
    ValueError
        A piece is larger than a sheet, whichever way it lies.
    """
    each = [piece for piece in pieces for _ in range(piece.count)]
    sheet = (_steps(length_mm) + _steps(kerf_mm), _steps(width_mm) + _steps(kerf_mm))
    sides = [_with_kerf(piece, kerf_mm) for piece in each]
    for piece, extent in zip(each, sides, strict=True):
        if min(extent) > min(sheet) or max(extent) > max(sheet):
            size = f"{piece.length_mm:g} × {piece.width_mm:g} mm"
            raise ValueError(f"{piece.name}, {size}, is larger than a sheet")
    if not each:
        return Nest(length_mm, width_mm, 0, ())
    tried = SPLITS if len(each) <= MAX_ALL_SPLITS else SPLITS[:1]
    found = min((_in_lots(sides, sheet, split) for split in tried), key=_sheets)
    by_sheet = sorted((*where, number) for number, where in enumerate(found))
    placed = tuple(_nested_at(each[number], on, where) for on, where, number in by_sheet)
    return Nest(length_mm, width_mm, _sheets(found), placed)


def cut_lengths(cuts: Iterable[CutLength], stock_mm: float, kerf_mm: float) -> tuple[Stock, ...]:
    """Cut lengths from stock, longest first, each from the first length that still holds it.

    Raises
    ------
    ValueError
        A cut is longer than the stock.
    """
    each = sorted(cuts, key=lambda cut: -cut.length_mm)
    kerf, room = _steps(kerf_mm), _steps(stock_mm) + _steps(kerf_mm)
    least = _steps(each[-1].length_mm) + kerf if each else 0
    stocks: list[list[CutLength]] = []
    left: dict[int, int] = {}  # of each length that holds another cut, by its place in the list
    for cut in each:
        takes = _steps(cut.length_mm) + kerf
        if takes > room:
            raise ValueError(f"{cut.mark}, {cut.length_mm:g} mm, is longer than the stock")
        into = next((n for n, rest in left.items() if takes <= rest), len(stocks))
        if into == len(stocks):
            left[into] = room
            stocks.append([])
        stocks[into].append(cut)
        left[into] -= takes
        if left[into] < least:
            del left[into]
    return tuple(Stock(stock_mm, tuple(stock)) for stock in stocks)


def fewest_stock(cuts: Iterable[CutLength], stock_mm: float) -> int:
    """Lower bound on the number of stock lengths: all cuts end to end, without kerf.

    Source
    ------
    The continuous bound of bin packing; Martello and Toth, *Knapsack Problems*, ch. 8, from memory.
    """
    return math.ceil(sum(cut.length_mm for cut in cuts) / stock_mm - 1e-9)


_Sides = tuple[int, int]
_Where = tuple[int, SheetRectangle]  # which sheet, and where on it


def _in_lots(sides: Sequence[_Sides], sheet: _Sides, split: Split) -> list[_Where]:
    """Pack rectangles on as many sheets as it takes, the longest first; return each one's place."""
    order = sorted(range(len(sides)), key=lambda i: (max(sides[i]), min(sides[i])), reverse=True)
    found: dict[int, _Where] = {}
    for first in range(0, len(order), MAX_IN_A_LOT):
        lot = order[first : first + MAX_IN_A_LOT]
        before = _sheets(found.values())
        places = packed([sides[i] for i in lot], sheet, split)
        found |= {i: (before + on, where) for i, (on, where) in zip(lot, places, strict=True)}
    return [found[i] for i in range(len(sides))]


def _sheets(found: Iterable[_Where]) -> int:
    return 1 + max((on for on, _ in found), default=-1)


def _with_kerf(piece: SheetPart, kerf_mm: float) -> _Sides:
    kerf = _steps(kerf_mm)
    return _steps(piece.length_mm) + kerf, _steps(piece.width_mm) + kerf


def _steps(length_mm: float) -> int:
    return round(length_mm * STEPS_PER_MM)


def _nested_at(piece: SheetPart, sheet: int, where: SheetRectangle) -> NestedPiece:
    """Return the piece where it lies, without its kerf, turned where the packing turned it."""
    turned = (where.length > where.width) != (piece.length_mm > piece.width_mm)
    length, width = piece.length_mm, piece.width_mm
    if turned and where.length != where.width:
        length, width = width, length
    x, y = where.x / STEPS_PER_MM, where.y / STEPS_PER_MM
    return NestedPiece(piece.name, sheet, x, y, length, width)
