"""How many times an entry of a calendar can occur, counted before any occurrence is worked out."""

from __future__ import annotations

import math
from datetime import date, datetime
from typing import Any, Final

import icalendar

# Days in one period of a rule, rounded down, and the most occurrences that the parts of a rule can
# make of one period (RFC 5545, 3.3.10). A plain rule makes one.
_DAYS: Final = {"DAILY": 1, "WEEKLY": 7, "MONTHLY": 28, "YEARLY": 365}
_MOST: Final = {"DAILY": 1, "WEEKLY": 7, "MONTHLY": 31, "YEARLY": 366}
_CHOOSING: Final = ("BYDAY", "BYMONTHDAY", "BYYEARDAY", "BYWEEKNO", "BYMONTH")
_BY_TIME: Final = ("BYHOUR", "BYMINUTE", "BYSECOND")


def rules_of(event: icalendar.Component) -> list[Any]:
    """Return an entry's recurrence rules."""
    rule = event.get("RRULE")
    return rule if isinstance(rule, list) else [rule] if rule is not None else []


def is_within_days(event: icalendar.Component) -> bool:
    """Whether a rule of an entry recurs by the hour, the minute or the second."""
    return any(str(name).upper() not in _DAYS for name in _parts(event, "FREQ"))


def stands_still(event: icalendar.Component) -> bool:
    """Whether an entry recurs at an interval of zero: it would recur on one day without end."""
    return any(int(interval) < 1 for interval in _parts(event, "INTERVAL"))


def _parts(event: icalendar.Component, part: str) -> list[Any]:
    return [value for rule in rules_of(event) for value in rule.get(part, ())]


def most_occurrences(event: icalendar.Component, first: date, last: date) -> int:
    """Return how many occurrences an entry can have between two days, at most.

    It recurs no more often than daily, but for the times of a day that it names. Source: RFC 5545,
    3.3.10.
    """
    dates = event.get("RDATE")
    lists = dates if isinstance(dates, list) else [dates] if dates is not None else []
    listed = sum(len(getattr(one, "dts", ())) for one in lists)
    return 1 + listed + sum(_of_rule(rule, first, last) for rule in rules_of(event))


def _of_rule(rule: Any, first: date, last: date) -> int:  # noqa: ANN401  icalendar's vRecur
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
