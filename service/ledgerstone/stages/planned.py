"""First stage: each slab's plan, its mass, and the delivery area."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import partial

from ledgerstone.order import Order, Slab
from ledgerstone.shape import Shape, shape_of
from ledgerstone.stages.context import StageContext
from ledgerstone.stages.keys import SlabKey
from ledgerstone.transport import area_of, packed_kg, slab_kg
from ledgerstone.workshop.records import DeliveryArea, Workshop


@dataclass(frozen=True, slots=True)
class Planned:
    """An order's slabs in plan.

    Attributes
    ----------
    shapes
        Each slab's plan.
    slab_kg
        Mass of one piece of each slab.
    packed_kg
        Mass of the order as it leaves.
    area
        The delivery area; None if none serves the postcode.
    """

    order: Order
    workshop: Workshop
    shapes: tuple[Shape, ...]
    slab_kg: tuple[float, ...]
    packed_kg: float
    area: DeliveryArea | None

    def slabs(self) -> Iterator[tuple[int, Slab, Shape]]:
        """Each slab by its index, with its plan."""
        pairs = zip(self.order.slabs, self.shapes, strict=True)
        return ((i, slab, shape) for i, (slab, shape) in enumerate(pairs))


def plan(order: Order, context: StageContext) -> Planned:
    """Work out each slab's plan and mass."""
    workshop = context.workshop
    shapes = tuple(
        context.cache.results.shapes.get_or_compute(
            SlabKey.without_appearance(slab), partial(shape_of, slab, workshop)
        )
        for slab in order.slabs
    )
    masses = tuple(
        slab_kg(slab, shape, workshop) for slab, shape in zip(order.slabs, shapes, strict=True)
    )
    return Planned(
        order=order,
        workshop=workshop,
        shapes=shapes,
        slab_kg=masses,
        packed_kg=packed_kg(order, shapes, workshop),
        area=area_of(order.delivery, workshop),
    )
