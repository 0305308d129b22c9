"""Weight of a slab's concrete, from the density that its mass is computed with."""

from __future__ import annotations

from ledgerstone.mix import hardened_kg_per_m3
from ledgerstone.order import Slab
from ledgerstone.shade import tint_of
from ledgerstone.strength.plate import OwnWeight
from ledgerstone.strength.tested import GRAVITY
from ledgerstone.workshop.records import Workshop


def weight_of(slab: Slab, workshop: Workshop) -> OwnWeight:
    """Return the weight of a slab's concrete with its pigment, N/mm³."""
    return OwnWeight(hardened_kg_per_m3(tint_of(slab, workshop), workshop) * 1e-9 * GRAVITY)
