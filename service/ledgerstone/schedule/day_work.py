"""Work by day: what hands do at one slab on one day, as one entry of an ordinary calendar."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta

from ledgerstone.schedule import LeadTime, ScheduledJob


@dataclass(frozen=True, slots=True)
class DayWork:
    """The work at one slab on one day, from its first job's begin to its last one's end.

    Attributes
    ----------
    slab
        Its number from 0; None for what is done for all slabs of an order of several.
    phases
        Which phases of the work, in the order in which they are begun.
    people
        The most pairs of hands at once.
    """

    day: date
    slab: int | None
    phases: tuple[str, ...]
    begins: datetime
    ends: datetime
    people: int


def work_by_day(lead: LeadTime) -> tuple[DayWork, ...]:
    """Gather the jobs that take hands by day and slab, in the order in which they begin.

    What is done for an order of one slab is done at that slab.
    """
    slabs = {scheduled.job.piece.slab for scheduled in lead.work} - {None}
    whole = slabs.pop() if len(slabs) == 1 else None
    together: dict[tuple[date, int | None], list[ScheduledJob]] = {}
    for scheduled in sorted(lead.work, key=lambda job: job.starts):
        if scheduled.people:
            slab = scheduled.job.piece.slab
            key = (scheduled.begins_at.date(), whole if slab is None else slab)
            together.setdefault(key, []).append(scheduled)
    return tuple(_day_work(day, slab, jobs) for (day, slab), jobs in together.items())


def _day_work(day: date, slab: int | None, jobs: list[ScheduledJob]) -> DayWork:
    begins = jobs[0].begins_at
    ends = max(begins + timedelta(minutes=1), *(job.ends_at for job in jobs))
    phases = tuple(dict.fromkeys(scheduled.job.step.phase for scheduled in jobs))
    return DayWork(day, slab, phases, begins, ends, max(job.people for job in jobs))
