"""An order's slab mirrored left to right, as an oracle."""

from __future__ import annotations

from copy import deepcopy
from typing import Literal

from support.documents import Json

MirrorAxis = Literal["x", "y"]

SIDES: dict[MirrorAxis, dict[str, str]] = {
    "x": {"left": "right", "right": "left"},
    "y": {"front": "back", "back": "front"},
}


def mirrored(slab: Json, axis: MirrorAxis) -> Json:
    """Mirror a slab, its openings and its rests, left and right or front and back.

    It is a rectangle, an L or round.
    """
    made = deepcopy(slab)
    outline, swap = made["outline"], SIDES[axis]
    whole = outline.get("diameter") or outline["length" if axis == "x" else "width"]
    if "notch" in outline:
        corner = outline["notch"]["corner"].split("-")
        outline["notch"]["corner"] = "-".join(swap.get(side, side) for side in corner)
    for opening in made.get("cutouts", []):
        opening["centre"] = _moved(opening["centre"], axis, whole)
    rests = made.get("rests")
    if rests is not None:
        _mirror_rests(rests, axis, whole, swap)
    return made


def _moved(place: Json, axis: MirrorAxis, whole: float) -> Json:
    return {**place, axis: whole - place[axis]}


def _mirror_rests(rests: Json, axis: MirrorAxis, whole: float, swap: dict[str, str]) -> None:
    if "overhang" in rests:
        rests["overhang"] = {swap.get(side, side): by for side, by in rests["overhang"].items()}
    if "units" in rests and axis == "x":
        rests["units"] = rests["units"][::-1]
    if "at" in rests:
        rests["at"] = [_moved(place, axis, whole) for place in rests["at"]]
    if "sides" in rests:
        rests["sides"] = [swap.get(side, side) for side in rests["sides"]]
    for line in rests.get("lines", []):
        for end in ("start", "end"):
            line[end] = _moved(line[end], axis, whole)
