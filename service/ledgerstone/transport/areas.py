"""Postcodes, the delivery areas they fall in, and what a delivery there costs."""

from __future__ import annotations

import re
from decimal import Decimal

from ledgerstone.order import Delivery, Order
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.countries.postcodes import falls_under
from ledgerstone.workshop.records import DeliveryArea, Pallet, RegionalSettings, Workshop

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
    return next(
        (a for a in workshop.areas if any(falls_under(found[1], p) for p in a.postcodes)), None
    )


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
