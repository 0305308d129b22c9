"""Loads of the casting tables, and the fixed order in which work is done."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from itertools import dropwhile, takewhile, zip_longest

from ledgerstone.work import CastSlab, Operation, Phase, table_loads, tables_for
from ledgerstone.work.loading import Footprint
from ledgerstone.workshop.records import CastingTable


@dataclass(frozen=True, slots=True)
class CastPiece:
    """One piece of a slab: the slab's index (None: the order itself) and its number, from 0."""

    slab: int | None
    number: int


@dataclass(frozen=True, slots=True)
class PendingJob:
    """One step done once: for a piece, or for the order; ``load`` is the table load it is of.

    ``frees`` is set where its end frees the piece's place on the table.
    """

    step: Operation
    piece: CastPiece
    mould: int = 0
    load: int = 0
    frees: bool = False


@dataclass(slots=True)
class Load:
    """Pieces that are cast and leave their moulds together, and the moulds made for them."""

    pieces: list[tuple[CastPiece, int]] = field(default_factory=list)
    new_moulds: list[CastPiece] = field(default_factory=list)
    tables: int = 1


def loads_of(steps: Sequence[Operation], table: CastingTable) -> list[Load]:
    """Share an order's pieces among loads of the casting tables, each as full as it goes.

    A load has no more pieces of one slab than there are moulds of it. A mould that no load needs is
    made before the last one: it is in the list of work.
    """
    slabs = _cast_slabs(steps)
    cast, made = [0] * len(slabs), [0] * len(slabs)
    loads: list[Load] = []
    for counts in table_loads(slabs, table):
        load, boxes = Load(), list[Footprint]()
        for at, (slab, taken) in enumerate(zip(slabs, counts, strict=True)):
            boxes += [slab.table_mm] * taken
            load.pieces += [(CastPiece(slab.slab, cast[at] + k), k) for k in range(taken)]
            load.new_moulds += [CastPiece(slab.slab, k) for k in range(made[at], taken)]
            cast[at], made[at] = cast[at] + taken, max(made[at], taken)
        load.tables = min(tables_for(boxes, table), table.count)
        loads.append(load)
    for at, slab in enumerate(slabs if loads else ()):
        loads[-1].new_moulds += [CastPiece(slab.slab, k) for k in range(made[at], slab.moulds)]
    return loads


def cast_together(steps: Sequence[Operation], table: CastingTable) -> tuple[tuple[int, ...], ...]:
    """Return the pieces of each load, by the index of their slab."""
    return tuple(
        tuple(piece.slab for piece, _ in load.pieces if piece.slab is not None)
        for load in loads_of(steps, table)
    )


def moulds_to_try(steps: Sequence[Operation], table: CastingTable) -> tuple[tuple[int, ...], ...]:
    """Return the numbers of moulds to try for each slab, from one up to all cast at once.

    The fewest first. At once is beside the order's other slabs, so that no mould is made for
    nothing. An order without equal pieces has one way.

    Source
    ------
    Common practice, no source: fewer moulds cost less, more of them are ready sooner.
    """
    every = sorted(_cast_slabs(steps), key=lambda slab: slab.slab)
    of = {casting.slab: 0 for casting in every}
    slabs = [replace(slab, moulds=slab.pieces) for slab in _cast_slabs(steps)]
    for counts in table_loads(slabs, table):
        for slab, count in zip(slabs, counts, strict=True):
            of[slab.slab] = max(of[slab.slab], count)
    return tuple(dict.fromkeys([(1,) * len(every), tuple(of.values())]))


def _cast_slabs(steps: Sequence[Operation]) -> list[CastSlab]:
    """Slabs that are made here, in the sequence of the list: a mould, a cast or a finish."""
    before = ("mould", "cast", "finish")
    made = dict.fromkeys(s.slab for s in steps if s.phase in before and s.slab is not None)
    return [_cast_slab(steps, slab) for slab in made]


def _cast_slab(steps: Sequence[Operation], index: int) -> CastSlab:
    """Read a slab's pieces, moulds and size from its steps."""
    mine = [step for step in steps if step.slab == index]
    moulds = [step.pieces for step in mine if step.phase == "mould"]
    pieces = max(step.pieces for step in mine)
    box = max((step.table_mm for step in mine), default=(0.0, 0.0))
    return CastSlab(index, box, pieces, max(moulds, default=pieces))


def in_order(steps: Sequence[Operation], loads: Sequence[Load]) -> Iterator[PendingJob]:
    """List the jobs in the one order in which they are begun.

    The moulds of a load, then its casting; while it cures the next one's moulds are made and the
    one before is finished; it leaves its moulds before the next is cast. The order's own steps at
    the table are done while it is held: before the first load's pieces, and after the last's. At
    last everything is sealed, coat by coat, and packed.
    """
    plan = _Plan(steps)
    yield from plan.once("sample", "mould")
    for at in range(len(loads) + 1):
        if at == 0:
            yield from plan.moulds(loads, 0)
            continue
        yield from plan.before_casting() if at == 1 else ()
        yield from plan.casts(loads[at - 1], at - 1)
        yield from plan.after_casting(at - 1) if at == len(loads) else ()
        yield from plan.moulds(loads, at)
        if at > 1:
            yield from plan.finishes(loads[at - 2], at - 2)
        yield from plan.demoulds(loads[at - 1], at - 1)
    if loads:
        yield from plan.finishes(loads[-1], len(loads) - 1)
    yield from plan.rounds("seal")
    yield from plan.once("pack")
    yield from plan.rounds("pack")


class _Plan:
    """An order's steps by slab and phase, and the jobs that they make."""

    def __init__(self, steps: Sequence[Operation]) -> None:
        self._steps = steps
        self._of: dict[tuple[int | None, Phase], list[Operation]] = {}
        for step in steps:
            self._of.setdefault((step.slab, step.phase), []).append(step)

    def once(self, *phases: Phase) -> Iterator[PendingJob]:
        """Steps of the order itself, of these phases."""
        for step in self._steps:
            if step.slab is None and step.phase in phases:
                yield PendingJob(step, CastPiece(None, 0))

    def before_casting(self) -> Iterator[PendingJob]:
        """Steps of the order itself at the table, that the list has before every piece's."""
        for step in takewhile(lambda step: step.slab is None, self._casting()):
            yield PendingJob(step, CastPiece(None, 0))

    def after_casting(self, load: int) -> Iterator[PendingJob]:
        """Those that it has after a piece's, once the last load is cast."""
        for step in dropwhile(lambda step: step.slab is None, self._casting()):
            if step.slab is None:
                yield PendingJob(step, CastPiece(None, 0), load=load)

    def _casting(self) -> list[Operation]:
        return [step for step in self._steps if step.phase == "cast"]

    def moulds(self, loads: Sequence[Load], at: int) -> Iterator[PendingJob]:
        """Moulds that a load is the first to need."""
        if at < len(loads):
            yield from _in_rounds(
                [
                    PendingJob(step, piece, piece.number, at)
                    for step in self._of.get((piece.slab, "mould"), ())
                ]
                for piece in loads[at].new_moulds
            )

    def casts(self, load: Load, at: int) -> Iterator[PendingJob]:
        """Pour every piece of a load."""
        for piece, mould in load.pieces:
            for step in self._of.get((piece.slab, "cast"), ()):
                yield PendingJob(step, piece, mould, at)

    def demoulds(self, load: Load, at: int) -> Iterator[PendingJob]:
        """Demould every piece of a load: the steps up to the one that frees its mould."""
        for piece, mould in load.pieces:
            for step in self._finish(piece)[0]:
                yield PendingJob(step, piece, mould, at, frees=step.frees)

    def finishes(self, load: Load, at: int) -> Iterator[PendingJob]:
        """Everything else that a piece's surface needs."""
        yield from _in_rounds(
            [PendingJob(step, piece, mould, at) for step in self._finish(piece)[1]]
            for piece, mould in load.pieces
        )

    def _finish(self, piece: CastPiece) -> tuple[list[Operation], list[Operation]]:
        """Part the finishing of a piece after the step that frees its mould."""
        steps = self._of.get((piece.slab, "finish"), [])
        after = 1 + max((at for at, step in enumerate(steps) if step.frees), default=-1)
        return steps[:after], steps[after:]

    def rounds(self, phase: Phase) -> Iterator[PendingJob]:
        """Do one phase of all pieces, step by step: every first coat before any second."""
        mine = [steps for (slab, of), steps in self._of.items() if of == phase and slab is not None]
        for coats in zip_longest(*mine):
            for step in coats:
                if step is not None:
                    yield from (
                        PendingJob(step, CastPiece(step.slab, k)) for k in range(step.pieces)
                    )


def _in_rounds(each: Iterable[list[PendingJob]]) -> Iterator[PendingJob]:
    """Advance every piece to its next wait before any continues."""
    left = list(each)
    while any(left):
        after = []
        for jobs in left:
            pause = next((k for k, job in enumerate(jobs) if job.step.pauses), len(jobs) - 1)
            yield from jobs[: pause + 1]
            after.append(jobs[pause + 1 :])
        left = after
