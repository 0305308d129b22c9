"""Every case that is solved for a slab in place, and its verdict."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import numpy as np
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.arrays import FloatArray
from ledgerstone.strength import _search
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength._tried import CaseBatch, TriedCase
from ledgerstone.strength.cracked import IN_USE_DAYS
from ledgerstone.strength.creep import creep_coefficient
from ledgerstone.strength.governing import Governing, worst_of
from ledgerstone.strength.places import LoadPlace
from ledgerstone.strength.plate import Cases
from ledgerstone.strength.verdict import Case, Verdict

MAX_LOW_RESTS = 4
NEAREST_TO_A_LOW_REST = 4
HARDEST_WITH_A_LOW_REST = 8
APART_MM = 180.0  # between the hardest places
PSI_2 = 0.3  # quasi-permanent share of a dwelling's load, EN 1990 table A1.1
# EN 1992-1-1 figure 3.1: 50 % inside, 80 % outside.
HUMIDITY_PERCENT: dict[str, float] = {"indoors": 50.0, "wet-room": 80.0, "outdoors": 80.0}


def every_batch(placed: PlacedSlab) -> tuple[CaseBatch, ...]:
    """Every case, in the batches that were solved together; the first one first."""
    return with_the_rest(placed, _search.worst_seats(placed, placed.first))


def with_the_rest(placed: PlacedSlab, searched: tuple[CaseBatch, ...]) -> tuple[CaseBatch, ...]:
    """The batches searched for the worst place, and those of all other cases."""
    others = list(_search.others_at_the_worst(placed, searched))
    low = list(_low_rests(placed, searched))
    if not others and not low:
        return searched
    return (*searched, placed.settled([*others, *low]))


def live_load_cases(
    placed: PlacedSlab, batches: Sequence[CaseBatch]
) -> Iterator[tuple[Cases, FloatArray]]:
    """Every batch of cases, loose and held, and the stress trusted in each, MPa, shape (k,).

    With a rest low it is infinite: such a case is a caution to level the rest, and stops nothing.
    """
    for batch in batches:
        limits = np.array(
            [placed.limit_mpa(t.case) if t.low is None else np.inf for t in batch.tried]
        )
        yield batch.loose, limits
        if batch.held is not None:
            yield batch.held, limits[list(batch.tipped)]


def verdicts(placed: PlacedSlab, batches: Sequence[CaseBatch]) -> Iterator[Verdict]:
    """Judge every case."""
    of: dict[Case, list[tuple[Governing, TriedCase]]] = {}
    for batch in batches:
        for tried, stress in zip(batch.tried, batch.found, strict=True):
            of.setdefault(tried.case, []).append((stress, tried))
    faces = dict(zip(("bottom", "top"), batches[0].loose.faces, strict=True))
    for case, found in of.items():
        worst = worst_of(governing for governing, _ in found)
        tried = next(tried for governing, tried in found if governing is worst)
        own = 0.0 if worst.tips else round(float(faces[worst.face][worst.node, 0]), 6)
        loads = placed.workshop.loads
        yield Verdict(
            case,
            worst.mpa,
            placed.limit_mpa(case),
            worst.where_mm,
            IN_USE_DAYS,
            worst.tips,
            load_n=tried.person_n,
            load_n_per_m2=loads.even_n_per_m2 if placed.even in tried.loads else 0.0,
            own_mpa=own,
        )


def sag_of(placed: PlacedSlab, batches: Sequence[CaseBatch]) -> tuple[float, float]:
    """Largest final sag, mm, and its span, mm: twice the distance to the nearest rest.

    Own weight creeps in full, the even load by its quasi-permanent share; a cantilever counts as
    half of its span.

    Source
    ------
    EN 1992-1-1 3.1.4; EN 1990 table A1.1, category A.
    """
    first = batches[0].loose.deflections_mm
    own, live = first[:, 0], first[:, 1] - first[:, 0]
    thickness, place = placed.slab.thickness.mm, placed.slab.place
    creep = creep_coefficient(
        placed.concrete.fcm_mpa, thickness, HUMIDITY_PERCENT[place], IN_USE_DAYS
    )
    field = own * (1.0 + creep) + live * (1.0 + PSI_2 * creep)
    at = int(np.argmax(np.round(field, 9)))
    where = Point(*placed.plate.model.mesh.nodes[at].tolist())
    span = 2.0 * plane.union(placed.footprints).distance(where)
    return round(float(field[at]), 6), round(span, 3)


def _low_rests(placed: PlacedSlab, searched: Sequence[CaseBatch]) -> Iterator[TriedCase]:
    """Inner rests that lie low, one at a time: evenly loaded, and with a person sitting nearby.

    Of many, the ones that carry along the longest lines are tried.
    """
    groups = {b.group: 0.0 for b in placed.carrying if b.group is not None}
    for bearing in placed.carrying:
        if bearing.group is not None:
            groups[bearing.group] += bearing.footprint.length
    low = sorted(groups, key=lambda group: (-round(groups[group], 3), group))
    if not low:
        return
    stays = _hardest_first(placed, searched)
    hardest = _apart(stays)
    for group in low[:MAX_LOW_RESTS]:
        footprints = [b.footprint for b in placed.carrying if b.group == group]
        yield TriedCase("low-rest", (placed.weight, placed.even), group)
        for place in dict.fromkeys([*_nearest(stays, plane.union(footprints)), *hardest]):
            yield placed.over_a_low_rest(place, group)


def _hardest_first(placed: PlacedSlab, searched: Sequence[CaseBatch]) -> list[LoadPlace]:
    """The places where the slab stays down with somebody sitting, the worst in other cases first.

    A narrow strip or a free corner is none of them: nobody sits there.
    """
    used = {
        tried.place: -round(batch.found[k].mpa / placed.limit_mpa(tried.case), 6)
        for batch in searched
        for k, tried in enumerate(batch.tried)
        if tried.place is not None and tried.place.kind == "anywhere"
    }
    places = sorted(used, key=used.__getitem__)
    tips = placed.rested.tips([placed.with_person(p, "somebody-sitting").loads for p in places])
    return [place for place, tip in zip(places, tips, strict=True) if tip is None]


def _apart(places: Sequence[LoadPlace]) -> list[LoadPlace]:
    """The first of some places that lie apart from each other."""
    kept: list[LoadPlace] = []
    for place in places:
        if all(math.dist(place.xy, other.xy) >= APART_MM for other in kept):
            kept.append(place)
        if len(kept) == HARDEST_WITH_A_LOW_REST:
            break
    return kept


def _nearest(stays: Sequence[LoadPlace], over: BaseGeometry) -> list[LoadPlace]:
    """The places nearest to a rest, its middle first, of those where the slab stays down."""
    hull, middle = over.convex_hull, over.centroid
    away = [
        (round(hull.distance(Point(p.xy)), 1), round(middle.distance(Point(p.xy)), 1))
        for p in stays
    ]
    order = sorted(range(len(stays)), key=away.__getitem__)
    return [stays[k] for k in order[:NEAREST_TO_A_LOW_REST]]
