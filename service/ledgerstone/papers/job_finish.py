"""The finish of one slab, step by step: out of the mould, ground, filled, sealed, packed."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import Block, mm, says, ticks
from ledgerstone.work import finish_of, grits_before_fills
from ledgerstone.workshop.records import Sealer

GRINDING = (
    "Wet grinding: an RCD-protected supply, cables up and dry; goggles, ear defenders, a mask rated"
    " for silica; wash the slurry away wet."
)
FUMES = "Sealer: doors open, no flame, gloves; its safety sheet comes first."
OILY_RAGS = (
    "Oily rags catch fire by themselves: flat outdoors to dry, or under water in a lidded tin."
)


def finish_blocks(job: Job, i: int) -> Iterator[Block]:
    """Yield the steps to tick, and what they can do to whoever does them."""
    sealer = sealer_of(job, i)
    yield ticks(*_freed(job, i), *_ground(job, i), *_sealed(job, i, sealer))
    grinds = [GRINDING] if finish_of(job.slabs[i], job.workshop).grits else []
    yield says(" ".join([*grinds, FUMES, *([OILY_RAGS] if sealer.rags_ignite else [])]))


def sealer_of(job: Job, i: int) -> Sealer:
    """Return the sealer of a slab."""
    return next(s for s in job.workshop.sealers if s.name == job.slabs[i].finish.sealer)


def _freed(job: Job, i: int) -> Iterator[str]:
    """Say how it comes out of its mould: formers stay in wherever the lift counts on them."""
    stands_proud_mm, way = job.workshop.boards.sanding_mm, job.quote.strength[i].handled.way
    knockouts = "knockouts" if job.slabs[i].cutouts else ""
    if stands_proud_mm > 0:
        yield f"Sand the open back flat: {mm(stands_proud_mm)} mm stands proud"
    if way.sides_on:
        out = f", {knockouts} out" if knockouts else ""
        yield f"Turn it, sides and formers in; then sides off{out}, arrises dressed, face washed"
        return
    out = f" and {knockouts}" if knockouts else ""
    yield f"Sides{out} out, then turn it; arrises dressed, face washed"


def _ground(job: Job, i: int) -> Iterator[str]:
    """Say each grit, and each filling of voids after the grit that opens them."""
    finish, slurry = finish_of(job.slabs[i], job.workshop), job.batches.slabs[i].slurry
    fills = grits_before_fills(finish, job.workshop) if slurry.litres else ()
    hours = job.workshop.days.slurry_hours
    parts = ", ".join(
        f"{w.weighed_kg / len(fills):.3g} kg {w.name}" for w in slurry.weighings if fills
    )
    fill = f"ill voids with {slurry.litres / max(1, len(fills)):.2f} l of slurry: {parts}."
    fill += f" Gloves: it burns. Leave it {hours:g} hours"
    area_m2 = job.quote.shapes[i].net_area_mm2 / 1e6
    if None in fills:
        yield f"F{fill}"
    for grit in finish.grits:
        filled = f"; f{fill}" if grit in fills else ""
        yield f"Wet-grind with {grit} grit, {area_m2:.2f} m²; rinse{filled}"


def _sealed(job: Job, i: int, sealer: Sealer) -> Iterator[str]:
    days = job.workshop.days
    strip = (
        f"; seal a strip of it {days.strip_hours:g} hours before: ________"
        if days.strip_hours
        else ""
    )
    yield f"Dry {days.drying:g} days, and to an age of {sealer.youngest_days} days{strip}"
    each = 1000 * job.sealer_l(i) / sealer.coats
    wait = f"; {sealer.recoat_hours:g} hours to the next" if sealer.recoat_hours else ""
    for n in range(1, sealer.coats + 1):
        yield (
            f"Sealer {sealer.name}, coat {n} of {sealer.coats}: {each:.0f} ml"
            f"{wait if n < sealer.coats else ''}"
        )
    yield f"Let it harden {days.after_sealing:g} days; drop water on it and look"
    yield from _pot(job, i)
    lies = bool(job.quote.strength[i].handled.bearers_mm)
    packed = "flat on its bearers, as its card says" if lies else "on edge in foam"
    yield f"Weigh it, write the mass on its card; pack {packed}"


def _pot(job: Job, i: int) -> Iterator[str]:
    """Say what goes into the repair pot; its label is on the carry card."""
    pot = job.batches.slabs[i].pot
    if pot is not None:
        parts = ", ".join(f"{w.weighed_kg:g} kg {w.name}" for w in pot.weighings)
        yield f"Repair pot: {parts}, dry; its label is on the carry card"
