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
_BEFORE_SEALING = "Drying before sealing"


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
    """One stage of the work: its name, first and last day, and why, in a customer's words."""

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


# What each stage of work is called, why it is there, and the same of the wait after it.
_WORK: dict[Stage, tuple[str, str]] = {
    "mould": ("Making the mould", "The mould is built to your sizes."),
    "cast": ("Casting", "The steel is laid and the concrete is poured."),
    "finish": ("Turning and finishing", "Out of the mould, then trimmed and finished by hand."),
    "seal": ("Sealing", "The sealer goes on, coat by coat."),
    "pack": ("Packing", "Packed so that it travels safely."),
}
_WAIT: dict[Stage, tuple[str, str]] = {
    "cast": ("Curing under cover", "Cures under cover until"),
    "finish": (_BEFORE_SEALING, "Dries until"),
    "seal": ("The sealer hardens", "Hardens until"),
}


@dataclass(frozen=True, slots=True, order=True)
class _Moment:
    """A day, and the minutes of hands that are spent of it: the clock, as the bench sees it."""

    day: date
    spent: int = 0


class _Bench:
    """One order's stages, laid one after another into a calendar; ``at`` is how far it has come.

    Every step maps a moment to one that is not earlier, and a later moment never to an earlier
    one, so that a later start never ends earlier, and nor does a calendar with fewer days.
    """

    def __init__(self, calendar: WorkingCalendar, workshop: Workshop, today: date) -> None:
        self._calendar, self._workshop, self._today = calendar, workshop, today
        hours = workshop.calendar.hours_per_day
        self._full = max(1, round(hours * 60)) * workshop.calendar.hands
        self._at = _Moment(today, self._full)  # what comes in today is begun tomorrow
        self._poured = self._at
        self.stages: list[StageDays] = []

    @property
    def day(self) -> date:
        """The last day that anything laid so far takes up."""
        return self._at.day

    def queue(self, days: int) -> None:
        """Wait for the work that was taken on before."""
        if days == 0:
            return
        last = self._calendar.add_working_days(self._today, days)
        why = f"{_working_days(days)} of work already taken on."
        self._add("Waiting its turn", self._today, last, why + self._shut(self._today, last))
        self._at = _Moment(last, self._full)

    def lay(self, stage: Stage, steps: Sequence[Operation]) -> None:
        """Lay one stage: hands first, where there is anything to do, then the longest wait."""
        self._await_age(max(step.age_hours for step in steps))
        minutes = sum(round(step.hands_hours * 60) for step in steps)
        if minutes:
            self._work(stage, minutes, max(step.least_days for step in steps))
        if stage == "cast":
            self._poured = self._at
        hours = max(step.wait_hours for step in steps)
        if hours > 0:
            name, says = _WAIT.get(stage, ("Waiting", "Waits until"))
            self._wait(name, _later(self._at, hours), says)

    def _work(self, stage: Stage, minutes: int, least_days: int) -> None:
        """Spend minutes of hands on worked days, from where the bench stands."""
        came, day, spent = self._at.day, self._at.day, self._at.spent
        if spent >= self._full or not self._calendar.is_worked(day):
            day, spent = self._calendar.first_worked(day + ONE_DAY), 0
        first, spent = day, spent + minutes
        while spent > self._full:
            day, spent = self._calendar.first_worked(day + ONE_DAY), spent - self._full
        self._at = _Moment(day, spent)
        if least_days > 1:
            last = self._calendar.add_working_days(first, least_days - 1)
            self._at = max(self._at, _Moment(last, self._full))
        name, why = _WORK[stage]
        self._add(name, first, self.day, why + self._shut(came, self.day))

    def _wait(self, name: str, until: _Moment, says: str) -> None:
        self._add(name, self.day, until.day, f"{says} {self._day_words(until.day)}.")
        self._at = until

    def _await_age(self, hours: float) -> None:
        """Wait, or wait on, until the concrete is old enough."""
        until = _later(self._poured, hours)
        if until <= self._at:
            return
        days = math.ceil(hours / 24)
        says = f"The sealer goes on concrete that is {days} days old: not before"
        if self.stages and self.stages[-1].name == _BEFORE_SEALING:
            last = self.stages.pop()
            self._add(last.name, last.starts, until.day, f"{says} {self._day_words(until.day)}.")
            self._at = until
        else:
            self._wait(_BEFORE_SEALING, until, says)

    def _add(self, name: str, starts: date, ends: date, why: str) -> None:
        self.stages.append(StageDays(name, starts, ends, why))

    def _shut(self, after: date, last: date) -> str:
        """Say which of the workshop's own closures fall between two days."""
        closures = self._workshop.calendar.closures
        shut = [c for c in closures if after <= c.last and c.first <= last]
        return "".join(
            f" We are closed from {self._day_words(c.first)} to {self._day_words(c.last)}."
            for c in shut
        )

    def _day_words(self, day: date) -> str:
        """Say a day as people do: Tuesday 8 December, with its year where that is another."""
        year = "" if day.year == self._today.year else f" {day.year}"
        return f"{day:%A} {day.day} {day:%B}{year}"


def _later(at: _Moment, hours: float) -> _Moment:
    """The same time of day, so many whole days later that the hours are over."""
    return _Moment(at.day + math.ceil(hours / 24 - 1e-9) * ONE_DAY, at.spent)


def _working_days(days: int) -> str:
    return f"{days} working day{'' if days == 1 else 's'}"


def lead_time(
    steps: Sequence[Operation],
    workshop: Workshop,
    bookings: Sequence[Booking],
    today: date,
    days_on_the_road: int,
) -> LeadTime:
    """Lay an order's operations into the calendar, one stage after another.

    Hands work on worked days only, and a stage begins on the day the one before it ends where
    there is time left; waits run on every day, to the same time of day.
    """
    calendar = calendar_of(workshop, bookings)
    bench = _Bench(calendar, workshop, today)
    bench.queue(workshop.calendar.orders_ahead_days)
    for stage in _WORK:
        mine = [step for step in steps if step.stage == stage]
        if mine:
            bench.lay(stage, mine)
    ready = calendar.add_working_days(bench.day, workshop.days.buffer)
    if workshop.days.buffer:
        why = f"{_working_days(workshop.days.buffer)} kept in hand, so that the day can be kept."
        bench.stages.append(StageDays("In hand", bench.day, ready, why))
    arrives = calendar.add_working_days(ready, days_on_the_road)
    return LeadTime(
        ready_on=ready,
        if_ordered_by=today,
        arrives_earliest=ready if days_on_the_road == 0 else calendar.add_working_days(ready, 1),
        arrives_latest=arrives,
        stages=tuple(bench.stages),
    )
