"""Two openings placed in one sentence: so far from the left, so far from the right."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.measures import Measure
from ledgerstone.enquiry.mention import Mention
from ledgerstone.enquiry.scene import Opening, Piece
from ledgerstone.enquiry.sentences import Sentence

_OTHER_SIDE: Final = {"left": "right", "right": "left"}
_DEFINITE: Final = frozenset({"the", "this", "that", "der", "die", "das"})
_BOTH: Final = frozenset({"both", "each", "all", "beide", "jeweils", "je"})


def whole_row(piece: Piece, openings: Sequence[Opening]) -> Sequence[Opening]:
    """Give both of a pair where one of them is in hand."""
    if len(openings) != 1:
        return openings
    alike = [one for one in piece.openings if one.what == openings[0].what]
    return alike if len(alike) == 2 else openings


def member_at(
    openings: tuple[Opening, ...], measure: Measure, sizes: Sequence[Measure]
) -> tuple[Opening, ...]:
    """Give the one of a pair that a distance is of: the left one's from the left end.

    Two distances from opposite ends in one sentence are one each, in the order of the openings.
    """
    if len(openings) != 2 or measure.side not in _OTHER_SIDE:
        return openings
    if not any(one.side == _OTHER_SIDE[measure.side] for one in sizes):
        return openings
    return openings[:1] if measure.side == "left" else openings[1:]


def is_of_both(sentence: Sentence, measure: Measure) -> bool:
    """Whether "both" stands right before a distance: "both 100 from the back"."""
    return bool(_BOTH & set(sentence.words[max(0, measure.at - 2) : measure.at]))


def read_coordinates(sentence: Sentence, sizes: Sequence[Measure]) -> None:
    """Take "at 600 / 440" for a place told like the one before: from the same two sides.

    Without one before it is nobody's: neither a size nor a place.
    """
    told = [one.side for one in sizes if one.side][:2]
    for measure in sizes:
        led = sentence.words[max(0, measure.at - 1) : measure.at]
        if measure.of != 2 or led not in (["at"], ["bei"]):
            continue
        between = {atom.word for atom in sentence.atoms[measure.at : measure.members[1].at]}
        if "/" not in between:
            continue
        for one, side in zip(measure.members, told or ("", ""), strict=False):
            one.side, one.role, one.of, one.place = side, "" if side else "beside", 1, 0
            one.members = []


def led_by_place(sentence: Sentence, found: Sequence[Mention]) -> Mention | None:
    """Give the opening whose place comes before its name: "Behind it, 65 from the back, a tap"."""
    starts = [i for i, _ in sentence.marks("behind") if i <= 1]
    new = [
        one
        for one in found
        if one.kind in ("open", "hole") and not one.preposition and one.determiner not in _DEFINITE
    ]
    return new[0] if starts and len(new) == 1 and not new[0].is_denied else None
