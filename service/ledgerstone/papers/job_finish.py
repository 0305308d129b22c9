"""The finish of one slab, step by step: out of the mould, ground, filled, sealed, packed."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.message import Area, Message, Ruled, SmallVolume, Value
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_batches import parts_of
from ledgerstone.papers.job_blocks import SheetBlock, plain, ticks
from ledgerstone.surfaces import SURFACES
from ledgerstone.work import finish_of, grits_before_fills
from ledgerstone.workshop.records import Sealer


def finish_ticks(job: Job, i: int) -> SheetBlock:
    """Set the steps to tick."""
    return ticks(*_freed(job, i), *_faced(job, i), *_sealed(job, i, sealer_of(job, i)))


def finish_cautions(job: Job) -> Iterator[Value]:
    """Yield the hazards of finishing, once for all slabs."""
    finishes = [finish_of(slab, job.workshop) for slab in job.slabs]
    if any(finish.grits for finish in finishes):
        yield Message("job-grinding")
    if any(SURFACES[finish.surface].frees_dust and not finish.grits for finish in finishes):
        yield Message("job-silica")
    yield Message("job-fumes")
    if any(sealer_of(job, i).rags_ignite for i in range(len(job.slabs))):
        yield Message("job-rags")


def sealer_of(job: Job, i: int) -> Sealer:
    """Return the sealer of a slab."""
    return next(s for s in job.workshop.sealers if s.name == job.slabs[i].finish.sealer)


def _freed(job: Job, i: int) -> Iterator[Value]:
    """State how it comes out of its mould: formers stay in wherever the lift counts on them."""
    proud_mm, way = job.workshop.boards.sanding_mm, job.quote.strength[i].handled.way
    if proud_mm > 0:
        yield Message("job-sand", proud=Ruled(proud_mm))
    knockouts = "yes" if job.slabs[i].cutouts else "no"
    yield Message("job-turn-in-mould" if way.sides_on else "job-turn-free", knockouts=knockouts)


def _faced(job: Job, i: int) -> Iterator[Value]:
    """Describe each grit, and each filling of voids after the grit that opens them.

    A finish without grits is one step.
    """
    finish, slurry = finish_of(job.slabs[i], job.workshop), job.batches.slabs[i].slurry
    fills = grits_before_fills(finish, job.workshop) if slurry.litres else ()
    fill = Message(
        "job-fill",
        litres=SmallVolume(1000 * slurry.litres / max(1, len(fills)), as_litres=2),
        parts=parts_of(slurry.weighings, 1 / max(1, len(fills))),
        hours=plain(job.workshop.days.slurry_hours),
    )
    area = Area(job.quote.shapes[i].net_area_m2)
    again = Message("job-fill-again", hours=plain(job.workshop.days.slurry_hours))
    if None in fills:
        yield fill
    if not finish.grits:
        yield Message("job-face", surface=finish.surface, area=area)
    for grit in finish.grits:
        yield Message("job-grind", grit=grit, area=area)
        if grit in fills:
            yield fill if grit == fills[0] else again


def _sealed(job: Job, i: int, sealer: Sealer) -> Iterator[Value]:
    yield _dried(job, sealer)
    each = SmallVolume(1000 * job.sealer_l(i) / sealer.coats)
    for n in range(1, sealer.coats + 1):
        yield _coat(sealer, n, each)
    yield Message("job-harden", days=plain(job.workshop.days.after_sealing))
    pot = job.batches.slabs[i].pot
    if pot is not None:
        yield Message("job-pot", parts=parts_of(pot.weighings))
    lies = bool(job.quote.strength[i].handled.bearers_mm)
    yield Message("job-pack", lies="yes" if lies else "no")


def _dried(job: Job, sealer: Sealer) -> Message:
    days, age = plain(job.workshop.days.drying), plain(sealer.youngest_days)
    strip = job.workshop.days.strip_hours
    if strip:
        return Message("job-dry-strip", days=days, age=age, hours=plain(strip))
    return Message("job-dry", days=days, age=age)


def _coat(sealer: Sealer, n: int, each: SmallVolume) -> Message:
    name, coats = sealer.name, sealer.coats
    if sealer.recoat_hours and n < coats:
        hours = plain(sealer.recoat_hours)
        return Message("job-coat-wait", sealer=name, coat=n, coats=coats, each=each, hours=hours)
    return Message("job-coat-of", sealer=name, coat=n, coats=coats, each=each)
