"""Which of the slabs spoken of are asked for, how many of each, and what they share."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene import NOWHERE, SaidOrder, SaidPiece

_APART: Final = 30  # characters between an announcement and the first size


def standing(scene: SaidOrder) -> list[SaidPiece]:
    """Return the pieces that are asked for; a thickness said of none of them is of all."""
    pieces = [one for one in scene.pieces if one.use or one.spans or one.has_size() or one.openings]
    if any(one.has_size() for one in pieces):
        pieces = [one for one in pieces if one.has_size()]
        outlined = [one for one in pieces if one.openings or set(one.claims) - {"thickness"}]
        for one in pieces if outlined else ():
            if one not in outlined and len(outlined) > 1:
                scene.common.setdefault("thickness", []).extend(one.claims["thickness"])
        pieces = outlined or pieces
    elif any(one.spans for one in pieces):  # what only the subject names is left out
        pieces = [one for one in pieces if one.spans]
    return pieces


def told_apart(piece: SaidPiece, pieces: Sequence[SaidPiece]) -> None:
    """Take a number that only announced slabs for none of one's own: "two vanity tops: …"."""
    alike = [one for one in pieces if one.use == piece.use]
    spans = [span for listed in piece.claims.values() for one in listed for span in one.spans]
    first = min((span for span in spans if span != NOWHERE), default=NOWHERE)
    announced = bool(piece.quantity_spans) and piece.quantity_spans[0][1] + _APART < first[0]
    others = all(one.quantity == 1 for one in alike if one is not piece)
    announced = announced or bool(
        piece.quantity_spans
        and piece.quantity_spans[0][1] <= first[0]
        and not any(one.spans for one in alike if one is not piece)
    )
    if announced and others and piece.quantity == len(alike) > 1:
        piece.quantity, piece.quantity_spans = 1, ()


def share_thickness(pieces: Sequence[SaidPiece]) -> None:
    """Give the legs of one L the thickness that is said of either."""
    said = next((one.claims["thickness"] for one in pieces if one.claims.get("thickness")), None)
    for piece in pieces if said else ():
        piece.claims.setdefault("thickness", list(said or ()))
