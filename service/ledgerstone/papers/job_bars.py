"""Where bars and mesh lie in the mould: equal bars in one row, set out from its left and front."""

from __future__ import annotations

from collections.abc import Sequence

from ledgerstone.message import Figure, Listed, Message, Ruled, Value
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import SheetBlock, table
from ledgerstone.reinforcement import BarRow, even_runs


def bars_table(job: Job, i: int) -> SheetBlock:
    """List bars and mesh of a slab: mark, how many, cut length, and where they lie."""
    steel = job.steel[i]
    over = sum(job.quote.shapes[i].outline.bounds[::2])
    rows = [_row(row, over) for row in steel.rows]
    for piece, (x, y) in zip(steel.mesh, steel.mesh_at_mm, strict=True):
        cut = Message("job-two", one=Ruled(piece.length_mm), other=Ruled(piece.width_mm))
        left = Ruled(over - x - piece.length_mm)
        rows.append([piece.mark, Figure(piece.count, 0), cut, left, Ruled(y), ""])
    columns = (
        Message("job-mark"),
        Message("job-how-many"),
        Message("job-cut-mm"),
        Message("job-from-left"),
        Message("job-from-front"),
        Message("job-cut"),
    )
    return table(columns, rows, (8, 7, 17, 34, 26, 8), right=(1,))


def _row(row: BarRow, over: float) -> list[Value]:
    """Write equal bars: along themselves the stretch, across themselves each one's place.

    ``over`` less a place from the slab's left is that from the mould's, mm.
    """
    bar = row.bars[0]
    left: Value = _stretch(over - bar.start_mm[0], over - bar.end_mm[0])
    front: Value = _stretch(bar.start_mm[1], bar.end_mm[1])
    if row.axis == 0:
        front = _places(row.places_mm)
    elif row.axis == 1:
        left = _places([over - x for x in reversed(row.places_mm)])
    return [row.mark, Figure(len(row.bars), 0), Ruled(bar.length_mm), left, front, ""]


def _stretch(one_mm: float, other_mm: float) -> Message:
    first, last = Ruled(min(one_mm, other_mm)), Ruled(max(one_mm, other_mm))
    return Message("job-stretch", first=first, last=last)


def _places(places_mm: Sequence[float]) -> Listed:
    """List rising places, mm: where they are at one spacing, the first, the last and that."""
    parts: list[Value] = []
    for run in even_runs(places_mm):
        first = Ruled(run.first_mm)
        if run.first == run.last:
            parts.append(first)
        else:
            last, step = Ruled(run.last_mm), Ruled(run.step_mm)
            parts.append(Message("job-places", first=first, last=last, step=step))
    return Listed(tuple(parts), joined="semicolon")
