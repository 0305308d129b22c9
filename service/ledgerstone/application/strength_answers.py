"""One slab's strength as members of an answer: a sentence, and numbers for the maker."""

from __future__ import annotations

from shapely.geometry import Point

from ledgerstone.checks.finding import geojson
from ledgerstone.json_types import Members
from ledgerstone.message import AreaLoad, Force, Strength
from ledgerstone.order import Slab
from ledgerstone.strength.slabs import SlabStrength, concrete_of
from ledgerstone.strength.verdict import Verdict
from ledgerstone.wording import Message, Speech, percent_of
from ledgerstone.workshop.records import Workshop


def strength_members(
    strength: SlabStrength, slab: Slab, workshop: Workshop, speech: Speech, *, for_maker: bool
) -> Members:
    """Return the case nearest to its limit; empty if no case has a stress."""
    worst = strength.worst
    if worst is None:
        return {}
    used = Message(
        "strength-used", doing=worst.case, percent=percent_of(round(100 * worst.utilisation, 0))
    )
    return {
        "worst_case": worst.case,
        "utilisation": worst.utilisation,
        "where_mm": geojson(Point(worst.where_mm)),
        "says": speech.say(used),
        "governing": _governing(worst, slab, workshop, speech) if for_maker else None,
    }


def _governing(verdict: Verdict, slab: Slab, workshop: Workshop, speech: Speech) -> Members:
    """Return the governing case in numbers, with the mean cracking load."""
    mean = concrete_of(workshop).mean_bending_mpa(slab.thickness.mm, verdict.age_days)
    times = verdict.cracks_at_times(mean)
    members: Members = {
        "stress_mpa": verdict.stress_mpa,
        "limit_mpa": verdict.limit_mpa,
        "stress_says": speech.value(Strength(verdict.stress_mpa, 2)),
        "limit_says": speech.value(Strength(verdict.limit_mpa, 2)),
        "age_days": verdict.age_days,
    }
    loads = (("n", verdict.load_n, Force), ("n_per_m2", verdict.load_n_per_m2, AreaLoad))
    for unit, load, of in loads:
        if load:
            members[f"load_{unit}"] = load
            members[f"cracks_at_{unit}"] = None if times is None else times * load
        if load and times is not None:
            members.setdefault("cracks_at_says", speech.value(of(times * load)))
    if not verdict.load_n and not verdict.load_n_per_m2:
        members["cracks_at_own_weights"] = times
    return members
