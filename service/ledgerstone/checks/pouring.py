"""Check of the pour: the last batch is placed before the first has stiffened."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.mix import Pour, batch_plan, late_pours
from ledgerstone.order import Order
from ledgerstone.stages import Planned
from ledgerstone.wording import Message, slab_name
from ledgerstone.workshop.records import Workshop


def poured_in_time(planned: Planned) -> Iterable[Finding]:
    """No slab takes more batches than the mixer places while the first one is still open."""
    order, workshop = planned.order, planned.workshop
    if not any(_may_be_late(shape.volume_l, workshop) for shape in planned.shapes):
        return
    late: dict[int, Pour] = {}
    for pour in late_pours(batch_plan(order, planned.shapes, workshop), workshop):
        late.setdefault(pour.slabs[0], pour)
    for i, pour in sorted(late.items()):
        yield _late(order, i, pour, workshop)


def _may_be_late(litres: float, workshop: Workshop) -> bool:
    """Whether a piece might take too many batches, looked at quickly and on the safe side."""
    mixer = workshop.mixer
    wanted = litres * (1 + workshop.recipe.waste_percent / 100) / mixer.working_l
    return (wanted * 2 + 2) * mixer.minutes_per_batch > mixer.open_minutes


def _late(order: Order, i: int, pour: Pour, workshop: Workshop) -> Finding:
    batches = sum(batch.count for batch in pour.batches)
    return Finding(
        "pour-too-slow",
        "stops",
        Message(
            "pour-too-slow",
            slab=slab_name(order.slabs[i], i, len(order.slabs)),
            batches=batches,
            minutes=pour.open_minutes,
            open_minutes=workshop.mixer.open_minutes,
        ),
        "the workshop's own mixer and open time",
        slab=i,
        at=(f"/slabs/{i}/outline", f"/slabs/{i}/thickness"),
        measured={"open_hours": round(pour.open_minutes / 60, 2)},
        limit={"open_hours": round(workshop.mixer.open_minutes / 60, 2)},
    )
