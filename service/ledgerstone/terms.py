"""What a price and a day rest on, and what an estimate or a quotation is, in sentences."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Literal

from ledgerstone.checks import WorkedOut
from ledgerstone.checks.rails import rail_conditions
from ledgerstone.order import Order
from ledgerstone.strength.strip_test import CONDITION_UNDER_DAYS
from ledgerstone.wording import Message, Percent
from ledgerstone.workshop.records import Workshop

Standing = Literal["estimate", "quotation"]
NOT_LOOKED = ("calendar-not-read", "calendar-not-read-because")  # what a day is a guess by


def waits_for_template(order: Order) -> bool:
    """Say whether a slab or a cut-out is still to be measured, by a template or by us."""
    return order.templating or any(
        slab.size_from == "template-to-follow"
        or any(cutout.size_from == "template-to-follow" for cutout in slab.cutouts)
        for slab in order.slabs
    )


def standing_of(order: Order, workshop: Workshop) -> Standing:
    """Say whether an offer is an estimate or a quotation, as the profile has it."""
    if waits_for_template(order) or workshop.standing.trial:
        return "estimate"
    return workshop.offer.standing


def depends_on(
    worked_out: WorkedOut, today: date, standing: Standing, valid_until: date
) -> Iterator[Message]:
    """Say what the price and the day rest on."""
    order, workshop = worked_out.planned.order, worked_out.planned.workshop
    if workshop.standing.trial:
        yield Message("trial")
    yield Message(
        "day-is-for",
        by=today,
        wanted=_wanted_first(order, workshop),
        deposit=Percent(workshop.offer.deposit_percent),
    )
    yield standing_message(order, standing, valid_until)
    if any(step.stage == "sample" for step in worked_out.scheduled.operations):
        yield Message("sample-first")
    moved_at = (strength.handled.age_days for strength in worked_out.judged.strength)
    if min(moved_at) < CONDITION_UNDER_DAYS:
        yield Message("strip-first")
    yield from rail_conditions(order, worked_out.judged.strength, workshop)
    if order.delivery.kind == "collect":
        yield Message("you-collect")
    if not workshop.tax.registered:
        yield Message("no-tax-charged", tax=workshop.tax.name)
    yield Message("made-to-measure")


def _wanted_first(order: Order, workshop: Workshop) -> str:
    """What must be here on the day of the order: the deposit, templates, both or nothing."""
    templates = waits_for_template(order) and not order.templating
    if workshop.offer.deposit_percent:
        return "deposit-and-templates" if templates else "deposit"
    return "templates" if templates else "nothing"


def standing_message(order: Order, standing: Standing, valid_until: date) -> Message:
    """Say in right words what an estimate or a quotation is: a best guess, or a fixed offer.

    Source: sources §4, a quotation is a fixed offer within its scope, an estimate binds none.
    """
    if order.templating:
        return Message("estimate-until-measured")
    if waits_for_template(order):
        return Message("estimate-until-templates")
    if standing == "estimate":
        return Message("estimate-best-guess")
    return Message("quotation-fixed", until=valid_until)
