"""How much the search of one order may spend: counted and never timed, so that answers repeat.

One unit is about what the strength of a plain slab takes, a tenth of a second. Whoever makes an
order as intricate as one may be gets fewer trials, and an answer in bounded time.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from ledgerstone.order import Order, Polygon, Slab

MOST_UNITS: Final = 120.0  # for one order, its first check included
FOR_EACH_PASS, FOR_THE_WHOLE, FOR_REMEDIES = 0.3, 0.2, 0.2  # of what the first check leaves
_PLAN_OF_MOST, _MOST_CUTOUTS = 0.8, 20
_CUTOUTS, _RESTS, _POINTS = 5.0, 10.0, 100.0  # as many cost as much again as a plain slab


@dataclass(slots=True)
class Budget:
    """What is left to spend."""

    left: float

    def spends(self, units: float) -> bool:
        """Spend so much, or say that it is no longer there."""
        if units > self.left:
            return False
        self.left -= units
        return True


@dataclass(frozen=True, slots=True)
class Allowed:
    """What one order's search may spend on its parts."""

    a_slab: float
    the_whole: float
    remedies: float


def allowed(order: Order) -> Allowed:
    """Share out what the first check of an order leaves."""
    left = max(0.0, MOST_UNITS - sum(map(plate_units, order.slabs)))
    return Allowed(
        a_slab=FOR_EACH_PASS * left / len(order.slabs),
        the_whole=FOR_THE_WHOLE * left,
        remedies=FOR_REMEDIES * left,
    )


def plate_units(slab: Slab) -> float:
    """What a slab's strength costs to work out, about."""
    rests = slab.rests
    count = 0 if rests is None else len(rests.units) + len(rests.at) + len(rests.lines)
    return 1.0 + len(slab.cutouts) / _CUTOUTS + count / _RESTS + _points(slab) / _POINTS


def order_units(order: Order) -> float:
    """What an order costs to try whole: one slab anew, for the others are remembered."""
    units = [plate_units(slab) for slab in order.slabs]
    return max(units) + sum(units) / 4


def plan_units(slab: Slab) -> float:
    """What a slab's plan costs to look at and to lay out anew: by pairs of cut-outs."""
    pairs = ((1 + len(slab.cutouts)) / (1 + _MOST_CUTOUTS)) ** 2
    return _PLAN_OF_MOST * pairs * (1 + _points(slab) / _POINTS)


def _points(slab: Slab) -> int:
    around = len(slab.outline.points) if isinstance(slab.outline, Polygon) else 0
    return around + sum(len(cutout.points) for cutout in slab.cutouts)
