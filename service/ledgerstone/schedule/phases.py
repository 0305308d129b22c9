"""The work as a customer reads it: its phases, each with its days and a reason."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal

from ledgerstone.schedule.booking import day_at, last_day
from ledgerstone.schedule.jobs import ScheduledJob
from ledgerstone.wording import Message, Temperature, Weekday
from ledgerstone.work import Phase
from ledgerstone.workshop.records import Workshop

# Work and waits, as a customer reads them.
WORK: tuple[Phase, ...] = ("sample", "mould", "cast", "finish", "seal", "pack")
Wait = Literal["queue", "table", "yes", "cover", "rack", "dry", "harden", "in-hand"]


@dataclass(frozen=True, slots=True)
class PhaseDays:
    """One phase of the work: what is done or waited for, first and last day, and why."""

    phase: Phase | Wait
    starts: date
    ends: date
    why: tuple[Message, ...]

    @property
    def name(self) -> Message:
        """What it is called."""
        return Message("stage", stage=self.phase)


class PhaseSummary:
    """Scheduled work as phases, without hours and without other orders' work."""

    def __init__(
        self, laid: Sequence[ScheduledJob], loads: int, workshop: Workshop, today: date
    ) -> None:
        self._laid, self._loads, self._workshop, self._today = laid, loads, workshop, today

    def phases(self) -> Iterable[PhaseDays]:
        """Yield every phase in the order of the work."""
        yield from self._work("sample")
        yield from self._approval()
        yield from self._work("mould")
        yield from self._work("cast")
        yield from self._cover()
        yield from self._rack()
        yield from self._work("finish")
        yield from self._drying()
        yield from self._work("seal")
        yield from self._hardening()
        yield from self._work("pack")
        yield from self._keeping()

    def _of(self, phase: Phase) -> list[ScheduledJob]:
        return [scheduled for scheduled in self._laid if scheduled.job.step.phase == phase]

    def _work(self, phase: Phase) -> Iterable[PhaseDays]:
        mine = [scheduled for scheduled in self._of(phase) if scheduled.people]
        if phase == "pack":  # a crate may be built while the sealer hardens
            mine = [scheduled for scheduled in mine if scheduled.job.piece.slab is not None]
        if not mine:
            return
        why = Message("stage-work", stage=phase)
        if phase == "cast" and self._loads > 1:
            why = Message("stage-cast-in-turns", turns=self._loads)
        ready_at = day_at(min(scheduled.ready_at for scheduled in mine))
        ends = last_day(max(scheduled.ends for scheduled in mine))
        starts = day_at(min(scheduled.starts for scheduled in mine))
        yield PhaseDays(phase, starts, ends, (why, *self.shut(ready_at, ends)))

    def _approval(self) -> Iterable[PhaseDays]:
        """The wait for the tile to dry and travel, and for the customer's approval of it."""
        tiles = self._of("sample")
        if tiles:
            ends = last_day(max(tile.wait_ends for tile in tiles))
            starts = last_day(min(tile.ends for tile in tiles))
            why = Message("stage-yes", until=self.weekday(ends))
            yield PhaseDays("yes", starts, ends, (why,))

    def _cover(self) -> Iterable[PhaseDays]:
        casts = [
            scheduled for scheduled in self._of("cast") if scheduled.job.piece.slab is not None
        ]
        if casts:
            month = day_at(min(cast.ends for cast in casts)).month
            tents = [cast.job.step.warm_c for cast in casts if cast.job.step.warm_c is not None]
            warm = tents[0] if tents else self._workshop.handling.workshop_c[month - 1]
            for starts, ends in self._waited(casts):
                until = self.weekday(ends)
                where = "tent" if tents else "workshop"
                why = Message("stage-cures", until=until, warmth=Temperature(warm), where=where)
                yield PhaseDays("cover", starts, ends, (why,))

    def _rack(self) -> Iterable[PhaseDays]:
        """Yield the damp curing after demoulding, if it delays the next step."""
        later = {
            scheduled.job.piece
            for scheduled in self._laid
            if scheduled.job.step.phase in ("seal", "pack")
        }
        damp = [
            scheduled
            for scheduled in self._of("finish")
            if scheduled.job.frees
            and scheduled.job.piece in later
            and last_day(scheduled.wait_ends) > last_day(scheduled.ends)
            and not scheduled.job.step.wait_hours
        ]
        for starts, ends in self._waited(damp):
            why = Message("stage-kept-damp", until=self.weekday(ends))
            yield PhaseDays("rack", starts, ends, (why,))

    def _drying(self) -> Iterable[PhaseDays]:
        """Yield the wait before the first coat: for drying, or for the sealer's least age."""
        seals = self._first_coats()
        if not seals:
            finished = [
                scheduled for scheduled in self._of("finish") if scheduled.job.step.wait_hours
            ]
            for starts, ends in self._waited(finished):
                why = Message("stage-dries", until=self.weekday(ends))
                yield PhaseDays("dry", starts, ends, (why,))
            return
        before = {
            scheduled.job.piece: scheduled
            for scheduled in self._laid
            if scheduled.job.step.phase in ("cast", "finish")
        }
        waits = [(before[seal.job.piece], seal) for seal in seals if seal.job.piece in before]
        waits = [(last, seal) for last, seal in waits if seal.ready_at > _done(last)]
        if waits:
            last, seal = max(waits, key=lambda wait: wait[1].ready_at)
            starts, ends = (
                last_day(min(_done(scheduled) for scheduled, _ in waits)),
                last_day(seal.ready_at),
            )
            why = Message("stage-dries", until=self.weekday(ends))
            if seal.ready_at > last.wait_ends:
                days = math.ceil(seal.job.step.age_hours / 24)
                why = Message("stage-ages", days=days, until=self.weekday(ends))
            yield PhaseDays("dry", starts, ends, (why,))

    def _first_coats(self) -> list[ScheduledJob]:
        first: dict[object, ScheduledJob] = {}
        for scheduled in self._of("seal"):
            first.setdefault(scheduled.job.piece, scheduled)
        return list(first.values())

    def _hardening(self) -> Iterable[PhaseDays]:
        for starts, ends in self._waited(self._of("seal")):
            why = Message("stage-hardens", until=self.weekday(ends))
            yield PhaseDays("harden", starts, ends, (why,))

    def _keeping(self) -> Iterable[PhaseDays]:
        """Yield the wait for the age at which a slab can lie on its rests, if it delays it."""
        for starts, ends in self._waited(self._of("pack")):
            why = Message("stage-kept", until=self.weekday(ends))
            yield PhaseDays("harden", starts, ends, (why,))

    @staticmethod
    def _waited(before: Sequence[ScheduledJob]) -> Iterable[tuple[date, date]]:
        """Yield the first and last day of the wait after some jobs, if there is one."""
        waits = [scheduled for scheduled in before if scheduled.wait_ends > scheduled.ends]
        if waits:
            first = last_day(min(wait.ends for wait in waits))
            yield first, last_day(max(wait.wait_ends for wait in waits))

    def shut(self, after: date, last: date) -> tuple[Message, ...]:
        """Return the workshop's closures between two days, as a message."""
        closures = self._workshop.calendar.closures
        return tuple(
            Message("stage-closed", first=self.weekday(c.first), last=self.weekday(c.last))
            for c in closures
            if after <= c.last and c.first <= last
        )

    def weekday(self, day: date) -> Weekday:
        """Return a day as text: Tuesday 8 December, with its year if that is another."""
        return Weekday(day, with_year=day.year != self._today.year)


def _done(scheduled: ScheduledJob) -> int:
    """When hands, or the cover, are done with a piece."""
    return scheduled.wait_ends if scheduled.job.step.phase == "cast" else scheduled.ends
