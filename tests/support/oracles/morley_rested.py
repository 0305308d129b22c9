"""A thin plate by scikit-fem's Morley element on springs that push and never pull.

Nothing of the service's plate is used but the supports' own description: places along lines and
over areas every 20 mm or so, a spring at each, and rests that would pull let go one round after
another until none pulls and none that is apart is sunk.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
import shapely
from scipy.sparse import csc_matrix, csr_matrix, diags
from scipy.sparse.linalg import splu
from scipy.spatial import cKDTree
from shapely.geometry import Polygon

from ledgerstone.strength import AreaSupport, LineSupport, PointSupport, Support
from support.oracles.morley import MorleyPlate

STEP_MM = 20.0
STIFF_N_PER_MM = 1e6  # a spring where a support gives no rate of its own
ROUNDS = 60


@dataclass
class Springs:
    """Places of springs (k, 2), and how stiff each is, N/mm (k,)."""

    places: np.ndarray
    stiff: np.ndarray


def springs_of(supports: Sequence[Support], outline: Polygon) -> Springs:
    """Springs of some supports, where they meet the slab."""
    found = [_springs(support) for support in supports]
    places = np.concatenate([one.places for one in found])
    stiff = np.concatenate([one.stiff for one in found])
    near = outline.buffer(0.5)
    on = shapely.intersects_xy(near, places[:, 0], places[:, 1])
    inside = np.array([_onto(outline, place) for place in places[on]])
    return Springs(inside, stiff[on])


def _onto(outline: Polygon, place: np.ndarray) -> tuple[float, float]:
    """The place a hair inside the slab, so that it lies in a triangle."""
    point = shapely.Point(place)
    inner = outline.buffer(-1e-3)
    if inner.contains(point):
        return float(point.x), float(point.y)
    near = shapely.shortest_line(inner, point).coords[0]
    return float(near[0]), float(near[1])


def _springs(support: Support) -> Springs:
    match support:
        case PointSupport(x=x, y=y):
            return Springs(np.array([[x, y]]), np.array([STIFF_N_PER_MM]))
        case LineSupport(points=points, crushes_n_per_mm2=rate):
            return _along(points, rate)
        case AreaSupport(polygon=polygon, crushes_n_per_mm3=rate):
            return _over(polygon, rate)


def _along(points: Sequence[tuple[float, float]], rate: float | None) -> Springs:
    places, stiff = [], []
    for a, b in pairwise(points):
        length = math.dist(a, b)
        count = max(1, round(length / STEP_MM))
        share = np.linspace(0.0, 1.0, count + 1)[:, None]
        places.append(np.array(a) * (1 - share) + np.array(b) * share)
        part = np.full(count + 1, length / count)
        part[[0, -1]] *= 0.5
        stiff.append(np.full(count + 1, STIFF_N_PER_MM) if rate is None else rate * part)
    return Springs(np.concatenate(places), np.concatenate(stiff))


def _over(polygon: Polygon, rate: float | None) -> Springs:
    x0, y0, x1, y1 = polygon.bounds
    nx, ny = (max(1, round(d / STEP_MM)) for d in (x1 - x0, y1 - y0))
    dx, dy = (x1 - x0) / nx, (y1 - y0) / ny
    gx, gy = np.meshgrid(x0 + dx * (np.arange(nx) + 0.5), y0 + dy * (np.arange(ny) + 0.5))
    places = np.column_stack([gx.ravel(), gy.ravel()])
    stiff = STIFF_N_PER_MM if rate is None else rate * dx * dy
    return Springs(places, np.full(len(places), stiff))


class RestedPlate:
    """A Morley plate held by nothing but springs.

    Parameters
    ----------
    nodes, triangles
        Mesh, shapes (n, 2) and (m, 3).
    """

    def __init__(
        self, nodes: np.ndarray, triangles: np.ndarray, thickness_mm: float, e_mpa: float, nu: float
    ) -> None:
        low, high = int(nodes.sum(axis=1).argmin()), int(nodes.sum(axis=1).argmax())
        third = int((nodes[:, 0] - nodes[:, 1]).argmax())
        held = np.array([low, high, third])  # only so that its own factor has an answer
        self.plate = MorleyPlate(nodes, triangles, held, thickness_mm, e_mpa, nu)
        self.stiffness = csc_matrix(self.plate.form.assemble(self.plate.basis))

    def pushed(self, springs: Springs, force: np.ndarray) -> np.ndarray:
        """Unknowns (N,) under one load on springs that only push.

        Raises
        ------
        RuntimeError
            If the springs do not settle.
        """
        rows = csr_matrix(self.plate.basis.probes(springs.places.T))
        touching = np.ones(len(springs.stiff), dtype=bool)
        seen: set[bytes] = set()
        for _ in range(ROUNDS):
            stiff = diags(np.where(touching, springs.stiff, 0.0))
            whole = (self.stiffness + rows.T @ stiff @ rows).tocsc()
            u = np.asarray(splu(whole, permc_spec="MMD_AT_PLUS_A").solve(force))
            sunk = rows @ u
            apart = (sunk > 0.0) != touching
            if not apart.any():
                return u
            if touching.tobytes() in seen:  # one exchange at a time from here on
                apart = np.arange(len(apart)) == np.argmax(np.where(apart, np.abs(sunk), 0.0))
            seen.add(touching.tobytes())
            touching = touching ^ apart
        raise RuntimeError("The springs do not settle.")

    def worst_stress(self, u: np.ndarray, radius_mm: float) -> float:
        """Largest principal stress of a mean over the triangles within a radius, MPa."""
        plate = self.plate
        moments = plate.moments(u[:, None])[:, :, 0]
        corners = plate.nodes[plate.triangles]
        near = cKDTree(corners.mean(axis=1)).query_ball_point(plate.nodes, radius_mm)
        side = corners[:, 1:] - corners[:, :1]
        area = 0.5 * np.abs(side[:, 0, 0] * side[:, 1, 1] - side[:, 0, 1] * side[:, 1, 0])
        mean = np.array([np.average(moments[at], axis=0, weights=area[at]) for at in near])
        x, y, xy = (6.0 * mean / plate.thickness_mm**2).T
        middle, reach = 0.5 * (x + y), np.hypot(0.5 * (x - y), xy)
        return float(np.maximum(middle + reach, reach - middle).max())
