"""A slab that later words cut into pieces: "forget the single top, two pieces instead"."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, SaidPiece, newest

_SUM_MM: Final = 1.0  # people add lengths without an error
_HOLE_KEYS: Final = ("length", "width", "diameter", "back")


def without_cut_up(pieces: Sequence[SaidPiece]) -> list[SaidPiece]:
    """Return the slabs without one of an older message that newer ones add up to."""
    whole = next((one for one in pieces if _parts_of(one, pieces)), None)
    if whole is None:
        return list(pieces)
    for part in _parts_of(whole, pieces):
        for key in ("width", "thickness"):
            part.claims.setdefault(key, list(whole.claims.get(key, [])))
        for opening in part.openings:
            known = next((one for one in whole.openings if one.what == opening.what), None)
            for key in _HOLE_KEYS if known is not None and not opening.has_size() else ():
                if known is not None and known.claims.get(key):
                    opening.claims.setdefault(key, list(known.claims[key]))
            opening.kind = opening.kind or (known.kind if known is not None else "")
    return [piece for piece in pieces if piece is not whole]


def _parts_of(whole: SaidPiece, pieces: Sequence[SaidPiece]) -> list[SaidPiece]:
    """Return the slabs of newer words whose lengths add up to an older one's; else none."""
    length = _length(whole)
    if length is None:
        return []
    others = [(one, _length(one)) for one in pieces if one is not whole]
    parts = [
        (one, known)
        for one, known in others
        if known is not None and known.rank > length.rank and one.use in ("", whole.use)
    ]
    total = sum(known.mm for _, known in parts)
    is_sum = len(parts) > 1 and abs(total - length.mm) <= _SUM_MM
    return [one for one, _ in parts] if is_sum else []


def _length(piece: SaidPiece) -> Claim | None:
    said = newest(piece.claims.get("length", []))
    return said[0] if len(said) == 1 else None
