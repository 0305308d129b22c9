"""A slab told again with one size that differs is one slab, of which that size has two readings."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, SaidOpening, SaidPiece, newest

_KEYS: Final = ("length", "width", "thickness")
# Two readings of one slab differ by no more: 700 and 750. Common practice, no source.
_NEAR: Final = 1.12
_LABELS: Final = frozenset({"", "named", "line"})


def merge_restated(pieces: Sequence[SaidPiece]) -> list[SaidPiece]:
    """Return the slabs without those that only tell one before them again."""
    kept: list[SaidPiece] = []
    for piece in pieces:
        first = next((one for one in kept if _is_told_again(one, piece)), None)
        if first is None:
            kept.append(piece)
        else:
            _merge(first, piece)
    return kept


def _is_told_again(first: SaidPiece, again: SaidPiece) -> bool:
    """Return whether a slab has the sizes of one before it, all but one, and that one nearly."""
    is_bound = again.is_further or again.quantity != first.quantity or bool(again.like)
    is_bound = is_bound or not {first.label, again.label} <= _LABELS
    if is_bound or (again.use and again.use != first.use) or again.called - first.called:
        return False
    ratios = []
    for key in _KEYS:
        one, other = newest(_claims(first, key)), newest(_claims(again, key))
        if len(one) != 1 or len(other) != 1 or one[0].rank != other[0].rank:
            return False
        ratios.append(max(one[0].mm, other[0].mm) / min(one[0].mm, other[0].mm))
    differ = [ratio for ratio in ratios if ratio > 1.0 + 1e-6]
    is_along = "breadth" in again.claims  # a list calls its length a width
    return (len(differ) == 1 and differ[0] <= _NEAR) or (is_along and not differ)


def _claims(piece: SaidPiece, key: str) -> list[Claim]:
    """Return what a slab's size is said to be; "width" beside a depth runs along it."""
    along = piece.claims.get("breadth", []) if piece.claims.get("width") else []
    return piece.claims.get(key) or (along if key == "length" else [])


def _merge(first: SaidPiece, again: SaidPiece) -> None:
    """Add what is told again to what was told first."""
    for piece in (first, again):
        along = _claims(piece, "length")
        if piece.claims.pop("breadth", []) and along:
            piece.claims["length"] = along
    for key, claims in again.claims.items():
        first.claims[key] = [*first.claims.get(key, []), *claims]
    first.spans += again.spans
    for opening in again.openings:
        known = next((one for one in first.openings if _is_same(one, opening)), None)
        if known is None:
            first.openings.append(opening)
        else:
            known.spans += opening.spans


def _is_same(one: SaidOpening, other: SaidOpening) -> bool:
    """Return whether two openings may be one: no size of theirs differs."""
    if other.what not in (one.what, "hole"):
        return False
    return all(
        any(claim.agrees(known) for known in one.claims.get(key, [claim]))
        for key, claims in other.claims.items()
        for claim in claims
    )
