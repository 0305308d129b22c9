"""What making an order costs the workshop, line by line: the maker's, never a customer's."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal

from ledgerstone.message import Message
from ledgerstone.mix import placed_l
from ledgerstone.order import Order, Slab
from ledgerstone.price.materials import materials, sealers
from ledgerstone.price.rounding import HUNDRED, decimal
from ledgerstone.reinforcement import SteelPlan
from ledgerstone.schedule import cast_together
from ledgerstone.shape import Shape
from ledgerstone.work import (
    Operation,
    crate_count,
    finish_of,
    mixing_alone_minutes,
    packing_way,
    tiles_of,
)
from ledgerstone.workshop.records import Workshop

MATERIALS, MAKING, FINISHING = "materials", "making", "finishing"
GROUPS = (MATERIALS, MAKING, FINISHING)
TILES = "tiles"  # paid by their own price, or paid by the workshop: no margin on them
_FINISHING_PHASES = frozenset({"finish", "dry", "seal"})
L_PER_M3 = 1000


@dataclass(frozen=True, slots=True)
class Cost:
    """One line of what it costs the workshop; never shown to a customer.

    ``group`` is the line of the price that it is charged under, by the catalogue's word.
    """

    label: Message | str
    group: str
    amount: Decimal


def costs(
    order: Order,
    shapes: Sequence[Shape],
    steps: Sequence[Operation],
    workshop: Workshop,
    steel: Sequence[SteelPlan] | None = None,
) -> tuple[Cost, ...]:
    """What making the order costs the workshop, line by line, before any margin."""
    loads = cast_together(steps, workshop.table)
    taken = materials(order, shapes, workshop, steel, mould_counts(order, steps), loads=loads)
    return (
        *(Cost(m.name, MATERIALS, m.amount) for m in taken),
        *_by_area(order, shapes, workshop),
        *(Cost(m.name, FINISHING, m.amount) for m in sealers(order, shapes, workshop)),
        *_hands(steps, workshop),
        *_tiles(order, steps, workshop),
        Cost(Message("cost-recasts"), MAKING, _recasts(order, shapes, steps, workshop)),
    )


def _tiles(order: Order, steps: Iterable[Operation], workshop: Workshop) -> Iterator[Cost]:
    """Yield the concrete of the sample tiles, where some are cast."""
    sample = workshop.sample
    if sample is not None and any(step.phase == "sample" for step in steps):
        litres = sample.litres * len(tiles_of(order))
        concrete = workshop.recipe.price_per_m3 * decimal(litres / L_PER_M3)
        yield Cost(Message("cost-tiles"), TILES, concrete)


def mould_counts(order: Order, steps: Iterable[Operation]) -> tuple[int, ...]:
    """How many moulds of each slab the list of work makes."""
    made = {step.slab: step.pieces for step in steps if step.phase == "mould"}
    return tuple(made.get(i, 1) for i in range(len(order.slabs)))


def _by_area(order: Order, shapes: Sequence[Shape], workshop: Workshop) -> Iterator[Cost]:
    """Yield what is charged by the square metre, by the piece and by the crate."""
    area, pads = Decimal(0), Decimal(0)
    for slab, shape in zip(order.slabs, shapes, strict=True):
        net_area = slab.quantity * decimal(shape.net_area_m2)
        area += net_area
        pads += net_area * finish_of(slab, workshop).consumables_per_m2
    yield Cost(Message("cost-consumables"), MATERIALS, workshop.rates.consumables_per_m2 * area)
    yield Cost(Message("cost-packing"), MATERIALS, _packing(order, workshop))
    yield Cost(Message("cost-pads"), FINISHING, pads)


def _packing(order: Order, workshop: Workshop) -> Decimal:
    """What an order is packed in, by how it leaves."""
    way = packing_way(order, workshop)
    wrapped = way.materials_per_piece * sum(slab.quantity for slab in order.slabs)
    crates = way.crate.materials * crate_count(order, workshop) if way.crate else Decimal(0)
    return wrapped + crates


# --- hours ----------------------------------------------------------------------------------


def _hands(steps: Iterable[Operation], workshop: Workshop) -> Iterator[Cost]:
    """Yield the wages of each kind of step, machine and hire with them, in the order of work."""
    amounts: dict[tuple[Message, str], Decimal] = {}
    for step in steps:
        key = (Message("cost-hours", step=step.name), _group(step))
        amounts[key] = amounts.get(key, Decimal(0)) + wages(step, workshop)
    for (label, group), amount in amounts.items():
        yield Cost(label, group, amount)


def _group(step: Operation) -> str:
    if step.phase == "sample":
        return TILES
    return FINISHING if step.phase in _FINISHING_PHASES else MAKING


def wages(step: Operation, workshop: Workshop) -> Decimal:
    """What a step's hands and machine cost, to the minute, and the gear hired for it.

    The minutes are the step's own, so that price, schedule and job sheet agree on them.

    Source
    ------
    The profile's ``rates.hour`` and ``rates.machine_hour``.
    """
    rates = workshop.rates
    hands, machine = Decimal(step.hands_minutes) / 60, Decimal(step.machine_minutes) / 60
    return hands * rates.hour + machine * rates.machine_hour + step.hire


# --- casting again --------------------------------------------------------------------------


def _recasts(
    order: Order, shapes: Sequence[Shape], steps: Sequence[Operation], workshop: Workshop
) -> Decimal:
    """What is kept for pieces that are cast twice: that share of a slab's hours and concrete.

    A piece that is cast again is a pour by itself, also where it shared its first pour.
    """
    kept = Decimal(0)
    for i, (slab, shape) in enumerate(zip(order.slabs, shapes, strict=True)):
        own = (s for s in steps if s.slab == i and not s.minutes_each)
        labour = sum((wages(step, workshop) for step in own), Decimal(0))
        alone = slab.quantity * mixing_alone_minutes(slab, shape, workshop)
        labour += Decimal(alone) / 60 * workshop.rates.hour
        litres = slab.quantity * placed_l(shape, workshop)
        concrete = workshop.recipe.price_per_m3 * decimal(litres / L_PER_M3)
        share = decimal(recast_percent(slab, shape, workshop)) / HUNDRED
        kept += share * (labour + concrete)
    return kept


def recast_percent(slab: Slab, shape: Shape, workshop: Workshop) -> float:
    """Pieces in a hundred like this one that are cast twice, by its size, finish and shade.

    Source
    ------
    The profile's ``recast_percent`` of rates, finish and shade: the workshop's own count.
    """
    rates = workshop.rates
    beyond_m2 = max(0.0, shape.net_area_m2 - 1.0)
    shade = sum(shade.recast_percent for shade in workshop.palette if shade.name == slab.shade.name)
    return min(
        100.0,
        rates.recast_percent
        + rates.recast_percent_per_m2 * beyond_m2
        + finish_of(slab, workshop).recast_percent
        + shade,
    )
