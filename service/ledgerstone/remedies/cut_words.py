"""A slab cut in pieces, in the customer's words: how long they are, and what carries the joins."""

from __future__ import annotations

from collections.abc import Sequence

from ledgerstone.order import LShape, Rectangle, Slab
from ledgerstone.remedies.state import Piece
from ledgerstone.wording import cutout_words, listed

_COUNTS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight")
_BENEATH = {
    "rail": "Fit a rail across the unit beneath each side of the join.",
    "legs": "Stand both sides of the join on two more legs.",
    "bearer": "Carry both sides of the join on a bearer.",
}


def cut_sentence(sent: Slab, name: str, pieces: Sequence[tuple[Piece, Slab]]) -> str:
    """Say how many pieces a slab is made of, how large they are, and how they are joined."""
    ordered = sorted(pieces, key=lambda one: one[0].at_mm)
    count = _COUNTS[len(ordered)]
    join = "a join between them" if len(ordered) == 2 else "joins between them"
    says = [f"Make {name} of {count} pieces, {_sizes(ordered)}, with {join}."]
    halved = sorted({k for piece, _ in ordered for k in piece.halved})
    if halved:
        names = " and ".join(cutout_words(sent, k) for k in halved)
        says.append(f"It runs through the middle of {names}.")
    beneath = dict.fromkeys(piece.beneath for piece, _ in ordered if piece.beneath)
    return " ".join([*says, *(_BENEATH[what] for what in beneath)])


def _sizes(pieces: Sequence[tuple[Piece, Slab]]) -> str:
    """The pieces' lengths where they are alike in depth, else both sizes of each."""
    sizes = [
        (str(outline.length), str(outline.width))
        for _, slab in pieces
        for outline in [slab.outline]
        if isinstance(outline, Rectangle | LShape)
    ]
    if len({width for _, width in sizes}) == 1:
        return f"{listed([length for length, _ in sizes])} long"
    if len({length for length, _ in sizes}) == 1:
        return f"{listed([width for _, width in sizes])} deep"
    return listed([f"{length} by {width}" for length, width in sizes])


def piece_words(name: str, pieces: Sequence[tuple[Piece, Slab]], k: int) -> str:
    """Name one piece of a slab by where it lies in it."""
    if len(pieces) == 1:
        return name
    places = sorted(piece.at_mm for piece, _ in pieces)
    at = places.index(pieces[k][0].at_mm)
    along = len({x for x, _ in places}) == len(places)
    if len(pieces) > 2 or not (along or len({y for _, y in places}) == len(places)):
        return f"piece {at + 1} of {name}"
    return f"the {(('left', 'right') if along else ('front', 'back'))[at]} piece of {name}"
