"""Means of the stress over the slab within a radius of each node."""

from __future__ import annotations

import math

import numpy as np
from scipy.sparse import csr_array

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.strength._element import NEXT, Elements, rigidity
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

    Source
    ------
    methods §1.4; the stress ``6 m / h²`` of a plate: strength of materials.
    """
    node, triangle, share = _met(mesh, radius_mm)
    operator = np.matmul(rigidity(nu), elements.curvature) * (6.0 * depth)[:, None, None, None]
    corner = operator.reshape(-1, 3, 27).transpose(1, 0, 2)
    mean = sum(share[:, k, None] * corner[k][triangle] for k in range(3)).reshape(-1, 3, 3, 3)
    return _rows_by_node(node, mesh.triangles[triangle], mean, len(mesh.nodes))


def _rows_by_node(node: IntArray, corners: IntArray, values: FloatArray, count: int) -> csr_array:
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
    """Every pair of a node (p,) and a triangle (p,) near it, and its corners' shares (p, 3).

    Most places lie in the triangles at the node itself; the others are looked for.
    """
    offsets, count = _disc() * radius_mm, len(mesh.nodes)
    node, (second, third) = mesh.triangles.T.ravel(), _at_the_node(mesh, offsets)
    inside = np.minimum(np.minimum(second, third), 1.0 - second - third) >= 0.0
    pairs = np.arange(len(node))
    at = csr_array((np.ones(len(node)), (node, pairs)), shape=(count, len(node)))
    found = at @ inside.astype(float)
    weight = inside / np.maximum(found, 1.0)[node]
    parts = [np.einsum("pd,pd->p", weight, each) for each in (second, third)]
    near = np.array([weight.sum(axis=1), *parts])
    near[0] -= near[1] + near[2]
    turned = (np.repeat(np.arange(3), len(mesh.triangles)) + np.arange(3)[:, None]) % 3
    share = np.empty((len(node), 3))
    share[pairs, turned] = near
    other, place = np.nonzero(found == 0.0)
    triangle, far = mesh.located(mesh.nodes[other] + offsets[place])
    on, met = triangle >= 0, near.any(axis=0)
    node = np.concatenate([node[met], other[on]])
    share = np.concatenate([share[met], far[on]])
    met_by = np.count_nonzero(found, axis=1) + np.bincount(other[on], minlength=count)
    owner = np.concatenate([(pairs % len(mesh.triangles))[met], triangle[on]])
    return node, owner, share / met_by[node, None]


def _at_the_node(mesh: Mesh, offsets: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Shares of a triangle's next two corners in places off each of its corners, (3 m, d) each.

    The places are the corner plus ``offsets`` (d, 2); a negative share is of a place outside the
    triangle. First come the first corners of all triangles.
    """
    corners = mesh.nodes[mesh.triangles].transpose(1, 0, 2)
    u = (corners[NEXT] - corners).reshape(-1, 2)
    v = (corners[[2, 0, 1]] - corners).reshape(-1, 2)
    twice = (u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0])[:, None]
    second = (v[:, ::-1] * [1.0, -1.0] / twice) @ offsets.T
    return second, (u[:, ::-1] * [-1.0, 1.0] / twice) @ offsets.T


def _disc() -> FloatArray:
    """Twenty-four places that share a unit disc, mirrored about both axes, shape (24, 2)."""
    rings = [
        radius * np.column_stack([np.cos(turn), np.sin(turn)])
        for radius, count in RINGS
        # Where no place falls on an axis by itself, half a step off it: it is mirrored about both.
        for turn in [(np.arange(count) + 0.5 * (count % 4 == 0)) * 2.0 * math.pi / count]
    ]
    return np.concatenate(rings)
