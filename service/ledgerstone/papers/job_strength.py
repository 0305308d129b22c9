"""How near a slab comes to cracking, and the strip that is broken before it is moved."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.checks.where import spot
from ledgerstone.papers.job import Job
from ledgerstone.strength.slabs import concrete_of
from ledgerstone.strength.strip_test import SPAN_MM, WIDTH_MM, strip_test_of
from ledgerstone.strength.verdict import Verdict
from ledgerstone.wording import english

_DOING: dict[str, str] = {
    "lifted-out": "lifted out of its mould",
    "turned": "turned up on edge",
    "on-edge": "held on edge",
    "carried": "carried",
    "on-bearers": "lying on its pallet",
    "own-weight": "its own weight",
    "even-load": "an even load",
    "low-rest": "an even load, one rest low",
    "somebody-sitting": "a person sitting",
    "somebody-standing": "a person standing",
    "somebody-leaning": "a person leaning",
    "free-corner": "a person on a free corner",
    "low-rest-and-sitting": "a person sitting, one rest low",
}


def strength_facts(job: Job, i: int) -> Iterator[tuple[str, str]]:
    """Say which case governs one slab, where, how far it is used, and at what it would crack."""
    governing = job.quote.strength[i].worst
    if governing is not None and not governing.tips:
        where = english(spot(job.slabs[i], job.quote.shapes[i], governing.where_mm))
        used = (
            f"{governing.stress_mpa:.2f} of {governing.limit_mpa:.2f} MPa"
            f" ({governing.utilisation:.2f}){_cracks(job, i, governing)}"
        )
        yield "Governs", f"{_doing(governing)}, {where} as it lies in place: {used}"
    test = strip_test_of(
        job.quote.strength[i].handled,
        concrete_of(job.workshop),
        job.slabs[i].thickness.mm,
        job.workshop.recipe.density_kg_per_m3,
    )
    if test is not None:
        first = "Not moved before it passes: " if test.is_condition else ""
        strip = (
            f"{WIDTH_MM:.0f} × {test.thickness_mm:g} mm, cast with the slab and kept beside it,"
            f" over {SPAN_MM:.0f} mm, carries {test.load_n:.0f} N ({test.load_kg:.0f} kg) in its"
            " middle. Carried ________ kg on ________"
        )
        yield "Strip test", f"{first}{strip}"


def _doing(verdict: Verdict) -> str:
    load = f" ({verdict.load_n:.0f} N)" if verdict.load_n else ""
    if verdict.load_n_per_m2:
        load = f" ({verdict.load_n_per_m2:.0f} N/m²)"
    doing = _DOING[verdict.case]
    return f"{doing[0].upper()}{doing[1:]}{load}"


def _cracks(job: Job, i: int, verdict: Verdict) -> str:
    """Say the load at which it cracks in the mean."""
    mean = concrete_of(job.workshop).mean_bending_mpa(job.slabs[i].thickness.mm, verdict.age_days)
    times = verdict.cracks_at_times(mean)
    if times is None:
        return ""
    if verdict.load_n:
        return f"; cracks, in the mean, at {times * verdict.load_n:.0f} N"
    if verdict.load_n_per_m2:
        return f"; cracks, in the mean, at {times * verdict.load_n_per_m2:.0f} N/m²"
    return f"; cracks, in the mean, at {times:.1f} times its weight"
