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
NEAT_CEMENT: Final[KeyPath] = ("slurry", "cement_price_per_kg")  # bought beside the bags
# Share of the standard's strength that an untested bagged, fibre or heavily pigmented mix is
# trusted with. Judgement, no source: such a mix is often stronger, but no strip has been broken.
UNTESTED_PERCENT: Final = 70.0
_TRUSTED: Final[KeyPath] = ("concrete", "untested_percent")


def mix_from_bags(draft: ProfileDraft) -> None:
    """Write a bag with nothing filled in where a recipe stands by volume.

    What was there becomes comments; a recipe by the bag stays as it is. Shades of another cement
    than the recipe's are taken out: the cement is in the bag. Its strength is trusted as that of a
    bagged mix that was not tested.
    """
    if draft.headers_within(BAG) or draft.written(BAG):
        return
    for path in _BY_VOLUME:
        if draft.headers_within(path) or draft.written(path):
            draft.leave_out(path)
    draft.add(BAG, sample_of(Bag, BAG, is_item=False))
    draft.put((*BAG, "yield_l"), '""')
    draft.put(NEAT_CEMENT, '""')
    draft.put(_TRUSTED, f"{UNTESTED_PERCENT:g}")
    draft.settle()
    _take_out_other_cements(draft)


def _take_out_other_cements(draft: ProfileDraft) -> None:
    """Take out each shade of another cement, unless no shade would be left."""
    cement = draft.written(("recipe", "cement"))
    shades: list[KeyPath] = [("palette", k) for k in range(draft.count(("palette",)))]
    others = [shade for shade in shades if draft.written((*shade, "cement")) != cement]
    for shade in reversed(others if len(others) < len(shades) else []):
        draft.leave_out(shade)
