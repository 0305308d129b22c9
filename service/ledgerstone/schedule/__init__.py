"""From hours of work and of waiting to days: the workshop's calendar and one order in it.

Hands work in working hours only; waits run all the time. Jobs are begun in a fixed order in
which no start overtakes another, so that what takes longer, comes later or is booked never makes
an order ready sooner.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from ledgerstone.schedule.booking import Booking, last_day, minute_at
from ledgerstone.schedule.clock import WorkingTime, calendar_of, hours_of_day, place_of
from ledgerstone.schedule.days import WEEKDAYS, NoWorkingDay, WorkingCalendar
from ledgerstone.schedule.fingerprint import KNOWN_FOR, calendar_fingerprint
from ledgerstone.schedule.jobs import Resources, ScheduledJob, TableLoad, schedule_jobs
from ledgerstone.schedule.loads import cast_together, loads_of, moulds_to_try
from ledgerstone.schedule.phases import PhaseDays, PhaseSummary
from ledgerstone.schedule.tables import Tables
from ledgerstone.schedule.waiting import with_waits
from ledgerstone.strength.slabs import concrete_of
from ledgerstone.wording import Message
from ledgerstone.work import Operation
from ledgerstone.workshop.records import Workshop

__all__ = [
    "KNOWN_FOR",
    "WEEKDAYS",
    "Booking",
    "LeadTime",
    "NoWorkingDay",
    "PhaseDays",
    "ScheduledJob",
    "TableLoad",
    "WorkingCalendar",
    "calendar_fingerprint",
    "calendar_of",
    "cast_together",
    "days_ahead",
    "lead_time",
    "moulds_to_try",
]


@dataclass(frozen=True, slots=True)
class LeadTime:
    """The day an order is ready, if ordered by a day, and the phases before it.

    ``work`` and ``on_table`` are the workshop's own: every job to the minute, and every load on
    the casting tables.
    """

    ready_on: date
    if_ordered_by: date
    arrives_earliest: date
    arrives_latest: date
    phases: tuple[PhaseDays, ...]
    work: tuple[ScheduledJob, ...] = ()
    on_table: tuple[TableLoad, ...] = ()


def lead_time(
    steps: Sequence[Operation],
    workshop: Workshop,
    bookings: Sequence[Booking] | None,
    today: date,
    days_on_the_road: int,
    *,
    by_carrier: bool = False,
) -> LeadTime:
    """Lay an order's operations into the calendar; what comes in today is begun tomorrow.

    Parameters
    ----------
    bookings
        All that is booked. It replaces the workshop's ``orders_ahead_days``, which count where no
        calendar is read: None.
    days_on_the_road
        Working days, at most; with 0 it is there when it is ready.
    by_carrier
        Whether they are a carrier's: weekends and public holidays count, and nothing that shuts
        the workshop or holds its people.

    Raises
    ------
    NoWorkingDay
        There is no day by which it can be ready.
    """
    ahead = days_ahead(workshop, bookings)
    taken = () if bookings is None else bookings
    calendar = calendar_of(workshop, taken)
    queued = calendar.add_working_days(today, ahead) if ahead else today
    start = minute_at(queued) + 24 * 60
    clock = WorkingTime(calendar, hours_of_day(workshop), taken, queued)
    tables = Tables(workshop.table.count, taken)
    resources = Resources(workshop, calendar, clock, tables, concrete_of(workshop).cement)
    loads = loads_of(steps, workshop.table)
    work, on_table = schedule_jobs(steps, loads, resources, start)
    summary = PhaseSummary(work, len(on_table), workshop, today)
    phases = with_waits([*summary.phases()], work, calendar_of(workshop, ()), summary)
    if ahead:
        phases.insert(0, _queue(ahead, today, queued, summary))
    done = last_day(max((scheduled.wait_ends for scheduled in work), default=start))
    ready = calendar.add_working_days(done, workshop.days.buffer)
    phases += _in_hand(workshop.days.buffer, done, ready)
    road = WorkingCalendar(place_of(workshop)) if by_carrier else calendar
    first, last = _arrives(ready, days_on_the_road, road)
    laid, on = tuple(work), tuple(on_table)
    return LeadTime(ready, today, first, last, phases=tuple(phases), work=laid, on_table=on)


def _arrives(ready: date, days: int, road: WorkingCalendar) -> tuple[date, date]:
    """Return the first and last possible day of arrival."""
    if days == 0:
        return ready, ready
    return road.add_working_days(ready, 1), road.add_working_days(ready, days)


def days_ahead(workshop: Workshop, bookings: Sequence[Booking] | None) -> int:
    """Working days of work already taken on, where no calendar is read; none where one is.

    Source
    ------
    The profile's ``calendar.orders_ahead_days``.
    """
    return workshop.calendar.orders_ahead_days if bookings is None else 0


def _queue(ahead: int, today: date, queued: date, summary: PhaseSummary) -> PhaseDays:
    """Return the wait for work that was accepted before."""
    why = Message("stage-queue", days=ahead)
    return PhaseDays("queue", today, queued, (why, *summary.shut(today, queued)))


def _in_hand(buffer: int, done: date, ready: date) -> list[PhaseDays]:
    if buffer == 0:
        return []
    return [PhaseDays("in-hand", done, ready, (Message("stage-in-hand", days=buffer),))]
