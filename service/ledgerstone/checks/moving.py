"""Checks of moving a slab: out of its mould, up on edge, to its pallet, and in at the door."""

from __future__ import annotations

import math
from collections.abc import Iterable

from ledgerstone.checks.finding import Finding, only
from ledgerstone.checks.verdicts import CARES, finding_of
from ledgerstone.checks.where import spot_words
from ledgerstone.stages import Judged, Planned
from ledgerstone.strength.handling import TEST_UNDER_DAYS
from ledgerstone.strength.verdict import Verdict, worst
from ledgerstone.wording import capital, slab_words, slabs_words, weight_text

_MOVED: dict[str, str] = {
    "lifted-out": "Lifted out of its mould",
    "turned": "Turned up on edge",
    "on-edge": "Held on edge",
    "carried": "Carried",
    "on-bearers": "Lying on its pallet",
}


def moved_whole(judged: Judged) -> Iterable[Finding]:
    """Each slab leaves its mould, stands on edge and reaches its pallet without cracking."""
    order = judged.planned.order
    for i, slab, shape, strength in judged.slabs():
        if strength.too_heavy:
            yield _too_heavy(judged.planned, i)
            continue
        verdict = worst(strength.handled.verdicts)
        if verdict is None or verdict.utilisation <= CARES:
            continue
        name = slab_words(slab, i, len(order.slabs))
        where = spot_words(slab, shape, verdict.where_mm)
        doing = f"{_MOVED[verdict.case]}{_when(verdict, strength.handled.cover_days)}"
        if verdict.tips:
            says = f"{capital(name)} is too lopsided to turn safely: its weight lies to one side."
        elif verdict.utilisation > 1.0:
            says = f"{doing}, {name} would crack {where}."
        else:
            says = (
                f"{doing}, {name} comes near to cracking {where}. We handle it so that it does"
                " not; nobody else should lift it flat."
            )
        yield finding_of("cracks-when-moved", i, verdict, says)


def _when(verdict: Verdict, cover_days: float) -> str:
    if verdict.case == "on-bearers":
        return ""
    return f" {cover_days:g} {'day' if cover_days == 1.0 else 'days'} after casting"


def _too_heavy(planned: Planned, i: int) -> Finding:
    order = planned.order
    most = math.floor(max(way.most_kg for way in planned.workshop.handling.ways))
    name = capital(slab_words(order.slabs[i], i, len(order.slabs)))
    kg = planned.slab_kg[i]
    return Finding(
        "too-heavy-to-handle",
        "stops",
        f"{name} weighs {weight_text(kg)}; with its mould that is more than the {most} kg we"
        " can turn.",
        "the workshop's own gear",
        slab=i,
        at=(f"/slabs/{i}/outline",),
        measured={"slab_kg": round(kg, 1)},
        limit={"slab_and_mould_kg": float(most)},
    )


def carried_on_edge(judged: Judged) -> Iterable[Finding]:
    """A slab that flat by its ends would crack is carried on edge: a caution, never a stop."""
    order = judged.planned.order
    for i, slab, shape, strength in judged.slabs():
        verdict = strength.flat_by_the_ends
        if verdict.utilisation > 1.0:
            name = slab_words(slab, i, len(order.slabs))
            would = "tip" if verdict.tips else f"crack {spot_words(slab, shape, verdict.where_mm)}"
            says = f"Carry {name} on edge. Carried flat, it could {would}."
            yield finding_of("carry-on-edge", i, verdict, says, level="caution")


def tested_first(judged: Judged) -> Iterable[Finding]:
    """Concrete that is moved while very young is tested first: said once, of the youngest."""
    order = judged.planned.order
    ages = [strength.handled.age_days for strength in judged.strength]
    young = [i for i, age in enumerate(ages) if age < TEST_UNDER_DAYS]
    if not young:
        return
    age = min(ages)
    leaves = "leaves its mould" if len(young) == 1 else "leave their moulds"
    yield Finding(
        "young-concrete",
        "note",
        f"{capital(slabs_words(order, young))} {leaves} young. We break a test strip first, to be"
        " sure that it is strong enough.",
        "EN 1992-1-1 (B.10); common practice, no source",
        slab=only(young),
        at=tuple(f"/slabs/{i}" for i in young),
        measured={"age_days": round(age, 2)},
        limit={"age_days": TEST_UNDER_DAYS},
    )
