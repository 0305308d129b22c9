"""The plate's stiffness, factored once: banded Cholesky in reverse Cuthill-McKee order."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.lib.stride_tricks import as_strided
from scipy.linalg import LinAlgError, cholesky_banded
from scipy.linalg.lapack import dtrtri
from scipy.sparse import csr_array
from scipy.sparse.csgraph import reverse_cuthill_mckee

from ledgerstone.errors import OutlineUnusableError
from ledgerstone.strength._outline import FloatArray, IntArray


@dataclass(frozen=True, slots=True)
class Factor:
    """Lower Cholesky factor of the pinned stiffness, in blocks.

    Parameters
    ----------
    place
        Row of each unknown in the factor's order, shape (N,).
    pinned
        Rows (in the factor's order) that are held at nothing.
    inverse, below
        Inverses of the factor's blocks on its diagonal, and its blocks just under them.
    """

    place: IntArray
    pinned: IntArray
    inverse: tuple[FloatArray, ...]
    below: tuple[FloatArray, ...]

    def forward(self, columns: FloatArray) -> FloatArray:
        """``Y`` of ``L Y = columns``; both of shape (N, k), columns in the mesh's order."""
        size = len(self.inverse[0])
        placed = np.empty(columns.shape)
        placed[self.place] = columns
        placed[self.pinned] = 0.0
        first = (placed != 0.0).argmax(axis=0) // size  # nothing before it but noughts
        order = np.argsort(first, kind="stable")
        rows = placed[:, order]
        begun = np.searchsorted(first[order], np.arange(len(self.inverse)), side="right")
        for k, (inverse, many) in enumerate(zip(self.inverse, begun.tolist(), strict=True)):
            if many == 0:
                continue
            part = rows[k * size : (k + 1) * size, :many]
            if k:
                part -= self.below[k - 1] @ rows[(k - 1) * size : k * size, :many]
            part[:] = inverse @ part
        placed[:, order] = rows
        return placed

    def backward(self, rows: FloatArray) -> FloatArray:
        """``X`` of ``L' X = rows``, back in the mesh's order; both of shape (N, k)."""
        found = np.array(rows, order="C")
        size = len(self.inverse[0])
        for k in range(len(self.inverse) - 1, -1, -1):
            part = found[k * size : (k + 1) * size]
            if k + 1 < len(self.inverse):
                part -= self.below[k].T @ found[(k + 1) * size : (k + 2) * size]
            part[:] = self.inverse[k].T @ part
        return found[self.place]


def order_of(triangles: IntArray, count: int) -> IntArray:
    """Position of each node in reverse Cuthill-McKee order, shape (n,)."""
    i = triangles[:, [0, 1, 2]].ravel()
    j = triangles[:, [1, 2, 0]].ravel()
    graph = csr_array((np.ones(len(i)), (i, j)), shape=(count, count))
    order = reverse_cuthill_mckee(graph + graph.T, symmetric_mode=True)
    position = np.empty(count, dtype=np.intp)
    position[order] = np.arange(count)
    return position


def factored(stiffness: FloatArray, triangles: IntArray, nodes: FloatArray) -> Factor:
    """Factor of the assembled stiffness with three nodes pinned.

    Parameters
    ----------
    stiffness
        Element matrices, shape (m, 9, 9).
    triangles
        Node numbers, shape (m, 3).
    nodes
        Places, shape (n, 2): the pinned ones are far apart.

    Raises
    ------
    OutlineUnusableError
        If a part of the plate hangs on nothing.
    """
    position = order_of(triangles, len(nodes))
    place = (3 * position[:, None] + np.arange(3)).ravel()
    rows = (3 * position[triangles][:, :, None] + np.arange(3)).reshape(len(triangles), 9)
    pinned = 3 * position[_far_apart(nodes)]
    band = _band(stiffness, rows, place.size)
    _pin(band, pinned)
    try:
        lower = cholesky_banded(band, lower=True, overwrite_ab=True, check_finite=False)
    except LinAlgError as fault:
        raise OutlineUnusableError("The plate of this outline has no stiffness.") from fault
    return Factor(place, pinned, *_blocks(lower))


def _far_apart(nodes: FloatArray) -> IntArray:
    """Three nodes that span the plate, far from one line."""
    first = int(np.argmin(nodes.sum(axis=1)))
    away = nodes - nodes[first]
    second = int(np.argmax(np.einsum("ij,ij->i", away, away)))
    across = np.abs(away[:, 0] * away[second, 1] - away[:, 1] * away[second, 0])
    return np.array([first, second, int(np.argmax(across))], dtype=np.intp)


def _band(stiffness: FloatArray, rows: IntArray, count: int) -> FloatArray:
    """Lower band storage ``band[i - j, j]``, Fortran order."""
    i = np.repeat(rows, 9, axis=1).ravel()
    j = np.tile(rows, 9).ravel()
    lower = i >= j
    depth = int((i - j).max()) + 1
    flat = (i - j + j * depth)[lower]
    band: FloatArray = np.bincount(
        flat, stiffness.reshape(-1)[lower], minlength=depth * count
    ).astype(float, copy=False)
    return band.reshape(count, depth).T


def _pin(band: FloatArray, pinned: IntArray) -> None:
    """Zero each pinned row and column and put one on its diagonal, in place."""
    depth, _ = band.shape
    for p in pinned.tolist():
        band[:, p] = 0.0
        back = np.arange(1, min(depth, p + 1))
        band[back, p - back] = 0.0
        band[0, p] = 1.0


def _blocks(lower: FloatArray) -> tuple[tuple[FloatArray, ...], tuple[FloatArray, ...]]:
    """Dense blocks of a banded factor, read through its storage: A[i, j] lies at i + j (d-1).

    Those on the diagonal are inverted: what follows is matrix products alone.
    """
    depth, count = lower.shape
    size = max(depth - 1, 1)
    inverses, below = [], []
    padded = np.zeros((depth, count + size), order="F")
    padded[:, :count] = lower
    s0, s1 = padded.strides
    upper = np.triu(np.ones((size, size)))
    for start in range(0, count, size):
        here = min(size, count - start)
        dense = as_strided(padded[0:, start:], (2 * size, here), (s0, s1 - s0))
        inverse, _ = dtrtri(dense[:here] * upper.T[:here, :here], lower=1)
        inverses.append(np.ascontiguousarray(inverse))
        if start + size < count:
            after = min(size, count - start - size)
            below.append(dense[size : size + after] * upper[:after, :here])
    return tuple(inverses), tuple(below)
