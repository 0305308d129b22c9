"""The rows about each piece and each join under the assembled plan."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ledgerstone.drawing.frame import SMALL, leading_length, shown
from ledgerstone.drawing.handedness import piece_name
from ledgerstone.drawing.joining import Assembly, overlapping
from ledgerstone.drawing.lettering import fitted
from ledgerstone.drawing.saying import side_named
from ledgerstone.order import Join, Slab
from ledgerstone.shape import Shape
from ledgerstone.wording import Message


def letter(number: int) -> str:
    """Letter of a join: the first is a."""
    return chr(ord("a") + (number - 1) % 26)


def rows_of(
    slabs: Sequence[Slab], shapes: Sequence[Shape], assembly: Assembly
) -> Iterator[tuple[str, Message]]:
    """Yield the row of each piece and each join, with its number, letter or mark."""
    for i, slab in enumerate(slabs):
        yield str(i + 1), _piece_row(slab, i, shapes[i])
    for drawn_join in assembly.drawn_joins:
        yield letter(drawn_join.number), _join_row(drawn_join.join, slabs)
    for k in assembly.unshown:
        yield "!", Message("together-unshown", letter=letter(k))
    if overlapping(shapes, assembly.stands):
        yield "!", Message("together-overlap")
    if assembly.drawn_joins:
        yield "", Message("together-backs")


def _piece_row(slab: Slab, i: int, shape: Shape) -> Message:
    like = leading_length(slab)
    name = fitted(slab.label, 300, SMALL) if slab.label else Message("slab-numbered", number=i + 1)
    return Message(
        "together-piece",
        name=name,
        count=slab.quantity,
        length=shown(like, shape.length_mm),
        width=shown(like, shape.width_mm),
        thickness=slab.thickness,
    )


def _join_row(join: Join, slabs: Sequence[Slab]) -> Message:
    return Message(
        "together-join",
        one=side_named(join.one.side),
        piece=piece_name(slabs, join.one.slab),
        other=side_named(join.other.side),
        that=piece_name(slabs, join.other.slab),
        gap=join.gap,
    )
