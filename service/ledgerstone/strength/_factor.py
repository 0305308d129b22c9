"""The plate's stiffness, factored once: banded Cholesky in reverse Cuthill-McKee order."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from scipy.linalg import LinAlgError, cholesky_banded
from scipy.linalg.lapack import dtrtri
from scipy.sparse import csr_array
from scipy.sparse.csgraph import reverse_cuthill_mckee

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.errors import OutlineUnusableError

BLOCK = 48  # rows, or the band where that is less
TOGETHER = 48  # right sides that are solved together: more of them leave the processor's cache


@dataclass(frozen=True, slots=True)
class Factor:
    """Lower Cholesky factor ``L`` of the pinned stiffness, in blocks of rows.

    Parameters
    ----------
    place, order
        Row of each unknown in the factor's order, and the unknown of each row, shape (3 n,) each.
    pinned
        Rows (in the factor's order) that are held at zero.
    blocks
        What solves for each block of rows, from the first to the last.
    """

    place: IntArray
    order: IntArray
    pinned: IntArray
    blocks: tuple[FactorBlock, ...]

    def forward(self, columns: FloatArray) -> FloatArray:
        """``Y`` of ``L Y = columns`` (3 n, k), shape (3 n, k), the columns in the mesh's order.

        Source
        ------
        Forward substitution, block by block: linear algebra.
        """
        right = columns.T.take(self.order, axis=1)  # a right side a row
        right[:, self.pinned] = 0.0
        begins = (right != 0.0).argmax(axis=1)  # all before it are zeros
        by_begin = np.argsort(begins, kind="stable")
        for k in range(0, len(by_begin), TOGETHER):
            some = by_begin[k : k + TOGETHER]
            right[some] = self._forward(right[some], begins[some])
        return right.T

    def _forward(self, right: FloatArray, begins: IntArray) -> FloatArray:
        """``Y`` of ``L Y' = right`` (k, 3 n), in their place, which begin at ``begins`` (k,)."""
        ends = [block.end for block in self.blocks]
        begun = np.searchsorted(begins, ends, side="left")
        for block, many in zip(self.blocks, begun.tolist(), strict=True):
            if many:
                part = right[:many, block.first : block.end]
                part[:, block.start - block.first :] = part @ block.solves.T
        return right

    def backward(self, rows: FloatArray) -> FloatArray:
        """``X`` of ``L' X = rows`` for rows (3 n, k), in the mesh's order, shape (3 n, k).

        Source
        ------
        Back substitution, block by block: linear algebra.
        """
        found = np.array(rows, order="C")
        for block in reversed(self.blocks):
            here = found[block.start : block.end]
            adds = block.solves.T @ here
            width = block.start - block.first
            here[:] = adds[width:]
            found[block.first : block.start] += adds[:width]
        return found[self.place]


@dataclass(frozen=True, slots=True)
class FactorBlock:
    """Some rows of the factor.

    Parameters
    ----------
    first, start, end
        The first column in which any of its rows is not zero; its first row, and the one after
        its last.
    solves
        From the unknowns before it and its own right sides to its unknowns: ``-L_kk^-1 L_k`` and
        ``L_kk^-1`` side by side, shape (end - start, end - first).
    """

    first: int
    start: int
    end: int
    solves: FloatArray


def order_of(triangles: IntArray, count: int) -> IntArray:
    """Position of each node in reverse Cuthill-McKee order, shape (n,), from triangles (m, 3).

    Source
    ------
    scipy's ``reverse_cuthill_mckee``; methods §1.1.
    """
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
        If a part of the plate is connected to no pinned node.
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
    reach = np.arange(len(nodes))
    np.minimum.at(reach, position[triangles], position[triangles].min(axis=1, keepdims=True))
    blocks = tuple(_blocks(lower, 3 * np.repeat(reach, 3)))
    return Factor(place, np.argsort(place), pinned, blocks)


def _far_apart(nodes: FloatArray) -> IntArray:
    """Three nodes that span the plate, far from one line."""
    first = int(np.argmin(nodes.sum(axis=1)))
    away = nodes - nodes[first]
    second = int(np.argmax(np.einsum("ij,ij->i", away, away)))
    across = np.abs(away[:, 0] * away[second, 1] - away[:, 1] * away[second, 0])
    return np.array([first, second, int(np.argmax(across))], dtype=np.intp)


def _band(stiffness: FloatArray, rows: IntArray, count: int) -> FloatArray:
    """Lower band storage ``band[i - j, j]``, Fortran order."""
    below = rows[:, :, None] - rows[:, None, :]
    lower = below >= 0
    depth = int(below.max()) + 1
    flat = (below + rows[:, None, :] * depth)[lower]
    band: FloatArray = np.bincount(flat, stiffness[lower], minlength=depth * count).astype(
        float, copy=False
    )
    return band.reshape(count, depth).T


def _pin(band: FloatArray, pinned: IntArray) -> None:
    """Zero each pinned row and column and put one on its diagonal, in place."""
    depth, _ = band.shape
    for p in pinned.tolist():
        band[:, p] = 0.0
        back = np.arange(1, min(depth, p + 1))
        band[back, p - back] = 0.0
        band[0, p] = 1.0


def _blocks(lower: FloatArray, reach: IntArray) -> Iterator[FactorBlock]:
    """Blocks of a banded factor, read through its storage: A[i, j] lies at i + j (d - 1).

    Parameters
    ----------
    reach
        The first column that is not zero in each row of the matrix and so of its factor, (3 n,).
    """
    depth, count = lower.shape
    flat = np.concatenate([lower.T.ravel(), np.zeros(depth * depth)])
    rows = min(BLOCK, depth)
    step = flat.itemsize
    strides, under = (step, step * (depth - 1)), np.tri(rows)
    for start in range(0, count, rows):
        end, first = min(start + rows, count), int(reach[start : start + rows].min())
        size, width = end - start, start - first
        offset = step * (start + first * (depth - 1))
        whole = np.ndarray((size, end - first), float, flat, offset, strides)
        before = whole[:, :width]
        if end - first > depth:  # outside the band the storage holds other entries
            before = before * (
                np.subtract.outer(np.arange(start, end), np.arange(first, start)) < depth
            )
        inverse, _ = dtrtri(whole[:, width:] * under[:size, :size], lower=1)
        solves = np.empty((size, end - first))
        solves[:, width:] = inverse
        np.matmul(-inverse, before, out=solves[:, :width])
        yield FactorBlock(first, start, end, solves)
