"""Pieces nested on stock: boards on sheets, and bars or strips on lengths, with the saw's kerf.

The only module that knows rectpack, whose guillotine packers suit a panel saw.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import rectpack

STEPS_PER_MM = 1000  # rectpack counts in whole steps; what fits in mm still fits when rounded
MANY_PIECES = 120  # up to so many, several packers are tried and the best nest kept
AT_ONCE = 200  # more are nested in lots, each on sheets of its own: time grows with the square
_PACKERS = (
    rectpack.GuillotineBssfSas,
    rectpack.GuillotineBafMaxas,
    rectpack.GuillotineBlsfLas,
)


@dataclass(frozen=True, slots=True)
class Piece:
    """A rectangle to cut, so many times; it may be turned."""

    name: str
    length_mm: float
    width_mm: float
    count: int = 1


@dataclass(frozen=True, slots=True)
class Placed:
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
    placed: tuple[Placed, ...]

    @property
    def used_mm2(self) -> float:
        """Area of the pieces."""
        return sum(one.length_mm * one.width_mm for one in self.placed)

    @property
    def waste_mm2(self) -> float:
        """Area of the sheets that no piece takes, saw cuts in it."""
        return self.sheets * self.length_mm * self.width_mm - self.used_mm2

    @property
    def waste_percent(self) -> float:
        """Waste in percent of the sheets; nought where there is no sheet."""
        bought = self.sheets * self.length_mm * self.width_mm
        return 100 * self.waste_mm2 / bought if bought else 0.0


@dataclass(frozen=True, slots=True)
class Cut:
    """One length to cut."""

    mark: str
    length_mm: float


@dataclass(frozen=True, slots=True)
class Stock:
    """One length as bought, and what is cut from it."""

    length_mm: float
    cuts: tuple[Cut, ...]

    @property
    def waste_mm(self) -> float:
        """What no cut takes, saw cuts in it."""
        return self.length_mm - sum(cut.length_mm for cut in self.cuts)


def equal_parts(length_mm: float, most_mm: float) -> tuple[float, ...]:
    """Return a length in as few equal parts as stock of ``most_mm`` gives: one where it fits."""
    parts = max(1, math.ceil(length_mm / most_mm - 1e-9))
    return (length_mm / parts,) * parts


def nest(pieces: Iterable[Piece], length_mm: float, width_mm: float, kerf_mm: float) -> Nest:
    """Nest pieces on sheets, a saw's kerf between them.

    Raises
    ------
    ValueError
        A piece is larger than a sheet, whichever way it lies.
    """
    each = [piece for piece in pieces for _ in range(piece.count)]
    sheet = (_steps(length_mm) + _steps(kerf_mm), _steps(width_mm) + _steps(kerf_mm))
    sides = [_with_kerf(piece, kerf_mm) for piece in each]
    for piece, mine in zip(each, sides, strict=True):
        if min(mine) > min(sheet) or max(mine) > max(sheet):
            size = f"{piece.length_mm:g} × {piece.width_mm:g} mm"
            raise ValueError(f"{piece.name}, {size}, is larger than a sheet")
    if not each:
        return Nest(length_mm, width_mm, 0, ())
    tried = _PACKERS if len(each) <= MANY_PIECES else _PACKERS[:1]
    packed = min((_packed(sides, sheet, packer, turning=True) for packer in tried), key=_sheets)
    placed = tuple(_lying(each[where[-1]], where) for where in packed)
    return Nest(length_mm, width_mm, _sheets(packed), placed)


def cut_lengths(cuts: Iterable[Cut], stock_mm: float, kerf_mm: float) -> tuple[Stock, ...]:
    """Cut lengths from stock, longest first, each from the first length that still holds it.

    A bar is nested as a strip one step wide on stock one step wide, by the same library.

    Raises
    ------
    ValueError
        A cut is longer than the stock.
    """
    each = tuple(cuts)
    room = _steps(stock_mm) + _steps(kerf_mm)
    lengths = [(_steps(cut.length_mm) + _steps(kerf_mm), 1) for cut in each]
    for cut, (length, _) in zip(each, lengths, strict=True):
        if length > room:
            raise ValueError(f"{cut.mark}, {cut.length_mm:g} mm, is longer than the stock")
    packed = _packed(lengths, (room, 1), _PACKERS[0], turning=False) if each else []
    return tuple(
        Stock(stock_mm, tuple(each[rid] for sheet, *_, rid in packed if sheet == i))
        for i in range(_sheets(packed))
    )


def fewest_stock(cuts: Iterable[Cut], stock_mm: float) -> int:
    """Lengths that no way of cutting can do without: all cuts end to end, without kerf."""
    return math.ceil(sum(cut.length_mm for cut in cuts) / stock_mm - 1e-9)


_Sides = tuple[int, int]
_Where = tuple[int, int, int, int, int, int]  # sheet, x, y, along x, along y, which piece


def _packed(sides: Sequence[_Sides], sheet: _Sides, packer: type, *, turning: bool) -> list[_Where]:
    """Pack rectangles into as many sheets as it takes, in steps, the longest side first."""
    order = sorted(range(len(sides)), key=lambda i: (max(sides[i]), min(sides[i])), reverse=True)
    packed: list[_Where] = []
    for first in range(0, len(order), AT_ONCE):
        lot = order[first : first + AT_ONCE]
        before = _sheets(packed)
        found = _lot(sides, lot, sheet, packer, turning=turning)
        packed += [(before + on, x, y, a, b, rid) for on, x, y, a, b, rid in found]
    return packed


def _lot(
    sides: Sequence[_Sides], lot: Sequence[int], sheet: _Sides, packer: type, *, turning: bool
) -> list[_Where]:
    packing = rectpack.newPacker(
        mode=rectpack.PackingMode.Offline,
        bin_algo=rectpack.PackingBin.BFF,
        pack_algo=packer,
        sort_algo=rectpack.SORT_NONE,
        rotation=turning,
    )
    for i in lot:
        packing.add_rect(*sides[i], rid=i)
    packing.add_bin(*sheet, count=math.inf)
    packing.pack()
    return sorted(packing.rect_list())


def _sheets(packed: Sequence[_Where]) -> int:
    return 1 + max((where[0] for where in packed), default=-1)


def _with_kerf(piece: Piece, kerf_mm: float) -> _Sides:
    kerf = _steps(kerf_mm)
    return _steps(piece.length_mm) + kerf, _steps(piece.width_mm) + kerf


def _steps(length_mm: float) -> int:
    return round(length_mm * STEPS_PER_MM)


def _lying(piece: Piece, where: _Where) -> Placed:
    """Return the piece where it lies, without its kerf, turned where the packer turned it."""
    sheet, x, y, along_x, along_y, _ = where
    turned = (along_x > along_y) != (piece.length_mm > piece.width_mm) and along_x != along_y
    length, width = piece.length_mm, piece.width_mm
    if turned:
        length, width = width, length
    return Placed(piece.name, sheet, x / STEPS_PER_MM, y / STEPS_PER_MM, length, width)
