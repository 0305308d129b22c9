"""Every case that is solved for a slab in place, and its verdict."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

import numpy as np
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.arrays import FloatArray
from ledgerstone.outline import XY
from ledgerstone.strength import _search
from ledgerstone.strength._apart import first_apart
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength._tried import CaseBatch, TriedCase
from ledgerstone.strength.cracked import IN_USE_DAYS
from ledgerstone.strength.cracking import apart_from, places_for_bars
from ledgerstone.strength.creep import creep_coefficient
from ledgerstone.strength.governing import Governing, worst_of
from ledgerstone.strength.places import LoadPlace
from ledgerstone.strength.plate import Cases
from ledgerstone.strength.verdict import Case, Verdict

MAX_LOW_RESTS = 4  # groups of inner rests tried low, which bounds the work: our own choice
NEAREST_APART_MM = 100.0  # between places over a low rest: many of those searched lie together
HARDEST_WITH_A_LOW_REST = 8  # places tried again with each rest low, which bounds the work
WORST_WITH_A_LOW_REST = 2  # places of the worst stress tried again, which bounds the work
BESIDE_MM = (15.0, 50.0)  # how far from the worst places with a rest low others are tried
MAX_BESIDE = 6  # nearest places tried beside one, which bounds the work
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
    bars = list(_for_bars(placed, searched))
    if not others and not low and not bars:
        return searched
    batch = placed.settled([*others, *low, *bars])
    beside = _beside_the_worst(placed, batch)
    return (*searched, batch, placed.settled(beside)) if beside else (*searched, batch)


def _for_bars(placed: PlacedSlab, searched: Sequence[CaseBatch]) -> Iterator[TriedCase]:
    """A person where the search for the largest stress seldom goes, and bars may be needed."""
    tried = [case.place for batch in searched for case in batch.tried if case.place is not None]
    for place in apart_from(places_for_bars(placed), tried):
        yield placed.with_person(place, placed.hardest_case(place))


def live_load_cases(
    placed: PlacedSlab, batches: Sequence[CaseBatch]
) -> Iterator[tuple[Cases, FloatArray]]:
    """Every batch of cases, loose and held, and the stress trusted in each, MPa, shape (k,).

    With a rest low it is infinite: such a case is a caution to level the rest, and stops nothing.

    Source
    ------
    As ``PlacedSlab.limit_mpa``; a low rest as methods §1.3.
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
    steady = _steady_seats(placed)
    stays = _hardest_first(placed, searched, steady)
    hardest = _apart(stays, APART_MM)[:HARDEST_WITH_A_LOW_REST]
    near = _Places([*stays, *steady])
    for group in low[:MAX_LOW_RESTS]:
        footprints = [b.footprint for b in placed.carrying if b.group == group]
        yield TriedCase("low-rest", (placed.weight, placed.even), group)
        over = _stays(placed, _over(near, plane.union(footprints)))
        for place in dict.fromkeys([*over, *hardest]):
            yield placed.over_a_low_rest(place, group)


def _beside_the_worst(placed: PlacedSlab, batch: CaseBatch) -> list[TriedCase]:
    """Somebody sitting beside the worst places with a rest low, where the slab stays down."""
    sat = sorted(
        (-round(stress.mpa, 6), k)
        for k, (tried, stress) in enumerate(zip(batch.tried, batch.found, strict=True))
        if tried.case == "low-rest-and-sitting"
    )
    low_at = {tried.place: tried.low for _, k in reversed(sat) for tried in [batch.tried[k]]}
    places = [batch.tried[k].place for _, k in sat]
    worst = _apart((p for p in places if p is not None), APART_MM)[:WORST_WITH_A_LOW_REST]
    beside = {seat: low_at[place] for place in worst for seat in _seats_beside(placed, place.xy)}
    stays = _stays(placed, list(beside))
    return [
        placed.over_a_low_rest(seat, low)
        for seat, low in beside.items()
        if seat in stays and low is not None
    ]


def _seats_beside(placed: PlacedSlab, at: XY) -> Iterator[LoadPlace]:
    """The seats nearest to a place, but not at it."""
    seats, (least, most) = placed.seats, BESIDE_MM
    away = np.hypot(*(seats.xy - at).T).round(3)
    near = np.flatnonzero((away > least) & (away < most) & ~seats.at_a_corner)
    for k in near[np.argsort(away[near], kind="stable")][:MAX_BESIDE].tolist():
        yield seats.place(k)


class _Places:
    """Some places, of which the nearest to a point is asked."""

    def __init__(self, places: Sequence[LoadPlace]) -> None:
        self._places = places
        self._xy = np.array([place.xy for place in places]).reshape(-1, 2)

    def nearest(self, at: XY) -> Iterator[LoadPlace]:
        """The first of the nearest, if there is any."""
        if self._places:
            yield self._places[int(np.argmin(np.hypot(*(self._xy - at).T).round(1)))]


def _hardest_first(
    placed: PlacedSlab, searched: Sequence[CaseBatch], steady: Sequence[LoadPlace]
) -> list[LoadPlace]:
    """Places where the slab stays down with somebody sitting, the worst in other cases first.

    Instead of a place where it tips comes the nearest seat where it is ``steady``: there few rests
    carry it. A narrow strip or a free corner is none of them: nobody sits there.
    """
    used = {
        tried.place: -round(batch.found[k].mpa / placed.limit_mpa(tried.case), 6)
        for batch in searched
        for k, tried in enumerate(batch.tried)
        if tried.place is not None and tried.place.kind == "anywhere"
    }
    places = sorted(used, key=used.__getitem__)
    stays, seats = _stays(placed, places), _Places(steady)
    instead = [[place] if place in stays else seats.nearest(place.xy) for place in places]
    found = list(dict.fromkeys(place for some in instead for place in some))
    stays |= _stays(placed, [place for place in found if place not in stays])
    return [place for place in found if place in stays]


def _stays(placed: PlacedSlab, places: Sequence[LoadPlace]) -> dict[LoadPlace, None]:
    """Those of some places, in order, where the slab stays down with somebody sitting."""
    tips = placed.rested.tips([placed.with_person(p, "somebody-sitting").loads for p in places])
    return {place: None for place, tip in zip(places, tips, strict=True) if tip is None}


def _steady_seats(placed: PlacedSlab) -> list[LoadPlace]:
    """Seats where the slab stays down with somebody sitting, as the hull of its rests has it."""
    seats = placed.seats
    off = placed.tips_off(seats.xy, np.full(len(seats), placed.workshop.loads.point_n))
    return [seats.place(k) for k in np.flatnonzero(~off & ~seats.at_a_corner).tolist()]


def _apart(places: Iterable[LoadPlace], apart_mm: float) -> list[LoadPlace]:
    """Those of some places, the first ones first, that lie apart from each other."""
    every = list(places)
    return [every[k] for k in first_apart([place.xy for place in every], apart_mm)]


def _over(near: _Places, rest: BaseGeometry) -> list[LoadPlace]:
    """The places nearest to a rest's middle and to the middles of its sides, apart from each other.

    Over the middles of a unit's rails the slab is not bent most while the unit is level, so the
    search need not have gone there.
    """
    x0, y0, x1, y1 = rest.bounds
    x, y = 0.5 * (x0 + x1), 0.5 * (y0 + y1)
    middles = ((x, y), (x, y0), (x, y1), (x0, y), (x1, y))
    return _apart((place for at in middles for place in near.nearest(at)), NEAREST_APART_MM)
