"""Postcodes, the delivery areas they fall in, and what a delivery there costs."""

from __future__ import annotations

import re
from decimal import Decimal

from ledgerstone.order import Delivery, Order
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.records import DeliveryArea, Pallet, RegionalSettings, Workshop

_UK_RANGE = re.compile(r"([A-Z]{1,2})([0-9]{1,2})(?:-([0-9]{1,2}))?")
_FIGURES = re.compile(r"([0-9]+)-([0-9]+)")
LONGEST_POSTCODE = 20
_BRITAIN = usual_in("GB")


def _read(text: str, place: RegionalSettings) -> tuple[str, str] | None:
    """Read a postcode as it is usually written, and the part that says where it is.

    Where nothing is known of a country's postcodes any short text passes.
    """
    if len(text) > LONGEST_POSTCODE:
        return None
    if place.postcodes is None:
        letters = re.sub(r"[\s.\-]", "", text).upper()
        return (letters, letters) if letters else None
    return place.postcodes.read(text)


def tidy_postcode(text: str, place: RegionalSettings = _BRITAIN) -> str | None:
    """Return a postcode in its country's format; None if it is not one."""
    found = _read(text, place)
    return found[0] if found is not None else None


def area_for(postcode: str, workshop: Workshop) -> DeliveryArea | None:
    """Find the first delivery area that a postcode falls in."""
    found = _read(postcode, workshop.place)
    if found is None:
        return None
    return next((a for a in workshop.areas if any(_begins(found[1], p) for p in a.postcodes)), None)


def _begins(where: str, pattern: str) -> bool:
    """Return whether a postcode's place falls under one of an area's beginnings.

    ``HR`` (an area of letters), ``LD1`` or ``LD1-6`` (districts), ``83`` (figures that it begins
    with) or ``83000-83739`` (from one such to another).
    """
    here = re.match(r"([A-Z]+)([0-9]*)", where)
    if here is None:  # postcodes of figures alone
        return _among_figures(where, pattern)
    there = _UK_RANGE.fullmatch(pattern)
    if there is None:
        return here[1] == pattern if pattern.isalpha() else where.startswith(pattern)
    low = int(there[2])
    high = int(there[3]) if there[3] else low
    return here[1] == there[1] and here[2] != "" and low <= int(here[2]) <= high


def _among_figures(where: str, pattern: str) -> bool:
    ends = _FIGURES.fullmatch(pattern)
    if ends is None:
        return where.startswith(pattern)
    begins = where[: len(ends[1])]
    return len(begins) == len(ends[1]) and ends[1] <= begins <= ends[2]


def area_of(delivery: Delivery, workshop: Workshop) -> DeliveryArea | None:
    """Return the area of a delivery; None if it is collected, not given or not served."""
    if delivery.kind == "collect":
        return None
    if delivery.postcode is None:
        return next((area for area in workshop.areas if area.name == delivery.area), None)
    return area_for(delivery.postcode, workshop)


def prices_of(area: DeliveryArea) -> dict[str, Decimal | None]:
    """Return what each way of delivering there costs before tax; None if it is not offered.

    The plainest way is first.

    Source
    ------
    The profile's ``areas``.
    """
    return {"pallet": area.pallet, "own-van": area.own_van, "fitted": area.fitted}


def delivery_price(
    order: Order, area: DeliveryArea | None, pallet: Pallet | None = None
) -> Decimal | None:
    """Return the price of a delivery before tax; None if it is not offered.

    Parameters
    ----------
    pallet
        The pallet, if one has been chosen: longer and heavier ones cost more.

    Source
    ------
    The profile's ``areas``, and ``lifting.pallets.price_percent`` of the carrier's price.
    """
    kind = order.delivery.kind
    if kind == "collect":
        return Decimal(0)
    if area is None:
        return None
    price = prices_of(area)[kind]
    if price is not None and pallet is not None:
        return price * pallet.price_percent / 100
    if price is None or kind != "fitted":
        return price
    return price + area.fitting_per_slab * sum(slab.quantity for slab in order.slabs)
