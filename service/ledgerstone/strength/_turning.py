"""Where a slab turns about the end of a rest or a grip: the mesh has nodes there and close around.

The reaction there is nearly a point's, and what it does to the stress falls within one element of
the coarse mesh.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
import shapely
from scipy.spatial.distance import cdist
from shapely.geometry import Polygon

from ledgerstone import plane
from ledgerstone.arrays import BoolArray, FloatArray

TURNING_MM = 15.0  # from the end of a rest to the nodes around it
RING = 8  # of them
# Where the table's edge ends at a round rim the stress peaks on the rim beside it: with nodes
# 15 mm apart it reads up to 5.5 % low, with 10 mm 2 %.
AT_A_CURVE_MM = 10.0
CURVES_STEP_MM = 40.0  # a longer side of an outline is no step of a curve
AT_THE_EDGE_MM = 20.0  # a rest's end nearer than this to the slab's edge counts as at it
BESIDE_MM = np.array([-40.0, -15.0, 0.0, 15.0, 40.0])  # along the edge
# Round a corner that turns inward the mesh is always the same, so that the stress there does not
# depend on where the other nodes happen to fall. The outer ring has about the radius that the
# stress is averaged over.
RINGS_AT_A_CORNER_MM = np.array([10.0, 20.0])
ALONG_THE_RINGS_MM = np.array([9.5, 11.7])  # between the nodes of each
# How far its two sides have to be straight: over both rings, our own choice.
ROOM_AT_A_CORNER_MM = 45.0
TWO_SIDES = (1.98, 2.02)  # times that: length of the outline within it, if no other side is near
SQUARE_HALF, NEARLY = 0.75 * math.pi, 0.01  # half of the concrete's angle, radians
SHARPLY = 0.87  # radians that a corner turns: 50 degrees
APART_MM = 9.0  # places nearer to each other than that are one


def with_rings(ends: FloatArray) -> FloatArray:
    """Ends of rests in order, and `RING` places round each, mm, shape (n, 2), none too close.

    ``ends`` has shape (k, 2), mm.

    Source
    ------
    methods §1.2.
    """
    turn = (np.arange(RING) + 0.5) * 2.0 * math.pi / RING  # none on the line of a rest
    ring = TURNING_MM * np.column_stack([np.cos(turn), np.sin(turn)])
    kept = _apart(np.unique(np.round(ends, 3), axis=0))
    around = np.unique(np.round((kept[:, None] + ring).reshape(-1, 2), 3), axis=0)
    return np.concatenate([kept, _apart(around[are_clear_of(kept, around)])])


def sizes_about(outline: Polygon, ends: FloatArray) -> FloatArray:
    """Element size about each of the places where a slab turns, mm, shape (n,).

    ``ends`` has shape (n, 2), mm. At a curve of the outer edge it is smaller.

    Source
    ------
    methods §1.2; at a curve, from trials.
    """
    sides = shapely.linestrings(list(pairwise(outline.exterior.coords)))
    sides = sides[shapely.length(sides) < CURVES_STEP_MM]
    at_a_curve = np.zeros(len(ends), dtype=bool)
    if len(sides) and len(ends):
        near = TURNING_MM + APART_MM
        which, _ = shapely.STRtree(sides).query(shapely.points(ends), "dwithin", near)
        at_a_curve[which] = True
    return np.where(at_a_curve, AT_A_CURVE_MM, TURNING_MM)


def with_ends_at_the_edge(outline: Polygon, places: FloatArray) -> Polygon:
    """Outline with vertices added beside the places that are at its outer edge.

    It also has them on either side of a corner that turns inward, where the rings of nodes about
    it end. They are on its straight sides, so its shape does not change; the mesh keeps them as
    nodes.

    Parameters
    ----------
    places
        Shape (k, 2), mm.
    """
    ring = shapely.get_coordinates(outline.exterior)
    beside = {tuple(corner.at): _along_from(outline, corner) for corner in inward_corners(outline)}
    made: list[FloatArray] = []
    for start, end in pairwise(ring):
        length = math.dist(start, end)
        along, off = ((places - start) @ _turned(end - start).T / length).T
        here = (along[np.abs(off) <= AT_THE_EDGE_MM][:, None] + BESIDE_MM).ravel()
        here = np.append(here, beside.get(tuple(start), ()))
        here = np.append(here, length - np.array(beside.get(tuple(end), ())))
        here = np.unique(np.round(here[(here > APART_MM) & (here < length - APART_MM)], 3))
        kept = here[np.diff(here, prepend=-np.inf) > APART_MM]
        made += [start[None], start + kept[:, None] / length * (end - start)]
    return Polygon(np.concatenate(made), list(outline.interiors))


@dataclass(frozen=True, slots=True)
class InwardCorner:
    """A corner at which the slab turns inward sharply.

    Parameters
    ----------
    at
        Where it is, mm, shape (2,).
    middle, half
        The direction that halves the concrete there, and half of the concrete's angle, radians.
    """

    at: FloatArray
    middle: float
    half: float


def inward_corners(outline: Polygon) -> Iterator[InwardCorner]:
    """Corners of the outer ring at which the slab turns inward sharply."""
    ring = shapely.get_coordinates(outline.exterior)[:-1]
    for k in np.flatnonzero(_turns_inward(ring, is_ccw=outline.exterior.is_ccw)).tolist():
        sides = ring[[k - 1, (k + 1) % len(ring)]] - ring[k]
        one, other = sides / np.linalg.norm(sides, axis=1)[:, None]
        out = one + other
        void = math.acos(float(np.clip(one @ other, -1.0, 1.0)))
        yield InwardCorner(ring[k], math.atan2(-out[1], -out[0]), math.pi - 0.5 * void)


def has_room(outline: Polygon, corner: InwardCorner) -> bool:
    """Return whether rings have room: at a square corner along the axes, its own sides alone near.

    An L's or a notch's is one. About corners at other angles rings made triangles too sharp.
    """
    is_square = (
        abs(corner.half - SQUARE_HALF) < NEARLY and abs(math.cos(2.0 * corner.middle)) < NEARLY
    )
    if not is_square:
        return False
    disc = plane.buffer(shapely.Point(corner.at), ROOM_AT_A_CORNER_MM)
    near = plane.intersection(outline.boundary, disc).length
    low, high = TWO_SIDES
    return low * ROOM_AT_A_CORNER_MM < near < high * ROOM_AT_A_CORNER_MM


def round_corners(outline: Polygon, scale: float) -> FloatArray:
    """Places round each corner that turns inward, of rings of nodes there, mm, shape (n, 2).

    ``scale`` is 1, or less for a mesh finer than the rule's.

    Source
    ------
    Geometry; the rings' sizes are from our own trials (methods §1.2).
    """
    made = [np.empty((0, 2))]
    for corner in inward_corners(outline):
        if not has_room(outline, corner):
            continue
        for radius, step in zip(RINGS_AT_A_CORNER_MM, ALONG_THE_RINGS_MM, strict=True):
            many = round(2.0 * corner.half * radius / step)
            turn = corner.middle + corner.half * (2.0 * np.arange(1, many) / many - 1.0)
            ring = np.column_stack([np.cos(turn), np.sin(turn)])
            made.append(corner.at + scale * radius * ring)
    return np.concatenate(made)


def _along_from(outline: Polygon, corner: InwardCorner) -> FloatArray:
    """How far from a corner that turns inward the vertices on its sides are, mm, shape (n,)."""
    return RINGS_AT_A_CORNER_MM if has_room(outline, corner) else RINGS_AT_A_CORNER_MM[-1:]


def _turns_inward(ring: FloatArray, *, is_ccw: bool) -> BoolArray:
    """At which corners of an outer ring (n, 2) the slab turns inward sharply, shape (n,)."""
    before, after = ring - np.roll(ring, 1, axis=0), np.roll(ring, -1, axis=0) - ring
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    turn = np.arctan2(cross, np.einsum("ij,ij->i", before, after))
    return np.asarray(turn * (1.0 if is_ccw else -1.0) < -SHARPLY)


def _turned(along: FloatArray) -> FloatArray:
    return np.array([along, [-along[1], along[0]]])


def are_clear_of(kept: FloatArray, places: FloatArray) -> BoolArray:
    """Which places (n, 2), mm, lie further than `APART_MM` from all kept (k, 2), shape (n,).

    Source
    ------
    Geometry.
    """
    return np.asarray(cdist(places, kept).min(axis=1, initial=np.inf) > APART_MM)


def _apart(places: FloatArray) -> FloatArray:
    """Places (k, 2) without those that lie close behind an earlier one."""
    near = np.triu(cdist(places, places) < APART_MM, 1).any(axis=0)
    return np.asarray(places[~near])
