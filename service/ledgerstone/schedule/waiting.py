"""Waits for what is booked, as a customer reads them: for hands and for the casting table."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ledgerstone.schedule.booking import day_at, last_day
from ledgerstone.schedule.days import ONE_DAY, WorkingCalendar
from ledgerstone.schedule.jobs import ScheduledJob
from ledgerstone.schedule.phases import PhaseDays, PhaseSummary
from ledgerstone.wording import Message


def with_waits(
    phases: Sequence[PhaseDays],
    work: Sequence[ScheduledJob],
    unbooked: WorkingCalendar,
    summary: PhaseSummary,
) -> list[PhaseDays]:
    """Set waits for hands and for the table among the phases; whose work it is stays here.

    Parameters
    ----------
    unbooked
        The days that would be worked if nothing were booked.
    """
    cast = next((at for at, phase in enumerate(phases) if phase.phase == "cast"), len(phases))
    return [
        *_for_hands(work, unbooked, summary),
        *phases[:cast],
        *_for_the_table(work, summary),
        *phases[cast:],
    ]


def _for_hands(
    work: Sequence[ScheduledJob], unbooked: WorkingCalendar, summary: PhaseSummary
) -> Iterator[PhaseDays]:
    first = min(
        (scheduled for scheduled in work if scheduled.people),
        key=lambda scheduled: scheduled.starts,
        default=None,
    )
    if first is None:
        return
    ready_at, starts = unbooked.first_worked(day_at(first.ready_at)), day_at(first.starts)
    if starts > ready_at:
        last = starts - ONE_DAY
        taken = Message("stage-hands-taken", until=summary.weekday(last))
        yield PhaseDays("queue", ready_at, last, (taken, *summary.shut(ready_at, last)))


def _for_the_table(work: Sequence[ScheduledJob], summary: PhaseSummary) -> Iterator[PhaseDays]:
    """Only what is booked makes the first cast wait for a table."""
    casts = [
        scheduled
        for scheduled in work
        if scheduled.job.step.phase == "cast" and scheduled.job.load == 0
    ]
    moulds = [
        scheduled
        for scheduled in work
        if scheduled.job.step.phase == "mould" and scheduled.job.load == 0
    ]
    if casts and moulds:
        ready, ready_at = (
            max(mould.wait_ends for mould in moulds),
            min(cast.ready_at for cast in casts),
        )
        if day_at(ready_at) > last_day(ready):
            first, last = last_day(ready), last_day(ready_at)
            taken = Message("stage-table-taken", until=summary.weekday(last))
            yield PhaseDays("table", first, last, (taken, *summary.shut(first, last)))
