"""Messages about the conditions of a price and a day, and about estimates and quotations."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from types import MappingProxyType
from typing import Final, Literal

from ledgerstone.checks import StageRecords
from ledgerstone.checks.rails import rail_conditions
from ledgerstone.message import Listed
from ledgerstone.order import UPRIGHT_USES, Order
from ledgerstone.price.customer_price import is_measured_by_workshop, is_unmeasured
from ledgerstone.strength.strip_test import CONDITION_UNDER_DAYS
from ledgerstone.wording import Message, Percent, slabs_name
from ledgerstone.workshop.records import Workshop

OfferStanding = Literal["estimate", "quotation"]
# What a table of the profile decides for a customer, where that is no price; in a sentence's order.
_SUBJECTS: Final = ("prices", "hours", "days", "areas", "shades", "lifts")
_SUBJECT_OF: Final = MappingProxyType(
    {
        **dict.fromkeys(("hours", "mixer"), "hours"),
        **dict.fromkeys(("calendar", "handling", "tent"), "days"),
        **dict.fromkeys(("palette", "pigments", "shade"), "shades"),
        "areas": "areas",
        "lifting": "lifts",
    }
)
MAKERS_CONDITIONS: Final = frozenset({"strip-first"})  # what the workshop alone sees to
NOT_LOOKED = ("calendar-not-read", "calendar-not-read-because")  # what a day is a guess by


def waits_for_template(order: Order) -> bool:
    """Return whether a slab or a cut-out is still to be measured, by a template or by us."""
    return order.templating or any(map(is_unmeasured, order.slabs))


def standing_of(order: Order, workshop: Workshop) -> OfferStanding:
    """Return whether an offer is an estimate or a quotation, as the profile has it."""
    if waits_for_template(order) or workshop.standing.trial:
        return "estimate"
    return workshop.offer.standing


def trial_message(workshop: Workshop) -> Message:
    """Say that an answer is a trial, and which of the workshop's values are nobody's yet."""
    subjects = {_SUBJECT_OF.get(table, "prices") for table in workshop.standing.priced}
    what = [Message("trial-what", what=name) for name in _SUBJECTS if name in subjects]
    return Message("trial", what=Listed(tuple(what)))


def depends_on(
    records: StageRecords, today: date, standing: OfferStanding, valid_until: date
) -> Iterator[Message]:
    """State what the price and the day rest on."""
    order, workshop = records.planned.order, records.planned.workshop
    if workshop.standing.trial:
        yield trial_message(workshop)
    yield Message(
        "day-is-for",
        by=today,
        wanted=wanted_first(order, workshop),
        deposit=Percent(workshop.offer.deposit_percent),
    )
    yield standing_message(order, standing, valid_until)
    if any(step.phase == "sample" for step in records.scheduled.operations):
        yield Message("sample-first")
    moved_at = (strength.handled.age_days for strength in records.assessed.strength)
    if min(moved_at) < CONDITION_UNDER_DAYS:
        yield Message("strip-first")
    yield from rail_conditions(order, records.assessed.strength, workshop)
    based = on_solid_base(order)
    if based:
        yield Message("solid-base-before", slabs=slabs_name(order, based))
    if order.delivery.kind == "collect":
        yield Message("you-collect")
    if not workshop.tax.registered:
        yield Message("no-tax-charged", tax=workshop.tax.name)
    yield Message("made-to-measure")


def on_solid_base(order: Order) -> tuple[int, ...]:
    """Return the slabs that need a base all over that does not bend, built by others.

    No case of load is solved on a full bed, so the bed must be as stiff as that. A board on
    cabinets is not: 18 mm of plywood of 9 GPa has 3 % of the stiffness of 40 mm of concrete of
    31 GPa, by E h³. What is under a hearth is its installer's, and what stands is fixed to its
    wall.

    Source
    ------
    E of C25/30: EN 1992-1-1 table 3.1; of plywood: from memory.
    """
    return tuple(
        i
        for i, slab in enumerate(order.slabs)
        if slab.rests is not None
        and slab.rests.kind == "full"
        and slab.use != "hearth"
        and slab.use not in UPRIGHT_USES
    )


def wanted_first(order: Order, workshop: Workshop) -> str:
    """What must be here on the day of the order: the deposit, templates, both or nothing."""
    templates = waits_for_template(order) and not is_measured_by_workshop(order)
    if workshop.offer.deposit_percent:
        return "deposit-and-templates" if templates else "deposit"
    return "templates" if templates else "nothing"


def standing_message(order: Order, standing: OfferStanding, valid_until: date) -> Message:
    """State in right words what an estimate or a quotation is: a best guess, or a fixed offer.

    Source
    ------
    sources §4, a quotation is a fixed offer within its scope, an estimate binds none.
    """
    if is_measured_by_workshop(order):
        return Message("estimate-until-measured")
    if waits_for_template(order):
        return Message("estimate-until-templates")
    if standing == "estimate":
        return Message("estimate-best-guess")
    return Message("quotation-fixed", until=valid_until)
