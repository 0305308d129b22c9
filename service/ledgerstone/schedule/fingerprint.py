"""Fingerprint of what a promised day depends on: bookings and public holidays up to that day."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable
from datetime import date, timedelta

from ledgerstone.schedule.booking import Booking, minute_at
from ledgerstone.schedule.clock import place_of
from ledgerstone.schedule.days import ONE_DAY, WorkingCalendar
from ledgerstone.workshop.records import Workshop

# A calendar file is read from this long before the day.
KNOWN_FOR = timedelta(days=62)


def calendar_fingerprint(
    workshop: Workshop, bookings: Iterable[Booking], first: date, last: date
) -> str:
    """Return 8 hexadecimal digits for what is taken between two days, both ends included.

    They do not depend on whose work it is, nor on anything before or after. Closures are in the
    profile, which has its own fingerprint.
    """
    start, end = minute_at(first), minute_at(last) + 24 * 60
    taken = set()
    for booking in bookings:
        begins, ends = booking.minutes
        if begins < end and ends > start:
            taken.add((max(begins, start), min(ends, end), booking.holds))
    calendar = WorkingCalendar(place_of(workshop))
    days = (first + n * ONE_DAY for n in range((last - first).days + 1))
    public = [day.isoformat() for day in days if calendar.holiday(day) is not None]
    return hashlib.sha256(repr((sorted(taken), public)).encode()).hexdigest()[:8]
