"""Means of the stress over the slab within a radius of each node."""

from __future__ import annotations

import math

import numpy as np
from scipy.sparse import csr_array

from ledgerstone.strength._element import Elements, rigidity
from ledgerstone.strength._outline import FloatArray, IntArray
from ledgerstone.strength.mesh import Mesh

RINGS = ((0.41, 8), (0.82, 16))  # radius over the disc's, places: twenty-four equal shares


def averaged_rows(
    mesh: Mesh, elements: Elements, nu: float, depth: FloatArray, radius_mm: float
) -> csr_array:
    """From the unknowns for unit ``D`` to the mean stress around every node, shape (3 n, 3 n).

    Rows are the stresses along x of every node, then those along y, then the shear stresses, all
    at the bottom and times the square of the slab's thickness. The stress tensor ``6 m / h²`` is
    averaged, so that thickness may change within the area and the mean does not depend on how the
    axes lie.

    Parameters
    ----------
    depth
        Each triangle's thickness over the slab's own, shape (m,).
    """
    node, triangle, share = _met(mesh, radius_mm)
    operator = np.matmul(rigidity(nu), elements.curvature) * (6.0 * depth)[:, None, None, None]
    corner = operator.reshape(-1, 3, 27).transpose(1, 0, 2)
    mean = sum(share[:, k, None] * corner[k][triangle] for k in range(3)).reshape(-1, 3, 3, 3)
    return _gathered(node, mesh.triangles[triangle], mean, len(mesh.nodes))


def _gathered(node: IntArray, corners: IntArray, values: FloatArray, count: int) -> csr_array:
    """Rows (component, node) from what each unknown of three corners adds to the components.

    Parameters
    ----------
    node, corners
        The row's node (p,), and the corners (p, 3) that add to it.
    values
        By component, corner and unknown of the corner, shape (p, 3, 3, 3).
    """
    pair, index = np.unique(node[:, None] * count + corners, return_inverse=True)
    row, column = np.divmod(pair, count)
    index = index.ravel()
    data = np.empty((3, len(pair), 3))
    for component in range(3):
        for k in range(3):
            added = values[:, component, :, k].ravel()
            data[component, :, k] = np.bincount(index, added, len(pair))
    unknowns = (3 * column[:, None] + np.arange(3)).astype(np.int32)
    many = np.tile(3 * np.bincount(row, minlength=count), 3)
    start = np.concatenate([[0], np.cumsum(many)]).astype(np.int32)
    shape = (3 * count, 3 * count)
    return csr_array((data.ravel(), np.tile(unknowns.ravel(), 3), start), shape=shape)


def _met(mesh: Mesh, radius_mm: float) -> tuple[IntArray, IntArray, FloatArray]:
    """Every pair of a node (p,) and a triangle (p,) near it, and its corners' shares (p, 3)."""
    offsets = _disc() * radius_mm
    nodes = mesh.nodes
    points = (nodes[:, None, :] + offsets[None]).reshape(-1, 2)
    node = np.repeat(np.arange(len(nodes)), len(offsets))
    triangle, share = mesh.located(points)
    on = triangle >= 0
    node, triangle, share = node[on], triangle[on], share[on]
    share /= np.bincount(node, minlength=len(nodes))[node, None]
    pair, index = np.unique(node * len(mesh.triangles) + triangle, return_inverse=True)
    sums = [np.bincount(index, share[:, k], len(pair)) for k in range(3)]
    return *np.divmod(pair, len(mesh.triangles)), np.column_stack(sums)


def _disc() -> FloatArray:
    """Twenty-four places that share a unit disc, mirrored about both axes, shape (24, 2)."""
    rings = [
        radius * np.column_stack([np.cos(turn), np.sin(turn)])
        for radius, count in RINGS
        for turn in [(np.arange(count) + 0.5 * (count % 4 == 0)) * 2.0 * math.pi / count]
    ]
    return np.concatenate(rings)
