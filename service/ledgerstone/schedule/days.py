"""Which days are worked, and counting of working days."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Sequence
from datetime import date, timedelta

from ledgerstone.workshop.countries.public_holidays import holiday_named, public_holidays

WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
LONGEST_SEARCH_DAYS = 3660
ONE_DAY = timedelta(days=1)
MinuteSpan = tuple[int, int]


class NoWorkingDay(ValueError):
    """No day is worked within ten years, or the work would not be done in a lifetime."""


class WorkingCalendar:
    """Which days are worked: weekdays, less public holidays, closures and bookings.

    Parameters
    ----------
    country
        ISO 3166 country, with its part where holidays differ by it: ``"GB-ENG"``.
    weekdays
        Names of the days that are worked.
    closed
        ``(first, last)`` days shut, both ends included.
    added
        Month and day of what is kept each year beside the public holidays.
    worked
        Names of public holidays on which hands work, in English or German.

    Notes
    -----
    Source of public holidays: the ``holidays`` package; checked against the published lists in
    ``tests/validation``.
    """

    def __init__(
        self,
        country: str,
        weekdays: Iterable[str] = WEEKDAYS[:5],
        closed: Iterable[tuple[date, date]] = (),
        *,
        added: Iterable[tuple[int, int]] = (),
        worked: Iterable[str] = (),
    ) -> None:
        self._added = frozenset(added)
        named = (holiday_named(name, country) for name in worked)
        self._worked_holidays = frozenset(filter(None, named))
        self._country = country
        self._worked = frozenset(WEEKDAYS.index(name) for name in weekdays)
        self._closed = merged((a.toordinal(), b.toordinal() + 1) for a, b in closed)
        self._starts = [first for first, _ in self._closed]

    def is_worked(self, day: date) -> bool:
        """Return whether hands work on a day."""
        if day.weekday() not in self._worked or self.holiday(day) is not None:
            return False
        return not _lies_in(day.toordinal(), self._closed, self._starts)

    def holiday(self, day: date) -> str | None:
        """Name the holiday that is kept on a day, or None; one that was added by its day."""
        name = public_holidays(self._country, day.year).get(day)
        if name is not None and not self._is_worked_holiday(name):
            return name
        return f"{day:%m-%d}" if (day.month, day.day) in self._added else None

    def _is_worked_holiday(self, name: str) -> bool:
        """Return whether hands work on it; of two holidays on one day both must be worked."""
        return all(part.strip() in self._worked_holidays for part in name.split(";"))

    def first_worked(self, day: date) -> date:
        """Return the day itself if it is worked, else the next one that is.

        Raises
        ------
        NoWorkingDay
            None is worked within ten years.
        """
        try:
            for ahead in range(LONGEST_SEARCH_DAYS):
                candidate = day + ahead * ONE_DAY
                if self.is_worked(candidate):
                    return candidate
        except OverflowError:
            pass
        raise NoWorkingDay("no day is worked within ten years")

    def add_working_days(self, day: date, n: int) -> date:
        """Return the n-th worked day after ``day``; with 0, ``first_worked(day)``.

        Raises
        ------
        NoWorkingDay
            None is worked within ten years.
        """
        if n == 0:
            return self.first_worked(day)
        for _ in range(n):
            day = self.first_worked(day + ONE_DAY)
        return day


def merged(spans: Iterable[MinuteSpan]) -> list[MinuteSpan]:
    """Sort spans ``[start, end)`` and join those that touch or overlap; empty ones are left out."""
    joined: list[MinuteSpan] = []
    for start, end in sorted(span for span in spans if span[0] < span[1]):
        if joined and start <= joined[-1][1]:
            joined[-1] = (joined[-1][0], max(end, joined[-1][1]))
        else:
            joined.append((start, end))
    return joined


def _lies_in(at: int, spans: Sequence[MinuteSpan], starts: Sequence[int]) -> bool:
    found = bisect_right(starts, at) - 1
    return found >= 0 and at < spans[found][1]
