"""What an order left open, by name: a link carries it beside the values that were taken."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping
from dataclasses import replace
from typing import Final

from ledgerstone.order import Cutout, LeftOpen, Order, Slab

_DELIVERY: Final = "delivery"
# A link writes these out though they are usual: where one is left out, it was left open since.
_ALWAYS_WRITTEN: Final = ("thickness", "shade", "surface", "sealer")
_VALUES: Final[Mapping[LeftOpen, Callable[[Slab], object]]] = {
    "thickness": lambda slab: slab.thickness.mm,
    "other-thickness": lambda slab: slab.thickness.mm,
    "shade": lambda slab: slab.shade,
    "surface": lambda slab: slab.finish.surface,
    "sealer": lambda slab: slab.finish.sealer,
    "edges": lambda slab: dict(slab.edges),
    "place": lambda slab: slab.place,
}


def names_left_open(order: Order) -> Iterator[str]:
    """Name what was left open: ``0 thickness`` of the first slab, ``0 rim 1`` of its opening."""
    if order.delivery_taken:
        yield _DELIVERY
    for i, slab in enumerate(order.slabs):
        yield from (f"{i} {name}" for name in slab.taken)
        yield from (f"{i} rim {k}" for k, cutout in enumerate(slab.cutouts) if cutout.rim_taken)


def left_open_as_in(order: Order, offered: Order, names: Collection[str]) -> Order:
    """Take over what an offer left open, where its values still stand in the order.

    Parameters
    ----------
    offered
        The offer's order, in which every value stands.
    names
        What it left open.
    """
    slabs = list(order.slabs)
    for i, (slab, was) in enumerate(zip(order.slabs, offered.slabs, strict=False)):
        taken = tuple(
            name
            for name, value in _VALUES.items()
            if (name in slab.taken and name in _ALWAYS_WRITTEN)
            or (f"{i} {name}" in names if value(slab) == value(was) else name in slab.taken)
        )
        rims = (f"{i} rim {k}" in names for k in range(len(was.cutouts)))
        alike = zip(slab.cutouts, was.cutouts, rims, strict=False)
        cutouts = tuple(_rim_as_in(cutout, then, left=left) for cutout, then, left in alike)
        cutouts += slab.cutouts[len(cutouts) :]
        slabs[i] = replace(slab, taken=taken, cutouts=cutouts)
    collects = order.delivery == offered.delivery
    left = _DELIVERY in names if collects else order.delivery_taken
    return replace(order, slabs=tuple(slabs), delivery_taken=left)


def _rim_as_in(cutout: Cutout, then: Cutout, *, left: bool) -> Cutout:
    return replace(cutout, rim_taken=left if cutout.rim == then.rim else cutout.rim_taken)
