"""Bars as a schedule lists them: cut alike under one mark, side by side in one row."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np

from ledgerstone.arrays import FloatArray
from ledgerstone.reinforcement._bars import PlacedBar

EVEN_MM = 0.3  # a bar this near to its even place is in it; places are rounded to 0.1 mm
FEWEST_EVEN = 3  # bars that have a spacing


@dataclass(frozen=True, slots=True)
class BarRow:
    """Equal bars side by side, in the order of their places across themselves.

    They are as long and as well anchored, and each runs over the same stretch along itself. A bar
    at an angle is a row by itself.
    """

    bars: tuple[PlacedBar, ...]

    @property
    def mark(self) -> str:
        """Its mark, the same for all."""
        return self.bars[0].mark

    @property
    def axis(self) -> int | None:
        """0 where the bars lie along x, 1 along y; None at an angle."""
        return axis_of(self.bars[0])

    @property
    def places_mm(self) -> tuple[float, ...]:
        """Where each lies across the bars, rising, mm; of a bar at an angle where it starts.

        Source
        ------
        Geometry.
        """
        across = 1 - (self.axis or 0)
        return tuple(bar.start_mm[across] for bar in self.bars)

    @property
    def runs(self) -> tuple[tuple[PlacedBar, ...], ...]:
        """The bars in runs of one spacing, or singly."""
        return tuple(self.bars[r.first : r.last + 1] for r in even_runs(self.places_mm))


@dataclass(frozen=True, slots=True)
class EvenRun:
    """Places at one spacing, mm: by their numbers, and from the first to the last."""

    first: int
    last: int
    first_mm: float
    last_mm: float

    @property
    def step_mm(self) -> float:
        """The spacing, mm; 0 of a single place.

        Source
        ------
        Arithmetic.
        """
        return (self.last_mm - self.first_mm) / max(self.last - self.first, 1)


def scheduled(bars: Iterable[PlacedBar]) -> tuple[PlacedBar, ...]:
    """Mark bars, those that are cut alike by one mark: B1, B2, … as each is first met.

    They are as thick, as long and as well anchored. Those of a mark follow one another, and among
    them those that lie side by side.

    Source
    ------
    BS 8666: a bar mark is of bars of one diameter, length and shape (from memory).
    """
    alike: dict[tuple[float, ...], list[PlacedBar]] = {}
    for bar in bars:
        alike.setdefault((bar.diameter_mm, bar.length_mm, bar.anchored), []).append(bar)
    return tuple(
        replace(bar, mark=f"B{n}")
        for n, some in enumerate(alike.values(), start=1)
        for bar in sorted(some, key=lambda bar: (_stretch(bar), bar.start_mm))
    )


def rows_of(bars: Iterable[PlacedBar]) -> tuple[BarRow, ...]:
    """Return marked bars row by row."""
    rows: dict[tuple[str, tuple[float, ...]], list[PlacedBar]] = {}
    for bar in bars:
        rows.setdefault((bar.mark, _stretch(bar)), []).append(bar)
    return tuple(BarRow(tuple(row)) for row in rows.values())


def even_runs(places_mm: Sequence[float]) -> Iterator[EvenRun]:
    """Divide rising places, mm, into runs of one spacing, the longest first met; else singly."""
    places, first = np.asarray(places_mm), 0
    while first < len(places):
        last = next(
            (
                last
                for last in range(len(places) - 1, first + FEWEST_EVEN - 2, -1)
                if _is_even(places[first : last + 1])
            ),
            first,
        )
        yield EvenRun(first, last, float(places[first]), float(places[last]))
        first = last + 1


def _is_even(places: FloatArray) -> bool:
    """Return whether places (n,), mm, are at one spacing."""
    even = np.linspace(places[0], places[-1], len(places))
    return bool(np.abs(places - even).max() <= EVEN_MM)


def axis_of(bar: PlacedBar) -> int | None:
    """Return 0 for a bar along x, 1 for one along y; None at an angle."""
    (x0, y0), (x1, y1) = bar.start_mm, bar.end_mm
    if y0 == y1:
        return 0
    return 1 if x0 == x1 else None


def _stretch(bar: PlacedBar) -> tuple[float, ...]:
    """Its direction and its stretch along it, mm; of a bar at an angle both its ends."""
    axis = axis_of(bar)
    if axis is None:
        return 2, *bar.start_mm, *bar.end_mm
    return axis, bar.start_mm[axis], bar.end_mm[axis]
