"""How much work one request may cost: counted and never timed, so that answers repeat.

One budget serves a whole request. The first check and what is made of the answer (pictures and
papers) are paid for before any of it is done, by an estimate from the order. An order that costs
more than there is is too intricate. What is left pays for the search of remedies or of ways to
save, and after that for the quotes of changed orders.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Final

from ledgerstone.errors import TooIntricate
from ledgerstone.order import Order, Polygon, Rests, Shade, Slab
from ledgerstone.remedies.placeable import MAX_CHOICES, MAX_PLACED_TOGETHER
from ledgerstone.strength.effort import is_large, plate_effort, settling_effort

MAX_UNITS: Final = 100.0  # a unit is the strength of a plain slab: strength/effort.py
AS_SENT: Final = ""
# Fitted to slabs of few and of many corners, with none to twenty cut-outs.
_A_PLAN, _A_PAIR, _A_CORNER, _ITS_CUTOUT = 0.05, 0.002, 0.0055, 0.0008
_LAYING_OUT, _A_CHOICE = 0.6, 0.025
_A_PROOF: Final = 0.015  # fitted to our own timings
_A_PLACE: Final = 0.3  # fitted to our own timings
_FITTED = ("basin", "hob")  # the sides of such units are in the way
_A_SLAB_OF_AN_ORDER: Final = 0.2  # its mass, its work, its steel, its price


Pacing = Callable[[float], None]


def unpaced(_units: float) -> None:
    """Allow any number of units of work."""


@dataclass(slots=True)
class Budget:
    """Units of work of one request: what is left, what of it is kept for later, what was paid for.

    Before anything is spent ``pace`` is called with the total spent after it; it may raise.

    A slab that comes again in the request costs nothing. What the service has cached from other
    requests does not count, so that a request always costs the same.
    """

    left: float = MAX_UNITS
    kept: float = 0.0
    pace: Pacing = unpaced
    _paid: set[tuple[str, str]] = field(default_factory=set)
    _plan: str = ""
    _day: date | None = None
    _before: float = MAX_UNITS
    _aside: float = 0.0

    def begin(self, order: Order, today: date) -> None:
        """Pay for an order's first check with its strength; on another day, for all of it again.

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
        """Refund the units for strength, if an earlier check stopped the order."""
        self.left = self._before - sum(map(plan_units, order.slabs))
        self._paid, self._plan = set(), ""

    def set_aside(self, units: float, slabs: int) -> None:
        """Pay units of work for what is made of the answer; called again, only for the excess.

        Raises
        ------
        TooIntricate
            So many units are not left.
        """
        self.pay(max(0.0, units - self._aside), slabs)
        self._aside = max(self._aside, units)

    def pay(self, units: float, slabs: int) -> None:
        """Spend units of work, from what is kept too.

        Raises
        ------
        TooIntricate
            So many units are not left.
        """
        self.kept = 0.0
        if not self.spends(units):
            raise TooIntricate(slabs)

    def keep(self, units: float, share: float = 1.0, among: int = 1) -> None:
        """Keep units of work for later; of the rest leave ``share / among`` to be spent."""
        self.kept = self.left - max(0.0, self.left - units) * share / among

    def spends(self, units: float) -> bool:
        """Spend units of work; False, with nothing spent, if fewer are left."""
        if units > self.left - self.kept:
            return False
        self.pace(MAX_UNITS - self.left + units)
        self.left -= units
        return True

    def tries(self, order: Order, share: float = 1.0, by: str = AS_SENT) -> bool:
        """Spend the units of a whole check of an order; False if fewer are left.

        Parameters
        ----------
        share
            Share of its strength that is computed; a slab is marked as paid for only at 1.
        by
            Who tries it: a changed slab is paid for by each, one as sent once for all.
        """
        paid, plan, units = set(self._paid), self._plan, 0.0
        for slab in order.slabs:
            units += plan_units(slab) + _A_SLAB_OF_AN_ORDER
            key = repr((_without_looks(slab), order.heated_curing))
            if (AS_SENT, key) in paid or (by, key) in paid:
                continue
            here = repr(
                (slab.outline, slab.cutouts, [r.outline for r in slab.reliefs], _turns_on(slab))
            )
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
    """Units of work to read, compute and check a slab's plan: by its corners and cut-outs."""
    corners, cutouts = _points(slab), len(slab.cutouts)
    return _A_PLAN + _A_PAIR * cutouts**2 + (_A_CORNER + _ITS_CUTOUT * cutouts) * corners


def layout_units(slab: Slab) -> float:
    """Units of work to look for room for a slab's openings: by the choices that each has."""
    openings = min(len(slab.cutouts), MAX_PLACED_TOGETHER)
    rests, pockets = slab.rests, _points(slab) // 2
    panels = legs = 0
    if rests is not None:
        panels = 2 * len(rests.units) if any(unit.use in _FITTED for unit in rests.units) else 0
        legs = len(rests.at)
    # A panel is passed on either side, a leg or a pocket on any of four.
    past = min(MAX_CHOICES, openings * (2 * panels + 4 * (legs + pockets)))
    apart = 2 * openings * (openings - 1)
    return _LAYING_OUT + _A_CHOICE * (past + apart)


def placing_units(slab: Slab, free: int) -> float:
    """Units of work to place so many free parts of a slab once, and to check its plan."""
    return _A_PLACE * free + plan_units(slab)


def proof_units(slab: Slab) -> float:
    """Units of work to prove which of a slab's openings have no room: each is looked at by all."""
    return _A_PROOF * len(slab.cutouts) ** 2


def _points(slab: Slab) -> int:
    around = len(slab.outline.points) if isinstance(slab.outline, Polygon) else 0
    return around + sum(len(cutout.points) for cutout in slab.cutouts)


def _turns_on(slab: Slab) -> Rests | None:
    """What a slab may turn on, where its mesh is finer: its rests, whatever their rails are."""
    return slab.rests and replace(slab.rests, rails=None, fixed=False)


def _without_looks(slab: Slab) -> Slab:
    """A slab without what its strength does not depend on."""
    return replace(slab, label="", shade=Shade(), quantity=1)
