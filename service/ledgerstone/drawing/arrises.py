"""Worked edges: the strips of a bevel, a round or an eased arris, and the flat top within them."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from ledgerstone.drawing.camera import LEVEL, Pose
from ledgerstone.drawing.solid import Ring, Worked
from ledgerstone.outline import XY


@dataclass(frozen=True, slots=True)
class EdgeFacet:
    """A stretch of worked edge that is seen: four corners (x, y, z) mm, and its light."""

    corners: tuple[tuple[float, float, float], ...]
    light: float


def worked_edges(ring: Ring, pose: Pose = LEVEL) -> list[list[EdgeFacet]]:
    """Return the strips that make up the worked edges, in runs whose light changes smoothly."""
    most = max(len(edge.steps) for edge in ring.edges)
    runs: list[list[EdgeFacet]] = []
    kinds = set(ring.edges)
    downs = {_step(edge, step)[1] for edge in kinds for step in range(len(edge.steps))}
    contours = {}
    for down in downs:
        inward = {edge: _inward(edge, down) for edge in kinds}
        contours[down] = ring.inset([inward[edge] for edge in ring.edges])
    for step in range(most - 1):
        strips = [_strip(ring, i, step, contours, pose) for i in range(len(ring.points))]
        runs += _strip_runs(strips, pose)
    return runs


def _inward(edge: Worked, down_mm: float) -> float:
    """Distance of a worked edge from the face at a depth below the top, mm."""
    for step in range(len(edge.steps) - 1):
        (in0, down0), (in1, down1) = _step(edge, step), _step(edge, step + 1)
        if down1 <= down_mm <= down0 and down0 > down1:
            return in0 + (in1 - in0) * (down0 - down_mm) / (down0 - down1)
    return 0.0


def _step(edge: Worked, step: int) -> XY:
    """How far in and how far down a worked edge has come at a step, mm."""
    inward, down = edge.steps[min(step, len(edge.steps) - 1)]
    return inward * edge.size_mm, down * edge.size_mm


def _strip(
    ring: Ring, i: int, step: int, contours: Mapping[float, list[XY]], pose: Pose
) -> EdgeFacet | None:
    edge = ring.edges[i]
    if step + 1 >= len(edge.steps):
        return None
    (in0, down0), (in1, down1) = _step(edge, step), _step(edge, step + 1)
    rise, run, normal = down0 - down1, in1 - in0, ring.normals[i]
    length = math.hypot(rise, run) or 1.0
    slope = (normal[0] * rise / length, normal[1] * rise / length, run / length)
    if pose.facing(slope) <= 0:
        return None
    outer, inner = contours[down0], contours[down1]
    j = (i + 1) % len(ring.points)
    corners = (
        (*outer[i], -down0),
        (*outer[j], -down0),
        (*inner[j], -down1),
        (*inner[i], -down1),
    )
    return EdgeFacet(corners, pose.brightness(slope))


def _strip_runs(strips: Sequence[EdgeFacet | None], pose: Pose) -> list[list[EdgeFacet]]:
    """Break strips into runs that go one way across the sheet."""
    runs: list[list[EdgeFacet]] = [[]]
    way = 0.0
    for strip in strips:
        if strip is None:
            runs.append([])
            continue
        (x0, y0, _), (x1, y1, _) = strip.corners[0], strip.corners[1]
        ahead = math.copysign(1.0, pose.seen((x1, y1))[0] - pose.seen((x0, y0))[0])
        if runs[-1] and ahead != way:
            runs.append([])
        way = ahead
        runs[-1].append(strip)
    return [run for run in runs if run]


def top_ring(ring: Ring) -> list[XY]:
    """Return the flat top's outline, plane mm, inside its worked edges."""
    return ring.inset([_step(edge, len(edge.steps) - 1)[0] for edge in ring.edges])
