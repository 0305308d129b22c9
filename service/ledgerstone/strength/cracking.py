"""What a slab in place must carry once it has cracked, lengthwise and across."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from operator import attrgetter

import numpy as np
from scipy.spatial.distance import cdist
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
ALONG = 5.0  # of it: between places along an edge, at most
FEWEST_ALONG = 3  # both corners and the middle
SEARCHED_FROM = 0.65  # of what plain concrete is trusted with: a smaller demand needs no bars
NEXT = 0.95  # of the largest demand: from which the next largest one elsewhere is looked beside
SLANTING = 0.75  # of a step along, for one across: finds an opening's corner, or a round one's side
FILLETS = 0.2  # of a person's square: what is simplified to find an outline's corners
CLOSEST_MM = 8.0  # a narrow strip is bent much more from its one edge than from its other
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
    found: dict[int, _Demands] = {}
    for is_held in (False, True):
        mine = [(k, place) for k, place in people.items() if (k in batch.tipped) == is_held]
        for start in range(0, len(mine), AT_ONCE):
            found |= _demands_of(placed, batch, first, mine[start : start + AT_ONCE])
    return [found[k] for k in people]


def _demands_of(
    placed: PlacedSlab, batch: CaseBatch, first: CaseBatch, people: Sequence[tuple[int, LoadPlace]]
) -> dict[int, _Demands]:
    """The demands of some people, by their cases in the batch: all of them loose, or all held."""
    own = first.loose.components[:, :, :1]
    sitting = [placed.borne_n(place, placed.sitting_case(place)) for _, place in people]
    tried = [batch.tried[k].person_n for k, _ in people]
    live = GAMMA_Q * np.array(sitting) / np.array(tried)
    cases = batch.solved(people[0][0])[0]
    stress = cases.components[:, :, [batch.solved(k)[1] for k, _ in people]]
    stress *= live
    stress += (HALF_WAY - live) * own
    np.abs(stress, out=stress)
    stress += (GAMMA_G - HALF_WAY) * np.abs(own)  # so far from half-way are both ends
    stress[:2] += stress[2]
    along, across = (_worst(placed, each) for each in stress[:2])
    return {k: _Demands(at, *ways) for (k, at), *ways in zip(people, along, across, strict=True)}


def _worst(placed: PlacedSlab, fields: FloatArray) -> list[Demand]:
    """The largest of each column of ``fields`` (n, k), MPa: the first node of equals."""
    at = first_largest(fields, ALIKE_MPA, 9)
    places = placed.plate.model.mesh.nodes[at].tolist()
    largest = fields[at, np.arange(len(at))].tolist()
    return [Demand(round(mpa, 6), (x, y)) for mpa, (x, y) in zip(largest, places, strict=True)]


def places_for_bars(placed: PlacedSlab) -> Iterator[LoadPlace]:
    """Places along the ends and sides of the slab, near its corners too, and beside its openings.

    The search for the largest stress follows the stress of the whole section, which seldom
    governs one way only: a free end bends most across under a person near its corner.
    """
    side = placed.workshop.loads.point_side_mm
    x0, y0, x1, y1 = placed.seat_area.room.bounds
    at_ends = [(x, y) for x in (x0, x1) for y in _along(y0, y1, side)]
    at_sides = [(x, y) for y in (y0, y1) for x in _along(x0, x1, side)]
    beside = _beside_openings(placed, side, (y0, y1))
    yield from _nearest(
        placed, [*at_ends, *at_sides, *beside, *_about_inward_corners(placed, side)]
    )


def _along(low: float, high: float, side_mm: float) -> Sequence[float]:
    """Places from near one corner to near the other: each unit under an edge has a worst one."""
    many = max(FEWEST_ALONG, math.ceil((high - low) / (ALONG * side_mm)) + 1)
    places: list[float] = np.linspace(low + NEAR * side_mm, high - NEAR * side_mm, many).tolist()
    return places


def _beside_openings(
    placed: PlacedSlab, side_mm: float, edges: tuple[float, float]
) -> Iterator[XY]:
    """Places before and behind each opening as long as a person's square, and beside it.

    The strip there is bent most over the opening's corners, or off the middle of a round one's
    sides; a wide one at the slab's edge. ``edges`` are where a person sits at that, mm.
    """
    half = 0.5 * side_mm
    for opening in placed.plate.outline.interiors:
        ring = np.array(opening.coords)
        low, high = ring.min(axis=0), ring.max(axis=0)
        if max(high - low) > side_mm:
            yield from ((0.5 * float(low[0] + high[0]), edge) for edge in edges)
            for along, off in itertools.product((-SLANTING, SLANTING), (-1.0, 1.0)):
                x, y = ring[np.argmax(ring @ (along, off))].tolist()
                yield x, y + off * half
                x, y = ring[np.argmax(ring @ (off, along))].tolist()
                yield x + off * half, y


def _about_inward_corners(placed: PlacedSlab, side_mm: float) -> Iterator[XY]:
    """Places about each inward corner of an outline such as an L's, as far as its legs reach."""
    without_fillets = orient(placed.plate.outline).exterior.simplify(FILLETS * side_mm)
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
    """The places beside those of the largest demands each way, where it may need bars.

    Beside the next largest one elsewhere only the near ones: it may be the larger one there.
    """
    side = placed.workshop.loads.point_side_mm
    for way in ("along", "across"):
        demand = attrgetter(way)
        worst = max(tried, key=lambda demands: float(demand(demands).mpa))
        if demand(worst).mpa < SEARCHED_FROM * plain_mpa:
            continue
        yield from _around(placed, worst.place, (NEAR * side, FAR * side))
        elsewhere = [
            demands
            for demands in tried
            if demand(demands).mpa >= NEXT * demand(worst).mpa
            if math.dist(demand(demands).where_mm, demand(worst).where_mm) > side
        ]
        if elsewhere:
            following = max(elsewhere, key=lambda demands: float(demand(demands).mpa))
            yield from _around(placed, following.place, (NEAR * side,))


def _around(placed: PlacedSlab, place: LoadPlace, steps_mm: Sequence[float]) -> Iterator[LoadPlace]:
    """The places to the left and right of one, before it and behind it."""
    x, y = place.xy
    for step in steps_mm:
        yield from _nearest(placed, [(x - step, y), (x + step, y), (x, y - step), (x, y + step)])


def _nearest(placed: PlacedSlab, wished: Sequence[XY]) -> Iterator[LoadPlace]:
    """The seats nearest to some places, off the corners that are leant on: those demand no bars."""
    sat_on = np.flatnonzero(~placed.seats.at_a_corner)
    if len(sat_on) and wished:
        away = cdist(wished, placed.seats.xy[sat_on]).round(3)
        yield from (placed.seats.place(int(k)) for k in sat_on[away.argmin(axis=1)])


def apart_from(wished: Iterable[LoadPlace], before: Sequence[LoadPlace]) -> list[LoadPlace]:
    """Those of some places that lie apart from each other and from those tried before."""
    every = list(wished)
    apart = first_apart([place.xy for place in every], CLOSEST_MM, [place.xy for place in before])
    return [every[k] for k in apart]
