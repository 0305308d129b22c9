"""The text of an iCalendar file becomes bookings (RFC 5545): nothing of it is guessed."""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from itertools import islice
from typing import cast
from zoneinfo import ZoneInfo

import icalendar
import recurring_ical_events

from ledgerstone.schedule.booking import Booking, Holds
from ledgerstone.schedule.fingerprint import KNOWN_FOR
from ledgerstone.schedule.occurrences import is_within_days, most_occurrences, stands_still
from ledgerstone.workshop.records import BookingRules

LARGEST_TEXT = 4_000_000
MOST_EVENTS = 20_000
AHEAD = timedelta(days=3 * 366)
A_YEAR = timedelta(days=366)
_FOREVER = date(9000, 1, 1)
_NOT_DAILY = (
    "An entry of the calendar file recurs more often than daily. Write it as hours of each day."
)
_STANDS_STILL = "An entry of the calendar file recurs at an interval of zero. Write at least 1."
_TOO_MANY_ENTRIES = "The calendar file has more entries than we read: 20 000."
_TOO_MANY_DAYS = (
    "The calendar file's entries recur on more days than we read: 20 000 in all. End those that are"
    " over, or export the coming years alone."
)
_BAD = (ValueError, KeyError, TypeError, AttributeError, IndexError, OverflowError)


@dataclass(frozen=True, slots=True)
class CalendarRead:
    """What became of a calendar file: its bookings, or in ``says`` why there are none to trust.

    ``fingerprint`` is of the bookings alone: a file exported anew without a change has the same.
    """

    bookings: tuple[Booking, ...] = ()
    says: str = ""
    fingerprint: str = ""

    @property
    def known(self) -> tuple[Booking, ...] | None:
        """All that is booked; None where no calendar was read."""
        return self.bookings if self.fingerprint else None


def read_bookings(text: str, rules: BookingRules, timezone: str, today: date) -> CalendarRead:
    """Read what is booked from an iCalendar text, from two months ago to three years ahead.

    Where entries go on for a year beyond, all of that is held: nothing is promised there.
    """
    fault = _fault(text)
    if fault:
        return CalendarRead(says=fault)
    try:
        calendar = icalendar.Calendar.from_ical(text)
        fault = _kept_to_what_holds(calendar, rules, today)
        if fault:
            return CalendarRead(says=fault)
        taken = tuple(_taken(calendar, rules, ZoneInfo(timezone), today))
    except _BAD:
        return CalendarRead(says="The calendar file does not read as a calendar. Export it again.")
    if len(taken) > MOST_EVENTS:
        return CalendarRead(says=_TOO_MANY_ENTRIES)
    taken = tuple(sorted(set(taken), key=lambda one: (one.minutes, one.holds, one.why)))
    return CalendarRead(taken, "", fingerprint_of(taken))


def fingerprint_of(bookings: tuple[Booking, ...]) -> str:
    """Return 16 hexadecimal digits for what is booked; whose work it is does not bear on them."""
    told = "\n".join(f"{one.minutes} {one.holds}" for one in bookings)
    return hashlib.sha256(told.encode()).hexdigest()[:16]


def _fault(text: str) -> str:
    """Say what keeps a text from being a whole calendar, or nothing."""
    if len(text) > LARGEST_TEXT:
        return "The calendar file is larger than 4 MB. Export the coming years alone."
    lines = text.strip().upper()
    if not lines.startswith("BEGIN:VCALENDAR"):
        return "The calendar file is not an iCalendar file. Export it again, as .ics."
    begun, ended = lines.count("BEGIN:VEVENT"), lines.count("END:VEVENT")
    if not lines.endswith("END:VCALENDAR") or begun != ended:
        return "The calendar file breaks off before its end. Export it again."
    return _TOO_MANY_ENTRIES if begun > MOST_EVENTS else ""


def _kept_to_what_holds(calendar: icalendar.Calendar, rules: BookingRules, today: date) -> str:
    """Leave entries that hold nothing out of a calendar; say why the others are too much to read.

    An entry and the exceptions to it have one UID, and stay together.
    """
    events = calendar.walk("VEVENT")
    holding = {str(event.get("UID")) for event in events if _holds(event, rules) is not None}
    idle = {id(event) for event in events if str(event.get("UID")) not in holding}
    calendar.subcomponents = [one for one in calendar.subcomponents if id(one) not in idle]
    kept = [event for event in events if id(event) not in idle]
    if any(is_within_days(event) for event in kept):
        return _NOT_DAILY
    if any(stands_still(event) for event in kept):
        return _STANDS_STILL
    first, last = today - KNOWN_FOR, today + AHEAD + A_YEAR
    many = sum(most_occurrences(event, first, last) for event in kept) > MOST_EVENTS
    return _TOO_MANY_DAYS if many else ""


def _taken(
    calendar: icalendar.Calendar, rules: BookingRules, zone: ZoneInfo, today: date
) -> Iterator[Booking]:
    """Every occurrence that holds a table or people, and all that lies beyond what is read."""
    first, last = today - KNOWN_FOR, today + AHEAD
    query = recurring_ical_events.of(calendar)
    held = (event for event in query.between(first, last) if _holds(event, rules) is not None)
    for event in islice(held, MOST_EVENTS + 1):
        booking = _booking(event, rules, zone)
        if booking is not None:
            yield booking
    beyond = query.between(last, last + A_YEAR)
    if any(_holds(event, rules) is not None for event in beyond):
        yield Booking(last, _FOREVER, "further ahead than the calendar is read", "both")


def _holds(event: icalendar.Component, rules: BookingRules) -> Holds | None:
    """What an entry holds, by its categories and the words of its title; None is nothing."""
    if str(event.get("STATUS", "")).upper() == "CANCELLED":
        return None
    if str(event.get("TRANSP", "")).upper() == "TRANSPARENT":
        return None
    told = " ".join((str(event.get("SUMMARY", "")), *_categories(event)))
    table, people = _has(told, rules.table_words), _has(told, rules.people_words)
    if table and people:
        return "both"
    if table:
        return "table"
    return "people" if people or rules.others_hold_people else None


def _has(told: str, words: Iterable[str]) -> bool:
    """Whether a text has a word that begins with one of some; a timetable is no table."""
    return any(re.search(rf"\b{re.escape(word)}", told, re.IGNORECASE) for word in words)


def _categories(event: icalendar.Component) -> list[str]:
    found = event.get("CATEGORIES")
    lists = found if isinstance(found, list) else [found] if found is not None else []
    return [str(name) for one in lists for name in getattr(one, "cats", [one])]


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
