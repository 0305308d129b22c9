"""Which of the slabs spoken of are asked for, how many of each, and what they share."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import NOWHERE, SaidOpening, SaidOrder, SaidPiece
from ledgerstone.order import UPRIGHT_USES

_APART: Final = 30  # characters between an announcement and the first size


def standing(scene: SaidOrder) -> list[SaidPiece]:
    """Return the pieces that are asked for; a thickness said of none of them is of all."""
    pieces = [
        piece
        for piece in scene.pieces
        if piece.use or piece.spans or piece.has_size() or piece.openings
    ]
    if any(piece.has_size() for piece in pieces):
        pieces = [piece for piece in pieces if piece.has_size() or _is_like(piece)]
        outlined = [
            piece
            for piece in pieces
            if {key for key, said in piece.claims.items() if said} - {"thickness"}
            or any(map(_is_wanted, piece.openings))
        ]
        for piece in pieces if outlined else ():
            if piece not in outlined and len(outlined) > 1:
                scene.common.setdefault("thickness", []).extend(piece.claims["thickness"])
        pieces = [one for one in outlined or pieces if not _is_partial(one, outlined)]
    elif any(piece.spans for piece in pieces):  # what only the subject names is left out
        pieces = [piece for piece in pieces if piece.spans]
    return pieces


def _is_like(piece: SaidPiece) -> bool:
    """Return whether a slab is like another but for its holes: "one of them has a hole"."""
    return piece.like is not None and any(map(_is_wanted, piece.openings))


def _is_wanted(opening: SaidOpening) -> bool:
    """Return whether an opening is asked for, and not only asked about."""
    is_told = opening.has_size() or opening.is_asked or opening.rim is not None
    return not opening.is_refused and (is_told or bool(opening.spans))


def _is_partial(piece: SaidPiece, others: Sequence[SaidPiece]) -> bool:
    """Return whether a slab with one size is a whole one of its use mentioned again, and no other.

    "She had the 3 m island; ours is 1.4 m by 40 cm." An upstand may well have only a height.
    """
    known = set(piece.claims) - {"thickness", "high"}
    is_item = bool(piece.label) and piece.label != "named"
    is_named = is_item or bool(piece.like or piece.openings) or piece.use in UPRIGHT_USES
    is_named = is_named or piece.shape == "round" or piece.quantity > 1
    if len(known) > 1 or known & {"diameter"} or is_named:
        return False
    return any(
        other is not piece
        and other.use == piece.use
        and {"length", "width", "thickness"} <= other.claims.keys()
        for other in others
    )


def told_apart(piece: SaidPiece, pieces: Sequence[SaidPiece]) -> None:
    """Take a number that only announced slabs for none of one's own: "two vanity tops: …"."""
    if piece.is_counted:
        return
    alike = [one for one in pieces if one.use in (piece.use, "")]
    spans = [span for listed in piece.claims.values() for one in listed for span in one.spans]
    first = min((span for span in spans if span != NOWHERE), default=NOWHERE)
    announced = bool(piece.quantity_spans) and piece.quantity_spans[0][1] + _APART < first[0]
    others = all(one.quantity == 1 for one in alike if one is not piece)
    announced = announced or bool(
        piece.quantity_spans
        and piece.quantity_spans[0][1] <= first[0]
        and not any(one.spans for one in alike if one is not piece)
    )
    named = [low for low, _ in piece.spans if first != NOWHERE and low < first[0]]
    if piece.quantity_spans and any(low > piece.quantity_spans[0][1] for low in named):
        announced = True  # "two slabs: a worktop 2400 x 600, and an island 1500 x 900"
    if announced and others and piece.quantity == len(alike) > 1:
        piece.quantity, piece.quantity_spans = 1, ()


def share_thickness(pieces: Sequence[SaidPiece]) -> None:
    """Give the legs of one L the thickness that is said of either."""
    said = next(
        (piece.claims["thickness"] for piece in pieces if piece.claims.get("thickness")), None
    )
    for piece in pieces if said else ():
        piece.claims.setdefault("thickness", list(said or ()))
