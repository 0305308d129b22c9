"""A slab put down on its rests, ready to be loaded."""

from __future__ import annotations

from dataclasses import replace

from ledgerstone.codec.order_in import read_order
from ledgerstone.shape import shape_of
from ledgerstone.strength._placed import PlacedSlab, hold_down
from ledgerstone.strength.in_place import under
from ledgerstone.strength.rests import bearings
from ledgerstone.strength.slabs import Plates, concrete_of, plate_of
from ledgerstone.strength.weight import weight_of
from ledgerstone.workshop import Workshop
from support.documents import Json


def placed_of(document: Json, workshop: Workshop) -> PlacedSlab | None:
    """Put a slab on its rests; None if it cannot lie there."""
    slab = read_order({"slabs": [document]}, workshop).slabs[0]
    shape, concrete = shape_of(slab, workshop), concrete_of(workshop)
    plate = plate_of(slab, shape, concrete, Plates())
    carrying = under(bearings(slab, shape), plate)
    placed = PlacedSlab(slab, shape, plate, concrete, workshop, carrying, weight_of(slab, workshop))
    if placed.tips_alone_at is not None:
        placed = replace(placed, carrying=hold_down(carrying))
    return placed if placed.tips_alone_at is None else None
