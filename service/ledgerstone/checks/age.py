"""Check of a slab's age on the day it is ready: what it may not bear yet, and from which day on."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta

from ledgerstone.checks.finding import Finding
from ledgerstone.schedule import LeadTime
from ledgerstone.schedule.booking import day_at
from ledgerstone.stages import Scheduled
from ledgerstone.strength.concrete import age_days_of, ageing_rate, tensile_growth
from ledgerstone.strength.verdict import Case, Verdict
from ledgerstone.wording import Listed, Message, slab_name
from ledgerstone.workshop.records import Workshop

_PEOPLE: tuple[Case, ...] = ("somebody-standing", "somebody-sitting", "somebody-leaning")
_LASTING: tuple[Case, ...] = ("own-weight", "even-load", "low-rest")
_MOST_DAYS = 400


def old_enough_in_place(scheduled: Scheduled) -> Iterable[Finding]:
    """Ready before 28 days of 20 °C, a slab that bears its loads then may not bear them all yet."""
    order, days = scheduled.planned.order, scheduled.lead_time
    if days is None:
        return
    workshop = scheduled.planned.workshop
    for i, strength in enumerate(scheduled.assessed.strength):
        ages = _ages(days, i, workshop)
        age = ages.get(days.ready_on, 0.0)
        growth = tensile_growth(age, workshop.recipe.cement_class) if age > 0.0 else 1.0
        young = [
            verdict
            for verdict in strength.in_place.verdicts
            if verdict.case in (*_PEOPLE, *_LASTING) and growth < verdict.utilisation <= 1.0
        ]
        if young:
            needed = age_days_of(max(v.utilisation for v in young), workshop.recipe.cement_class)
            name = slab_name(order.slabs[i], i, len(order.slabs))
            yield _too_young(i, name, young, (age, needed or 28.0), ages)


def _ages(days: LeadTime, slab: int, workshop: Workshop) -> dict[date, float]:
    """A slab's age at each day's beginning, adjusted to 20 °C, as warm as the workshop goes on.

    Source: EN 1992-1-1 (B.10). Of several pieces the last one's; in a heated tent, as warm as it.
    """
    cast = [one for one in days.work if one.job.step.slab == slab and one.job.step.stage == "cast"]
    if not cast:
        return {}
    poured = day_at(max(one.ends for one in cast))
    tents = [(day_at(one.wait_ends), one.job.step.warm_c) for one in cast]
    ages, age = {}, 0.0
    for number in range(_MOST_DAYS):
        day = poured + timedelta(days=number)
        ages[day] = age
        celsius = workshop.handling.workshop_c[day.month - 1]
        warm = [c for until, c in tents if c is not None and day < until]
        age += ageing_rate(max([celsius, *warm]))
    return ages


def _too_young(
    i: int, name: Message, young: list[Verdict], age: tuple[float, float], ages: dict[date, float]
) -> Finding:
    (now, needed) = age
    day = next((day for day, then in ages.items() if then >= needed), max(ages))
    doing = (Message("person-doing", does=v.case) for v in young if v.case in _PEOPLE)
    message = Message(
        "young-for-people", doing=Listed(tuple(doing), joined="or"), slab=name, day=day
    )
    if any(verdict.case in _LASTING for verdict in young):
        message = Message("young-for-its-rests", slab=name, day=day)
    return Finding(
        "young-in-place",
        "caution",
        message,
        "EN 1992-1-1 (3.4) and (B.10), as warm as the workshop",
        slab=i,
        at=(f"/slabs/{i}",),
        measured={"age_days": round(now, 2)},
        limit={"age_days": round(needed, 2)},
    )
