"""The customer's price: four or five lines, with margin, services and delivery."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from decimal import Decimal

from ledgerstone.message import Message
from ledgerstone.order import Order, Slab
from ledgerstone.price.costing import GROUPS, Cost, costs
from ledgerstone.price.maker_terms import NO_TERMS, MakerTerms
from ledgerstone.price.rails import RailsNeeded, rails_price
from ledgerstone.price.rounding import (
    HUNDRED,
    Price,
    PriceLine,
    rounded_total,
    tax_percent_of,
    to_penny,
)
from ledgerstone.reinforcement import SteelPlan
from ledgerstone.shape import Shape
from ledgerstone.transport import area_of, delivery_price, pallet_for
from ledgerstone.work import Operation, tiles_of
from ledgerstone.workshop.records import Workshop


def price(
    order: Order,
    shapes: Sequence[Shape],
    steps: Sequence[Operation],
    workshop: Workshop,
    steel: Sequence[SteelPlan] | None = None,
    *,
    terms: MakerTerms = NO_TERMS,
    costed: Sequence[Cost] | None = None,
    rails: Sequence[RailsNeeded] | None = None,
) -> Price:
    """Ask a price: costs and margin in three lines, services, delivery, the maker's, tax, steps.

    Parameters
    ----------
    steel
        Of each slab, where it has been advised.
    terms
        The maker's terms for this offer.
    costed
        The costs of these steps, if known already.
    rails
        What each slab needs across its units, where that has been worked out.
    """
    every = costed if costed is not None else costs(order, shapes, steps, workshop, steel)
    lines = making_lines(every, workshop, terms.margin_percent)
    services = _services(order, subtotal(lines), workshop)
    delivery = _delivery(order, tuple(shapes), workshop)
    percent = tax_percent_of(order.delivery, area_of(order.delivery, workshop), workshop)
    fitted = _rails(order, rails, workshop) if rails is not None else ()
    every_line = [*lines, *services, *delivery, *fitted, *terms.adjustments]
    return rounded_total(every_line, workshop, percent, terms.deposit_round_to)


def making_lines(
    every: Iterable[Cost], workshop: Workshop, margin_percent: Decimal | None = None
) -> tuple[PriceLine, ...]:
    """Ask for the making: three lines with their margin, and what is short of the smallest order.

    Sample tiles are in none of them: they have a price of their own, or the workshop pays them.
    """
    margin = workshop.rates.margin_percent if margin_percent is None else margin_percent
    charge = 1 + margin / HUNDRED
    amounts = dict.fromkeys(GROUPS, Decimal(0))
    for cost in every:
        if cost.group in amounts:
            amounts[cost.group] += cost.amount
    lines = tuple(
        PriceLine(Message("price-making", group=group), to_penny(amount * charge))
        for group, amount in amounts.items()
    )
    short = workshop.offer.smallest_order - subtotal(lines)
    return (*lines, PriceLine(Message("price-smallest-order"), short)) if short > 0 else lines


def subtotal(lines: Iterable[PriceLine]) -> Decimal:
    """Sum of lines before tax, in the workshop's currency.

    Source
    ------
    Arithmetic.
    """
    return sum((line.amount for line in lines), Decimal(0))


def _services(order: Order, subtotal: Decimal, workshop: Workshop) -> Iterator[PriceLine]:
    """Yield tiles and their credit, measuring, insurance and delivery, where there are any."""
    tiles = tiles_price(order, workshop)
    if tiles:
        yield PriceLine(Message("price-tile"), to_penny(tiles))
        yield PriceLine(Message("price-tile-credit"), to_penny(-tiles))
    measuring = templating_price(order, workshop)
    if measuring:
        yield PriceLine(Message("price-measuring"), to_penny(measuring))
    insurance = insurance_price(order, subtotal, workshop)
    if insurance:
        yield PriceLine(Message("price-cover"), insurance)


def _delivery(order: Order, shapes: tuple[Shape, ...], workshop: Workshop) -> Iterator[PriceLine]:
    """Yield the delivery's line, by its area and by the pallet for its size and mass."""
    area = area_of(order.delivery, workshop)
    pallet = pallet_for(order, shapes, workshop)
    delivery = delivery_price(order, area, pallet)
    if delivery and area is not None:
        label = Message("price-delivery", way=order.delivery.kind, area=area.name)
        if pallet is not None and pallet.price_percent != HUNDRED:
            label = Message("price-delivery-on", pallet=pallet.name, area=area.name)
        yield PriceLine(label, to_penny(delivery))


def _rails(order: Order, rails: Sequence[RailsNeeded], workshop: Workshop) -> Iterator[PriceLine]:
    amount = rails_price(order, rails, workshop)
    if amount:
        yield PriceLine(Message("price-rails"), to_penny(amount))


def tiles_price(order: Order, workshop: Workshop) -> Decimal:
    """Return the price before tax of the ordered sample tiles, one for each shade and surface.

    Source
    ------
    The profile's ``sample.price``.
    """
    if not order.sample_tile or workshop.sample is None:
        return Decimal(0)
    return workshop.sample.price * len(tiles_of(order))


def templating_price(order: Order, workshop: Workshop) -> Decimal:
    """Price before tax of coming to measure: as ordered, or where we fit what is not measured.

    Ordered without anything marked as still to be measured, it is for every piece.

    Source
    ------
    The profile's ``services.templating_visit`` and ``templating_per_slab``.
    """
    unmeasured = sum(slab.quantity for slab in order.slabs if is_unmeasured(slab))
    if not is_measured_by_workshop(order):
        return Decimal(0)
    pieces = unmeasured or sum(slab.quantity for slab in order.slabs)
    services = workshop.services
    return services.templating_visit + services.templating_per_slab * pieces


def is_measured_by_workshop(order: Order) -> bool:
    """Return whether the workshop comes to measure: as ordered, or where it fits the unmeasured."""
    return order.templating or (
        order.delivery.kind == "fitted" and any(map(is_unmeasured, order.slabs))
    )


def is_unmeasured(slab: Slab) -> bool:
    """Return whether a slab or an opening of it is still to be measured."""
    return slab.size_from == "template-to-follow" or any(
        cutout.size_from == "template-to-follow" for cutout in slab.cutouts
    )


def insurance_price(order: Order, subtotal: Decimal, workshop: Workshop) -> Decimal:
    """Price before tax of insurance in transit, by the order's value before tax: on pallets alone.

    Source
    ------
    The profile's ``services.cover_percent`` and ``cover_least``.
    """
    services = workshop.services
    if order.delivery.kind != "pallet" or not services.cover_percent:
        return Decimal(0)
    return to_penny(max(services.cover_least, subtotal * services.cover_percent / HUNDRED))
