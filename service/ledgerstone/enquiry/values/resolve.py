"""Claims become values: the newest one where they agree, a doubt where two readings remain."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.piece_keys import without_whole
from ledgerstone.enquiry.scene.said import Claim, SaidOpening, SaidOrder, SaidPiece, newest
from ledgerstone.enquiry.scene.size_assigner import worked_out
from ledgerstone.enquiry.shapes.cut_ends import outline_points, tapered_points
from ledgerstone.enquiry.shapes.ovals import oval_points
from ledgerstone.enquiry.values.in_line import level_openings
from ledgerstone.enquiry.values.opening_places import onto_run, place_opening, settle_value
from ledgerstone.enquiry.values.pieces import Doubt, OpeningFound, PieceFound
from ledgerstone.enquiry.values.pieces_instead import without_cut_up
from ledgerstone.enquiry.values.plausible import (
    fit_within,
    give_back_outlines,
    move_openings,
    withhold_arms,
    withhold_impossible,
)
from ledgerstone.enquiry.values.restated import merge_restated
from ledgerstone.enquiry.values.wanted import share_thickness, standing, told_apart

_THIN_MM: Final = 120.0  # what is called so high lying flat is its thickness

_SIDES: Final = ("length", "width", "wide", "breadth")
_BOWLS: Final = frozenset({"basin", "sink"})
_PLACES: Final = frozenset({"left", "right", "front", "back"})
_OUTLETS: Final = frozenset({"waste", "drain"})
_SIDES_TAKEN: Final = frozenset({"length", "width"})


def resolve(scene: SaidOrder) -> list[PieceFound]:
    """Return the pieces with their values; what has no size is left out beside what has."""
    pieces = without_cut_up(merge_restated(standing(scene)))
    for piece in pieces:
        _take_over(piece)
    for piece in pieces:
        for key, claims in scene.common.items():
            if not piece.claims.get(key):
                piece.claims[key] = claims
    if scene.is_split:
        share_thickness(pieces)
    for piece in pieces:
        told_apart(piece, pieces)
        piece.halves = piece.halves if len(pieces) == 1 or piece.label == "named" else ()
    for piece in pieces:
        without_whole(piece)
    give_back_outlines(pieces)
    move_openings(pieces)
    return [_piece(piece) for piece in pieces]


def _take_over(piece: SaidPiece) -> None:
    """Give a piece the sizes that it has in common with another; a round one takes no sides."""
    for key in sorted(piece.like_in - (_SIDES_TAKEN if piece.claims.get("diameter") else set())):
        known = piece.like.claims.get(key) if piece.like is not None else None
        if known and not piece.claims.get(key):
            piece.claims[key] = list(known)


def _piece(piece: SaidPiece) -> PieceFound:
    _change_shape(piece)
    found = PieceFound(piece, _kind(piece))
    claims = dict(piece.claims)
    high = claims.pop("high", [])
    if not claims.get("thickness"):
        claims["thickness"] = [one for one in high if one.mm <= _THIN_MM]
    _settle_wide(claims)
    _settle_edges(found, claims)
    for key in ("length", "width", "diameter", "thickness", "notch_length", "notch_width"):
        settle_value(found.values, found.doubts, key, claims.get(key, []))
    withhold_impossible(piece.use, found.values)
    if found.kind == "round":
        found.values.pop("length", None)
        found.values.pop("width", None)
        found.doubts = [doubt for doubt in found.doubts if doubt.at not in ("length", "width")]
    if piece.halves and "length" in found.values:
        whole = found.values["length"]
        found.values["length"] = worked_out(
            whole.length, whole.mm / 2, [whole, Claim(whole.length, piece.halves)]
        )
        piece.quantity, piece.quantity_spans = 2, piece.halves
    if found.kind == "l-shape":
        withhold_arms(found.values)
        _notch(found, claims)
    _settle_points(found, claims)
    found.openings = [_opening(found, one) for one in _wanted(piece)]
    for made in found.openings:
        onto_run(found, made)
    level_openings(found)
    return found


def _settle_points(found: PieceFound, claims: dict[str, list[Claim]]) -> None:
    """Work out the corners of a slab with a corner cut off, or with ends that differ."""
    length, width = found.values.get("length"), found.values.get("width")
    ends = [newest(claims.get(f"edge:{side}", [])) for side in ("left", "right")]
    if found.kind == "polygon" and length is not None and all(len(end) == 1 for end in ends):
        found.points = tapered_points(length, ends[0][0], ends[1][0])
        return
    if found.piece.shape == "oval" and length is not None and width is not None:
        found.points, found.kind = oval_points(length, width), "polygon"
        return
    is_cut = found.kind == "rectangle" and any(key.startswith("cut:") for key in claims)
    if is_cut and length is not None and width is not None:
        found.points = outline_points(claims, length, width)
        found.kind = "polygon" if found.points else found.kind


def _change_shape(piece: SaidPiece) -> None:
    """Drop the sizes of a shape that a newer message replaced: a rectangle that is to be round."""
    across = [claim.rank for claim in piece.claims.get("diameter", []) if not claim.opinion]
    sides = [claim.rank for key in _SIDES for claim in piece.claims.get(key, [])]
    if not across or not sides or max(across) == max(sides):
        return
    for key in _SIDES if max(across) > max(sides) else ("diameter",):
        piece.claims.pop(key, None)
    piece.shape = "round" if max(across) > max(sides) else piece.shape.replace("round", "")


def _kind(piece: SaidPiece) -> str:
    claims = piece.claims
    if piece.shape == "l-shape":
        return "l-shape"
    sided = any(claims.get(key) for key in ("length", "width", "wide", "breadth"))
    if claims.get("diameter") and not (claims.get("length") and claims.get("width")):
        return "round"
    if sided:
        return "rectangle"
    return "round" if piece.shape == "round" else ""


def _settle_wide(claims: dict[str, list[Claim]]) -> None:
    """Take what was only called wide for whichever of the two sizes is still unsaid."""
    breadth = claims.pop("breadth", [])  # the noun: what a size is beside the length
    if breadth and not claims.get("width"):
        claims["width"] = breadth
    elif breadth and not claims.get("length"):
        claims["length"] = breadth
    wide = claims.pop("wide", [])
    if wide:
        key = "width" if claims.get("length") and not claims.get("width") else "length"
        if not claims.get(key):
            claims[key] = wide


def _settle_edges(found: PieceFound, claims: dict[str, list[Claim]]) -> None:
    """Take the box round a piece from its sides; front and back that differ make no rectangle."""
    for key, sides in (
        ("length", ("edge:front", "edge:back")),
        ("width", ("edge:left", "edge:right")),
    ):
        said = [one for side in sides for one in newest(claims.get(side, []))]
        if said and not claims.get(key):
            claims[key] = [max(said, key=lambda one: one.mm)]
        if len(said) > 1 and not said[0].agrees(said[1]):
            found.kind = "polygon"
        elif said and not found.kind:
            found.kind = "rectangle"


def _notch(found: PieceFound, claims: dict[str, list[Claim]]) -> None:
    """The corner left out is what the legs' depths leave of the outside sizes."""
    for key, outside, leg in (
        ("notch_length", "length", "side_depth"),
        ("notch_width", "width", "back_depth"),
    ):
        depths = newest(claims.get(leg, []))
        whole = found.values.get(outside)
        if (
            key not in found.values
            and len(depths) == 1
            and whole is not None
            and whole.mm > depths[0].mm
        ):
            found.values[key] = worked_out(
                whole.length, whole.mm - depths[0].mm, [whole, depths[0]]
            )
        elif len(depths) > 1:
            found.doubts.append(Doubt(key, depths))


def _wanted(piece: SaidPiece) -> list[SaidOpening]:
    """Leave out what is refused, a bowl that only stands on the slab, a name without a size."""
    kept = []
    for opening in piece.openings:
        if opening.is_refused:
            continue
        sized = opening.has_size()
        stands = (
            opening.rim is not None and opening.rim.value == "covered" and opening.what in _BOWLS
        )
        has_waste = any(other.what in _OUTLETS and other is not opening for other in piece.openings)
        named = opening.what not in ("hole", "post", "bin") and (
            opening.is_asked or opening.rim is not None
        )
        if stands and not sized:
            for other in piece.openings:
                other.rim = other.rim or (opening.rim if other.what in _OUTLETS else None)
        is_placed = bool(opening.centred or _PLACES & opening.claims.keys())
        if stands and has_waste and not (opening.names_hole and is_placed):
            continue  # its size is the bowl's own
        if sized or (not (stands and not opening.names_hole) and named):
            kept.append(opening)
    return kept


def _opening(found: PieceFound, opening: SaidOpening) -> OpeningFound:
    made = OpeningFound(opening, "")
    claims = opening.claims
    for key in ("length", "width", "diameter"):
        settle_value(made.values, made.doubts, key, claims.get(key, []))
    fit_within(found, made)
    length, width = made.values.get("length"), made.values.get("width")
    unsaid = opening.kind == "circle" and "diameter" not in made.values
    if unsaid and length is not None and (width is None or width.agrees(length)):
        made.values["diameter"] = made.values.pop("length")
        made.values.pop("width", None)
    if "length" in made.values and "width" in made.values:
        made.kind = "slot" if opening.kind == "slot" else "rectangle"
        made.values.pop("diameter", None)
        made.doubts = [doubt for doubt in made.doubts if doubt.at != "diameter"]
    elif "diameter" in made.values or any(d.at == "diameter" for d in made.doubts):
        made.kind = "circle"
        made.values.pop("length", None)
        made.values.pop("width", None)
    else:
        made.kind = opening.kind if opening.kind in ("circle", "slot") else ""
    for axis in ("x", "y"):
        place_opening(found, made, axis)
    return made
