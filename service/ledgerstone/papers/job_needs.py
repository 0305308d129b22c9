"""What a job needs, as plain lists: its days by slab, and every material with what a pack holds."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from ledgerstone.message import Message
from ledgerstone.papers.job import Job
from ledgerstone.quantities import MM2_PER_M2
from ledgerstone.schedule.day_work import work_by_day
from ledgerstone.wording import workshop_speech


def job_days(job: Job) -> Iterator[dict[str, Any]]:
    """Yield each day's work at each slab, and the day on which the order leaves."""
    speech = workshop_speech(job.workshop.workshop.language, job.workshop)
    for work in work_by_day(job.quote.lead_time):
        phases = ", ".join(speech.say(Message("stage", stage=phase)) for phase in work.phases)
        whole = speech.say(Message("job-whole-order"))
        name = whole if work.slab is None else job.names[work.slab]
        yield {
            "day": work.day.isoformat(),
            "label": name,
            "says": phases,
            "hours": f"{work.begins:%H:%M}–{work.ends:%H:%M}",
        }
    leaves = Message("day-leaves", kind=job.quote.order.delivery.kind)
    yield {"day": job.quote.lead_time.ready_on.isoformat(), "label": "", "says": speech.say(leaves)}


def job_materials(job: Job) -> Iterator[dict[str, Any]]:
    """Yield what the order uses of each material."""
    for supply in job.moulds.supplies:
        if supply.packs:
            yield {"name": supply.name, "used": supply.used, "unit": supply.unit, "pack": 1.0}
    for bought in job.batches.purchases:
        yield {"name": bought.name, "used": bought.kg, "unit": "kg", "pack": bought.pack_kg}
    for i, slab in enumerate(job.slabs):
        litres = slab.quantity * job.sealer_l(i)
        yield {"name": f"sealer {slab.finish.sealer}", "used": litres, "unit": "l", "pack": 1.0}
    cut, _, mesh = job.cut
    for stock in cut.stocks:
        name = f"bars {stock.diameter_mm:g} mm"
        yield {"name": name, "used": float(len(stock.lengths)), "unit": "bars", "pack": 1.0}
    for piece in mesh:
        name = f"mesh {piece.wire_mm:g} at {piece.pitch_mm:g}"
        area = piece.count * piece.length_mm * piece.width_mm / MM2_PER_M2
        yield {"name": name, "used": area, "unit": "m²"}
