"""Postcodes, the delivery areas they fall in, and what a delivery there costs."""

from __future__ import annotations

import re
from decimal import Decimal

from ledgerstone.order import Delivery, Order
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.records import Area, Pallet, Place, Workshop

_UK_RANGE = re.compile(r"([A-Z]{1,2})([0-9]{1,2})(?:-([0-9]{1,2}))?")
_FIGURES = re.compile(r"([0-9]+)-([0-9]+)")
LONGEST_POSTCODE = 20
_BRITAIN = usual_in("GB")


def _read(text: str, place: Place) -> tuple[str, str] | None:
    """Read a postcode as it is usually written, and the part that says where it is.

    Where nothing is known of a country's postcodes any short text passes.
    """
    if len(text) > LONGEST_POSTCODE:
        return None
    if place.postcodes is None:
        letters = re.sub(r"[\s.\-]", "", text).upper()
        return (letters, letters) if letters else None
    return place.postcodes.read(text)


def tidy_postcode(text: str, place: Place = _BRITAIN) -> str | None:
    """Write a postcode as it is usually written in a country, or None where it is none."""
    found = _read(text, place)
    return found[0] if found is not None else None


def area_for(postcode: str, workshop: Workshop) -> Area | None:
    """Find the first delivery area that a postcode falls in."""
    found = _read(postcode, workshop.place)
    if found is None:
        return None
    return next((a for a in workshop.areas if any(_begins(found[1], p) for p in a.postcodes)), None)


def _begins(where: str, pattern: str) -> bool:
    """Whether a postcode's place falls under one of an area's beginnings.

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


def area_of(delivery: Delivery, workshop: Workshop) -> Area | None:
    """Find the area of a delivery, or None where it is collected, unsaid or not served."""
    if delivery.kind == "collect":
        return None
    if delivery.postcode is None:
        return next((area for area in workshop.areas if area.name == delivery.area), None)
    return area_for(delivery.postcode, workshop)


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
