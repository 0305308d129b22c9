"""Which way round an L goes, in words that say from where it is seen."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.drawing.joining import Assembly
from ledgerstone.drawing.saying import hand_of_l
from ledgerstone.order import Join, LShape, Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.wording import capital

_SQUARE_DEGREES: Final = 1.0


def hand_sentences(
    slabs: Sequence[Slab], shapes: Sequence[Shape], assembly: Assembly, joins: Sequence[Join]
) -> list[str]:
    """Say how each join sets its pieces, and to which hand each L goes."""
    said = [
        f"{capital(piece_name(slabs, i))}: {hand_of_l(slab.outline)}."
        for i, slab in enumerate(slabs)
        if isinstance(slab.outline, LShape)
    ]
    for meeting in assembly.meetings:
        one, other = joins[meeting.number - 1].one.slab, joins[meeting.number - 1].other.slab
        said.append(_sentence(one, other, slabs, shapes, assembly))
    return said


def _sentence(
    one: int, other: int, slabs: Sequence[Slab], shapes: Sequence[Shape], assembly: Assembly
) -> str:
    """Say where the second piece of a join goes, as one stands at the front of the first."""
    stand = assembly.stands[one]
    turn = (assembly.stands[other].turn_degrees - stand.turn_degrees) % 360
    here, there = (_middle(i, shapes, assembly) for i in (one, other))
    dx, dy = there[0] - here[0], there[1] - here[1]
    right, away = (stand.along(way) for way in ((1.0, 0.0), (0.0, 1.0)))
    across, back = dx * right[0] + dy * right[1], dx * away[0] + dy * away[1]
    hand = "right" if across > 0 else "left"
    name, that = capital(piece_name(slabs, other)), piece_name(slabs, one)
    seen = f"as you stand at the front of {that}"
    if abs((turn + 180) % 360 - 180) < _SQUARE_DEGREES:
        if abs(back) > abs(across):
            return f"{name} stands {'behind' if back > 0 else 'before'} {that}, {seen}."
        return f"{name} carries on to the {hand} of {that}, {seen}."
    if min(abs(turn - 90), abs(turn - 270)) < _SQUARE_DEGREES:
        way = "goes back" if back > 0 else "comes forward"
        return f"{name} {way} on the {hand} of {that}, {seen}."
    return f"{name} stands on the {hand} of {that}, {seen}."


def _middle(i: int, shapes: Sequence[Shape], assembly: Assembly) -> XY:
    x0, y0, x1, y1 = assembly.stands[i].of(shapes[i].outline).bounds
    return (x0 + x1) / 2, (y0 + y1) / 2


def piece_name(slabs: Sequence[Slab], i: int) -> str:
    """Name a piece by its label where no other has it, else by its number."""
    label = slabs[i].label
    alone = label and sum(slab.label == label for slab in slabs) == 1
    return f"“{label}”" if alone else f"slab {i + 1}"
