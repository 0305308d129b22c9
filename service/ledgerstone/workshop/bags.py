"""A profile that mixes by volume made into one that mixes from bags, in one step."""

from __future__ import annotations

from typing import Final

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.editing import ProfileDraft
from ledgerstone.workshop.records import Bag
from ledgerstone.workshop.samples import sample_of

BAG: Final[KeyPath] = ("recipe", "bag")
# What a recipe by volume says that a bag does not: its parts, a coat of them, and what it weighed.
_BY_VOLUME: Final[tuple[KeyPath, ...]] = (
    ("recipe", "constituents"),
    ("recipe", "face_coat"),
    ("recipe", "weighed_kg_per_m3"),
)
# What is asked of a bag, in this order.
ASKED: Final = (
    "name",
    "bag_kg",
    "water_l_per_bag",
    "yield_l",
    "cement_percent",
    "price_per_bag",
)


def mix_from_bags(draft: ProfileDraft) -> None:
    """Write a bag with nothing filled in where a recipe stands by volume.

    What was there becomes comments; a recipe by the bag stays as it is.
    """
    if draft.headers_within(BAG) or draft.written(BAG):
        return
    for path in _BY_VOLUME:
        if draft.headers_within(path) or draft.written(path):
            draft.leave_out(path)
    draft.add(BAG, sample_of(Bag, BAG, is_item=False))
    draft.put((*BAG, "yield_l"), '""')
