"""Loads on a slab, and the nodal forces each one makes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

import numpy as np

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.errors import OffTheSlabError
from ledgerstone.strength._element import Elements, deflection_row, pressure_rows
from ledgerstone.strength.mesh import Mesh

# The centres of the sixteen equal triangles that cut a triangle's sides in four.
SIXTEEN = (
    np.array(
        [(i + 1 / 3, j + 1 / 3, 10 / 3 - i - j) for i in range(4) for j in range(4 - i)]
        + [(i + 2 / 3, j + 2 / 3, 8 / 3 - i - j) for i in range(3) for j in range(3 - i)]
    )
    / 4.0
)
PATCH_STEP = 0.7  # of the mesh's coarse size, in steps of which a patch is integrated
# Two Gauss places a step: exact for the element's cubic.
GAUSS_AT, GAUSS_WEIGHT = (np.array(a) for a in np.polynomial.legendre.leggauss(2))


@dataclass(frozen=True, slots=True)
class Pressure:
    """Even load over the whole slab, N/mm², down positive."""

    n_per_mm2: float


@dataclass(frozen=True, slots=True)
class OwnWeight:
    """Slab's own weight: each place by the thickness that is there.

    Parameters
    ----------
    n_per_mm3
        Weight of a unit of concrete: 25 kN/m³ is 25e-6.
    """

    n_per_mm3: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PatchLoad:
    """Load spread evenly over an upright rectangle, down positive.

    Parameters
    ----------
    x, y
        Centre, mm.
    length, width
        Sides along x and y, mm. Where the patch hangs over an edge the whole load goes on the
        part that meets the slab.
    newtons
        Whole load.
    """

    x: float
    y: float
    length: float
    width: float
    newtons: float


@dataclass(frozen=True, slots=True)
class LineLoad:
    """Load along a line of straight pieces, down positive.

    Parameters
    ----------
    points
        Corners of the line, mm. Parts off the slab carry nothing.
    n_per_mm
        Load on each millimetre.
    """

    points: Sequence[tuple[float, float]]
    n_per_mm: float

    def __post_init__(self) -> None:
        object.__setattr__(self, "points", tuple((float(x), float(y)) for x, y in self.points))


PlateLoad = Pressure | OwnWeight | PatchLoad | LineLoad


def unit_of(load: PlateLoad) -> tuple[PlateLoad, float]:
    """The same load of size one, and its size: loads that differ in size share one solution.

    Source
    ------
    The plate is linear: a load of twice the size does twice as much.
    """
    match load:
        case Pressure(n_per_mm2=size):
            return Pressure(1.0), size
        case OwnWeight(n_per_mm3=size):
            return OwnWeight(1.0), size
        case PatchLoad(x=x, y=y, length=length, width=width, newtons=size):
            return PatchLoad(x=x, y=y, length=length, width=width, newtons=1.0), size
        case LineLoad(points=points, n_per_mm=size):
            return LineLoad(points, 1.0), size


def nodal_forces(
    loads: Sequence[PlateLoad], mesh: Mesh, elements: Elements, depth: FloatArray
) -> FloatArray:
    """Forces on the unknowns, shape (3 n, k), consistent with the element's cubic.

    Parameters
    ----------
    loads
        The loads, each a column.
    depth
        Each triangle's thickness, over whatever thickness own weight is given for, shape (m,).

    Raises
    ------
    OffTheSlabError
        If no part of a load meets the slab.

    Source
    ------
    Virtual work: the forces do on the unknowns what the load does on ``deflection_row``.
    """
    forces = np.zeros((3 * len(mesh.nodes), len(loads)), order="F")
    every = np.arange(len(elements.area))
    placed: list[tuple[int, _Placed]] = []
    for k, load in enumerate(loads):
        match load:
            case Pressure(n_per_mm2=size):
                forces[:, k] = size * _node_forces(mesh, pressure_rows(elements), every)
            case OwnWeight(n_per_mm3=size):
                rows = pressure_rows(elements) * depth[:, None]
                forces[:, k] = size * _node_forces(mesh, rows, every)
            case PatchLoad() | LineLoad():
                placed.append((k, _placed(load, mesh)))
    _put(mesh, placed, forces)
    return forces


@dataclass(frozen=True, slots=True)
class _Placed:
    """A load as point loads: where (p, 2) and how much (p,), and the place that names it.

    ``whole`` is their sum on the slab, N; None if parts off it carry nothing.
    """

    places: FloatArray
    weights: FloatArray
    middle: tuple[float, float]
    whole: float | None


def _placed(load: PatchLoad | LineLoad, mesh: Mesh) -> _Placed:
    if isinstance(load, PatchLoad):
        return _Placed(*_patch_places(load, mesh), (load.x, load.y), load.newtons)
    places, weights = _line_places(load.points, mesh.coarse_mm)
    return _Placed(places, load.n_per_mm * weights, load.points[0], None)


def _put(mesh: Mesh, placed: Sequence[tuple[int, _Placed]], forces: FloatArray) -> None:
    """Add placed loads to their columns of ``forces`` (3 n, k), all found in the mesh at once."""
    if not placed:
        return
    points = _points(mesh, [load for _, load in placed])
    corners = mesh.triangles[points.triangle]
    rows = deflection_row(mesh.nodes[corners], points.share).T * points.newtons
    unknowns = (3 * corners.T[:, None] + np.arange(3)[:, None]).reshape(9, -1)
    count = len(forces)
    flat = unknowns + count * points.owner
    found = np.bincount(flat.ravel(), rows.ravel(), count * len(placed))
    forces[:, [k for k, _ in placed]] = found.reshape(len(placed), count).T


@dataclass(frozen=True, slots=True)
class PointLoads:
    """Loads as points on the mesh.

    Parameters
    ----------
    triangle, share
        The triangle of each point (p,), and its area coordinates there (p, 3).
    newtons
        Shape (p,).
    owner
        Which load each point belongs to, shape (p,).
    """

    triangle: IntArray
    share: FloatArray
    newtons: FloatArray
    owner: IntArray


def _points(mesh: Mesh, placed: Sequence[_Placed]) -> PointLoads:
    triangle, share = mesh.located(np.concatenate([p.places for p in placed]))
    owner = np.repeat(np.arange(len(placed)), [len(p.places) for p in placed])
    on = triangle >= 0
    weights = np.where(on, np.concatenate([p.weights for p in placed]), 0.0)
    sums = np.bincount(owner, weights)
    meets = np.bincount(owner[on], minlength=len(placed)) > 0
    for load, is_on in zip(placed, meets.tolist(), strict=True):
        if not is_on:
            raise OffTheSlabError("load", load.middle)
    scale = np.array(
        [1.0 if p.whole is None else p.whole / s for p, s in zip(placed, sums, strict=True)]
    )
    owner = owner[on]
    return PointLoads(triangle[on], share[on], weights[on] * scale[owner], owner)


def points_in(
    load: PlateLoad, mesh: Mesh, elements: Elements, depth: FloatArray, triangles: IntArray
) -> PointLoads:
    """One load as point loads, N, of which those in the given triangles are kept.

    A load over the whole slab is sixteen equal points in each triangle.

    Parameters
    ----------
    depth
        As ``nodal_forces`` takes it, shape (m,).
    triangles
        Numbers of triangles, shape (t,).

    Raises
    ------
    OffTheSlabError
        If no part of the load meets the slab.
    """
    match load:
        case Pressure(n_per_mm2=size):
            density = np.full(len(triangles), size)
        case OwnWeight(n_per_mm3=size):
            density = size * depth[triangles]
        case PatchLoad() | LineLoad():
            every = _points(mesh, [_placed(load, mesh)])
            kept = np.isin(every.triangle, triangles)
            return PointLoads(
                every.triangle[kept], every.share[kept], every.newtons[kept], every.owner[kept]
            )
    each = density * elements.area[triangles] / len(SIXTEEN)
    return PointLoads(
        np.repeat(triangles, len(SIXTEEN)),
        np.tile(SIXTEEN, (len(triangles), 1)),
        np.repeat(each, len(SIXTEEN)),
        np.zeros(len(triangles) * len(SIXTEEN), dtype=np.intp),
    )


def _node_forces(mesh: Mesh, rows: FloatArray, triangle: IntArray) -> FloatArray:
    unknowns = (3 * mesh.triangles[triangle][:, :, None] + np.arange(3)).reshape(-1)
    return np.asarray(np.bincount(unknowns, rows.reshape(-1), 3 * len(mesh.nodes)), dtype=float)


def _steps(length: float, size: float) -> tuple[FloatArray, FloatArray]:
    """Two Gauss places in each of the equal steps that cut ``length``, and their weights."""
    count = max(1, int(np.ceil(length / size)))
    step = length / count
    start = (np.arange(count) + 0.5) * step
    at = (start[:, None] + 0.5 * step * GAUSS_AT).ravel()
    return at, np.tile(0.5 * step * GAUSS_WEIGHT, count)


def _patch_places(load: PatchLoad, mesh: Mesh) -> tuple[FloatArray, FloatArray]:
    about, weights = _rectangle(load.length, load.width, PATCH_STEP * mesh.coarse_mm)
    return about + np.array([load.x, load.y]), weights


@lru_cache(maxsize=32)
def _rectangle(length: float, width: float, size: float) -> tuple[FloatArray, FloatArray]:
    """Places about the middle of a rectangle, shape (p, 2), and their weights (p,)."""
    x, across = _steps(max(length, 1e-6), size)
    y, up = _steps(max(width, 1e-6), size)
    gx, gy = np.meshgrid(x - length / 2, y - width / 2)
    return np.column_stack([gx.ravel(), gy.ravel()]), np.outer(up, across).ravel()


def _line_places(
    points: Sequence[tuple[float, float]], size: float
) -> tuple[FloatArray, FloatArray]:
    corners = np.array(points)
    places, weights = [], []
    for a, b in pairwise(corners):
        length = float(np.hypot(*(b - a)))
        along, weight = _steps(length, 0.5 * size)
        places.append(a + along[:, None] / max(length, 1e-9) * (b - a))
        weights.append(weight)
    return np.concatenate(places), np.concatenate(weights)
