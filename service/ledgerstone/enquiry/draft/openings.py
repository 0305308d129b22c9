"""Openings of a draft: their sizes and places as said, and what is to be asked of them."""

from __future__ import annotations

from ledgerstone.enquiry.draft.entries import Entries
from ledgerstone.enquiry.values.pieces import OpeningFound, PieceFound
from ledgerstone.json_types import Members


def draft_cutout(entries: Entries, at: str, found: PieceFound, one: OpeningFound) -> Members:
    """Write one opening as far as it was said, and note what is missing."""
    name = entries.asking.opening(one.opening.what)
    made: Members = {"label": one.opening.what}
    if one.opening.oval and one.kind == "rectangle":
        entries.value(f"{at}/kind", "oval", one.opening.oval)  # no kind of the contract's
    elif one.kind:
        made = {"kind": one.kind, **made}
    for key in ("length", "width", "diameter"):
        if key in one.values:
            made[key] = entries.length(f"{at}/{key}", one.values[key])
    centre = {
        key: entries.length(f"{at}/centre/{key}", one.values[key])
        for key in "xy"
        if key in one.values
    }
    if centre:
        made["centre"] = centre
    if one.opening.rim is not None:
        made["rim"] = one.opening.rim.value
        entries.value(f"{at}/rim", one.opening.rim.value, one.opening.rim.spans)
    for doubt in one.doubts:
        place = f"{at}/centre/{doubt.at}" if doubt.at in "xy" else f"{at}/{doubt.at}"
        what = entries.asking.say(
            f"what_{doubt.at}" if doubt.at in "xy" else "what_size", opening=name
        )
        first, *others = doubt.readings
        key = "two" if others else "about" if first.about else "impossible"
        entries.doubt(place, what, doubt.readings, key=key)
    _ask_opening(entries, at, found, one, name)
    return made


def _ask_opening(
    entries: Entries, at: str, found: PieceFound, one: OpeningFound, name: str
) -> None:
    doubted = {doubt.at for doubt in one.doubts}
    if not is_sized(one) and not doubted & {"length", "width", "diameter"}:
        entries.miss(at, "size", opening=name)
    unplaced = [
        axis
        for axis in "xy"
        if axis not in one.values and axis not in doubted and not _waits(found, one, axis)
    ]
    if len(unplaced) == 2:
        entries.miss(f"{at}/centre", "place", opening=name)
    elif unplaced:
        entries.miss(f"{at}/centre/{unplaced[0]}", unplaced[0], opening=name)


def is_sized(found: OpeningFound) -> bool:
    """Return whether an opening's size is known."""
    return "diameter" in found.values or {"length", "width"} <= found.values.keys()


def _waits(found: PieceFound, one: OpeningFound, axis: str) -> bool:
    """Return whether a place was said that only a size of the slab keeps from being known."""
    if found.extent(axis) is not None:
        return False
    sides = {"x": ("right",), "y": ("back",)}[axis]
    opening = one.opening
    return bool(
        axis in opening.centred
        or axis in opening.loosely_centred
        or any(opening.claims.get(side) for side in sides)
    )
