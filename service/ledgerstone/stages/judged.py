"""Fourth stage: every slab in place, at its age on the day when the order is ready."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

from ledgerstone.schedule import LeadTime
from ledgerstone.schedule.ages import ages_of
from ledgerstone.stages.assessed import Assessed
from ledgerstone.stages.planned import Planned
from ledgerstone.stages.scheduled import Scheduled
from ledgerstone.strength.concrete import age_days_of, tensile_growth
from ledgerstone.strength.verdict import PEOPLE, Verdict

USED_FROM_DAYS: Final = 28.0  # EN 1992-1-1 3.1.2(5): strength is specified at this age


@dataclass(frozen=True, slots=True)
class TooYoung:
    """What a slab in place does not bear yet on the day when the order is ready.

    Attributes
    ----------
    verdicts
        Those on a person that hold at 28 days, and not yet at its age.
    age_days, needed_days
        Its age at the start of that day, and the age from which all of them hold, both adjusted
        to 20 °C.
    until
        The first day on which it is so old, or the last that is looked at.
    """

    verdicts: tuple[Verdict, ...]
    age_days: float
    needed_days: float
    until: date


@dataclass(frozen=True, slots=True)
class Judged:
    """An order's slabs in place, at their age on the day when it is ready.

    Attributes
    ----------
    too_young
        Of each slab what it does not bear yet; None if it bears all that it does at 28 days, or if
        there is no such day.
    """

    scheduled: Scheduled
    too_young: tuple[TooYoung | None, ...]

    @property
    def assessed(self) -> Assessed:
        """The stresses that are judged."""
        return self.scheduled.assessed

    @property
    def planned(self) -> Planned:
        """The plans of its slabs."""
        return self.assessed.planned


def judge(assessed: Assessed, scheduled: Scheduled) -> Judged:
    """Judge every slab in place at its age on the day when the order is ready.

    What bears its loads for good is strong enough by then (`schedule` keeps it until it is); so a
    person alone may be too much for a young slab.

    Source
    ------
    EN 1992-1-1 (3.4) for the strength at an age, (B.10) for the age.
    """
    days, slabs = scheduled.lead_time, range(len(assessed.strength))
    young = (None if days is None else _too_young(assessed, i, days) for i in slabs)
    return Judged(scheduled, tuple(young))


def _too_young(assessed: Assessed, i: int, days: LeadTime) -> TooYoung | None:
    workshop = assessed.planned.workshop
    cement = workshop.recipe.cement_class
    ages = ages_of(days, i, workshop)
    age = ages.get(days.ready_on, 0.0)
    growth = tensile_growth(age, cement) if age > 0.0 else 1.0
    young = tuple(
        verdict
        for verdict in assessed.strength[i].in_place.verdicts
        if verdict.case in PEOPLE and growth < verdict.utilisation <= 1.0
    )
    if not young:
        return None
    needed = age_days_of(max(v.utilisation for v in young), cement) or USED_FROM_DAYS
    day = next((day for day, then in ages.items() if then >= needed), max(ages))
    return TooYoung(young, age, needed, day)
