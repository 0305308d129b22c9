"""Values that may stand as they are, whoever they are of: small prices, and what no answer uses."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any, Final

from ledgerstone.json_types import KeyPath, value_at

TAX_RATE: Final = ("tax", "percent")  # by state in some countries, by what is sold in others
LIFTERS: Final = ("lifting", "most_people")
WAYS: Final = ("handling", "ways")
PALLETS: Final = ("lifting", "pallets")
_PALLET_PACKING: Final = ("packing", "pallet")
_OF_A_WAY: Final = 4  # steps of the path of one of its values
# Prices that may stand where they are in the money of an example: all of them half as much again,
# no order costs 5 % more. Hire of gear is none where it is one's own.
SMALL_PRICES: Final = frozenset(
    {
        *(("boards", key) for key in ("flexible_price", "screw_price")),
        ("boards", "release_price_per_l"),
        *(("packing", way, "materials_per_piece") for way in ("collected", "own_van", "pallet")),
        ("recipe", "bag", "added", "price_per_kg"),
        ("slurry", "cement_price_per_kg"),
        ("rates", "consumables_per_m2"),
        ("finishes", "consumables_per_m2"),
        ("pigments", "price_per_kg"),
        ("palette", "extra_per_m3"),
        ("shade", "bases", "extra_per_m3"),
        ("tent", "price_per_day"),
        *(("services", key) for key in ("cover_least", "cover_percent")),
        ("sample", "always_from"),
        (*WAYS, "price"),
    }
)
# What else of tables that hold prices may stand: common practice, no source. None is a
# price; numbers among them count in the same five hundredths.
USUAL_PLACES: Final = frozenset(
    {
        *(("recipe", key) for key in ("name", "cement")),
        ("recipe", "constituents", "name"),
        ("recipe", "face_coat", "without"),
        *(("sample", key) for key in ("litres", "ready_days", "yes_days")),
        ("rates", "steel_kg_per_m2"),
        ("palette", "by_eye"),
        ("mixer", "minutes_per_batch"),
        ("packing", "pallet", "crate", "pieces"),
    }
)
# How a thing is made or used in this trade; no customer is promised it. Buying prices are fitted to
# what a typical job takes, and the markup to what is asked for it, so that these move its price
# little. A carrier's longer pallets cost in proportion to the maker's own price of one.
USUAL_IN_TRADE: Final = frozenset(
    {
        ("recipe", "constituents", "kg_per_m3"),
        *(("recipe", key) for key in ("largest_aggregate_mm", "whole_bags")),
        ("recipe", "face_coat", "thickness_mm"),
        ("palette", "cement"),
        *(("palette", "doses", key) for key in ("pigment", "percent")),
        *(("finishes", key) for key in ("says", "days")),
        *(("sealers", key) for key in ("says", "kind", "coats", "coverage_m2_per_l")),
        *(("sealers", key) for key in ("youngest_days", "recoat_hours", "rags_ignite")),
        *(("areas", key) for key in ("name", "days")),
        ("lifting", "pallets", "price_percent"),
    }
)
# A file starts with these: a customer is told less by them, or charged nothing, and no work was
# taken on before theirs. Each stands on the form to be read and changed.
_PROMISES_NOTHING: Final[Mapping[KeyPath, object]] = MappingProxyType(
    {
        ("sealers", "food_declared"): False,
        ("services", "templating_visit"): 0,
        ("services", "templating_per_slab"): 0,
        ("offer", "smallest_order"): 0,
        ("reply", "terms"): [],
        ("calendar", "orders_ahead_days"): 0,
        ("areas", "fitting_per_slab"): 0,
    }
)
_CONSTITUENT_PRICE: Final = ("recipe", "constituents", "price_per_kg")


def is_small_price(path: KeyPath, raw: Mapping[str, Any]) -> bool:
    """Whether a value is one of the small prices; of a recipe, that of its water."""
    keys = tuple(part for part in path if isinstance(part, str))
    if keys != _CONSTITUENT_PRICE:
        return keys in SMALL_PRICES
    try:
        return bool(value_at(raw, (*path[:-1], "role")) == "water")
    except (KeyError, IndexError, TypeError):
        return False


def promises_nothing(path: KeyPath, value: object) -> bool:
    """Whether a value is one by which nothing is promised and nothing charged."""
    keys = tuple(part for part in path if isinstance(part, str))
    return keys in _PROMISES_NOTHING and value == _PROMISES_NOTHING[keys]


def is_unused(path: KeyPath, raw: Mapping[str, Any]) -> bool:
    """Whether no answer rests on a value.

    A tax that is not charged, a way for more people, a pallet where none is sent.
    """
    if path == TAX_RATE:
        tax = raw.get(path[0])
        return isinstance(tax, Mapping) and tax.get("registered") is False
    if path[:2] == PALLETS or path[:2] == _PALLET_PACKING:
        areas = raw.get("areas")
        return isinstance(areas, list) and not any(
            isinstance(area, Mapping) and "pallet" in area for area in areas
        )
    if path[:2] != WAYS or len(path) < _OF_A_WAY:
        return False
    try:
        people, most = (value_at(raw, place) for place in ((*path[:3], "people"), LIFTERS))
        fewest = min(way["people"] for way in raw["handling"]["ways"])
        return bool(people > max(most, fewest))  # where no way is for so few, those for the fewest
    except (KeyError, IndexError, TypeError):
        return False
