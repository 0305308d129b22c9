"""The steps up to the concrete under its cover: the mould, the steel, the pour."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from ledgerstone.message import Message
from ledgerstone.mould import takes_plug
from ledgerstone.order import Slab
from ledgerstone.shape import Shape, edge_lengths_mm
from ledgerstone.work.loading import on_table_mm
from ledgerstone.work.operation import Machine, Operation
from ledgerstone.workshop.records import Workshop


def moulding(
    i: int, slab: Slab, shape: Shape, workshop: Workshop, moulds: int
) -> Iterator[Operation]:
    """Yield the steps of making ``count`` moulds: board and sides, knockouts, bead, release."""
    hours = workshop.hours.per_mould
    around_m = sum(side.length_mm for side in shape.sides) / 1000
    board = hours.base + hours.side_per_m * around_m + hours.drop_per_m * _drops_m(slab, shape)
    plugs = sum(
        takes_plug(cutout, opening, workshop.boards)
        for cutout, opening in zip(slab.cutouts, shape.openings, strict=True)
    )
    formers = hours.cutout * (len(slab.cutouts) - plugs) + hours.plug * plugs
    formers += hours.relief * len(slab.reliefs)
    days, bead = workshop.days, hours.bead_per_m * around_m + _edge_hours(slab, shape, workshop)
    steps = (
        (Message("step-mould"), board, 0.0),
        (Message("step-knockouts"), formers, 0.0),
        (Message("step-bead"), bead, days.bead_hours),
        (Message("step-release"), hours.release, days.release_hours),
    )
    for name, each, wait in steps:
        if each or name.name == "step-mould":
            yield Operation(
                name,
                "mould",
                i,
                moulds * each,
                wait_hours=wait,
                pieces=moulds,
                pauses=name.name == "step-bead",
            )


def _edge_hours(slab: Slab, shape: Shape, workshop: Workshop) -> float:
    offered = {str(edge.profile): edge.hours_per_m for edge in workshop.edges}
    return sum(
        length / 1000 * offered.get(profile, 0.0)
        for profile, length in edge_lengths_mm(slab, shape).items()
    )


def _drops_m(slab: Slab, shape: Shape) -> float:
    return sum(
        side.length_mm / 1000
        for side in shape.sides
        if side.name in slab.edges and slab.edges[side.name].drop is not None
    )


@dataclass(frozen=True, slots=True)
class CastPlan:
    """How the pieces of one slab are cast.

    Attributes
    ----------
    moulds
        How many moulds are made for them.
    bars
        How many bars are cut for a piece, beside its mesh.
    mixing_minutes
        Each piece's minutes at the mixer.
    under_cover_days, min_age_days
        Days under cover, and the adjusted age that is reached there.
    heated
        Whether they lie in the heated tent.
    """

    moulds: int
    bars: int
    mixing_minutes: tuple[int, ...]
    under_cover_days: float
    min_age_days: float | None
    heated: bool


def casting(
    i: int, slab: Slab, shape: Shape, workshop: Workshop, plan: CastPlan
) -> Iterator[Operation]:
    """Yield the steps of every pour: steel, batch, face coat, back-fill, strike off, cover."""
    n, hours = slab.quantity, workshop.hours.per_piece
    again = (n - plan.moulds) * workshop.hours.per_mould.again
    box, area = on_table_mm(shape, workshop), shape.net_area_m2
    if again:
        yield Operation(Message("step-again"), "cast", i, again, pieces=n, table_mm=box)
    steel = hours.steel_per_m2 * area + hours.bar * plan.bars
    yield Operation(Message("step-steel"), "cast", i, n * steel, pieces=n, table_mm=box)
    yield from _pouring(i, slab, shape, workshop, plan)
    yield _covering(i, slab, shape, workshop, plan)


def _pouring(
    i: int, slab: Slab, shape: Shape, workshop: Workshop, plan: CastPlan
) -> Iterator[Operation]:
    """Yield one unbroken run from the batch on: concrete does not wait for tomorrow."""
    n, hours, area = slab.quantity, workshop.hours.per_piece, shape.net_area_m2
    box = on_table_mm(shape, workshop)
    yield Operation(
        Message("step-mix"),
        "cast",
        i,
        sum(plan.mixing_minutes) / 60,
        pieces=n,
        machine="mixer",
        table_mm=box,
        minutes_each=plan.mixing_minutes,
    )
    run: list[tuple[Message, float, Machine | None]] = [
        (Message("step-place"), hours.place_per_m2 * area, "mixer"),
        (Message("step-strike"), hours.strike_off_per_m2 * area, None),
    ]
    if workshop.recipe.face_coat is not None:
        run.insert(0, (Message("step-face"), hours.face_coat_per_m2 * area, "mixer"))
    for name, each, machine in run:
        yield Operation(
            name, "cast", i, n * each, pieces=n, machine=machine, table_mm=box, unbroken=True
        )


def _covering(i: int, slab: Slab, shape: Shape, workshop: Workshop, plan: CastPlan) -> Operation:
    """Cover a piece, and leave it until it may leave its mould."""
    n, days = slab.quantity, plan.under_cover_days
    tent = workshop.tent if plan.heated else None
    return Operation(
        Message("step-cover"),
        "cast",
        i,
        n * workshop.hours.per_piece.cover,
        wait_hours=24 * days,
        hire=n * tent.price_per_day * Decimal(repr(days)) if tent else Decimal(0),
        pieces=n,
        min_age_days=plan.min_age_days,
        warm_c=tent.warmth_c if tent else None,
        warm_hours=24 * tent.under_cover_days if tent else 0.0,
        table_mm=on_table_mm(shape, workshop),
        unbroken=True,
    )
