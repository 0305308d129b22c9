"""The one orchestrator: an order, a workshop, its bookings and the day become a quote or a no."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import nullcontext
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Literal

from ledgerstone.checks import Checked, Facts, Finding, Timed, check_order
from ledgerstone.checks.rails import rail_conditions
from ledgerstone.containment import Contain, let_through
from ledgerstone.order import Order
from ledgerstone.price import Price
from ledgerstone.reinforcement import SteelPlan
from ledgerstone.remedies import (
    Budget,
    Found,
    Pace,
    Saving,
    Trial,
    after_plans_alone,
    budget_for,
    find,
    unpaced,
    ways_to_save,
)
from ledgerstone.schedule import Booking, LeadTime, calendar_fingerprint
from ledgerstone.shape import Shape
from ledgerstone.stages import StageCache
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.transport import lift_words, people_to_lift
from ledgerstone.wording import day_text
from ledgerstone.work import Operation
from ledgerstone.workshop.records import Area, Workshop

Standing = Literal["estimate", "quotation"]
NOT_LOOKED = "We could not look into our calendar, so the day is a guess that we confirm."


@dataclass(frozen=True, slots=True)
class SlabWeight:
    """What one slab weighs, how many lift it, and both in words."""

    label: str
    slab_kg: float
    people_to_lift: int
    says: str


@dataclass(frozen=True, slots=True)
class Quote:
    """The answer when nothing stops the order.

    ``calendar`` is a print of what is booked, and of the public holidays, up to the day; ``work``
    and ``steel``, each slab's, are the workshop's own.
    """

    order: Order
    issued: date
    valid_until: date
    standing: Standing
    depends_on: tuple[str, ...]
    price: Price
    lead_time: LeadTime
    weights: tuple[SlabWeight, ...]
    packed_kg: float
    findings: tuple[Finding, ...]
    shapes: tuple[Shape, ...]
    strength: tuple[SlabStrength, ...]
    area: Area | None
    calendar: str
    work: tuple[Operation, ...]
    steel: tuple[SteelPlan, ...]
    ways: tuple[Saving, ...] = ()
    searched: bool = False


@dataclass(frozen=True, slots=True)
class SentBack:
    """The answer when something stops the order: every finding, and what would put it right."""

    order: Order
    findings: tuple[Finding, ...]
    not_checked: tuple[str, ...]
    shapes: tuple[Shape, ...]
    found: Found | None = None


def quote(
    order: Order,
    *,
    workshop: Workshop,
    bookings: Sequence[Booking] | None,
    today: date,
    plates: StageCache | None = None,
    trial: Trial | None = None,
    timed: Timed = nullcontext,
    contain: Contain = let_through,
    pace: Pace = unpaced,
) -> Quote | SentBack:
    """Quote an order, or send it back. Pure: the same inputs give the same answer.

    Parameters
    ----------
    bookings
        All that is booked; None where no calendar is read.
    plates
        Factored plates kept from earlier orders; they bear on when the answer comes, never on it.
    trial
        Tries changes on the order as it was sent; without it neither remedies nor ways to save
        are searched for.
    timed
        Is entered for each stage of the work by its name.
    contain
        Is entered for each part of it whose fault costs that part alone.
    pace
        Is told before each piece of work how much it comes to in all; what it raises ends it.

    Raises
    ------
    TooIntricate
        It is more work than one request may be; none of it has been done.
    """
    budget = budget_for(order, pace)
    facts = Facts(order, workshop, bookings, today, plates, contain=contain)
    checked = check_order(facts, timed=timed)
    if checked.stops:
        with timed("remedies"):
            left = after_plans_alone(order, pace) if "strength" in checked.not_checked else budget
            found = _found(facts, checked.findings, trial, left)
        return SentBack(order, checked.findings, checked.not_checked, _shapes(facts), found)
    with timed("remedies"):
        ways = _ways(facts, checked.findings, trial, budget)
    return _quoted(facts, checked, ways, searched=trial is not None)


def _found(
    facts: Facts, findings: tuple[Finding, ...], trial: Trial | None, budget: Budget
) -> Found | None:
    """Search for remedies where a trial is given; none where a fault of ours lost them."""
    with facts.contain("remedy"):
        return None if trial is None else find(facts.order, facts, findings, trial, budget)
    return None


def _ways(
    facts: Facts, findings: tuple[Finding, ...], trial: Trial | None, budget: Budget
) -> tuple[Saving, ...]:
    """Search for ways to save, likewise."""
    with facts.contain("saving"):
        return () if trial is None else ways_to_save(facts.order, facts, findings, trial, budget)
    return ()


def _shapes(facts: Facts) -> tuple[Shape, ...]:
    """Each slab's plan, for what is drawn; none where a fault of ours lost them."""
    with facts.contain("drawing"):
        return facts.shapes
    return ()


def _quoted(facts: Facts, checked: Checked, ways: tuple[Saving, ...], *, searched: bool) -> Quote:
    """Put together what is known of an order that nothing stops."""
    order, workshop, today = facts.order, facts.workshop, facts.today
    standing, until = _standing(order, workshop), today + timedelta(days=workshop.offer.valid_days)
    booked, ready = facts.bookings or (), facts.lead_time.ready_on
    return Quote(
        order=order,
        issued=today,
        valid_until=until,
        standing=standing,
        depends_on=tuple(_depends_on(facts, standing, until)),
        price=facts.price,
        lead_time=facts.lead_time,
        weights=tuple(_weights(order, facts, workshop)),
        packed_kg=facts.planned.packed_kg,
        findings=checked.findings,
        shapes=facts.shapes,
        strength=facts.strength,
        area=facts.area,
        work=facts.scheduled.operations,
        steel=facts.known.steel,
        calendar=calendar_fingerprint(workshop, booked, today, ready),
        searched=searched,
        ways=ways,
    )


def _weights(order: Order, facts: Facts, workshop: Workshop) -> Iterator[SlabWeight]:
    for slab, kg in zip(order.slabs, facts.slab_kg, strict=True):
        people, says = people_to_lift(kg, workshop), lift_words(kg, workshop)
        yield SlabWeight(slab.label, kg, people, says)


def waits_for_template(order: Order) -> bool:
    """Say whether a slab or a cut-out is still to be measured, by a template or by us."""
    return order.templating or any(
        slab.size_from == "template-to-follow"
        or any(cutout.size_from == "template-to-follow" for cutout in slab.cutouts)
        for slab in order.slabs
    )


def _standing(order: Order, workshop: Workshop) -> Standing:
    return "estimate" if waits_for_template(order) else workshop.offer.standing


def with_standing(answer: Quote, standing: Standing) -> Quote:
    """Give a quote another standing, and say so in what it rests on."""
    was, now = (_standing_says(answer.order, s, answer.valid_until)
                for s in (answer.standing, standing))  # fmt: skip
    rests_on = tuple(now if says == was else says for says in answer.depends_on)
    return replace(answer, standing=standing, depends_on=rests_on)


def _depends_on(facts: Facts, standing: Standing, valid_until: date) -> Iterator[str]:
    """Say what the price and the day rest on."""
    order, offer = facts.order, facts.workshop.offer
    here = []
    if offer.deposit_percent:
        here.append(f"the deposit of {offer.deposit_percent.normalize():f}% paid")
    if waits_for_template(order) and not order.templating:
        here.append("the templates here")
    with_it = f" with {' and '.join(here)}" if here else ""
    by = day_text(facts.today)
    yield f"The day is for an order by {by}{with_it}. It is held once we have booked it."
    yield _standing_says(order, standing, valid_until)
    if any(step.stage == "sample" for step in facts.scheduled.operations):
        yield "Nothing is cut before you have said yes to a sample tile."
    yield from rail_conditions(order, facts.strength, facts.workshop)
    if order.delivery.kind == "collect":
        yield "You collect the order from the workshop."
    yield (
        "It is made to your measure, so as a rule it cannot be returned once it is made. The law"
        " where you live has the last word."
    )


def _standing_says(order: Order, standing: Standing, valid_until: date) -> str:
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
