"""Which of the carrier's pallets an order goes on: by its longest piece first, then by its mass."""

from __future__ import annotations

from collections.abc import Sequence

from ledgerstone.order import Order
from ledgerstone.shape import Shape
from ledgerstone.transport.masses import crated_kg
from ledgerstone.transport.way_in import on_edge
from ledgerstone.workshop.records import Pallet, Workshop


def pallets_by_size(order: Order, shapes: Sequence[Shape], workshop: Workshop) -> list[Pallet]:
    """List the pallets on which every piece stands on edge, the cheapest first."""
    pieces = [on_edge(slab, shape) for slab, shape in zip(order.slabs, shapes, strict=True)]
    longest = max(piece.length_mm for piece in pieces)
    deepest = max(piece.depth_mm for piece in pieces)
    return [
        pallet
        for pallet in workshop.lifting.pallets
        if longest <= pallet.longest_mm and deepest <= pallet.deepest_mm
    ]


def pallet_for(order: Order, shapes: tuple[Shape, ...], workshop: Workshop) -> Pallet | None:
    """Choose a pallet; None if the order does not go by pallet or on none of them."""
    if order.delivery.kind != "pallet":
        return None
    crated = crated_kg(order, shapes, workshop)
    fitting = pallets_by_size(order, shapes, workshop)
    return next((pallet for pallet in fitting if crated + pallet.kg <= pallet.most_kg), None)


def packed_kg(order: Order, shapes: tuple[Shape, ...], workshop: Workshop) -> float:
    """Return the mass of the whole order as it leaves, kg: slabs, crates, and its pallet.

    Where no pallet takes it, it is weighed with the last of those that its size allows.

    Source
    ------
    Sum of masses; the pallet's own is the profile's (sources §2).
    """
    crated = crated_kg(order, shapes, workshop)
    if order.delivery.kind != "pallet":
        return crated
    chosen = pallet_for(order, shapes, workshop)
    size = pallets_by_size(order, shapes, workshop) or workshop.lifting.pallets
    return crated + (chosen or size[-1]).kg
