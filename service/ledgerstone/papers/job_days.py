"""The day plan: which step on which day, with its hours, as the schedule laid them.

Pieces that have the same step on the same day are on one line.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta

from ledgerstone.message import Clock, Listed, Message, Value, WeekdayName
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    SheetBlock,
    about,
    hours,
    short_day,
    shortened,
    side_by_side,
    table,
)
from ledgerstone.schedule import ScheduledJob
from ledgerstone.schedule.jobs import moment

STEP, FITS_LETTERS, FITS_CLOCK = 2, 27, 5  # letters of a step on one line of a narrow column
PIECE = 3  # for a single slab it is not repeated in every line
WORTH_TELLING_MINUTES = 6 * 60  # a wait as long as this is listed; a shorter one is a break
_WIDTHS, _WIDTHS_AM_PM = (26, 12, 52, 30, 16, 12), (24, 17, 49, 30, 16, 12)
_SHORT = 14  # letters of a name


def day_plan(job: Job) -> Iterator[SheetBlock]:
    """Set the work as a table, day by day, with room for what it really took.

    The plan's hour is to five minutes; hands are to the minute, and those that are priced. Of one
    slab it stands in two columns.
    """
    rows = day_rows(job)
    rows.append(["", "", Message("job-in-all"), "", hours(job.minutes_in_all()), ""])
    if len(job.slabs) > 1:
        yield _table(job, rows, whole=True)
        return
    half = _half(job, rows)
    first, second = rows[:half], rows[half:]
    if not second[0][0]:
        second[0][0] = next(row[0] for row in reversed(first) if row[0])
    whole = job.slabs[0].quantity > 1
    halves = ([_table(job, part, whole=whole)] for part in (first, second))
    yield from side_by_side(next(halves), next(halves))


def _half(job: Job, rows: Sequence[Sequence[Value]]) -> int:
    """Return the number of rows in the first of two columns of about the same height."""
    lines = [1 + (len(job.speech.value(row[STEP])) > FITS_LETTERS) for row in rows]
    return next(n for n in range(len(rows) + 1) if 2 * sum(lines[:n]) >= sum(lines))


def day_rows(job: Job) -> list[list[Value]]:
    """List every step of every day; the day itself is on its first line."""
    days: dict[date, list[ScheduledJob]] = {}
    for scheduled in job.quote.lead_time.work:
        if scheduled.people or scheduled.wait_ends > scheduled.ends:
            days.setdefault(scheduled.begins_at.date(), []).append(scheduled)
    return [row for day in sorted(days) for row in _day(job, day, days[day])]


def _table(job: Job, rows: Sequence[Sequence[Value]], *, whole: bool) -> SheetBlock:
    short = len(job.speech.value(Clock(20, 0))) <= FITS_CLOCK
    widths = _WIDTHS if short else _WIDTHS_AM_PM
    columns: tuple[Value, ...] = (
        Message("job-day"),
        Message("job-from"),
        Message("job-step"),
        Message("job-piece"),
        Message("job-hands"),
        Message("job-really"),
    )
    if whole:
        return table(columns, rows, widths, right=(4,))
    few = [[*row[:PIECE], *row[PIECE + 1 :]] for row in rows]
    narrower = (*widths[:PIECE], *widths[PIECE + 1 :])
    return table((*columns[:PIECE], *columns[PIECE + 1 :]), few, narrower, right=(3,))


def _day(job: Job, day: date, laid: Sequence[ScheduledJob]) -> Iterator[list[Value]]:
    """Yield the lines of one day."""
    same: dict[object, list[ScheduledJob]] = {}
    for scheduled in sorted(laid, key=lambda scheduled: scheduled.starts):
        same.setdefault(scheduled.job.step.name, []).append(scheduled)
    for number, jobs in enumerate(same.values()):
        yield ["" if number else short_day(day), *_line(job, jobs), ""]


def _line(job: Job, laid: Sequence[ScheduledJob]) -> Iterator[Value]:
    """Describe one step of so many pieces: when, what, which and how long."""
    first, last = laid[0], max(laid, key=lambda scheduled: scheduled.wait_ends)
    yield about(first.begins_at) if any(scheduled.people for scheduled in laid) else ""
    yield _step(last)
    yield _pieces(job, laid)
    minutes = sum(scheduled.job.step.minutes_of(scheduled.job.piece.number) for scheduled in laid)
    yield hours(minutes) if minutes else ""


def _step(job: ScheduledJob) -> Value:
    """Describe a step, and until when a piece is left alone after it."""
    step = job.job.step.name
    if step.name == "step-turn-way":  # the way of turning is stated with the lifts
        step = Message("step-turn")
    if job.wait_ends - job.ends < WORTH_TELLING_MINUTES:
        return step
    until = moment(job.wait_ends)
    within_a_week = until - job.ends_at < timedelta(days=6)
    return Message(
        "job-then-wait-week" if within_a_week else "job-then-wait",
        step=step,
        until=WeekdayName(until.date()) if within_a_week else short_day(until.date()),
        at=about(until),
    )


def _pieces(job: Job, laid: Sequence[ScheduledJob]) -> Value:
    """Name the pieces of a step, each slab once, with how many where it is not all of them."""
    counted: dict[int | None, int] = {}
    for scheduled in laid:
        counted[scheduled.job.step.slab] = counted.get(scheduled.job.step.slab, 0) + 1
    return Listed(tuple(_piece(job, *item) for item in counted.items()), joined="comma")


def _piece(job: Job, slab: int | None, count: int) -> Value:
    if slab is None:
        return Message("job-whole-order")
    name, quantity = shortened(job.names[slab], _SHORT), job.slabs[slab].quantity
    if quantity == 1:
        return name
    return Message("job-some-of", some=count, all=quantity, name=name)
