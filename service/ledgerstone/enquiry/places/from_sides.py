"""A distance from a side gives openings their place, and an L its reach from the wall."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from ledgerstone.enquiry.ownership.inherited import reaches_out
from ledgerstone.enquiry.places import coordinates
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, Target
from ledgerstone.enquiry.scene.said import Claim, SaidOpening, SaidPiece, newest, say
from ledgerstone.enquiry.sentence.measures import Measure

_OPPOSITE: Final = {"left": "right", "right": "left", "front": "back", "back": "front"}
_WHICH: Final = frozenset({"the", "that", "die", "diese"})
_PAIR: Final = 2
_FOUR: Final = 4
_CORNERS: Final = frozenset({"corner", "corners", "ecke", "ecken"})


def place(focus: Focus, target: Target, measure: Measure, parsed: ParsedSentence) -> None:
    """Give openings their distance from a side; an L its reach from the wall."""
    claim = focus.assigner.claim(measure, "place", parsed.rank)
    if claim is None:
        return
    if isinstance(target, SaidPiece):
        _reach(focus, target, measure, claim, parsed)
        return
    if measure.side == "ends":
        row = coordinates.whole_row(focus.subjects.current(), target or ())
        for i, opening in enumerate(row if len(row) in (1, _PAIR, _FOUR) else ()):
            say(opening.claims, ("left", "right")[i % 2], claim)
    elif len(target or ()) == _FOUR and _at_corners(measure, parsed):
        _place_corners(target or (), measure, claim)
    else:
        _from_side(focus, target or (), measure, claim, parsed)


def _from_side(
    focus: Focus,
    target: tuple[SaidOpening, ...],
    measure: Measure,
    claim: Claim,
    parsed: ParsedSentence,
) -> None:
    """Give openings their distance from one side, or from both sides of a corner."""
    sides = [measure.side]
    if measure.member is not None and target and measure.member < len(target):
        target = (target[measure.member],)
    else:
        target = coordinates.member_at(target, measure, parsed.sizes)
    if measure.side == "corner":
        words = parsed.sentence.words
        sides = [side for side in ("left", "right", "front", "back") if side in words]
    turned = _turned(focus, measure, claim, parsed)
    if turned is not None:
        turned.claims[_OPPOSITE[measure.side]] = []
        target = (turned,)
    for opening in target:
        for side in sides:
            say(opening.claims, f"{side}_edge" if measure.to_edge else side, claim)


def _turned(
    focus: Focus, measure: Measure, claim: Claim, parsed: ParsedSentence
) -> SaidOpening | None:
    """Return the opening whose distance from the other side is meant: "the 430 is from the right".

    What only tells why, "the waste comes up on the other side", is then no opening of its own.
    """
    led = parsed.sentence.words[max(0, measure.at - 1) : measure.at]
    piece = focus.subjects.piece
    if piece is None or measure.side not in _OPPOSITE or not _WHICH & set(led):
        return None
    other = _OPPOSITE[measure.side]
    known = [
        opening
        for opening in piece.openings
        if any(one.mm == claim.mm for one in newest(opening.claims.get(other, [])))
    ]
    if len(known) != 1:
        return None
    starts = parsed.sentence.atoms[0].start
    piece.openings = [
        one
        for one in piece.openings
        if one is known[0] or any(one.claims.values()) or not _is_begun(one, starts)
    ]
    return known[0]


def _is_begun(opening: SaidOpening, start: int) -> bool:
    """Return whether an opening was named first from a place in the text on."""
    return bool(opening.spans) and min(low for low, _ in opening.spans) >= start


def _at_corners(measure: Measure, parsed: ParsedSentence) -> bool:
    """Return whether four holes are told at once: one in each corner, or so far from two sides."""
    words = parsed.sentence.words
    end = measure.cue[1] if measure.cue is not None else measure.at + 1
    is_each = measure.side == "corner" and bool(_CORNERS & set(words))
    both = set(words[max(0, end - 2) : end + 2])
    return is_each or {"front", "back"} <= both or {"vorn", "hinten"} <= both


def _place_corners(row: tuple[SaidOpening, ...], measure: Measure, claim: Claim) -> None:
    """Give each of four holes its distance: the front two first, and of each two the left one."""
    along = measure.side == "corner"
    for i, opening in enumerate(row):
        if along:
            say(opening.claims, ("left", "right")[i % 2], claim)
        say(opening.claims, "front" if i < _PAIR else "back", claim)


def _reach(
    focus: Focus, piece: SaidPiece, measure: Measure, claim: Claim, parsed: ParsedSentence
) -> None:
    """Take how far a slab reaches from a wall."""
    if measure.side == "back" and focus.leg == "side":
        say(piece.claims, "width", claim)
    elif measure.side in ("left", "right") and focus.leg == "back":
        say(piece.claims, "length", claim)
    elif measure.side == "back" and reaches_out(parsed.sentence, measure):
        focus.assigner.piece(piece, [replace(measure, side="", role="deep")], parsed.rank)
