"""Options where an order would be late: those of the workshop first, then the customer's."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date, timedelta

from ledgerstone.checks import Finding
from ledgerstone.order import Order
from ledgerstone.remedies.change import Change, Changes
from ledgerstone.remedies.costs import COST, MOST_FOR_DAYS, NEXT_OF_SEVERAL, PER_DAY_LATER
from ledgerstone.remedies.option import Option
from ledgerstone.stages import Planned, StageContext
from ledgerstone.surfaces import SURFACES
from ledgerstone.work import finish_days
from ledgerstone.workshop.records import Sealer, Workshop


def sooner(_f: Finding, planned: Planned, _context: StageContext, _most: float) -> Iterable[Option]:
    """The heated tent, no sample tile, collection, a quicker sealer, a surface of fewer days."""
    order = planned.order
    heated = (Change(("heated_curing",), new=True),)
    if planned.workshop.tent is not None and not order.heated_curing:
        yield Option("heated", heated, COST["heated"])
        if order.delivery.kind != "collect" and planned.area is not None:
            both = (*heated, Change(("delivery", "kind"), "collect"))
            yield Option("heated-and-collect", both, COST["heated-and-collect"])
    if order.sample_tile:
        yield Option("no-tile", (Change(("sample_tile",), new=False),), COST["no-tile"])
    if order.delivery.kind != "collect" and planned.area is not None:
        yield Option("collect", (Change(("delivery", "kind"), "collect"),), COST["collect-sooner"])
    for k, changes in enumerate(_sealers(order, planned.workshop)):
        yield Option("sealer-sooner", changes, COST["sealer-sooner"] + NEXT_OF_SEVERAL * k)
    for k, changes in enumerate(_surfaces(order, planned.workshop)):
        yield Option("surface-sooner", changes, COST["surface-sooner"] + NEXT_OF_SEVERAL * k)


def later_day(
    finding: Finding, planned: Planned, _context: StageContext, _most: float
) -> Iterable[Option]:
    """The day on which it can be there: after everything that keeps the customer's own."""
    order = planned.order
    arrives = finding.measured.get("arrives_on")
    if isinstance(arrives, str) and order.needed_by is not None:
        day = date.fromisoformat(arrives)
        late = (day - order.needed_by) / timedelta(days=1)
        cost = COST["later"] + min(MOST_FOR_DAYS, PER_DAY_LATER * late)
        yield Option("later", (Change(("needed_by",), day),), cost)


def hours_to_seal(sealer: Sealer) -> float:
    """Hours from the pour by a sealer's data sheet: the concrete's age, and between coats."""
    return 24 * sealer.youngest_days + sealer.recoat_hours * (sealer.coats - 1)


def _sealers(order: Order, workshop: Workshop) -> Iterator[Changes]:
    """Yield one sealer in place of all slower ones, the slowest of those first."""
    known = {sealer.name: hours_to_seal(sealer) for sealer in workshop.sealers}
    slowest = max(known[slab.finish.sealer] for slab in order.slabs)
    quicker = [sealer for sealer in workshop.sealers if hours_to_seal(sealer) < slowest]
    for sealer in sorted(quicker, key=hours_to_seal, reverse=True):
        slow = [
            i
            for i, slab in enumerate(order.slabs)
            if known[slab.finish.sealer] > hours_to_seal(sealer)
        ]
        if all(order.slabs[i].place in sealer.places for i in slow):
            paths = (("slabs", i, "finish", "sealer") for i in slow)
            yield tuple(Change(path, sealer.name) for path in paths)


def _surfaces(order: Order, workshop: Workshop) -> Iterator[Changes]:
    """Yield one surface in place of all that take more days, the nearest to them first."""
    days = {str(finish.surface): finish_days(finish, workshop) for finish in workshop.finishes}
    slowest = max(days[slab.finish.surface] for slab in order.slabs)
    for surface, kind in reversed(tuple(SURFACES.items())):
        if kind.stands_in and days.get(surface, slowest) < slowest:
            slow = [
                i for i, slab in enumerate(order.slabs) if days[slab.finish.surface] > days[surface]
            ]
            paths = (("slabs", i, "finish", "surface") for i in slow)
            yield tuple(Change(path, surface) for path in paths)
