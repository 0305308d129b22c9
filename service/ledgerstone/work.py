"""The operations of one order: the one list that the price sums and the schedule lays out."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from ledgerstone.order import Order, Slab
from ledgerstone.shape import Shape, edge_lengths_mm
from ledgerstone.workshop.records import Hours, Way, Workshop

Stage = Literal["mould", "cast", "cover", "finish", "dry", "seal", "pack"]
STAGES: tuple[Stage, ...] = ("mould", "cast", "cover", "finish", "dry", "seal", "pack")
MM2_PER_M2 = 1e6


@dataclass(frozen=True, slots=True)
class Operation:
    """One step of work: hours of hands, hours of machine, then hours of waiting.

    ``age_hours`` is how old the concrete must be, from its pour, before the step begins;
    ``least_days`` how many working days the step takes however quick the hands are; ``hire`` what
    gear costs that the workshop has not got.
    """

    name: str
    stage: Stage
    slab: int | None
    hands_hours: float
    machine_hours: float = 0.0
    wait_hours: float = 0.0
    age_hours: float = 0.0
    least_days: int = 1
    hire: Decimal = Decimal(0)


def operations(
    order: Order,
    shapes: tuple[Shape, ...],
    workshop: Workshop,
    cover_days: tuple[float, ...],
    ways: tuple[Way, ...] = (),
) -> tuple[Operation, ...]:
    """List every step of an order, in the order in which it is done.

    Parameters
    ----------
    cover_days
        Days under cover of each slab before it leaves its mould.
    ways
        How each slab is moved; none is the plainest way, which adds nothing.
    """
    steps = [Operation("Set up", "mould", None, workshop.hours.set_up_per_order)]
    for i, (slab, shape) in enumerate(zip(order.slabs, shapes, strict=True)):
        steps += _slab_steps(i, slab, shape, workshop, cover_days[i])
    steps += [
        Operation(
            f"Move it: {way.name}",
            "finish",
            i,
            order.slabs[i].quantity * way.hours,
            hire=order.slabs[i].quantity * way.price,
        )
        for i, way in enumerate(ways)
        if way.hours or way.price
    ]
    return tuple(sorted(steps, key=lambda step: STAGES.index(step.stage)))


def _slab_steps(
    i: int, slab: Slab, shape: Shape, workshop: Workshop, cover_days: float
) -> Iterable[Operation]:
    n, area = slab.quantity, shape.net_area_mm2 / MM2_PER_M2
    hours = workshop.hours
    finish = next(f for f in workshop.finishes if f.surface == slab.finish.surface)
    sealer = next(s for s in workshop.sealers if s.name == slab.finish.sealer)
    polish = n * area * finish.hours_per_m2
    pour = n * (hours.pour_per_slab + hours.pour_per_m2 * area + hours.steel_per_m2 * area)
    demould = n * (hours.demould_per_slab + hours.cutout_trim * len(slab.cutouts))
    yield Operation("Make the mould", "mould", i, n * mould_hours(slab, shape, workshop))
    yield Operation("Steel, batch and pour", "cast", i, pour, wait_hours=24 * cover_days)
    yield Operation("Turn and demould", "finish", i, demould)
    yield Operation(
        f"Finish: {finish.surface}",
        "finish",
        i,
        polish,
        machine_hours=polish,
        wait_hours=24 * workshop.days.drying,
        least_days=finish.days,
    )
    seal = n * area * sealer.hours_per_m2_coat * sealer.coats
    yield Operation(
        f"Seal: {sealer.name}",
        "seal",
        i,
        seal,
        wait_hours=24 * workshop.days.after_sealing,
        age_hours=24 * sealer.youngest_days,
    )
    yield Operation("Pack", "pack", i, n * hours.pack_per_slab)


def mould_hours(slab: Slab, shape: Shape, workshop: Workshop) -> float:
    """Hours of hands to make one mould: board, sides, edge forms, knockouts, reliefs, drops."""
    hours: Hours = workshop.hours
    perimeter_m = sum(side.length_mm for side in shape.sides) / 1000
    offered = {str(edge.profile): edge.hours_per_m for edge in workshop.edges}
    edges = sum(
        length / 1000 * offered.get(profile, 0.0)
        for profile, length in edge_lengths_mm(slab, shape).items()
    )
    drops = sum(
        side.length_mm / 1000
        for side in shape.sides
        if side.name in slab.edges and slab.edges[side.name].drop is not None
    )
    return float(
        hours.mould_per_slab
        + hours.mould_per_m * perimeter_m
        + edges
        + hours.cutout * len(slab.cutouts)
        + hours.relief * len(slab.reliefs)
        + hours.drop_per_m * drops
    )
