"""Steel cut to a list: bars from stock lengths with least waste, mesh in pieces, and their mass.

The positions of bars are in ``reinforcement``; here they are only cut and weighed.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from ledgerstone.mould.nesting import (
    CutLength,
    Nest,
    SheetPart,
    Stock,
    cut_lengths,
    fewest_stock,
    nest,
)
from ledgerstone.quantities import MM2_PER_M2

STEEL_KG_PER_M3 = 7850.0  # EN 1991-1-1 table A.4 has 77.0 to 78.5 kN/m³
GLASS_KG_PER_M3 = 2000.0  # bars and mesh of glass fibre in resin, 1900 to 2100: from memory


@dataclass(frozen=True, slots=True)
class Bar:
    """A straight bar by its mark, and how many of it."""

    mark: str
    diameter_mm: float
    length_mm: float
    count: int = 1
    kg_per_m3: float = STEEL_KG_PER_M3

    @property
    def kg(self) -> float:
        """Mass of all of them.

        Source
        ------
        As ``bar_kg_per_m``.
        """
        return self.count * self.length_mm / 1000 * bar_kg_per_m(self.diameter_mm, self.kg_per_m3)


@dataclass(frozen=True, slots=True)
class MeshPiece:
    """A rectangle of welded mesh by its mark, and how many; the same wires both ways.

    Attributes
    ----------
    cut_away_mm2
        Area cut out of each: openings, and what would lie outside the slab.
    """

    mark: str
    wire_mm: float
    pitch_mm: float
    length_mm: float
    width_mm: float
    count: int = 1
    cut_away_mm2: float = 0.0
    kg_per_m3: float = STEEL_KG_PER_M3

    @property
    def kg(self) -> float:
        """Mass of all of them once they are cut.

        Source
        ------
        As ``mesh_kg_per_m2``.
        """
        area_m2 = (self.length_mm * self.width_mm - self.cut_away_mm2) / MM2_PER_M2
        return self.count * area_m2 * mesh_kg_per_m2(self.wire_mm, self.pitch_mm, self.kg_per_m3)


@dataclass(frozen=True, slots=True)
class CutStock:
    """The stock lengths of one diameter and what is cut from each.

    ``fewest`` is how many no way of cutting can do without; where ``lengths`` are as many, the
    waste is the least there is.
    """

    diameter_mm: float
    lengths: tuple[Stock, ...]
    fewest: int
    kg_per_m3: float

    @property
    def waste_mm(self) -> float:
        """What is left over of all the lengths, saw cuts in it."""
        return sum(stock.waste_mm for stock in self.lengths)

    @property
    def bought_kg(self) -> float:
        """Mass of the lengths as bought.

        Source
        ------
        As ``bar_kg_per_m``.
        """
        bought_mm = sum(stock.length_mm for stock in self.lengths)
        return bought_mm / 1000 * bar_kg_per_m(self.diameter_mm, self.kg_per_m3)


@dataclass(frozen=True, slots=True)
class CutList:
    """All bars of an order, by diameter from the thinnest; ``kg`` is what goes into the slabs."""

    stocks: tuple[CutStock, ...]
    kg: float

    @property
    def bought_kg(self) -> float:
        """Mass of all that is bought."""
        return sum(stock.bought_kg for stock in self.stocks)


def density_of(material: str) -> float:
    """Return what a cubic metre of a profile's reinforcement weighs, kg, by its material.

    Source
    ------
    ``STEEL_KG_PER_M3``: EN 1991-1-1; ``GLASS_KG_PER_M3``: from memory.
    """
    return GLASS_KG_PER_M3 if material == "glass-fibre" else STEEL_KG_PER_M3


def bar_kg_per_m(d_mm: float, kg_per_m3: float = STEEL_KG_PER_M3) -> float:
    """Mass of a metre of round bar.

    Source
    ------
    ``π d²/4 × 7850 kg/m³``, the basis of EN 10080's nominal masses.
    """
    return math.pi * d_mm**2 / 4 * kg_per_m3 / 1e6


def mesh_kg_per_m2(wire_mm: float, pitch_mm: float, kg_per_m3: float = STEEL_KG_PER_M3) -> float:
    """Mass of a square metre of square mesh, two layers of wires.

    Source
    ------
    ``2 A × 7850``, A the steel of a metre's width one way; BS 4483's fabrics.
    """
    return 2 * bar_kg_per_m(wire_mm, kg_per_m3) * 1000 / pitch_mm


def cut_list(bars: Sequence[Bar], stock_length_mm: float, kerf_mm: float = 0.0) -> CutList:
    """Cut bars from stock lengths of each diameter, with as few lengths as were found.

    By the packing library that nests the boards, longest first; a bolt cutter has no kerf.

    Raises
    ------
    ValueError
        A bar is longer than the stock.
    """
    diameters = sorted({bar.diameter_mm for bar in bars if bar.count})
    stocks = tuple(_stock(d, bars, stock_length_mm, kerf_mm) for d in diameters)
    return CutList(stocks, sum(bar.kg for bar in bars))


def _stock(
    diameter_mm: float, bars: Sequence[Bar], stock_length_mm: float, kerf_mm: float
) -> CutStock:
    same = [bar for bar in bars if bar.diameter_mm == diameter_mm]
    cuts = [CutLength(bar.mark, bar.length_mm) for bar in same for _ in range(bar.count)]
    lengths = cut_lengths(cuts, stock_length_mm, kerf_mm)
    fewest = fewest_stock(cuts, stock_length_mm)
    return CutStock(diameter_mm, lengths, fewest, same[0].kg_per_m3)


def mesh_nest(pieces: Sequence[MeshPiece], length_mm: float, width_mm: float) -> Nest:
    """Nest pieces of one kind of mesh on its sheets.

    Raises
    ------
    ValueError
        A piece is larger than a sheet.
    """
    flat = [SheetPart(piece.mark, piece.length_mm, piece.width_mm, piece.count) for piece in pieces]
    return nest(flat, length_mm, width_mm, 0.0)
