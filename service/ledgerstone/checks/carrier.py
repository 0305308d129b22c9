"""Checks of what a carrier takes on a pallet: length first, then mass."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.facts import Facts
from ledgerstone.checks.finding import Finding, capital, slab_words, whole_kg
from ledgerstone.order import Order
from ledgerstone.transport import on_edge
from ledgerstone.workshop.records import Workshop

_CARRIER = "the carrier's own rules, as the workshop gives them"


def fits_a_pallet(order: Order, facts: Facts, workshop: Workshop) -> Iterable[Finding]:
    """What goes by pallet is no longer and no heavier than the carrier takes.

    Length is looked at before mass: a long light piece is refused too (handling page §2.1).
    """
    if order.delivery.kind != "pallet":
        return
    limits, too_long = workshop.lifting, False
    for i, (slab, shape) in enumerate(zip(order.slabs, facts.shapes, strict=True)):
        length = on_edge(slab, shape).length_mm
        if length <= limits.pallet_length_mm:
            continue
        too_long, said = True, slab.thickness
        name = capital(slab_words(slab, i, len(order.slabs)))
        yield Finding(
            "too-long-for-pallet",
            "stops",
            f"{name} is {said.like(length, 'up')} long; the carrier takes no more than"
            f" {said.like(limits.pallet_length_mm, 'down')} on a pallet. Have it brought by our"
            " own van, collect it, or make it of two pieces.",
            _CARRIER,
            slab=i,
            at=("/delivery/kind", f"/slabs/{i}/outline"),
            measured={"length_mm": round(length, 1)},
            limit={"length_mm": limits.pallet_length_mm},
        )
    if not too_long and facts.packed_kg > limits.pallet_most_kg:
        yield _too_heavy(facts.packed_kg, limits.pallet_most_kg)


def _too_heavy(packed_kg: float, most_kg: float) -> Finding:
    return Finding(
        "too-heavy-for-pallet",
        "stops",
        f"Packed, the order weighs about {whole_kg(packed_kg)} kg; the carrier takes no more than"
        f" {most_kg:g} kg on a pallet. Have it brought by our own van, collect it, or order it in"
        " two parts.",
        _CARRIER,
        at=("/delivery/kind",),
        measured={"packed_kg": round(packed_kg, 1)},
        limit={"packed_kg": most_kg},
    )
