"""Claims become values: the newest one where they agree, a doubt where two readings remain."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, SaidOpening, SaidOrder, SaidPiece, newest
from ledgerstone.enquiry.scene.size_assigner import worked_out
from ledgerstone.enquiry.shapes.cut_ends import outline_points, tapered_points
from ledgerstone.enquiry.shapes.ovals import oval_points
from ledgerstone.enquiry.values.in_line import level_openings
from ledgerstone.enquiry.values.pieces import Doubt, OpeningFound, PieceFound
from ledgerstone.enquiry.values.plausible import move_openings, withhold_impossible
from ledgerstone.enquiry.values.wanted import share_thickness, standing, told_apart

_THIN_MM: Final = 120.0  # what is called so high lying flat is its thickness
_AXES: Final = {"x": ("left", "right"), "y": ("front", "back")}

_OUTLETS: Final = frozenset({"waste", "drain"})


def resolve(scene: SaidOrder) -> list[PieceFound]:
    """Return the pieces with their values; what has no size is left out beside what has."""
    pieces = standing(scene)
    for piece in pieces:
        for key in sorted(piece.like_in):
            known = piece.like.claims.get(key) if piece.like is not None else None
            if known and not piece.claims.get(key):
                piece.claims[key] = list(known)
    for piece in pieces:
        for key, claims in scene.common.items():
            if not piece.claims.get(key):
                piece.claims[key] = claims
    if scene.is_split:
        share_thickness(pieces)
    for piece in pieces:
        told_apart(piece, pieces)
    move_openings(pieces)
    return [_piece(piece) for piece in pieces]


def _piece(piece: SaidPiece) -> PieceFound:
    found = PieceFound(piece, _kind(piece))
    claims = dict(piece.claims)
    high = claims.pop("high", [])
    if not claims.get("thickness"):
        claims["thickness"] = [one for one in high if one.mm <= _THIN_MM]
    _settle_wide(claims)
    _settle_edges(found, claims)
    for key in ("length", "width", "diameter", "thickness", "notch_length", "notch_width"):
        _value(found.values, found.doubts, key, claims.get(key, []))
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
        _notch(found, claims)
    _settle_points(found, claims)
    found.openings = [_opening(found, one) for one in _wanted(piece)]
    for made in found.openings:
        _onto_run(found, made)
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


def _value(
    values: dict[str, Claim], doubts: list[Doubt], key: str, claims: Sequence[Claim]
) -> None:
    kept = newest(claims)
    if len(kept) == 1:
        one = kept[0]
        if one.opinion:
            doubts.append(Doubt(key, [one]))
            return
        if one.alternative is not None:
            doubts.append(Doubt(key, [one, Claim(one.alternative, one.spans)]))
            return
        values[key] = one
        if one.about:
            doubts.append(Doubt(key, [one]))
    elif kept:
        doubts.append(Doubt(key, kept))


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
            opening.rim is not None and opening.rim.value == "covered" and opening.what == "basin"
        )
        has_waste = any(other.what in _OUTLETS and other is not opening for other in piece.openings)
        named = opening.what not in ("hole", "post", "bin") and (
            opening.is_asked or opening.rim is not None
        )
        if stands and not sized:
            for other in piece.openings:
                other.rim = other.rim or (opening.rim if other.what in _OUTLETS else None)
        if stands and has_waste and not opening.names_hole:
            continue  # its size is the bowl's own
        if sized or (not (stands and not opening.names_hole) and named):
            kept.append(opening)
    return kept


def _opening(found: PieceFound, opening: SaidOpening) -> OpeningFound:
    made = OpeningFound(opening, "")
    claims = opening.claims
    for key in ("length", "width", "diameter"):
        _value(made.values, made.doubts, key, claims.get(key, []))
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
        _place(found, made, axis)
    return made


def _place(found: PieceFound, made: OpeningFound, axis: str) -> None:
    """Turn distances from the four sides, and the middle, into a coordinate."""
    near, far = _AXES[axis]
    claims = made.opening.claims
    extent = found.extent(axis)
    half = _half(made, axis)
    places = [_on_slab(claim, extent) for claim in claims.get(near, [])]
    far_off = [_on_slab(claim, extent) for claim in claims.get(far, [])]
    for side, listed in ((near, places), (far, far_off)):
        for claim in (_on_slab(claim, extent) for claim in claims.get(f"{side}_edge", [])):
            if half is not None:
                reached = worked_out(claim.length, claim.mm + half.mm / 2, [claim, half])
                listed.append(_ranked(reached, claim))
    for claim in far_off:
        if extent is not None and extent.mm > claim.mm:
            turned = worked_out(claim.length, extent.mm - claim.mm, [claim, extent])
            places.append(_ranked(turned, claim))
    middle = made.opening.centred.get(axis) or ()
    if places and _is_of_other_way(made, axis):
        middle = ()
    if not places and not middle:
        middle = made.opening.loosely_centred.get(axis) or ()
    if middle and extent is not None:
        rank = max((claim.rank for claim in places), default=(0, 0))
        spans = (*middle, *extent.spans)
        mm = (extent.mm + _before_run(found, axis)) / 2
        places.append(Claim(extent.length.in_unit(mm), spans, rank, how="worked-out"))
    _value(made.values, made.doubts, axis, places)
    value = made.values.get(axis)
    if value is not None and extent is not None and not 0 < value.mm < extent.mm:
        del made.values[axis]
        made.doubts.append(Doubt(axis, [value]))


def _is_of_other_way(made: OpeningFound, axis: str) -> bool:
    """Return whether the middle is of the other way: "75 from the back edge, in the middle"."""
    opening = made.opening
    other = {"x": "y", "y": "x"}[axis]
    sides = [side for pair in _AXES[other] for side in (pair, f"{pair}_edge")]
    told = any(opening.claims.get(side) for side in sides) or other in opening.centred
    return other in opening.loosely_centred and axis in opening.loosely_centred and not told


def _before_run(found: PieceFound, axis: str) -> float:
    """Give how far before an L's long run its front is, mm: its middle is behind the notch."""
    corner, gone = found.piece.corner, found.values.get("notch_width")
    if found.kind != "l-shape" or axis != "y" or corner is None or gone is None:
        return 0.0
    return gone.mm if corner.value.startswith("front") else 0.0


def _on_slab(claim: Claim, extent: Claim | None) -> Claim:
    """Take a number without a unit for what lies on the slab: "300 from the front" beside 60 cm."""
    other = claim.elsewhere
    if extent is None or other is None or claim.mm < extent.mm or not 0 < other.mm < extent.mm:
        return claim
    return replace(claim, length=other, elsewhere=None)


def _onto_run(found: PieceFound, made: OpeningFound) -> None:
    """Count a place that would lie in an L's notch from the front of the run behind it."""
    corner = found.piece.corner.value if found.piece.corner is not None else ""
    along, across = found.values.get("notch_length"), found.values.get("notch_width")
    x, y, extent = made.values.get("x"), made.values.get("y"), found.extent("x")
    if along is None or across is None or x is None or y is None or extent is None:
        return
    gone = {"front-left": x.mm < along.mm, "front-right": x.mm > extent.mm - along.mm}
    if gone.get(corner) and y.mm < across.mm and made.opening.claims.get("front"):
        made.values["y"] = worked_out(y.length, y.mm + across.mm, [y, across])


def _half(made: OpeningFound, axis: str) -> Claim | None:
    """Return an opening's size along an axis, half of which lies before its middle."""
    return made.values.get("diameter") or made.values.get({"x": "length", "y": "width"}[axis])


def _ranked(claim: Claim, like: Claim) -> Claim:
    return Claim(
        claim.length, claim.spans, like.rank, like.order, like.strong, like.about, "worked-out"
    )
