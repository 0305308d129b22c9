"""Working time to the minute: when work begins and when it is done."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Sequence
from datetime import date

from ledgerstone.schedule.booking import MINUTES_A_DAY, Booking, minute_at
from ledgerstone.schedule.days import ONE_DAY, MinuteSpan, NoWorkingDay, WorkingCalendar, merged
from ledgerstone.workshop.records import Workshop

_LONGEST_PLAN_DAYS = 36_600


def hours_of_day(workshop: Workshop) -> MinuteSpan:
    """Return the minutes of a day between which hands work; at least one of them."""
    minutes = max(1, round(workshop.calendar.hours_per_day * 60))
    start = min(round(workshop.bench.day_starts_at * 60), MINUTES_A_DAY - minutes)
    return start, start + minutes


def calendar_of(workshop: Workshop, bookings: Sequence[Booking]) -> WorkingCalendar:
    """Make a workshop's calendar of days: a day whose working hours are all booked is shut."""
    closures = [(closure.first, closure.last) for closure in workshop.calendar.closures]
    hours = hours_of_day(workshop)
    taken = [span for booking in bookings if (span := _whole_days(booking, hours))]
    days = workshop.calendar
    return WorkingCalendar(
        place_of(workshop),
        days.weekdays,
        [*closures, *taken],
        added=[(int(day[:2]), int(day[3:])) for day in days.holidays_added],
        worked=days.holidays_worked,
    )


def place_of(workshop: Workshop) -> str:
    """Return the country, and its part, whose public holidays are kept."""
    identity = workshop.workshop
    return f"{identity.country}-{identity.region}" if identity.region else identity.country


def _whole_days(booking: Booking, hours: MinuteSpan) -> tuple[date, date] | None:
    """First and last of the days whose working hours a booking of people takes whole."""
    if booking.holds == "table":
        return None
    start, end = booking.minutes
    first = (
        booking.first if start <= minute_at(booking.first) + hours[0] else booking.first + ONE_DAY
    )
    last = booking.last if end >= minute_at(booking.last) + hours[1] else booking.last - ONE_DAY
    return (first, last) if first <= last else None


class WorkingTime:
    """The minutes in which hands work, from a day on, computed as far as they are needed.

    Both ``begin`` and ``after`` keep moments in order: a later one never leads to an earlier one,
    and nor does working time with minutes left out.
    """

    def __init__(
        self, calendar: WorkingCalendar, hours: MinuteSpan, bookings: Iterable[Booking], first: date
    ) -> None:
        self._calendar, self._hours, self._day = calendar, hours, first
        self._last = first.toordinal() + _LONGEST_PLAN_DAYS
        self._taken = merged(booking.minutes for booking in bookings if booking.holds != "table")
        self._at_taken = 0
        self._starts: list[int] = []
        self._ends: list[int] = []
        self._before: list[int] = [0]  # working minutes before each stretch

    def begin(self, at: int) -> int:
        """Return the first working minute that is not before another, counted from year 1.

        Raises
        ------
        NoWorkingDay
            There is none within `_LONGEST_PLAN_DAYS` of the first day.
        """
        while not self._ends or self._ends[-1] <= at:
            self._lay_a_day()
        found = bisect_right(self._ends, at)
        return max(at, self._starts[found])

    def begin_unbroken(self, at: int, minutes: int) -> int:
        """Return the first minute from which ``minutes`` are worked without a break, from year 1.

        Where that is more than a day's hours, the first of a day with all its hours.

        Raises
        ------
        NoWorkingDay
            There is none within `_LONGEST_PLAN_DAYS` of the first day.
        """
        least = min(minutes, self._hours[1] - self._hours[0])
        self.begin(at)
        found = bisect_right(self._ends, at)
        while self._ends[found] - max(at, self._starts[found]) < least:
            found += 1
            while found >= len(self._ends):
                self._lay_a_day()
        return max(at, self._starts[found])

    def after(self, at: int, minutes: int) -> int:
        """Return the minute at which ``minutes`` of work are done that begin at a working minute.

        Raises
        ------
        NoWorkingDay
            There is none within `_LONGEST_PLAN_DAYS` of the first day.
        """
        found = bisect_right(self._starts, at) - 1
        done = self._before[found] + at - self._starts[found] + minutes
        while self._before[-1] < done:
            self._lay_a_day()
        last = bisect_left(self._before, done) - 1
        return self._starts[last] + done - self._before[last]

    def end_of(self, day: date) -> int:
        """Return the minute at which a day's hours are over, counted from year 1."""
        return minute_at(day) + self._hours[1]

    def _lay_a_day(self) -> None:
        """Lay out the next worked day, less what is booked of it."""
        day = self._calendar.first_worked(self._day)
        if day.toordinal() > self._last:
            raise NoWorkingDay("the work is not done within a hundred years")
        self._day = day + ONE_DAY
        start, end = (minute_at(day) + minute for minute in self._hours)
        for taken_start, taken_end in self._taken_within(start, end):
            self._stretch(start, taken_start)
            start = taken_end
        self._stretch(start, end)

    def _taken_within(self, start: int, end: int) -> list[MinuteSpan]:
        taken, at = self._taken, self._at_taken
        while at < len(taken) and taken[at][1] <= start:
            at += 1
        self._at_taken = last = at
        while last < len(taken) and taken[last][0] < end:
            last += 1
        return taken[at:last]

    def _stretch(self, start: int, end: int) -> None:
        if start < end:
            self._starts.append(start)
            self._ends.append(end)
            self._before.append(self._before[-1] + end - start)
