"""A plan written as a calendar is read back as the bookings that it makes."""

import re
from dataclasses import replace
from datetime import date, timedelta
from typing import Any

from ledgerstone.codec.order_in import read_order
from ledgerstone.schedule.ical import read_bookings
from ledgerstone.schedule.plan_ics import plan_ics
from ledgerstone.schedule.plan_names import PlanNames
from ledgerstone.wording import speech_in
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import BookingRules
from support.slabs import stages_of

BENCH = "Seed-tray bench"
NAMES = PlanNames((BENCH,), speech_in("en"), "pallet", "Odile Table", "TCWW-69KN")


def test_what_is_written_is_read_as_booked(
    workshop: Workshop, example_order: dict[str, Any], today: date
) -> None:
    """Tables for as long as a load lies there, hands about every job; ordered again, later."""
    order = read_order(example_order, workshop)
    lead = stages_of(order, workshop, today, ()).lead_time
    text = plan_ics(lead, workshop, NAMES)
    assert text == plan_ics(lead, workshop, NAMES)
    assert all(len(line.encode()) <= 75 for line in text.split("\r\n"))
    assert "TRANSP:TRANSPARENT" in text
    read = read_bookings(text, BookingRules(file=""), "Europe/London", today)
    assert not any(one.holds == "both" for one in read.bookings)  # whatever a customer is called
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
    lead = stages_of(order, workshop, today, ()).lead_time
    text = plan_ics(lead, workshop, NAMES)
    text = text.replace("\r\n ", "")
    assert f"SUMMARY:Casting table 1: {BENCH} for Odile Table\\, TCWW-69KN" in text
    titles = re.findall(r"SUMMARY:(.*)\r", text)
    days = re.findall(r"DTSTART[^:]*:(\d{8})", text)
    assert titles.pop().endswith(f": {BENCH} for Odile Table\\, TCWW-69KN")
    assert days.pop() == f"{lead.arrives_earliest:%Y%m%d}"
    assert f"DTEND;VALUE=DATE:{lead.arrives_latest + timedelta(days=1):%Y%m%d}" in text
    work = [(d, t) for d, t in zip(days, titles, strict=True) if not t.startswith("Casting table")]
    whole = rf"[^:]+: {BENCH} for Odile Table\\, TCWW-69KN\\, \d\d:\d\d–\d\d:\d\d"
    assert all(re.fullmatch(whole, title) for _, title in work), work
    assert len({day for day, _ in work}) == len(work)
    assert any("Casting" in title for _, title in work)
    assert set(re.findall("CATEGORIES:(.*)\r", text)) == {"table", "hands"}
    other = replace(workshop, bookings=BookingRules(file="b.ics", people_words=("bench",)))
    text = plan_ics(stages_of(order, other, today, ()).lead_time, other, NAMES)
    assert set(re.findall("CATEGORIES:(.*)\r", text)) == {"table", "bench"}
