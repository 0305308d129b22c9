"""Places for the openings whose place nobody said, and the slab's shape that they must fit."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from shapely.geometry import Polygon, box

from ledgerstone.enquiry.draft.taken import Taken
from ledgerstone.enquiry.scene.said import SaidOpening
from ledgerstone.enquiry.values.pieces import PieceFound
from ledgerstone.json_types import Members
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.siting import PlacedOpening, UnplacedOpening, place_for, wish_for
from ledgerstone.strip_rules import clear_mm, room_for_tap_mm, strips_of
from ledgerstone.workshop.records import StripRule

_BASINS: Final = frozenset({"sink", "basin"})
_SMALL: Final = frozenset({"tap", "soap"})
_CHORDS: Final = 128
_STEP_MM: Final = 5.0  # in which a basin is moved towards the front
_ROUNDED_MM: Final = 1.0  # what a place may move by where it is said in 1 mm, or in 1/16 in


@dataclass(frozen=True, slots=True)
class _Ground:
    """A slab in plan, the workshop's strips, and the length in whose unit places are said."""

    outline: Polygon
    rules: tuple[StripRule, ...]
    like: Length


def site_all(taken: Taken, at: str, found: PieceFound, slab: Members) -> None:
    """Give every opening of a slab a place."""
    cutouts = slab.get("cutouts", [])
    ground = _ground(taken, found, slab)
    placed: dict[int, PlacedOpening] = {}
    waiting = []
    for j, made in enumerate(cutouts):
        if {"x", "y"} <= made.get("centre", {}).keys():
            placed[j] = _sited(made)
        else:
            waiting.append(j)
    waiting.sort(key=lambda j: found.openings[j].opening.what in _SMALL)
    parts = _parts_of_run(found, waiting, cutouts, ground)
    for j in waiting:
        basin = _basin_of(found, j, placed)
        taps = [k for k in waiting if found.openings[k].opening.what in _SMALL and k != j]
        is_basin = found.openings[j].opening.what in _BASINS
        behind_mm = max((_box(cutouts[k])[0] for k in taps), default=0.0) if is_basin else 0.0
        side = found.openings[j].opening.at_side
        known = None if basin is None else placed[basin]
        _level(found, cutouts, j, basin)
        beside = known if found.openings[j].opening.is_beside else None
        is_tap_alone = basin is None and j in parts and found.openings[j].opening.what in _SMALL
        side = side or ("back" if is_tap_alone else "")
        wanted = _wanted(cutouts[j], known, behind_mm, ground.rules, at_side=side)
        if basin is None:
            wanted = replace(wanted, between_mm=parts.get(j))
        if beside is not None:
            wanted = replace(wanted, behind=None, wish_mm=_right_of(beside, wanted, ground.rules))
        place = _place(ground, wanted, list(placed.values()))
        if place is None and basin is not None and _may_move(found.openings[basin].opening):
            others = [one for k, one in placed.items() if k != basin]
            y_mm = _room_behind(ground, placed[basin], wanted, others)
            if y_mm is not None:
                cutouts[basin]["centre"]["y"] = ground.like.like(y_mm).text()
                placed[basin] = _note(taken, f"{at}/cutouts/{basin}", cutouts[basin])
                wanted = replace(wanted, behind=placed[basin])
                place = _place(ground, wanted, list(placed.values()))
        if place is None:
            place = _narrow_place(ground, wanted, list(placed.values()))
        for axis, mm in zip("xy", place, strict=True):
            cutouts[j]["centre"].setdefault(axis, ground.like.like(mm).text())
        placed[j] = _note(taken, f"{at}/cutouts/{j}", cutouts[j])


def _parts_of_run(
    found: PieceFound, waiting: Sequence[int], cutouts: Sequence[Members], ground: _Ground
) -> dict[int, tuple[float, float]]:
    """Return the part of the slab's length, mm, that each of several alike openings has for itself.

    Two basins stand in the middles of its halves, and taps as many as they are in the same parts.
    """
    low, _, high, _ = ground.outline.bounds
    alike: dict[str, list[int]] = {}
    for j in sorted(waiting):
        if "x" not in cutouts[j].get("centre", {}):
            alike.setdefault(found.openings[j].opening.what, []).append(j)
    return {
        j: (low + (high - low) * k / len(same), low + (high - low) * (k + 1) / len(same))
        for same in alike.values()
        for k, j in enumerate(same)
        if len(same) > 1
    }


def _note(taken: Taken, at: str, made: Members) -> PlacedOpening:
    """Note an opening's place as taken, and give the opening there."""
    taken.take_place(at, str(made["label"]), made["centre"])
    return _sited(made)


def _right_of(
    basin: PlacedOpening, tap: UnplacedOpening, rules: Sequence[StripRule]
) -> tuple[float, float]:
    """Return where a tap stands to the right of a basin, on its middle line, mm."""
    apart = max(clear_mm(rules, max(one.length_mm, one.width_mm), one.rim) for one in (basin, tap))
    return basin.x_mm + (basin.length_mm + tap.length_mm) / 2 + apart + _STEP_MM, basin.y_mm


def _may_move(basin: SaidOpening) -> bool:
    """Whether a basin is "in the middle", with no word of how far it is from the front or back."""
    told = basin.centred.get("y") or basin.claims.get("front") or basin.claims.get("back")
    return bool(basin.loosely_centred.get("y")) and not told


def _room_behind(
    ground: _Ground, basin: PlacedOpening, tap: UnplacedOpening, others: Sequence[PlacedOpening]
) -> float | None:
    """Return how far from the front the basin stands whose tap has room behind it, mm.

    It is still about the middle: a tenth of the slab's depth before it at most.

    Source
    ------
    Common practice, no source.
    """
    low_y, high_y = ground.outline.bounds[1], ground.outline.bounds[3]
    for step in range(1, int((high_y - low_y) / 10 / _STEP_MM) + 1):
        moved = replace(basin, y_mm=basin.y_mm - step * _STEP_MM)
        kept = UnplacedOpening(
            basin.length_mm,
            basin.width_mm,
            is_round=basin.is_round,
            rim=basin.rim,
            x_mm=moved.x_mm,
            y_mm=moved.y_mm,
        )
        if _place(ground, kept, others) is None:
            return None
        if _place(ground, replace(tap, behind=moved), [*others, moved]) is not None:
            return moved.y_mm
    return None


def _ground(taken: Taken, found: PieceFound, slab: Members) -> _Ground:
    extent = found.extent("x")
    like = extent.length if extent is not None else Length.of_mm(0)
    return _Ground(outline_of(found, slab), strips_of(taken.workshop), like)


def _basin_of(found: PieceFound, j: int, placed: dict[int, PlacedOpening]) -> int | None:
    """Return the number of the basin that a tap stands behind: of as many as taps, its own."""
    whats = [one.opening.what for one in found.openings]
    basins = sorted((k for k in placed if whats[k] in _BASINS), key=lambda k: placed[k].x_mm)
    if whats[j] not in _SMALL or not basins:
        return None
    taps = [k for k, what in enumerate(whats) if what == whats[j]]
    return basins[taps.index(j)] if len(taps) == len(basins) else basins[-1]


def _level(found: PieceFound, cutouts: Sequence[Members], j: int, basin: int | None) -> None:
    """Set a tap on the centre line of the basin that it is told to stand behind, and no other."""
    tap = found.openings[j].opening
    if basin is not None and tap.level_with is found.openings[basin].opening and tap.offset is None:
        cutouts[j].setdefault("centre", {}).setdefault("x", cutouts[basin]["centre"]["x"])


def _wanted(
    made: Members,
    behind: PlacedOpening | None,
    tap_mm: float,
    rules: Sequence[StripRule],
    *,
    at_side: str,
) -> UnplacedOpening:
    """Say what is to be placed: a basin that a tap stands behind leaves it room."""
    length_mm, width_mm = _box(made)
    centre = made.setdefault("centre", {})
    return UnplacedOpening(
        length_mm,
        width_mm,
        is_round=made["kind"] == "circle",
        rim=made.get("rim", "shown"),
        x_mm=_mm(centre["x"]) if "x" in centre else None,
        y_mm=_mm(centre["y"]) if "y" in centre else None,
        behind=behind,
        at_side=at_side,
        room_behind_mm=room_for_tap_mm(rules, tap_mm) if tap_mm else 0.0,
    )


def _place(ground: _Ground, wanted: UnplacedOpening, others: Sequence[PlacedOpening]) -> XY | None:
    """Return one opening a place where it can be made when its place is rounded too."""
    rules = tuple(
        replace(
            rule,
            stops_mm=rule.stops_mm + _ROUNDED_MM,
            cautions_mm=rule.cautions_mm + _ROUNDED_MM,
        )
        for rule in ground.rules
    )
    return place_for(ground.outline, others, wanted, rules)


def _narrow_place(ground: _Ground, wanted: UnplacedOpening, others: Sequence[PlacedOpening]) -> XY:
    """Return the place nearest to where it can be made: the checks say what it lacks, and why."""
    place = place_for(ground.outline, others, wanted, ground.rules)
    return place if place is not None else wish_for(ground.outline, wanted, ground.rules)


def outline_of(found: PieceFound, slab: Members) -> Polygon:
    """Return a proposed slab in plan, mm."""
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


def _sited(made: Members) -> PlacedOpening:
    is_round, rim = made["kind"] == "circle", str(made.get("rim", "shown"))
    x_mm, y_mm = (_mm(made["centre"][axis]) for axis in "xy")
    return PlacedOpening(x_mm, y_mm, *_box(made), is_round=is_round, rim=rim)


def _mm(text: object) -> float:
    return Length.parse(text).mm
