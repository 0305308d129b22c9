"""What a slab weighs, and the whole order as it leaves."""

from __future__ import annotations

from ledgerstone.mix import hardened_kg_per_m3
from ledgerstone.order import Order, Slab
from ledgerstone.quantities import MM3_PER_M3
from ledgerstone.shade import tint_of
from ledgerstone.shape import Shape
from ledgerstone.work import crate_count, packing_way
from ledgerstone.workshop.records import Workshop


def slab_kg(slab: Slab, shape: Shape, workshop: Workshop) -> float:
    """Mass of one piece: concrete by its volume, pigment in it, and steel's allowance by area.

    Source
    ------
    Volume by the mix's density (sources §6); steel by the profile's ``rates.steel_kg_per_m2``.
    """
    density = hardened_kg_per_m3(tint_of(slab, workshop), workshop)
    concrete = shape.volume_mm3 / MM3_PER_M3 * density
    return concrete + shape.net_area_m2 * workshop.rates.steel_kg_per_m2


def crated_kg(order: Order, shapes: tuple[Shape, ...], workshop: Workshop) -> float:
    """Return the mass of all slabs as packed, with their crates if any, kg.

    Source
    ------
    Sum of masses; packing's own is the profile's ``packing``.
    """
    pieces = sum(slab.quantity for slab in order.slabs)
    slabs = sum(
        slab.quantity * slab_kg(slab, shape, workshop)
        for slab, shape in zip(order.slabs, shapes, strict=True)
    )
    way = packing_way(order, workshop)
    crates = crate_count(order, workshop) * way.crate.kg if way.crate is not None else 0.0
    return slabs + pieces * way.kg_per_piece + crates
