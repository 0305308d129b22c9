"""Check of a slab's age on its ready day: loads it may not carry yet, and until when."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from ledgerstone.checks.finding import Finding
from ledgerstone.schedule.ages import ages_of
from ledgerstone.stages import Scheduled
from ledgerstone.strength.concrete import age_days_of, tensile_growth
from ledgerstone.strength.verdict import Case, Verdict
from ledgerstone.wording import Listed, Message, slab_name

_PEOPLE: tuple[Case, ...] = ("somebody-standing", "somebody-sitting", "somebody-leaning")


def old_enough_in_place(scheduled: Scheduled) -> Iterable[Finding]:
    """A slab ready before 28 days at 20 °C may not carry a person yet.

    A slab that could not carry its permanent loads stays in the workshop until it can.
    """
    order, days = scheduled.planned.order, scheduled.lead_time
    if days is None:
        return
    workshop = scheduled.planned.workshop
    for i, strength in enumerate(scheduled.assessed.strength):
        ages = ages_of(days, i, workshop)
        age = ages.get(days.ready_on, 0.0)
        growth = tensile_growth(age, workshop.recipe.cement_class) if age > 0.0 else 1.0
        young = [
            verdict
            for verdict in strength.in_place.verdicts
            if verdict.case in _PEOPLE and growth < verdict.utilisation <= 1.0
        ]
        if young:
            needed = age_days_of(max(v.utilisation for v in young), workshop.recipe.cement_class)
            name = slab_name(order.slabs[i], i, len(order.slabs))
            yield _too_young(i, name, young, (age, needed or 28.0), ages)


def _too_young(
    i: int, name: Message, young: list[Verdict], age: tuple[float, float], ages: dict[date, float]
) -> Finding:
    (now, needed) = age
    day = next((day for day, then in ages.items() if then >= needed), max(ages))
    doing = (Message("person-doing", does=verdict.case) for verdict in young)
    message = Message(
        "young-for-people", doing=Listed(tuple(doing), joined="or"), slab=name, day=day
    )
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
