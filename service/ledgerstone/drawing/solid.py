"""The slab as a solid: which of its faces are seen, in what order, and how each is lit.

Every upright face that turns to the eye runs from left to right, so a run of such faces is one
ribbon that never covers itself. Ribbons are painted from the farthest to the nearest, what is
seen down an opening with the opening's own ribbon, and the top last: nothing stands above it.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
import shapely

from ledgerstone.drawing.camera import brightness, facing, seen
from ledgerstone.order import Edge, Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape

_ARRIS_MM = 1.5
_ROUND_STEPS = 4
_MANY = 260  # stretches of an outline
_ON_SIDE_MM = 0.05


@dataclass(frozen=True, slots=True)
class Face:
    """One upright face: its ends from left to right as seen, its top and foot, its light."""

    start: XY
    end: XY
    top_mm: float
    foot_mm: float
    light: float


@dataclass(frozen=True, slots=True)
class Ribbon:
    """A run of faces that meet, from left to right; ``hole`` names the opening it stands in."""

    faces: tuple[Face, ...]
    hole: int | None = None

    def places(self) -> list[XY]:
        """Return the ends of its faces, as (across, away) in mm."""
        return [*(seen(face.start) for face in self.faces), seen(self.faces[-1].end)]


@dataclass(frozen=True, slots=True)
class Worked:
    """How the edge over one stretch of a ring is worked: its size and its profile's steps.

    ``steps`` holds (share of the size inwards, share of the size down) from the face to the top.
    """

    size_mm: float
    steps: tuple[XY, ...]


_PLAIN = Worked(0.0, ((0.0, 0.0),))


def worked(edge: Edge | None, thickness_mm: float, stretches: int = 0) -> Worked:
    """Say how an edge meets the top: sharp at a wall, eased, bevelled or rounded elsewhere.

    On an outline of very many ``stretches`` it is left sharp, to keep the picture light.
    """
    if stretches > _MANY or (edge is not None and edge.profile == "wall"):
        return _PLAIN
    if edge is None or edge.profile == "square" or edge.size is None:
        return Worked(_ARRIS_MM, ((0.0, 1.0), (1.0, 0.0)))
    size = min(edge.size.mm, thickness_mm * 0.98)
    if edge.profile == "bevel":
        return Worked(size, ((0.0, 1.0), (1.0, 0.0)))
    turns = [math.pi / 2 * i / _ROUND_STEPS for i in range(_ROUND_STEPS + 1)]
    return Worked(size, tuple((1 - math.cos(a), 1 - math.sin(a)) for a in turns))


@dataclass(frozen=True, slots=True)
class Ring:
    """A closed course with concrete on its left, and how the edge over each stretch is worked."""

    points: tuple[XY, ...]
    edges: tuple[Worked, ...]

    def normals(self) -> list[XY]:
        """Unit normals out of the concrete, one a stretch."""
        normals = []
        for (x0, y0), (x1, y1) in self.stretches():
            length = math.hypot(x1 - x0, y1 - y0) or 1.0
            normals.append(((y1 - y0) / length, (x0 - x1) / length))
        return normals

    def stretches(self) -> Iterator[tuple[XY, XY]]:
        """Ends of each stretch."""
        return zip(self.points, self.points[1:] + self.points[:1], strict=True)

    def inset(self, at: Sequence[float]) -> list[XY]:
        """Points of the ring with each stretch moved inwards by its own distance, mitred."""
        normals = self.normals()
        return [
            _mitre(point, normals[i - 1], at[i - 1], normals[i], at[i])
            for i, point in enumerate(self.points)
        ]


def _mitre(point: XY, before: XY, by_before: float, after: XY, by_after: float) -> XY:
    """Where two lines through a point meet once each has moved inwards."""
    turn = before[0] * after[1] - before[1] * after[0]
    if abs(turn) < 0.02:
        by = (by_before + by_after) / 2
        return point[0] - after[0] * by, point[1] - after[1] * by
    x = (by_after * before[1] - by_before * after[1]) / turn
    y = (by_before * after[0] - by_after * before[0]) / turn
    return point[0] + x, point[1] + y


def ring_of(points: Sequence[Sequence[float]], slab: Slab, shape: Shape) -> Ring:
    """Make a ring of an outline's points, each stretch worked as the side it lies on."""
    ring = tuple((float(p[0]), float(p[1])) for p in points)
    at = np.array(ring)
    middles = shapely.points((at + np.roll(at, -1, axis=0)) / 2)
    tree = shapely.STRtree([side.line for side in shape.sides])
    nearest = tree.nearest(middles)
    how_far = shapely.distance(middles, tree.geometries.take(nearest))
    by_side = [
        worked(slab.edges.get(side.name), shape.thickness_mm, len(ring)) for side in shape.sides
    ]
    opened = worked(None, shape.thickness_mm, len(ring))
    tolerance = _ON_SIDE_MM + 0.002 * max(shape.length_mm, shape.width_mm)
    edges = [
        by_side[i] if far < tolerance else opened for i, far in zip(nearest, how_far, strict=True)
    ]
    return Ring(ring, tuple(edges))


def upright(ring: Ring, foot_mm: float) -> list[Ribbon]:
    """Ribbons of a ring's upright faces, from under its worked edge to a foot."""
    faces: list[Face | None] = []
    for (start, end), normal, edge in zip(
        ring.stretches(), ring.normals(), ring.edges, strict=True
    ):
        if facing((*normal, 0.0)) > 1e-6:
            faces.append(Face(start, end, -edge.size_mm, foot_mm, brightness((*normal, 0.0))))
        else:
            faces.append(None)
    return [Ribbon(tuple(run)) for run in _runs(faces)]


def hanging(
    points: Sequence[Sequence[float]], top_mm: float, foot_mm: float, hole: int | None = None
) -> list[Ribbon]:
    """Ribbons of a plain ring's upright faces, between two heights."""
    ring = tuple((float(p[0]), float(p[1])) for p in points)
    course = Ring(ring, (_PLAIN,) * len(ring))
    faces = [
        Face(start, end, top_mm, foot_mm, brightness((*normal, 0.0)))
        if facing((*normal, 0.0)) > 1e-6
        else None
        for (start, end), normal in zip(course.stretches(), course.normals(), strict=True)
    ]
    return [Ribbon(tuple(run), hole) for run in _runs(faces)]


def _runs(faces: Sequence[Face | None]) -> list[list[Face]]:
    """Break a closed course of faces where one is not seen; join its end to its beginning."""
    runs: list[list[Face]] = [[]]
    for face in faces:
        if face is not None:
            runs[-1].append(face)
        elif runs[-1]:
            runs.append([])
    if len(runs) > 1 and faces and faces[0] is not None and faces[-1] is not None:
        runs[0] = runs.pop() + runs[0]
    return [run for run in runs if run]


def back_to_front(ribbons: Sequence[Ribbon]) -> list[Ribbon]:
    """Order ribbons so that each is painted after all that it covers."""
    courses = [ribbon.places() for ribbon in ribbons]
    over = _covering(courses)
    waits = [0] * len(ribbons)
    for covers in over:
        for i in covers:
            waits[i] += 1
    left, ordered = set(range(len(ribbons))), []
    while left:
        first = min(left, key=lambda i: (waits[i], i))
        left.remove(first)
        ordered.append(ribbons[first])
        for i in over[first]:
            waits[i] -= 1
    return ordered


def _covering(courses: Sequence[Sequence[XY]]) -> list[list[int]]:
    """For each course, those that may cover it: nearer where both are seen."""
    over: list[list[int]] = [[] for _ in courses]
    by_start = sorted(range(len(courses)), key=lambda i: courses[i][0][0])
    for rank, i in enumerate(by_start):
        for j in by_start[rank + 1 :]:
            if courses[j][0][0] >= courses[i][-1][0]:
                break
            far, near = (i, j) if _is_before(courses[i], courses[j]) else (j, i)
            if _is_before(courses[far], courses[near]):
                over[far].append(near)
    return over


def _is_before(one: Sequence[XY], other: Sequence[XY]) -> bool:
    """Whether the first course is painted before: it lies farther where both are seen."""
    low, high = max(one[0][0], other[0][0]), min(one[-1][0], other[-1][0])
    if high - low < 1e-6:
        return False
    at = (low + high) / 2
    return _away(one, at) > _away(other, at)


def _away(course: Sequence[XY], across: float) -> float:
    """Return how far away a course is at a place across."""
    i = min(max(bisect_right(course, (across, math.inf)), 1), len(course) - 1)
    (x0, y0), (x1, y1) = course[i - 1], course[i]
    return y0 if x1 == x0 else y0 + (y1 - y0) * (across - x0) / (x1 - x0)


@dataclass(frozen=True, slots=True)
class Strip:
    """A stretch of worked edge that is seen: four corners (x, y, z) mm, and its light."""

    corners: tuple[tuple[float, float, float], ...]
    light: float


def worked_edges(ring: Ring) -> list[list[Strip]]:
    """Return the strips that make up the worked edges, in runs whose light changes smoothly."""
    normals = ring.normals()
    most = max(len(edge.steps) for edge in ring.edges)
    runs: list[list[Strip]] = []
    for step in range(most - 1):
        inner = ring.inset([_step(edge, step + 1)[0] for edge in ring.edges])
        outer = ring.inset([_step(edge, step)[0] for edge in ring.edges])
        strips = [
            _strip(ring, i, step, (outer, inner), normals[i]) for i in range(len(ring.points))
        ]
        runs += _strip_runs(strips)
    return runs


def _step(edge: Worked, step: int) -> XY:
    """How far in and how far down a worked edge has come at a step, mm."""
    inward, down = edge.steps[min(step, len(edge.steps) - 1)]
    return inward * edge.size_mm, down * edge.size_mm


def _strip(
    ring: Ring, i: int, step: int, courses: tuple[list[XY], list[XY]], normal: XY
) -> Strip | None:
    edge, (outer, inner) = ring.edges[i], courses
    if step + 1 >= len(edge.steps):
        return None
    (in0, down0), (in1, down1) = _step(edge, step), _step(edge, step + 1)
    rise, run = down0 - down1, in1 - in0
    length = math.hypot(rise, run) or 1.0
    slope = (normal[0] * rise / length, normal[1] * rise / length, run / length)
    if facing(slope) <= 0:
        return None
    j = (i + 1) % len(ring.points)
    corners = (
        (*outer[i], -down0),
        (*outer[j], -down0),
        (*inner[j], -down1),
        (*inner[i], -down1),
    )
    return Strip(corners, brightness(slope))


def _strip_runs(strips: Sequence[Strip | None]) -> list[list[Strip]]:
    """Break strips into runs that go one way across the sheet."""
    runs: list[list[Strip]] = [[]]
    way = 0.0
    for strip in strips:
        if strip is None:
            runs.append([])
            continue
        (x0, y0, _), (x1, y1, _) = strip.corners[0], strip.corners[1]
        ahead = math.copysign(1.0, seen((x1, y1))[0] - seen((x0, y0))[0])
        if runs[-1] and ahead != way:
            runs.append([])
        way = ahead
        runs[-1].append(strip)
    return [run for run in runs if run]


def top_ring(ring: Ring) -> list[XY]:
    """Return the flat top's own outline, inside its worked edges."""
    return ring.inset([_step(edge, len(edge.steps) - 1)[0] for edge in ring.edges])
