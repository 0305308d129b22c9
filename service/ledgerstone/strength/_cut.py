"""The moment that a strip of concrete carries across a cut, from the balance of its elements.

Let everything on one side of the cut turn about it by one radian, and nothing on the other. The
elements that the cut crosses do work against that: their nodal forces' work, less what the loads on
them do there instead of on the turning side alone, is the moment. It rests on the forces that
balance the loads to the last digit, where a mean of the elements' own moments rests on how well
these bend.

Source
------
Virtual work; Bathe, *Finite Element Procedures*, 4.2.1 (element nodal forces), from memory.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry import LineString

from ledgerstone.arrays import FloatArray
from ledgerstone.outline import XY
from ledgerstone.strength._element import Elements, deflection_row, stiffness
from ledgerstone.strength._loads import OwnWeight, PlateLoad, points_in
from ledgerstone.strength._model import Model


def moment_across(
    model: Model,
    u: FloatArray,
    loads: Sequence[PlateLoad],
    thickness_mm: float,
    cut: tuple[XY, XY],
) -> float:
    """Moment across a straight cut, N·mm, sagging positive.

    Parameters
    ----------
    u
        Unknowns of one case for unit ``D``, shape (3 n,).
    loads
        Its loads.
    thickness_mm
        Of the slab, for its own weight.
    cut
        The cut's two ends, mm, each at an edge of the concrete.

    Source
    ------
    Statics: virtual work of what lies ahead of the cut, turned about it as a rigid body.
    """
    mesh = model.mesh
    start, end = np.asarray(cut, dtype=float)
    along = (end - start) / np.hypot(*(end - start))
    across = np.array([along[1], -along[0]])
    ahead = (mesh.nodes - start) @ across
    corners = mesh.nodes[mesh.triangles]
    met = shapely.intersects(LineString(cut), shapely.polygons(corners))
    sides = ahead[mesh.triangles] > 0.0
    crossed = np.flatnonzero(met & sides.any(axis=1) & ~sides.all(axis=1))
    turn = np.zeros((len(mesh.nodes), 3))
    turn[ahead > 0.0, 0] = ahead[ahead > 0.0]
    turn[ahead > 0.0, 1:] = across
    virtual = turn.reshape(-1)[model.unknowns[crossed]]
    found = -float(np.einsum("ti,ti->", virtual, _nodal_forces(model, u, crossed)))
    for load in loads:
        points = points_in(load, mesh, model.elements, model.depth, crossed)
        own = thickness_mm if isinstance(load, OwnWeight) else 1.0
        places = np.einsum("pk,pki->pi", points.share, corners[points.triangle])
        there = np.maximum((places - start) @ across, 0.0)
        rows = deflection_row(corners[points.triangle], points.share)
        as_nodes = (rows * turn.reshape(-1)[model.unknowns[points.triangle]]).sum(axis=1)
        found += own * float(points.newtons @ (as_nodes - there))
    return found


def _nodal_forces(model: Model, u: FloatArray, triangles: np.ndarray) -> FloatArray:
    """Forces that some triangles take from their nodes, N and N·mm, shape (t, 9)."""
    whole = model.elements
    some = Elements(
        whole.corners[triangles],
        whole.area[triangles],
        whole.gradient[triangles],
        whole.curvature[triangles],
    )
    matrices = stiffness(some, model.nu, model.depth[triangles] ** 3)
    return np.asarray(np.einsum("tij,tj->ti", matrices, u[model.unknowns[triangles]]))
