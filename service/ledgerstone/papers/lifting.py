"""Where a slab is held: the two best places along its long side, drawn and in figures."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.containment import Contain
from ledgerstone.drawing import missing_drawing
from ledgerstone.drawing.steel_layer import Layer, draw_steel
from ledgerstone.message import Message, Ruled, Value
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength.grips import best_grips_mm, rail_of
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.wording import Speech

# Units: on a card, 63 mm across or more, its letters are over 9 points.
CARD_WIDE, CARD_TALLEST = 300.0, 110.0


@dataclass(frozen=True, slots=True)
class Holds:
    """Where hands, clamps, a rail and bearers go on one slab, seen from its face.

    Attributes
    ----------
    along_y
        Whether its long side lies along y.
    from_ends_mm
        Of both places, from the end of the long side that is nearer, to 5 mm.
    """

    grips_mm: XY
    along_y: bool
    from_ends_mm: tuple[int, int]
    rail_mm: tuple[XY, XY] | None
    bearers_mm: tuple[int, ...]


def holds_of(shape: Shape, strength: SlabStrength) -> Holds:
    """Return where one slab is held."""
    x0, y0, x1, y1 = shape.outline.bounds
    grips, along_y = best_grips_mm(shape.outline)
    start, end = (y0, y1) if along_y else (x0, x1)
    handled = strength.handled
    has_rail = handled.way.rail and bool(shape.openings)
    return Holds(
        grips,
        along_y,
        (to_5_mm(grips[0] - start), to_5_mm(end - grips[1])),
        rail_of(shape, along_y=along_y) if has_rail else None,
        tuple(to_5_mm(at - start) for at in handled.bearers_mm),
    )


def holds_drawing(
    shape: Shape, holds: Holds, name: Value, speech: Speech, contain: Contain
) -> tuple[str, str]:
    """Draw a slab as its face is seen with the places to hold it, and say what is drawn."""
    words = speech.say(Message("paper-grips-words", name=name))
    layer = Layer(
        (),
        (),
        holds.grips_mm,
        holds.along_y,
        holds.rail_mm,
        speech.say(Message("paper-grip-here")),
        rail_says=speech.say(Message("paper-rail-here")),
    )
    with contain("drawing"):
        return draw_steel(
            shape, layer, title=words, says=words, wide=CARD_WIDE, tallest=CARD_TALLEST
        ), words
    return missing_drawing(speech), words


def held_at(at_mm: float) -> Message:
    """Format a place to hold a slab at: to 5 mm, or to a quarter of an inch."""
    return Message("job-ruled", length=Ruled(at_mm, coarse=True))


def to_5_mm(length_mm: float) -> int:
    """Round a place to grip to the nearest 5 mm."""
    return 5 * round(length_mm / 5)
