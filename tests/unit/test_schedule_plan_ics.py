"""A plan written as a calendar is read back as the bookings that it makes."""

import re
from dataclasses import replace
from datetime import date
from typing import Any

from ledgerstone.codec.order_in import read_order
from ledgerstone.schedule.ical import read_bookings
from ledgerstone.schedule.plan_ics import plan_ics
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import BookingRules
from support.slabs import stages_of


def test_what_is_written_is_read_as_booked(
    workshop: Workshop, example_order: dict[str, Any], today: date
) -> None:
    """Tables for as long as a load lies there, hands about every job; ordered again, later."""
    order = read_order(example_order, workshop)
    lead = stages_of(order, workshop, today, ()).lead_time
    text = plan_ics(lead, order, workshop)
    assert text == plan_ics(lead, order, workshop)
    assert all(len(line.encode()) <= 75 for line in text.split("\r\n"))
    read = read_bookings(text, BookingRules(file=""), "Europe/London", today)
    held = {(one.minutes, one.holds) for one in read.bookings}
    assert {((one.starts, one.ends), "table") for one in lead.on_table} <= held
    hands = [minutes for minutes, holds in held if holds != "table"]
    for one in lead.work:
        if one.people:
            assert any(a <= one.starts and one.hands_end <= b for a, b in hands), one.job.step.name
    second = stages_of(order, workshop, today, read.bookings).lead_time
    assert second.ready_on > lead.ready_on


def test_entries_say_what_they_are_of(
    workshop: Workshop, example_order: dict[str, Any], today: date
) -> None:
    """A table's entry names what lies on it, a day's its slab and hours; one a day and slab."""
    order = read_order(example_order, workshop)
    text = plan_ics(stages_of(order, workshop, today, ()).lead_time, order, workshop)
    text = text.replace("\r\n ", "")
    assert "SUMMARY:Casting table 1: Seed-tray bench" in text
    titles = re.findall(r"SUMMARY:(.*)\r", text)
    days = re.findall(r"DTSTART:(\d{8})", text)
    work = [(d, t) for d, t in zip(days, titles, strict=True) if not t.startswith("Casting table")]
    whole = r"[^:]+: Seed-tray bench\\, \d\d:\d\d–\d\d:\d\d"
    slabs = [(day, title) for day, title in work if "Seed-tray" in title]
    assert all(re.fullmatch(whole, title) for _, title in slabs), slabs
    assert len({day for day, _ in slabs}) == len(slabs)
    assert any(title.startswith("Casting") or "Casting" in title for _, title in slabs)
    assert set(re.findall("CATEGORIES:(.*)\r", text)) == {"table", "hands"}
    other = replace(workshop, bookings=BookingRules(file="b.ics", people_words=("bench",)))
    text = plan_ics(stages_of(order, other, today, ()).lead_time, order, other)
    assert set(re.findall("CATEGORIES:(.*)\r", text)) == {"table", "bench"}
