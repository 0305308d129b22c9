"""Where no thickness was told: another of ours in place of a usual one that does not do."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.checks import Checked
from ledgerstone.order import LeftOpen, Order, Slab
from ledgerstone.remedies.offers import OFFERS
from ledgerstone.remedies.size_offers import (
    SAME_THICKNESS_MM,
    joined,
    other_thickness,
    stocked_thickness,
)
from ledgerstone.workshop.records import Shaping

# The checks that another thickness may settle.
_OF_THICKNESS: Final = frozenset(name for name, row in OFFERS.items() if other_thickness in row)


def with_thickness_that_does(
    order: Order,
    shaping: Shaping,
    run: Callable[[Order], Checked],
    may_try: Callable[[Order], bool],
) -> tuple[Order, Checked]:
    """Work an order out; where the usual thickness that was taken does not do, at one that does.

    The stocked ones are tried that are thicker, the thinnest first, then the thinner ones. Where
    none does, the usual one stands, and so does what was taken for an offer that is changed.

    Parameters
    ----------
    run
        Works an order out, stage by stage.
    may_try
        Says of each order, before it is worked out, whether there is budget for it.
    """
    checked = run(order)
    slabs = _too_weak(order, checked)
    if slabs and order.since is None:
        for other in _at_other_thicknesses(order, slabs, shaping):
            if not may_try(other):
                break
            again = run(other)
            if again.records is not None:
                return other, again
    return order, checked


def _too_weak(order: Order, checked: Checked) -> list[int]:
    """List the slabs whose thickness was not given and that another one might help."""
    stops = [finding for finding in checked.stops if finding.check in _OF_THICKNESS]
    every = range(len(order.slabs))
    affected = {
        k for stop in stops for k in (every if stop.slab is None else joined(order, stop.slab))
    }
    return [k for k in sorted(affected) if "thickness" in order.slabs[k].taken]


def _at_other_thicknesses(order: Order, slabs: Sequence[int], shaping: Shaping) -> Iterator[Order]:
    """Yield the order with some of its slabs of each other thickness in stock."""
    usual_mm = order.slabs[slabs[0]].thickness.mm
    stocked = sorted(shaping.thicknesses_mm)
    thicker = [mm for mm in stocked if mm > usual_mm + SAME_THICKNESS_MM]
    thinner = [mm for mm in reversed(stocked) if mm < usual_mm - SAME_THICKNESS_MM]
    for mm in (*thicker, *thinner):
        made = (
            _at(slab, mm, shaping) if k in slabs else slab for k, slab in enumerate(order.slabs)
        )
        yield replace(order, slabs=tuple(made))


def _at(slab: Slab, mm: float, shaping: Shaping) -> Slab:
    """Give a slab another thickness than the usual one, in the unit of its sizes."""
    taken: tuple[LeftOpen, ...] = tuple(
        "other-thickness" if name == "thickness" else name for name in slab.taken
    )
    return replace(slab, thickness=stocked_thickness(slab.thickness, mm, shaping), taken=taken)
