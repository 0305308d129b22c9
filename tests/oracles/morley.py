"""A thin plate by scikit-fem's Morley element, written as that library's own examples are.

One assembly, one sparse factor, every load as a column: nothing here is slower than it need be.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse.linalg import splu
from skfem import Basis, BilinearForm, ElementTriMorley, LinearForm, MeshTri
from skfem.helpers import dd, ddot, eye, trace


def rigidity(thickness_mm: float, e_mpa: float, nu: float) -> float:
    """``D``, N·mm."""
    return e_mpa * thickness_mm**3 / (12.0 * (1.0 - nu**2))


@dataclass
class MorleyPlate:
    """A plate held at nodes, factored once.

    Parameters
    ----------
    nodes, triangles
        Mesh, shapes (n, 2) and (m, 3).
    held
        Nodes that cannot move up or down, shape (k,).
    """

    nodes: np.ndarray
    triangles: np.ndarray
    held: np.ndarray
    thickness_mm: float
    e_mpa: float
    nu: float

    def __post_init__(self) -> None:
        mesh = MeshTri(self.nodes.T.copy(), self.triangles.T.copy())
        self.basis = Basis(mesh, ElementTriMorley(), intorder=2)
        D, nu = rigidity(self.thickness_mm, self.e_mpa, self.nu), self.nu

        def bent(k: np.ndarray) -> np.ndarray:
            return np.asarray(D * ((1.0 - nu) * k + nu * eye(trace(k), 2)))

        def bending(u: np.ndarray, v: np.ndarray, _: object) -> np.ndarray:
            return np.asarray(ddot(bent(dd(u)), dd(v)))

        K = BilinearForm(bending).assemble(self.basis).tocsc()
        fixed = self.basis.nodal_dofs[0, self.held]
        self.free = np.setdiff1d(np.arange(K.shape[0]), fixed)
        self.factor = splu(
            K[self.free][:, self.free],
            permc_spec="MMD_AT_PLUS_A",
            diag_pivot_thresh=0.0,
            options={"SymmetricMode": True},
        )

    def pressure(self, n_per_mm2: float) -> np.ndarray:
        """Forces of an even load, shape (N,)."""
        return np.asarray(LinearForm(lambda v, _: n_per_mm2 * v).assemble(self.basis))

    def patches(self, centres: np.ndarray, side_mm: float, newtons: float) -> np.ndarray:
        """Forces of square patches at centres (k, 2), shape (N, k): nine by nine points each."""
        step = side_mm * ((np.arange(9) + 0.5) / 9.0 - 0.5)
        gx, gy = np.meshgrid(step, step)
        places = centres[:, None, :] + np.column_stack([gx.ravel(), gy.ravel()])[None]
        rows = self.basis.probes(places.reshape(-1, 2).T)
        mean = np.repeat(np.eye(len(centres)), 81, axis=0) * (newtons / 81.0)
        return np.asarray(rows.T @ mean)

    def solved(self, forces: np.ndarray) -> np.ndarray:
        """Unknowns for forces (N, k), shape (N, k)."""
        u = np.zeros_like(forces)
        u[self.free] = self.factor.solve(forces[self.free])
        return u

    def moments(self, u: np.ndarray) -> np.ndarray:
        """Moments ``(mx, my, mxy)`` of every triangle, shape (m, 3, k): constant in each."""
        D, nu = rigidity(self.thickness_mm, self.e_mpa, self.nu), self.nu
        found = []
        for column in u.T:
            k = self.basis.interpolate(column).hess[..., 0]
            found.append(
                -D * np.stack([k[0, 0] + nu * k[1, 1], k[1, 1] + nu * k[0, 0], (1 - nu) * k[0, 1]])
            )
        return np.stack(found, axis=-1).transpose(1, 0, 2)

    def deflection_at(self, u: np.ndarray, places: np.ndarray) -> np.ndarray:
        """Deflection at places (p, 2), shape (p, k)."""
        return np.asarray(self.basis.probes(places.T) @ u)

    def triangle_at(self, places: np.ndarray) -> np.ndarray:
        """Triangle of each place (p, 2), shape (p,)."""
        return np.asarray(self.basis.mesh.element_finder()(*places.T))
