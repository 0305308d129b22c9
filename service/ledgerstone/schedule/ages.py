"""How old concrete is by the days of its order, adjusted to 20 °C."""

from __future__ import annotations

from datetime import date, timedelta

from ledgerstone.schedule import LeadTime
from ledgerstone.schedule.booking import day_at
from ledgerstone.strength.concrete import ageing_rate
from ledgerstone.workshop.records import Workshop

MOST_DAYS = 400


def ages_of(days: LeadTime, slab: int, workshop: Workshop) -> dict[date, float]:
    """A slab's age at each day's beginning, adjusted to 20 °C, as warm as the workshop goes on.

    Source: EN 1992-1-1 (B.10). Of several pieces the last one's; in a heated tent, as warm as it.
    """
    cast = [one for one in days.work if one.job.step.slab == slab and one.job.step.stage == "cast"]
    if not cast:
        return {}
    poured = day_at(max(one.ends for one in cast))
    tents = [(day_at(one.wait_ends), one.job.step.warm_c) for one in cast]
    ages, age = {}, 0.0
    for number in range(MOST_DAYS):
        day = poured + timedelta(days=number)
        ages[day] = age
        celsius = workshop.handling.workshop_c[day.month - 1]
        warm = [c for until, c in tents if c is not None and day < until]
        age += ageing_rate(max([celsius, *warm]))
    return ages
