"""A slab put down on its rests, ready to be loaded."""

from __future__ import annotations

from dataclasses import replace

from ledgerstone.codec.order_in import read_order
from ledgerstone.shape import shape_of
from ledgerstone.strength._lying import Lying, hold_down
from ledgerstone.strength.in_place import under
from ledgerstone.strength.rests import bearings
from ledgerstone.strength.slabs import Plates, concrete_of, plate_of
from ledgerstone.strength.weight import weight_of
from ledgerstone.workshop import Workshop
from support.strategies.ordinary_slabs import Json


def lying_of(document: Json, workshop: Workshop) -> Lying | None:
    """Put a slab on its rests; None where it cannot lie there."""
    slab = read_order({"slabs": [document]}, workshop).slabs[0]
    shape, concrete = shape_of(slab, workshop), concrete_of(workshop)
    plate = plate_of(slab, shape, concrete, Plates())
    carrying = under(bearings(slab, shape), plate)
    lying = Lying(slab, shape, plate, concrete, workshop, carrying, weight_of(slab, workshop))
    if lying.cannot_lie is not None:
        lying = replace(lying, carrying=hold_down(carrying))
    return lying if lying.cannot_lie is None else None
