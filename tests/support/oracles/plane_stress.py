"""A slab in its own plane by scikit-fem: plane stress, quadratic triangles."""

from __future__ import annotations

import numpy as np
from scipy.spatial import cKDTree
from skfem import (
    Basis,
    BilinearForm,
    ElementTriP2,
    ElementVector,
    LinearForm,
    MeshTri,
    condense,
    solve,
)
from skfem.models.elasticity import linear_elasticity

NU = 0.2


def worst_stress_mpa(
    nodes: np.ndarray,
    triangles: np.ndarray,
    *,
    weight: float,
    held_mm: tuple[float, float],
    radius_mm: float,
    clear_mm: float,
) -> float:
    """Largest principal stress either way up, averaged over a radius, MPa.

    Parameters
    ----------
    nodes, triangles
        Mesh of the slab in plan, its lower long edge along y = 0.
    weight
        N/mm³.
    held_mm
        Two places on the lower edge.
    radius_mm
        The stress tensor is averaged over this.
    clear_mm
        Places nearer to a support than this are left out: a point's own stress has no end.
    """
    mesh = MeshTri(nodes.T.copy(), triangles.T.copy())
    basis = Basis(mesh, ElementVector(ElementTriP2()), intorder=4)
    u = _displaced(basis, nodes, weight, held_mm)
    stress = _stresses(basis, u)
    places = np.asarray(basis.global_coordinates()).reshape(2, -1).T
    area = np.asarray(basis.dx).ravel()
    near = cKDTree(places)
    away = np.min([np.hypot(nodes[:, 0] - h, nodes[:, 1]) for h in held_mm], axis=0)
    worst = 0.0
    for place in nodes[away > clear_mm]:
        at = near.query_ball_point(place, radius_mm)
        x, y, xy = (stress[:, at] * area[at]).sum(axis=1) / area[at].sum()
        middle, reach = 0.5 * (x + y), np.hypot(0.5 * (x - y), xy)
        worst = max(worst, middle + reach, reach - middle)
    return float(worst)


def _displaced(
    basis: Basis, nodes: np.ndarray, weight: float, held_mm: tuple[float, float]
) -> np.ndarray:
    # plane stress for unit E: lambda = nu / (1 - nu²), mu = 1 / 2 (1 + nu)
    K = BilinearForm(linear_elasticity(NU / (1 - NU**2), 0.5 / (1 + NU))).assemble(basis)
    f = LinearForm(lambda v, _: -weight * v[1]).assemble(basis)
    low = np.flatnonzero(np.abs(nodes[:, 1]) < 1e-6)
    posts = [low[np.argmin(np.abs(nodes[low, 0] - h))] for h in held_mm]
    fixed = np.concatenate([basis.nodal_dofs[1, posts], basis.nodal_dofs[0, posts[:1]]])
    return np.asarray(solve(*condense(K, f, D=fixed)))


def _stresses(basis: Basis, u: np.ndarray) -> np.ndarray:
    rate = basis.interpolate(u).grad
    exx, eyy, exy = rate[0, 0], rate[1, 1], 0.5 * (rate[0, 1] + rate[1, 0])
    unit = 1.0 / (1.0 - NU**2)
    return np.stack(
        [
            (unit * (exx + NU * eyy)).ravel(),
            (unit * (eyy + NU * exx)).ravel(),
            (exy / (1.0 + NU)).ravel(),
        ]
    )
