"""Loads on a slab, and the nodal forces each one makes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from ledgerstone.strength._element import Elements, deflection_row, pressure_rows
from ledgerstone.strength._faults import OffTheSlabError
from ledgerstone.strength._outline import FloatArray, IntArray
from ledgerstone.strength.mesh import Mesh

GAUSS_AT, GAUSS_WEIGHT = (np.array(a) for a in np.polynomial.legendre.leggauss(3))


@dataclass(frozen=True, slots=True)
class Pressure:
    """Even load over the whole slab, down positive."""

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


Load = Pressure | OwnWeight | PatchLoad | LineLoad


def unit_of(load: Load) -> tuple[Load, float]:
    """The same load of size one, and its size: loads that differ in size share one solution."""
    match load:
        case Pressure(n_per_mm2=size):
            return Pressure(1.0), size
        case OwnWeight(n_per_mm3=size):
            return OwnWeight(1.0), size
        case PatchLoad(newtons=size):
            return replace(load, newtons=1.0), size
        case LineLoad(points=points, n_per_mm=size):
            return LineLoad(points, 1.0), size


def nodal_forces(
    load: Load, mesh: Mesh, elements: Elements, thickness_mm: FloatArray
) -> FloatArray:
    """Forces on the unknowns, shape (3 n,), consistent with the element's cubic.

    Parameters
    ----------
    thickness_mm
        Each triangle's thickness, shape (m,).

    Raises
    ------
    OffTheSlabError
        If no part of the load meets the slab.
    """
    match load:
        case Pressure(n_per_mm2=size):
            return size * _gathered(mesh, pressure_rows(elements), np.arange(len(elements.area)))
        case OwnWeight(n_per_mm3=size):
            rows = pressure_rows(elements) * thickness_mm[:, None]
            return size * _gathered(mesh, rows, np.arange(len(elements.area)))
        case PatchLoad():
            return _at_places(mesh, *_patch_places(load, mesh), (load.x, load.y), load.newtons)
        case LineLoad(points=points, n_per_mm=size):
            places, weights = _line_places(points, mesh.coarse_mm)
            return _at_places(mesh, places, weights, points[0], size, spread=False)


def _gathered(mesh: Mesh, rows: FloatArray, triangle: IntArray) -> FloatArray:
    unknowns = (3 * mesh.triangles[triangle][:, :, None] + np.arange(3)).reshape(-1)
    return np.asarray(np.bincount(unknowns, rows.reshape(-1), 3 * len(mesh.nodes)), dtype=float)


def _at_places(
    mesh: Mesh,
    places: FloatArray,
    weights: FloatArray,
    middle: tuple[float, float],
    size: float,
    *,
    spread: bool = True,
) -> FloatArray:
    """Forces of point loads; ``spread`` puts the whole on those places that meet the slab."""
    triangle, share = mesh.located(places)
    on = triangle >= 0
    if not on.any():
        raise OffTheSlabError("load", middle)
    triangle, share, weights = triangle[on], share[on], weights[on]
    if spread:
        weights = weights / weights.sum()
    rows = deflection_row(mesh.nodes[mesh.triangles[triangle]], share)
    return size * _gathered(mesh, rows * weights[:, None], triangle)


def _steps(length: float, size: float) -> tuple[FloatArray, FloatArray]:
    """Three Gauss places in each of the equal steps that cut ``length``, and their weights."""
    count = max(1, int(np.ceil(length / size)))
    step = length / count
    start = (np.arange(count) + 0.5) * step
    at = (start[:, None] + 0.5 * step * GAUSS_AT).ravel()
    return at, np.tile(0.5 * step * GAUSS_WEIGHT, count)


def _patch_places(load: PatchLoad, mesh: Mesh) -> tuple[FloatArray, FloatArray]:
    x, across = _steps(max(load.length, 1e-6), 0.7 * mesh.coarse_mm)
    y, up = _steps(max(load.width, 1e-6), 0.7 * mesh.coarse_mm)
    gx, gy = np.meshgrid(load.x - load.length / 2 + x, load.y - load.width / 2 + y)
    return np.column_stack([gx.ravel(), gy.ravel()]), np.outer(up, across).ravel()


def _line_places(
    points: Sequence[tuple[float, float]], size: float
) -> tuple[FloatArray, FloatArray]:
    corners = np.array(points)
    places, weights = [], []
    for a, b in zip(corners[:-1], corners[1:], strict=True):
        length = float(np.hypot(*(b - a)))
        along, weight = _steps(length, 0.5 * size)
        places.append(a + along[:, None] / max(length, 1e-9) * (b - a))
        weights.append(weight)
    return np.concatenate(places), np.concatenate(weights)
