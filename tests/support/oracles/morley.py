"""A thin plate by scikit-fem's Morley element, written as that library's own examples are.

One assembly, one sparse factor, every load as a column: nothing here is slower than it need be.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from scipy.sparse.linalg import splu
from shapely.geometry import LineString
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

        self.form = BilinearForm(bending)
        K = self.form.assemble(self.basis).tocsc()
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

    def patch_places(self, centres: np.ndarray, side_mm: float) -> np.ndarray:
        """Nine by nine places of each square patch, shape (k, 81, 2)."""
        step = side_mm * ((np.arange(9) + 0.5) / 9.0 - 0.5)
        gx, gy = np.meshgrid(step, step)
        return np.asarray(centres[:, None, :] + np.column_stack([gx.ravel(), gy.ravel()])[None])

    def patches(self, centres: np.ndarray, side_mm: float, newtons: float) -> np.ndarray:
        """Forces of square patches at centres (k, 2), shape (N, k): nine by nine points each."""
        rows = self.basis.probes(self.patch_places(centres, side_mm).reshape(-1, 2).T)
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

    def mean_across(
        self,
        u: np.ndarray,
        x: float,
        y: tuple[float, float],
        loads: list[tuple[np.ndarray, np.ndarray]],
    ) -> np.ndarray:
        """Mean moment across an upright cut by the balance of the triangles it crosses, shape (k,).

        The same virtual turn about the cut as ours: it reads more out of this element, too, than
        the mean of its constant moments. ``loads`` are each case's places (p, 2) and forces (p,).
        """
        corners = self.nodes[self.triangles]
        met = shapely.intersects(LineString([(x, y[0]), (x, y[1])]), shapely.polygons(corners))
        at = np.flatnonzero(met)
        turn = self.basis.project(lambda place: place[0] - x)
        turn[self.basis.doflocs[0] <= x] = 0.0
        local = self.form.elemental(self.basis).tolocal()[at]
        dofs = self.basis.element_dofs[:, at]
        found = -np.einsum("it,tij,jtk->k", turn[dofs], local, u[dofs])
        finder = self.basis.mesh.element_finder()
        low, high = corners[at].min(axis=(0, 1)), corners[at].max(axis=(0, 1))
        for k, (places, forces) in enumerate(loads):
            about = ((places >= low) & (places <= high)).all(axis=1)
            near = places[about]
            on = np.isin(finder(*near.T), at) if len(near) else np.zeros(0, dtype=bool)
            if on.any():
                as_nodes = self.basis.probes(near[on].T) @ turn
                found[k] += forces[about][on] @ (as_nodes - np.maximum(near[on, 0] - x, 0.0))
        return np.asarray(found / (y[1] - y[0]))
