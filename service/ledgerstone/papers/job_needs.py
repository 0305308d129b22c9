"""What a job needs, as plain lists: its days by slab, and every material with what a pack holds."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from ledgerstone.message import Gauge, Message
from ledgerstone.mix import part_name
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_stock import LITRES_PER_QUART
from ledgerstone.quantities import FOOT_M, KG_PER_LB, MM2_PER_M2
from ledgerstone.schedule.day_work import work_by_day
from ledgerstone.wording import bench_speech, workshop_speech


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
    """Yield what the order uses of each material, in the units that the workshop works in."""
    place = job.workshop.place.at_work()
    speech = bench_speech(job.workshop.workshop.language, job.workshop)
    kg = KG_PER_LB if place.masses == "lb" else 1.0
    litres = LITRES_PER_QUART if place.volumes == "gal" else 1.0
    m2 = FOOT_M**2 if place.lengths == "in" else 1.0
    size = {"mass": kg, "litres": litres, "area": m2}
    for name, used, unit, pack in _materials(job):
        packed = {} if pack is None else {"pack": _in_unit(pack, unit, size)}
        yield {
            "name": speech.say(name),
            "used": used / size.get(unit, 1.0),
            "unit": speech.say(Message("job-stock-unit", unit=unit)),
            **packed,
        }


def _in_unit(pack: float, unit: str, size: Mapping[str, float]) -> float:
    """What a pack holds; what is sold loose and by the litre comes by whole ones of the unit."""
    return pack / size[unit] if unit == "mass" else pack


def _materials(job: Job) -> Iterator[tuple[Message | str, float, str, float | None]]:
    """Yield each material, how much of what unit is used, and what a pack holds."""
    for supply in job.moulds.supplies:
        if supply.packs:
            named = Message("job-supply", supply=supply.name)
            yield named, supply.used, supply.unit, 1.0
    for bought in job.batches.purchases:
        yield part_name(bought), bought.kg, "mass", bought.pack_kg
    for i, slab in enumerate(job.slabs):
        litres = slab.quantity * job.sealer_l(i)
        yield Message("job-sealer", sealer=slab.finish.sealer), litres, "litres", 1.0
    cut, _, mesh = job.cut
    for stock in cut.stocks:
        name = Message("job-bars", bar=Gauge(stock.diameter_mm))
        yield name, float(len(stock.lengths)), "bars", 1.0
    for piece in mesh:
        name = Message("job-mesh", wire=Gauge(piece.wire_mm), pitch=Gauge(piece.pitch_mm))
        area = piece.count * piece.length_mm * piece.width_mm / MM2_PER_M2
        yield name, area, "area", None
