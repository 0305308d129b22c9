"""One step of work, and the phases it may belong to."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from ledgerstone.message import Message

# An order's work is in phases here; customers read of stages. So they are called in
# `lead_time.stages` and `operations[].stage` of answers, in the messages named `stage-…`, and on
# the page. In Python a stage is one of a quote's (`stages/`), and the metrics' label `stage` is a
# part of answering (`TIMED_PARTS` of `api/counts.py`).
Phase = Literal["sample", "mould", "cast", "cover", "finish", "dry", "seal", "pack"]
Machine = Literal["mixer", "polisher"]
PHASES: tuple[Phase, ...] = ("sample", "mould", "cast", "cover", "finish", "dry", "seal", "pack")


@dataclass(frozen=True, slots=True)
class Operation:
    """One step of work: hours of hands, hours of machine, then hours of waiting.

    Hours of hands and of machine, and hire, are those of all its pieces together; the rest is each
    piece's own. Pieces share the labour equally, unless ``minutes_each`` gives each one's.

    Attributes
    ----------
    age_hours
        How old the concrete must be, from its pour, before the step begins.
    least_days
        How many working days the step takes however quick the hands are.
    hire
        What gear costs that the workshop has not got.
    pieces
        How many times the step is done.
    people
        The most hands that share it; None is as many as there are.
    machine
        What it takes up while hands are at it.
    min_age_days
        The concrete's age, adjusted to 20 °C, that the wait after the step lasts until; None is
        no such age.
    table_mm
        What it takes up of a casting table, the longer side first.
    unbroken
        It goes on from the step before it, on the same day: concrete does not wait.
    frees
        Its end frees the piece's place on the table, and its mould.
    warm_c
        Temperature of the heated tent that it waits in, °C; None for the workshop's own.
    warm_hours
        For how long the tent does so at least: that much of it counts as damp cover too.
    pauses
        Every other piece has the step, and what comes before it, before any has the next.
    minutes_each
        Whole minutes of hands for each piece, in the order of casting, where it is a share of
        what several pieces take together; they add up to ``hands_hours``.
    """

    name: Message
    phase: Phase
    slab: int | None
    hands_hours: float
    machine_hours: float = 0.0
    wait_hours: float = 0.0
    age_hours: float = 0.0
    least_days: int = 1
    hire: Decimal = Decimal(0)
    pieces: int = 1
    people: int | None = None
    machine: Machine | None = None
    min_age_days: float | None = None
    table_mm: tuple[float, float] = (0.0, 0.0)
    unbroken: bool = False
    frees: bool = False
    warm_c: float | None = None
    warm_hours: float = 0.0
    pauses: bool = False
    minutes_each: tuple[int, ...] = ()

    def minutes_of(self, piece: int) -> int:
        """Whole minutes of hands for one piece, by its number: what the schedule lays."""
        if self.minutes_each:
            return self.minutes_each[piece]
        return minutes(self.hands_hours / self.pieces)

    @property
    def hands_minutes(self) -> int:
        """Whole minutes of hands for all pieces: what is paid, and what the job sheet prints."""
        return sum(self.minutes_each) or self.pieces * self.minutes_of(0)

    @property
    def machine_minutes(self) -> int:
        """Whole minutes of machine for all pieces."""
        return self.pieces * minutes(self.machine_hours / self.pieces)


def minutes(hours: float) -> int:
    """Return hours as whole minutes, the nearest; of two as near the even one."""
    return round(hours * 60)
