"""Entries that recur, against every worked example of RFC 5545 §3.8.5.3 that is daily or longer.

Source: RFC 5545, *Internet Calendaring and Scheduling Core Object Specification*, §3.8.5.3, the
examples of RRULE with the expansions that it prints, read in a stored copy of its text and not
from memory. They go through ``read_bookings``, so through the calendar library that the service
uses. Its times are New York's, where the workshop is said to stand here. Days have no tolerance.
"""

import re
from collections.abc import Iterator
from datetime import date, time

import pytest

from ledgerstone.schedule import Booking
from ledgerstone.schedule.ical import read_bookings
from ledgerstone.workshop.records import BookingRules
from support.calendars import calendar
from support.recurring_examples import EXAMPLES


def printed(days: str) -> Iterator[date]:
    """Read days as the table writes them: ``1997-9: 2-11; 1997-10: 1,3…``."""
    for year, month, listed in re.findall(r"(\d+)-(\d+): ([\d,-]+)", days):
        for part in listed.split(","):
            first, _, last = part.partition("-")
            for day in range(int(first), int(last or first) + 1):
                yield date(int(year), int(month), day)


def read_in(text: str, years: range) -> list[Booking]:
    """Everything booked in some years, each read as on its first day."""
    rules, found = BookingRules(file=""), []
    for year in years:
        read = read_bookings(text, rules, "America/New_York", date(year, 1, 1))
        assert read.why_not is None
        found += [one for one in read.bookings if one.first.year == year and one.last.year == year]
    return found


def entry(first: str, rule: str) -> str:
    """Write one of the RFC's entries: an hour from nine o'clock."""
    event = f"DTSTART;TZID=America/New_York:{first}T090000\r\nDURATION:PT1H\r\nSUMMARY:table"
    if rule.endswith("BYDAY=FR;BYMONTHDAY=13"):  # its first day is no Friday, and is left out
        event += f"\r\nEXDATE;TZID=America/New_York:{first}T090000"
    return calendar(f"{event}\r\nRRULE:FREQ={rule}")


@pytest.mark.parametrize("name", EXAMPLES)
def test_recurring_entries_fall_on_the_days_that_the_rfc_prints(name: str) -> None:
    """Each at nine o'clock, no day more or less; where the RFC goes on, as far as it prints."""
    first, rule, days = EXAMPLES[name]
    wanted = list(printed(days))
    found = read_in(entry(first, rule), range(wanted[0].year, wanted[-1].year + 1))
    if days.endswith("…"):
        found = [one for one in found if one.first <= wanted[-1]]
    assert [one.first for one in found] == wanted
    assert {(one.starts, one.ends) for one in found} == {(time(9), time(10))}


def test_every_twenty_minutes_of_a_day_is_read_time_by_time() -> None:
    """The RFC's 9:00, 9:20 … 16:40, every day: written as daily hours and minutes it is read."""
    rule = "DAILY;BYHOUR=9,10,11,12,13,14,15,16;BYMINUTE=0,20,40;COUNT=48"
    found = read_in(entry("19970902", rule), range(1997, 1998))
    starts = [one.starts for one in found if one.first == date(1997, 9, 3)]
    assert starts == [time(hour, minute) for hour in range(9, 17) for minute in (0, 20, 40)]


@pytest.mark.parametrize("rule", ["HOURLY;INTERVAL=3;UNTIL=19970902T170000Z", "MINUTELY;COUNT=6"])
def test_what_recurs_within_a_day_is_refused_in_words(rule: str) -> None:
    """The RFC's rules by the hour and the minute are not read, lest one fill the calendar."""
    read = read_bookings(
        entry("19970902", rule), BookingRules(file=""), "America/New_York", date(1997, 9, 1)
    )
    assert read.bookings == ()
    assert read.why_not is not None
    assert read.why_not.name == "calendar-not-daily"
