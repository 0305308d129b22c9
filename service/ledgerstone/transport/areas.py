"""Postcodes, the delivery areas they fall in, and what a delivery there costs."""

from __future__ import annotations

import re
from decimal import Decimal

from ledgerstone.order import Delivery, Order
from ledgerstone.workshop.records import Area, Pallet, Workshop

# The BS 7666 v2.0 schema's pattern, read with fullmatch, with P added to the third letter of
# A9A districts (N1P and W1P are in use); GIR 0AA is no place a slab goes to.
_UK_POSTCODE = re.compile(
    r"([A-PR-UWYZ][0-9][0-9]?|[A-PR-UWYZ][A-HK-Y][0-9][0-9]?|[A-PR-UWYZ][0-9][A-HJKPSTUW]"
    r"|[A-PR-UWYZ][A-HK-Y][0-9][ABEHMNPRVWXY]) ([0-9][ABD-HJLNP-UW-Z]{2})"
)
_UK_RANGE = re.compile(r"([A-Z]{1,2})([0-9]{1,2})(?:-([0-9]{1,2}))?")


def tidy_postcode(text: str, country: str = "GB") -> str | None:
    """Write a postcode as it is usually written, or None where it is none.

    Spaces, hyphens and dots are ignored; in other countries than ``GB`` any short text passes.

    Source: BS 7666 v2.0 schema pattern (National Archives), with its known defect mended.
    """
    letters = re.sub(r"[\s.\-]", "", text).upper()
    if country != "GB":
        return letters or None
    spaced = f"{letters[:-3]} {letters[-3:]}"
    return spaced if _UK_POSTCODE.fullmatch(spaced) else None


def area_for(postcode: str, workshop: Workshop) -> Area | None:
    """Find the first delivery area that a tidy postcode falls in."""
    outward = postcode.partition(" ")[0]
    for area in workshop.areas:
        if any(_begins(outward, pattern) for pattern in area.postcodes):
            return area
    return None


def _begins(outward: str, pattern: str) -> bool:
    """Whether an outward code falls under ``HR`` (an area), ``LD1`` or ``LD1-6`` (districts)."""
    here = re.match(r"([A-Z]+)([0-9]*)", outward)
    there = _UK_RANGE.fullmatch(pattern)
    if here is None:  # postcodes of figures alone, in other countries
        return outward.startswith(pattern)
    if there is None:
        return here[1] == pattern if pattern.isalpha() else outward.startswith(pattern)
    low = int(there[2])
    high = int(there[3]) if there[3] else low
    return here[1] == there[1] and here[2] != "" and low <= int(here[2]) <= high


def area_of(delivery: Delivery, workshop: Workshop) -> Area | None:
    """Find the area of a delivery, or None where it is collected, unsaid or not served."""
    if delivery.kind == "collect":
        return None
    if delivery.postcode is None:
        return next((area for area in workshop.areas if area.name == delivery.area), None)
    postcode = tidy_postcode(delivery.postcode, workshop.workshop.country)
    return area_for(postcode, workshop) if postcode is not None else None


def delivery_price(order: Order, area: Area | None, pallet: Pallet | None = None) -> Decimal | None:
    """Price of the delivery asked for, before tax, or None where it is not offered.

    Parameters
    ----------
    pallet
        What it goes on, where one has been chosen: longer and heavier ones cost more.
    """
    kind = order.delivery.kind
    if kind == "collect":
        return Decimal(0)
    if area is None:
        return None
    price = {"pallet": area.pallet, "own-van": area.own_van, "fitted": area.fitted}[kind]
    if price is not None and pallet is not None:
        return price * pallet.price_percent / 100
    if price is None or kind != "fitted":
        return price
    return price + area.fitting_per_slab * sum(slab.quantity for slab in order.slabs)
