"""A straight bar by its position, and its anchorage."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

import shapely
from shapely.geometry import LineString, Point
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.outline import XY
from ledgerstone.steel_rules import anchorage_mm
from ledgerstone.workshop.records import Workshop

BETWEEN_BARS_MM = 25.0  # between a pair of bars; EN 1992-1-1 8.2(2) with grains up to 16 mm: 21 mm
SHORTEST_BAR_MM = 150.0
# An opening no longer than this, or an inward edge, has no bar beside it and no section of its own:
# a hand spans it; common practice, no source.
OPENING_MM = 100.0
INSIDE_MM = 0.05  # how far inside its cover a bar is laid


@dataclass(frozen=True, slots=True)
class PlacedBar:
    """A straight bar in mid-depth: its ends in plane slab mm, and why it is there.

    ``anchored`` is the share of its strength that its shorter end anchors, counted from the place
    that it is for: EN 1992-1-1 8.4.3, in proportion to its length there.
    """

    mark: str
    diameter_mm: float
    start_mm: XY
    end_mm: XY
    why: str
    anchored: float = 1.0

    @property
    def length_mm(self) -> float:
        """Cut length, to the whole millimetre below.

        Source
        ------
        Geometry; down to the whole millimetre so that cover is kept: common practice, no source.
        """
        return float(math.floor(math.dist(self.start_mm, self.end_mm)))

    @property
    def line(self) -> LineString:
        """It as a line."""
        return LineString([self.start_mm, self.end_mm])


@dataclass(frozen=True, slots=True)
class BarStock:
    """The bar that a workshop keeps: its diameter, and the length that anchors all of it."""

    diameter_mm: float
    anchorage_mm: float

    @classmethod
    def of(cls, workshop: Workshop) -> BarStock | None:
        """Read it from a profile; None if no bars are kept."""
        bar = workshop.steel.bar_mm
        return None if bar is None else cls(bar, anchorage_mm(workshop, bar))


def clipped(
    line: LineString, needed: BaseGeometry, room: BaseGeometry, stock: BarStock, why: str
) -> Iterator[PlacedBar]:
    """The part of a line that lies in the concrete, by the place or stretch that needs it."""
    parts = [
        p for p in shapely.get_parts(plane.intersection(line, room)) if p.length >= SHORTEST_BAR_MM
    ]
    if not parts:
        return
    part = min(parts, key=lambda piece: piece.distance(needed))
    (x0, y0), (x1, y1) = part.coords[0], part.coords[-1]
    start, end = sorted([(round(x0, 1), round(y0, 1)), (round(x1, 1), round(y1, 1))])
    beyond = min(Point(xy).distance(needed) for xy in (start, end))
    anchored = round(min(beyond / stock.anchorage_mm, 1.0), 2)
    yield PlacedBar("", stock.diameter_mm, start, end, why, anchored)


def without_doubles(bars: Iterable[PlacedBar]) -> list[PlacedBar]:
    """Leave out a bar that lies along one already there: concrete must get between two bars."""
    kept: list[PlacedBar] = []
    beside: list[BaseGeometry] = []
    for bar in bars:
        line = bar.line
        if not any(longer.contains(line) for longer in beside):
            kept.append(bar)
            beside.append(plane.buffer(line, BETWEEN_BARS_MM))
    return kept
