"""Will it crack? Strength of the concrete by age, and the plate in every position it is in."""

from __future__ import annotations

from ledgerstone.errors import (
    ContactNotSettledError,
    OffTheSlabError,
    OutlineUnusableError,
    SlabTipsError,
)
from ledgerstone.strength.plate import (
    Answer,
    AreaSupport,
    Cases,
    LineLoad,
    LineSupport,
    Load,
    OwnWeight,
    PatchLoad,
    Plate,
    PointSupport,
    Pressure,
    Rested,
    Stress,
    Support,
)

__all__ = [
    "Answer",
    "AreaSupport",
    "Cases",
    "ContactNotSettledError",
    "LineLoad",
    "LineSupport",
    "Load",
    "OffTheSlabError",
    "OutlineUnusableError",
    "OwnWeight",
    "PatchLoad",
    "Plate",
    "PointSupport",
    "Pressure",
    "Rested",
    "SlabTipsError",
    "Stress",
    "Support",
]
