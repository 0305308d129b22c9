"""What is cast at once: slabs in one canonical sequence, shared among loads of the tables."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from ledgerstone.order import Order
from ledgerstone.shape import Shape
from ledgerstone.workshop.records import CastingTable, Workshop

Footprint = tuple[float, float]


@dataclass(frozen=True, slots=True)
class CastSlab:
    """One slab as it is cast: what a piece takes of a table, its pieces and its moulds."""

    slab: int
    table_mm: Footprint
    pieces: int
    moulds: int


def casting_sequence(order: Order, shapes: Sequence[Shape]) -> tuple[int, ...]:
    """Return slab indices from the largest slab on.

    The sequence knows slabs by what they are alone, so that loads, pours and their price are the
    same however the order lists them.
    """

    def key(i: int) -> tuple[float, float, float, str]:
        slab, shape = order.slabs[i], shapes[i]
        long, short = sorted((shape.length_mm, shape.width_mm), reverse=True)
        return -long, -short, -shape.thickness_mm, repr(replace(slab, label=""))

    if len(shapes) == 1:
        return (0,)
    return tuple(sorted(range(len(shapes)), key=key))


def on_table_mm(shape: Shape, workshop: Workshop) -> Footprint:
    """Return what one piece takes of a table, mm: its box and its mould, the longer side first.

    Source
    ------
    Geometry; the mould's margin all round is the profile's ``boards.margin_mm``.
    """
    x0, y0, x1, y1 = shape.outline.bounds
    margin = 2 * workshop.boards.margin_mm
    return max(x1 - x0, y1 - y0) + margin, min(x1 - x0, y1 - y0) + margin


def tables_for(boxes: Sequence[Footprint], table: CastingTable) -> int:
    """Return how many tables pieces lie on, laid in rows along each table, the deepest rows first.

    Plain rows, not the best packing: what they say fits does fit. A piece that is longer than a
    table has one to itself: its size has been looked at before.

    Source
    ------
    Shelves, first fit by decreasing depth: common practice, no source.
    """
    rows: list[list[float]] = []  # [depth, length still free]
    lain = [(long, table.width_mm if long > table.length_mm else deep) for long, deep in boxes]
    for length, depth in sorted(lain, key=lambda box: (-box[1], -box[0])):
        row = next((row for row in rows if row[1] >= length and row[0] >= depth), None)
        if row is None:
            row = [depth, table.length_mm]
            rows.append(row)
        row[1] -= length
    free: list[float] = []  # width still free on each table
    for depth, _ in rows:
        at = next((k for k, width in enumerate(free) if width >= depth), None)
        if at is None:
            free.append(table.width_mm - depth)
        else:
            free[at] -= depth
    return len(free)


def table_loads(slabs: Sequence[CastSlab], table: CastingTable) -> tuple[tuple[int, ...], ...]:
    """Share slabs among loads of the tables, each as full as it goes, in the sequence given.

    Returns
    -------
    tuple of tuple of int
        Of each load, how many pieces of each slab: no more than there are moulds of it.
    """
    left = [slab.pieces for slab in slabs]
    loads: list[tuple[int, ...]] = []
    while any(left):
        boxes: list[Footprint] = []
        counts: list[int] = []
        for slab, pieces in zip(slabs, left, strict=True):
            counts.append(_taken(slab.table_mm, min(pieces, slab.moulds), boxes, table))
            boxes += [slab.table_mm] * counts[-1]
        left = [n - k for n, k in zip(left, counts, strict=True)]
        loads.append(tuple(counts))
    return tuple(loads)


def _taken(box: Footprint, most: int, boxes: Sequence[Footprint], table: CastingTable) -> int:
    """Count the pieces that go beside those already there; the first of all always does."""
    taken = 0
    while taken < most and (
        tables_for([*boxes, *[box] * (taken + 1)], table) <= table.count or not (boxes or taken)
    ):
        taken += 1
    return taken
