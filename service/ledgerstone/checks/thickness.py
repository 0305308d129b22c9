"""Checks of what is left beneath: reliefs, drips, bevels and rounds against the thickness."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone import plane
from ledgerstone.checks.finding import Finding, Level, geojson
from ledgerstone.order import Order
from ledgerstone.stages import Planned
from ledgerstone.wording import Message, relief_name, slab_name

GRAINS = 3.0  # a depth of three grains lets them flow: ACI 318-19 26.4.2.1(a)(5)
DRIP_MM = 8.0  # a drip is 6 to 10 mm wide and deep: from memory
_SAME_MM = 0.05  # a relief so little over the slab's side is on it: rounding
_DUST_MM2 = 1.0  # less than a square millimetre is rounding
_ACI = "ACI 318-19 26.4.2.1(a)(5): three grains deep; that a drip is 8 mm deep is from memory"
_LEFT = "the workshop's thinnest with care, half of it at least: common practice, no source"


def reliefs_shallow_enough(planned: Planned) -> Iterable[Finding]:
    """Under every relief half the thinnest slab is left; up to the thinnest it is made with care.

    What grains and steel need there is looked at with the steel.
    """
    order, workshop = planned.order, planned.workshop
    usual_mm = workshop.shaping.thinnest_mm
    for i, slab in enumerate(order.slabs):
        for k, relief in enumerate(slab.reliefs):
            left = slab.thickness.mm - relief.depth.mm
            if left < usual_mm / 2:
                yield _left(order, i, k, usual_mm / 2, "stops")
            elif left < usual_mm:
                yield _left(order, i, k, usual_mm, "caution")


def _left(order: Order, i: int, k: int, limit_mm: float, level: Level) -> Finding:
    slab = order.slabs[i]
    depth = slab.reliefs[k].depth
    left = slab.thickness.mm - depth.mm
    relief, limit = relief_name(slab, k), slab.thickness.like(limit_mm, "up")
    beneath = slab.thickness.like(max(left, 0.0), "down")
    message = Message("relief-too-deep", relief=relief, left=beneath, limit=limit)
    if left <= 0.0:
        message = Message("relief-goes-through", relief=relief, depth=depth, limit=limit)
    elif level == "caution":
        message = Message("relief-made-with-care", relief=relief, left=beneath, limit=limit)
    return Finding(
        "relief-too-deep",
        level,
        message,
        _LEFT,
        slab=i,
        at=(f"/slabs/{i}/reliefs/{k}/depth", f"/slabs/{i}/thickness"),
        measured={"left_mm": round(left, 1)},
        limit={"left_mm": limit_mm},
        key=str(k),
    )


def reliefs_on_the_slab(planned: Planned) -> Iterable[Finding]:
    """A drainer or a recess lies on its slab; a rebate may run out over an edge."""
    order = planned.order
    for i, slab, shape in planned.slabs():
        for k, (relief, area) in enumerate(zip(slab.reliefs, shape.reliefs, strict=True)):
            outside = plane.difference(area, plane.buffer(shape.outline, _SAME_MM))
            runs_out = (
                relief.kind == "rebate" and plane.intersection(area, shape.net).area > _DUST_MM2
            )
            if outside.area <= _DUST_MM2 or runs_out:
                continue
            yield Finding(
                "relief-off-slab",
                "stops",
                Message(
                    "relief-off-slab",
                    relief=relief_name(slab, k),
                    slab=slab_name(slab, i, len(order.slabs)),
                ),
                "geometry",
                slab=i,
                at=(f"/slabs/{i}/reliefs/{k}",),
                where_mm=geojson(outside),
                key=str(k),
            )


def drips_shallow_enough(planned: Planned) -> Iterable[Finding]:
    """Over a drip's groove three grains of concrete are left."""
    order, workshop = planned.order, planned.workshop
    limit = GRAINS * workshop.recipe.largest_aggregate_mm
    for i, slab in enumerate(order.slabs):
        left = slab.thickness.mm - DRIP_MM
        sides = [name for name, edge in slab.edges.items() if edge.drip]
        if not sides or left >= limit:
            continue
        needs = slab.thickness.like(DRIP_MM + limit, "up")
        yield Finding(
            "too-thin-for-drip",
            "stops",
            Message(
                "too-thin-for-drip",
                drip=slab.thickness.like(DRIP_MM),
                thickness=slab.thickness,
                limit=needs,
            ),
            _ACI,
            slab=i,
            at=tuple(f"/slabs/{i}/edges/{side}/drip" for side in sides),
            measured={"left_mm": round(left, 1)},
            limit={"left_mm": limit},
        )
