"""The slab as a solid: its visible faces, their order of painting and their light.

Every upright face that turns to the eye runs from left to right, so a run of such faces is one
ribbon that never covers itself. Ribbons are painted from the farthest to the nearest, what is
seen down an opening with the opening's own ribbon, and the top last: nothing stands above it.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
import shapely

from ledgerstone.drawing.camera import LEVEL, Pose
from ledgerstone.order import Edge, Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape

_ARRIS_MM = 1.5
_ROUND_STEPS = 4
_MANY = 260  # stretches of an outline
_ON_SIDE_MM = 0.05
_CHORD_MM = 45.0  # stretches no longer than this may be chords of a rounded corner
_CURVED = math.cos(math.radians(40.0))  # stretches that turn less than this are on one curve


@dataclass(frozen=True, slots=True)
class Face:
    """One upright face: its ends from left to right as seen, its top and foot, its light.

    ``end_top_mm`` is its top at its end, where that is another than at its start.
    """

    start: XY
    end: XY
    top_mm: float
    foot_mm: float
    light: float
    end_top_mm: float | None = None

    @property
    def tops_mm(self) -> XY:
        """Its top at its start and at its end."""
        return self.top_mm, self.top_mm if self.end_top_mm is None else self.end_top_mm


@dataclass(frozen=True, slots=True)
class Ribbon:
    """A run of faces that meet, from left to right; ``hole`` names the opening it is in."""

    faces: tuple[Face, ...]
    hole: int | None = None

    def places(self, pose: Pose) -> list[XY]:
        """Return the ends of its faces, as (across, away) in mm."""
        return [*(pose.seen(face.start) for face in self.faces), pose.seen(self.faces[-1].end)]


@dataclass(frozen=True, slots=True)
class Worked:
    """How the edge over one stretch of a ring is worked: its size and its profile's steps.

    ``steps`` holds (share of the size inwards, share of the size down) from the face to the top.
    """

    size_mm: float
    steps: tuple[XY, ...]


_PLAIN = Worked(0.0, ((0.0, 0.0),))


def worked(edge: Edge | None, thickness_mm: float) -> Worked:
    """State how an edge meets the top: sharp at a wall, eased, bevelled or rounded elsewhere."""
    if edge is not None and edge.profile == "wall":
        return _PLAIN
    if edge is None or edge.profile == "square" or edge.size is None:
        return Worked(_ARRIS_MM, ((0.0, 1.0), (1.0, 0.0)))
    size = min(edge.size.mm, thickness_mm * 0.98)
    if edge.profile == "bevel":
        return Worked(size, ((0.0, 1.0), (1.0, 0.0)))
    turns = [math.pi / 2 * i / _ROUND_STEPS for i in range(_ROUND_STEPS + 1)]
    return Worked(size, tuple((1 - math.cos(a), 1 - math.sin(a)) for a in turns))


@dataclass(frozen=True)
class Ring:
    """A closed course with concrete on its left, and how the edge over each stretch is worked."""

    points: tuple[XY, ...]
    edges: tuple[Worked, ...]

    @cached_property
    def normals(self) -> list[XY]:
        """Unit normals out of the concrete, one a stretch, pure numbers."""
        return [_normal(*ends) for ends in self.stretches()]

    def stretches(self) -> Iterator[tuple[XY, XY]]:
        """Ends of each stretch, plane mm."""
        return zip(self.points, self.points[1:] + self.points[:1], strict=True)

    def inset(self, at: Sequence[float]) -> list[XY]:
        """Points of the ring, plane mm, each stretch moved inwards by its own distance, mitred."""
        normals = self.normals
        return [
            _mitre(point, normals[i - 1], at[i - 1], normals[i], at[i])
            for i, point in enumerate(self.points)
        ]


def _normal(start: XY, end: XY) -> XY:
    along_x, along_y = end[0] - start[0], end[1] - start[1]
    length = math.hypot(along_x, along_y) or 1.0
    return along_y / length, -along_x / length


def _mitre(point: XY, before: XY, by_before: float, after: XY, by_after: float) -> XY:
    """Where two lines through a point meet once each has moved inwards.

    On a curve two stretches hardly turn: where one edge ends there and another begins, it does so
    half way between the two, not where their lines would meet far off.
    """
    turn = before[0] * after[1] - before[1] * after[0]
    ahead = before[0] * after[0] + before[1] * after[1]
    if abs(turn) < 0.02 or (ahead > _CURVED and by_before != by_after):
        by = (by_before + by_after) / 2
        return point[0] - after[0] * by, point[1] - after[1] * by
    x = (by_after * before[1] - by_before * after[1]) / turn
    y = (by_before * after[0] - by_after * before[0]) / turn
    return point[0] + x, point[1] + y


def ring_of(points: Sequence[Sequence[float]], slab: Slab, shape: Shape) -> Ring:
    """Make a ring of an outline's points, plane mm, each stretch worked as its side is.

    The edges of an outline of very many stretches are left sharp, to keep the file small.
    """
    ring = tuple((float(p[0]), float(p[1])) for p in points)
    if len(ring) > _MANY:
        return Ring(ring, (_PLAIN,) * len(ring))
    at = np.array(ring)
    middles = shapely.points((at + np.roll(at, -1, axis=0)) / 2)
    tree = shapely.STRtree([side.line for side in shape.sides])
    nearest = tree.nearest(middles)
    how_far = shapely.distance(middles, tree.geometries.take(nearest))
    by_side = [worked(slab.edges.get(side.name), shape.thickness_mm) for side in shape.sides]
    opened = worked(None, shape.thickness_mm)
    tolerance = _ON_SIDE_MM + 0.002 * max(shape.length_mm, shape.width_mm)
    edges = [
        by_side[i] if far < tolerance else opened for i, far in zip(nearest, how_far, strict=True)
    ]
    return graded(Ring(ring, tuple(edges)))


def graded(ring: Ring) -> Ring:
    """Let one worked edge run out into another along the curve on which they meet."""
    edges, normals, n = list(ring.edges), ring.normals, len(ring.edges)
    lengths = [math.dist(*ends) for ends in ring.stretches()]

    def goes_on(i: int) -> bool:
        before, after = normals[(i - 1) % n], normals[i % n]
        short = max(lengths[(i - 1) % n], lengths[i % n]) <= _CHORD_MM
        return short and before[0] * after[0] + before[1] * after[1] > _CURVED

    for i in range(n):
        one, other = ring.edges[i - 1], ring.edges[i]
        if one.size_mm == other.size_mm or not goes_on(i):
            continue
        first, last = i - 1, i
        while last - first < n and goes_on(first) and ring.edges[first - 1] == one:
            first -= 1
        while last - first < n and goes_on(last + 1) and ring.edges[(last + 1) % n] == other:
            last += 1
        for k in range(first, last + 1):
            share = (k - first) / (last - first)
            size = one.size_mm + (other.size_mm - one.size_mm) * share
            edges[k % n] = replace(ring.edges[k % n], size_mm=size)
    return Ring(ring.points, tuple(edges))


def upright(ring: Ring, foot_mm: float, pose: Pose = LEVEL) -> list[Ribbon]:
    """Ribbons of a ring's upright faces, from under its worked edge to a foot."""
    faces: list[Face | None] = []
    edges = ring.edges
    for i, ((start, end), normal) in enumerate(zip(ring.stretches(), ring.normals, strict=True)):
        if pose.facing((*normal, 0.0)) <= 1e-6:
            faces.append(None)
            continue
        sizes = (edges[i - 1].size_mm, edges[i].size_mm, edges[(i + 1) % len(edges)].size_mm)
        light = pose.brightness((*normal, 0.0))
        faces += _under_arrises((start, end), sizes, foot_mm, light)
    return [Ribbon(tuple(run)) for run in _runs(faces)]


def _under_arrises(
    ends: tuple[XY, XY], sizes_mm: tuple[float, float, float], foot_mm: float, light: float
) -> list[Face]:
    """Cut a face's upper corners where a neighbour's worked edge is the larger and runs out."""
    (start, end), (before, own, after) = ends, sizes_mm
    if own >= before and own >= after:
        return [Face(start, end, -own, foot_mm, light)]
    length = math.dist(start, end)
    cuts = [max(0.0, size - own) if size - own < length / 2 else 0.0 for size in (before, after)]
    a, b = (
        _along(start, end, share / length if length else 0.0)
        for share in (cuts[0], length - cuts[1])
    )
    faces = [Face(a, b, -own, foot_mm, light)]
    if cuts[0]:
        faces.insert(0, Face(start, a, -before, foot_mm, light, -own))
    if cuts[1]:
        faces.append(Face(b, end, -own, foot_mm, light, -after))
    return faces


def _along(start: XY, end: XY, share: float) -> XY:
    return start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share


def hanging(
    points: Sequence[Sequence[float]],
    top_mm: float,
    foot_mm: float,
    hole: int | None = None,
    *,
    pose: Pose = LEVEL,
) -> list[Ribbon]:
    """Ribbons of the upright faces of a ring, plane mm, between two heights."""
    ring = tuple((float(p[0]), float(p[1])) for p in points)
    course = Ring(ring, (_PLAIN,) * len(ring))
    faces = [
        Face(start, end, top_mm, foot_mm, pose.brightness((*normal, 0.0)))
        if pose.facing((*normal, 0.0)) > 1e-6
        else None
        for (start, end), normal in zip(course.stretches(), course.normals, strict=True)
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
