"""A slab cut in pieces, as messages: how long they are, and what carries the joins."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ledgerstone.order import LShape, Rectangle, Slab
from ledgerstone.remedies.state import SlabOrigin
from ledgerstone.wording import Listed, Message, Value, cutout_name


def cut_messages(
    sent: Slab, name: Message, pieces: Sequence[tuple[SlabOrigin, Slab]]
) -> Iterator[Message]:
    """State how many pieces a slab is made of, how large they are, and how they are joined."""
    ordered = sorted(pieces, key=lambda piece: piece[0].at_mm)
    sizes, given = _sizes(ordered)
    yield Message("cut-in-pieces", slab=name, count=len(ordered), sizes=Listed(sizes), given=given)
    halved = sorted({k for piece, _ in ordered for k in piece.halved})
    if halved:
        through = Listed(tuple(cutout_name(sent, k) for k in halved))
        yield Message("cut-through", cutouts=through)
    for what in dict.fromkeys(piece.beneath for piece, _ in ordered if piece.beneath):
        yield Message("carry-the-join", carrier=what)


def _sizes(pieces: Sequence[tuple[SlabOrigin, Slab]]) -> tuple[tuple[Value, ...], str]:
    """The pieces' lengths where they are alike in depth, else both sizes of each."""
    outlines = [slab.outline for _, slab in pieces]
    sizes = [(o.length, o.width) for o in outlines if isinstance(o, Rectangle | LShape)]
    if len({str(width) for _, width in sizes}) == 1:
        return tuple(length for length, _ in sizes), "lengths"
    if len({str(length) for length, _ in sizes}) == 1:
        return tuple(width for _, width in sizes), "depths"
    return tuple(
        Message("size-both", length=length, width=width) for length, width in sizes
    ), "both"


def piece_name(name: Message, pieces: Sequence[tuple[SlabOrigin, Slab]], k: int) -> Message:
    """Return the name of a piece by its position in the slab."""
    if len(pieces) == 1:
        return name
    places = sorted(piece.at_mm for piece, _ in pieces)
    at = places.index(pieces[k][0].at_mm)
    along = len({x for x, _ in places}) == len(places)
    if len(pieces) > 2 or not (along or len({y for _, y in places}) == len(places)):
        return Message("piece-numbered", number=at + 1, slab=name)
    place = ("left", "right")[at] if along else ("front", "back")[at]
    return Message("piece-placed", place=place, slab=name)
