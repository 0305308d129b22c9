"""How much one request may have worked out: counted and never timed, so that answers repeat.

One budget serves a request whole. Its first check is paid for before any of it is done, from what
the order holds; an order that cannot pay for that is too intricate. What is left goes to the
search of remedies or of ways to save.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from typing import Final

from ledgerstone.errors import TooIntricate
from ledgerstone.order import Order, Polygon, Shade, Slab
from ledgerstone.strength.effort import plate_effort, settling_effort

MOST_UNITS: Final = 100.0  # a unit is the strength of a plain slab: strength/effort.py
AS_SENT: Final = ""
_PLAN_OF_MOST, _MOST_CUTOUTS = 2.0, 20
_POINTS = 20.0  # as many double what a plan costs
_A_SLAB_OF_AN_ORDER: Final = 0.2  # its mass, its work, its steel, its price


Pace = Callable[[float], None]


def unpaced(_units: float) -> None:
    """Let any work go on."""


@dataclass(slots=True)
class Budget:
    """What is left to spend, what of it is kept for later, and what has been paid for.

    Before anything is spent ``pace`` is told how much that comes to in all; it may raise.

    A slab that comes again is worked out no more: whatever the service has kept from other
    requests, one request counts by itself alone.
    """

    left: float = MOST_UNITS
    kept: float = 0.0
    pace: Pace = unpaced
    _paid: set[tuple[str, str]] = field(default_factory=set)
    _plan: str = ""

    def keep(self, units: float, share: float = 1.0, among: int = 1) -> None:
        """Keep so much for later; of the rest leave a share, divided among so many, to be spent."""
        self.kept = self.left - max(0.0, self.left - units) * share / among

    def spends(self, units: float) -> bool:
        """Spend so much, or say that it is no longer there."""
        if units > self.left - self.kept:
            return False
        self.pace(MOST_UNITS - self.left + units)
        self.left -= units
        return True

    def tries(self, order: Order, share: float = 1.0, by: str = AS_SENT) -> bool:
        """Spend what checking an order whole costs, or say that it is no longer there.

        Parameters
        ----------
        share
            How much of its strength is looked at; what is not looked at whole is not paid for.
        by
            Who tries it: a slab that was changed is worked out for each, but for one as sent.
        """
        paid, plan, units = set(self._paid), self._plan, 0.0
        for slab in order.slabs:
            units += plan_units(slab) + _A_SLAB_OF_AN_ORDER
            key = repr((_without_looks(slab), order.heated_curing))
            if (AS_SENT, key) in paid or (by, key) in paid:
                continue
            here = repr((slab.outline, slab.cutouts, [r.outline for r in slab.reliefs]))
            units += share * (settling_effort(slab) + plate_effort(slab) * (here != plan))
            plan = here
            if share == 1.0:
                paid.add((by, key))
        if not self.spends(units):
            return False
        self._paid, self._plan = paid, plan
        return True


def budget_for(order: Order, pace: Pace = unpaced) -> Budget:
    """Pay for an order's first check, strength and all.

    Raises
    ------
    TooIntricate
        It costs more than a whole request may.
    """
    budget = Budget(pace=pace)
    if not budget.tries(order):
        raise TooIntricate(len(order.slabs))
    return budget


def after_plans_alone(order: Order, pace: Pace = unpaced) -> Budget:
    """Return the budget of an order whose first check ended before any strength."""
    return Budget(MOST_UNITS - sum(map(plan_units, order.slabs)), pace=pace)


def plan_units(slab: Slab) -> float:
    """What a slab's plan costs to look at and to lay out anew: by pairs of cut-outs."""
    pairs = ((1 + len(slab.cutouts)) / (1 + _MOST_CUTOUTS)) ** 2
    return _PLAN_OF_MOST * pairs * (1 + _points(slab) / _POINTS)


def _points(slab: Slab) -> int:
    around = len(slab.outline.points) if isinstance(slab.outline, Polygon) else 0
    return around + sum(len(cutout.points) for cutout in slab.cutouts)


def _without_looks(slab: Slab) -> Slab:
    """A slab without what does not bear on its strength."""
    return replace(slab, label="", shade=Shade(), quantity=1)
