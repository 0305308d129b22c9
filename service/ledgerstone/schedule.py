"""From hours of hands and hours of waiting to days: the workshop's calendar and one order in it."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

import holidays

from ledgerstone.work import Operation, Stage
from ledgerstone.workshop.records import Workshop

WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
_LONGEST_SEARCH_DAYS = 3660
ONE_DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True)
class Booking:
    """Days already taken, both ends included, and in a word by what."""

    first: date
    last: date
    why: str


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
    ) -> None:
        nation, _, part = country.partition("-")
        self._public = holidays.country_holidays(nation, subdiv=part or None)
        self._worked = frozenset(WEEKDAYS.index(name) for name in weekdays)
        self._closed = tuple(closed)

    def is_worked(self, day: date) -> bool:
        """Say whether hands work on a day."""
        shut = any(first <= day <= last for first, last in self._closed)
        return day.weekday() in self._worked and not shut and day not in self._public

    def holiday(self, day: date) -> str | None:
        """Name the public holiday on a day, or None."""
        name = self._public.get(day)
        return str(name) if name is not None else None

    def first_worked(self, day: date) -> date:
        """Return the day itself if it is worked, else the next one that is.

        Raises
        ------
        ValueError
            None is worked within ten years.
        """
        for ahead in range(_LONGEST_SEARCH_DAYS):
            candidate = day + ahead * ONE_DAY
            if self.is_worked(candidate):
                return candidate
        raise ValueError("no day is worked within ten years")

    def add_working_days(self, day: date, n: int) -> date:
        """Return the n-th worked day after ``day``; with 0, ``first_worked(day)``."""
        if n == 0:
            return self.first_worked(day)
        for _ in range(n):
            day = self.first_worked(day + ONE_DAY)
        return day


@dataclass(frozen=True, slots=True)
class StageDays:
    """One stage of the work: its name, first and last day, and why it takes so long."""

    name: str
    starts: date
    ends: date
    why: str


@dataclass(frozen=True, slots=True)
class LeadTime:
    """The day an order is ready, if ordered by a day, and the stages before it."""

    ready_on: date
    if_ordered_by: date
    arrives_earliest: date
    arrives_latest: date
    stages: tuple[StageDays, ...]


def calendar_of(workshop: Workshop, bookings: Sequence[Booking]) -> WorkingCalendar:
    """Make a workshop's calendar."""
    closures = [(closure.first, closure.last) for closure in workshop.calendar.closures]
    taken = [(booking.first, booking.last) for booking in bookings]
    identity = workshop.workshop
    country = f"{identity.country}-{identity.region}" if identity.region else identity.country
    return WorkingCalendar(country, workshop.calendar.weekdays, [*closures, *taken])


_TITLES: dict[Stage, str] = {
    "mould": "Making the mould",
    "cast": "Casting",
    "cover": "Curing under cover",
    "finish": "Turning and finishing",
    "dry": "Drying",
    "seal": "Sealing",
    "pack": "Packing",
}


def lead_time(
    steps: Sequence[Operation],
    workshop: Workshop,
    bookings: Sequence[Booking],
    today: date,
    days_on_the_road: int,
) -> LeadTime:
    """Lay an order's operations into the calendar, one stage after another.

    Hands work on worked days only; waits run on every day. Each stage begins on the first worked
    day after the stage and the wait before it.
    """
    calendar = calendar_of(workshop, bookings)
    per_day = workshop.calendar.hours_per_day * workshop.calendar.hands
    day = calendar.add_working_days(today, workshop.calendar.orders_ahead_days)
    stages = [StageDays("Waiting its turn", today, day, _ahead(workshop))]
    for name, hours, wait_days in _stages(steps):
        first = calendar.first_worked(day + ONE_DAY)
        last = calendar.add_working_days(first, max(0, math.ceil(hours / per_day - 1e-9) - 1))
        stages.append(StageDays(_TITLES[name], first, last, f"{hours:.1f} hours of work"))
        day = last
        if wait_days:
            day = last + wait_days * ONE_DAY
            waiting: Stage = "cover" if name == "cast" else "dry"
            stages.append(StageDays(_TITLES[waiting], last, day, f"{wait_days} days"))
    ready = calendar.add_working_days(day, workshop.days.buffer)
    arrives = calendar.add_working_days(ready, days_on_the_road)
    return LeadTime(
        ready_on=ready,
        if_ordered_by=today,
        arrives_earliest=ready if days_on_the_road == 0 else calendar.add_working_days(ready, 1),
        arrives_latest=arrives,
        stages=tuple(stages),
    )


def _ahead(workshop: Workshop) -> str:
    days = workshop.calendar.orders_ahead_days
    return f"{days} working day{'' if days == 1 else 's'} of work already taken on"


def _stages(steps: Sequence[Operation]) -> Iterable[tuple[Stage, float, int]]:
    """Sum hands by stage; the longest wait of a stage, in whole days, comes after it."""
    for name in _TITLES:
        mine = [step for step in steps if step.stage == name]
        if mine:
            hours = sum(step.hands_hours for step in mine)
            yield name, hours, math.ceil(max(step.wait_hours for step in mine) / 24 - 1e-9)
