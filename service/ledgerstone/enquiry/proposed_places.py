"""Places for the openings whose place nobody said, and the slab's shape that they must fit."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

from shapely.geometry import Polygon, box

from ledgerstone.enquiry.entries import Members
from ledgerstone.enquiry.pieces import PieceFound
from ledgerstone.enquiry.taken import Taken
from ledgerstone.quantities import Length
from ledgerstone.siting import Sited, Unsited, place_for, room_for_tap_mm, wish_for
from ledgerstone.workshop.records import StripRule

_BASINS: Final = frozenset({"sink", "basin"})
_SMALL: Final = frozenset({"tap", "soap"})
_CHORDS: Final = 128


def site_all(taken: Taken, at: str, found: PieceFound, slab: Members) -> None:
    """Give every opening of a slab a place."""
    cutouts = slab.get("cutouts", [])
    outline = outline_of(found, slab)
    placed: dict[int, Sited] = {}
    waiting = []
    for j, made in enumerate(cutouts):
        one = _box(made)
        centre = made.get("centre", {})
        if {"x", "y"} <= centre.keys():
            placed[j] = _sited(made, one, _mm(centre["x"]), _mm(centre["y"]))
        else:
            waiting.append(j)
    waiting.sort(key=lambda j: found.openings[j].opening.what in _SMALL)
    for j in waiting:
        known = _known(found, j, placed)
        taps = [k for k in waiting if found.openings[k].opening.what in _SMALL and k != j]
        is_basin = found.openings[j].opening.what in _BASINS
        behind_mm = max((_box(cutouts[k])[0] for k in taps), default=0.0) if is_basin else 0.0
        wanted = _wanted(cutouts[j], known, behind_mm, taken.workshop.shaping.strips)
        placed[j] = _site(
            taken, f"{at}/cutouts/{j}", cutouts[j], wanted, list(placed.values()), on=outline
        )


def _known(found: PieceFound, j: int, placed: dict[int, Sited]) -> Sited | None:
    """Give the basin that a tap stands behind."""
    basins = [placed[k] for k in placed if found.openings[k].opening.what in _BASINS]
    return basins[-1] if found.openings[j].opening.what in _SMALL and basins else None


def _wanted(
    made: Members, behind: Sited | None, tap_mm: float, rules: Sequence[StripRule]
) -> Unsited:
    """Say what is to be placed: a basin that a tap stands behind leaves it room."""
    length_mm, width_mm = _box(made)
    centre = made.setdefault("centre", {})
    return Unsited(
        length_mm,
        width_mm,
        is_round=made["kind"] == "circle",
        rim=made.get("rim", "shown"),
        x_mm=_mm(centre["x"]) if "x" in centre else None,
        y_mm=_mm(centre["y"]) if "y" in centre else None,
        behind=behind,
        room_behind_mm=room_for_tap_mm(rules, tap_mm) if tap_mm else 0.0,
    )


def _site(
    taken: Taken,
    at: str,
    made: Members,
    wanted: Unsited,
    others: Sequence[Sited],
    *,
    on: Polygon,
) -> Sited:
    """Give one opening its place on a slab in plan."""
    outline, rules = on, taken.workshop.shaping.strips
    place = place_for(outline, others, wanted, rules)
    if place is None:  # what is said leaves it no makeable place: the checks say so, and why
        place = wish_for(outline, wanted, rules)
    for axis, mm in zip("xy", place, strict=True):
        made["centre"].setdefault(axis, Length.of_mm(round(mm)).text())
    taken.take_place(at, str(made["label"]), made["centre"])
    size = (wanted.length_mm, wanted.width_mm)
    return _sited(made, size, _mm(made["centre"]["x"]), _mm(made["centre"]["y"]))


def outline_of(found: PieceFound, slab: Members) -> Polygon:
    """Give a proposed slab in plan, mm."""
    outline = slab["outline"]
    if found.kind == "round":
        radius = _mm(outline["diameter"]) / 2
        return Polygon([(radius + x * radius, radius + y * radius) for x, y in _circle()])
    if found.kind == "polygon":
        return Polygon([(_mm(point["x"]), _mm(point["y"])) for point in outline["points"]])
    length, width = _mm(outline["length"]), _mm(outline["width"])
    if found.kind != "l-shape":
        return box(0.0, 0.0, length, width)
    notch = outline["notch"]
    across, deep = _mm(notch["length"]), _mm(notch["width"])
    corners = [(0.0, 0.0), (length - across, 0.0), (length - across, deep), (length, deep)]
    corners += [(length, width), (0.0, width)]  # it leaves out its front-right corner
    if "left" in notch["corner"]:
        corners = [(length - x, y) for x, y in corners]
    if "back" in notch["corner"]:
        corners = [(x, width - y) for x, y in corners]
    return Polygon(corners)


def _circle() -> list[tuple[float, float]]:
    turns = [2 * math.pi * i / _CHORDS for i in range(_CHORDS)]
    return [(math.cos(turn), math.sin(turn)) for turn in turns]


def _box(made: Members) -> tuple[float, float]:
    if made["kind"] == "circle":
        return _mm(made["diameter"]), _mm(made["diameter"])
    return _mm(made["length"]), _mm(made["width"])


def _sited(made: Members, size: tuple[float, float], x_mm: float, y_mm: float) -> Sited:
    is_round, rim = made["kind"] == "circle", str(made.get("rim", "shown"))
    return Sited(x_mm, y_mm, size[0], size[1], is_round=is_round, rim=rim)


def _mm(text: object) -> float:
    return Length.parse(text).mm
