"""Words that sentences share: one way to say an amount, a day, a weight, a number of people."""

from __future__ import annotations

from ledgerstone.wording.vocabulary import (
    capitalised,
    day_text,
    listed,
    money_text,
    people_text,
    percent_text,
    weight_text,
)

__all__ = [
    "capitalised",
    "day_text",
    "listed",
    "money_text",
    "people_text",
    "percent_text",
    "weight_text",
]
