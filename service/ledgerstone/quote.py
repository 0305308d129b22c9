"""The orchestrator: from an order, a workshop, its bookings and the day to a quote or send-back."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager, nullcontext
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import partial

from ledgerstone.checks import (
    CHECK_GROUPS,
    Checked,
    CheckGroup,
    Finding,
    StageRecords,
    Timed,
    check_plan,
    check_promise,
    check_strength,
)
from ledgerstone.checks.causes import with_causes
from ledgerstone.checks.failed import check_failed
from ledgerstone.containment import Contain, uncontained
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
from ledgerstone.remedies.usual_thickness import with_thickness_that_does
from ledgerstone.schedule import LeadTime, calendar_fingerprint
from ledgerstone.shape import Shape
from ledgerstone.stages import (
    Assessed,
    Planned,
    StageContext,
    assess,
    judge,
    plan,
    price_work,
    schedule,
)
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.terms import OfferStanding, depends_on, standing_message, standing_of
from ledgerstone.transport import lift_message, people_to_lift
from ledgerstone.wording import Message
from ledgerstone.work import Operation
from ledgerstone.workshop.records import DeliveryArea


@dataclass(frozen=True, slots=True)
class SlabWeight:
    """The mass of one slab, the people to lift it, and a message about both."""

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
    standing: OfferStanding
    depends_on: tuple[Message, ...]
    price: Price
    lead_time: LeadTime
    weights: tuple[SlabWeight, ...]
    packed_kg: float
    findings: tuple[Finding, ...]
    shapes: tuple[Shape, ...]
    strength: tuple[SlabStrength, ...]
    area: DeliveryArea | None
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
    context: StageContext,
    *,
    trial: Trial | None = None,
    savings: bool = True,
    timed: Timed = nullcontext,
    contain: Contain = uncontained,
    budget: Budget | None = None,
) -> Quote | SentBack:
    """Quote an order, or send it back. Pure: the same inputs give the same answer.

    Parameters
    ----------
    context
        The workshop, its bookings, the day, and the maker's terms. Results of earlier orders in
        it affect only how soon the answer comes.
    trial
        Tries changes on the order as it was sent; without it nothing is searched for.
    savings
        Whether ways to save are searched for too.
    timed, contain
        Context managers for each group of checks by name, and for each part that may fail alone.
    budget
        Units of work left to the request, by default a whole budget.

    Raises
    ------
    TooIntricate
        It is more work than one request may be; none of it has been done.
    """
    budget = budget if budget is not None else Budget()
    budget.begin(order, context.today)
    order, checked = run_stages_as_left(order, context, budget.tries, timed=timed, contain=contain)
    if checked.records is None:
        with timed("remedies"):
            found = _found(checked, context, trial, budget, contain)
        shapes = () if checked.planned is None else checked.planned.shapes
        return SentBack(order, checked.findings, checked.not_checked, shapes, found)
    saving = trial if savings else None
    with timed("remedies"):
        ways = _ways(checked, saving, budget, contain)
    return _quoted(checked.records, context, checked.findings, ways, searched=saving is not None)


def run_stages(
    order: Order,
    context: StageContext,
    *,
    groups: tuple[CheckGroup, ...] = CHECK_GROUPS,
    timed: Timed = nullcontext,
    contain: Contain = uncontained,
) -> Checked:
    """Work an order out, each stage with its checks, until one stops it.

    plan → assess → schedule → judge → price. A stage that an internal fault lost is a finding.
    """
    findings: list[Finding] = []
    planned = assessed = judged = priced = None
    with timed("shape"), _or_failed("shape", findings, contain):
        planned = plan(order, context)
        findings += check_plan(planned, contain)
    if planned is None or _stopped(findings):
        return Checked(with_causes(findings), groups[1:], planned)
    with timed("strength"), _or_failed("strength", findings, contain):
        assessed = assess(planned, context)
        findings += check_strength(assessed, contain)
    if not isinstance(assessed, Assessed) or _stopped(findings) or "promise" not in groups:
        return Checked(with_causes(findings), groups[2:], planned)
    with timed("promise"), _or_failed("promise", findings, contain):
        judged = judge(assessed, schedule(assessed, context))
        findings += check_promise(judged, contain)
        priced = None if _stopped(findings) else price_work(judged.scheduled, context.terms)
    records = None if judged is None or priced is None else StageRecords(judged, priced)
    return Checked(with_causes(findings), (), planned, records)


def _stopped(findings: Sequence[Finding]) -> bool:
    return any(finding.level == "stops" for finding in findings)


@contextmanager
def _or_failed(group: CheckGroup, findings: list[Finding], contain: Contain) -> Iterator[None]:
    """Find that nothing of a group could be checked where an internal fault loses its stage."""
    done = False
    with contain("check"):
        yield
        done = True
    if not done:
        findings.append(check_failed("stops", group, (group,)))


def run_stages_as_left(
    order: Order,
    context: StageContext,
    may_try: Callable[[Order], bool],
    *,
    timed: Timed = nullcontext,
    contain: Contain = uncontained,
) -> tuple[Order, Checked]:
    """Work an order out as ``run_stages`` does, of a thickness that does where none was told.

    Parameters
    ----------
    may_try
        Says of each order, before it is worked out, whether there is budget for it.
    """
    run = partial(run_stages, context=context, timed=timed, contain=contain)
    return with_thickness_that_does(order, context.workshop.shaping, run, may_try)


def _found(
    checked: Checked,
    context: StageContext,
    trial: Trial | None,
    budget: Budget,
    contain: Contain,
) -> Found | None:
    """Search for remedies where a trial is given; none if an internal fault lost them."""
    if trial is None or checked.planned is None:
        return None
    if "strength" in checked.not_checked:
        budget.had_plans_alone(checked.planned.order)
    alone = partial(run_stages, context=context, groups=OF_A_SLAB)
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
    records: StageRecords,
    context: StageContext,
    findings: tuple[Finding, ...],
    ways: tuple[Saving, ...],
    *,
    searched: bool,
) -> Quote:
    """Put together what is known of an order that nothing stops."""
    planned, workshop, today = records.planned, context.workshop, context.today
    order, days, booked = planned.order, records.lead_time, context.bookings or ()
    standing = standing_of(order, workshop)
    until = context.terms.valid_until or today + timedelta(days=workshop.offer.valid_days)
    return Quote(
        order=order,
        issued=today,
        valid_until=until,
        standing=standing,
        depends_on=tuple(depends_on(records, today, standing, until)),
        price=records.priced.price,
        lead_time=days,
        weights=tuple(_weights(planned)),
        packed_kg=planned.packed_kg,
        findings=findings,
        shapes=planned.shapes,
        strength=records.assessed.strength,
        area=planned.area,
        work=records.scheduled.operations,
        steel=records.assessed.steel,
        calendar=calendar_fingerprint(workshop, booked, today, days.ready_on),
        searched=searched,
        ways=ways,
        terms=context.terms,
    )


def _weights(planned: Planned) -> Iterator[SlabWeight]:
    for slab, kg in zip(planned.order.slabs, planned.slab_kg, strict=True):
        people = people_to_lift(kg, planned.workshop)
        yield SlabWeight(slab.label, kg, people, lift_message(kg, planned.workshop))


def with_standing(answer: Quote, standing: OfferStanding) -> Quote:
    """Change a quote's standing, and update the conditions that depend on it."""
    was, now = (standing_message(answer.order, s, answer.valid_until)
                for s in (answer.standing, standing))  # fmt: skip
    rests_on = tuple(now if depend == was else depend for depend in answer.depends_on)
    return replace(answer, standing=standing, depends_on=rests_on)
