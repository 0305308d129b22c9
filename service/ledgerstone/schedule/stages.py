"""What a customer is told of the work: its stages, each with its days and a reason."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from ledgerstone.schedule.booking import day_at, last_day
from ledgerstone.schedule.jobs import ScheduledJob
from ledgerstone.work import Operation, Stage
from ledgerstone.workshop.records import Workshop

# What each stage of work is called, and why it is there.
WORK: dict[Stage, tuple[str, str]] = {
    "sample": ("Sample tile", "A tile of your shade and finish is cast, for you to see and touch."),
    "mould": ("Making the mould", "The mould is built to your sizes."),
    "cast": ("Casting", "The steel is laid and the concrete is poured."),
    "finish": ("Turning and finishing", "Out of the mould, then trimmed and finished by hand."),
    "seal": ("Sealing", "The sealer goes on, coat by coat."),
    "pack": ("Packing", "Packed so that it travels safely."),
}


_DRYING = "Drying before sealing"


@dataclass(frozen=True, slots=True)
class StageDays:
    """One stage of the work: its name, first and last day, and why, in a customer's words."""

    name: str
    starts: date
    ends: date
    why: str


class StageSummary:
    """Laid work, told as stages. No hours and nobody else's work are told."""

    def __init__(
        self, laid: Sequence[ScheduledJob], loads: int, workshop: Workshop, today: date
    ) -> None:
        self._laid, self._loads, self._workshop, self._today = laid, loads, workshop, today

    def stages(self) -> Iterable[StageDays]:
        """Tell every stage in the order of the work."""
        yield from self._work("sample")
        yield from self._yes()
        yield from self._work("mould")
        yield from self._work("cast")
        yield from self._cover()
        yield from self._rack()
        yield from self._work("finish")
        yield from self._drying()
        yield from self._work("seal")
        yield from self._wait("The sealer hardens", self._of("seal"), "Hardens until")
        yield from self._work("pack")

    def _of(self, stage: Stage) -> list[ScheduledJob]:
        return [one for one in self._laid if one.job.step.stage == stage]

    def _work(self, stage: Stage) -> Iterable[StageDays]:
        mine = [one for one in self._of(stage) if one.people]
        if not mine:
            return
        name, why = WORK[stage]
        if stage == "cast" and self._loads > 1:
            why = f"Cast in {self._loads} turns, as many pieces at once as the casting table holds."
        ready_at = day_at(min(one.ready_at for one in mine))
        ends = last_day(max(one.ends for one in mine))
        starts = day_at(min(one.starts for one in mine))
        yield StageDays(name, starts, ends, why + self.shut(ready_at, ends))

    def _yes(self) -> Iterable[StageDays]:
        """The wait for the tile to dry and travel, and for the customer's yes to it."""
        tiles = self._of("sample")
        if tiles:
            ends = last_day(max(one.wait_ends for one in tiles))
            starts = last_day(min(one.ends for one in tiles))
            why = f"Nothing is cut before you have said yes to it, by {self.day_words(ends)}."
            yield StageDays("Your yes to the tile", starts, ends, why)

    def _cover(self) -> Iterable[StageDays]:
        casts = [one for one in self._of("cast") if one.job.piece.slab is not None]
        if casts:
            month = day_at(min(one.ends for one in casts)).month
            warm = f": {self._workshop.handling.workshop_c[month - 1]:g} °C in the workshop"
            tents = [one.job.step.warm_c for one in casts if one.job.step.warm_c is not None]
            if tents:
                warm = f": {tents[0]:g} °C in the heated tent"
            yield from self._wait("Curing under cover", casts, "Cures under cover until", warm)

    def _rack(self) -> Iterable[StageDays]:
        """The damp cover beyond the mould, where it holds up what is to be done next."""
        later = {one.job.piece for one in self._laid if one.job.step.stage in ("seal", "pack")}
        damp = [
            one
            for one in self._of("finish")
            if one.job.frees
            and one.job.piece in later
            and last_day(one.wait_ends) > last_day(one.ends)
            and not one.job.step.wait_hours
        ]
        yield from self._wait("Damp on the rack", damp, "Kept damp under a sheet until")

    def _drying(self) -> Iterable[StageDays]:
        """From the finish to the first coat: for drying, or for the age that the sealer asks."""
        seals = self._first_coats()
        if not seals:
            finished = [one for one in self._of("finish") if one.job.step.wait_hours]
            yield from self._wait(_DRYING, finished, "Dries until")
            return
        before = {
            one.job.piece: one for one in self._laid if one.job.step.stage in ("cast", "finish")
        }
        waits = [(before[one.job.piece], one) for one in seals if one.job.piece in before]
        waits = [(last, seal) for last, seal in waits if seal.ready_at > _done(last)]
        if waits:
            last, seal = max(waits, key=lambda wait: wait[1].ready_at)
            starts, ends = last_day(min(_done(one) for one, _ in waits)), last_day(seal.ready_at)
            says = "Dries until" if seal.ready_at <= last.wait_ends else _aged(seal.job.step)
            yield StageDays(_DRYING, starts, ends, f"{says} {self.day_words(ends)}.")

    def _first_coats(self) -> list[ScheduledJob]:
        first: dict[object, ScheduledJob] = {}
        for one in self._of("seal"):
            first.setdefault(one.job.piece, one)
        return list(first.values())

    def _wait(
        self, name: str, before: Sequence[ScheduledJob], says: str, because: str = ""
    ) -> Iterable[StageDays]:
        """Tell the wait after some jobs, where there is one."""
        waits = [one for one in before if one.wait_ends > one.ends]
        if waits:
            starts = last_day(min(one.ends for one in waits))
            ends = last_day(max(one.wait_ends for one in waits))
            why = f"{says} {self.day_words(ends)}{because}."
            yield StageDays(name, starts, ends, why)

    def shut(self, after: date, last: date) -> str:
        """Say which of the workshop's own closures fall between two days."""
        closures = self._workshop.calendar.closures
        shut = [c for c in closures if after <= c.last and c.first <= last]
        return "".join(
            f" We are closed from {self.day_words(c.first)} to {self.day_words(c.last)}."
            for c in shut
        )

    def day_words(self, day: date) -> str:
        """Say a day as people do: Tuesday 8 December, with its year where that is another."""
        year = "" if day.year == self._today.year else f" {day.year}"
        return f"{day:%A} {day.day} {day:%B}{year}"


def _done(one: ScheduledJob) -> int:
    """When hands, or the cover, are done with a piece."""
    return one.wait_ends if one.job.step.stage == "cast" else one.ends


def _aged(step: Operation) -> str:
    days = math.ceil(step.age_hours / 24)
    return f"The sealer goes on concrete that is {days} days old: not before"
