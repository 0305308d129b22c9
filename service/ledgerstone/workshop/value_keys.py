"""One key of a profile's record: what it is about, its bounds, and what belongs there."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Any

from ledgerstone.message import Spoken

_BY_ENDING: tuple[tuple[str, str], ...] = (
    ("_mm", "length"),
    ("percent", "percent"),
    ("hours", "hours"),
    ("days", "days"),
    ("_kg_per_m3", "density"),
    ("_kg_per_m2", "spread"),
    ("_kg", "mass"),
    ("_mpa", "stress"),
    ("_c", "warmth"),
    ("_m2_per_l", "yield"),
)
_BY_RECORD: Mapping[str, str] = {
    **dict.fromkeys(("JobHours", "PourHours", "MouldHours", "PieceHours"), "hours"),
    "DaySettings": "days",
}


@dataclass(frozen=True, slots=True)
class AboutKey(Spoken):
    """What a key of a profile's record is; in English as the record has it."""

    record: str
    key: str
    english: str


@dataclass(frozen=True, slots=True)
class Key:
    """One key of one record: its name, the record's name, its bounds and what it is about."""

    name: str
    record: str
    metadata: Mapping[str, Any]

    @property
    def about(self) -> AboutKey:
        """A description of the key, as a message."""
        return AboutKey(self.record, self.name, str(self.metadata.get("about", "")))


def wanted(kind: type, key: Key) -> str:
    """Return the word of ``fault-wanted`` for what belongs at this key."""
    plain = {str: "text", bool: "flag", date: "day", int: "whole"}
    return plain[kind] if kind in plain else _measure(kind, key)


def _measure(kind: type, key: Key) -> str:
    for ending, word in _BY_ENDING:
        if key.name.endswith(ending) or (key.name + "_").startswith(f"{ending}_per_"):
            return word
    if key.name.startswith("hours_per_"):
        return "hours"
    return "money" if kind is Decimal else _BY_RECORD.get(key.record, "number")
