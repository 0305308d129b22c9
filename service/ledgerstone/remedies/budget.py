"""How much one request may have worked out: counted and never timed, so that answers repeat.

One budget serves a request whole, whatever it asks for: the first check and what is made of the
answer, pictures and papers, are paid for before any of it is done, from what the order holds. An
order that cannot pay for that is too intricate. What is left goes to the search of remedies or of
ways to save, and what that leaves to the quotes of changed orders.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Final

from ledgerstone.errors import TooIntricate
from ledgerstone.order import Order, Polygon, Shade, Slab
from ledgerstone.remedies.placeable import MOST_CHOICES, MOST_TOGETHER
from ledgerstone.strength.effort import is_large, plate_effort, settling_effort

MOST_UNITS: Final = 100.0  # a unit is the strength of a plain slab: strength/effort.py
AS_SENT: Final = ""
# Fitted to plain and frilled slabs of no to twenty cut-outs.
_A_PLAN, _A_PAIR, _A_CORNER, _ITS_CUTOUT = 0.05, 0.002, 0.0055, 0.0008
_LAYING_OUT, _A_CHOICE = 0.6, 0.025
_FITTED = ("basin", "hob")  # the sides of such units are in the way
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
    _day: date | None = None
    _before: float = MOST_UNITS
    _aside: float = 0.0

    def begin(self, order: Order, today: date) -> None:
        """Pay for an order's first check, strength and all; on another day it is worked out anew.

        Raises
        ------
        TooIntricate
            It costs more than is left of what a whole request may.
        """
        if today != self._day:
            self._paid, self._plan, self._day = set(), "", today
        self.kept, self._before = 0.0, self.left
        if not self.tries(order):
            raise TooIntricate(len(order.slabs))

    def had_plans_alone(self, order: Order) -> None:
        """Take back what was paid for strength: the first check ended before any."""
        self.left = self._before - sum(map(plan_units, order.slabs))
        self._paid, self._plan = set(), ""

    def set_aside(self, units: float, slabs: int) -> None:
        """Pay for what is made of the answer; told so again, for no more than that.

        Raises
        ------
        TooIntricate
            It is no longer there.
        """
        self.pay(max(0.0, units - self._aside), slabs)
        self._aside = max(self._aside, units)

    def pay(self, units: float, slabs: int) -> None:
        """Spend so much, all that is kept with it.

        Raises
        ------
        TooIntricate
            It is no longer there.
        """
        self.kept = 0.0
        if not self.spends(units):
            raise TooIntricate(slabs)

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
            is_anew = here != plan or (by == AS_SENT and is_large(slab))
            units += share * (settling_effort(slab) + plate_effort(slab) * is_anew)
            plan = here
            if share == 1.0:
                paid.add((by, key))
        if not self.spends(units):
            return False
        self._paid, self._plan = paid, plan
        return True


def plan_units(slab: Slab) -> float:
    """What a slab's plan costs to read, to work out and to check: by corners and by cut-outs."""
    corners, cutouts = _points(slab), len(slab.cutouts)
    return _A_PLAN + _A_PAIR * cutouts**2 + (_A_CORNER + _ITS_CUTOUT * cutouts) * corners


def layout_units(slab: Slab) -> float:
    """What it costs to look for room for a slab's openings: by what each has to choose among."""
    openings = min(len(slab.cutouts), MOST_TOGETHER)
    rests, pockets = slab.rests, _points(slab) // 2
    panels = legs = 0
    if rests is not None:
        panels = 2 * len(rests.units) if any(one.use in _FITTED for one in rests.units) else 0
        legs = len(rests.at)
    past = min(MOST_CHOICES, openings * (2 * panels + 4 * (legs + pockets)))
    apart = 2 * openings * (openings - 1)
    return _LAYING_OUT + _A_CHOICE * (past + apart)


def _points(slab: Slab) -> int:
    around = len(slab.outline.points) if isinstance(slab.outline, Polygon) else 0
    return around + sum(len(cutout.points) for cutout in slab.cutouts)


def _without_looks(slab: Slab) -> Slab:
    """A slab without what does not bear on its strength."""
    return replace(slab, label="", shade=Shade(), quantity=1)
