"""Which triangle of a mesh holds a place: by a square grid of cells that know their triangles."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse import csr_array

from ledgerstone.arrays import FloatArray, IntArray

OUTSIDE = -1e-7  # an area coordinate less than this is of a place outside the triangle


@dataclass(frozen=True, slots=True)
class Locator:
    """Triangles (m,) by the cells of a square grid that the boxes around them meet.

    Parameters
    ----------
    corner, step
        Of the grid, mm: its first corner, shape (2,), and a cell's side.
    shape
        How many cells there are along x and along y.
    start, triangles
        Triangles of all cells, one cell after the other, and where each cell's begin.
    second, third
        What makes the area coordinates of each triangle's other two corners of ``(x, y, 1)``,
        shape (3, m) each.
    """

    corner: FloatArray
    step: float
    shape: tuple[int, int]
    start: IntArray
    triangles: IntArray
    second: FloatArray
    third: FloatArray

    def triangle_at(self, points: FloatArray) -> IntArray:
        """Triangle that holds each of ``points``, shape (k,): the first of several, -1 for none.

        Points are in mm, shape (k, 2).

        Source
        ------
        Geometry: area coordinates that are not negative.
        """
        cell = np.floor((points - self.corner) / self.step).astype(np.intp)
        on = ((cell >= 0) & (cell < self.shape)).all(axis=1)
        flat = np.where(on, cell[:, 0] * self.shape[1] + cell[:, 1], 0)
        many = np.where(on, self.start[flat + 1] - self.start[flat], 0)
        owner = np.repeat(np.arange(len(points)), many)
        nth = np.arange(len(owner)) - np.repeat(np.cumsum(many) - many, many)
        triangle = self.triangles.take(self.start[flat].take(owner) + nth)
        x, y = (points[:, k].take(owner) for k in (0, 1))
        second, third = (
            by_x.take(triangle) * x + by_y.take(triangle) * y + rest.take(triangle)
            for by_x, by_y, rest in (self.second, self.third)
        )
        least = np.minimum(np.minimum(second, third), 1.0 - second - third)
        holds = np.flatnonzero(least >= OUTSIDE)[::-1]
        found = np.full(len(points), -1, dtype=np.intp)
        found[owner[holds]] = triangle[holds]
        return found


def locator_of(nodes: FloatArray, triangles: IntArray) -> Locator:
    """Locator of a mesh with nodes of shape (n, 2), mm, and triangles of shape (m, 3)."""
    corners = nodes[triangles]
    low, high = corners.min(axis=1), corners.max(axis=1)
    corner = low.min(axis=0) - 1e-3
    step = float(np.sqrt(np.ptp(nodes, axis=0).prod() / len(triangles))) + 1e-3
    nx, ny = (np.floor((high.max(axis=0) - corner) / step).astype(int) + 1).tolist()
    first = np.floor((low - 1e-5 - corner) / step).astype(np.intp)
    many = np.floor((high + 1e-5 - corner) / step).astype(np.intp) - first + 1
    count = many.prod(axis=1)
    owner = np.repeat(np.arange(len(triangles)), count)
    nth = np.arange(len(owner)) - np.repeat(np.cumsum(count) - count, count)
    i, j = np.divmod(nth, many[owner, 1])
    i, j = np.minimum(first[owner, 0] + i, nx - 1), np.minimum(first[owner, 1] + j, ny - 1)
    entries = (np.ones(len(owner), dtype=bool), (i * ny + j, owner))
    by_cell = csr_array(entries, shape=(nx * ny, len(triangles)))
    u, v = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    twice = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
    x, y = corners[:, 0].T
    second, third = (
        np.array([by_x, by_y, -(by_x * x + by_y * y)]) / twice
        for by_x, by_y in ((v[:, 1], -v[:, 0]), (-u[:, 1], u[:, 0]))
    )
    return Locator(
        corner,
        step,
        (nx, ny),
        by_cell.indptr.astype(np.intp),
        by_cell.indices.astype(np.intp),
        second,
        third,
    )
