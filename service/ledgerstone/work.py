"""The operations of one order: the one list that the price sums and the schedule lays out."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from ledgerstone.order import Order, Slab
from ledgerstone.shape import Shape, edge_lengths_mm
from ledgerstone.workshop.records import Hours, Sealer, Way, Workshop

Stage = Literal["mould", "cast", "cover", "finish", "dry", "seal", "pack"]
Machine = Literal["mixer", "polisher"]
STAGES: tuple[Stage, ...] = ("mould", "cast", "cover", "finish", "dry", "seal", "pack")
MM2_PER_M2 = 1e6


@dataclass(frozen=True, slots=True)
class Operation:
    """One step of work: hours of hands, hours of machine, then hours of waiting.

    Hours of hands and of machine, and hire, are those of all its pieces together; the rest is each
    piece's own.

    Attributes
    ----------
    age_hours
        How old the concrete must be, from its pour, before the step begins.
    least_days
        How many working days the step takes however quick the hands are.
    hire
        What gear costs that the workshop has not got.
    pieces
        How many times the step is done.
    people
        The most hands that share it; None is as many as there are.
    machine
        What it takes up while hands are at it.
    ripe_days
        The concrete's age, adjusted to 20 °C, that the wait after the step lasts until; None is
        no such age.
    table_mm
        What it takes up of a casting table, the longer side first.
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
    pieces: int = 1
    people: int | None = None
    machine: Machine | None = None
    ripe_days: float | None = None
    table_mm: tuple[float, float] = (0.0, 0.0)


def operations(
    order: Order,
    shapes: tuple[Shape, ...],
    workshop: Workshop,
    cover_days: tuple[float, ...],
    ways: tuple[Way, ...] = (),
    *,
    ripe_days: tuple[float | None, ...] = (),
    moulds: tuple[int, ...] = (),
) -> tuple[Operation, ...]:
    """List every step of an order, in the order in which it is done.

    Parameters
    ----------
    cover_days
        Days under cover of each slab before it leaves its mould.
    ways
        How each slab is moved; none is the plainest way, which adds nothing.
    ripe_days
        Age of each slab's concrete, adjusted to 20 °C, before which it stays in its mould.
    moulds
        How many moulds of each slab are made; none is one for every piece.
    """
    steps = [Operation("Set up", "mould", None, workshop.hours.set_up_per_order)]
    for i, (slab, shape) in enumerate(zip(order.slabs, shapes, strict=True)):
        steps += _making(i, slab, shape, workshop, moulds[i] if moulds else slab.quantity)
        ripe = ripe_days[i] if ripe_days else None
        made = steps[-1].pieces
        steps.append(
            _cast(i, slab, shape, workshop, cover_days=cover_days[i], ripe_days=ripe, moulds=made)
        )
        steps += _moving(i, slab, workshop, ways[i] if ways else None)
        steps += _surface(i, slab, shape, workshop)
    return tuple(sorted(steps, key=lambda step: STAGES.index(step.stage)))


def _making(
    i: int, slab: Slab, shape: Shape, workshop: Workshop, moulds: int
) -> Iterable[Operation]:
    hours = moulds * mould_hours(slab, shape, workshop)
    yield Operation("Make the mould", "mould", i, hours, pieces=moulds)


def _cast(
    i: int,
    slab: Slab,
    shape: Shape,
    workshop: Workshop,
    *,
    cover_days: float,
    ripe_days: float | None,
    moulds: int,
) -> Operation:
    hours, n, area = workshop.hours, slab.quantity, shape.net_area_mm2 / MM2_PER_M2
    pour = n * (hours.pour_per_slab + hours.pour_per_m2 * area + hours.steel_per_m2 * area)
    x0, y0, x1, y1 = shape.outline.bounds
    margin = 2 * workshop.boards.margin_mm
    return Operation(
        "Steel, batch and pour",
        "cast",
        i,
        pour + (n - moulds) * workshop.bench.mould_again_hours,
        wait_hours=24 * cover_days,
        pieces=n,
        machine="mixer",
        ripe_days=ripe_days,
        table_mm=(max(x1 - x0, y1 - y0) + margin, min(x1 - x0, y1 - y0) + margin),
    )


def _moving(i: int, slab: Slab, workshop: Workshop, way: Way | None) -> Iterable[Operation]:
    n, hours = slab.quantity, workshop.hours
    demould = n * (hours.demould_per_slab + hours.cutout_trim * len(slab.cutouts))
    yield Operation("Turn and demould", "finish", i, demould, pieces=n)
    if way is not None and (way.hours or way.price):
        name, hire = f"Move it: {way.name}", n * way.price
        yield Operation(name, "finish", i, n * way.hours, hire=hire, pieces=n)


def _surface(i: int, slab: Slab, shape: Shape, workshop: Workshop) -> Iterable[Operation]:
    n, area, days = slab.quantity, shape.net_area_mm2 / MM2_PER_M2, workshop.days
    finish = next(f for f in workshop.finishes if f.surface == slab.finish.surface)
    sealer = next(s for s in workshop.sealers if s.name == slab.finish.sealer)
    polish = n * area * finish.hours_per_m2
    yield Operation(
        f"Finish: {finish.surface}",
        "finish",
        i,
        polish,
        machine_hours=polish,
        wait_hours=24 * days.drying,
        least_days=finish.days,
        pieces=n,
        people=1,
        machine="polisher",
    )
    yield from _coats(i, n, area, sealer, days.after_sealing)
    yield Operation("Pack", "pack", i, n * workshop.hours.pack_per_slab, pieces=n)


def _coats(i: int, n: int, area: float, sealer: Sealer, hardens: float) -> Iterable[Operation]:
    """List the coats of a sealer: in one go, or one by one where each must dry before the next."""
    goes = sealer.coats if sealer.recoat_hours else 1
    seal = n * area * sealer.hours_per_m2_coat * sealer.coats / goes
    for coat in range(1, goes + 1):
        yield Operation(
            f"Seal: {sealer.name}" + (f", coat {coat}" if goes > 1 else ""),
            "seal",
            i,
            seal,
            wait_hours=24 * hardens if coat == goes else sealer.recoat_hours,
            age_hours=24 * sealer.youngest_days,
            pieces=n,
        )


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
