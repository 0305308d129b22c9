"""The list of work: every step of an order, depending on what was ordered."""

from __future__ import annotations

from ledgerstone.message import Message
from ledgerstone.order import Order
from ledgerstone.shape import Shape
from ledgerstone.work.loading import casting_sequence
from ledgerstone.work.making import CastPlan, casting, moulding
from ledgerstone.work.mixing import mixing_minutes
from ledgerstone.work.once import in_hand, once, sample_tiles
from ledgerstone.work.operation import PHASES, Operation
from ledgerstone.work.packing import crating, packing
from ledgerstone.work.surfacing import moving, sealing, surfacing
from ledgerstone.workshop.records import Way, Workshop


def operations(
    order: Order,
    shapes: tuple[Shape, ...],
    workshop: Workshop,
    under_cover_days: tuple[float, ...],
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
    under_cover_days
        Days under cover of each slab before it leaves its mould.
    ways
        How each slab is moved; none is the plainest way, which adds nothing.
    min_age_days
        Age of each slab's concrete, adjusted to 20 °C, before which it stays in its mould.
    moulds
        How many moulds of each slab are made; none is one for every piece.
    bars
        How many bars are cut for a piece of each slab; none is mesh alone.
    with_tiles
        Whether sample tiles are cast first, and the customer's yes to them waited for.
    """
    made = moulds or tuple(slab.quantity for slab in order.slabs)
    sequence = casting_sequence(order, shapes)
    mixing = mixing_minutes(order, shapes, workshop, made, sequence)
    steps = [*(sample_tiles(order, workshop) if with_tiles else ()), *in_hand(order, workshop)]
    steps += crating(order, workshop)
    steps += once(Message("step-level"), "cast", workshop.hours.per_job.level)
    for i in sequence:
        slab, shape = order.slabs[i], shapes[i]
        steps += moulding(i, slab, shape, workshop, made[i])
        age = min_age_days[i] if min_age_days else None
        own_bars, heated = bars[i] if bars else 0, order.heated_curing
        plan = CastPlan(made[i], own_bars, mixing[i], under_cover_days[i], age, heated)
        steps += casting(i, slab, shape, workshop, plan)
        steps += moving(i, slab, shape, workshop, ways[i] if ways else None)
        steps += surfacing(i, slab, shape, workshop)
        steps += sealing(i, slab, shape, workshop)
        steps += packing(i, order, workshop)
    steps += once(Message("step-clean-up"), "cast", workshop.hours.per_job.clean_up)
    return tuple(sorted(steps, key=lambda step: PHASES.index(step.phase)))
