"""The plan of one order as an iCalendar text that can be imported, and then read as bookings."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator, Sequence
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import icalendar

from ledgerstone.message import Message
from ledgerstone.schedule import LeadTime
from ledgerstone.schedule.day_work import work_by_day
from ledgerstone.schedule.jobs import moment
from ledgerstone.schedule.plan_names import PlanNames
from ledgerstone.workshop.records import BookingRules, Workshop

OURS = "@ledgerstone"  # how the identifier of an entry ends that was written here


def plan_ics(lead: LeadTime, workshop: Workshop, names: PlanNames) -> str:
    """Write a plan: each load on the casting tables, one entry a table; hands by day and slab.

    Categories carry the profile's own words for what holds a table and what holds people, so that
    the calendar the service reads is the one it writes for: hands are held from the first job of a
    slab on a day to its last. The day it leaves or arrives holds nothing. The same plan gives the
    same text.
    """
    calendar = icalendar.Calendar()
    calendar.add("VERSION", "2.0")
    calendar.add("PRODID", "-//Ledgerstone//Plan//EN")
    stamp = datetime.combine(lead.if_ordered_by, time.min, UTC)
    zone = ZoneInfo(workshop.workshop.timezone)
    for title, category, starts, ends in _entries(lead, workshop, names):
        event = _event(calendar, stamp, title, starts, ends)
        event.add("DTSTART", starts.replace(tzinfo=zone).astimezone(UTC))
        event.add("DTEND", ends.replace(tzinfo=zone).astimezone(UTC))
        event.add("CATEGORIES", [category])
        calendar.add_component(event)
    title, first, last = _leaving(lead, names)
    event = _event(calendar, stamp, title, first, last)
    event.add("DTSTART", first)
    event.add("DTEND", last + timedelta(days=1))  # not included: RFC 5545 3.6.1
    event.add("TRANSP", "TRANSPARENT")
    calendar.add_component(event)
    return str(calendar.to_ical().decode())


def _event(
    calendar: icalendar.Calendar, stamp: datetime, title: str, starts: date, ends: date
) -> icalendar.Event:
    """Begin an entry with its title and an identifier that is the same for the same entry."""
    event = icalendar.Event()
    text = f"{title} {starts} {ends} {len(calendar.subcomponents)}"
    event.add("UID", f"{hashlib.sha256(text.encode()).hexdigest()[:24]}{OURS}")
    event.add("DTSTAMP", stamp)
    event.add("SUMMARY", title)
    return event


def _leaving(lead: LeadTime, names: PlanNames) -> tuple[str, date, date]:
    """Return the day it is collected, or the days between which it arrives."""
    slabs = names.of(", ".join(names.slabs))
    if names.way == "collect" or not names.arrives_known:
        way = "collect" if names.way == "collect" else "ready"
        title = Message("plan-leaves", way=way, slabs=slabs)
        return names.speech.say(title), lead.ready_on, lead.ready_on
    title = Message("plan-leaves", way=names.way, slabs=slabs)
    return names.speech.say(title), lead.arrives_earliest, lead.arrives_latest


def _entries(
    lead: LeadTime, workshop: Workshop, names: PlanNames
) -> Iterator[tuple[str, str, datetime, datetime]]:
    say = names.speech.say
    rules = workshop.bookings if workshop.bookings is not None else BookingRules(file="")
    table, people = _word(rules.table_words, "table"), _word(rules.people_words, "hands")
    for held in lead.on_table:
        for number in range(held.tables):
            slabs = names.of(_slabs_on(held.load, lead, names))
            title = say(Message("plan-table", number=number + 1, slabs=slabs))
            yield title, table, moment(held.starts), moment(held.ends)
    for day in work_by_day(lead):
        phases = ", ".join(say(Message("stage", stage=phase)) for phase in day.phases)
        at = names.of(names.label(day.slab))
        hours = f"{day.begins:%H:%M}–{day.ends:%H:%M}"
        yield f"{phases}: {at}, {hours}", people, day.begins, day.ends


def _word(words: Sequence[str], usual: str) -> str:
    """Return the word that marks an entry when it is read back: the usual one if it is allowed."""
    return usual if usual in words or not words else words[0]


def _slabs_on(load: int, lead: LeadTime, names: PlanNames) -> str:
    """Name what lies in a load: each slab once."""
    casts = (
        scheduled
        for scheduled in lead.work
        if scheduled.job.step.phase == "cast" and scheduled.job.load == load
    )
    slabs = dict.fromkeys(cast.job.piece.slab for cast in casts)
    return ", ".join(names.label(slab) for slab in slabs if slab is not None)
