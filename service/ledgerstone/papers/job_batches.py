"""The batch cards: each batch in the order of mixing, and the lines that a pour is written in."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.mix import Batches, Pour, batches, mixes_of
from ledgerstone.order import Slab
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    NAME,
    Block,
    Content,
    facts,
    heading,
    mm,
    page,
    says,
    shortened,
    table,
)
from ledgerstone.papers.printing import TICK
from ledgerstone.shade import tint_of

CAUTIONS = (
    "Wet cement burns, and is not felt at first: gloves, goggles, sleeves; wash it off at once.",
    "Dust of cement, sand and concrete holds silica: a mask rated for it that fits; grind wet.",
    "Masses here are masses, and none is a safe limit: look at each lift before it is made.",
)

# What is written in at a pour, for the next price and for whoever asks why.
WRITTEN_IN = (
    ("Poured", "from ______ to ______ by ______"),
    ("Warmth", "shed ____ °C, mix ____ °C"),
    ("Slump or flow", "______ mm; a strip of it cast: ____"),
    ("Otherwise than planned", "______________________________"),
)
GLASS = (
    "Glass fibre pricks and itches: gloves, long sleeves, goggles; wash before you touch your face."
)


def batch_page(job: Job) -> Content:
    """Write a card for every batch, in the order in which things go into the mixer."""
    plan, blocks = job.batches, list(_tiles(job))
    for number, pour in enumerate(plan.pours, start=1):
        blocks += list(_pour(job, number, pour))
    return page(
        "Batch cards",
        says("From top to bottom, as it goes into the mixer. Tick each as it goes in.",
             CAUTIONS[0], CAUTIONS[1], *_glass_fibre(job)),
        *blocks,
    )  # fmt: skip


def _tiles(job: Job) -> Iterator[Block]:
    """Yield a card for each sample tile: mixed by hand, with the same recipe and dose."""
    sample, workshop = job.workshop.sample, job.workshop
    if sample is None or not any(step.stage == "sample" for step in job.steps):
        return
    looks: dict[tuple[str, str], Slab] = {}
    for slab in job.slabs:
        looks.setdefault((slab.shade.name or slab.shade.match or "", slab.finish.surface), slab)
    for (shade, surface), slab in looks.items():
        mix = mixes_of(tint_of(slab, workshop), workshop)[0]
        one = batches(mix, sample.litres, workshop.recipe, workshop.mixer)
        yield heading(f"Sample tile: {shade}, {surface}. Send it and wait for the yes")
        yield _card(one)


def _pour(job: Job, number: int, pour: Pour) -> Iterator[Block]:
    names = ", ".join(shortened(job.names[i], NAME) for i in pour.slabs)
    times = f", {pour.times} times over" if pour.times > 1 else ""
    yield heading(f"Pour {number}: {names}{times}")
    limit = job.workshop.mixer.open_minutes
    yield says(
        f"{pour.litres:.1f} litres, {pour.minutes:.0f} minutes from the first weighing. The first"
        f" concrete waits {pour.open_minutes:.0f} of the {limit:.0f} minutes it stays open."
    )
    for one in pour.batches:
        yield _card(one)
    yield from _coarse_face(job)
    yield facts(*WRITTEN_IN)


def _coarse_face(job: Job) -> Iterator[Block]:
    """Say that a face coat's grains are coarse for it, where the profile leaves none out."""
    recipe = job.workshop.recipe
    coat, largest_mm = recipe.face_coat, recipe.largest_aggregate_mm
    if coat is not None and not coat.without and largest_mm > coat.largest_grain_mm:
        yield says(
            f"Sieve grains over {coat.largest_grain_mm:.1f} mm out of the face coat: a third of its"
            f" {mm(coat.thickness_mm)} mm."
        )


def _glass_fibre(job: Job) -> tuple[str, ...]:
    """Warn of glass fibre where the recipe has some."""
    fibres = (part.name for part in job.workshop.recipe.parts if part.role == "fibre")
    return (GLASS,) if any("glass" in name.casefold() for name in fibres) else ()


def _card(one: Batches) -> Block:
    """Set one batch, with a box to tick for each time that it is mixed."""
    batch = one.batch
    boxes = [f"{n}" for n in range(1, one.count + 1)]
    shown = boxes if len(boxes) <= 8 else [*boxes[:7], f"to {one.count}"]
    name = {"face": "Face coat", "backing": "Backing", "body": "Concrete"}[batch.coat]
    bags = f", {batch.bags:.2f} bags each" if batch.bags is not None else ""
    rows = [
        [w.name, f"{w.weighed_kg:.{_places(w.step_kg)}f}", "", *(TICK for _ in shown)]
        for w in batch.weighings
    ]
    told = f"{name}: {one.count} × {batch.litres:.1f} l, w/c {batch.water_cement_ratio:.2f}{bags}"
    share = max(5, 30 // max(1, len(shown)))
    columns = (told, "Weigh, kg", "Really", *shown)
    widths = (44, 16, 16, *(share for _ in shown))
    return table(columns, rows, widths, right=(1,), large=True)


def _places(step_kg: float) -> int:
    return 3 if step_kg < 0.01 else 2
