"""Points of a mesh: where they start, how they settle, and how lost boundary steps come back."""

from __future__ import annotations

import math

import numpy as np
import shapely
from numpy.typing import NDArray
from scipy.spatial import Delaunay, QhullError
from scipy.spatial.distance import cdist
from shapely.geometry import Polygon

from ledgerstone.errors import OutlineUnusableError
from ledgerstone.strength._outline import FloatArray, IntArray
from ledgerstone.strength._spacing import Spacing

BoolArray = NDArray[np.bool_]

LEVEL_RATIO = 1.25
PROTECTED = 0.27  # (p - a).(p - b) below this share of the step's square lies too near the step
CROWDED = 0.62  # edges shorter than this share of the wanted size lose a point
STRIDE = 0.8  # share of the way to the neighbours' mean that a point moves in one smoothing
MOST_BORDER = 2000  # no boundary worth keeping is cut finer: two of its steps cross
ROUNDS_OF_RECOVERY = 12
WELL_SHAPED = 22.0  # degrees: smoothing stops here
WELL_SHAPED_CLOSE = 15.0
MOST_SMOOTHINGS = 5


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
    up = 2 * max(
        1, math.ceil(0.5 * (y1 - y0) / (size * 0.866) - 0.25)
    )  # even: alike from front and back
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


def _is_clear(points: FloatArray, starts: FloatArray, ends: FloatArray, share: float) -> BoolArray:
    middle = 0.5 * (starts + ends)
    square = np.einsum("ij,ij->i", ends - starts, ends - starts)
    inside = cdist(points, middle, "sqeuclidean") < (0.25 + share) * square
    return np.asarray(~inside.any(axis=1))


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


def angles_degrees(nodes: FloatArray, triangles: IntArray) -> FloatArray:
    """Smallest angle of each triangle, shape (m,)."""
    corners = nodes[triangles]
    smallest = np.full(len(triangles), 180.0)
    for k in range(3):
        u = corners[:, (k + 1) % 3] - corners[:, k]
        v = corners[:, (k + 2) % 3] - corners[:, k]
        cross = np.abs(u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0])
        angle = np.degrees(np.arctan2(cross, np.einsum("ij,ij->i", u, v)))
        smallest = np.minimum(smallest, angle)
    return smallest


def at_rest(
    polygon: Polygon,
    border: FloatArray,
    inner: FloatArray,
    cut: IntArray,
    spacing: Spacing,
    *,
    close: int,
) -> Delaunay:
    """Triangulation of the best of a few smoothings of the free points ``inner`` (k, 2).

    Crowded points go in the first round. It stops at the first triangulation whose smallest angle,
    among triangles with a free point, is 22 degrees; else it takes the best of the rounds. Of the
    triangles on the last ``close`` points of the border, 15 degrees do.
    """
    guards = border[cut[:, 0]], border[cut[:, 1]]
    fixed = len(border)
    best, best_angle = None, -1.0
    for round_no in range(MOST_SMOOTHINGS):
        whole = delaunay_of(np.concatenate([border, inner]))
        triangles, _ = triangles_of(whole, polygon)
        angle = _smallest_degrees(whole.points, triangles, fixed, close)
        if round_no > 0 and angle > best_angle:
            best, best_angle = whole, angle
        if round_no > 0 and best_angle >= WELL_SHAPED:
            break
        kept = ~crowded(whole.points, triangles, fixed, spacing) if round_no == 0 else None
        inner = smoothed(whole.points, triangles, fixed, guards, kept)
    return whole if best is None else best


def _smallest_degrees(nodes: FloatArray, triangles: IntArray, fixed: int, close: int) -> float:
    """Smallest angle of triangles with a free point; more is made of those on the close ones."""
    free = triangles[(triangles >= fixed).any(axis=1)]
    angles = angles_degrees(nodes, free)
    if close:
        on_close = ((free < fixed) & (free >= fixed - close)).any(axis=1)
        angles[on_close] *= WELL_SHAPED / WELL_SHAPED_CLOSE
    return float(angles.min(initial=180.0))


def edges_of(triangles: IntArray) -> IntArray:
    """Each edge once, smaller node first, shape (e, 2)."""
    pairs = np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]], triangles[:, [2, 0]]])
    pairs.sort(axis=1)
    count = int(pairs.max()) + 1
    code = np.unique(pairs[:, 0] * count + pairs[:, 1])
    return np.column_stack(np.divmod(code, count))


def crowded(nodes: FloatArray, triangles: IntArray, fixed: int, spacing: Spacing) -> BoolArray:
    """Which nodes are the later, free one of a pair that lies too close, shape (n,)."""
    edges = edges_of(triangles)
    ends = nodes[edges]
    length = np.linalg.norm(ends[:, 0] - ends[:, 1], axis=1)
    wanted = spacing.at(ends.mean(axis=1))
    lost = np.zeros(len(nodes), dtype=bool)
    lost[edges[(length < CROWDED * wanted) & (edges[:, 1] >= fixed)][:, 1]] = True
    return lost


def smoothed(
    nodes: FloatArray,
    triangles: IntArray,
    fixed: int,
    guards: tuple[FloatArray, FloatArray],
    kept: BoolArray | None,
) -> FloatArray:
    """Free points moved thrice towards the mean of their neighbours, never into a guard circle.

    Those that ``kept`` (n,) leaves out go, and pull at no others.
    """
    edges = edges_of(triangles)
    if kept is not None:
        edges = edges[kept[edges].all(axis=1)]
    count = len(nodes)
    reached = np.bincount(edges.ravel(), minlength=count)
    degree = np.maximum(reached, 1.0)
    pulled = (np.arange(count) >= fixed) & (reached > 0)  # one without neighbours stays
    places = nodes.copy()
    for _ in range(3):
        total = np.zeros_like(places)
        for k in range(2):
            total[:, k] = np.bincount(edges[:, 0], places[edges[:, 1], k], count)
            total[:, k] += np.bincount(edges[:, 1], places[edges[:, 0], k], count)
        places[pulled] += STRIDE * (total / degree[:, None] - places)[pulled]
    moved = places[fixed:]
    held = ~_is_clear(moved, *guards, 0.8 * PROTECTED)
    moved[held] = nodes[fixed:][held]
    return moved if kept is None else moved[kept[fixed:]]


def recovered(
    polygon: Polygon, border: FloatArray, cut: IntArray, whole: Delaunay
) -> tuple[Delaunay, IntArray]:
    """Triangulation and boundary steps once every step is an edge; lost steps are halved.

    Raises
    ------
    OutlineUnusableError
        If steps are still missing, or the triangles do not cover the slab, after twelve rounds.
    """
    inner = whole.points[len(border) :]
    for _ in range(ROUNDS_OF_RECOVERY):
        nodes = whole.points
        triangles, _ = triangles_of(whole, polygon)
        lost = _lost(cut, triangles, len(nodes))
        if not lost.any() or len(border) > MOST_BORDER:
            break
        halves = border[cut[lost]].mean(axis=1)
        new = len(border) + np.arange(len(halves))
        first, second = cut[lost].copy(), cut[lost].copy()
        first[:, 1], second[:, 0] = new, new
        border = np.concatenate([border, halves])
        cut = np.concatenate([cut[~lost], first, second])
        inner = clear_of(inner, border[cut[:, 0]], border[cut[:, 1]], 0.0)
        whole = delaunay_of(np.concatenate([border, inner]))
    a, b, c = (nodes[triangles[:, k]] for k in range(3))
    twice = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    if lost.any() or abs(0.5 * twice.sum() - polygon.area) > 1e-6 * polygon.area:
        raise OutlineUnusableError("The outline cannot be covered by triangles.")
    return whole, cut


def _lost(cut: IntArray, triangles: IntArray, count: int) -> BoolArray:
    edges = edges_of(triangles)
    steps = np.sort(cut, axis=1)
    return ~np.isin(steps[:, 0] * count + steps[:, 1], edges[:, 0] * count + edges[:, 1])
