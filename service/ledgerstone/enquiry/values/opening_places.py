"""Where an opening is on its slab: distances from the sides, and the middle, as coordinates."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, newest
from ledgerstone.enquiry.scene.size_assigner import worked_out
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.values.pieces import Doubt, OpeningFound, PieceFound

_APART: Final = 24  # characters: places given farther apart in a message are two places
_AXES: Final = {"x": ("left", "right"), "y": ("front", "back")}


def settle_value(
    values: dict[str, Claim], doubts: list[Doubt], key: str, claims: Sequence[Claim]
) -> None:
    """Take the reading of a size that stands, or note which ones remain."""
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


def place_opening(found: PieceFound, made: OpeningFound, axis: str) -> None:
    """Turn distances from the four sides, and the middle, into a coordinate."""
    near, far = _AXES[axis]
    claims = made.opening.claims
    extent = found.extent(axis)
    half = _half(made, axis)
    places, far_off = (
        [_from_edge(_on_slab(claim, extent, half), extent, half) for claim in claims.get(side, [])]
        for side in (near, far)
    )
    for side, listed in ((near, places), (far, far_off)):
        for claim in (_on_slab(claim, extent, None) for claim in claims.get(f"{side}_edge", [])):
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
    loosely = made.opening.loosely_centred
    if not middle and (not places or _is_told_apart(loosely, axis, places)):
        middle = loosely.get(axis) or ()
    if middle and extent is not None:
        rank = max((claim.rank for claim in places), default=(0, 0))
        spans = (*middle, *extent.spans)
        mm = (extent.mm + _before_run(found, axis)) / 2
        places.append(Claim(extent.length.in_unit(mm), spans, rank, how="worked-out"))
    settle_value(made.values, made.doubts, axis, places)
    value = made.values.get(axis)
    if value is not None and extent is not None and not 0 < value.mm < extent.mm:
        del made.values[axis]
        made.doubts.append(Doubt(axis, [value]))


def _is_told_apart(
    loosely: Mapping[str, Sequence[TextSpan]], axis: str, places: Sequence[Claim]
) -> bool:
    """Whether the middle of the slab is told in one place, and a distance in another: both stand.

    "It has to be in the middle of the table. … The hole please 60 cm from the left end."
    """
    middle = list(loosely.get(axis) or ())
    is_of_slab = bool(middle) and middle == list(loosely.get({"x": "y", "y": "x"}[axis]) or ())
    starts = [low for claim in places for low, _ in claim.spans[:1]]
    return is_of_slab and bool(starts) and min(starts) - max(high for _, high in middle) > _APART


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


def _from_edge(claim: Claim, extent: Claim | None, whole: Claim | None) -> Claim:
    """Take a distance that no middle can have for the one to the opening's edge: "60 from front".

    An opening ``whole`` across whose middle lay nearer to a side than half of that would stick out.
    """
    if extent is None or whole is None or claim.mm >= whole.mm / 2:
        return claim
    mm = claim.mm + whole.mm / 2
    if mm + whole.mm / 2 >= extent.mm:
        return claim
    return _ranked(worked_out(claim.length, mm, [claim, whole]), claim)


def _on_slab(claim: Claim, extent: Claim | None, whole: Claim | None) -> Claim:
    """Take a number without a unit for what lies on the slab: "300 from the front" beside 60 cm.

    The middle of an opening ``whole`` across is no nearer to a side than half of that.
    """
    other = claim.elsewhere
    if extent is None or other is None or not 0 < other.mm < extent.mm:
        return claim
    half_mm = whole.mm / 2 if whole is not None else 0.0
    if half_mm <= claim.mm < extent.mm or not half_mm <= other.mm <= extent.mm - half_mm:
        return claim
    return replace(claim, length=other, elsewhere=None)


def onto_run(found: PieceFound, made: OpeningFound) -> None:
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
