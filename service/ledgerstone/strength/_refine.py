"""Points of a mesh: where they start, how they settle, and how lost boundary steps come back."""

from __future__ import annotations

import numpy as np
import shapely
from scipy.spatial import Delaunay, QhullError
from shapely.geometry import Polygon

from ledgerstone.strength._faults import OutlineUnusableError
from ledgerstone.strength._outline import FloatArray, IntArray
from ledgerstone.strength._spacing import Spacing

LEVEL_RATIO = 1.25
PROTECTED = 0.27  # (p - a).(p - b) below this share of the step's square lies too near the step
CROWDED = 0.62  # edges shorter than this share of the wanted size lose a point
STRIDE = 0.8  # share of the way to the neighbours' mean that a point moves in one smoothing
ROUNDS_OF_RECOVERY = 12


def lattice(polygon: Polygon, spacing: Spacing) -> FloatArray:
    """Points of staggered rows inside the slab, each level where its own size is wanted."""
    bounds = polygon.bounds
    finest = float(spacing.sizes_mm.min(initial=spacing.coarse_mm))
    background = _Background(spacing, bounds)
    points: list[FloatArray] = []
    size = spacing.coarse_mm
    while size > finest / LEVEL_RATIO:
        level = _rows(bounds, size)
        wanted = background.at(level)
        points.append(level[(wanted >= size * 0.999) & (wanted < size * LEVEL_RATIO * 0.999)])
        size /= LEVEL_RATIO
    every = np.concatenate(points)
    return every[shapely.contains_xy(polygon, every[:, 0], every[:, 1])]


def _rows(bounds: tuple[float, ...], size: float) -> FloatArray:
    x0, y0, x1, y1 = bounds
    across = max(1, round((x1 - x0) / size))
    up = max(1, round((y1 - y0) / (size * 0.866)))
    dx, dy = (x1 - x0) / across, (y1 - y0) / up
    i, j = np.meshgrid(np.arange(across + 1), np.arange(1, up))
    return np.column_stack([(x0 + dx * (i + 0.5 * (j % 2))).ravel(), (y0 + dy * j).ravel()])


class _Background:
    """Spacing sampled once on a square grid, read back by straight-line interpolation."""

    def __init__(self, spacing: Spacing, bounds: tuple[float, ...]) -> None:
        x0, y0, x1, y1 = bounds
        self._step = max(spacing.coarse_mm / 2.0, (x1 - x0) / 150.0, (y1 - y0) / 150.0)
        self._corner = np.array([x0, y0])
        nx = int((x1 - x0) / self._step) + 2
        ny = int((y1 - y0) / self._step) + 2
        i, j = np.meshgrid(np.arange(nx), np.arange(ny), indexing="ij")
        places = self._corner + self._step * np.column_stack([i.ravel(), j.ravel()])
        self._sizes = spacing.at(places).reshape(nx, ny)

    def at(self, points: FloatArray) -> FloatArray:
        """Element size at ``points`` (n, 2), shape (n,)."""
        place = (points - self._corner) / self._step
        last = np.array(self._sizes.shape) - 2
        cell = np.clip(np.floor(place).astype(np.intp), 0, last)
        u, v = np.clip(place - cell, 0.0, 1.0).T
        i, j = cell.T
        s = self._sizes
        low = s[i, j] * (1 - u) + s[i + 1, j] * u
        high = s[i, j + 1] * (1 - u) + s[i + 1, j + 1] * u
        return np.asarray(low * (1 - v) + high * v)


def clear_of(points: FloatArray, starts: FloatArray, ends: FloatArray, share: float) -> FloatArray:
    """Those of ``points`` that lie outside the guard circle of every boundary step.

    ``share`` 0 guards the diametral circle itself, which keeps the step an edge of the Delaunay
    triangulation; more than 0 guards a wider one, which keeps the triangles on it well shaped.
    """
    return points[_is_clear(points, starts, ends, share)]


def _is_clear(
    points: FloatArray, starts: FloatArray, ends: FloatArray, share: float
) -> np.ndarray[tuple[int], np.dtype[np.bool_]]:
    middle = 0.5 * (starts + ends)
    square = np.einsum("ij,ij->i", ends - starts, ends - starts)
    dx = points[:, :1] - middle[None, :, 0]
    dy = points[:, 1:] - middle[None, :, 1]
    inside = dx * dx + dy * dy < (0.25 + share) * square
    return ~inside.any(axis=1)


def delaunay_of(nodes: FloatArray) -> Delaunay:
    """Delaunay triangulation of points (n, 2), its hull and all."""
    try:
        return Delaunay(nodes)
    except QhullError as fault:
        raise OutlineUnusableError("The outline cannot be covered by triangles.") from fault


def triangles_of(whole: Delaunay, polygon: Polygon) -> tuple[IntArray, IntArray]:
    """Triangles whose centres lie in the slab, anticlockwise (m, 3), and each simplex's triangle.

    The second array has -1 for a simplex outside the slab.
    """
    nodes, simplices = whole.points, whole.simplices.astype(np.intp)
    a, b, c = (nodes[simplices[:, k]] for k in range(3))
    twice = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    simplices[twice < 0.0] = simplices[twice < 0.0][:, ::-1]
    middle = (a + b + c) / 3.0
    inside = shapely.contains_xy(polygon, middle[:, 0], middle[:, 1])
    inside &= np.abs(twice) > 1e-3
    return simplices[inside], np.where(inside, np.cumsum(inside) - 1, -1)


def edges_of(triangles: IntArray) -> IntArray:
    """Each edge once, smaller node first, shape (e, 2)."""
    pairs = np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]], triangles[:, [2, 0]]])
    pairs.sort(axis=1)
    count = int(pairs.max()) + 1
    code = np.unique(pairs[:, 0] * count + pairs[:, 1])
    return np.column_stack(np.divmod(code, count))


def uncrowded(nodes: FloatArray, triangles: IntArray, fixed: int, spacing: Spacing) -> FloatArray:
    """Free points (those after the first ``fixed``) without the later one of each crowded pair."""
    edges = edges_of(triangles)
    ends = nodes[edges]
    length = np.linalg.norm(ends[:, 0] - ends[:, 1], axis=1)
    wanted = spacing.at(ends.mean(axis=1))
    lost = edges[(length < CROWDED * wanted) & (edges[:, 1] >= fixed)][:, 1]
    kept = np.ones(len(nodes), dtype=bool)
    kept[lost] = False
    return nodes[fixed:][kept[fixed:]]


def smoothed(
    nodes: FloatArray, triangles: IntArray, fixed: int, starts: FloatArray, ends: FloatArray
) -> FloatArray:
    """Free points moved twice towards the mean of their neighbours, never into a guard circle."""
    edges = edges_of(triangles)
    count = len(nodes)
    degree = np.bincount(edges.ravel(), minlength=count).astype(float)
    places = nodes.copy()
    for _ in range(2):
        total = np.zeros_like(places)
        for k in range(2):
            total[:, k] = np.bincount(edges[:, 0], places[edges[:, 1], k], count)
            total[:, k] += np.bincount(edges[:, 1], places[edges[:, 0], k], count)
        step = total / np.maximum(degree, 1.0)[:, None] - places
        places[fixed:] += STRIDE * step[fixed:]
    moved = places[fixed:]
    held = ~_is_clear(moved, starts, ends, 0.8 * PROTECTED)
    moved[held] = nodes[fixed:][held]
    return moved


def recovered(
    polygon: Polygon, border: FloatArray, cut: IntArray, inner: FloatArray
) -> tuple[Delaunay, IntArray]:
    """Triangulation and boundary steps once every step is an edge; lost steps are halved.

    Raises
    ------
    OutlineUnusableError
        If steps are still missing, or the triangles do not cover the slab, after twelve rounds.
    """
    for _ in range(ROUNDS_OF_RECOVERY):
        nodes = np.concatenate([border, inner])
        whole = delaunay_of(nodes)
        triangles, _ = triangles_of(whole, polygon)
        lost = _lost(cut, triangles, len(nodes))
        if not lost.any():
            break
        halves = border[cut[lost]].mean(axis=1)
        new = len(border) + np.arange(len(halves))
        first, second = cut[lost].copy(), cut[lost].copy()
        first[:, 1], second[:, 0] = new, new
        border = np.concatenate([border, halves])
        cut = np.concatenate([cut[~lost], first, second])
        inner = clear_of(inner, border[cut[:, 0]], border[cut[:, 1]], 0.0)
    a, b, c = (nodes[triangles[:, k]] for k in range(3))
    twice = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    if lost.any() or abs(0.5 * twice.sum() - polygon.area) > 1e-6 * polygon.area:
        raise OutlineUnusableError("The outline cannot be covered by triangles.")
    return whole, cut


def _lost(
    cut: IntArray, triangles: IntArray, count: int
) -> np.ndarray[tuple[int], np.dtype[np.bool_]]:
    edges = edges_of(triangles)
    steps = np.sort(cut, axis=1)
    return ~np.isin(steps[:, 0] * count + steps[:, 1], edges[:, 0] * count + edges[:, 1])
