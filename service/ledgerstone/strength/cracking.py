"""What a slab in place must carry once it has cracked, lengthwise and across."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from shapely.geometry.polygon import orient

from ledgerstone.arrays import FloatArray
from ledgerstone.outline import XY
from ledgerstone.strength._apart import first_apart
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength._tried import CaseBatch
from ledgerstone.strength.cracked import plain_limit_mpa
from ledgerstone.strength.governing import first_largest
from ledgerstone.strength.places import LoadPlace

AT_ONCE = 32  # people, each with several fields as long as the mesh
GAMMA_G, GAMMA_Q = 1.35, 1.5  # EN 1990 table A1.2(B)
HALF_WAY = 0.5 * (1.0 + GAMMA_G)  # between own weight once, where it relieves, and by its factor
NEAR, FAR = 0.4, 1.5  # of a person's square: from a corner, and from the worst place so far
MAY_NEED_BARS = 0.75  # share of what plain concrete is trusted with from which a demand is searched
CLOSEST_MM = 5.0  # a narrow strip is bent much more from its one edge than from its other
ALIKE_MPA = 1e-8  # stresses no farther apart are rounded before they are compared


@dataclass(frozen=True, slots=True)
class Demand:
    """The largest moment one way, as the stress of the whole section, MPa, and where."""

    mpa: float
    where_mm: XY


@dataclass(frozen=True, slots=True)
class Cracking:
    """What a slab must carry once cracked, as stresses of its whole section, MPa.

    Attributes
    ----------
    along, across
        Demands on bars that run from left to right, and from front to back.
    plain_mpa
        What plain concrete is trusted with.
    cracks_at_mpa
        Mean bending strength: a section carries as much until it cracks.
    """

    along: Demand
    across: Demand
    plain_mpa: float
    cracks_at_mpa: float


def cracking_of(
    placed: PlacedSlab, batches: Sequence[CaseBatch], in_use_days: float
) -> Cracking | None:
    """Find the demand on bars each way under 1.35 G + 1.5 Q, MPa; None if no person is tried.

    Source
    ------
    EN 1990 (6.10) and table A1.2(B). Bars one way carry ``|m| + |m_xy|`` (Wood and Armer, 1968).
    """
    tried = [demand for batch in batches for demand in _demands(placed, batch, batches[0])]
    if not tried:
        return None
    thickness, concrete = placed.slab.thickness.mm, placed.concrete
    plain_mpa = plain_limit_mpa(concrete, thickness)
    beside = apart_from(_beside_the_worst(placed, tried, plain_mpa), [d.place for d in tried])
    if beside:
        people = [placed.with_person(place, placed.hardest_case(place)) for place in beside]
        tried += _demands(placed, placed.settled(people), batches[0])
    return Cracking(
        max((demands.along for demands in tried), key=lambda demand: demand.mpa),
        max((demands.across for demands in tried), key=lambda demand: demand.mpa),
        plain_mpa,
        concrete.mean_bending_mpa(thickness, in_use_days),
    )


@dataclass(frozen=True, slots=True)
class _Demands:
    """What a person at a place demands each way."""

    place: LoadPlace
    along: Demand
    across: Demand


def _demands(placed: PlacedSlab, batch: CaseBatch, first: CaseBatch) -> list[_Demands]:
    """The demands of each person in a batch; ``first`` holds own weight alone."""
    people = {
        k: tried.place
        for k, tried in enumerate(batch.tried)
        if tried.place is not None and tried.low is None and not batch.found[k].tips
        if tried.place.kind != "free-corner"
    }
    each = [*people.items()]
    return [
        demands
        for start in range(0, len(each), AT_ONCE)
        for demands in _demands_of(placed, batch, first, each[start : start + AT_ONCE])
    ]


def _demands_of(
    placed: PlacedSlab, batch: CaseBatch, first: CaseBatch, people: Sequence[tuple[int, LoadPlace]]
) -> list[_Demands]:
    """The demands of some people, by their cases in the batch."""
    own = first.loose.components[:, :, :1]
    sitting = [
        placed.with_person(place, placed.sitting_case(place)).person_n for _, place in people
    ]
    tried = [batch.tried[k].person_n for k, _ in people]
    live = GAMMA_Q * np.array(sitting) / np.array(tried)
    stress = np.empty((3, own.shape[1], len(people)))
    for cases in dict.fromkeys(batch.solved(k)[0] for k, _ in people):
        mine = [n for n, (k, _) in enumerate(people) if batch.solved(k)[0] is cases]
        at = [batch.solved(people[n][0])[1] for n in mine]
        stress[:, :, mine] = cases.components[:, :, at]
    stress *= live
    stress += (HALF_WAY - live) * own
    np.abs(stress, out=stress)
    stress += (GAMMA_G - HALF_WAY) * np.abs(own)  # so far from half-way are both ends
    stress[:2] += stress[2]
    along, across = (_worst(placed, each) for each in stress[:2])
    return [_Demands(place, *ways) for (_, place), *ways in zip(people, along, across, strict=True)]


def _worst(placed: PlacedSlab, fields: FloatArray) -> list[Demand]:
    """The largest of each column of ``fields`` (n, k), MPa: the first node of equals."""
    at = first_largest(fields, ALIKE_MPA, 9)
    places = placed.plate.model.mesh.nodes[at].tolist()
    largest = fields[at, np.arange(len(at))].tolist()
    return [Demand(round(mpa, 6), (x, y)) for mpa, (x, y) in zip(largest, places, strict=True)]


def places_for_bars(placed: PlacedSlab) -> Iterator[LoadPlace]:
    """Places at the ends of the slab, near their corners and midway, and beside its openings.

    The search for the largest stress follows the stress of the whole section, which seldom
    governs one way only: a free end bends most across under a person near its corner.
    """
    step = placed.workshop.loads.point_side_mm
    x0, y0, x1, y1 = placed.seat_area.room.bounds
    at_ends = [
        (x, y) for x in (x0, x1) for y in (y0 + NEAR * step, 0.5 * (y0 + y1), y1 - NEAR * step)
    ]
    at_sides = [
        (x, y) for y in (y0, y1) for x in (x0 + NEAR * step, 0.5 * (x0 + x1), x1 - NEAR * step)
    ]
    beside = []
    for opening in placed.plate.outline.interiors:
        a, b, c, d = opening.bounds
        if max(c - a, d - b) > step:
            x, y, half = 0.5 * (a + c), 0.5 * (b + d), 0.5 * step
            beside += [(a - half, y), (c + half, y), (x, b - half), (x, d + half)]
    yield from _nearest(
        placed, [*at_ends, *at_sides, *beside, *_about_inward_corners(placed, step)]
    )


def _about_inward_corners(placed: PlacedSlab, side_mm: float) -> Iterator[XY]:
    """Places about each inward corner of an outline such as an L's, as far as its legs reach."""
    without_fillets = orient(placed.plate.outline).exterior.simplify(0.2 * side_mm)
    ring = np.array(without_fillets.coords)[:-1]
    before, after = ring - np.roll(ring, 1, axis=0), np.roll(ring, -1, axis=0) - ring
    turns = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    long = 2.0 * side_mm
    far = (np.hypot(*before.T) > long) & (np.hypot(*after.T) > long)
    for x, y in ring[(turns < 0.0) & far].tolist():
        for a, b in ((2.0, 0.5), (2.0, -0.5), (0.5, 2.0), (-0.5, 2.0)):
            yield x + a * side_mm, y + b * side_mm
            yield x - a * side_mm, y - b * side_mm


def _beside_the_worst(
    placed: PlacedSlab, tried: Sequence[_Demands], plain_mpa: float
) -> Iterator[LoadPlace]:
    """The places beside that of the largest demand each way, where it may need bars."""
    side = placed.workshop.loads.point_side_mm
    for way in ("along", "across"):
        worst = max(tried, key=lambda demands: float(getattr(demands, way).mpa))
        if getattr(worst, way).mpa >= MAY_NEED_BARS * plain_mpa:
            x, y = worst.place.xy
            for step in (NEAR * side, FAR * side):
                around = [(x - step, y), (x + step, y), (x, y - step), (x, y + step)]
                yield from _nearest(placed, around)


def _nearest(placed: PlacedSlab, wished: Sequence[XY]) -> Iterator[LoadPlace]:
    """The seats nearest to some places."""
    seats = placed.seats
    for x, y in wished if len(seats.xy) else ():
        away = np.hypot(seats.xy[:, 0] - x, seats.xy[:, 1] - y).round(3)
        yield seats.place(int(np.argmin(away)))


def apart_from(wished: Iterable[LoadPlace], before: Sequence[LoadPlace]) -> list[LoadPlace]:
    """Those of some places that lie apart from each other and from those tried before."""
    every = list(wished)
    apart = first_apart([place.xy for place in every], CLOSEST_MM, [place.xy for place in before])
    return [every[k] for k in apart]
