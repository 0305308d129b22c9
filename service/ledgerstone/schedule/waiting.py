"""What a customer is told of waiting for what is booked: for hands, and for the casting table."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from ledgerstone.schedule.booking import day_at, last_day
from ledgerstone.schedule.days import ONE_DAY, WorkingCalendar
from ledgerstone.schedule.jobs import ScheduledJob
from ledgerstone.schedule.stages import WORK, StageDays, StageSummary


def with_waits(
    stages: Sequence[StageDays],
    work: Sequence[ScheduledJob],
    unbooked: WorkingCalendar,
    summary: StageSummary,
) -> list[StageDays]:
    """Set waits for hands and for the table among the stages; whose work it is stays here.

    Parameters
    ----------
    unbooked
        The days that would be worked if nothing were booked.
    """
    cast = next((at for at, one in enumerate(stages) if one.name == WORK["cast"][0]), len(stages))
    return [
        *_for_hands(work, unbooked, summary),
        *stages[:cast],
        *_for_the_table(work, summary),
        *stages[cast:],
    ]


def _for_hands(
    work: Sequence[ScheduledJob], unbooked: WorkingCalendar, summary: StageSummary
) -> Iterator[StageDays]:
    first = min((one for one in work if one.people), key=lambda one: one.starts, default=None)
    if first is None:
        return
    ready_at, starts = unbooked.first_worked(day_at(first.ready_at)), day_at(first.starts)
    if starts > ready_at:
        yield _wait("Waiting its turn", "Our hands are", ready_at, starts - ONE_DAY, summary)


def _for_the_table(work: Sequence[ScheduledJob], summary: StageSummary) -> Iterator[StageDays]:
    """Only what is booked makes the first cast wait for a table."""
    casts = [one for one in work if one.job.step.stage == "cast" and one.job.load == 0]
    moulds = [one for one in work if one.job.step.stage == "mould" and one.job.load == 0]
    if casts and moulds:
        ready, ready_at = max(one.wait_ends for one in moulds), min(one.ready_at for one in casts)
        if day_at(ready_at) > last_day(ready):
            name = "Waiting for the table"
            yield _wait(name, "The casting table is", last_day(ready), last_day(ready_at), summary)


def _wait(name: str, what: str, first: date, last: date, summary: StageSummary) -> StageDays:
    why = f"{what} taken until {summary.day_words(last)}.{summary.shut(first, last)}"
    return StageDays(name, first, last, why)
