"""Where an overhang turns about the end of a rest: the mesh has nodes there and close around.

The reaction there is nearly a point's, and what it does to the stress falls within one element of
the coarse mesh.
"""

from __future__ import annotations

import math

import numpy as np
from scipy.spatial.distance import cdist

from ledgerstone.strength._exchange import BoolArray
from ledgerstone.strength._outline import FloatArray

TURNING_MM = 15.0  # from the end of a rest to the nodes around it
RING = 8  # of them
APART_MM = 9.0  # places nearer to each other than that are one


def ringed(ends: FloatArray) -> FloatArray:
    """Ends of rests (k, 2) in order, and a ring of places round each, apart from each other."""
    turn = np.arange(RING) * 2.0 * math.pi / RING
    ring = TURNING_MM * np.column_stack([np.cos(turn), np.sin(turn)])
    kept = _apart(np.unique(np.round(ends, 3), axis=0))
    around = np.unique(np.round((kept[:, None] + ring).reshape(-1, 2), 3), axis=0)
    return np.concatenate([kept, _apart(around[are_clear_of(kept, around)])])


def are_clear_of(kept: FloatArray, places: FloatArray) -> BoolArray:
    """Which places (n, 2) lie apart from all that are kept (k, 2), shape (n,)."""
    return np.asarray(cdist(places, kept).min(axis=1, initial=np.inf) > APART_MM)


def _apart(places: FloatArray) -> FloatArray:
    """Places (k, 2) without those that lie close behind an earlier one."""
    near = np.triu(cdist(places, places) < APART_MM, 1).any(axis=0)
    return np.asarray(places[~near])
