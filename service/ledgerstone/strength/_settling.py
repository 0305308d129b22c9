"""The worst of some cases on the first supports that hold a slab."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from ledgerstone.strength.governing import DIGITS, Governing, governing, worst_of
from ledgerstone.strength.plate import Plate, PlateLoad, Rested, Support


def scaled(one: Governing, factor: float) -> Governing:
    """Return a stress, MPa, under ``factor`` times its load."""
    return replace(one, mpa=round(factor * one.mpa, DIGITS))


def by_stress(one: Governing) -> tuple[bool, float]:
    """Sort key of stresses, MPa: the least first, and tipping last.

    Source
    ------
    Nothing is worse than to tip: our own judgement.
    """
    return one.tips, one.mpa


def each_on(plate: Plate, holds: Iterable[Sequence[Support]]) -> Iterable[Rested]:
    """Put a plate on each set of supports in turn."""
    return (plate.on(supports) for supports in holds)


def first_settled(holds: Iterable[Rested], cases: Sequence[Sequence[PlateLoad]]) -> Governing:
    """The worst case, MPa, on the first set of supports that the slab does not tip off."""
    for rested in holds:
        found = worst_of(governing(rested.cases(cases)))
        if not found.tips:
            break
    return found
