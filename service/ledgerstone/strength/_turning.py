"""Where a slab turns about the end of a rest or a hand: the mesh has nodes there and close around.

The reaction there is nearly a point's, and what it does to the stress falls within one element of
the coarse mesh.
"""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import shapely
from scipy.spatial.distance import cdist
from shapely.geometry import Polygon

from ledgerstone.arrays import BoolArray, FloatArray

TURNING_MM = 15.0  # from the end of a rest to the nodes around it
RING = 8  # of them
AT_THE_EDGE_MM = 20.0  # a rest's end nearer than this to the slab's edge counts as at it
BESIDE_MM = np.array([-40.0, -15.0, 0.0, 15.0, 40.0])  # along the edge
BESIDE_A_CORNER_MM = 20.0  # about the radius that the stress is averaged over
SHARPLY = 0.87  # radians that a corner turns: 50 degrees
APART_MM = 9.0  # places nearer to each other than that are one


def ringed(ends: FloatArray) -> FloatArray:
    """Ends of rests in order, and `RING` places round each, mm, shape (n, 2), none too close.

    ``ends`` has shape (k, 2), mm.
    """
    turn = (np.arange(RING) + 0.5) * 2.0 * math.pi / RING  # none on the line of a rest
    ring = TURNING_MM * np.column_stack([np.cos(turn), np.sin(turn)])
    kept = _apart(np.unique(np.round(ends, 3), axis=0))
    around = np.unique(np.round((kept[:, None] + ring).reshape(-1, 2), 3), axis=0)
    return np.concatenate([kept, _apart(around[are_clear_of(kept, around)])])


def with_ends_at_the_edge(outline: Polygon, places: FloatArray) -> Polygon:
    """Outline with vertices added beside the places that are at its outer edge.

    It also has them on either side of a corner that turns inward, where the averaged stress is
    largest. They are on its straight sides, so its shape does not change; the mesh keeps them as
    nodes.

    Parameters
    ----------
    places
        Shape (k, 2), mm.
    """
    ring = shapely.get_coordinates(outline.exterior)
    inward = _turns_inward(ring[:-1], is_ccw=outline.exterior.is_ccw)
    made: list[FloatArray] = []
    for k, (start, end) in enumerate(pairwise(ring)):
        length = math.dist(start, end)
        along, off = ((places - start) @ _turned(end - start).T / length).T
        here = (along[np.abs(off) <= AT_THE_EDGE_MM][:, None] + BESIDE_MM).ravel()
        corners = np.array([BESIDE_A_CORNER_MM, length - BESIDE_A_CORNER_MM])
        here = np.append(here, corners[inward[[k, (k + 1) % len(inward)]]])
        here = np.unique(np.round(here[(here > APART_MM) & (here < length - APART_MM)], 3))
        kept = here[np.diff(here, prepend=-np.inf) > APART_MM]
        made += [start[None], start + kept[:, None] / length * (end - start)]
    return Polygon(np.concatenate(made), list(outline.interiors))


def _turns_inward(ring: FloatArray, *, is_ccw: bool) -> BoolArray:
    """At which corners of an outer ring (n, 2) the slab turns inward sharply, shape (n,)."""
    before, after = ring - np.roll(ring, 1, axis=0), np.roll(ring, -1, axis=0) - ring
    cross = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    turn = np.arctan2(cross, np.einsum("ij,ij->i", before, after))
    return np.asarray(turn * (1.0 if is_ccw else -1.0) < -SHARPLY)


def _turned(along: FloatArray) -> FloatArray:
    return np.array([along, [-along[1], along[0]]])


def are_clear_of(kept: FloatArray, places: FloatArray) -> BoolArray:
    """Which places (n, 2), mm, lie further than `APART_MM` from all kept (k, 2), shape (n,)."""
    return np.asarray(cdist(places, kept).min(axis=1, initial=np.inf) > APART_MM)


def _apart(places: FloatArray) -> FloatArray:
    """Places (k, 2) without those that lie close behind an earlier one."""
    near = np.triu(cdist(places, places) < APART_MM, 1).any(axis=0)
    return np.asarray(places[~near])
