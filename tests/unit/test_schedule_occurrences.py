"""An entry's occurrences are bounded before they are worked out, and never counted too few."""

from datetime import date, datetime, time

import icalendar
import pytest
from dateutil.rrule import rrulestr

from ledgerstone.schedule.occurrences import most_occurrences
from support.calendars import calendar, read
from support.recurring_examples import EXAMPLES

FIRST, LAST = date(1997, 1, 1), date(2001, 1, 1)


def entry(first: str, rule: str) -> icalendar.Component:
    """An entry that recurs."""
    text = f"BEGIN:VEVENT\r\nUID:1\r\nDTSTART:{first}T090000\r\nRRULE:{rule}\r\nEND:VEVENT\r\n"
    return icalendar.Event.from_ical(text)


def occurs(first: str, rule: str) -> int:
    """Count the occurrences by the library that works them out."""
    start = datetime.strptime(f"{first}090000", "%Y%m%d%H%M%S")  # noqa: DTZ007 - floating
    dates = rrulestr(rule.replace("T000000Z", "T000000").replace("T140000Z", "T140000"),
                     dtstart=start)  # fmt: skip
    return len(dates.between(datetime.combine(FIRST, time.min),
                             datetime.combine(LAST, time.max), inc=True))  # fmt: skip


@pytest.mark.parametrize("name", EXAMPLES)
def test_no_entry_occurs_more_often_than_is_counted(name: str) -> None:
    """Each worked example of RFC 5545 3.8.5.3 occurs at most as often as the bound says."""
    first, rule, _ = EXAMPLES[name]
    rule = f"FREQ={rule}"
    assert occurs(first, rule) <= most_occurrences(entry(first, rule), FIRST, LAST)


@pytest.mark.parametrize(
    ("rule", "least"),
    [
        ("FREQ=DAILY", 1461),
        ("FREQ=DAILY;BYHOUR=8,9;BYMINUTE=0,20,40", 6 * 1461),
        ("FREQ=DAILY;COUNT=1000000000", 1461),
        ("FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR", 1043),
        ("FREQ=YEARLY;BYMONTH=1,2;BYDAY=MO,TU,WE,TH,FR,SA,SU", 236),
    ],
)
def test_the_bound_is_no_less_than_what_occurs(rule: str, least: int) -> None:
    """Over four years: daily, several times a day, counted far, by weekday, by month."""
    most = most_occurrences(entry("19970101", rule), FIRST, LAST)
    assert occurs("19970101", rule) >= least
    assert most >= occurs("19970101", rule)


def test_entries_that_hold_nothing_are_not_worked_out() -> None:
    """Three hundred daily reminders, of which none holds a table or people, are no hindrance."""
    idle = "DTSTART;VALUE=DATE:20261126\r\nSUMMARY:Walk the dog\r\nRRULE:FREQ=DAILY"
    busy = "DTSTART;VALUE=DATE:20261201\r\nSUMMARY:Casting table"
    found = read(*[idle] * 300, busy)
    assert found.says == ""
    assert [one.why for one in found.bookings] == ["Casting table"]


def test_too_many_days_are_told_before_they_are_worked_out() -> None:
    """Three hundred daily entries that hold the table are refused in words."""
    busy = "DTSTART;VALUE=DATE:20261126\r\nSUMMARY:Casting table\r\nRRULE:FREQ=DAILY"
    assert "recur on more days than we read" in read(*[busy] * 300).says


def test_too_many_entries_are_told_before_they_are_read() -> None:
    """20 001 entries are counted in the text."""
    assert "more entries than we read" in read(*["X:"] * 20_001).says
    assert calendar("X:").count("BEGIN:VEVENT") == 1
