"""Checks of moving a slab: out of its mould, up on edge, to its pallet, and in at the door."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding, only
from ledgerstone.checks.verdicts import CAUTION_UTILISATION, finding_of
from ledgerstone.checks.where import spot
from ledgerstone.stages import Assessed, Planned
from ledgerstone.strength.handling import TEST_UNDER_DAYS
from ledgerstone.strength.strip_test import CONDITION_UNDER_DAYS
from ledgerstone.strength.verdict import worst
from ledgerstone.wording import Message, Weight, slab_name, slabs_name


def survives_handling(assessed: Assessed) -> Iterable[Finding]:
    """Each slab leaves its mould, stands on edge and reaches its pallet without cracking."""
    order = assessed.planned.order
    for i, slab, shape, strength in assessed.slabs():
        if strength.too_heavy:
            yield _too_heavy(assessed.planned, i)
            continue
        verdict = worst(strength.handled.verdicts)
        if verdict is None or verdict.utilisation <= CAUTION_UTILISATION:
            continue
        name = slab_name(slab, i, len(order.slabs))
        message = Message(
            "cracks-when-moved" if verdict.utilisation > 1.0 else "near-cracking-when-moved",
            moved=verdict.case,
            days=strength.handled.under_cover_days,
            slab=name,
            where=spot(slab, shape, verdict.where_mm),
        )
        if verdict.tips:
            message = Message("too-lopsided-to-turn", slab=name)
        yield finding_of("cracks-when-moved", i, verdict, message)


def _too_heavy(planned: Planned, i: int) -> Finding:
    order = planned.order
    most = max(way.most_kg for way in planned.workshop.ways)
    kg = planned.slab_kg[i]
    return Finding(
        "too-heavy-to-handle",
        "stops",
        Message(
            "too-heavy-to-handle",
            slab=slab_name(order.slabs[i], i, len(order.slabs)),
            weight=Weight(kg),
            most=Weight(most),
        ),
        "the workshop's own gear",
        slab=i,
        at=(f"/slabs/{i}/outline",),
        measured={"slab_kg": round(kg, 1)},
        limit={"slab_and_mould_kg": round(most, 1)},
    )


def carried_on_edge(assessed: Assessed) -> Iterable[Finding]:
    """A slab that flat by its ends would crack is carried on edge: a caution, never a stop."""
    order = assessed.planned.order
    for i, slab, shape, strength in assessed.slabs():
        verdict = strength.flat_by_the_ends
        if verdict.utilisation > 1.0:
            name = slab_name(slab, i, len(order.slabs))
            where = spot(slab, shape, verdict.where_mm)
            message = Message("carry-on-edge", slab=name, where=where)
            if verdict.tips:
                message = Message("carry-on-edge-or-it-tips", slab=name)
            yield finding_of("carry-on-edge", i, verdict, message, level="caution")


def tested_first(assessed: Assessed) -> Iterable[Finding]:
    """Concrete that is moved very young is tested first: one finding, of the youngest slab."""
    order = assessed.planned.order
    ages = [strength.handled.age_days for strength in assessed.strength]
    young = [i for i, age in enumerate(ages) if age < TEST_UNDER_DAYS]
    if not young:
        return
    age = min(ages)
    slabs = slabs_name(order, young)
    waits = age < CONDITION_UNDER_DAYS
    yield Finding(
        "young-concrete",
        "note",
        Message("young-concrete-waits" if waits else "young-concrete", slabs=slabs),
        "EN 1992-1-1 (B.10); common practice, no source",
        slab=only(young),
        at=tuple(f"/slabs/{i}" for i in young),
        measured={"age_days": round(age, 2)},
        limit={"age_days": TEST_UNDER_DAYS},
    )
