"""Getting a slab there: masses, postcodes and delivery areas, the way in, and who carries."""

from __future__ import annotations

from ledgerstone.transport.areas import area_for, area_of, delivery_price, prices_of, tidy_postcode
from ledgerstone.transport.masses import crated_kg, slab_kg
from ledgerstone.transport.pallets import packed_kg, pallet_for, pallets_by_size
from ledgerstone.transport.people import (
    Who,
    Zone,
    filter_kg,
    lift_message,
    people_to_lift,
    push_kg,
    team_lift_kg,
)
from ledgerstone.transport.way_in import (
    PADDING_MM,
    CarriedBox,
    least_tilt_degrees,
    longest_across,
    longest_round_corner,
    on_edge,
    stands_up,
    tilt_in_lift_degrees,
)

__all__ = [
    "PADDING_MM",
    "CarriedBox",
    "Who",
    "Zone",
    "area_for",
    "area_of",
    "crated_kg",
    "delivery_price",
    "filter_kg",
    "least_tilt_degrees",
    "lift_message",
    "longest_across",
    "longest_round_corner",
    "on_edge",
    "packed_kg",
    "pallet_for",
    "pallets_by_size",
    "people_to_lift",
    "prices_of",
    "push_kg",
    "slab_kg",
    "stands_up",
    "team_lift_kg",
    "tidy_postcode",
    "tilt_in_lift_degrees",
]
