"""Calendar files as tests write them, and their entries."""

from datetime import date

from ledgerstone.schedule.calendar_read import CalendarRead
from ledgerstone.schedule.ical import read_bookings
from ledgerstone.workshop.records import BookingRules

TODAY = date(2026, 11, 25)

RULES = BookingRules(file="bookings.ics")


def calendar(*events: str) -> str:
    """Write a calendar of entries."""
    inner = "".join(
        f"BEGIN:VEVENT\r\nUID:{n}\r\nDTSTAMP:20261101T000000Z\r\n{event}\r\nEND:VEVENT\r\n"
        for n, event in enumerate(events)
    )
    return f"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//test//EN\r\n{inner}END:VCALENDAR\r\n"


def read(*events: str) -> CalendarRead:
    """Read a calendar of entries for a workshop in England."""
    return read_bookings(calendar(*events), RULES, "Europe/London", TODAY)


FORTNIGHT = "DTSTART;VALUE=DATE:20261126\r\nDTEND;VALUE=DATE:20261215\r\nSUMMARY:Casting table"
