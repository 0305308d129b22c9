"""Relative positions of joined slabs: turned and set side to side, with backs in line.

An order says which sides meet, not where along a longer side. Worktops stand with their backs to
the walls, so of the two ways to set a short side flush on a long one that is taken in which
neither piece reaches out behind the other.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from shapely import affinity
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.order import Join
from ledgerstone.outline import XY, Side
from ledgerstone.shape import Shape

_SAME_MM: Final = 3.0
_APART: Final = 0.12  # of the larger piece: how far unjoined groups stand from each other


@dataclass(frozen=True, slots=True)
class PlanTransform:
    """How one slab's plane lies in the assembled one: turned about its origin, then moved."""

    turn_degrees: float = 0.0
    move_mm: XY = (0.0, 0.0)

    def of(self, geometry: BaseGeometry) -> BaseGeometry:
        """Return a slab's geometry in the assembled plane."""
        turned = affinity.rotate(geometry, self.turn_degrees, origin=(0.0, 0.0))
        return affinity.translate(turned, *self.move_mm)

    def at(self, point: XY) -> XY:
        """Return a slab's point, mm, in the assembled plane."""
        x, y = self.along(point)
        return x + self.move_mm[0], y + self.move_mm[1]

    def along(self, direction: XY) -> XY:
        """Return a direction of a slab in the assembled plane; its length, a pure number, stays."""
        turn = math.radians(self.turn_degrees)
        (x, y), c, s = direction, math.cos(turn), math.sin(turn)
        return x * c - y * s, x * s + y * c

    def moved(self, by: XY) -> PlanTransform:
        """Return this transform moved by a vector, mm."""
        return PlanTransform(self.turn_degrees, (self.move_mm[0] + by[0], self.move_mm[1] + by[1]))


@dataclass(frozen=True, slots=True)
class DrawnJoin:
    """One drawn join: the line between its two sides."""

    number: int
    join: Join
    line: tuple[XY, XY]


@dataclass(frozen=True, slots=True)
class Assembly:
    """Every slab's transform, the joins that are drawn, and the indices of those that cannot be.

    ``is_whole``: whether the joins connect all slabs.
    """

    stands: tuple[PlanTransform, ...]
    drawn_joins: tuple[DrawnJoin, ...]
    unshown: tuple[int, ...]
    is_whole: bool


def assemble(shapes: Sequence[Shape], joins: Sequence[Join]) -> Assembly:
    """Set slabs together by their joins, and groups that nothing joins side by side."""
    stands: dict[int, PlanTransform] = {}
    right, groups = 0.0, 0
    for first in range(len(shapes)):
        if first in stands:
            continue
        group = _group(first, shapes, joins)
        low_x, _, high_x, high_y = _bounds(group, shapes)
        shift = (right - low_x, -high_y)
        groups += 1
        stands |= {i: stand.moved(shift) for i, stand in group.items()}
        right += (high_x - low_x) + _APART * max(max(s.length_mm, s.width_mm) for s in shapes)
    placed = tuple(stands[i] for i in range(len(shapes)))
    shown = drawn_joins(shapes, joins, placed)
    numbers = {drawn_join.number for drawn_join in shown}
    unshown = tuple(k for k in range(1, len(joins) + 1) if k not in numbers)
    return Assembly(placed, shown, unshown, groups == 1)


def _group(first: int, shapes: Sequence[Shape], joins: Sequence[Join]) -> dict[int, PlanTransform]:
    """Stands of all that is joined to one slab, that slab as it was drawn."""
    stands, added = {first: PlanTransform()}, True
    while added:
        added = False
        for join in joins:
            for here, there in ((join.one, join.other), (join.other, join.one)):
                if here.slab not in stands or there.slab in stands:
                    continue
                sides = (_side(shapes, here.slab, here.side), _side(shapes, there.slab, there.side))
                if sides[0] is None or sides[1] is None:
                    continue
                stands[there.slab] = _beside(
                    (shapes[here.slab], sides[0], stands[here.slab]),
                    (shapes[there.slab], sides[1]),
                    join.gap.mm,
                )
                added = True
    return stands


def _side(shapes: Sequence[Shape], slab: int, name: str) -> Side | None:
    """Return a slab's side where a straight one of that name is; a round rim meets nothing."""
    if slab >= len(shapes):
        return None
    found = next((side for side in shapes[slab].sides if side.name == name), None)
    return found if found is not None and not found.line.is_ring else None


def _beside(
    one: tuple[Shape, Side, PlanTransform], other: tuple[Shape, Side], gap_mm: float
) -> PlanTransform:
    """Stand a slab's side against another's, so that neither reaches out behind the other."""
    shape, side, stand = one
    start, end = (stand.at(point) for point in straight(side, shape))
    ux, uy = _unit(start, end)
    a, b = straight(other[1], other[0])
    vx, vy = _unit(a, b)
    turn = math.degrees(math.atan2(-uy, -ux) - math.atan2(vy, vx))
    turned = PlanTransform(round(turn % 360, 6))
    tries = []
    for mine, its in ((end, turned.along(a)), (start, turned.along(b))):
        corner = (mine[0] + uy * gap_mm, mine[1] - ux * gap_mm)
        tries.append(turned.moved((corner[0] - its[0], corner[1] - its[1])))
    return min(tries, key=lambda tried: _behind((shape, stand), (other[0], tried)))


def straight(side: Side, shape: Shape) -> tuple[XY, XY]:
    """Ends of a side, plane mm, before its corners are rounded, anticlockwise."""
    ends = side.line.coords[0], side.line.coords[-1]
    start, end = (min(shape.corners, key=lambda c: math.dist(c, e)) for e in ends)
    return start, end


def _unit(start: XY, end: XY) -> XY:
    length = math.dist(start, end) or 1.0
    return (end[0] - start[0]) / length, (end[1] - start[1]) / length


def _behind(one: tuple[Shape, PlanTransform], other: tuple[Shape, PlanTransform]) -> float:
    """How far each of two slabs reaches out behind the other's back, in mm, together."""
    total = 0.0
    for (shape, stand), (that_shape, that_stand) in ((one, other), (other, one)):
        bx, by = stand.along((0.0, 1.0))
        back = _most(shape, stand, (bx, by))
        total += max(0.0, _most(that_shape, that_stand, (bx, by)) - back - _SAME_MM)
    return round(total, 3)


def _most(shape: Shape, stand: PlanTransform, way: XY) -> float:
    """How far a slab reaches along a direction."""
    points = (stand.at((p[0], p[1])) for p in shape.outline.exterior.coords)
    return max(x * way[0] + y * way[1] for x, y in points)


def _bounds(
    group: dict[int, PlanTransform], shapes: Sequence[Shape]
) -> tuple[float, float, float, float]:
    boxes = [stand.of(shapes[i].outline).bounds for i, stand in group.items()]
    low_x, low_y, high_x, high_y = zip(*boxes, strict=True)
    return min(low_x), min(low_y), max(high_x), max(high_y)


def drawn_joins(
    shapes: Sequence[Shape], joins: Sequence[Join], stands: Sequence[PlanTransform]
) -> tuple[DrawnJoin, ...]:
    """Return the joins whose sides meet where the slabs stand, numbered from 1."""
    met = (_drawn_join(k, join, shapes, stands) for k, join in enumerate(joins, start=1))
    return tuple(join for join in met if join is not None)


def _drawn_join(
    number: int, join: Join, shapes: Sequence[Shape], stands: Sequence[PlanTransform]
) -> DrawnJoin | None:
    """Return where two sides meet; None if they do not, as when a join closes a ring wrongly."""
    sides = [_side(shapes, end.slab, end.side) for end in (join.one, join.other)]
    if sides[0] is None or sides[1] is None or join.one.slab == join.other.slab:
        return None
    (a, b), (c, d) = (
        tuple(stands[end.slab].at(p) for p in straight(side, shapes[end.slab]))
        for end, side in zip((join.one, join.other), sides, strict=True)
        if side is not None
    )
    ux, uy = _unit(a, b)
    along = [(p[0] - a[0]) * ux + (p[1] - a[1]) * uy for p in (a, b, c, d)]
    away = [(p[0] - a[0]) * uy - (p[1] - a[1]) * ux for p in (c, d)]
    low, high = max(0.0, min(along[2:])), min(along[1], max(along[2:]))
    if high - low < 1.0 or any(abs(far - join.gap.mm) > _SAME_MM for far in away):
        return None
    half = join.gap.mm / 2
    ends = [(a[0] + ux * t + uy * half, a[1] + uy * t - ux * half) for t in (low, high)]
    return DrawnJoin(number, join, (ends[0], ends[1]))


def overlapping(shapes: Sequence[Shape], stands: Sequence[PlanTransform]) -> bool:
    """Return whether two pieces overlap."""
    placed = [stand.of(shape.outline) for shape, stand in zip(shapes, stands, strict=True)]
    return any(
        plane.intersection(placed[i], placed[j]).area > 1.0
        for i in range(len(placed))
        for j in range(i)
        if isinstance(placed[i], Polygon)
    )
