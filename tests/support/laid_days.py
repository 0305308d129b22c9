"""Operations scheduled in an empty calendar."""

from dataclasses import replace
from datetime import date, timedelta
from typing import Any

from ledgerstone.message import Message
from ledgerstone.schedule import LeadTime, PhaseDays, lead_time
from ledgerstone.wording import english
from ledgerstone.work import Operation, Phase
from ledgerstone.workshop import Workshop

MONDAY = date(2026, 11, 2)  # no public holiday and no closure within six weeks


def day(n: int) -> date:
    """Count days from that Monday, which is day 0."""
    return MONDAY + timedelta(days=n)


def step(phase: Phase, hours: float, **more: Any) -> Operation:
    """Write one operation; a finish frees the table."""
    return Operation(Message(phase), phase, 0, hours, **{"frees": phase == "finish", **more})


def on_an_empty_bench(workshop: Workshop) -> Workshop:
    """Two pairs of hands, 8 to 15; nothing taken on, no day in hand, no closure, no damp cover."""
    calendar = replace(workshop.calendar, orders_ahead_days=0, closures=())
    days, bench = replace(workshop.days, buffer=0), replace(workshop.bench, damp_days=0.0)
    return replace(workshop, calendar=calendar, days=days, bench=bench)


def laid(shop: Workshop, *steps: Operation, today: date = MONDAY, road: int = 0) -> LeadTime:
    """Lay steps into the calendar of a shop without bookings."""
    return lead_time(steps, shop, None, today, road)


def days_of(lead: LeadTime) -> list[tuple[str, int, int]]:
    """Write phases by name and by days from that Monday."""
    return [
        (english(s.name), (s.starts - MONDAY).days, (s.ends - MONDAY).days) for s in lead.phases
    ]


def why(phase: PhaseDays) -> str:
    """Say why a phase takes its days."""
    return " ".join(map(english, phase.why))
