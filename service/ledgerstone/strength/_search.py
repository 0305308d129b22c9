"""The worst place for a person on a slab: tried coarsely, then where influence says it is worse.

A few places all over the slab are settled first. The influence surface of each stress that governs
among them says what a person at any other place would do to it, while the same rests touch; the
worst of all places for each, and those next to the worst so far, are settled in turn. Rounds go on
while they find more.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from ledgerstone.strength._exchange import BoolArray
from ledgerstone.strength._influence import Influence, Peak, squares_at
from ledgerstone.strength._lying import Lying
from ledgerstone.strength._outline import FloatArray
from ledgerstone.strength._tried import Batch, Tried
from ledgerstone.strength.governing import Governing
from ledgerstone.strength.places import SEAT_STEP_MM, Place, of_their_kinds
from ledgerstone.strength.plate import Cases

PEAKS_BY_ROUND = (12, 8, 6, 4)  # governing stresses whose influence is worked out in each round
MOST_PEAKS = 6  # over low rests
MOST_NEAR = 5  # worst places so far whose neighbours are settled in a round
REMOTE_MM, REMOTE_SHARE = 120.0, 0.7  # a stress so far from the person; their share of the peaks
MOST_BESIDE = 5  # of them
MOST_BETWEEN = 2  # worst places in the end whose surroundings are settled more finely
APART_MM = 60.0  # peaks nearer than this are one
WORTH = 0.9  # of the worst utilisation so far: what an estimate must reach to be settled
CLOSEST_MM = 15.0  # a place nearer than this to one that was settled says nothing new
MOST_OTHERS = 5


@dataclass(frozen=True, slots=True)
class _Solved:
    """One person's case that was settled, and how far it uses the slab."""

    tried: Tried
    batch: Batch
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


def worst_seats(lying: Lying, first: Batch) -> tuple[Batch, ...]:
    """Settle the cases among which the worst place for a person is; ``first`` is one of them."""
    batches = [first]
    seats = _Seats(lying)
    for most in PEAKS_BY_ROUND:
        solved = _solved(lying, batches)
        if not solved:
            break
        wished = [*seats.by_influence(solved, most), *seats.beside(solved)]
        new = seats.new(wished, [one.tried.place for one in solved])
        if not new:
            break
        batches.append(lying.settled([lying.somebody(p, lying.hardest_case(p)) for p in new]))
    solved = _solved(lying, batches)
    between = seats.new(seats.between(solved), [one.tried.place for one in solved])
    if between:
        batches.append(lying.settled([lying.somebody(p, lying.hardest_case(p)) for p in between]))
    return tuple(batches)


def others_at_the_worst(lying: Lying, batches: Sequence[Batch]) -> Iterator[Tried]:
    """At the worst places, the other things that a person does there."""
    solved = _solved(lying, batches)
    for place in _worst_places(solved, "anywhere"):
        done = lying.hardest_case(place)
        for case in ("somebody-sitting", "somebody-standing"):
            if done in ("somebody-sitting", "somebody-standing") and case != done:
                yield lying.somebody(place, case)
    for place in _worst_places(solved, "free-corner"):
        yield lying.somebody(place, "free-corner")


def worse_seats_over_low_rests(lying: Lying, batch: Batch) -> list[Tried]:
    """With each low rest, somebody sitting where the worst of a batch's stresses would be more."""
    sat = [
        k
        for k, tried in enumerate(batch.tried)
        if tried.place is not None and tried.low is not None and not batch.found[k].tips
    ]
    sat.sort(key=lambda k: -batch.found[k].mpa)
    picked = [k for n, k in enumerate(sat) if n < MOST_PEAKS]
    if not picked:
        return []
    peaks = [Peak(k, batch.found[k].node, batch.found[k].face) for k in picked]
    model, side_mm = lying.plate.model, lying.workshop.loads.point_side_mm
    columns, touching = batch.loose.stress_columns(peaks), batch.loose.touching(peaks)
    influence = lying.rested.influence(columns, touching, lying.weight)
    seats = [place for place in lying.seats if place.kind == "anywhere"]
    here = [place for k in picked if (place := batch.tried[k].place) is not None]
    every = np.array([place.xy for place in (*here, *seats)])
    by = influence.of_squares(squares_at(model, every, side_mm))
    newtons = lying.workshop.loads.point_n
    tips = lying.tips_off(every, np.full(len(every), newtons))
    more = np.where(tips[:, None], -np.inf, np.round(by, 12))[len(here) :]
    worse: dict[tuple[Place, int], None] = {}
    for n, k in enumerate(picked):
        best = int(more[:, n].argmax())
        group = batch.tried[k].low
        if group is not None and math.dist(seats[best].xy, here[n].xy) >= CLOSEST_MM:
            worse[seats[best], group] = None
    return [lying.over_a_low_rest(place, group) for place, group in worse]


def _worst_places(solved: Sequence[_Solved], kind: str) -> list[Place]:
    places = [s.tried.place for s in solved if s.tried.place and s.tried.place.kind == kind]
    return places[:MOST_OTHERS]


def _solved(lying: Lying, batches: Sequence[Batch]) -> list[_Solved]:
    """Every person's case so far, the worst first."""
    every = [
        _Solved(tried, batch, k, batch.found[k].mpa / lying.limit_mpa(tried.case))
        for batch in batches
        for k, tried in enumerate(batch.tried)
        if tried.place is not None and not batch.found[k].tips
    ]
    return sorted(every, key=lambda one: -round(one.used, 6))


def _columns(picked: Sequence[_Solved]) -> tuple[FloatArray, BoolArray]:
    """Stresses as columns of the unknowns (3 n, k), and the stations that touch in each (s, k)."""
    parts = [
        [k for k, one in enumerate(picked) if one.cases is cases]
        for cases in dict.fromkeys(one.cases for one in picked)
    ]
    columns = [picked[at[0]].cases.stress_columns([picked[k].peak for k in at]) for at in parts]
    touching = [picked[at[0]].cases.touching([picked[k].peak for k in at]) for at in parts]
    order = np.argsort(np.concatenate(parts))
    return np.column_stack(columns)[:, order], np.column_stack(touching)[:, order]


class _Seats:
    """Every place where a person may be, with the load there over what is trusted."""

    def __init__(self, lying: Lying) -> None:
        self._lying = lying
        self._places = lying.seats
        self._xy = np.array([place.xy for place in self._places]).reshape(-1, 2)
        cases = [lying.hardest_case(place) for place in self._places]
        self._newtons = np.array([lying.newtons(case) for case in cases])
        self._limit = np.array([lying.limit_mpa(case) for case in cases])
        side_mm = lying.workshop.loads.point_side_mm
        self._squares = squares_at(lying.plate.model, self._xy, side_mm)
        self._tips = lying.tips_off(self._xy, self._newtons)
        self._known: set[tuple[int, str]] = set()

    def by_influence(self, solved: Sequence[_Solved], most: int) -> Iterator[Place]:
        """For each new governing stress, the places that would make the most of it."""
        picked = self._peaks(solved, most)
        if not picked:
            return
        lying, worth = self._lying, WORTH * solved[0].used
        picked = sorted(picked, key=lambda one: one.is_held)
        columns, touching = _columns(picked)
        loose = [k for k, one in enumerate(picked) if not one.is_held]
        if loose:
            touching = touching[:, loose]
            found = lying.rested.influence(columns[:, loose], touching, lying.weight)
            yield from self._worst(self._used(found), ~self._tips, worth)
        if self._tips.any():
            every = np.ones((len(lying.held.footing.stations.owner), len(picked)), dtype=bool)
            found = lying.held.influence(columns, every, lying.weight)
            yield from self._worst(self._used(found), self._tips, worth)

    def _peaks(self, solved: Sequence[_Solved], most: int) -> list[_Solved]:
        """The worst of the governing stresses that lie apart and are not known yet.

        Those away from the person come first: one under a person hardly grows as he moves.
        """
        picked: list[_Solved] = []
        remote = [one for one in solved if one.away_mm > REMOTE_MM]
        for share, some in ((REMOTE_SHARE, remote), (1.0, solved)):
            for one in some:
                if len(picked) >= share * most:
                    break
                if self._is_new(one, picked):
                    self._known.add((one.found.node, one.found.face))
                    picked.append(one)
        return picked

    def _is_new(self, one: _Solved, picked: Sequence[_Solved]) -> bool:
        if (one.found.node, one.found.face) in self._known:
            return False
        near = (other.found for other in picked if other.found.face == one.found.face)
        return all(math.dist(one.found.where_mm, other.where_mm) >= APART_MM for other in near)

    def _used(self, influence: Influence) -> FloatArray:
        """How far each place would use each stress, shape (p, k)."""
        by = influence.of_squares(self._squares)
        stress = influence.own_mpa + self._newtons[:, None] * by
        return np.asarray(np.round(stress / self._limit[:, None], 6))

    def _worst(self, used: FloatArray, among: BoolArray, worth: float) -> Iterator[Place]:
        used = np.where(among[:, None], used, -np.inf)
        for k, best in enumerate(used.argmax(axis=0).tolist()):
            if used[best, k] >= worth:
                yield self._places[best]

    def beside(self, solved: Sequence[_Solved]) -> Iterator[Place]:
        """The places next to the worst ones so far."""
        for one in solved[:MOST_NEAR]:
            if one.tried.place is None or not len(self._xy):
                continue
            away = np.hypot(*(self._xy - one.tried.place.xy).T)
            near = np.flatnonzero((away > CLOSEST_MM) & (away < 1.2 * SEAT_STEP_MM))
            yield from (
                self._places[k] for k in near[np.argsort(away[near], kind="stable")][:MOST_BESIDE]
            )

    def between(self, solved: Sequence[_Solved]) -> tuple[Place, ...]:
        """The places half-way from the worst ones so far to those next to them."""
        worst = [one.tried.place.xy for one in solved[:MOST_BETWEEN] if one.tried.place is not None]
        half = [
            0.5 * (self._xy[away < 1.5 * SEAT_STEP_MM] + xy)
            for xy in worst
            for away in [np.hypot(*(self._xy - xy).T)]
        ]
        if not half:
            return ()
        return of_their_kinds(np.concatenate(half), self._lying.shape, self._lying.hull)

    def new(self, wished: Sequence[Place], before: Sequence[Place | None]) -> list[Place]:
        """Those of some places that lie apart from each other and from those settled before."""
        taken = np.array([place.xy for place in before if place is not None]).reshape(-1, 2)
        kept: list[Place] = []
        for place in wished:
            if (np.hypot(*(taken - place.xy).T) >= CLOSEST_MM).all():
                kept.append(place)
                taken = np.append(taken, [place.xy], axis=0)
        return kept
