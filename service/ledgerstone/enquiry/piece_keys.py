"""What of a slab a size is, by its words and its place in a group."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.measure import Measure
from ledgerstone.enquiry.scene import SaidPiece

_KEYS: Final = {"long": "length", "deep": "deep", "wide": "wide", "across": "wide"}
UPRIGHT: Final = frozenset({"upstand", "splashback", "end-panel"})


def piece_key(piece: SaidPiece, measure: Measure) -> str:
    """Return what of a slab a size is, by its words and its place in a group."""
    role = measure.role
    if role == "thick" or (measure.place == 3 and not role):
        key = "thickness"
    elif role == "dia" or (role == "across" and piece.shape == "round"):
        key = "diameter"
    elif role in ("radius", "square"):
        key = role
    elif role == "high":
        is_face = not piece.use and measure.place == 2  # "bath panel 1700 x 555 high"
        key = "width" if is_face or piece.use in UPRIGHT else "high"
    elif role in _KEYS or role.startswith("edge:"):
        key = _KEYS.get(role, role)
    elif measure.axis:
        key = {"x": "wide", "y": "deep"}[measure.axis]
    elif measure.of > 1:
        key = "pair"
    else:
        key = "alone" if role in ("", "size") else ""
    return key
