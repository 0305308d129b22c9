"""Utilisation of the concrete at every node of a slab, for the maker's picture."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.order import UPRIGHT_USES, Slab
from ledgerstone.shape import Shape
from ledgerstone.strength._holding import BEST_LIFT, Holding
from ledgerstone.strength._judging import live_load_cases
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength._rails import settled_on_rails
from ledgerstone.strength.concrete import Concrete
from ledgerstone.strength.cracked import IN_USE_DAYS
from ledgerstone.strength.in_place import under
from ledgerstone.strength.plate import Cases, OwnWeight, Plate
from ledgerstone.strength.rests import bearings
from ledgerstone.strength.weight import weight_of
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True)
class UtilisationMap:
    """Utilisation at every node of a slab's mesh.

    Parameters
    ----------
    nodes, triangles
        Places, plane mm, shape (n, 2), and node numbers, shape (m, 3).
    used
        The largest stress of any case over what is trusted in that case, shape (n,).
    in_place
        Whether a person and the even load are among the cases; else the pallet alone.
    """

    nodes: FloatArray
    triangles: IntArray
    used: FloatArray
    in_place: bool


def utilisation_map(
    slab: Slab, shape: Shape, plate: Plate, concrete: Concrete, workshop: Workshop
) -> UtilisationMap:
    """Compute the utilisation of a slab: on its pallet, and in place where rests are given."""
    mesh = plate.model.mesh
    used = np.zeros(len(mesh.nodes))
    trusted = concrete.design_bending_mpa(slab.thickness.mm, IN_USE_DAYS)
    weight = weight_of(slab, workshop)
    pallet = OwnWeight(workshop.handling.pallet_factor * weight.n_per_mm3)
    for supports in Holding(plate.outline).lines(BEST_LIFT):
        cases = plate.on(supports).cases([[pallet]])
        if cases.tips[0] is None:
            used = np.maximum(used, _used(cases, np.array([trusted])))
            break
    carrying = () if slab.use in UPRIGHT_USES else under(bearings(slab, shape), plate)
    placed = PlacedSlab(slab, shape, plate, concrete, workshop, carrying, weight)
    lies = bool(carrying) and placed.tips_alone is None
    if lies:
        railed, batches, _ = settled_on_rails(placed)
        for cases, limits in live_load_cases(railed, batches):
            used = np.maximum(used, _used(cases, limits))
    return UtilisationMap(mesh.nodes, mesh.triangles, used, lies)


def _used(cases: Cases, limits_mpa: FloatArray) -> FloatArray:
    """The worst case's stress at each node over what is trusted in it, shape (n,)."""
    _, stress = cases.stress_field()
    return np.asarray((stress / limits_mpa).max(axis=1))
