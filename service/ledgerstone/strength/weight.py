"""Weight of a slab's concrete, from the density that its mass is computed with."""

from __future__ import annotations

from typing import Final

from ledgerstone.mix import hardened_kg_per_m3
from ledgerstone.order import Slab
from ledgerstone.shade import tint_of
from ledgerstone.strength.plate import OwnWeight
from ledgerstone.strength.tested import GRAVITY
from ledgerstone.workshop.records import Workshop

# What is left under a relief counts as no less than this share of the thickness, in the plate and
# in its weight, so that neither comes to nothing. An order whose relief leaves less than half of
# the thinnest slab is stopped (`relief-too-deep`).
LEAST_LEFT: Final = 0.2


def weight_of(slab: Slab, workshop: Workshop) -> OwnWeight:
    """Return the weight of a slab's concrete with its pigment, N/mm³."""
    return OwnWeight(hardened_kg_per_m3(tint_of(slab, workshop), workshop) * 1e-9 * GRAVITY)
