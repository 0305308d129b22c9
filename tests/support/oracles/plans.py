"""Slabs and openings as the order writes them, in mm, and the pieces a slab may be cut into."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace
from itertools import pairwise, product
from typing import Final

import numpy as np

from ledgerstone.quantities import Length
from ledgerstone.workshop import Workshop
from support.documents import Json

Extent = tuple[float, float, float, float]  # left, front, right, back
SIDES: Final = ("left", "front", "right", "back")
_JOINTS_EVERY_MM: Final = 50.0
_SHORTEST_PIECE_MM: Final = 300.0
_PANEL_MM: Final = 18.0


@dataclass(frozen=True, slots=True)
class PlanPart:
    """A rectangle, a disc in its box, or an L: its box less a notch; and which sides are joints."""

    box: Extent
    notch: Extent | None = None
    disc: bool = False
    joints: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Hole:
    """One opening as asked for, the strip that it needs, and the side that it is open to."""

    box: Extent
    clear_mm: float
    open_to: str | None = None

    @property
    def longer_mm(self) -> float:
        """The longer side of its box."""
        x0, y0, x1, y1 = self.box
        return max(x1 - x0, y1 - y0)

    def at(self, dx: float, dy: float) -> Hole:
        """The same, moved."""
        x0, y0, x1, y1 = self.box
        return replace(self, box=(x0 + dx, y0 + dy, x1 + dx, y1 + dy))


# --- reading --------------------------------------------------------------------------------


def _mm(value: object) -> float:
    return Length.parse(value).mm


def read_outline(slab: Json, workshop: Workshop) -> PlanPart:
    """The outline as cast: gaps off at walls, overhangs added over units."""
    told = slab["outline"]
    if told["kind"] == "round":
        across = _mm(told["diameter"])
        return PlanPart((0.0, 0.0, across, across), disc=True)
    length, width = _mm(told["length"]), _mm(told["width"])
    if slab.get("size_from") == "between-walls":
        walls = {k for k, e in slab.get("edges", {}).items() if e.get("profile") == "wall"}
        walls, gap = walls or {"left", "right"}, workshop.shaping.fitting_gap_mm
        length -= gap * len(walls & {"left", "right"})
        width -= gap * len(walls & {"front", "back"})
    elif slab.get("size_from") == "over-units":
        over = {k: _mm(v) for k, v in slab.get("rests", {}).get("overhang", {}).items()}
        length += over.get("left", 0.0) + over.get("right", 0.0)
        width += over.get("front", 0.0) + over.get("back", 0.0)
    box = (0.0, 0.0, length, width)
    if told["kind"] == "rectangle":
        return PlanPart(box)
    notch, corner = told["notch"], told["notch"]["corner"]
    x = 0.0 if "left" in corner else length - _mm(notch["length"])
    y = 0.0 if "front" in corner else width - _mm(notch["width"])
    return PlanPart(box, (x, y, x + _mm(notch["length"]), y + _mm(notch["width"])))


def read_hole(cutout: Json, workshop: Workshop) -> Hole:
    """One opening as its box, with the strip that its rule asks."""
    if cutout["kind"] == "polygon":
        xs, ys = ([_mm(p[axis]) for p in cutout["points"]] for axis in ("x", "y"))
        box = (min(xs), min(ys), max(xs), max(ys))
        longer = max(box[2] - box[0], box[3] - box[1])
    else:
        x, y = _mm(cutout["centre"]["x"]), _mm(cutout["centre"]["y"])
        sizes = [_mm(cutout[name]) for name in ("diameter", "length", "width") if name in cutout]
        turn, longer = math.radians(cutout.get("turn_degrees", 0.0)), max(sizes)
        turn = 0.0 if cutout["kind"] == "circle" else turn
        cos, sin = abs(math.cos(turn)), abs(math.sin(turn))
        half = (sizes[0] * cos + sizes[-1] * sin) / 2, (sizes[0] * sin + sizes[-1] * cos) / 2
        box = (x - half[0], y - half[1], x + half[0], y + half[1])
    rim = cutout.get("rim", "shown")
    rules = workshop.shaping.strips
    fits = (r.stops_mm for r in rules if longer <= r.opening_up_to_mm and r.rim in ("any", rim))
    return Hole(box, next(fits, 0.0), cutout.get("open_to"))


def read_panels(slab: Json, whole: PlanPart) -> list[Extent]:
    """Side panels of units, where the order says which is a basin's or a hob's."""
    rests = slab.get("rests", {})
    units = rests.get("units", [])
    if not any(unit.get("for") in ("basin", "hob") for unit in units):
        return []
    over = {side: _mm(length) for side, length in rests.get("overhang", {}).items()}
    front, back = over.get("front", 0.0), whole.box[3] - over.get("back", 0.0)
    panels, x = [], over.get("left", 0.0)
    for unit in units:
        end = x + _mm(unit["width"])
        if unit.get("for") != "gap":
            panels += [(x, front, x + _PANEL_MM, back), (end - _PANEL_MM, front, end, back)]
        x = end
    return panels


# --- cutting --------------------------------------------------------------------------------


def ways_to_cut(whole: PlanPart, workshop: Workshop) -> Iterable[list[PlanPart]]:
    """Whole where the table takes it; else across in every way, an L from its inside corner too."""
    if whole.notch is None or _castable(whole, workshop):
        yield from _ways(whole, workshop)
        return
    (x0, y0, x1, y1), (nx0, ny0, nx1, ny1) = whole.box, whole.notch
    left, front = nx0 == x0, ny0 == y0
    beside = (nx1, y0, x1, y1) if left else (x0, y0, nx0, y1)  # the arm as deep as the whole
    above = (x0, ny1, x1, y1) if front else (x0, y0, x1, ny0)  # the arm as long as the whole
    across, along = ("left", "right"), ("front", "back")
    for arm, rest, sides in (
        (beside, (nx0, above[1], nx1, above[3]), across if left else across[::-1]),
        (above, (beside[0], ny0, beside[2], ny1), along if front else along[::-1]),
    ):
        ends = (
            PlanPart(arm, joints=frozenset({sides[0]})),
            PlanPart(rest, joints=frozenset({sides[1]})),
        )
        ways = (list(_ways(one, workshop)) for one in ends)
        yield from ([*one, *other] for one, other in product(*ways))


def _castable(piece: PlanPart, workshop: Workshop) -> bool:
    x0, y0, x1, y1 = piece.box
    sizes = sorted((x1 - x0, y1 - y0))
    table = sorted((workshop.table.width_mm, workshop.table.length_mm))
    fits = sizes[0] <= table[0] and sizes[1] <= table[1]
    return fits and sizes[0] >= workshop.shaping.smallest_side_mm


def _ways(piece: PlanPart, workshop: Workshop) -> Iterable[list[PlanPart]]:
    """A piece whole, or cut across its longer axis into as few as the table takes."""
    if _castable(piece, workshop):
        yield [piece]
    if _castable(piece, workshop) or piece.disc:
        return
    x0, y0, x1, y1 = piece.box
    axis = int(y1 - y0 > x1 - x0)
    start, end = (x0, y0)[axis], (x1, y1)[axis]
    count = math.ceil((end - start) / workshop.table.length_mm)
    every = np.arange(start + _SHORTEST_PIECE_MM, end, _JOINTS_EVERY_MM * (count - 1) ** 2)
    for at in product(every, repeat=min(count - 1, 3)):
        stops = list(pairwise([start, *map(float, at), end]))
        pieces = [_between(piece, a, b, axis) for a, b in stops]
        long_enough = all(b - a >= _SHORTEST_PIECE_MM for a, b in stops)
        if long_enough and all(_castable(one, workshop) for one in pieces):
            yield pieces


def _between(piece: PlanPart, a: float, b: float, axis: int) -> PlanPart:
    """The part of a piece between two joints across an axis, or an end of it and a joint."""
    low, high = SIDES[axis], SIDES[axis + 2]
    box = list(piece.box)
    joints = set(piece.joints)
    for at, k, side in ((a, axis, low), (b, axis + 2, high)):
        if at != piece.box[k]:
            box[k] = at
            joints.add(side)
    return PlanPart((box[0], box[1], box[2], box[3]), joints=frozenset(joints))
