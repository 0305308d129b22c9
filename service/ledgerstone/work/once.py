"""The steps that an order has once, however many slabs it has: tiles, set-up, table, crates."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.message import Message
from ledgerstone.order import Order
from ledgerstone.work.operation import Operation, Phase
from ledgerstone.workshop.records import Workshop

ShadeAndFinish = tuple[str, str]


def tiles_of(order: Order) -> tuple[ShadeAndFinish, ...]:
    """Return the looks that an order's sample tiles show: a shade and its surface, each once."""
    looks = ((s.shade.name or s.shade.match or "", str(s.finish.surface)) for s in order.slabs)
    return tuple(dict.fromkeys(looks))


def sample_tiles(order: Order, workshop: Workshop) -> Iterator[Operation]:
    """Yield the casting of each tile, and the wait for the customer's yes to them all."""
    sample = workshop.sample
    if sample is None:
        return
    for shade, surface in tiles_of(order):
        yield Operation(
            Message("step-tile", shade=shade, surface=surface),
            "sample",
            None,
            sample.hours,
            wait_hours=24 * sample.ready_days,
        )
    yield Operation(Message("step-yes"), "sample", None, 0.0, wait_hours=24 * sample.yes_days)


def in_hand(order: Order, workshop: Workshop) -> Iterator[Operation]:
    """Yield what comes before the first cut: nothing is cut until all of it is in hand."""
    hours = workshop.hours.per_job
    yield Operation(Message("step-in-hand"), "mould", None, hours.in_hand)
    yield Operation(Message("step-set-up"), "mould", None, hours.set_up)
    if order.heated_curing and workshop.tent is not None:
        yield Operation(Message("step-tent"), "mould", None, workshop.tent.hours_per_order)


def once(name: Message, phase: Phase, hours: float) -> Iterator[Operation]:
    """Yield a step that is done once an order, where it takes time of its own."""
    if hours:
        yield Operation(name, phase, None, hours)
