"""An entry's occurrences are bounded before they are worked out, and never counted too few."""

from datetime import date, datetime, time

import dateutil.rrule
import icalendar
import pytest
from dateutil.rrule import rrulestr
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.schedule.occurrences import (
    most_occurrences,
    rules_of,
    without_empty_rules,
)
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
    rule = rule.replace("T000000Z", "T000000").replace("T140000Z", "T140000")
    begins, ends = datetime.combine(FIRST, time.min), datetime.combine(LAST, time.max)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(dateutil.rrule.datetime, "MAXYEAR", LAST.year + 1)  # not until 9999
        return len(rrulestr(rule, dtstart=start).between(begins, ends, inc=True))


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


@pytest.mark.parametrize(
    "rule",
    [
        "DAILY;BYMONTH=2;BYMONTHDAY=30",
        "WEEKLY;BYMONTH=4,6;BYMONTHDAY=31",
        "DAILY;BYMONTH=11;BYMONTHDAY=-31",
        "DAILY;BYMONTH=1;BYYEARDAY=40,-320",
        "DAILY;BYSETPOS=2",
        "DAILY;BYHOUR=8,9;BYSETPOS=-3",
    ],
)
def test_a_day_that_never_comes_is_not_looked_for(rule: str) -> None:
    """The library finds none either; what is left is the entry's first day."""
    looked_for = entry("19970101", f"FREQ={rule}")
    without_empty_rules(looked_for, FIRST, LAST)
    assert rules_of(looked_for) == []
    assert occurs("19970101", f"FREQ={rule}") == 0


@pytest.mark.parametrize("name", EXAMPLES)
def test_no_rule_is_taken_out_that_comes(name: str) -> None:
    """Each worked example of RFC 5545 3.8.5.3 that occurs between the days keeps its rule."""
    first, rule, _ = EXAMPLES[name]
    looked_for = entry(first, f"FREQ={rule}")
    without_empty_rules(looked_for, FIRST, LAST)
    assert rules_of(looked_for) or occurs(first, f"FREQ={rule}") == 0


@given(
    frequency=st.sampled_from(["DAILY", "WEEKLY", "MONTHLY", "YEARLY"]),
    parts=st.fixed_dictionaries(
        {},
        optional={
            "BYMONTH": st.integers(1, 12),
            "BYMONTHDAY": st.integers(-31, 31).filter(bool),
            "BYDAY": st.sampled_from(["MO", "TU,TH", "SU"]),
            "BYSETPOS": st.integers(-3, 3).filter(bool),
        },
    ),
)
@settings(max_examples=60, deadline=None)
def test_whatever_comes_keeps_its_rule(frequency: str, parts: dict[str, object]) -> None:
    """Rules of random parts: taken out only where the library finds no day either."""
    rule = ";".join([f"FREQ={frequency}", *(f"{name}={value}" for name, value in parts.items())])
    looked_for = entry("19970101", rule)
    without_empty_rules(looked_for, FIRST, LAST)
    assert rules_of(looked_for) or occurs("19970101", rule) == 0


def test_entries_that_hold_nothing_are_not_worked_out() -> None:
    """Three hundred daily reminders, of which none holds a table or people, are no hindrance."""
    idle = "DTSTART;VALUE=DATE:20261126\r\nSUMMARY:Walk the dog\r\nRRULE:FREQ=DAILY"
    busy = "DTSTART;VALUE=DATE:20261201\r\nSUMMARY:Casting table"
    found = read(*[idle] * 300, busy)
    assert found.why_not is None
    assert [one.why for one in found.bookings] == ["Casting table"]


def test_too_many_days_are_reported_before_they_are_worked_out() -> None:
    """Three hundred daily entries that hold the table are refused in words."""
    busy = "DTSTART;VALUE=DATE:20261126\r\nSUMMARY:Casting table\r\nRRULE:FREQ=DAILY"
    told = read(*[busy] * 300).why_not
    assert told is not None
    assert told.name == "calendar-too-many-days"


def test_too_many_entries_are_reported_before_they_are_read() -> None:
    """20 001 entries are counted in the text."""
    told = read(*["X:"] * 20_001).why_not
    assert told is not None
    assert told.name == "calendar-too-many-entries"
    assert calendar("X:").count("BEGIN:VEVENT") == 1
