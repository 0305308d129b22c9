"""What cannot be as it was read: openings that only another slab has room for, slabs too narrow."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, SaidOpening, SaidPiece, newest
from ledgerstone.enquiry.values.pieces import Doubt, OpeningFound, PieceFound

_FLAT: Final = frozenset({"worktop", "table", "hearth", "bench"})
_NARROWEST_MM: Final = 100.0  # of a slab that something stands on: common practice, no source
_SHORTEST_MM: Final = 150.0
_SHORTEST_L_MM: Final = 700.0  # an L's outside size is more than an arm's depth: no source
_LONGEST_HOLE_MM: Final = 1000.0
_NARROWEST_HOLE_MM: Final = 15.0
_ALONG: Final = {"left": "length", "right": "length", "front": "width", "back": "width"}


def move_openings(pieces: Sequence[SaidPiece]) -> None:
    """Move each opening that its slab has no room for to the one slab that has it."""
    for piece in pieces if len(pieces) > 1 else ():
        for opening in list(piece.openings):
            if not _is_placed(opening) or not _is_known(piece) or _has_room(piece, opening):
                continue
            others = [one for one in pieces if one is not piece and _has_room(one, opening)]
            if len(others) == 1:
                piece.openings = [one for one in piece.openings if one is not opening]
                others[0].openings.append(opening)


def _is_known(piece: SaidPiece) -> bool:
    """Return whether a slab's length and width are known, so that something may not fit."""
    return _known(piece, "length") is not None and _known(piece, "width") is not None


def _is_placed(opening: SaidOpening) -> bool:
    return any(opening.claims.get(side) for side in _ALONG)


def _has_room(piece: SaidPiece, opening: SaidOpening) -> bool:
    """Return whether an opening's place and sizes lie on a slab whose sizes are known."""
    for side, key in _ALONG.items():
        extent = _known(piece, key)
        for claim in newest(opening.claims.get(side, [])):
            if extent is None or claim.mm >= extent:
                return False
    return all(
        extent is None or size is None or size < extent
        for extent, size in (
            (_known(piece, "length"), _size(opening, "length")),
            (_known(piece, "width"), _size(opening, "width")),
        )
    )


def _known(piece: SaidPiece, key: str) -> float | None:
    claims = newest(piece.claims.get(key, [])) or newest(piece.claims.get("diameter", []))
    return claims[0].mm if len(claims) == 1 else None


def _size(opening: SaidOpening, key: str) -> float | None:
    claims = newest(opening.claims.get(key, [])) or newest(opening.claims.get("diameter", []))
    return claims[0].mm if len(claims) == 1 else None


def give_back_outlines(pieces: Sequence[SaidPiece]) -> None:
    """Give a slab without an outline the two sizes that its opening took and that no opening has.

    "A top for our brick barbecue, so 1200 x 750": no hole that goes into a slab is so long.
    """
    for piece in pieces:
        if piece.claims.get("length") or piece.claims.get("width") or piece.claims.get("diameter"):
            continue
        for opening in piece.openings:
            length = _size(opening, "length")
            if length is None or length < _LONGEST_HOLE_MM:
                continue
            if not (opening.claims.get("length") and opening.claims.get("width")):
                continue
            if opening.names_hole and not opening.claims.get("diameter"):
                continue  # what is round besides has taken the slab's two sizes
            for key in ("length", "width"):
                piece.claims[key] = opening.claims.pop(key)
            break


def fit_within(found: PieceFound, made: OpeningFound) -> None:
    """Turn an opening that fits its slab the other way alone; withhold one that fits neither way.

    What is larger than the slab is of something else, so that its size is asked.
    """
    values = made.values
    along, across = found.extent("x"), found.extent("y")
    length, width = values.get("length"), values.get("width")
    if along is None or across is None or length is None or width is None:
        return
    if length.mm < along.mm and width.mm < across.mm:
        return
    if width.mm < along.mm and length.mm < across.mm:
        values["length"], values["width"] = width, length
        return
    smaller = [one.elsewhere for one in (length, width)]
    if all(one is not None and one.mm >= _NARROWEST_HOLE_MM for one in smaller):
        bare = zip(("length", "width"), (length, width), smaller, strict=True)
        fits = {k: replace(one, length=mm, elsewhere=None) for k, one, mm in bare if mm is not None}
        if fits["length"].mm < along.mm and fits["width"].mm < across.mm:
            values |= fits  # "90 x 90" is no 90 cm on a slab 64 cm deep
            return
    for key in ("length", "width"):
        made.doubts.append(Doubt(key, [values.pop(key)]))


def withhold_impossible(use: str, values: dict[str, Claim]) -> None:
    """Withhold the sizes of a slab that something stands on and that is too narrow to be one."""
    length, width = values.get("length"), values.get("width")
    if use not in _FLAT or width is None:
        return
    if width.mm < _NARROWEST_MM or (length is not None and length.mm < _SHORTEST_MM):
        for key in ("length", "width", "thickness"):
            values.pop(key, None)


def withhold_arms(values: dict[str, Claim]) -> None:
    """Withhold an L's outside sizes where one is no more than the depth of an arm: it is asked."""
    sides = [values[key] for key in ("length", "width") if key in values]
    if any(one.mm < _SHORTEST_L_MM for one in sides):
        for key in ("length", "width"):
            values.pop(key, None)
