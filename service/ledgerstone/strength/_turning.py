"""Where an overhang turns about the end of a rest: the mesh has nodes there and close around.

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

from ledgerstone.strength._exchange import BoolArray
from ledgerstone.strength._outline import FloatArray

TURNING_MM = 15.0  # from the end of a rest to the nodes around it
RING = 8  # of them
AT_THE_EDGE_MM = 20.0  # a rest's end so near to the slab's edge is taken at it
BESIDE_MM = np.array([-40.0, -15.0, 0.0, 15.0, 40.0])  # along the edge
APART_MM = 9.0  # places nearer to each other than that are one


def ringed(ends: FloatArray) -> FloatArray:
    """Ends of rests (k, 2) in order, and a ring of places round each, apart from each other."""
    turn = (np.arange(RING) + 0.5) * 2.0 * math.pi / RING  # none on the line of a rest
    ring = TURNING_MM * np.column_stack([np.cos(turn), np.sin(turn)])
    kept = _apart(np.unique(np.round(ends, 3), axis=0))
    around = np.unique(np.round((kept[:, None] + ring).reshape(-1, 2), 3), axis=0)
    return np.concatenate([kept, _apart(around[are_clear_of(kept, around)])])


def with_ends_at_the_edge(outline: Polygon, places: FloatArray) -> Polygon:
    """Outline with corners at those of some places (k, 2) that lie at its outer edge, and beside.

    They lie on its straight sides, so that it stays the same; the mesh keeps them as nodes.
    """
    ring = shapely.get_coordinates(outline.exterior)
    made: list[FloatArray] = []
    for start, end in pairwise(ring):
        length = math.dist(start, end)
        along, off = ((places - start) @ _turned(end - start).T / length).T
        here = (along[np.abs(off) <= AT_THE_EDGE_MM][:, None] + BESIDE_MM).ravel()
        here = np.unique(np.round(here[(here > APART_MM) & (here < length - APART_MM)], 3))
        kept = here[np.diff(here, prepend=-np.inf) > APART_MM]
        made += [start[None], start + kept[:, None] / length * (end - start)]
    return Polygon(np.concatenate(made), list(outline.interiors))


def _turned(along: FloatArray) -> FloatArray:
    return np.array([along, [-along[1], along[0]]])


def are_clear_of(kept: FloatArray, places: FloatArray) -> BoolArray:
    """Which places (n, 2) lie apart from all that are kept (k, 2), shape (n,)."""
    return np.asarray(cdist(places, kept).min(axis=1, initial=np.inf) > APART_MM)


def _apart(places: FloatArray) -> FloatArray:
    """Places (k, 2) without those that lie close behind an earlier one."""
    near = np.triu(cdist(places, places) < APART_MM, 1).any(axis=0)
    return np.asarray(places[~near])
