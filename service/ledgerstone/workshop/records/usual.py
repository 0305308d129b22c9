"""The workshop's defaults for what an order leaves out."""

from __future__ import annotations

from typing import Final

from ledgerstone.order import Place
from ledgerstone.workshop.records import Workshop

_THICKNESS_MM: Final = 40.0  # common practice, no source
_UPRIGHT: Final = frozenset({"upstand", "splashback"})


def usual_thickness_mm(workshop: Workshop, use: str) -> float:
    """Return the thickness usual for a use, of those that the workshop stocks sides for."""
    return thicknesses_by_use(workshop, use)[0]


def thicknesses_by_use(workshop: Workshop, use: str) -> list[float]:
    """List the thicknesses that the workshop stocks sides for, what is usual for a use first."""
    stocked = sorted(workshop.shaping.thicknesses_mm)
    if use in _UPRIGHT:
        return stocked
    return sorted(stocked, key=lambda mm: abs(mm - _THICKNESS_MM))


def usual_sealer(workshop: Workshop, place: Place) -> str:
    """Give the first sealer that is for a place."""
    for sealer in workshop.sealers:
        if place in sealer.places:
            return sealer.name
    return workshop.sealers[0].name
