"""The worst place for a person on a slab: a coarse grid, then a search by influence surfaces.

A few places all over the slab are solved first. The influence surface of each governing stress
gives its value for a person at any other place while the same rests touch. The worst place for each
stress, and the neighbours of the worst places so far, are solved next; then a finer grid about the
worst two.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from ledgerstone.arrays import BoolArray, FloatArray
from ledgerstone.strength._apart import first_apart
from ledgerstone.strength._influence import Influence, Peak, squares_at
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength._tried import CaseBatch, TriedCase
from ledgerstone.strength.governing import Governing
from ledgerstone.strength.places import SEAT_STEP_MM, LoadPlace, of_their_kinds
from ledgerstone.strength.plate import Cases

# How far the search goes: common practice, no source. What holds the figures is a law: with them a
# dense grid finds at most 1.03 of what is found here (tests/laws/test_seat_laws.py; on 110 random
# slabs 1.018). Each further place costs a solution of the contact problem.
MAX_PEAKS = 8  # governing stresses whose influence is computed
REMOTE_MM = 120.0  # a stress further than this from the person is remote, and grows as they move
REMOTE_SHARE = 0.7  # of the peaks: at most so many are remote ones, which come first
APART_MM = 60.0  # peaks nearer than this to each other are one
SOLVED_FROM = 0.9  # an estimate is solved if it reaches this share of the worst utilisation so far
MAX_NEAR = 10  # worst places so far whose neighbours are solved after the first round
NEAR_AT_THE_END = 3  # and after the second one
MAX_BESIDE = 5  # neighbours solved of each
MAX_BETWEEN = 3  # worst places at the end, about which a grid of half the step is solved
NEXT_TO, HALF_WAY_TO = 1.2, 1.5  # steps: a grid's neighbours, and those over a corner too
CLOSEST_MM = 15.0  # a place nearer than this to a solved one is skipped
MAX_OTHERS = 5  # worst places of each kind at which a person's other cases are solved


@dataclass(frozen=True, slots=True)
class _Solved:
    """One person's case that was settled, and how far it uses the slab."""

    tried: TriedCase
    batch: CaseBatch
    index: int
    used: float

    @property
    def found(self) -> Governing:
        """The stress that governs."""
        return self.batch.found[self.index]

    @property
    def away_mm(self) -> float:
        """How far the stress is from the person."""
        place = self.tried.place
        return 0.0 if place is None else math.dist(place.xy, self.found.where_mm)

    @property
    def is_held(self) -> bool:
        """Whether it was settled on rests that hold on."""
        return self.index in self.batch.tipped

    @property
    def cases(self) -> Cases:
        """The solution that it comes from."""
        return self.batch.solved(self.index)[0]

    @property
    def peak(self) -> Peak:
        """The stress that governs, as a peak of that solution."""
        return Peak(self.batch.solved(self.index)[1], self.found.node, self.found.face)


def worst_seats(placed: PlacedSlab, first: CaseBatch) -> tuple[CaseBatch, ...]:
    """Settle the cases among which the worst place for a person is; ``first`` is one of them."""
    batches = [first]
    seats = _Seats(placed)
    for wished in (seats.wished, seats.about_the_worst):
        solved = _solved(placed, batches)
        new = seats.new(wished(solved), [solution.tried.place for solution in solved])
        if new:
            people = [placed.with_person(p, placed.hardest_case(p)) for p in new]
            batches.append(placed.settled(people))
    return tuple(batches)


def others_at_the_worst(placed: PlacedSlab, batches: Sequence[CaseBatch]) -> Iterator[TriedCase]:
    """At the worst places, the other cases of a person there."""
    solved = _solved(placed, batches)
    for place in _worst_places(solved, "anywhere"):
        done = placed.hardest_case(place)
        for case in ("somebody-sitting", "somebody-standing"):
            if done in ("somebody-sitting", "somebody-standing") and case != done:
                yield placed.with_person(place, case)
    for place in _worst_places(solved, "free-corner"):
        yield placed.with_person(place, "free-corner")


def _worst_places(solved: Sequence[_Solved], kind: str) -> list[LoadPlace]:
    places = [s.tried.place for s in solved if s.tried.place and s.tried.place.kind == kind]
    return places[:MAX_OTHERS]


def _solved(placed: PlacedSlab, batches: Sequence[CaseBatch]) -> list[_Solved]:
    """Every person's case so far, the worst first."""
    every = [
        _Solved(tried, batch, k, batch.found[k].mpa / placed.limit_mpa(tried.case))
        for batch in batches
        for k, tried in enumerate(batch.tried)
        if tried.place is not None and not batch.found[k].tips
    ]
    return sorted(every, key=lambda solution: -round(solution.used, 6))


def _columns(picked: Sequence[_Solved]) -> tuple[FloatArray, BoolArray]:
    """Stresses as columns of the unknowns (3 n, k), and the stations that touch in each (s, k)."""
    parts = [
        [k for k, pick in enumerate(picked) if pick.cases is cases]
        for cases in dict.fromkeys(pick.cases for pick in picked)
    ]
    columns = [picked[at[0]].cases.stress_columns([picked[k].peak for k in at]) for at in parts]
    touching = [picked[at[0]].cases.touching([picked[k].peak for k in at]) for at in parts]
    order = np.argsort(np.concatenate(parts))
    return np.column_stack(columns)[:, order], np.column_stack(touching)[:, order]


class _Seats:
    """Every place where a person may be, with the load there over what is trusted."""

    def __init__(self, placed: PlacedSlab) -> None:
        self._placed = placed
        self._places = placed.seats
        self._xy, at_a_corner = self._places.xy, self._places.at_a_corner
        corner, anywhere = (
            placed.hardest_case(LoadPlace((0.0, 0.0), kind)) for kind in ("free-corner", "anywhere")
        )
        self._newtons = np.where(at_a_corner, placed.newtons(corner), placed.newtons(anywhere))
        self._limit = np.where(at_a_corner, placed.limit_mpa(corner), placed.limit_mpa(anywhere))
        side_mm = placed.workshop.loads.point_side_mm
        self._squares = squares_at(placed.plate.model, self._xy, side_mm)
        self._tips = placed.tips_off(self._xy, self._newtons)

    def wished(self, solved: Sequence[_Solved]) -> Iterator[LoadPlace]:
        """The places to solve next: by influence, and beside the worst so far."""
        yield from self._by_influence(solved)
        yield from self._beside(solved)

    def _by_influence(self, solved: Sequence[_Solved]) -> Iterator[LoadPlace]:
        """For each governing stress, the places that would make the most of it."""
        picked = self._peaks(solved)
        if not picked:
            return
        placed, threshold = self._placed, SOLVED_FROM * solved[0].used
        picked = sorted(picked, key=lambda pick: pick.is_held)
        columns, touching = _columns(picked)
        loose = [k for k, pick in enumerate(picked) if not pick.is_held]
        if loose:
            touching = touching[:, loose]
            found = placed.rested.influence(columns[:, loose], touching, placed.weight)
            yield from self._worst(self._used(found), ~self._tips, threshold)
        if self._tips.any():
            every = np.ones((len(placed.held.footing.stations.owner), len(picked)), dtype=bool)
            found = placed.held.influence(columns, every, placed.weight)
            yield from self._worst(self._used(found), self._tips, threshold)

    def _peaks(self, solved: Sequence[_Solved]) -> list[_Solved]:
        """The worst of the governing stresses that lie apart.

        Those away from the person come first: one under a person hardly grows as the person moves.
        """
        picked: list[_Solved] = []
        remote = [solution for solution in solved if solution.away_mm > REMOTE_MM]
        for share, some in ((REMOTE_SHARE, remote), (1.0, solved)):
            for solution in some:
                if len(picked) >= share * MAX_PEAKS:
                    break
                if self._is_new(solution, picked):
                    picked.append(solution)
        return picked

    @staticmethod
    def _is_new(solved: _Solved, picked: Sequence[_Solved]) -> bool:
        near = (other.found for other in picked if other.found.face == solved.found.face)
        return all(math.dist(solved.found.where_mm, other.where_mm) >= APART_MM for other in near)

    def _used(self, influence: Influence) -> FloatArray:
        """How far each place would use each stress, shape (p, k)."""
        by = influence.of_squares(self._squares)
        stress = influence.own_mpa + self._newtons[:, None] * by
        return np.asarray(np.round(stress / self._limit[:, None], 6))

    def _worst(self, used: FloatArray, among: BoolArray, threshold: float) -> Iterator[LoadPlace]:
        used = np.where(among[:, None], used, -np.inf)
        for k, best in enumerate(used.argmax(axis=0).tolist()):
            if used[best, k] >= threshold:
                yield self._places.place(best)

    def _beside(self, solved: Sequence[_Solved]) -> Iterator[LoadPlace]:
        """The places next to the worst ones so far."""
        for solution in solved[:MAX_NEAR]:
            if solution.tried.place is None or not len(self._xy):
                continue
            away = np.hypot(*(self._xy - solution.tried.place.xy).T).round(3)
            near = np.flatnonzero((away > CLOSEST_MM) & (away < NEXT_TO * SEAT_STEP_MM))
            yield from (
                self._places.place(k)
                for k in near[np.argsort(away[near], kind="stable")][:MAX_BESIDE].tolist()
            )

    def about_the_worst(self, solved: Sequence[_Solved]) -> Iterator[LoadPlace]:
        """The places next to the worst ones so far, and half-way to those."""
        yield from self._beside(solved[:NEAR_AT_THE_END])
        yield from self._between(solved)

    def _between(self, solved: Sequence[_Solved]) -> tuple[LoadPlace, ...]:
        worst = [
            solution.tried.place.xy
            for solution in solved[:MAX_BETWEEN]
            if solution.tried.place is not None
        ]
        half = [
            0.5 * (self._xy[away < HALF_WAY_TO * SEAT_STEP_MM] + xy)
            for xy in worst
            for away in [np.hypot(*(self._xy - xy).T)]
        ]
        if not half:
            return ()
        return of_their_kinds(np.concatenate(half), self._placed.seat_area)

    def new(
        self, wished: Iterable[LoadPlace], before: Sequence[LoadPlace | None]
    ) -> list[LoadPlace]:
        """Those of some places that lie apart from others of their kind, settled before or new."""
        every, done = list(wished), [place for place in before if place is not None]
        kept: list[int] = []
        for kind in {place.kind for place in every}:
            of_kind = [k for k, place in enumerate(every) if place.kind == kind]
            alike = [place.xy for place in done if place.kind == kind]
            apart = first_apart([every[k].xy for k in of_kind], CLOSEST_MM, alike)
            kept += [of_kind[k] for k in apart]
        return [every[k] for k in sorted(kept)]
