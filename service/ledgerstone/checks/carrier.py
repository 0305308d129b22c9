"""Checks of what carries an order: a carrier's pallets and tail lift, our van, the customer's."""

from __future__ import annotations

import math
from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.stages import Judged, Planned
from ledgerstone.transport import on_edge, pallets_by_size
from ledgerstone.wording import Message, Weight, slab_name

_CARRIER = "the carrier's own rules, as the workshop gives them"
_VAN = "the workshop's own van"
_TO_MM = 50.0  # of a slab's length: what a vehicle must take is said roughly


def fits_a_pallet(judged: Judged) -> Iterable[Finding]:
    """A pallet delivery is within the carrier's length, depth and mass.

    Size is looked at before mass: a long light piece is refused too.

    Source
    ------
    The profile; for the order sources §2.
    """
    planned = judged.planned
    order, workshop = planned.order, planned.workshop
    if order.delivery.kind != "pallet":
        return
    pallets = workshop.lifting.pallets
    fitting = pallets_by_size(order, planned.shapes, workshop)
    if not fitting:
        longest = max(pallet.longest_mm for pallet in pallets)
        deepest = max(p.deepest_mm for p in pallets if p.longest_mm == longest)
        yield from _too_large(planned, longest, deepest)
        return
    most = max(pallet.most_kg for pallet in fitting)
    if planned.packed_kg > most:
        yield _too_heavy(planned.packed_kg, most)


def _too_large(planned: Planned, longest_mm: float, deepest_mm: float) -> Iterable[Finding]:
    for i, slab, shape in planned.slabs():
        piece, thickness = on_edge(slab, shape), slab.thickness
        sizes = (("long", piece.length_mm, longest_mm), ("deep", piece.depth_mm, deepest_mm))
        for way, size, most in sizes:
            if size <= most:
                continue
            yield Finding(
                "too-long-for-pallet",
                "stops",
                Message(
                    "too-long-for-pallet" if way == "long" else "too-deep-for-pallet",
                    slab=slab_name(slab, i, len(planned.order.slabs)),
                    size=thickness.like(size, "up"),
                    most=thickness.like(most, "down"),
                ),
                _CARRIER,
                slab=i,
                at=("/delivery/kind", f"/slabs/{i}/outline"),
                measured={"length_mm": round(size, 1)},
                limit={"length_mm": most},
            )
            break


def _too_heavy(packed_kg: float, most_kg: float) -> Finding:
    return Finding(
        "too-heavy-for-pallet",
        "stops",
        Message("too-heavy-for-pallet", packed=Weight(packed_kg), most=Weight(most_kg)),
        _CARRIER,
        at=("/delivery/kind",),
        measured={"packed_kg": round(packed_kg, 1)},
        limit={"packed_kg": most_kg},
    )


def fits_tail_lift(judged: Judged) -> Iterable[Finding]:
    """A pallet heavier than the tail lift's limit needs a fork-lift at the destination."""
    planned = judged.planned
    order, workshop = planned.order, planned.workshop
    most, packed = workshop.lifting.tail_lift_kg, planned.packed_kg
    if order.delivery.kind == "pallet" and packed > most:
        yield Finding(
            "beyond-tail-lift",
            "caution",
            Message("beyond-tail-lift", packed=Weight(packed), most=Weight(most)),
            _CARRIER,
            at=("/delivery/kind",),
            measured={"packed_kg": round(packed, 1)},
            limit={"packed_kg": most},
        )


def delivered_to_kerb(judged: Judged) -> Iterable[Finding]:
    """A pallet is set down at the kerb, on ground that a pallet truck rolls on."""
    order = judged.planned.order
    if order.delivery.kind == "pallet":
        yield Finding(
            "set-down-at-kerb",
            "note",
            Message("set-down-at-kerb"),
            "common practice, no source",
            at=("/delivery/kind",),
        )


def fits_our_van(judged: Judged) -> Iterable[Finding]:
    """What we bring ourselves goes into our van: its length first, then its mass."""
    planned = judged.planned
    order, workshop = planned.order, planned.workshop
    van = workshop.lifting.van
    if van is None or order.delivery.kind not in ("own-van", "fitted"):
        return
    pieces = [on_edge(s, shape) for s, shape in zip(order.slabs, planned.shapes, strict=True)]
    at = max(range(len(pieces)), key=lambda i: pieces[i].length_mm)
    length, thickness = pieces[at].length_mm, order.slabs[at].thickness
    if length > van.length_mm:
        yield Finding(
            "too-much-for-van",
            "stops",
            Message(
                "too-long-for-van",
                slab=slab_name(order.slabs[at], at, len(order.slabs)),
                length=thickness.like(length, "up"),
                most=thickness.like(van.length_mm, "down"),
            ),
            _VAN,
            slab=at,
            at=("/delivery/kind", f"/slabs/{at}/outline"),
            measured={"length_mm": round(length, 1)},
            limit={"length_mm": van.length_mm},
        )
    elif planned.packed_kg > van.most_kg:
        yield Finding(
            "too-much-for-van",
            "stops",
            Message(
                "too-heavy-for-van", packed=Weight(planned.packed_kg), most=Weight(van.most_kg)
            ),
            _VAN,
            at=("/delivery/kind",),
            measured={"packed_kg": round(planned.packed_kg, 1)},
            limit={"packed_kg": van.most_kg},
        )


def vehicle_to_collect(judged: Judged) -> Iterable[Finding]:
    """For collection: what the vehicle must take, and how a slab is carried in it."""
    planned = judged.planned
    order = planned.order
    if order.delivery.kind != "collect":
        return
    pieces = [on_edge(s, shape) for s, shape in zip(order.slabs, planned.shapes, strict=True)]
    at = max(range(len(pieces)), key=lambda i: pieces[i].length_mm)
    long = order.slabs[at].thickness.like(pieces[at].length_mm, "up", to_mm=_TO_MM)
    carries = math.ceil(planned.packed_kg / 10 - 1e-9) * 10
    yield Finding(
        "vehicle-to-collect",
        "note",
        Message("vehicle-to-collect", length=long, carries=Weight(carries)),
        "size and mass; on edge: common practice, no source",
        slab=at,
        at=("/delivery/kind",),
        measured={
            "length_mm": round(pieces[at].length_mm, 1),
            "packed_kg": round(planned.packed_kg, 1),
        },
    )
