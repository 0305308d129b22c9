"""What a price and a day rest on, and what an estimate or a quotation is, in sentences."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Literal

from ledgerstone.checks import WorkedOut
from ledgerstone.checks.rails import rail_conditions
from ledgerstone.order import Order
from ledgerstone.wording import day_text
from ledgerstone.workshop.records import Workshop

Standing = Literal["estimate", "quotation"]
NOT_LOOKED = "We could not look into our calendar, so the day is a guess that we confirm."


def waits_for_template(order: Order) -> bool:
    """Say whether a slab or a cut-out is still to be measured, by a template or by us."""
    return order.templating or any(
        slab.size_from == "template-to-follow"
        or any(cutout.size_from == "template-to-follow" for cutout in slab.cutouts)
        for slab in order.slabs
    )


def standing_of(order: Order, workshop: Workshop) -> Standing:
    """Say whether an offer is an estimate or a quotation, as the profile has it."""
    return "estimate" if waits_for_template(order) else workshop.offer.standing


def depends_on(
    worked_out: WorkedOut, today: date, standing: Standing, valid_until: date
) -> Iterator[str]:
    """Say what the price and the day rest on."""
    order, workshop = worked_out.planned.order, worked_out.planned.workshop
    offer = workshop.offer
    here = []
    if offer.deposit_percent:
        here.append(f"the deposit of {offer.deposit_percent.normalize():f}% paid")
    if waits_for_template(order) and not order.templating:
        here.append("the templates here")
    with_it = f" with {' and '.join(here)}" if here else ""
    by = day_text(today)
    yield f"The day is for an order by {by}{with_it}. It is held once we have booked it."
    yield standing_says(order, standing, valid_until)
    if any(step.stage == "sample" for step in worked_out.scheduled.operations):
        yield "Nothing is cut before you have said yes to a sample tile."
    yield from rail_conditions(order, worked_out.judged.strength, workshop)
    if order.delivery.kind == "collect":
        yield "You collect the order from the workshop."
    yield (
        "It is made to your measure, so as a rule it cannot be returned once it is made. The law"
        " where you live has the last word."
    )


def standing_says(order: Order, standing: Standing, valid_until: date) -> str:
    """Say in right words what an estimate or a quotation is: a best guess, or a fixed offer.

    Source: sources §4, a quotation is a fixed offer within its scope, an estimate binds none.
    """
    if order.templating:
        return (
            "This is an estimate until we have come and measured, anywhere in our delivery areas."
        )
    if waits_for_template(order):
        return "This is an estimate until the templates are here and measured."
    if standing == "estimate":
        return "This is an estimate, our best guess: once we have looked it over we quote for it."
    fixed = f"its price is fixed until {day_text(valid_until)}"
    return f"This is a quotation: {fixed}, for the order as it stands here."
