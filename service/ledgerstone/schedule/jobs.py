"""Jobs laid one by one into working time, on hands, machines and tables that are free.

Jobs are begun in one fixed order and no start overtakes the one before it. So a job's start is the
greatest of its own piece's readiness, the start before it, and the moment from which enough hands,
a machine and a table are free, with as much time on end as a pour takes; and all of these only move
later when anything else does.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, time

from ledgerstone.schedule.booking import MINUTES_A_DAY, day_at
from ledgerstone.schedule.clock import WorkingTime
from ledgerstone.schedule.curing import Warmth, aged_by, damp_until
from ledgerstone.schedule.days import MinuteSpan, WorkingCalendar
from ledgerstone.schedule.loads import CastPiece, Load, PendingJob, in_order
from ledgerstone.schedule.tables import Tables
from ledgerstone.strength.concrete import CementClass
from ledgerstone.work import Operation
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True)
class ScheduledJob:
    """One job in the calendar, in minutes of local time from year 1.

    Attributes
    ----------
    ready_at
        When its piece and its place are ready for it.
    starts, ends
        When hands begin, and when its piece is done with it; hands leave at ``hands_end``.
    people
        Pairs of hands at it.
    wait_ends
        When the wait after it is over.
    """

    job: PendingJob
    ready_at: int
    starts: int
    hands_end: int
    ends: int
    wait_ends: int
    people: int

    @property
    def begins_at(self) -> datetime:
        """When hands begin, by the workshop's clock."""
        return moment(self.starts)

    @property
    def ends_at(self) -> datetime:
        """When hands leave, by the workshop's clock."""
        return moment(self.hands_end)


@dataclass(frozen=True, slots=True)
class TableLoad:
    """One load on the casting tables, from its first pour until the last piece leaves."""

    load: int
    tables: int
    starts: int
    ends: int


def moment(minute: int) -> datetime:
    """Write a minute as a day and a time."""
    hour, rest = divmod(minute % MINUTES_A_DAY, 60)
    return datetime.combine(day_at(minute), time(hour, rest))


@dataclass(slots=True)
class _State:
    """How far everything has come: hands and machines at work, and each piece."""

    at: int
    busy: list[tuple[int, int, str | None]] = field(default_factory=list)
    ready: dict[CastPiece, int] = field(default_factory=dict)
    poured: dict[CastPiece, int] = field(default_factory=dict)
    moulds: dict[CastPiece, int] = field(default_factory=dict)
    warm: dict[CastPiece, Warmth] = field(default_factory=dict)
    table_free: int = 0
    order_ready: int = 0

    def copy(self) -> _State:
        return replace(
            self,
            busy=list(self.busy),
            ready=dict(self.ready),
            poured=dict(self.poured),
            moulds=dict(self.moulds),
            warm=dict(self.warm),
        )


@dataclass(frozen=True, slots=True)
class Resources:
    """What jobs are laid on."""

    workshop: Workshop
    calendar: WorkingCalendar
    clock: WorkingTime
    tables: Tables
    cement: CementClass


def schedule_jobs(
    steps: Sequence[Operation], loads: Sequence[Load], resources: Resources, start: int
) -> tuple[list[ScheduledJob], list[TableLoad]]:
    """Lay an order's steps, from a moment on.

    Raises
    ------
    NoWorkingDay
    """
    laying = _Scheduler(resources, start)
    jobs = list(in_order(steps, loads))
    for load, block in _blocks(jobs):
        laying.lay_block(block, None if load is None else loads[load], load)
    return laying.laid, laying.on_table


def _blocks(jobs: Sequence[PendingJob]) -> list[tuple[int | None, list[PendingJob]]]:
    """Cut jobs into those of a load on the table, first pour to last demoulding, and the others."""
    first: dict[int, int] = {}
    last: dict[int, int] = {}
    for at, job in enumerate(jobs):
        if job.step.phase == "cast":
            first.setdefault(job.load, at)
            last[job.load] = at
        elif job.frees and job.load in first:
            last[job.load] = at
    blocks: list[tuple[int | None, list[PendingJob]]] = []
    done = 0
    for load, start in first.items():
        blocks.append((None, list(jobs[done:start])))
        done = last[load] + 1
        blocks.append((load, list(jobs[start:done])))
    return [*blocks, (None, list(jobs[done:]))]


class _Scheduler:
    """Jobs as they are laid."""

    def __init__(self, resources: Resources, start: int) -> None:
        self._bench, self._start = resources, start
        self._by_month = resources.workshop.handling.workshop_c
        self._state = _State(start, order_ready=start)
        self.laid: list[ScheduledJob] = []
        self.on_table: list[TableLoad] = []

    def lay_block(self, jobs: Sequence[PendingJob], load: Load | None, number: int | None) -> None:
        """Lay jobs; those of a load start over, later, while a booking has their table."""
        if load is None or number is None:
            self.laid += self._lay_all(jobs)
            return
        floor, shortest = self._state.table_free, _shortest_hold(jobs)
        while True:
            floor = self._bench.tables.free_for(floor, shortest, load.tables)
            before = self._state.copy()
            self._state.table_free = floor
            laid = self._lay_all(jobs)
            held = self._held(laid)
            clash = self._bench.tables.clash(held, load.tables)
            if clash is None:
                break
            self._state, floor = before, clash
        self.laid += laid
        self._state.table_free = held[1]
        self.on_table.append(TableLoad(number, load.tables, *held))

    def _held(self, laid: Sequence[ScheduledJob]) -> MinuteSpan:
        """From the first pour to when the last piece is off the table."""
        casts = [scheduled for scheduled in laid if scheduled.job.step.phase == "cast"]
        freed = {scheduled.job.piece: scheduled.ends for scheduled in laid if scheduled.job.frees}
        ends = [max(freed.get(cast.job.piece, cast.wait_ends), cast.ends) for cast in casts]
        return min(cast.starts for cast in casts), max(ends)

    def _lay_all(self, jobs: Sequence[PendingJob]) -> list[ScheduledJob]:
        """Schedule jobs in order; unbroken work begins where it can be done without a break."""
        run, runs = 0, list[int]()
        for at in range(len(jobs) - 1, -1, -1):
            follows = at + 1 < len(jobs) and _is_continued(jobs[at], jobs[at + 1])
            run = self._minutes(jobs[at]) + (run if follows else 0)
            runs.append(run if follows or jobs[at].step.unbroken else 0)
        return [self._lay(job, run) for job, run in zip(jobs, reversed(runs), strict=True)]

    def _people(self, step: Operation) -> int:
        hands = self._bench.workshop.calendar.hands
        return min(step.people or hands, hands)

    def _minutes(self, job: PendingJob) -> int:
        """Minutes that hands are at a job, all that share it together."""
        return math.ceil(job.step.minutes_of(job.piece.number) / self._people(job.step))

    def _lay(self, job: PendingJob, on_end: int) -> ScheduledJob:
        """Lay one job; ``on_end`` are the minutes that it and what follows take unbroken."""
        state, step, ready_at = self._state, job.step, self._piece_ready(job)
        minutes, people = self._minutes(job), self._people(step)
        start = hands_end = ends = ready_at
        if minutes:
            start = self._begin(max(ready_at, state.at), people, step.machine, on_end)
            hands_end = self._bench.clock.after(start, minutes)
            state.at = start
            state.busy = [hold for hold in state.busy if hold[0] > start]
            state.busy.append((hands_end, people, step.machine))
            ends = max(hands_end, self._least(start, step.least_days))
        wait_ends = self._waits(job, ends)
        self._note(job, ends, wait_ends)
        return ScheduledJob(
            job, ready_at, start, hands_end, ends, wait_ends, people if minutes else 0
        )

    def _piece_ready(self, job: PendingJob) -> int:
        """When a job's piece is ready for it."""
        state = self._state
        if job.piece.slab is None:
            at_table = job.step.phase == "cast"
            return max(state.order_ready, state.table_free) if at_table else state.order_ready
        if job.step.phase == "mould":
            return max(state.order_ready, state.moulds.get(job.piece, 0))
        ready_at = max(state.order_ready, state.ready.get(job.piece, self._start))
        if job.step.phase == "cast":
            mould = CastPiece(job.piece.slab, job.mould)
            return max(ready_at, state.moulds.get(mould, 0), state.table_free)
        poured = state.poured.get(job.piece)
        if poured is not None:
            ready_at = max(ready_at, poured + _minutes(job.step.age_hours))
        return ready_at

    def _begin(self, at: int, people: int, machine: str | None, on_end: int) -> int:
        """Return the first working minute at which enough hands and the machine are free."""
        at = self._bench.clock.begin_unbroken(at, on_end)
        while True:
            busy = [hold for hold in self._state.busy if hold[0] > at]
            hands = sum(hold[1] for hold in busy) + people
            running = 1 + sum(machine is not None and hold[2] == machine for hold in busy)
            if hands <= self._bench.workshop.calendar.hands and running <= self._count(machine):
                return at
            at = self._bench.clock.begin_unbroken(min(hold[0] for hold in busy), on_end)

    def _count(self, machine: str | None) -> int:
        bench = self._bench.workshop.bench
        return {"mixer": bench.mixers, "polisher": bench.polishers}.get(machine or "", 1)

    def _least(self, start: int, days: int) -> int:
        """The minute at which a step that lasts ``days`` working days is over."""
        if days <= 1:
            return start
        last = self._bench.calendar.add_working_days(day_at(start), days - 1)
        return self._bench.clock.end_of(last)

    def _waits(self, job: PendingJob, ends: int) -> int:
        """When the wait after a job is over: its hours, the age that is needed, the damp cover."""
        step, state = job.step, self._state
        wait_ends = ends + _minutes(step.wait_hours)
        if step.min_age_days is not None:
            warmth = state.warm.get(job.piece, Warmth(self._by_month, step.warm_c))
            poured = ends if step.phase == "cast" else state.poured.get(job.piece, ends)
            wait_ends = max(wait_ends, aged_by(poured, step.min_age_days, warmth))
        if job.frees and job.piece in state.poured:
            own = self._bench.workshop.bench.damp_days
            warmth = state.warm.get(job.piece, Warmth(self._by_month))
            damp = damp_until(state.poured[job.piece], own, self._bench.cement, warmth)
            wait_ends = max(wait_ends, damp)
        return wait_ends

    def _note(self, job: PendingJob, ends: int, wait_ends: int) -> None:
        """Record the progress of a job's piece."""
        state, piece = self._state, job.piece
        if piece.slab is None:
            state.order_ready = max(state.order_ready, wait_ends)
        elif job.step.phase == "mould":
            state.moulds[piece] = max(state.moulds.get(piece, 0), wait_ends)
        else:
            state.ready[piece] = max(state.ready.get(piece, 0), wait_ends)
            if job.step.phase == "cast":
                state.poured[piece] = max(state.poured.get(piece, 0), ends)
        if job.step.phase == "cast" and job.step.warm_c is not None:
            until = ends + _minutes(job.step.warm_hours)
            state.warm[piece] = Warmth(self._by_month, job.step.warm_c, until)


def _is_continued(job: PendingJob, following: PendingJob) -> bool:
    return following.step.unbroken and following.piece == job.piece


def _shortest_hold(jobs: Sequence[PendingJob]) -> int:
    """Minutes that a load is on the table at least: its longest cover."""
    return max(_minutes(job.step.wait_hours) for job in jobs if job.step.phase == "cast")


def _minutes(hours: float) -> int:
    return math.ceil(hours * 60 - 1e-6)
