"""The plan of one order as an iCalendar text that can be imported, and then read as bookings."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator, Sequence
from datetime import UTC, datetime, time
from zoneinfo import ZoneInfo

import icalendar

from ledgerstone.message import Message
from ledgerstone.order import Order
from ledgerstone.schedule import LeadTime
from ledgerstone.schedule.day_work import work_by_day
from ledgerstone.schedule.jobs import moment
from ledgerstone.wording import Speech, workshop_speech
from ledgerstone.workshop.records import BookingRules, Workshop


def plan_ics(lead: LeadTime, order: Order, workshop: Workshop) -> str:
    """Write a plan: each load on the casting tables, one entry a table; hands by day and slab.

    Titles carry the profile's own words for what holds a table and what holds people, so that the
    calendar the service reads is the one it writes for: hands are held from the first job of a
    slab on a day to its last. The same plan gives the same text.
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
    speech = workshop_speech(workshop.workshop.language, workshop)
    rules = workshop.bookings if workshop.bookings is not None else BookingRules(file="")
    table, people = _word(rules.table_words, "table"), _word(rules.people_words, "hands")
    for held in lead.on_table:
        for number in range(held.tables):
            lying = _lying(held.load, lead, order, speech)
            title = speech.say(Message("plan-table", number=number + 1, slabs=lying))
            yield title, table, moment(held.starts), moment(held.ends)
    for one in work_by_day(lead):
        stages = ", ".join(speech.say(Message("stage", stage=stage)) for stage in one.stages)
        what = stages if one.slab is None else f"{stages}: {_label(one.slab, order, speech)}"
        hours = f"{one.begins:%H:%M}–{one.ends:%H:%M}"
        yield f"{what}, {hours}", people, one.begins, one.ends


def _word(words: Sequence[str], usual: str) -> str:
    """Choose the word by which an entry is read back: the usual one where it is among them."""
    return usual if usual in words or not words else words[0]


def _lying(load: int, lead: LeadTime, order: Order, speech: Speech) -> str:
    """Name what lies in a load: each slab once."""
    casts = (one for one in lead.work if one.job.step.stage == "cast" and one.job.load == load)
    slabs = dict.fromkeys(one.job.piece.slab for one in casts)
    return ", ".join(_label(slab, order, speech) for slab in slabs if slab is not None)


def _label(slab: int, order: Order, speech: Speech) -> str:
    return order.slabs[slab].label or speech.say(Message("plan-slab-number", number=slab + 1))
