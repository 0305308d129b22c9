"""Which dimension of an opening a size gives, and which way the opening lies."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, SaidOpening
from ledgerstone.enquiry.scene.subjects import ROUND_HOLES
from ledgerstone.enquiry.sentence.measures import Measure

_NO_SIZES: Final = frozenset({"behind", "radius", "thick", "apart", "quantity", "beside", "square"})


def opening_key(
    opening: SaidOpening, measure: Measure, roles: set[str], measures: Sequence[Measure]
) -> str:
    """Return the dimension that a size gives; the first bare one of two runs along the slab."""
    role = measure.role
    if measure.place > 2 or role in _NO_SIZES:
        return ""
    is_across = role in ("deep", "high") or measure.axis == "y"
    is_along = role in ("wide", "long") or measure.axis == "x"
    is_second = bool(opening.claims.get("length")) and not opening.claims.get("width")
    if role == "across" and measure.of == 1 and is_second:
        key = "width"  # "450 along and 310 across"
    elif role == "dia" or (role == "across" and measure.of == 1):
        key = "diameter"
    elif is_across or (role == "wide" and ("long" in roles or is_second)):
        key = "width"
    elif is_along or measure.of > 1:
        key = "length" if is_along or measure.place == 1 else "width"
    else:
        key = "diameter" if _is_bore(opening, measure, measures) else ""
    return key


def _is_bore(opening: SaidOpening, measure: Measure, measures: Sequence[Measure]) -> bool:
    """Return whether a size without a word is a round hole's."""
    if any(measure.of > 1 for measure in measures) or "length" in opening.claims:
        return False
    if any(one.role == "dia" for one in measures if one is not measure):
        return False
    size = measure.size
    is_whole = size.amount.denominator == 1 and not size.has_fraction
    is_count = size.unit is None and size.amount < 8 and is_whole
    is_hole = opening.what in ROUND_HOLES or opening.kind == "circle" or opening.names_hole
    return is_hole and not is_count


def turn(opening: SaidOpening, claim: Claim, axis: str) -> None:
    """Lay an opening so that the size spoken of runs along the slab, or from front to back."""
    key = "length" if axis == "x" else "width"
    if any(claim.agrees(one) for one in opening.claims.get(key, [])):
        return
    length, width = opening.claims.get("length", []), opening.claims.get("width", [])
    opening.claims["length"], opening.claims["width"] = width, length


def longest_along(opening: SaidOpening, axis: str) -> None:
    """Lay an opening with its long side along the slab, or from front to back."""
    length, width = opening.claims.get("length", []), opening.claims.get("width", [])
    if length and width:
        is_along = length[-1].mm >= width[-1].mm
        if is_along != (axis == "x"):
            opening.claims["length"], opening.claims["width"] = width, length
