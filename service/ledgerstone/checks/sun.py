"""Check of what the sun does to a slab that is held fast outdoors."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.shade import shade_seen
from ledgerstone.stages import Assessed
from ledgerstone.strength.cracked import IN_USE_DAYS
from ledgerstone.strength.movement import (
    EXPANSION_PER_K,
    free_bow_mm,
    restrained_stress_mpa,
    sun_kelvin,
)
from ledgerstone.strength.slabs import concrete_of
from ledgerstone.wording import Message, slab_name


def free_to_move(assessed: Assessed) -> Iterable[Finding]:
    """A slab that is fixed outdoors slides on its fixings: a caution where the sun would crack it.

    Where nothing is known of the shade it is taken as a dark one.
    """
    order, workshop = assessed.planned.order, assessed.planned.workshop
    concrete = concrete_of(workshop)
    for i, slab, shape, _ in assessed.slabs():
        if slab.place != "outdoors" or slab.rests is None or not slab.rests.fixed:
            continue
        seen = shade_seen(slab.shade, workshop)
        kelvin = sun_kelvin(seen.lab[0] if seen is not None else 0.0)
        stress = restrained_stress_mpa(concrete.ecm_mpa, kelvin)
        limit = concrete.design_bending_mpa(slab.thickness.mm, IN_USE_DAYS)
        if stress > limit:
            long = max(shape.length_mm, shape.width_mm)
            bow = free_bow_mm(EXPANSION_PER_K * kelvin, long, slab.thickness.mm)
            yield Finding(
                "sun-on-fixed",
                "caution",
                Message(
                    "sun-on-fixed",
                    slab=slab_name(slab, i, len(order.slabs)),
                    bow=slab.thickness.like(bow, "up", to_mm=0.1),
                ),
                "thin plate, restrained; warmth by shade from memory",
                slab=i,
                at=(f"/slabs/{i}/rests",),
                measured={"stress_mpa": round(stress, 2)},
                limit={"stress_mpa": round(limit, 2)},
            )
