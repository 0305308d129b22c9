"""Bookings read from the text of an iCalendar file (RFC 5545), without guesses."""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterable, Iterator
from datetime import date, datetime, time, timedelta
from itertools import islice
from typing import cast
from zoneinfo import ZoneInfo

import icalendar
import recurring_ical_events

from ledgerstone.message import Message
from ledgerstone.schedule.booking import BookedResource, Booking
from ledgerstone.schedule.calendar_read import LARGEST_TEXT, CalendarRead
from ledgerstone.schedule.fingerprint import KNOWN_FOR
from ledgerstone.schedule.occurrences import (
    has_zero_interval,
    is_within_days,
    most_occurrences,
    without_empty_rules,
)
from ledgerstone.workshop.records import BookingRules

MAX_EVENTS = 20_000
AHEAD = timedelta(days=3 * 366)
A_YEAR = timedelta(days=366)
_FOREVER = date(9000, 1, 1)
_BAD = (ValueError, KeyError, TypeError, AttributeError, IndexError, OverflowError)


def read_bookings(text: str, rules: BookingRules, timezone: str, today: date) -> CalendarRead:
    """Read what is booked from an iCalendar text, from two months ago to three years ahead.

    Where entries recur for a year beyond, all time after it is booked: no day is promised there.
    """
    fault = _fault(text)
    if fault is not None:
        return CalendarRead(why_not=fault)
    try:
        calendar = icalendar.Calendar.from_ical(text)
        fault = _keep_only_holding(calendar, rules, today)
        if fault is not None:
            return CalendarRead(why_not=fault)
        taken = tuple(_taken(calendar, rules, ZoneInfo(timezone), today))
    except _BAD:
        return CalendarRead(why_not=Message("calendar-unread"))
    if len(taken) > MAX_EVENTS:
        return CalendarRead(why_not=_too_many_entries())
    taken = tuple(sorted(set(taken), key=lambda hold: (hold.minutes, hold.holds, hold.why)))
    return CalendarRead(taken, None, fingerprint_of(taken))


def fingerprint_of(bookings: tuple[Booking, ...]) -> str:
    """Return 16 hexadecimal digits for what is booked, independent of whose work it is."""
    text = "\n".join(f"{booking.minutes} {booking.holds}" for booking in bookings)
    return hashlib.sha256(text.encode()).hexdigest()[:16]


def _fault(text: str) -> Message | None:
    """Return why a text is no complete calendar; None if it is one."""
    if len(text) > LARGEST_TEXT:
        return Message("calendar-too-large")
    lines = text.strip().upper()
    if not lines.startswith("BEGIN:VCALENDAR"):
        return Message("calendar-not-ics")
    begun, ended = lines.count("BEGIN:VEVENT"), lines.count("END:VEVENT")
    if not lines.endswith("END:VCALENDAR") or begun != ended:
        return Message("calendar-cut")
    return _too_many_entries() if begun > MAX_EVENTS else None


def _too_many_entries() -> Message:
    return Message("calendar-too-many-entries", most=MAX_EVENTS)


def _keep_only_holding(
    calendar: icalendar.Calendar, rules: BookingRules, today: date
) -> Message | None:
    """Leave entries that hold nothing out of a calendar; say why the others are too much to read.

    An entry and the exceptions to it have one UID, and stay together.
    """
    events = calendar.walk("VEVENT")
    holding = {str(event.get("UID")) for event in events if _holds(event, rules) is not None}
    idle = {id(event) for event in events if str(event.get("UID")) not in holding}
    calendar.subcomponents = [
        subcomponent for subcomponent in calendar.subcomponents if id(subcomponent) not in idle
    ]
    kept = [event for event in events if id(event) not in idle]
    if any(is_within_days(event) for event in kept):
        return Message("calendar-not-daily")
    if any(has_zero_interval(event) for event in kept):
        return Message("calendar-stands-still")
    first, last = today - KNOWN_FOR, today + AHEAD + A_YEAR
    for event in kept:
        without_empty_rules(event, first, last)
    many = sum(most_occurrences(event, first, last) for event in kept) > MAX_EVENTS
    return Message("calendar-too-many-days", most=MAX_EVENTS) if many else None


def _taken(
    calendar: icalendar.Calendar, rules: BookingRules, zone: ZoneInfo, today: date
) -> Iterator[Booking]:
    """Every occurrence that holds a table or people, and all that lies beyond what is read."""
    first, last = today - KNOWN_FOR, today + AHEAD
    query = recurring_ical_events.of(calendar)
    held = (event for event in query.between(first, last) if _holds(event, rules) is not None)
    for event in islice(held, MAX_EVENTS + 1):
        booking = _booking(event, rules, zone)
        if booking is not None:
            yield booking
    beyond = query.between(last, last + A_YEAR)
    if any(_holds(event, rules) is not None for event in beyond):
        yield Booking(last, _FOREVER, "further ahead than the calendar is read", "both")


def _holds(event: icalendar.Component, rules: BookingRules) -> BookedResource | None:
    """What an entry holds, by its categories and the words of its title; None is nothing."""
    if str(event.get("STATUS", "")).upper() == "CANCELLED":
        return None
    if str(event.get("TRANSP", "")).upper() == "TRANSPARENT":
        return None
    is_ours = str(event.get("UID", "")).endswith("@ledgerstone")  # titles name customers and slabs
    title = "" if is_ours else str(event.get("SUMMARY", ""))
    text = " ".join((title, *_categories(event)))
    table, people = _has(text, rules.table_words), _has(text, rules.people_words)
    if table and people:
        return "both"
    if table:
        return "table"
    return "people" if people or rules.others_hold_people else None


def _has(text: str, words: Iterable[str]) -> bool:
    """Return whether a text has a word that begins with one of some; a timetable is no table."""
    return any(re.search(rf"\b{re.escape(word)}", text, re.IGNORECASE) for word in words)


def _categories(event: icalendar.Component) -> list[str]:
    found = event.get("CATEGORIES")
    lists = found if isinstance(found, list) else [found] if found is not None else []
    return [str(name) for listed in lists for name in getattr(listed, "cats", [listed])]


def _booking(event: icalendar.Component, rules: BookingRules, zone: ZoneInfo) -> Booking | None:
    """One occurrence by the workshop's clock; DTEND is not included (RFC 5545 3.6.1)."""
    holds = _holds(event, rules)
    start, end = cast("icalendar.Event", event).start, cast("icalendar.Event", event).end
    if holds is None or end < start:
        return None
    why = str(event.get("SUMMARY", ""))[:120]
    if not isinstance(start, datetime) or not isinstance(end, datetime):
        last = max(start, end - timedelta(days=1))
        return Booking(start, last, why, holds)
    begins, ends = _local(start, zone), _local(end, zone)
    if begins == ends:
        return None
    starts = begins.time().replace(second=0, microsecond=0)
    if ends.time() == time.min:
        return Booking(begins.date(), ends.date() - timedelta(days=1), why, holds, starts)
    up = ends + timedelta(seconds=-ends.second % 60)
    return Booking(begins.date(), up.date(), why, holds, starts, up.time())


def _local(at: datetime, zone: ZoneInfo) -> datetime:
    """By the workshop's clock; a floating time is one already (RFC 5545 3.3.5)."""
    return at if at.tzinfo is None else at.astimezone(zone).replace(tzinfo=None)
