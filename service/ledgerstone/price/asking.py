"""What the customer is asked: four or five lines, with margin, services and delivery."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from ledgerstone.order import Order, Slab
from ledgerstone.price.costing import GROUPS, costs
from ledgerstone.price.settling import HUNDRED, Line, Price, pennies, stepped
from ledgerstone.reinforcement import SteelPlan
from ledgerstone.shape import Shape
from ledgerstone.transport import area_of, delivery_price, pallet_for
from ledgerstone.work import Operation
from ledgerstone.workshop.records import Workshop

_HOW = {"pallet": "Pallet delivery", "own-van": "Delivery", "fitted": "Delivery and fitting"}


def price(
    order: Order,
    shapes: Sequence[Shape],
    steps: Sequence[Operation],
    workshop: Workshop,
    steel: Sequence[SteelPlan] | None = None,
) -> Price:
    """Ask a price: costs and margin in three lines, services, delivery, tax, steps.

    Parameters
    ----------
    steel
        Of each slab, where it has been advised.
    """
    charge = 1 + workshop.rates.margin_percent / HUNDRED
    every = costs(order, shapes, steps, workshop, steel)
    lines = []
    for group in GROUPS:
        amount = sum((cost.amount for cost in every if cost.group == group), Decimal(0))
        lines.append(Line(group, pennies(amount * charge)))
    short = workshop.offer.smallest_order - sum((line.amount for line in lines), Decimal(0))
    if short > 0:
        lines.append(Line("Up to our smallest order", short))
    worth = sum((line.amount for line in lines), Decimal(0))
    services = _services(order, worth, workshop)
    return stepped([*lines, *services, *_delivery(order, tuple(shapes), workshop)], workshop)


def _services(order: Order, worth: Decimal, workshop: Workshop) -> Iterator[Line]:
    """Yield measuring, cover and delivery, where there are any."""
    measuring = templating_price(order, workshop)
    if measuring:
        yield Line("Coming to measure", pennies(measuring))
    cover = cover_price(order, worth, workshop)
    if cover:
        yield Line("Cover in transit", cover)


def _delivery(order: Order, shapes: tuple[Shape, ...], workshop: Workshop) -> Iterator[Line]:
    """Yield the delivery, by its area and by the pallet that size and mass ask for."""
    area = area_of(order.delivery, workshop)
    pallet = pallet_for(order, shapes, workshop)
    delivery = delivery_price(order, area, pallet)
    if delivery and area is not None:
        how = _HOW[order.delivery.kind]
        if pallet is not None and pallet.price_percent != HUNDRED:
            how = f"{pallet.name.capitalize()} delivery"
        yield Line(f"{how}: {area.name}", pennies(delivery))


def templating_price(order: Order, workshop: Workshop) -> Decimal:
    """Price of measuring what is still to be measured: where we fit it, we come; else nothing."""
    pieces = sum(slab.quantity for slab in order.slabs if _unmeasured(slab))
    if order.delivery.kind != "fitted" or not pieces:
        return Decimal(0)
    services = workshop.services
    return services.templating_visit + services.templating_per_slab * pieces


def _unmeasured(slab: Slab) -> bool:
    return slab.size_from == "template-to-follow" or any(
        cutout.size_from == "template-to-follow" for cutout in slab.cutouts
    )


def cover_price(order: Order, worth: Decimal, workshop: Workshop) -> Decimal:
    """Price of cover while a carrier has the order, of what it is worth before tax."""
    services = workshop.services
    if order.delivery.kind != "pallet" or not services.cover_percent:
        return Decimal(0)
    return pennies(max(services.cover_least, worth * services.cover_percent / HUNDRED))
