"""What would make an order makeable: changes found by search, and proved by every check."""

from __future__ import annotations

from ledgerstone.remedies.change import Change, Changes, Outcome, Trial, changed, member
from ledgerstone.remedies.search import Fix, Found, Remedy, find
from ledgerstone.remedies.ways import Saving, ways_to_save

__all__ = [
    "Change",
    "Changes",
    "Fix",
    "Found",
    "Outcome",
    "Remedy",
    "Saving",
    "Trial",
    "changed",
    "find",
    "member",
    "ways_to_save",
]
