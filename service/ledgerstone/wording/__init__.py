"""Words that sentences share: one way to say an amount, a day, a weight, a number of people."""

from __future__ import annotations

from ledgerstone.wording.naming import (
    LONGEST_LABEL,
    cut_short,
    cutout_words,
    label_words,
    listed_names,
    relief_words,
    side_words,
    slab_words,
    slabs_words,
)
from ledgerstone.wording.vocabulary import (
    capital,
    day_text,
    listed,
    money_text,
    people_text,
    percent_text,
    weight_text,
)

__all__ = [
    "LONGEST_LABEL",
    "capital",
    "cut_short",
    "cutout_words",
    "day_text",
    "label_words",
    "listed",
    "listed_names",
    "money_text",
    "people_text",
    "percent_text",
    "relief_words",
    "side_words",
    "slab_words",
    "slabs_words",
    "weight_text",
]
