"""Means over the slab within a radius of each node."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_array, csr_array

from ledgerstone.strength._outline import FloatArray
from ledgerstone.strength.mesh import Mesh

RINGS = ((0.0, 1), (0.5, 6), (0.87, 12))  # radius over the disc's, places: nineteen equal shares


@dataclass(frozen=True, slots=True)
class Averaging:
    """Means of a quantity over the slab within a radius of each node.

    Parameters
    ----------
    places
        Where the means are taken, mm, shape (p, 2).
    weights
        From values at the triangles' corners to means, shape (p, 3 m).
    """

    places: FloatArray
    weights: csr_array


def averaging_of(mesh: Mesh, radius_mm: float) -> Averaging:
    """Averaging over the slab within a radius of every node."""
    offsets = _disc() * radius_mm
    nodes = mesh.nodes
    points = (nodes[:, None, :] + offsets[None]).reshape(-1, 2)
    owner = np.repeat(np.arange(len(nodes)), len(offsets))
    triangle, share = mesh.located(points)
    on = triangle >= 0
    owner, triangle, share = owner[on], triangle[on], share[on]
    each = 1.0 / np.bincount(owner, minlength=len(nodes))
    rows = np.repeat(owner, 3)
    columns = (3 * triangle[:, None] + np.arange(3)).ravel()
    values = (share * each[owner, None]).ravel()
    shape = (len(nodes), 3 * len(mesh.triangles))
    return Averaging(nodes, coo_array((values, (rows, columns)), shape=shape).tocsr())


def _disc() -> FloatArray:
    """Nineteen places that share a unit disc about equally, shape (19, 2)."""
    rings = [
        radius * np.column_stack([np.cos(turn), np.sin(turn)])
        for radius, count in RINGS
        for turn in [(np.arange(count) + 0.25) * 2.0 * math.pi / count]
    ]
    return np.concatenate(rings)
