"""One key of a profile's record: what it is about, its bounds, and what belongs there."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Any, Literal

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
class KeyNumber(Spoken):
    """A number that stands at a key of a profile's record, said in the workshop's unit for it.

    Attributes
    ----------
    amount
        In the unit of the key's name.
    rounding
        Of a limit that is said in another unit: towards what it allows.
    """

    record: str
    key: str
    amount: Decimal | float
    rounding: Literal["nearest", "up", "down"] = "nearest"


@dataclass(frozen=True, slots=True)
class KeyUnit(Spoken):
    """The workshop's unit for a key of a profile's record, as it follows a number: `` mm``."""

    record: str
    key: str


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

    @property
    def unit(self) -> KeyUnit:
        """The workshop's unit for it, as a message."""
        return KeyUnit(self.record, self.name)

    def number(
        self, amount: Decimal | float, rounding: Literal["nearest", "up", "down"] = "nearest"
    ) -> KeyNumber:
        """Return a number that stands at it, as a message."""
        return KeyNumber(self.record, self.name, amount, rounding)


def wanted(kind: type, key: Key) -> str:
    """Return the word of ``fault-wanted`` for what belongs at this key."""
    plain = {str: "text", bool: "flag", date: "day", int: "whole"}
    return plain[kind] if kind in plain else _measure(kind, key)


def _measure(kind: type, key: Key) -> str:
    if kind is Decimal and not key.name.endswith("percent"):
        return "money"
    if key.name.startswith(("hours_per_m2", "hours_per_m_")) or key.name == "hours_per_m":
        return "rate"
    for ending, word in _BY_ENDING:
        if key.name.endswith(ending) or (key.name + "_").startswith(f"{ending}_per_"):
            return word
    return _BY_RECORD.get(key.record, "number")
