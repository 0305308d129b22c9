"""Packing by how an order leaves: each piece wrapped, and crates that several pieces share."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.message import Message
from ledgerstone.order import Order
from ledgerstone.work.operation import Operation
from ledgerstone.workshop.records import PackingWay, Workshop


def packing_way(order: Order, workshop: Workshop) -> PackingWay:
    """Return how the pieces of an order are packed: what we fit leaves in our own van."""
    packing = workshop.packing
    by_kind = {
        "collect": packing.collected,
        "own-van": packing.own_van,
        "fitted": packing.own_van,
        "pallet": packing.pallet,
    }
    return by_kind[order.delivery.kind]


def crate_count(order: Order, workshop: Workshop) -> int:
    """Return how many crates an order leaves in; none where its way of packing has no crate.

    Source
    ------
    The profile's ``packing``: so many pieces to a crate.
    """
    return packing_way(order, workshop).crates(sum(slab.quantity for slab in order.slabs))


def packing(i: int, order: Order, workshop: Workshop) -> Iterator[Operation]:
    """Yield the last looks at each piece of a slab, and its packing."""
    n, test = order.slabs[i].quantity, workshop.hours.per_piece.test
    if test:
        yield Operation(Message("step-test"), "pack", i, n * test, pieces=n)
    each = packing_way(order, workshop).hours_per_piece
    yield Operation(Message("step-pack"), "pack", i, n * each, pieces=n)


def crating(order: Order, workshop: Workshop) -> Iterator[Operation]:
    """Yield the building of an order's crates, where it leaves in some."""
    crate = packing_way(order, workshop).crate
    if crate is not None:
        count = crate_count(order, workshop)
        yield Operation(
            Message("step-crate", count=count),
            "pack",
            None,
            count * crate.hours,
        )


def keeping(i: int, order: Order, age_days: float) -> Operation:
    """Return the wait of a slab that stays until its concrete has an age, adjusted to 20 °C."""
    return Operation(
        Message("step-keep"),
        "pack",
        i,
        0.0,
        pieces=order.slabs[i].quantity,
        min_age_days=age_days,
    )
