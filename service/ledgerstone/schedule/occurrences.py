"""Bound on how often an entry of a calendar can occur, before any occurrence is computed."""

from __future__ import annotations

import calendar
import math
from datetime import date, datetime, timedelta
from typing import Any, Final

import icalendar

# Days in one period of a rule, rounded down, and the most occurrences that the parts of a rule can
# make of one period (RFC 5545, 3.3.10). A plain rule makes one.
_DAYS: Final = {"DAILY": 1, "WEEKLY": 7, "MONTHLY": 28, "YEARLY": 365}
_MOST: Final = {"DAILY": 1, "WEEKLY": 7, "MONTHLY": 31, "YEARLY": 366}
_CHOOSING: Final = ("BYDAY", "BYMONTHDAY", "BYYEARDAY", "BYWEEKNO", "BYMONTH")
_WEEKDAYS: Final = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
_BY_TIME: Final = ("BYHOUR", "BYMINUTE", "BYSECOND")


def rules_of(event: icalendar.Component) -> list[icalendar.vRecur]:
    """Return an entry's recurrence rules."""
    rule = event.get("RRULE")
    return rule if isinstance(rule, list) else [rule] if rule is not None else []


def is_within_days(event: icalendar.Component) -> bool:
    """Return whether a rule of an entry recurs by the hour, the minute or the second."""
    return any(str(name).upper() not in _DAYS for name in _parts(event, "FREQ"))


def has_zero_interval(event: icalendar.Component) -> bool:
    """Whether an entry recurs at an interval of zero: it would recur on one day without end."""
    return any(int(interval) < 1 for interval in _parts(event, "INTERVAL"))


def without_empty_rules(event: icalendar.Component, first: date, last: date) -> None:
    """Remove an entry's rules that match no day in a range, such as 30 February.

    To look for such a day, what works the occurrences out goes through every day until 9999.
    """
    rules = rules_of(event)
    coming = [rule for rule in rules if _comes(rule, first, last)]
    if len(coming) < len(rules):
        event.pop("RRULE")
        for rule in coming:
            event.add("RRULE", rule)


def _comes(rule: icalendar.vRecur, first: date, last: date) -> bool:
    """Return whether a rule's parts, each on its own, allow a day in a range."""
    places = [abs(int(place)) for place in rule.get("BYSETPOS", ())]
    times = math.prod(max(1, len(rule.get(part, ()))) for part in _BY_TIME)
    if places and min(places) > _MOST[str(rule["FREQ"][0]).upper()] * times:
        return False
    months = {int(month) for month in rule.get("BYMONTH", ())}
    in_month = {int(day) for day in rule.get("BYMONTHDAY", ())}
    in_year = {int(day) for day in rule.get("BYYEARDAY", ())}
    weekdays = {_WEEKDAYS.index(str(day)[-2:].upper()) for day in rule.get("BYDAY", ())}
    if not (months or in_month or in_year or weekdays):
        return True
    days = (first + timedelta(days=n) for n in range((last - first).days + 1))
    return any(
        (not months or day.month in months)
        and (not weekdays or day.weekday() in weekdays)
        and (not in_month or not in_month.isdisjoint(_from_both_ends(day, _month_of(day))))
        and (not in_year or not in_year.isdisjoint(_from_both_ends(day, _year_of(day))))
        for day in days
    )


def _month_of(day: date) -> tuple[date, int]:
    """The first day of a day's month and how many it has."""
    return day.replace(day=1), calendar.monthrange(day.year, day.month)[1]


def _year_of(day: date) -> tuple[date, int]:
    """The first day of a day's year and how many it has."""
    return day.replace(month=1, day=1), 366 if calendar.isleap(day.year) else 365


def _from_both_ends(day: date, period: tuple[date, int]) -> tuple[int, int]:
    """A day's number in a period, from its first day and, negative, from its last."""
    begins, length = period
    number = (day - begins).days + 1
    return number, number - length - 1


def _parts(event: icalendar.Component, part: str) -> list[Any]:
    return [value for rule in rules_of(event) for value in rule.get(part, ())]


def most_occurrences(event: icalendar.Component, first: date, last: date) -> int:
    """Return how many occurrences an entry can have between two days, at most.

    It recurs no more often than daily, but for the times of day that it names.

    Source
    ------
    RFC 5545, 3.3.10.
    """
    dates = event.get("RDATE")
    lists = dates if isinstance(dates, list) else [dates] if dates is not None else []
    listed = sum(len(getattr(dates, "dts", ())) for dates in lists)
    return 1 + listed + sum(_of_rule(rule, first, last) for rule in rules_of(event))


def _of_rule(rule: icalendar.vRecur, first: date, last: date) -> int:
    frequency = str(rule["FREQ"][0]).upper()
    interval = max(1, int(rule.get("INTERVAL", (1,))[0]))
    until = rule.get("UNTIL", (last,))[0]
    end = min(last, until.date() if isinstance(until, datetime) else until)
    periods = max(0, (end - first).days) // (_DAYS[frequency] * interval) + 2
    chosen = any(part in rule for part in _CHOOSING)
    count = periods * (_MOST[frequency] if chosen else 1)
    if frequency == "WEEKLY":
        count = periods * max(1, len(rule.get("BYDAY", ())))
    days = max(0, (end - first).days) + 1
    times = math.prod(max(1, len(rule.get(part, ()))) for part in _BY_TIME)
    return min([min(count, days) * times, *map(int, rule.get("COUNT", ()))])
