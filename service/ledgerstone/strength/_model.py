"""One geometry, meshed and factored once, for every thickness, age, rest and load."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np
import shapely
from scipy.sparse import csr_array
from shapely.geometry import Polygon

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.errors import OutlineUnusableError
from ledgerstone.outline import XY
from ledgerstone.strength._averaging import averaged_rows
from ledgerstone.strength._element import Elements, elements_of, stiffness
from ledgerstone.strength._factor import Factor, factored
from ledgerstone.strength._loads import PlateLoad, nodal_forces
from ledgerstone.strength.mesh import Mesh, mesh_of

MAX_COLUMNS_KEPT = 160  # of 3 n numbers each: some 8 MB at the largest mesh
MAX_AVERAGINGS_KEPT = 4  # one a thickness: a maker's trials go to and fro between few
MIN_RADIUS_MM = 15.0  # methods §1.4


@dataclass(frozen=True, slots=True)
class RigidMotions:
    """Three rigid motions of a slab about its middle: down, and a slope along x and along y.

    Parameters
    ----------
    columns
        The unknowns of each, in scaled slopes, shape (3 n, 3).
    middle, reach
        The point they turn about, mm, and the length that scales the slopes, mm.
    """

    columns: FloatArray
    middle: tuple[float, float]
    reach: float


def rigid_motions_of(mesh: Mesh) -> RigidMotions:
    """Rigid motions of a mesh.

    Source
    ------
    Geometry.
    """
    low, high = mesh.nodes.min(axis=0), mesh.nodes.max(axis=0)
    middle, reach = 0.5 * (low + high), 0.5 * float((high - low).max())
    motions = np.zeros((len(mesh.nodes), 3, 3))
    motions[:, 0, 0] = 1.0
    motions[:, 0, 1:] = (mesh.nodes - middle) / reach
    motions[:, 1, 1] = motions[:, 2, 2] = 1.0 / reach
    return RigidMotions(motions.reshape(-1, 3), (float(middle[0]), float(middle[1])), reach)


@dataclass(frozen=True, slots=True)
class Model:
    """Mesh, operators and factor of a slab, for unit reference stiffness ``D``.

    Uniform slabs share one model at any thickness; a slab with zones shares it only while the
    ratios of its thicknesses stay the same.

    Parameters
    ----------
    mesh, elements, factor
        The geometry; see their own modules.
    nu
        Poisson's ratio.
    depth
        Each triangle's thickness over the slab's own, shape (m,).
    motions
        Its rigid motions.
    """

    mesh: Mesh
    elements: Elements
    factor: Factor
    nu: float
    depth: FloatArray
    motions: RigidMotions
    kept: dict[PlateLoad, tuple[FloatArray, FloatArray]] = field(default_factory=dict)
    averagings: dict[float, csr_array] = field(default_factory=dict)

    def averaged(self, thickness_mm: float) -> csr_array:
        """``averaged_rows`` over half a thickness, at least 15 mm, sparse, shape (3 n, 3 n).

        Source
        ------
        As ``averaged_rows``; the radius: methods §1.4.
        """
        radius = max(thickness_mm / 2.0, MIN_RADIUS_MM)
        if radius not in self.averagings:
            if len(self.averagings) >= MAX_AVERAGINGS_KEPT:
                self.averagings.clear()
            self.averagings[radius] = averaged_rows(
                self.mesh, self.elements, self.nu, self.depth, radius
            )
        return self.averagings[radius]

    @property
    def unknowns(self) -> IntArray:
        """Numbers of each triangle's nine unknowns, shape (m, 9).

        Source
        ------
        Counting: a deflection and two slopes a node (methods §1.1).
        """
        dof = 3 * self.mesh.triangles[:, :, None] + np.arange(3)
        return dof.reshape(len(self.mesh.triangles), 9)

    def carried(self, loads: Sequence[PlateLoad]) -> FloatArray:
        """``L⁻¹`` of unit loads, N and N·mm, shape (k, 3 n). No load is given twice.

        Raises
        ------
        OffTheSlabError
            If no part of a load meets the slab.

        Source
        ------
        As ``nodal_forces`` and ``Factor.forward``.
        """
        new = self._keep(loads)
        return new if len(new) == len(loads) else np.array([self.kept[u][1] for u in loads])

    def pulls(self, loads: Sequence[PlateLoad]) -> FloatArray:
        """Pulls of unit loads on the rigid motions, N and N·mm, shape (k, 3).

        Raises
        ------
        OffTheSlabError
            If no part of a load meets the slab.

        Source
        ------
        Statics: a load's force, and its moments about two axes.
        """
        self._keep(loads)
        return np.array([self.kept[u][0] for u in loads])

    def _keep(self, loads: Sequence[PlateLoad]) -> FloatArray:
        """Work out the pulls and ``L⁻¹`` of those that are not kept yet; of these, the latter."""
        new = [u for u in loads if u not in self.kept]
        if len(self.kept) + len(new) > MAX_COLUMNS_KEPT:
            self.kept.clear()
            new = list(loads)
        if not new:
            return np.empty((0, len(self.motions.columns)))
        forces = nodal_forces(new, self.mesh, self.elements, self.depth)
        rows, pulls = self.factor.forward(forces).T, forces.T @ self.motions.columns
        self.kept.update(zip(new, zip(pulls, rows, strict=True), strict=True))
        return rows


def model_of(
    outline: Polygon,
    *,
    thickness_mm: float,
    nu: float,
    mesh_mm: float | None,
    zones: Sequence[tuple[Polygon, float]],
    turning: Sequence[XY] = (),
) -> Model:
    """Mesh and factor a slab; the parameters, in mm, are those of ``Plate``.

    Raises
    ------
    OutlineUnusableError
        If the outline is no single piece, or cannot be meshed.
    """
    mesh = _meshed(outline, thickness_mm, mesh_mm, [zone for zone, _ in zones], turning)
    elements = elements_of(mesh.nodes, mesh.triangles)
    return _factored(mesh, elements, nu, _depth(mesh, thickness_mm, zones))


def as_deep(model: Model, thickness_mm: float, zones: Sequence[tuple[Polygon, float]]) -> Model:
    """Model of the same plan with other thicknesses in the same zones: the mesh is shared.

    ``zones`` are areas and thicknesses, mm.

    Raises
    ------
    OutlineUnusableError
        If a part of the plate has no stiffness.
    """
    depth = _depth(model.mesh, thickness_mm, zones)
    return _factored(model.mesh, model.elements, model.nu, depth)


def _depth(mesh: Mesh, thickness_mm: float, zones: Sequence[tuple[Polygon, float]]) -> FloatArray:
    depth = np.ones(len(mesh.triangles))
    middle = mesh.nodes[mesh.triangles].mean(axis=1)
    for area, thickness in zones:
        depth[shapely.contains_xy(area, middle[:, 0], middle[:, 1])] = thickness / thickness_mm
    return depth


def _factored(mesh: Mesh, elements: Elements, nu: float, depth: FloatArray) -> Model:
    factor = factored(stiffness(elements, nu, depth**3), mesh.triangles, mesh.nodes)
    return Model(mesh, elements, factor, nu, depth, rigid_motions_of(mesh))


def _meshed(
    outline: Polygon,
    thickness_mm: float,
    mesh_mm: float | None,
    zones: list[Polygon],
    turning: Sequence[XY],
) -> Mesh:
    """Mesh with the zones' edges kept; where those cross too finely, of the outline alone.

    Each triangle then has the thickness at its middle.
    """
    try:
        return mesh_of(
            outline, thickness_mm=thickness_mm, mesh_mm=mesh_mm, zones=zones, turning=turning
        )
    except OutlineUnusableError:
        if not zones:
            raise
        return mesh_of(outline, thickness_mm=thickness_mm, mesh_mm=mesh_mm, turning=turning)
