"""Smoothing of a mesh's points, and recovery of lost boundary steps."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import shapely
from scipy.spatial import Delaunay, QhullError, cKDTree
from scipy.spatial.distance import cdist
from shapely.geometry import Polygon

from ledgerstone.arrays import BoolArray, FloatArray, IntArray
from ledgerstone.errors import OutlineUnusableError
from ledgerstone.strength._spacing import Spacing

MOVED_MM = 1e-6  # enough to break ties of points in line, too little to be seen
PROTECTED = 0.27  # (p - a).(p - b) below this share of the step's square is too near the step
LOOSELY_PROTECTED = 0.8 * PROTECTED  # enough for a point that is moved, or at a corner
CROWDED = 0.62  # edges shorter than this share of the wanted size lose a point
STRIDE = 0.8  # share of the way to the neighbours' mean that a point moves in one smoothing
MAX_BORDER = 2000  # a boundary cut finer than this has two steps that cross
ROUNDS_OF_RECOVERY = 12  # tries to get lost boundary steps back, which bounds the work
WELL_SHAPED = 22.0  # degrees: smoothing stops here
WELL_SHAPED_CLOSE = 15.0  # degrees; the same beside steps that are close by design
MAX_SMOOTHINGS = 5  # then the best so far is taken
ROUNDS_OF_SMOOTHING = 3  # at a time, before the angles are looked at


def clear_of(points: FloatArray, starts: FloatArray, ends: FloatArray, share: float) -> FloatArray:
    """Return those points that lie outside the guard circle of every boundary step, (k, 2), mm.

    Parameters
    ----------
    points
        Shape (n, 2), mm.
    starts, ends
        The boundary's steps, shape (m, 2) each, mm.
    share
        By how much of the step's square the circle's is larger than that on the step as its
        diameter. With 0 the step stays an edge of the Delaunay triangulation; with more the
        triangles on it are well shaped too.

    Source
    ------
    A segment whose diametral circle is empty is an edge of the Delaunay triangulation; Ruppert,
    *Journal of Algorithms* 18 (1995), from memory.
    """
    return points[_is_clear(points, starts, ends, share)]


def _is_clear(points: FloatArray, starts: FloatArray, ends: FloatArray, share: float) -> BoolArray:
    middle = 0.5 * (starts + ends)
    square = np.einsum("ij,ij->i", ends - starts, ends - starts)
    inside = cdist(points, middle, "sqeuclidean") < (0.5**2 + share) * square
    return np.asarray(~inside.any(axis=1))


@dataclass(frozen=True, slots=True)
class Covered:
    """A slab covered by triangles: nodes (n, 2), and triangles (m, 3), anticlockwise."""

    nodes: FloatArray
    triangles: IntArray

    def corners(self) -> tuple[FloatArray, FloatArray, FloatArray]:
        """The three corners of every triangle, shape (m, 2) each, mm.

        Source
        ------
        Geometry.
        """
        a, b, c = (self.nodes[self.triangles[:, k]] for k in range(3))
        return a, b, c


def covered(nodes: FloatArray, polygon: Polygon) -> Covered:
    """Delaunay triangles of points of shape (n, 2), mm, whose centroids are in the slab.

    The points are moved by up to half of `MOVED_MM` first: points in line or on circles, as a
    boundary's are, take the triangulation 1.5 times as long.

    Raises
    ------
    OutlineUnusableError
        The points have no triangulation.
    """
    try:
        whole = Delaunay(nodes + MOVED_MM * _scattered(len(nodes)))
    except QhullError as fault:
        raise OutlineUnusableError("The outline cannot be covered by triangles.") from fault
    simplices = whole.simplices.astype(np.intp)
    a, b, c = (nodes[simplices[:, k]] for k in range(3))
    twice = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    simplices[twice < 0.0] = simplices[twice < 0.0][:, ::-1]
    middle = (a + b + c) / 3
    inside = shapely.contains_xy(polygon, middle[:, 0], middle[:, 1])
    return Covered(nodes, simplices[inside & (np.abs(twice) > 1e-3)])


@lru_cache(maxsize=16)
def _scattered(count: int) -> FloatArray:
    return np.random.default_rng(count).random((count, 2)) - 0.5


def angles_degrees(nodes: FloatArray, triangles: IntArray) -> FloatArray:
    """Smallest angle of each triangle (m, 3) of nodes (n, 2), degrees, shape (m,).

    Source
    ------
    Geometry.
    """
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
) -> Covered:
    """Triangulation of the best of a few smoothings of the free points.

    Crowded points are left out first. It stops at the first triangulation whose
    smallest angle, among triangles with a free point, is 22 degrees; else it takes the best round.

    Parameters
    ----------
    border, inner
        The fixed points, shape (b, 2), and the free ones, shape (k, 2), mm.
    cut
        The boundary's steps as pairs of border points, shape (m, 2).
    close
        Of the triangles on so many of the last border points, 15 degrees do.

    Raises
    ------
    OutlineUnusableError
        The points have no triangulation.
    """
    guards = border[cut[:, 0]], border[cut[:, 1]]
    inner = not_crowded(border, inner, spacing)
    best, best_angle = covered(np.concatenate([border, inner]), polygon), -1.0
    now, fixed = best, len(border)
    for _ in range(MAX_SMOOTHINGS):
        inner = smoothed(now.nodes, edges_of(now.triangles), fixed, guards)
        now = covered(np.concatenate([border, inner]), polygon)
        angle = _smallest_degrees(now, fixed, close)
        if angle > best_angle:
            best, best_angle = now, angle
        if best_angle >= WELL_SHAPED:
            break
    return best


def _smallest_degrees(now: Covered, fixed: int, close: int) -> float:
    """Smallest angle of triangles with a free point; more is made of those on the close ones."""
    free = now.triangles[(now.triangles >= fixed).any(axis=1)]
    angles = angles_degrees(now.nodes, free)
    if close:
        on_close = ((free < fixed) & (free >= fixed - close)).any(axis=1)
        angles[on_close] *= WELL_SHAPED / WELL_SHAPED_CLOSE
    return float(angles.min(initial=180.0))  # no angle is larger


def edges_of(triangles: IntArray) -> IntArray:
    """Each edge of triangles (m, 3) once, smaller node first, shape (e, 2).

    Source
    ------
    Counting.
    """
    count = int(triangles.max()) + 1
    return np.column_stack(np.divmod(_edge_codes(triangles, count), count))


def _edge_codes(triangles: IntArray, count: int) -> IntArray:
    """Each edge once, as its smaller node times ``count`` plus the larger, in rising order."""
    ends = triangles.T.ravel(), triangles[:, [1, 2, 0]].T.ravel()
    codes = np.sort(np.minimum(*ends) * count + np.maximum(*ends))
    return np.asarray(codes[np.append(True, codes[1:] != codes[:-1])])


def not_crowded(border: FloatArray, inner: FloatArray, spacing: Spacing) -> FloatArray:
    """Free points without the later one of a pair that lies too close, mm, shape (n, 2).

    ``border`` are the fixed points, which stay, shape (b, 2), and ``inner`` the free ones, (k, 2).

    Source
    ------
    Geometry; how near is too near, from trials (methods §1.2).
    """
    every = np.concatenate([border, inner])
    pairs = cKDTree(every).query_pairs(CROWDED * spacing.coarse_mm, output_type="ndarray")
    first, last = pairs.min(axis=1), pairs.max(axis=1)
    free = last >= len(border)
    first, last = first[free], last[free]
    length = np.hypot(*(every[first] - every[last]).T)
    kept = np.ones(len(every), dtype=bool)
    kept[last[length < CROWDED * spacing.at(0.5 * (every[first] + every[last]))]] = False
    return np.asarray(inner[kept[len(border) :]])


def smoothed(
    nodes: FloatArray, edges: IntArray, fixed: int, guards: tuple[FloatArray, FloatArray]
) -> FloatArray:
    """Free points after a few rounds of Laplacian smoothing, mm, shape (k, 2).

    A point that would enter a guard circle stays where it was.

    Parameters
    ----------
    nodes, edges
        Shapes (n, 2), mm, and (e, 2).
    fixed
        How many of the first nodes are the border's, and stay.
    guards
        Starts and ends of the boundary's steps, shape (m, 2) each, mm.

    Source
    ------
    Laplacian smoothing: common practice, no source; rounds and stride are from our own trials.
    """
    count = len(nodes)
    reached = np.bincount(edges.ravel(), minlength=count)
    degree = np.maximum(reached, 1.0)
    pulled = (np.arange(count) >= fixed) & (reached > 0)  # one without neighbours stays
    places = nodes.copy()
    for _ in range(ROUNDS_OF_SMOOTHING):
        total = np.zeros_like(places)
        for k in range(2):
            total[:, k] = np.bincount(edges[:, 0], places[edges[:, 1], k], count)
            total[:, k] += np.bincount(edges[:, 1], places[edges[:, 0], k], count)
        places[pulled] += STRIDE * (total / degree[:, None] - places)[pulled]
    moved = places[fixed:]
    held = ~_is_clear(moved, *guards, LOOSELY_PROTECTED)
    moved[held] = nodes[fixed:][held]
    return moved


def recovered(
    polygon: Polygon, border: FloatArray, cut: IntArray, now: Covered
) -> tuple[Covered, IntArray]:
    """Triangulation, and boundary steps (m, 2), with every step an edge; lost steps are halved.

    Parameters
    ----------
    border, cut
        Points of the boundary, mm, shape (b, 2), and its steps as pairs of them, shape (m, 2).
    now
        The triangulation so far, its first nodes the border's.

    Raises
    ------
    OutlineUnusableError
        If steps are still missing, or the triangles do not cover the slab, after twelve rounds.

    Source
    ------
    Ruppert, *Journal of Algorithms* 18 (1995), from memory: a step that is missing is halved.
    """
    inner = now.nodes[len(border) :]
    for _ in range(ROUNDS_OF_RECOVERY):
        lost = _lost(cut, now.triangles, len(now.nodes))
        if not lost.any() or len(border) > MAX_BORDER:
            break
        halves = border[cut[lost]].mean(axis=1)
        new = len(border) + np.arange(len(halves))
        first, second = cut[lost].copy(), cut[lost].copy()
        first[:, 1], second[:, 0] = new, new
        border = np.concatenate([border, halves])
        cut = np.concatenate([cut[~lost], first, second])
        inner = clear_of(inner, border[cut[:, 0]], border[cut[:, 1]], 0.0)
        now = covered(np.concatenate([border, inner]), polygon)
    a, b, c = now.corners()
    twice = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    if lost.any() or abs(0.5 * twice.sum() - polygon.area) > 1e-6 * polygon.area:
        raise OutlineUnusableError("The outline cannot be covered by triangles.")
    return now, cut


def _lost(cut: IntArray, triangles: IntArray, count: int) -> BoolArray:
    edges = _edge_codes(triangles, count)
    steps = cut.min(axis=1) * count + cut.max(axis=1)
    at = np.minimum(np.searchsorted(edges, steps), len(edges) - 1)
    return np.asarray(edges[at] != steps)
