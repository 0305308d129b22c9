"""A profile that mixes by volume made into one that mixes from bags, in one step."""

from __future__ import annotations

import json
import re
from decimal import Decimal
from typing import Final

from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message
from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.samples import sample_of
from ledgerstone.workshop.keys.numerals import exact_of, in_digits, in_proportion
from ledgerstone.workshop.records import Bag

BAG: Final[KeyPath] = ("recipe", "bag")
_CONSTITUENTS: Final[KeyPath] = ("recipe", "constituents")
# What a recipe by volume says that a bag does not: its parts, a coat of them, and what it weighed.
_BY_VOLUME: Final[tuple[KeyPath, ...]] = (
    _CONSTITUENTS,
    ("recipe", "face_coat"),
    ("recipe", "weighed_kg_per_m3"),
)
# What no two makers' bags share, and what is usual of a bag of its weight, in this order.
ASKED_OF_A_BAG: Final = ("bag_kg", "price_per_bag")
USUAL_OF_A_BAG: Final = ("name", "water_l_per_bag", "yield_l")
WEIGHT: Final[KeyPath] = (*BAG, "bag_kg")
MAKES: Final[KeyPath] = (*BAG, "yield_l")
WATER: Final[KeyPath] = (*BAG, "water_l_per_bag")
# As bags are sold, what one makes and the water that goes in; common practice, no source: 3.4 US
# quarts into 80 lb make 0.6 ft³ of 145 lb/ft³, 2.3 l into 25 kg make 12 l of 2 275 kg/m³.
_USUAL: Final = {WEIGHT: "25", WATER: "2.3", MAKES: "12"}
_AMERICAN: Final = {WEIGHT: '"80 lb"', WATER: '"0.85 gal"', MAKES: '"0.6 ft³"'}
_STANDING: Final = ", ".join(f'{key} = "usual"' for key in USUAL_OF_A_BAG)
_PLACES: Final = 4  # of what several bags make
_BAGS: Final = re.compile(r"(?P<count>\S.*?)\s*(?:bags?|sacks?|säcke|sack)\.?", re.IGNORECASE)
# Cement that is bought beside the bags, for slurry: as the recipe by volume has it.
_NEAT_CEMENT: Final = {"cement_price_per_kg": "price_per_kg", "cement_pack_kg": "pack_kg"}
# Share of the standard's strength that an untested bagged mix is trusted with. What a bag states is
# a mean (ASTM C387, from memory), and a characteristic strength lies 8 MPa below the mean (EN
# 1992-1-1 table 3.1): at 23 MPa that leaves 75 % of the strength in tension, above it more.
UNTESTED_PERCENT: Final = 75.0
_TRUSTED: Final[KeyPath] = ("concrete", "untested_percent")


def mix_from_bags(draft: ProfileDraft, place: RegionalSettings, name: str) -> tuple[Message, ...]:
    """Write a bag of a usual weight, without a price, where a recipe stands by volume.

    What was there becomes comments; a recipe by the bag stays as it is. Its strength is trusted as
    that of a bagged mix that was not tested. The cement is in the bag: shades of another one are
    taken out, and their names are returned.

    Parameters
    ----------
    place
        The units that the workshop works in: by these is the bag one that is sold there.
    name
        What the bag is called until its maker says so.
    """
    if draft.headers_within(BAG) or draft.written(BAG):
        return ()
    _keep_neat_cement(draft)
    for path in _BY_VOLUME:
        if draft.headers_within(path) or draft.written(path):
            draft.leave_out(path)
    draft.add(BAG, sample_of(Bag, BAG, is_item=False))
    draft.put((*BAG, "name"), json.dumps(name, ensure_ascii=False))
    for path, toml in (_AMERICAN if place.masses == "lb" else _USUAL).items():
        draft.put(path, toml)
    draft.put((*BAG, "standing"), f'{{ {_STANDING}, bag_kg = "invented" }}')
    draft.put(_TRUSTED, f"{UNTESTED_PERCENT:g}")
    draft.settle()
    return _take_out_other_cements(draft)


def batch_in_bags(draft: ProfileDraft, text: str, mark: str) -> str | None:
    """Return what a batch of so many bags makes, as TOML writes it; None if it is told otherwise.

    ``2 bags`` makes twice what a bag does.
    """
    found, one = _BAGS.fullmatch(in_digits(text.strip())), draft.written(MAKES)
    count = exact_of(found["count"], mark) if found else None
    if count is None or count <= 0 or not one:
        return None
    factor = Decimal(count.numerator) / Decimal(count.denominator)
    return in_proportion(one, factor, lambda made: round(made, _PLACES))


def _keep_neat_cement(draft: ProfileDraft) -> None:
    """Write the recipe's cement as the one that is bought beside the bags."""
    parts: list[KeyPath] = [(*_CONSTITUENTS, k) for k in range(draft.count(_CONSTITUENTS))]
    cements = [part for part in parts if draft.written((*part, "role")) == '"cement"']
    for key, of in _NEAT_CEMENT.items() if cements else ():
        written = draft.written((*cements[0], of))
        if written:
            draft.put(("slurry", key), written)
    draft.settle()


def _take_out_other_cements(draft: ProfileDraft) -> tuple[Message, ...]:
    """Take out each shade of another cement, unless no shade would be left."""
    cement = draft.written(("recipe", "cement"))
    shades: list[KeyPath] = [("palette", k) for k in range(draft.count(("palette",)))]
    others = [shade for shade in shades if draft.written((*shade, "cement")) != cement]
    others = others if len(others) < len(shades) else []
    names = [draft.written((*shade, "name")).strip('"') for shade in others]
    for shade in reversed(others):
        draft.leave_out(shade)
    return tuple(Message("profile-also-removed-part", thing="shade", name=name) for name in names)
