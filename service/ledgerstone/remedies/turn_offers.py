"""What a good maker would offer where an opening fits the other way round."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks import Facts, Finding
from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.order import Order
from ledgerstone.remedies.change import Change, changed
from ledgerstone.remedies.layout import Freedom
from ledgerstone.remedies.option import WITHIN, Option, named
from ledgerstone.remedies.plan_offers import MOST_AT_ONCE, laid

_COSTS = 1.5
_ALIKE_MM = 5.0  # turned a quarter, it is as it was
_QUARTER, _HALF = 90.0, 180.0


def turned(finding: Finding, order: Order, facts: Facts, most_share: float) -> Iterable[Option]:
    """Turn an opening a quarter round, and move it to where it then fits."""
    i = finding.slab
    spoken_of = [int(k) for k in named(finding, "cutouts")]
    if i is None or len(spoken_of) > MOST_AT_ONCE or most_share > WITHIN:
        return
    for k in spoken_of:
        cutout = order.slabs[i].cutouts[k]
        length, width = cutout_size_mm(cutout)
        if cutout.kind not in ("rectangle", "slot") or abs(length - width) < _ALIKE_MM:
            continue
        turn = Change(
            ("slabs", i, "cutouts", k, "turn_degrees"), (cutout.turn_degrees + _QUARTER) % _HALF
        )
        there = changed(order, (turn,))
        at = Facts(there, facts.workshop, facts.bookings, facts.today, facts.plates)
        moved = next(iter(laid("turn", i, there, at, Freedom(moves=frozenset((k,))))), None)
        if moved is None:
            yield Option("turn", (turn,), _COSTS)
        else:
            yield Option("turn", (turn, *moved.changes), _COSTS + moved.cost)
