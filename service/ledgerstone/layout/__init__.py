"""A slab's default layout: its openings, what carries it, and its starting outline.

A layout must pass the checks of shape: it has no rules of its own.
"""

from __future__ import annotations

from ledgerstone.layout.laid_out import FreeParts, depth_needed_mm, laid_out
from ledgerstone.layout.pieces import (
    CUTOUT_NAMES,
    PIECE_NAMES,
    RELIEF_NAMES,
    new_cutout,
    new_relief,
)
from ledgerstone.layout.rests import REST_KINDS, RestsKind, with_assumed_units
from ledgerstone.layout.starts import START_NAMES, Started, started

__all__ = [
    "CUTOUT_NAMES",
    "PIECE_NAMES",
    "RELIEF_NAMES",
    "REST_KINDS",
    "START_NAMES",
    "FreeParts",
    "RestsKind",
    "Started",
    "depth_needed_mm",
    "laid_out",
    "new_cutout",
    "new_relief",
    "started",
    "with_assumed_units",
]
