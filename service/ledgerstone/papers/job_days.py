"""The day plan: which step on which day, with its hours, as the schedule laid them.

Equal pieces that have the same step on the same day stand in one line.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, datetime

from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import Block, hours, short_day, shortened, table
from ledgerstone.schedule import ScheduledJob
from ledgerstone.schedule.jobs import moment

COLUMNS = ("Day", "From", "Step", "Piece", "Hands", "Really", "Weighed")
WIDTHS = (18, 9, 43, 27, 12, 11, 13)
PIECE = COLUMNS.index("Piece")  # of one single slab it is not said in every line
WORTH_TELLING_MINUTES = 6 * 60  # a wait as long as this is told; a shorter one is a break


def day_plan(job: Job) -> Block:
    """Set the work as a table, day by day, with room for what it really took and weighed.

    The plan's hour is to five minutes; hands are to the minute, and those that are priced.
    """
    days: dict[date, list[ScheduledJob]] = {}
    for one in job.quote.lead_time.work:
        if one.people or one.wait_ends > one.ends:
            days.setdefault(one.begins_at.date(), []).append(one)
    rows = [row for day in sorted(days) for row in _day(job, day, days[day])]
    rows.append(["", "", "In all", "", hours(job.minutes_in_all()), "", ""])
    if len(job.slabs) > 1 or job.slabs[0].quantity > 1:
        return table(COLUMNS, rows, WIDTHS, right=(4,))
    few = [[*row[:PIECE], *row[PIECE + 1 :]] for row in rows]
    narrower = (*WIDTHS[:PIECE], *WIDTHS[PIECE + 1 :])
    return table((*COLUMNS[:PIECE], *COLUMNS[PIECE + 1 :]), few, narrower, right=(3,))


def _day(job: Job, day: date, laid: Sequence[ScheduledJob]) -> Iterator[list[str]]:
    """Yield the lines of one day; the day itself stands in the first."""
    same: dict[object, list[ScheduledJob]] = {}
    for one in sorted(laid, key=lambda one: one.starts):
        same.setdefault((one.job.step.name, one.job.step.slab), []).append(one)
    for number, mine in enumerate(same.values()):
        yield ["" if number else short_day(day), *_line(job, mine), "", ""]


def _line(job: Job, laid: Sequence[ScheduledJob]) -> Iterator[str]:
    """Say one step of so many equal pieces: when, what, which and how long."""
    first, last = laid[0], laid[-1]
    yield _about(first.begins_at) if first.people else ""
    yield f"{first.job.step.name}{_wait(last)}"
    yield _piece(job, laid)
    minutes = sum(one.job.step.minutes_of(one.job.piece.number) for one in laid)
    yield hours(minutes) if minutes else ""


def _about(at: datetime) -> str:
    """Say the hour to five minutes: a plan is no stopwatch."""
    return f"{at.hour:02d}:{5 * (at.minute // 5):02d}"


def _wait(one: ScheduledJob) -> str:
    """Say until when a piece is left alone after a step."""
    if one.wait_ends - one.ends < WORTH_TELLING_MINUTES:
        return ""
    wait_ends = moment(one.wait_ends)
    return f"; then wait until {short_day(wait_ends.date())}, {_about(wait_ends)}"


def _piece(job: Job, laid: Sequence[ScheduledJob]) -> str:
    slab = laid[0].job.step.slab
    if slab is None:
        return "the order"
    name, quantity = shortened(job.names[slab], 18), job.slabs[slab].quantity
    return name if quantity == 1 else f"{len(laid)} of {quantity} {name}"
