"""Third stage: the list of work, laid into the workshop's calendar."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from ledgerstone.price import Cost, costs, making_lines, subtotal
from ledgerstone.schedule import LeadTime, NoWorkingDay, lead_time, moulds_to_try
from ledgerstone.schedule.ages import ages_of
from ledgerstone.stages.assessed import Assessed
from ledgerstone.stages.context import StageContext
from ledgerstone.stages.planned import Planned
from ledgerstone.strength.concrete import age_days_of
from ledgerstone.strength.verdict import PERMANENT
from ledgerstone.work import Operation, keeping, operations


@dataclass(frozen=True, slots=True)
class Scheduled:
    """An order's operations and its days.

    Attributes
    ----------
    operations
        The one list of work that price, lead time and job sheet are made from.
    lead_time
        None if there is no day by which it can be ready.
    costed
        The costs of these operations, if they were computed to choose them.
    """

    assessed: Assessed
    operations: tuple[Operation, ...]
    lead_time: LeadTime | None
    costed: tuple[Cost, ...] | None = None

    @property
    def planned(self) -> Planned:
        """The plans of its slabs."""
        return self.assessed.planned

    @property
    def promised(self) -> LeadTime:
        """When it is ready and when it arrives.

        Raises
        ------
        NoWorkingDay
            There is no such day.
        """
        if self.lead_time is None:
            raise NoWorkingDay("no day can be promised")
        return self.lead_time


def schedule(assessed: Assessed, context: StageContext) -> Scheduled:
    """List the work and lay it into the calendar.

    Of equal pieces as few moulds are made as meet the day asked for; where none does, or no day
    is asked for, as many as make it ready soonest. A slab that would not yet bear its own weight,
    or what is spread over it, stays until it does.
    """
    without_tiles = _list_of_work(assessed, (), with_tiles=False)
    costed = _costs_that_decide(assessed, without_tiles)
    lists = _lists_of_work(assessed, without_tiles, costed)
    try:
        laid = [(steps, _lead_time(steps, assessed, context)) for steps in lists]
    except NoWorkingDay:
        return Scheduled(assessed, lists[0], None)
    by = assessed.planned.order.needed_by
    in_time = [(work, days) for work, days in laid if by is not None and days.arrives_latest <= by]
    steps, days = in_time[0] if in_time else min(laid, key=lambda option: option[1].ready_on)
    kept = tuple(_kept(assessed, days))
    if not kept:
        return Scheduled(assessed, steps, days, costed if steps == without_tiles else None)
    try:
        return Scheduled(assessed, (*steps, *kept), _lead_time((*steps, *kept), assessed, context))
    except NoWorkingDay:
        return Scheduled(assessed, (*steps, *kept), None)


def _kept(assessed: Assessed, days: LeadTime) -> Iterator[Operation]:
    """Yield the wait of every slab that is too young, when ready, for its permanent loads.

    Source
    ------
    EN 1992-1-1 (3.4) and (B.10).
    """
    planned = assessed.planned
    cement = planned.workshop.recipe.cement_class
    for i, strength in enumerate(assessed.strength):
        lasting = [v.utilisation for v in strength.in_place.verdicts if v.case in PERMANENT]
        used = max((used for used in lasting if used <= 1.0), default=0.0)
        needed = age_days_of(used, cement)
        age = ages_of(days, i, planned.workshop).get(days.ready_on)
        if needed is not None and age is not None and age < needed:
            yield keeping(i, planned.order, needed)


def _lists_of_work(
    assessed: Assessed, without_tiles: tuple[Operation, ...], costed: tuple[Cost, ...] | None
) -> tuple[tuple[Operation, ...], ...]:
    """Lists of work to choose from, by how many moulds are made of equal pieces."""
    tiles = _tiles_are_cast(assessed.planned, costed)
    every = _list_of_work(assessed, (), with_tiles=True) if tiles else without_tiles
    if all(slab.quantity == 1 for slab in assessed.planned.order.slabs):
        return (every,)  # with one mould each there is nothing to choose
    tried = moulds_to_try(every, assessed.planned.workshop.table)
    lists = tuple(
        _list_of_work(assessed, moulds, with_tiles=tiles) if moulds else every for moulds in tried
    )
    return lists or (every,)


def _list_of_work(
    assessed: Assessed, moulds: tuple[int, ...], *, with_tiles: bool
) -> tuple[Operation, ...]:
    planned = assessed.planned
    handled = [strength.handled for strength in assessed.strength]
    return operations(
        planned.order,
        planned.shapes,
        planned.workshop,
        assessed.under_cover_days,
        tuple(handling.way for handling in handled),
        min_age_days=tuple(handling.needs_age_days for handling in handled),
        moulds=moulds,
        bars=tuple(len(steel.bars) for steel in assessed.steel),
        with_tiles=with_tiles,
    )


def _costs_that_decide(
    assessed: Assessed, without_tiles: tuple[Operation, ...]
) -> tuple[Cost, ...] | None:
    """Return the costs of the work if they decide whether sample tiles are cast; else none."""
    planned = assessed.planned
    order, workshop = planned.order, planned.workshop
    if workshop.sample is None or order.sample_tile or workshop.sample.always_from is None:
        return None
    return costs(order, planned.shapes, without_tiles, workshop, assessed.steel)


def _tiles_are_cast(planned: Planned, costed: tuple[Cost, ...] | None) -> bool:
    """Return whether sample tiles are cast first: ordered, or required by the subtotal."""
    sample = planned.workshop.sample
    if sample is None or costed is None or sample.always_from is None:
        return sample is not None and planned.order.sample_tile
    return subtotal(making_lines(costed, planned.workshop)) >= sample.always_from


def _lead_time(steps: tuple[Operation, ...], assessed: Assessed, context: StageContext) -> LeadTime:
    """Lay one list of work into the calendar.

    Raises
    ------
    NoWorkingDay
        There is no day by which it can be ready.
    """
    planned = assessed.planned
    return lead_time(
        steps,
        context.workshop,
        context.bookings,
        context.today,
        planned.area.days if planned.area is not None else 0,
        by_carrier=planned.order.delivery.kind == "pallet",
    )
