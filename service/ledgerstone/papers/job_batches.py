"""The batch cards: each batch in the order of mixing, and the lines that a pour is written in."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from ledgerstone.message import (
    Figure,
    Gauge,
    Listed,
    Mass,
    Message,
    Percent,
    Ruled,
    Value,
    Volume,
    Weighed,
)
from ledgerstone.mix import Batches, Pour, Weighing, batches, mixes_of, part_name
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    NAME,
    SheetBlock,
    facts,
    heading,
    page,
    plain,
    says,
    shortened,
    side_by_side,
    table,
)
from ledgerstone.papers.job_stock import LITRES_PER_QUART
from ledgerstone.papers.printing import TICK_BOX
from ledgerstone.papers.sheet import Content
from ledgerstone.shade import tint_of
from ledgerstone.work import tiles_of

MAX_BOXES = 6


def batch_page(job: Job) -> Content:
    """Write a card for every batch, in the order in which things go into the mixer."""
    return page(Message("job-batches-title"), *pour_blocks(job))


def pour_blocks(job: Job) -> Iterator[SheetBlock]:
    """Yield the cautions, then each tile's and each pour's cards."""
    glass = [Message("job-glass")] if _has_glass(job) else []
    cautions = (Message("job-cement"), Message("job-dust"), *glass)
    yield says(Listed((Message("job-batch-order"), *cautions), joined="sentences"))
    yield from _tiles(job)
    for number, pour in enumerate(job.batches.pours, start=1):
        yield from _pour(job, number, pour)


def _tiles(job: Job) -> Iterator[SheetBlock]:
    """Yield a card for each sample tile: mixed by hand, with the same recipe and dose."""
    sample, workshop = job.workshop.sample, job.workshop
    if sample is None or not any(step.phase == "sample" for step in job.steps):
        return
    for shade, surface in tiles_of(job.quote.order):
        slab = next(
            s
            for s in job.slabs
            if (s.shade.name or s.shade.match or "", s.finish.surface) == (shade, surface)
        )
        mix = mixes_of(tint_of(slab, workshop), workshop)[0]
        yield heading(Message("job-tile", shade=shade, surface=surface))
        yield _card(batches(mix, sample.litres, workshop.recipe, workshop.mixer))


def _pour(job: Job, number: int, pour: Pour) -> Iterator[SheetBlock]:
    names = Listed(tuple(shortened(job.names[i], NAME) for i in pour.slabs), joined="comma")
    yield heading(Message("job-pour", number=number, names=names, times=pour.times))
    yield says(
        Message(
            "job-pour-minutes",
            litres=Volume(pour.litres, 1, bare=True),
            minutes=Figure(pour.minutes, 0),
            open=Figure(pour.open_minutes, 0),
            limit=Figure(job.workshop.mixer.open_minutes, 0),
        ),
        *_coarse_face(job),
        *_usual_cement(job),
    )
    yield from _cards(pour.batches)
    yield from side_by_side(
        [
            facts(
                (Message("job-poured"), Message("job-poured-line")),
                (Message("job-slump"), Message("job-slump-line")),
            )
        ],
        [
            facts(
                (Message("job-warmth"), Message("job-warmth-line")),
                (Message("job-otherwise"), Message("job-otherwise-line")),
            )
        ],
    )


def _cards(every: Sequence[Batches]) -> Iterator[SheetBlock]:
    """Set the batches of a pour, face coat and backing side by side."""
    for at in range(0, len(every), 2):
        pair = [_card(batches) for batches in every[at : at + 2]]
        if len(pair) == 2:
            yield from side_by_side(pair[:1], pair[1:])
        else:
            yield from pair


def _coarse_face(job: Job) -> Iterator[Value]:
    """State that a face coat's grains are coarse for it, where the profile leaves none out."""
    recipe = job.workshop.recipe
    coat, largest_mm = recipe.face_coat, recipe.largest_aggregate_mm
    if coat is not None and not coat.without and largest_mm > coat.largest_grain_mm:
        grain = Gauge(round(coat.largest_grain_mm, 1))
        yield Message("job-sieve", grain=grain, coat=Ruled(coat.thickness_mm))


def _usual_cement(job: Job) -> Iterator[Value]:
    """State by which cement in the bag pigment is dosed, where it is not given."""
    bag = job.workshop.recipe.bag
    doses = any(tint_of(slab, job.workshop).doses for slab in job.slabs)
    if bag is not None and bag.cement_percent is None and doses:
        share = Percent(Decimal(f"{bag.cement_share_percent:g}"))
        yield Message("job-usual-cement", percent=share)


def _has_glass(job: Job) -> bool:
    """Return whether glass fibre is in the recipe, or is cut for the mould."""
    if job.workshop.steel.material == "glass-fibre":
        return True
    fibres = (part.name for part in job.workshop.recipe.parts if part.role == "fibre")
    return any("glass" in name.casefold() for name in fibres)


def _card(batches: Batches) -> SheetBlock:
    """Set one batch, with a box to tick for each time that it is mixed."""
    boxes: list[Value] = [f"{n}" for n in range(1, batches.count + 1)]
    shown = boxes
    if len(boxes) > MAX_BOXES:
        shown = [*boxes[: MAX_BOXES - 1], Message("job-to-count", count=batches.count)]
    rows = [
        [_named(w, batches), Weighed(w.weighed_kg, w.step_kg), "", *(TICK_BOX for _ in shown)]
        for w in batches.batch.weighings
    ]
    share = max(6, 24 // max(1, len(shown)))
    columns = (_batch_named(batches), Message("job-weigh"), Message("job-really"), *shown)
    widths = (44, 20, 18, *(share for _ in shown))
    return table(columns, rows, widths, right=(1,), large=True)


def _named(weighing: Weighing, batches: Batches) -> Value:
    """Name what is weighed; beside bags, water is measured in a jug as well."""
    if weighing.role != "water" or batches.batch.bags is None:
        return part_name(weighing)
    litres = weighing.kg  # a kilogram is one
    return Message(
        "job-water-by", litres=Figure(litres, 1), quarts=Figure(litres / LITRES_PER_QUART, 1)
    )


def _batch_named(batches: Batches) -> Message:
    batch = batches.batch
    litres, ratio = Volume(batch.litres, 1), Figure(batch.water_cement_ratio, 2)
    if batch.bags is None:
        return Message(
            "job-batch", coat=batch.coat, count=batches.count, litres=litres, ratio=ratio
        )
    return Message(
        "job-batch-bags",
        coat=batch.coat,
        count=batches.count,
        litres=litres,
        ratio=ratio,
        bags=Figure(batch.bags, 2),
    )


def parts_of(weighings: Sequence[Weighing], times: float = 1.0) -> Listed:
    """Return names with their masses, each multiplied by a count."""
    return Listed(
        tuple(
            Message("job-part", mass=_mass(times * w.weighed_kg), name=part_name(w))
            for w in weighings
        ),
        joined="comma",
    )


def _mass(kg: float) -> Mass:
    return Mass(kg, plain(kg).places)
