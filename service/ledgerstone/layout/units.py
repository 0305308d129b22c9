"""Base units along a slab: one under each bowl and each hob, the rest filled with cupboards."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from ledgerstone.layout.spoken import spoken
from ledgerstone.order import Unit, UnitFor
from ledgerstone.quantities import UnitName
from ledgerstone.strength.rests import PANEL_MM

_WIDTHS_MM: Final = (600.0, 800.0, 900.0, 1000.0, 1200.0)  # common practice, no source
_USUAL_MM: Final = 600.0
_MIN_MM: Final = 150.0  # a narrower unit goes into the one beside it; common practice, no source
_PLAY_MM: Final = 1.0
_ROUND_MM: Final = 5.0


@dataclass(frozen=True, slots=True)
class Span:
    """The span of an opening along the run, and the kind of unit that it needs."""

    start_mm: float
    end_mm: float
    use: UnitFor


def units_along(length_mm: float, spans: Sequence[Span], unit: UnitName) -> tuple[Unit, ...]:
    """Return the units under a run, left to right: no side of one lies under an opening.

    Parameters
    ----------
    length_mm
        The run's length.
    spans
        What lies over it, each wide enough that a bowl would foul a unit's side.
    unit
        The unit of their widths.
    """
    runs = _merged(spans)
    made: list[Unit] = []
    at = 0.0
    for i, run in enumerate(runs):
        most = runs[i + 1].start_mm - PANEL_MM - _PLAY_MM if i + 1 < len(runs) else length_mm
        low, high = _unit_over(run, at, most, length_mm)
        made += _filled(low - at, unit)
        made.append(Unit(spoken(high - low, unit), run.use))
        at = high
    return (*made, *_filled(length_mm - at, unit))


def _merged(spans: Sequence[Span]) -> list[Span]:
    """Put together what is too near to have two sides of units between it."""
    merged: list[Span] = []
    for span in sorted(spans, key=lambda span: span.start_mm):
        last = merged[-1] if merged else None
        if last is not None and span.start_mm - last.end_mm < 2 * (PANEL_MM + _PLAY_MM):
            use = last.use if last.use != "base" else span.use
            merged[-1] = Span(last.start_mm, max(last.end_mm, span.end_mm), use)
        else:
            merged.append(span)
    return merged


def _unit_over(run: Span, at: float, most: float, length_mm: float) -> tuple[float, float]:
    """Return the left and right of the unit over which something lies, about its middle."""
    need = run.end_mm - run.start_mm + 2 * (PANEL_MM + _PLAY_MM)
    width = next((width for width in _WIDTHS_MM if width >= need), need)
    low = _rounded((run.start_mm + run.end_mm - width) / 2)
    low = min(max(low, at), run.start_mm - PANEL_MM - _PLAY_MM)
    low = at if low - at < _MIN_MM else low
    high = max(low + width, _up(run.end_mm + PANEL_MM + _PLAY_MM))
    high = min(high, most)
    return low, length_mm if length_mm - high < _MIN_MM else high


def _filled(mm: float, unit: UnitName) -> list[Unit]:
    """Fill a length with cupboards of one width, the last of them taking what is over."""
    if mm < _PLAY_MM:
        return []
    count = max(1, math.ceil((mm - _PLAY_MM) / _USUAL_MM))
    each = _rounded(mm / count)
    widths = [each] * (count - 1) + [mm - each * (count - 1)]
    return [Unit(spoken(width, unit)) for width in widths]


def _up(mm: float) -> float:
    return math.ceil(mm / _ROUND_MM) * _ROUND_MM


def _rounded(mm: float) -> float:
    return round(mm / _ROUND_MM) * _ROUND_MM
