"""Every case that is tried on a slab in place, and what is said of each."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.strength import _search
from ledgerstone.strength._lying import Lying
from ledgerstone.strength._outline import FloatArray
from ledgerstone.strength._tried import Batch, Tried
from ledgerstone.strength.cracked import IN_USE_DAYS
from ledgerstone.strength.creep import creep_coefficient
from ledgerstone.strength.governing import Governing, worst_of
from ledgerstone.strength.places import Place
from ledgerstone.strength.plate import Cases
from ledgerstone.strength.verdict import Case, Verdict

MOST_LOW_RESTS = 4
NEAREST_TO_A_LOW_REST = 4
FOR_GOOD = 0.3  # psi_2 of a dwelling's load, EN 1990 table A1.1
# EN 1992-1-1 figure 3.1: 50 % inside, 80 % outside.
HUMIDITY_PERCENT: dict[str, float] = {"indoors": 50.0, "wet-room": 80.0, "outdoors": 80.0}


def every_batch(lying: Lying) -> tuple[Batch, ...]:
    """Every case that is tried, in the batches that were settled together; the first one first."""
    searched = _search.worst_seats(lying, lying.first)
    others = list(_search.others_at_the_worst(lying, searched))
    low = list(_low_rests(lying, searched))
    if not others and not low:
        return searched
    more = lying.settled([*others, *low])
    lower = _search.worse_seats_over_low_rests(lying, more)
    return (*searched, more, *([lying.settled(lower)] if lower else []))


def live_load_cases(lying: Lying, batches: Sequence[Batch]) -> Iterator[tuple[Cases, FloatArray]]:
    """Every case, loose and held, and the stress that is trusted in it, MPa.

    With a rest low, what is trusted has no bound: that is a caution to level it.
    """
    for batch in batches:
        limits = np.array(
            [lying.limit_mpa(t.case) if t.low is None else np.inf for t in batch.tried]
        )
        yield batch.loose, limits
        if batch.held is not None:
            yield batch.held, limits[list(batch.tipped)]


def verdicts(lying: Lying, batches: Sequence[Batch]) -> Iterator[Verdict]:
    """Judge every case."""
    of: dict[Case, list[tuple[Governing, Tried]]] = {}
    for batch in batches:
        for tried, one in zip(batch.tried, batch.found, strict=True):
            of.setdefault(tried.case, []).append((one, tried))
    faces = dict(zip(("bottom", "top"), batches[0].loose.faces, strict=True))
    for case, found in of.items():
        one = worst_of(governing for governing, _ in found)
        tried = next(tried for governing, tried in found if governing is one)
        own = 0.0 if one.tips else round(float(faces[one.face][one.node, 0]), 6)
        loads = lying.workshop.loads
        yield Verdict(
            case,
            one.mpa,
            lying.limit_mpa(case),
            one.where_mm,
            IN_USE_DAYS,
            one.tips,
            load_n=lying.newtons(case) if tried.place is not None else 0.0,
            load_n_per_m2=loads.even_n_per_m2 if lying.even in tried.loads else 0.0,
            own_mpa=own,
        )


def sag_of(lying: Lying, batches: Sequence[Batch]) -> tuple[float, float]:
    """Largest sag in the end, mm, and the span that it is of: twice the way to the nearest rest.

    Own weight creeps whole, the even load by what of it is there for good; a cantilever counts as
    half of its span.

    Source
    ------
    EN 1992-1-1 3.1.4; EN 1990 table A1.1, category A.
    """
    first = batches[0].loose.deflections_mm
    own, live = first[:, 0], first[:, 1] - first[:, 0]
    thickness, place = lying.slab.thickness.mm, lying.slab.place
    creep = creep_coefficient(
        lying.concrete.fcm_mpa, thickness, HUMIDITY_PERCENT[place], IN_USE_DAYS
    )
    field = own * (1.0 + creep) + live * (1.0 + FOR_GOOD * creep)
    at = int(np.argmax(np.round(field, 9)))
    where = Point(*lying.plate.model.mesh.nodes[at].tolist())
    span = 2.0 * plane.union(lying.footprints).distance(where)
    return round(float(field[at]), 6), round(span, 3)


def _low_rests(lying: Lying, searched: Sequence[Batch]) -> Iterator[Tried]:
    """Inner rests that lie low, one at a time: evenly loaded, and sat upon near by.

    Of many, the ones that carry along the longest lines are tried.
    """
    groups = {b.group: 0.0 for b in lying.carrying if b.group is not None}
    for bearing in lying.carrying:
        if bearing.group is not None:
            groups[bearing.group] += bearing.footprint.length
    low = sorted(groups, key=lambda group: (-round(groups[group], 3), group))
    if not low:
        return
    tipped = {one.tried[k].place for one in searched for k in one.tipped}
    stays = [p for p in lying.places if p.kind == "anywhere" and p not in tipped]
    for group in low[:MOST_LOW_RESTS]:
        footprints = [b.footprint for b in lying.carrying if b.group == group]
        yield Tried("low-rest", (lying.weight, lying.even), group)
        for place in _nearest(stays, plane.union(footprints)):
            yield lying.over_a_low_rest(place, group)


def _nearest(stays: Sequence[Place], over: BaseGeometry) -> list[Place]:
    """The places nearest to a rest, its middle first, of those where the slab stays down."""
    hull, middle = over.convex_hull, over.centroid
    away = [
        (round(hull.distance(Point(p.xy)), 1), round(middle.distance(Point(p.xy)), 1))
        for p in stays
    ]
    order = sorted(range(len(stays)), key=away.__getitem__)
    return [stays[k] for k in order[:NEAREST_TO_A_LOW_REST]]
