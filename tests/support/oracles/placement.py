"""Whether a slab has room for its openings: a search on a grid of places, and of joints.

It knows the limits that the workshop publishes and nothing of how a remedy is found. Every opening
keeps its size and its turn; it may be set down anywhere on a grid of 20 mm, or hard against what
limits it, a tap together with its basin; a slab larger than the table may be cut across, an L from
its inside corner. There is room where every strip is as wide as the workshop's rule asks, joints
are 100 mm clear of openings, and nothing large lies over the side of a unit that is reported.

Openings are taken as their boxes, slabs as rectangles, discs or L's with sharp corners. What it
finds is room; what it does not find within ``MAX_TRIALS`` placements a cut is called none, so
that it errs towards none.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import product
from typing import Final

import numpy as np
from numpy.typing import NDArray

from ledgerstone.workshop import Workshop
from support.documents import Json
from support.oracles.plans import (
    SIDES,
    Extent,
    Hole,
    PlanPart,
    read_hole,
    read_outline,
    read_panels,
    ways_to_cut,
)

PlacePoints = NDArray[np.float64]
GRID_MM: Final = 20.0
JOINT_CLEAR_MM: Final = 100.0
MAX_TRIALS: Final = 300
_NEAR_MM: Final = 250.0  # a small hole so near to a bowl is its tap
_SMALL_MM: Final = 60.0

Group = list[Hole]  # a bowl with its taps, or one opening alone


def room(order: Json, workshop: Workshop) -> str:
    """Say why there is no room on some slab of an order; nothing if every slab has room."""
    return next(filter(None, (no_room(slab, workshop) for slab in order["slabs"])), "")


def no_room(slab: Json, workshop: Workshop) -> str:
    """Say why one slab has no room for what it is to hold; nothing if it has."""
    whole = read_outline(slab, workshop)
    groups = groups_of([read_hole(cutout, workshop) for cutout in slab.get("cutouts", [])])
    panels = read_panels(slab, whole)
    ways = list(ways_to_cut(whole, workshop))
    if not ways:
        return "no way to cut it for the table"
    if any(_placed(groups, pieces, panels) for pieces in ways):
        return ""
    alone = all(any(_placed([one], pieces, panels) for pieces in ways) for one in groups)
    return "too crowded" if alone else "an opening that fits nowhere"


def groups_of(holes: Sequence[Hole]) -> list[Group]:
    """Put each small hole to the bowl that it stands beside; the largest groups come first."""
    groups = [[hole] for hole in holes if hole.longer_mm > _SMALL_MM]
    bowls = list(groups)
    for hole in holes:
        if hole.longer_mm > _SMALL_MM:
            continue
        near = [g for g in bowls if _apart_mm(g[0], hole) < _NEAR_MM and hole.open_to is None]
        if near:
            min(near, key=lambda g: _apart_mm(g[0], hole)).append(hole)
        else:
            groups.append([hole])
    return sorted(groups, key=lambda g: -g[0].longer_mm)


def _apart_mm(one: Hole, other: Hole) -> float:
    a, b = one.box, other.box
    return math.hypot(max(a[0] - b[2], b[0] - a[2], 0.0), max(a[1] - b[3], b[1] - a[3], 0.0))


# --- placing --------------------------------------------------------------------------------


def _placed(groups: Sequence[Group], pieces: Sequence[PlanPart], panels: Sequence[Extent]) -> bool:
    """Return whether all groups can be placed on the pieces, each in a place of its own."""
    choices = [_choices(group, pieces, panels) for group in groups]
    trials = iter(range(MAX_TRIALS))
    return all(len(each) for each in choices) and _fits(groups, choices, trials)


def _fits(groups: Sequence[Group], choices: list[PlacePoints], trials: Iterable[int]) -> bool:
    if not groups:
        return True
    for place, _ in zip(choices[0], trials, strict=False):
        left = [
            each[_clear(groups[0], place, other, each)]
            for other, each in zip(groups[1:], choices[1:], strict=True)
        ]
        if all(len(each) for each in left) and _fits(groups[1:], left, trials):
            return True
    return False


def _clear(
    group: Group, place: PlacePoints, other: Group, choices: PlacePoints
) -> NDArray[np.bool_]:
    """Which places of another group, shape ``(n, holes, 4)``, are clear of one where it was put."""
    good = np.ones(len(choices), bool)
    for hole, here in zip(group, place, strict=True):
        for k, theirs in enumerate(other):
            b = choices[:, k]
            dx = np.maximum(np.maximum(here[0] - b[:, 2], b[:, 0] - here[2]), 0.0)
            dy = np.maximum(np.maximum(here[1] - b[:, 3], b[:, 1] - here[3]), 0.0)
            good &= np.hypot(dx, dy) >= min(hole.clear_mm, theirs.clear_mm)
    return good


def _choices(group: Group, pieces: Sequence[PlanPart], panels: Sequence[Extent]) -> PlacePoints:
    """Every place of a group on a grid where the slab lets it be, shape ``(n, holes, 4)``."""
    found = np.empty((0, len(group), 4))
    for arranged in _arrangements(group):
        boxes = np.array([hole.box for hole in arranged])
        for piece in pieces:
            moves = _moves(arranged[0], piece)
            places = boxes[None] + np.tile(moves, 2)[:, None, :]
            good = np.ones(len(places), bool)
            for k, hole in enumerate(arranged):
                good &= _allowed(hole, places[:, k], piece, panels)
            found = np.concatenate([found, places[good]])
        if len(found):
            break  # as asked, if that can be; else the taps put elsewhere beside their bowl
    return found


def _moves(hole: Hole, piece: PlanPart) -> PlacePoints:
    steps = []
    for axis in (0, 1):
        own, low, high = hole.box[axis], piece.box[axis], piece.box[axis + 2]
        size = hole.box[axis + 2] - own
        least = low + _clear_of_side(hole, piece, SIDES[axis])
        most = high - size - _clear_of_side(hole, piece, SIDES[axis + 2])
        steps.append(np.append(np.arange(least, max(least, most), GRID_MM), [most]) - own)
    return np.array(list(product(*steps)))


def _clear_of_side(hole: Hole, piece: PlanPart, side: str) -> float:
    if side == hole.open_to:
        return 0.0
    return JOINT_CLEAR_MM if side in piece.joints else hole.clear_mm


def _allowed(
    hole: Hole, places: PlacePoints, piece: PlanPart, panels: Sequence[Extent]
) -> NDArray[np.bool_]:
    """Where a hole keeps its strip from every side, notch and joint, and is clear of panels."""
    good = np.ones(len(places), bool)
    for k, side in enumerate(SIDES):
        clear = _clear_of_side(hole, piece, side) - 1e-6
        inward = places[:, k] - piece.box[k] if k < 2 else piece.box[k] - places[:, k]
        good &= inward >= clear
    if piece.notch is not None:
        good &= ~_meets(places, piece.notch, hole.clear_mm)
    if piece.disc:
        radius = (piece.box[2] - piece.box[0]) / 2
        far = np.maximum(np.abs(places[:, :2] - radius), np.abs(places[:, 2:] - radius))
        good &= np.hypot(far[:, 0], far[:, 1]) <= radius - hole.clear_mm
    if hole.longer_mm > _SMALL_MM:
        for panel in panels:
            good &= ~_meets(places, panel, 0.0)
    return good


def _meets(places: PlacePoints, box: Extent, within_mm: float) -> NDArray[np.bool_]:
    """Which boxes come nearer to another than so far along both axes."""
    x = (places[:, 0] < box[2] + within_mm) & (places[:, 2] > box[0] - within_mm)
    y = (places[:, 1] < box[3] + within_mm) & (places[:, 3] > box[1] - within_mm)
    return np.asarray(x & y)


def _arrangements(group: Group) -> Iterable[Group]:
    """The group as asked where its own strips do; else with its taps about its bowl."""
    bowl, *taps = group
    if all(_apart_mm(bowl, tap) >= min(bowl.clear_mm, tap.clear_mm) for tap in taps):
        yield group
    (x0, y0, x1, y1) = bowl.box
    for dx, dy in ((0, 1), (1, 1), (-1, 1), (1, 0), (-1, 0)):
        made = [bowl]
        for k, tap in enumerate(taps):
            half = tap.longer_mm / 2 + min(bowl.clear_mm, tap.clear_mm)
            x = (x0 + x1) / 2 + dx * ((x1 - x0) / 2 + half * (dy == 0)) + 100.0 * k
            y = y1 + half if dy else (y0 + y1) / 2
            centre = (tap.box[0] + tap.box[2]) / 2, (tap.box[1] + tap.box[3]) / 2
            made.append(tap.at(x - centre[0], y - centre[1]))
        yield made
