"""A distance from a side gives openings their place, and an L its reach from the wall."""

from __future__ import annotations

from dataclasses import replace

from ledgerstone.enquiry.ownership.inherited import reaches_out
from ledgerstone.enquiry.places import coordinates
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, Target
from ledgerstone.enquiry.scene.said import Claim, SaidPiece, say
from ledgerstone.enquiry.sentence.measures import Measure


def place(focus: Focus, target: Target, measure: Measure, parsed: ParsedSentence) -> None:
    """Give openings their distance from a side; an L its reach from the wall."""
    claim = focus.assigner.claim(measure, "place", parsed.rank)
    if claim is None:
        return
    if isinstance(target, SaidPiece):
        _reach(focus, target, measure, claim, parsed)
        return
    sides = [measure.side]
    if measure.side == "ends":
        row = coordinates.whole_row(focus.subjects.current(), target or ())
        for opening, side in zip(row, ("left", "right"), strict=False):
            say(opening.claims, side, claim)
        return
    if measure.member is not None and target and measure.member < len(target):
        target = (target[measure.member],)
    else:
        target = coordinates.member_at(target or (), measure, parsed.sizes)
    if measure.side == "corner":
        words = parsed.sentence.words
        sides = [side for side in ("left", "right", "front", "back") if side in words]
    for opening in target or ():
        for side in sides:
            say(opening.claims, f"{side}_edge" if measure.to_edge else side, claim)


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
