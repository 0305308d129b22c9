"""What of a slab a size is, by its words and its place in a group."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, Claims, SaidPiece, newest
from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.order import UPRIGHT_USES

_KEYS: Final = {"long": "length", "deep": "deep", "wide": "wide", "across": "wide"}
_BOTH: Final = 2
_SUM_MM: Final = 1.0  # people multiply without an error
_THINNEST_MM: Final = 80.0  # no slab that lies is as narrow: common practice, no source
_DEEPEST_MM: Final = 750.0  # of a worktop from front to back: common practice, no source
_NEAR: Final = 1.3  # what is said again differs by less: chosen, no source


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
        key = "width" if is_face or piece.use in UPRIGHT_USES else "high"
    elif role in _KEYS or role.startswith("edge:"):
        key = _KEYS.get(role, role)
    elif measure.axis:
        key = {"x": "wide", "y": "deep"}[measure.axis]
    elif measure.of > 1:
        key = "pair"
    else:
        key = "alone" if role in ("", "size") else ""
    return key


def is_round_by(piece: SaidPiece, measure: Measure, roles: set[str]) -> bool:
    """Return whether a table top is round since it is only told how far it is across."""
    is_alone = measure.role == "across" and measure.of == 1 and not roles & {"long", "deep", "wide"}
    return is_alone and piece.use == "table" and not {"length", "width"} & piece.claims.keys()


def told_again(known: Claims, claim: Claim) -> str:
    """Return which of a slab's two sizes "95 wide" says again: the nearer one, if that is near."""
    both = {key: known[key][-1].mm for key in ("length", "width") if known.get(key)}
    if len(both) < _BOTH:
        return ""
    ratios = {key: max(claim.mm, mm) / min(claim.mm, mm) for key, mm in both.items()}
    key = min(ratios, key=lambda one: ratios[one])
    return key if ratios[key] <= _NEAR <= max(ratios.values()) else ""


def is_depth_and_thickness(piece: SaidPiece, first: Claim, second: Claim) -> bool:
    """Return whether a pair can only be a depth and a thickness: "both still 620 x 40"."""
    is_flat = piece.use not in UPRIGHT_USES
    return is_flat and second.mm <= _THINNEST_MM < first.mm <= _DEEPEST_MM


def without_whole(piece: SaidPiece) -> None:
    """Leave out a length that so many slabs make together: "two of 2100, to make 4200"."""
    readings = newest(piece.claims.get("length", []))
    if piece.quantity == 1 or len(readings) < _BOTH:
        return
    shortest = min(readings, key=lambda claim: claim.mm)
    whole = piece.quantity * shortest.mm
    if all(one is shortest or abs(one.mm - whole) <= _SUM_MM for one in readings):
        piece.claims["length"] = [one for one in readings if one is shortest]


def has_sides(piece: SaidPiece, rank: tuple[int, int]) -> bool:
    """Return whether a slab's length and width are told, in no older words: it is not round."""
    sides = [claim.rank for key in ("length", "width") for claim in piece.claims.get(key, [])]
    is_whole = all(piece.claims.get(key) for key in ("length", "width"))
    return is_whole and piece.shape != "round" and max(sides) >= rank


def by_group(pairs: Sequence[Measure]) -> list[list[Measure]]:
    """Return the sizes of each group of sizes apart."""
    return [list(group) for _, group in groupby(pairs, key=lambda one: one.members[0].at)]
