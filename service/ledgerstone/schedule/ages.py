"""How old concrete is by the days of its order, adjusted to 20 °C."""

from __future__ import annotations

from datetime import date, timedelta

from ledgerstone.schedule import LeadTime
from ledgerstone.schedule.booking import day_at
from ledgerstone.strength.concrete import ageing_rate
from ledgerstone.workshop.records import Workshop

MAX_DAYS = 400
A_DAY = timedelta(days=1)


def ages_of(days: LeadTime, slab: int, workshop: Workshop) -> dict[date, float]:
    """A slab's age in days, adjusted to 20 °C, at the start of each day.

    Of several pieces it is the last one's. The temperature is the workshop's by month; in a heated
    tent, the tent's.

    Source
    ------
    EN 1992-1-1 (B.10).
    """
    cast = [
        scheduled
        for scheduled in days.work
        if scheduled.job.step.slab == slab and scheduled.job.step.phase == "cast"
    ]
    if not cast:
        return {}
    poured = day_at(max(scheduled.ends for scheduled in cast))
    rates = [ageing_rate(celsius) for celsius in workshop.handling.workshop_c]
    tents = [
        (day_at(scheduled.wait_ends), ageing_rate(scheduled.job.step.warm_c))
        for scheduled in cast
        if scheduled.job.step.warm_c is not None
    ]
    ages, age, day = {}, 0.0, poured
    for _ in range(MAX_DAYS):
        ages[day] = age
        age += max([rates[day.month - 1], *(rate for until, rate in tents if day < until)])
        day += A_DAY
    return ages
