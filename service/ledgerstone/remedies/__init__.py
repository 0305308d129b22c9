"""What would make an order makeable: changes found by search, and proved by every check."""

from __future__ import annotations

from ledgerstone.remedies.change import Change, Changes, Outcome, Trial, changed, member
from ledgerstone.remedies.search import Fix, Found, Remedy, find

__all__ = [
    "Change",
    "Changes",
    "Fix",
    "Found",
    "Outcome",
    "Remedy",
    "Trial",
    "changed",
    "find",
    "member",
]
