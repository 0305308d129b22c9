"""The plan of one order as an iCalendar text that can be imported, and then read as bookings."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator, Sequence
from datetime import UTC, datetime, time, timedelta
from zoneinfo import ZoneInfo

import icalendar

from ledgerstone.order import Order
from ledgerstone.schedule import LeadTime, ScheduledJob
from ledgerstone.schedule.jobs import moment
from ledgerstone.workshop.records import BookingRules, Workshop


def plan_ics(lead: LeadTime, order: Order, workshop: Workshop) -> str:
    """Write a plan: each load on the casting tables, one entry a table, and each job of hands.

    Titles carry the profile's own words for what holds a table and what holds people, so that the
    calendar the service reads is the one it writes for. The same plan gives the same text.
    """
    calendar = icalendar.Calendar()
    calendar.add("VERSION", "2.0")
    calendar.add("PRODID", "-//Ledgerstone//Plan//EN")
    stamp = datetime.combine(lead.if_ordered_by, time.min, UTC)
    zone = ZoneInfo(workshop.workshop.timezone)
    for title, category, starts, ends in _entries(lead, order, workshop):
        event = icalendar.Event()
        told = f"{title} {starts} {ends} {len(calendar.subcomponents)}"
        event.add("UID", f"{hashlib.sha256(told.encode()).hexdigest()[:24]}@ledgerstone")
        event.add("DTSTAMP", stamp)
        event.add("DTSTART", starts.replace(tzinfo=zone).astimezone(UTC))
        event.add("DTEND", ends.replace(tzinfo=zone).astimezone(UTC))
        event.add("SUMMARY", title)
        event.add("CATEGORIES", [category])
        calendar.add_component(event)
    return str(calendar.to_ical().decode())


def _entries(
    lead: LeadTime, order: Order, workshop: Workshop
) -> Iterator[tuple[str, str, datetime, datetime]]:
    rules = workshop.bookings if workshop.bookings is not None else BookingRules(file="")
    table, people = _word(rules.table_words, "table"), _word(rules.people_words, "hands")
    for held in lead.on_table:
        for number in range(held.tables):
            title = f"Casting table {number + 1}: {_lying(held.load, lead, order)}"
            yield title, table, moment(held.starts), moment(held.ends)
    for one in lead.work:
        if one.people:
            yield _title(one, order), people, *_hands(one)


def _word(words: Sequence[str], usual: str) -> str:
    """Choose the word by which an entry is read back: the usual one where it is among them."""
    return usual if usual in words or not words else words[0]


def _lying(load: int, lead: LeadTime, order: Order) -> str:
    """Name what lies in a load: each slab once."""
    casts = (one for one in lead.work if one.job.step.stage == "cast" and one.job.load == load)
    slabs = dict.fromkeys(one.job.piece.slab for one in casts)
    return ", ".join(_label(slab, order) for slab in slabs if slab is not None)


def _label(slab: int, order: Order) -> str:
    return order.slabs[slab].label or f"slab {slab + 1}"


def _hands(one: ScheduledJob) -> tuple[datetime, datetime]:
    """When hands are at a job: at least a minute."""
    return one.begins_at, max(one.ends_at, one.begins_at + timedelta(minutes=1))


def _title(one: ScheduledJob, order: Order) -> str:
    slab = one.job.piece.slab
    if slab is None:
        return one.job.step.name
    number = f", {one.job.piece.number + 1}" if order.slabs[slab].quantity > 1 else ""
    return f"{one.job.step.name}: {_label(slab, order)}{number}"
