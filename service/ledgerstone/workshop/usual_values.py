"""Values that may stand as they are, whoever they are of: small prices, and what no answer uses."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from ledgerstone.json_types import KeyPath, value_at

TAX_RATE: Final = ("tax", "percent")  # by state in some countries, by what is sold in others
LIFTERS: Final = ("lifting", "most_people")
WAYS: Final = ("handling", "ways")
_OF_A_WAY: Final = 4  # steps of the path of one of its values
# Prices that may stand where they are in the money of an example: all of them half as much again,
# no order costs 5 % more. Hire of gear is none where it is one's own.
SMALL_PRICES: Final = frozenset(
    {
        *(("boards", key) for key in ("flexible_price", "screw_price", "bead_price_per_tube")),
        ("boards", "release_price_per_l"),
        ("boards", "foam", "price_per_sheet"),
        *(("packing", way, "materials_per_piece") for way in ("collected", "own_van", "pallet")),
        ("recipe", "bag", "added", "price_per_kg"),
        ("slurry", "cement_price_per_kg"),
        ("rates", "consumables_per_m2"),
        ("pigments", "price_per_kg"),
        ("palette", "extra_per_m3"),
        ("shade", "bases", "extra_per_m3"),
        ("tent", "price_per_day"),
        ("services", "cover_least"),
        (*WAYS, "price"),
    }
)


def is_unused(path: KeyPath, raw: Mapping[str, Any]) -> bool:
    """Whether no answer rests on a value: a tax that is not charged, a way for more people."""
    if path == TAX_RATE:
        tax = raw.get(path[0])
        return isinstance(tax, Mapping) and tax.get("registered") is False
    if path[:2] != WAYS or len(path) < _OF_A_WAY:
        return False
    try:
        people, most = (value_at(raw, place) for place in ((*path[:3], "people"), LIFTERS))
        fewest = min(way["people"] for way in raw["handling"]["ways"])
        return bool(people > max(most, fewest))  # where no way is for so few, those for the fewest
    except (KeyError, IndexError, TypeError):
        return False
