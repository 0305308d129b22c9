"""The hand of an L, in words that name the point of view."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from ledgerstone.drawing.joining import Assembly, assemble
from ledgerstone.drawing.saying import hand_of_l
from ledgerstone.order import Join, LShape, Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.wording import Message

_SQUARE_DEGREES: Final = 1.0


def handedness(
    slabs: Sequence[Slab], shapes: Sequence[Shape], assembly: Assembly, joins: Sequence[Join]
) -> Iterator[Message]:
    """State how each join sets its pieces, and to which hand each L goes."""
    for i, slab in enumerate(slabs):
        if isinstance(slab.outline, LShape):
            hand = hand_of_l(slab.outline)
            yield Message("together-hand", piece=piece_name(slabs, i), hand=hand)
    yield from (message for _, message in _meetings(slabs, shapes, assembly, joins))


def meetings_of(
    slab: int, slabs: Sequence[Slab], shapes: Sequence[Shape], joins: Sequence[Join]
) -> Iterator[Message]:
    """State how one slab lies against each that it is joined to: its plan shows it by itself."""
    for ends, message in _meetings(slabs, shapes, assemble(shapes, joins), joins):
        if slab in ends:
            yield message


def _meetings(
    slabs: Sequence[Slab], shapes: Sequence[Shape], assembly: Assembly, joins: Sequence[Join]
) -> Iterator[tuple[tuple[int, int], Message]]:
    """Yield the two slabs of each join that is drawn, and how it sets them."""
    for drawn_join in assembly.drawn_joins:
        one, other = joins[drawn_join.number - 1].one.slab, joins[drawn_join.number - 1].other.slab
        way, side = _way(one, other, shapes, assembly)
        name, that = piece_name(slabs, other), piece_name(slabs, one)
        message = Message("together-meeting", piece=name, that=that, way=way, side=side)
        yield (one, other), message


def _way(one: int, other: int, shapes: Sequence[Shape], assembly: Assembly) -> tuple[str, str]:
    """State where the second piece of a join goes, as one stands at the front of the first."""
    stand = assembly.stands[one]
    turn = (assembly.stands[other].turn_degrees - stand.turn_degrees) % 360
    here, there = (_middle(i, shapes, assembly) for i in (one, other))
    dx, dy = there[0] - here[0], there[1] - here[1]
    right, away = (stand.along(way) for way in ((1.0, 0.0), (0.0, 1.0)))
    across, back = dx * right[0] + dy * right[1], dx * away[0] + dy * away[1]
    side = "right" if across > 0 else "left"
    if abs((turn + 180) % 360 - 180) < _SQUARE_DEGREES:
        if abs(back) > abs(across):
            return "behind" if back > 0 else "before", side
        return "along", side
    if min(abs(turn - 90), abs(turn - 270)) < _SQUARE_DEGREES:
        return "back" if back > 0 else "forward", side
    return "beside", side


def _middle(i: int, shapes: Sequence[Shape], assembly: Assembly) -> XY:
    x0, y0, x1, y1 = assembly.stands[i].of(shapes[i].outline).bounds
    return (x0 + x1) / 2, (y0 + y1) / 2


def piece_name(slabs: Sequence[Slab], i: int) -> Message:
    """Name a piece by its label where no other has it, else by its number."""
    label = slabs[i].label
    if label and sum(slab.label == label for slab in slabs) == 1:
        return Message("slab-labelled", label=label)
    return Message("slab-numbered", number=i + 1)
