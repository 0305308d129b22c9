"""The one orchestrator: an order, a workshop, its bookings and the day become a quote or a no."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager, nullcontext
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import partial

from ledgerstone.checks import (
    STAGES,
    Checked,
    Finding,
    Stage,
    Timed,
    WorkedOut,
    check_plan,
    check_promise,
    check_strength,
)
from ledgerstone.checks.causes import with_causes
from ledgerstone.checks.failed import check_failed
from ledgerstone.containment import Contain, let_through
from ledgerstone.order import Order
from ledgerstone.price import NO_TERMS, MakerTerms, Price
from ledgerstone.reinforcement import SteelPlan
from ledgerstone.remedies import (
    OF_A_SLAB,
    Budget,
    Found,
    Saving,
    Trial,
    Trials,
    find,
    ways_to_save,
)
from ledgerstone.schedule import Booking, LeadTime, calendar_fingerprint
from ledgerstone.shape import Shape
from ledgerstone.stages import (
    Planned,
    StageCache,
    StageContext,
    Unassessed,
    assess,
    judge,
    plan,
    price_work,
    schedule,
)
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.terms import Standing, depends_on, standing_message, standing_of
from ledgerstone.transport import lift_message, people_to_lift
from ledgerstone.wording import Message
from ledgerstone.work import Operation
from ledgerstone.workshop.records import Area, Workshop


@dataclass(frozen=True, slots=True)
class SlabWeight:
    """What one slab weighs, how many lift it, and what is to be said of both."""

    label: str
    slab_kg: float
    people_to_lift: int
    message: Message


@dataclass(frozen=True, slots=True)
class Quote:
    """The answer when nothing stops the order.

    ``terms`` are what the maker set for it alone; ``calendar`` is the fingerprint of
    bookings and public holidays up to the day; ``work`` and ``steel``, each slab's, are the
    workshop's own.
    """

    order: Order
    issued: date
    valid_until: date
    standing: Standing
    depends_on: tuple[Message, ...]
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
    terms: MakerTerms = NO_TERMS


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
    savings: bool = True,
    timed: Timed = nullcontext,
    contain: Contain = let_through,
    budget: Budget | None = None,
    terms: MakerTerms = NO_TERMS,
) -> Quote | SentBack:
    """Quote an order, or send it back. Pure: the same inputs give the same answer.

    Parameters
    ----------
    bookings
        All that is booked; None where no calendar is read.
    plates
        Factored plates kept from earlier orders; they bear on when the answer comes, never on it.
    trial
        Tries changes on the order as it was sent; without it nothing is searched for.
    savings
        Whether ways to save are searched for too.
    timed, contain
        Are entered for each stage by its name, for each part whose fault costs that part alone.
    budget, terms
        What the request may still spend, a whole one where none is given; what the maker sets.

    Raises
    ------
    TooIntricate
        It is more work than one request may be; none of it has been done.
    """
    budget = budget if budget is not None else Budget()
    budget.begin(order, today)
    context = StageContext(workshop, bookings, today, plates or StageCache(), terms=terms)
    checked = work_out(order, context, timed=timed, contain=contain)
    if checked.worked_out is None:
        with timed("remedies"):
            found = _found(checked, context, trial, budget, contain)
        shapes = () if checked.planned is None else checked.planned.shapes
        return SentBack(order, checked.findings, checked.not_checked, shapes, found)
    saving = trial if savings else None
    with timed("remedies"):
        ways = _ways(checked, saving, budget, contain)
    return _quoted(checked.worked_out, context, checked.findings, ways, searched=saving is not None)


def work_out(
    order: Order,
    context: StageContext,
    *,
    stages: tuple[Stage, ...] = STAGES,
    timed: Timed = nullcontext,
    contain: Contain = let_through,
) -> Checked:
    """Work an order out, each stage with its checks, until one stops it.

    Where a fault of ours loses a stage, that is what is found.
    """
    findings: list[Finding] = []
    planned = judged = priced = None
    with timed("shape"), _or_failed("shape", findings, contain):
        planned = plan(order, context)
        findings += check_plan(planned, contain)
    if planned is None or _stopped(findings):
        return Checked(with_causes(findings), stages[1:], planned)
    with timed("strength"), _or_failed("strength", findings, contain):
        assessed = assess(planned, context)
        if isinstance(assessed, Unassessed):
            findings += check_strength(assessed, contain)
        else:
            scheduled = schedule(assessed, context)
            judged = judge(assessed, scheduled)
            findings += check_strength(judged, contain)
    if judged is None or _stopped(findings) or "promise" not in stages:
        return Checked(with_causes(findings), stages[2:], planned)
    with timed("promise"), _or_failed("promise", findings, contain):
        findings += check_promise(judged.scheduled, contain)
        priced = None if _stopped(findings) else price_work(judged.scheduled, context.terms)
    worked_out = None if priced is None else WorkedOut(planned, judged, priced)
    return Checked(with_causes(findings), (), planned, worked_out)


def _stopped(findings: Sequence[Finding]) -> bool:
    return any(finding.level == "stops" for finding in findings)


@contextmanager
def _or_failed(stage: Stage, findings: list[Finding], contain: Contain) -> Iterator[None]:
    """Find that a stage could not be checked where a fault of ours loses it."""
    done = False
    with contain("check"):
        yield
        done = True
    if not done:
        findings.append(check_failed("stops", stage, (stage,)))


def _found(
    checked: Checked,
    context: StageContext,
    trial: Trial | None,
    budget: Budget,
    contain: Contain,
) -> Found | None:
    """Search for remedies where a trial is given; none where a fault of ours lost them."""
    if trial is None or checked.planned is None:
        return None
    if "strength" in checked.not_checked:
        budget.had_plans_alone(checked.planned.order)
    alone = partial(work_out, context=context, stages=OF_A_SLAB)
    with contain("remedy"):
        trials = Trials(trial, alone)
        return find(
            checked.planned, context, checked.findings, trials, budget=budget, contain=contain
        )
    return None


def _ways(
    checked: Checked, trial: Trial | None, budget: Budget, contain: Contain
) -> tuple[Saving, ...]:
    """Search for ways to save, likewise."""
    with contain("saving"):
        return () if trial is None else ways_to_save(checked, trial, budget)
    return ()


def _quoted(
    worked_out: WorkedOut,
    context: StageContext,
    findings: tuple[Finding, ...],
    ways: tuple[Saving, ...],
    *,
    searched: bool,
) -> Quote:
    """Put together what is known of an order that nothing stops."""
    planned, workshop, today = worked_out.planned, context.workshop, context.today
    order, days, booked = planned.order, worked_out.lead_time, context.bookings or ()
    standing = standing_of(order, workshop)
    until = context.terms.valid_until or today + timedelta(days=workshop.offer.valid_days)
    return Quote(
        order=order,
        issued=today,
        valid_until=until,
        standing=standing,
        depends_on=tuple(depends_on(worked_out, today, standing, until)),
        price=worked_out.priced.price,
        lead_time=days,
        weights=tuple(_weights(planned)),
        packed_kg=planned.packed_kg,
        findings=findings,
        shapes=planned.shapes,
        strength=worked_out.judged.strength,
        area=planned.area,
        work=worked_out.scheduled.operations,
        steel=worked_out.assessed.steel,
        calendar=calendar_fingerprint(workshop, booked, today, days.ready_on),
        searched=searched,
        ways=ways,
        terms=context.terms,
    )


def _weights(planned: Planned) -> Iterator[SlabWeight]:
    for slab, kg in zip(planned.order.slabs, planned.slab_kg, strict=True):
        people = people_to_lift(kg, planned.workshop)
        yield SlabWeight(slab.label, kg, people, lift_message(kg, planned.workshop))


def with_standing(answer: Quote, standing: Standing) -> Quote:
    """Give a quote another standing, and say so in what it rests on."""
    was, now = (standing_message(answer.order, s, answer.valid_until)
                for s in (answer.standing, standing))  # fmt: skip
    rests_on = tuple(now if one == was else one for one in answer.depends_on)
    return replace(answer, standing=standing, depends_on=rests_on)
