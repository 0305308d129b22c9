"""One slab's lifts: what it weighs when, how and when it is turned, and how near it is to cracking.

With them the strip that is broken before it is moved.
"""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.checks.where import spot
from ledgerstone.message import (
    AreaLoad,
    Figure,
    Force,
    Gauge,
    Listed,
    Mass,
    Message,
    People,
    Ruled,
    Strength,
    Value,
    Weight,
)
from ledgerstone.papers.descriptions import Fact
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import SheetBlock, facts, plain
from ledgerstone.papers.lifting import to_5_mm
from ledgerstone.strength.grips import best_grips_mm
from ledgerstone.strength.slabs import concrete_of
from ledgerstone.strength.strip_test import SPAN_MM, WIDTH_MM, strip_test_of
from ledgerstone.strength.verdict import Verdict
from ledgerstone.wording import capital


def lift_facts(job: Job, i: int) -> SheetBlock:
    """Describe one slab's lifts."""
    handled, people = job.quote.strength[i].handled, job.quote.weights[i].people_to_lift
    mould, weight = "on" if handled.way.sides_on else "off", Weight(job.turned_kg(i))
    turned_by = Message(
        "job-turned-by",
        mass=Message("job-turned-mass", mould=mould, weight=weight),
        people=People(handled.way.people),
        over=handled.turned_over or "none",
    )
    cured = Message(
        "job-cured-by",
        weight=Weight(job.cured_kg(i)),
        people=People(people),
        gear="yes" if people > job.workshop.lifting.most_people else "no",
    )
    return facts(
        (Message("job-wet"), Weight(job.wet_kg(i))),
        (Message("job-turned"), turned_by),
        (Message("job-cured"), cured),
        (Message("job-how"), _how(job, i)),
        (Message("job-when"), Message("job-when-days", days=plain(handled.under_cover_days))),
        *_strength(job, i),
        (Message("job-grip"), _grips(job, i)),
        (Message("job-carry"), Message("job-carry-how", held=handled.way.held)),
    )


def _how(job: Job, i: int) -> Value:
    way = job.quote.strength[i].handled.way
    rail = "no"
    if way.rail:
        rail = "clamped" if job.in_mould[i][1].openings else "none-needed"
    sentences = [Message("job-how-way", way=capital(way.name), rail=rail)]
    sentences += [Message("job-sides-stay")] if way.sides_on else []
    return Listed(tuple(sentences), joined="sentences")


def _grips(job: Job, i: int) -> Message:
    _, shape = job.in_mould[i]
    x0, y0, _, _ = shape.outline.bounds
    grips, along_y = best_grips_mm(shape.outline)
    start, side = (y0, "front") if along_y else (x0, "left")
    first, second = (Ruled(to_5_mm(grip - start), coarse=True) for grip in grips)
    return Message("job-grip-at", first=first, last=second, side=side)


# --- strength -------------------------------------------------------------------------------


def _strength(job: Job, i: int) -> Iterator[Fact]:
    """State which case governs one slab, where, how far it is used, and at what it would crack."""
    governing = job.quote.strength[i].worst
    if governing is not None and not governing.tips:
        governs = Message(
            "job-governs-by",
            doing=_doing(governing),
            where=spot(job.slabs[i], job.quote.shapes[i], governing.where_mm),
            stress=Strength(governing.stress_mpa, 2, bare=True),
            limit=Strength(governing.limit_mpa, 2, bare=True),
            utilisation=Figure(governing.utilisation, 2),
        )
        yield Message("job-governs"), _and_cracks(job, i, governing, governs)
    test = strip_test_of(
        job.quote.strength[i].handled,
        concrete_of(job.workshop),
        job.slabs[i].thickness.mm,
        job.workshop.recipe.density_kg_per_m3,
    )
    if test is not None:
        yield (
            Message("job-strip"),
            Message(
                "job-strip-test",
                condition="yes" if test.is_condition else "no",
                width=Ruled(WIDTH_MM),
                thickness=Gauge(test.thickness_mm),
                span=Ruled(SPAN_MM),
                load=Force(test.load_n),
                mass=Mass(test.load_kg, 0),
            ),
        )


def _doing(verdict: Verdict) -> Message:
    doing = Message("job-doing", kind=verdict.case)
    load = _load(verdict, 1.0)
    return doing if load is None else Message("job-doing-load", doing=doing, load=load)


def _load(verdict: Verdict, times: float) -> Value | None:
    """Describe a case's load, so many times over; none if it is the slab's own weight."""
    if verdict.load_n:
        return Force(times * verdict.load_n)
    if verdict.load_n_per_m2:
        return AreaLoad(times * verdict.load_n_per_m2)
    return None


def _and_cracks(job: Job, i: int, verdict: Verdict, governs: Message) -> Message:
    """Describe the load at which it cracks in the mean."""
    mean = concrete_of(job.workshop).mean_bending_mpa(job.slabs[i].thickness.mm, verdict.age_days)
    times = verdict.cracks_at_times(mean)
    if times is None:
        return governs
    at = _load(verdict, times) or Message("job-times-weight", times=Figure(times, 1))
    return Message("job-governs-cracks", governs=governs, at=at)
