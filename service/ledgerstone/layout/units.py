"""Base units along a slab: of the widths that are sold, filling the run, one under each opening."""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache
from types import MappingProxyType
from typing import Final

from ledgerstone.layout.rounded_length import rounded_length
from ledgerstone.order import Unit, UnitFor
from ledgerstone.quantities import INCH_MM, UnitName
from ledgerstone.strength.rests import PANEL_MM

_PLAY_MM: Final = 1.0
_WIDEST_FILLER_MM: Final = 150.0
_LONGEST_MM: Final = 6_000.0  # no slab is cast as long, and what can't be cast is not laid out
_KEPT: Final = 256  # runs; trials of fixes, and a customer's next change, lay most runs out again
_USUAL_MM: Final = 600.0
_USUAL_COST: Final = 10.0
_FILLER, _FILLER_PER_MM, _FILLER_BETWEEN = 12.0, 0.15, 20.0
_OFF_CENTRE_PER_MM: Final = 1.0  # half an inch is dearer than a second filler at an end
_ODD: Final = 30.0
_NEAR_MM: Final = 60.0


@dataclass(frozen=True, slots=True)
class Span:
    """The span of an opening along the run, and the kind of unit that it needs."""

    start_mm: float
    end_mm: float
    use: UnitFor


@dataclass(frozen=True, slots=True)
class SoldWidths:
    """The widths in which units are sold, and the cost of each: the lower, the sooner it is taken.

    Attributes
    ----------
    step_mm
        What their sides are tried at.
    usual
        By their width in such steps.
    wide
        Those that are taken under an opening alone, in such steps.

    Source
    ------
    Widths as kitchen makers list them in metric countries and in North America: common practice,
    no source. The costs are our own choice: as many usual ones as go in, few others,
    and fillers at the ends before any between.
    """

    step_mm: float
    usual: Mapping[int, float]
    wide: tuple[int, ...]


_METRIC: Final = SoldWidths(
    10.0,
    MappingProxyType({15: 35.0, 20: 30.0, 30: 14.0, 40: 13.0, 45: 18.0, 50: 12.0, 60: 10.0}),
    (80, 90, 100, 120),
)
_INCHES: Final = SoldWidths(
    INCH_MM / 2,
    MappingProxyType({18: 30.0, 24: 14.0, 30: 15.0, 36: 13.0, 42: 16.0, 48: 10.0}),
    (54, 60, 66, 72, 84, 96),
)


@lru_cache(_KEPT)
def units_along(length_mm: float, spans: tuple[Span, ...], unit: UnitName) -> tuple[Unit, ...]:
    """Return the units under a run, left to right: no side of one lies under an opening.

    What no unit that is sold fills is left to a filler, a ``gap``, at an end where it can be.

    Parameters
    ----------
    length_mm
        The run's length.
    spans
        What lies over it, each wide enough that a bowl would foul a unit's side.
    unit
        The unit of their widths: inches are sold in other widths than millimetres.
    """
    if length_mm > _LONGEST_MM:
        return (Unit(rounded_length(length_mm, unit)),)
    run = _Run(length_mm, spans, _INCHES if unit in ("in", "ft") else _METRIC)
    pieces = run.cheapest(odd=False) or run.cheapest(odd=True)
    if all(piece.use == "gap" for piece in pieces):
        return (Unit(rounded_length(length_mm, unit)),)
    return tuple(Unit(rounded_length(piece.end - piece.start, unit), piece.use) for piece in pieces)


@dataclass(frozen=True, slots=True)
class _Piece:
    """A unit or a filler, mm along the run, and what taking it costs."""

    start: float
    end: float
    use: UnitFor
    cost: float


_Way = tuple[float, _Piece | None]  # what all pieces up to a place cost, and the last of them


@dataclass(frozen=True)
class _Run:
    length_mm: float
    spans: tuple[Span, ...]
    sold: SoldWidths

    def cheapest(self, *, odd: bool) -> list[_Piece]:
        """Return the pieces that cost least together; none where no row of them fits.

        Of rows that cost the same the one with its narrower pieces on the right is taken.

        Parameters
        ----------
        odd
            Whether units without an opening may be of a width that is not sold, too.
        """
        best: dict[float, _Way] = {0.0: (0.0, None)}
        for i, end in enumerate(self._places):
            if i > 0 and i in self._clear and (way := self._way_to(i, best, odd=odd)):
                best[end] = way
        return self._row(best)

    def _way_to(self, i: int, best: Mapping[float, _Way], *, odd: bool) -> _Way | None:
        """Return what the ``i``-th place is reached by at the least cost: of alike, the narrowest.

        What surely costs more than the best so far is not looked at.
        """
        found: tuple[float, float] = (math.inf, 0.0)
        way: _Way | None = None
        end = self._places[i]
        for start in self._starts(i):
            if start not in best:
                continue
            before, least = best[start][0], self._least(end - start)
            if before + least > found[0]:
                if least > found[0] and end - start > self._widest_mm:
                    break  # and so do all that begin farther left
                continue
            for piece in self._pieces(start, end, odd=odd):
                cost = before + piece.cost
                if (cost, -start) < found:
                    found, way = (cost, -start), (cost, piece)
        return way

    def _starts(self, i: int) -> Iterator[float]:
        """Yield where a piece may begin that ends at the ``i``-th place.

        What is sold and fillers, the cheapest first; then from right to left those that begin at
        the end of the run or left of what lies over it.
        """
        yield from (self._places[i - k] for k in self._steps if k <= i)
        near = bisect_left(self._left_of_spans, i)
        yield from (self._places[k] for k in reversed(self._left_of_spans[:near]))

    @cached_property
    def _steps(self) -> list[int]:
        """How many steps wide fillers and units are that are sold, the cheapest first."""
        fillers = range(1, math.ceil(_WIDEST_FILLER_MM / self.sold.step_mm) + 1)
        every = {*fillers, *self.sold.usual, *self.sold.wide}
        return sorted(every, key=lambda steps: self._least(steps * self.sold.step_mm))

    @cached_property
    def _widest_mm(self) -> float:
        return (max(self._steps) + 1) * self.sold.step_mm

    def _least(self, width_mm: float) -> float:
        """Return what a piece of a width costs at the least; beyond the widest, more the wider."""
        if (sold := self._sold_at(width_mm, wide=True)) is not None:
            return sold
        if width_mm <= _WIDEST_FILLER_MM:
            return _FILLER + width_mm * _FILLER_PER_MM
        return _ODD + _cost_of(width_mm)

    @cached_property
    def _left_of_spans(self) -> list[int]:
        """Places just left of a span, of which some unit under it may begin at any."""
        step, keep = self.sold.step_mm, PANEL_MM + _PLAY_MM
        starts = {0}
        for span in self.spans:
            last = math.floor((span.start_mm - keep) / step)
            near = range(max(0, last - math.ceil(_NEAR_MM / step)), last + 1)
            starts |= self._clear & set(near)
        return sorted(starts)

    @cached_property
    def _clear(self) -> set[int]:
        """Places at which two sides of units may stand."""
        return {k for k, at in enumerate(self._places) if self._is_clear(at)}

    def _row(self, best: Mapping[float, _Way]) -> list[_Piece]:
        """Follow the pieces back from the end of the run."""
        row: list[_Piece] = []
        at = self.length_mm
        while at in best and (piece := best[at][1]) is not None:
            row.insert(0, piece)
            at = piece.start
        return row

    @cached_property
    def _places(self) -> list[float]:
        steps = math.ceil(self.length_mm / self.sold.step_mm - 1e-6)
        return [k * self.sold.step_mm for k in range(steps)] + [self.length_mm]

    def _is_clear(self, at: float) -> bool:
        """Return whether two sides of units may stand there; the ends of the run are given."""
        keep = PANEL_MM + _PLAY_MM
        is_end = at in (0.0, self.length_mm)
        return is_end or not any(s.start_mm - keep < at < s.end_mm + keep for s in self.spans)

    def _pieces(self, start: float, end: float, *, odd: bool) -> Iterator[_Piece]:
        """Yield what may fill a part of the run: a unit that is sold, a filler, else an odd one."""
        width = end - start
        over = [s for s in self.spans if s.start_mm < end and start < s.end_mm]
        cost = self._sold_at(width, wide=bool(over))
        if cost is None and (over or odd):
            cost = _ODD + _cost_of(width)
        if cost is not None:
            use: UnitFor = next((s.use for s in over if s.use != "base"), "base")
            yield _Piece(start, end, use, cost + _off_centre(start, end, over))
        elif width <= _WIDEST_FILLER_MM and not over:
            at_end = start == 0.0 or end == self.length_mm
            between = 0.0 if at_end else _FILLER_BETWEEN
            yield _Piece(start, end, "gap", _FILLER + between + width * _FILLER_PER_MM)

    def _sold_at(self, width_mm: float, *, wide: bool) -> float | None:
        """Return what a unit of a width costs; None if none of it is sold."""
        steps = round(width_mm / self.sold.step_mm)
        if abs(width_mm - steps * self.sold.step_mm) > _PLAY_MM / 2:
            return None
        if steps in self.sold.usual:
            return self.sold.usual[steps]
        return _cost_of(width_mm) if wide and steps in self.sold.wide else None


def _cost_of(width_mm: float) -> float:
    """What a unit costs whose width is no usual one: a wide one, across which a slab bends more."""
    return _USUAL_COST * max(1.0, width_mm / _USUAL_MM) ** 4


def _off_centre(start: float, end: float, over: Sequence[Span]) -> float:
    """What it costs that an opening is not over the middle of its unit."""
    middles = ((s.start_mm + s.end_mm) / 2 for s in over)
    return sum(abs(at - (start + end) / 2) for at in middles) * _OFF_CENTRE_PER_MM
