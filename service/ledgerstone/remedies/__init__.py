"""What would make an order makeable: changes found by search, and proved by every check."""

from __future__ import annotations

from ledgerstone.remedies.budget import Budget, Pacing, placing_units, unpaced
from ledgerstone.remedies.change import Change, Changes
from ledgerstone.remedies.found import Fix, Found, Remedy
from ledgerstone.remedies.search import OF_A_SLAB, find
from ledgerstone.remedies.state import State, start
from ledgerstone.remedies.trial import Outcome, Trial, Trials
from ledgerstone.remedies.ways import Saving, ways_to_save

__all__ = [
    "OF_A_SLAB",
    "Budget",
    "Change",
    "Changes",
    "Fix",
    "Found",
    "Outcome",
    "Pacing",
    "Remedy",
    "Saving",
    "State",
    "Trial",
    "Trials",
    "find",
    "placing_units",
    "start",
    "unpaced",
    "ways_to_save",
]
