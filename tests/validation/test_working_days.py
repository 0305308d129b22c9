"""Working days and public holidays against published dates.

The lists are GOV.UK's bank holidays as sources §5 gives them (two libraries agree there;
Scotland's 15 June 2026 is by royal proclamation of 4 February 2026). Those marked *from memory* are
worked from the Banking and Financial Dealings Act 1971, schedule 1, with its substitute days, and
are not on that page. Rows 33 and 34 were counted by hand. Days have no tolerance.
"""

from datetime import date, timedelta

import pytest

from ledgerstone.schedule import WorkingCalendar, calendar_of
from ledgerstone.workshop import Workshop

ENGLAND_2026 = ("1-1", "4-3", "4-6", "5-4", "5-25", "8-31", "12-25", "12-28")
ENGLAND_2027 = ("1-1", "3-26", "3-29", "5-3", "5-31", "8-30", "12-27", "12-28")
PUBLISHED = {
    ("GB-ENG", 2026): ENGLAND_2026,
    ("GB-WLS", 2026): ENGLAND_2026,
    ("GB-ENG", 2027): ENGLAND_2027,
    ("GB-WLS", 2027): ENGLAND_2027,
    ("GB-SCT", 2026): (
        "1-1",
        "1-2",
        "4-3",
        "5-4",
        "5-25",
        "6-15",
        "8-3",
        "11-30",
        "12-25",
        "12-28",
    ),
    ("GB-NIR", 2026): (*ENGLAND_2026, "3-17", "7-13"),
}
FROM_MEMORY = {
    ("GB-SCT", 2027): ("1-1", "1-4", "3-26", "5-3", "5-31", "8-2", "11-30", "12-27", "12-28"),
    ("GB-NIR", 2027): (*ENGLAND_2027, "3-17", "7-12"),
}
EVERY = PUBLISHED | FROM_MEMORY


def weekdays_off(country: str, year: int) -> set[date]:
    """Collect a year's Mondays to Fridays that are not worked."""
    calendar = WorkingCalendar(country)
    days = [date(year, 1, 1) + timedelta(days=n) for n in range(365)]
    return {day for day in days if day.weekday() < 5 and not calendar.is_worked(day)}


@pytest.mark.parametrize(("country", "year"), EVERY)
def test_public_holidays_are_the_published_ones(country: str, year: int) -> None:
    """Every weekday that nobody works is a published holiday, and each of those is not worked."""
    dates = {
        date(year, int(month), int(day))
        for month, day in (text.split("-") for text in EVERY[country, year])
    }
    assert weekdays_off(country, year) == dates


def test_twenty_working_days_before_midwinter() -> None:
    """Row 33: 25 November 2026 and 20 working days is 23 December in England."""
    calendar = WorkingCalendar("GB-ENG")
    assert calendar.add_working_days(date(2026, 11, 25), 20) == date(2026, 12, 23)


def test_twenty_working_days_over_a_closure() -> None:
    """Row 33: with the workshop shut from 21 December to 3 January it is 6 January 2027."""
    shut = [(date(2026, 12, 21), date(2027, 1, 3))]
    calendar = WorkingCalendar("GB-ENG", closed=shut)
    assert calendar.add_working_days(date(2026, 11, 25), 20) == date(2027, 1, 6)


@pytest.mark.parametrize(
    ("country", "day"), [("GB-ENG", date(2027, 4, 2)), ("GB-SCT", date(2027, 4, 1))]
)
def test_five_working_days_over_easter(country: str, day: date) -> None:
    """Row 34: from 24 March 2027; Easter Monday is a holiday in England and not in Scotland."""
    assert WorkingCalendar(country).add_working_days(date(2027, 3, 24), 5) == day


@pytest.mark.parametrize(
    ("country", "day", "worked"),
    [
        ("GB-SCT", date(2027, 3, 29), True),
        ("GB-ENG", date(2027, 3, 29), False),
        ("GB-SCT", date(2026, 11, 30), False),
        ("GB-ENG", date(2026, 11, 30), True),
        ("GB-NIR", date(2026, 7, 13), False),
        ("GB-ENG", date(2026, 7, 13), True),
    ],
)
def test_the_four_parts_differ(country: str, day: date, *, worked: bool) -> None:
    """Easter Monday, St Andrew's day and the Twelfth are kept in some parts alone."""
    assert WorkingCalendar(country).is_worked(day) is worked


def test_the_demonstration_keeps_englands_holidays_and_its_own(workshop: Workshop) -> None:
    """Its calendar is England's, less its midwinter."""
    calendar = calendar_of(workshop, ())
    off = {date(2027, 1, 1), date(2027, 3, 26), date(2026, 12, 24), date(2026, 12, 31)}
    assert not any(calendar.is_worked(day) for day in off)
    assert calendar.is_worked(date(2027, 1, 4))


def test_a_workshop_keeps_and_works_other_days() -> None:
    """Assumption is kept in most of Bavaria and not in all of it; Columbus Day is often worked.

    Sources: Bavarian Feiertagsgesetz (FTG) article 1 (3), by parish; 5 U.S.C. 6103 (a): the second
    Monday of October.
    """
    assumption, columbus = date(2028, 8, 15), date(2026, 10, 12)
    assert WorkingCalendar("DE-BY").is_worked(assumption)
    assert not WorkingCalendar("DE-BY", added=[(8, 15)]).is_worked(assumption)
    assert not WorkingCalendar("US-GA").is_worked(columbus)
    assert WorkingCalendar("US-GA", worked=["columbus day"]).is_worked(columbus)
