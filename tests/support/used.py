"""How far a slab is used: the largest utilisation of the cases that stop an order."""

from __future__ import annotations

from ledgerstone.codec.order_in import read_order
from ledgerstone.shape import shape_of
from ledgerstone.strength.slabs import Plates, SlabStrength, slab_strength
from ledgerstone.strength.verdict import CAUTIONS
from ledgerstone.transport import slab_kg
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.strategies.ordinary_slabs import ordinary_slab

WORKSHOP_TEMP_C = 10.0


def strength_of(document: Json, workshop: Workshop) -> SlabStrength:
    """Work out one slab's strength, from an empty store."""
    slab = read_order({"slabs": [document]}, workshop).slabs[0]
    shape = shape_of(slab, workshop)
    kg = slab_kg(slab, shape, workshop)
    return slab_strength(
        slab, shape, workshop, slab_kg=kg, workshop_temp_c=WORKSHOP_TEMP_C, plates=Plates()
    )


def on_known_rails(seed: int) -> Json:
    """An ordinary slab, its units' rails said: which of them suffices is a step of its own."""
    slab = ordinary_slab(seed)
    if slab["rests"]["kind"] == "units":
        slab["rests"]["rails"] = "hardwood"
    return slab


def used(document: Json, workshop: Workshop) -> float:
    """The largest utilisation of the cases that stop an order."""
    found = strength_of(document, workshop)
    verdicts = [*found.handled.verdicts, *found.in_place.verdicts]
    return max(one.utilisation for one in verdicts if one.case not in CAUTIONS)


def in_place_used(document: Json, workshop: Workshop) -> float:
    """The largest utilisation in place of the cases that stop an order."""
    verdicts = strength_of(document, workshop).in_place.verdicts
    return max(one.utilisation for one in verdicts if one.case not in CAUTIONS)
