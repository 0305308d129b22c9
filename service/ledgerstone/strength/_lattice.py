"""Points of a mesh: where the free ones start."""

from __future__ import annotations

import math
from typing import Final

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import Polygon

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.strength._spacing import EQUILATERAL, Spacing

LEVEL_RATIO: Final = 1.25  # each level's size over the next one's: our own choice
_LEVEL_KEEPS: Final = 0.999  # of its size, below which a place is the next level's: rounding
_UP_EARLIER: Final = 0.25  # of a pair of rows: so little more room makes one more
_SAMPLES: Final = 150.0  # of the spacing along a side, at most: it changes little between them


def lattice(polygon: Polygon, spacing: Spacing) -> FloatArray:
    """Free points of a mesh to start from: staggered rows inside the slab, shape (n, 2), mm.

    A level of rows a size, each `LEVEL_RATIO` finer than the last; of a level those points are
    kept whose wanted size is the level's own.

    Source
    ------
    Geometry; the ratio of levels from trials (methods §1.2).
    """
    finest = float(spacing.sizes_mm.min(initial=spacing.coarse_mm))
    background = _Background(spacing, polygon.bounds)
    points: list[FloatArray] = []
    size = spacing.coarse_mm
    while size > finest / LEVEL_RATIO:
        points.append(_level(background, size * _LEVEL_KEEPS, size))
        size /= LEVEL_RATIO
    every = np.concatenate(points)
    return every[shapely.contains_xy(polygon, every[:, 0], every[:, 1])]


def _level(background: _Background, least: float, size: float) -> FloatArray:
    """Points of the rows of one size, shape (n, 2), mm, where it is what is wanted.

    Rows are only laid through the cells that may want it: few do where the finest sizes are.
    """
    x0, y0, x1, y1 = background.bounds
    across = max(1, round((x1 - x0) / size))
    pairs = math.ceil(0.5 * (y1 - y0) / (size * EQUILATERAL) - _UP_EARLIER)
    up = 2 * max(1, pairs)  # even: alike from front and back
    dx, dy = (x1 - x0) / across, (y1 - y0) / up
    j = np.arange(1, up)
    x = x0 + dx * (np.arange(across + 1) + 0.5 * np.arange(2)[:, None])
    y = np.asarray(y0 + dy * j, dtype=np.float64)
    cells = background.cells(least, least * LEVEL_RATIO)
    held = cells[background.column(x)[j % 2], background.row(y)[:, None]]
    row, column = np.nonzero(held)
    level = np.column_stack([x[j[row] % 2, column], y[row]])
    wanted = background.at(level)
    return np.asarray(level[(wanted >= least) & (wanted < least * LEVEL_RATIO)])


class _Background:
    """Spacing sampled once on a square grid, read back by straight-line interpolation."""

    def __init__(self, spacing: Spacing, bounds: tuple[float, float, float, float]) -> None:
        self.bounds = x0, y0, x1, y1 = bounds
        self._step = max(spacing.coarse_mm / 2.0, (x1 - x0) / _SAMPLES, (y1 - y0) / _SAMPLES)
        self._corner = np.array([x0, y0])
        nx = int((x1 - x0) / self._step) + 2
        ny = int((y1 - y0) / self._step) + 2
        i, j = np.meshgrid(np.arange(nx), np.arange(ny), indexing="ij")
        places = self._corner + self._step * np.column_stack([i.ravel(), j.ravel()])
        self._sizes = spacing.at(places).reshape(nx, ny)

    def cells(self, least: float, below: float) -> NDArray[np.bool_]:
        """Cells in which a size from ``least`` to ``below``, mm, may be wanted, shape (nx, ny)."""
        s = self._sizes
        corners = np.stack([s[:-1, :-1], s[1:, :-1], s[:-1, 1:], s[1:, 1:]])
        return np.asarray((corners.min(axis=0) < below) & (corners.max(axis=0) >= least))

    def column(self, x: FloatArray) -> IntArray:
        """Column of cells that holds each place along x, mm, of any shape."""
        return self._index((x - self._corner[0]) / self._step, 0)

    def row(self, y: FloatArray) -> IntArray:
        """Row of cells that holds each place along y, mm, of any shape."""
        return self._index((y - self._corner[1]) / self._step, 1)

    def _index(self, place: FloatArray, axis: int) -> IntArray:
        return np.clip(np.floor(place).astype(np.intp), 0, self._sizes.shape[axis] - 2)

    def at(self, points: FloatArray) -> FloatArray:
        """Element size at ``points`` (n, 2), mm, shape (n,)."""
        place = (points - self._corner) / self._step
        i, j = (self._index(place[:, axis], axis) for axis in (0, 1))
        u, v = (np.clip(place[:, axis] - cell, 0.0, 1.0) for axis, cell in ((0, i), (1, j)))
        s = self._sizes
        low = s[i, j] * (1 - u) + s[i + 1, j] * u
        high = s[i, j + 1] * (1 - u) + s[i + 1, j + 1] * u
        return np.asarray(low * (1 - v) + high * v)
