"""Lengths that the service sets itself, as people write them in the customer's unit."""

from __future__ import annotations

from typing import Final

from ledgerstone.quantities import INCH_MM, Length, UnitName

_EIGHTH_IN: Final = INCH_MM / 8
STEP_MM: Final = 5.0
_STEP_IN: Final = INCH_MM / 4


def rounded_length(mm: float, unit: UnitName) -> Length:
    """Return a default size in the customer's unit: whole millimetres, or eighths of an inch."""
    if unit in ("in", "ft"):
        return Length.of_mm(round(mm / _EIGHTH_IN) * _EIGHTH_IN, unit)
    return Length.of_mm(round(mm), unit)


def step_mm(unit: UnitName) -> float:
    """Return the step of places: 5 mm, or a quarter of an inch."""
    return _STEP_IN if unit in ("in", "ft") else STEP_MM
