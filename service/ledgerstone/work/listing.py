"""The list of work: every step of an order, depending on what was ordered."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.order import Order
from ledgerstone.shape import Shape
from ledgerstone.work.making import casting, moulding
from ledgerstone.work.operation import STAGES, Operation
from ledgerstone.work.surfacing import moving, packing, sealing, surfacing
from ledgerstone.workshop.records import Way, Workshop

Look = tuple[str, str]


def operations(
    order: Order,
    shapes: tuple[Shape, ...],
    workshop: Workshop,
    cover_days: tuple[float, ...],
    ways: tuple[Way, ...] = (),
    *,
    min_age_days: tuple[float | None, ...] = (),
    moulds: tuple[int, ...] = (),
    bars: tuple[int, ...] = (),
    with_tiles: bool = False,
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
    bars
        How many bars are cut for a piece of each slab; none is mesh alone.
    with_tiles
        Whether sample tiles are cast first, and the customer's yes to them waited for.
    """
    steps = [*(_tiles(order, workshop) if with_tiles else ()), *_in_hand(order, workshop)]
    for i, (slab, shape) in enumerate(zip(order.slabs, shapes, strict=True)):
        made = moulds[i] if moulds else slab.quantity
        ripe = min_age_days[i] if min_age_days else None
        steps += moulding(i, slab, shape, workshop, made)
        cover, heated = (cover_days[i], ripe), order.heated_curing
        steps += casting(
            i,
            slab,
            shape,
            workshop,
            moulds=made,
            bars=bars[i] if bars else 0,
            cover=cover,
            heated=heated,
        )
        steps += moving(i, slab, shape, workshop, ways[i] if ways else None)
        steps += surfacing(i, slab, shape, workshop)
        steps += sealing(i, slab, shape, workshop)
        steps += packing(i, slab, workshop)
    return tuple(sorted(steps, key=lambda step: STAGES.index(step.stage)))


def tiles_of(order: Order) -> tuple[Look, ...]:
    """Return the looks that an order's sample tiles show: a shade and its surface, each once."""
    looks = ((s.shade.name or s.shade.match or "", str(s.finish.surface)) for s in order.slabs)
    return tuple(dict.fromkeys(looks))


def _tiles(order: Order, workshop: Workshop) -> Iterator[Operation]:
    """Yield the casting of each tile, and the wait for the customer's yes to them all."""
    sample = workshop.sample
    if sample is None:
        return
    for shade, surface in tiles_of(order):
        yield Operation(
            f"Cast a sample tile: {shade}, {surface}",
            "sample",
            None,
            sample.hours,
            wait_hours=24 * sample.ready_days,
        )
    yield Operation("Yes to the sample tile", "sample", None, 0.0, wait_hours=24 * sample.yes_days)


def _in_hand(order: Order, workshop: Workshop) -> Iterator[Operation]:
    """Yield what comes before the first cut: nothing is cut until all of it is in hand."""
    hours = workshop.hours
    yield Operation(
        "Templates, sinks and the signed drawing in hand", "mould", None, hours.in_hand_per_order
    )
    yield Operation("Set up", "mould", None, hours.set_up_per_order)
    if order.heated_curing and workshop.tent is not None:
        yield Operation("Put up the heated tent", "mould", None, workshop.tent.hours_per_order)
