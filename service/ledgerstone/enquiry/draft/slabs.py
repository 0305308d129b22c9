"""What a message says becomes a draft order: said, worked out, doubtful and missing."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.draft.entries import Entries, OrderDraft
from ledgerstone.enquiry.draft.openings import draft_cutout
from ledgerstone.enquiry.draft.terms import draft_delivery, draft_look, draft_needed, draft_rests
from ledgerstone.enquiry.scene.said import Claim
from ledgerstone.enquiry.values.pieces import PieceFound
from ledgerstone.json_types import Members
from ledgerstone.order import USES

_SIZES: Final = {
    "rectangle": ("length", "width"),
    "l-shape": ("length", "width"),
    "round": ("diameter",),
    "polygon": ("length", "width"),
}
_WHATS: Final = frozenset({"what_length", "what_width", "what_diameter", "what_thickness"})


def drafted(entries: Entries) -> OrderDraft:
    """Write every slab, then the delivery and the day."""
    for i, piece in enumerate(entries.found.pieces):
        entries.draft.order["slabs"].append(_slab(entries, i, piece))
    _join(entries)
    draft_rests(entries)
    draft_delivery(entries)
    draft_needed(entries)
    return entries.draft


def _slab(entries: Entries, i: int, found: PieceFound) -> Members:
    at, piece = f"/slabs/{i}", found.piece
    name = entries.asking.slab(piece.use, i, len(entries.found.pieces))
    slab: Members = {}
    use = piece.use or "worktop"
    if use in USES:
        slab["use"] = use
        entries.value(f"{at}/use", use, piece.spans[:1], "said" if piece.use else "worked-out")
    if piece.quantity > 1:
        slab["quantity"] = piece.quantity
        entries.value(f"{at}/quantity", piece.quantity, piece.quantity_spans)
    outline = _outline(entries, at, found)
    if outline:
        slab["outline"] = outline
    if "thickness" in found.values:
        slab["thickness"] = entries.length(f"{at}/thickness", found.values["thickness"])
    for doubt in found.doubts:
        _piece_doubt(entries, at, doubt.at, doubt.readings, name)
    _ask_sizes(entries, at, found, name)
    cutouts = [
        draft_cutout(entries, f"{at}/cutouts/{j}", found, opening)
        for j, opening in enumerate(found.openings)
    ]
    if cutouts:
        slab["cutouts"] = cutouts
    slab |= draft_look(entries, at, found)
    return slab


def _join(entries: Entries) -> None:
    """Write where the two legs of an L meet; the side that is not said is asked."""
    scene = entries.found.scene
    if not scene.is_split or len(entries.found.pieces) != 2:
        return
    if scene.turns is None:
        entries.miss("/joins/0", "corner")
        return
    join = join_of(scene.turns.value)
    entries.draft.order["joins"] = [join]
    entries.value("/joins/0", join, scene.turns.spans, "worked-out")


def join_of(side: str) -> Members:
    """Return the join of an L's legs: the shorter one's near end meets the longer one's front."""
    end = {"right": "left", "left": "right"}[side]
    return {"one": {"slab": 0, "side": "front"}, "other": {"slab": 1, "side": end}}


def _outline(entries: Entries, at: str, found: PieceFound) -> Members:
    if not found.kind:
        return {}
    outline: Members = {"kind": found.kind}
    for key in _SIZES[found.kind]:
        if key in found.values:
            outline[key] = entries.length(f"{at}/outline/{key}", found.values[key])
    if found.kind == "polygon":
        outline = _polygon(found)
    if found.kind == "l-shape":
        notch: Members = {}
        corner = found.piece.corner
        if corner is not None:
            notch["corner"] = corner.value
            entries.value(f"{at}/outline/notch/corner", corner.value, corner.spans, "worked-out")
        for key in ("length", "width"):
            if f"notch_{key}" in found.values:
                notch[key] = entries.length(
                    f"{at}/outline/notch/{key}", found.values[f"notch_{key}"]
                )
        if notch:
            outline["notch"] = notch
    entries.value(f"{at}/outline/kind", found.kind, found.piece.spans[:1])
    return outline


def _polygon(found: PieceFound) -> Members:
    points = [
        {axis: claim.text() for axis, claim in zip("xy", point, strict=True)}
        for point in found.points
    ]
    return {"kind": "polygon", "points": points} if points else {}


def _piece_doubt(entries: Entries, at: str, key: str, readings: Sequence[Claim], name: str) -> None:
    place = {"thickness": f"{at}/thickness"}.get(
        key, f"{at}/outline/{key.replace('notch_', 'notch/')}"
    )
    what = entries.asking.say(
        f"what_{key}" if f"what_{key}" in _WHATS else "what_length", slab=name
    )
    entries.doubt(place, what, readings, key="two" if len(readings) > 1 else "about")


def _ask_sizes(entries: Entries, at: str, found: PieceFound, name: str) -> None:
    if entries.found.odd_shape is not None and found.kind == "rectangle":
        entries.miss(f"{at}/outline", "outline", slab=name)
    wanted = _SIZES.get(found.kind, ("length", "width"))
    for key in wanted:
        if key not in found.values and not found.doubted(key):
            entries.miss(f"{at}/outline/{key}", key, slab=name)
    if "thickness" not in found.values and not found.doubted("thickness"):
        entries.miss(f"{at}/thickness", "thickness", slab=name)
    if found.kind == "l-shape":
        if found.piece.corner is None:
            entries.miss(f"{at}/outline/notch/corner", "corner")
        lacking = [key for key in ("notch_length", "notch_width") if key not in found.values]
        if lacking and not any(found.doubted(key) for key in (*lacking, "length", "width")):
            entries.miss(f"{at}/outline/notch/{lacking[0].removeprefix('notch_')}", "legs")
