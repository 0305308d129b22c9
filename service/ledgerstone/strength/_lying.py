"""One slab on its rests: the loads that are tried on it, settled together and judged."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength._outline import FloatArray
from ledgerstone.strength._rested import held_down
from ledgerstone.strength.concrete import ACCIDENTAL, Concrete, DesignBasis
from ledgerstone.strength.cracked import IN_USE_DAYS, cracked_limit_mpa
from ledgerstone.strength.governing import Governing, governing, worst_of
from ledgerstone.strength.places import Place, load_places
from ledgerstone.strength.plate import Cases, Load, OwnWeight, PatchLoad, Plate, Pressure, Rested
from ledgerstone.strength.rests import Bearing
from ledgerstone.strength.tipping import tipping_places
from ledgerstone.strength.verdict import Case, Verdict
from ledgerstone.workshop.records import Workshop

LASTING, CHANGING = 1.35, 1.5  # EN 1990 table A1.2(B)
MOST_LOW_RESTS = 4
NEAREST_TO_A_LOW_REST = 6
_PEOPLE: tuple[Case, ...] = ("somebody-sitting", "somebody-leaning")


def hold_down(bearings: Sequence[Bearing]) -> tuple[Bearing, ...]:
    """Return the same rests, holding the slab down as well."""
    return tuple(replace(b, support=replace(b.support, holds_down=True)) for b in bearings)


@dataclass(frozen=True, slots=True)
class Tried:
    """One case that is tried on a slab: its loads, and the group of rests that lies low in it."""

    case: Case
    loads: tuple[Load, ...]
    low: int | None = None


@dataclass(frozen=True)
class Lying:
    """One slab on its rests, and the loads that are tried on it."""

    slab: Slab
    shape: Shape
    plate: Plate
    concrete: Concrete
    workshop: Workshop
    carrying: Sequence[Bearing]
    weight: OwnWeight

    @cached_property
    def hull(self) -> BaseGeometry:
        """The hull of what meets the slab."""
        footprints = plane.union([bearing.footprint for bearing in self.carrying])
        slab = plane.buffer(self.plate.outline, 1.0, join_style="mitre")
        return plane.intersection(footprints, slab).convex_hull

    @cached_property
    def places(self) -> tuple[Place, ...]:
        """Where a person is tried."""
        side = self.workshop.loads.point_side_mm
        return load_places(self.shape, side, [bearing.footprint for bearing in self.carrying])

    @cached_property
    def even(self) -> Pressure:
        """The even load."""
        return Pressure(self.workshop.loads.even_n_per_m2 * 1e-6)

    @cached_property
    def rested(self) -> Rested:
        """The plate on its rests."""
        return self.plate.on([bearing.support for bearing in self.carrying])

    @property
    def tips_alone(self) -> XY | None:
        """Where the weight's resultant is, if the rests cannot carry the slab by itself."""
        (tip,) = self.rested.tips([[self.weight]])
        return None if tip is None else tip.where_mm

    @property
    def tips_under(self) -> tuple[XY, ...]:
        """Places where a person makes the slab tip, were it loose."""
        people = [(place.xy, self._newtons(place, sits=True)) for place in self.places]
        return tipping_places(self.slab, self.shape, self.hull, self.weight.n_per_mm3, people)

    # --- people -----------------------------------------------------------------------------

    def _newtons(self, place: Place, *, sits: bool) -> float:
        """A person's load at a place: leaning, on a shelf or where nobody can sit."""
        loads = self.workshop.loads
        newtons = loads.point_n if sits else loads.standing_n
        leans = place.kind == "strip" or self.slab.use == "shelf"
        return min(newtons, loads.leaning_n) if leans else newtons

    def _person(self, place: Place, *, sits: bool) -> PatchLoad:
        x, y = place.xy
        side = self.workshop.loads.point_side_mm
        newtons = self._newtons(place, sits=sits)
        return PatchLoad(x=x, y=y, length=side, width=side, newtons=newtons)

    # --- cases ------------------------------------------------------------------------------

    @cached_property
    def tried(self) -> tuple[Tried, ...]:
        """Own weight, the even load, somebody at every place, and the same with a rest low."""
        sitting = [self._at(_sitting_case(p, self.slab), p, sits=True) for p in self.places]
        standing = [
            self._at("somebody-standing", place, sits=False)
            for place, sat in zip(self.places, sitting, strict=True)
            if sat.case == "somebody-sitting"
        ]
        return (
            Tried("own-weight", (self.weight,)),
            Tried("even-load", (self.weight, self.even)),
            *sitting,
            *standing,
            *self._low_rests(sitting),
        )

    def _at(self, case: Case, place: Place, *, sits: bool) -> Tried:
        return Tried(case, (self.weight, self._person(place, sits=sits)))

    def _low_rests(self, sitting: Sequence[Tried]) -> Iterable[Tried]:
        """Inner rests that lie low, one at a time: evenly loaded, and sat upon near by.

        Of many, the ones that carry along the longest lines are tried.
        """
        groups = {b.group: 0.0 for b in self.carrying if b.group is not None}
        for bearing in self.carrying:
            if bearing.group is not None:
                groups[bearing.group] += bearing.footprint.length
        low = sorted(groups, key=lambda group: (-round(groups[group], 3), group))
        if not low:
            return
        stays = [
            (place, sat)
            for place, sat, tip in zip(
                self.places, sitting, self.rested.tips([sat.loads for sat in sitting]), strict=True
            )
            if place.kind == "anywhere" and tip is None
        ]
        for group in low[:MOST_LOW_RESTS]:
            footprints = [b.footprint for b in self.carrying if b.group == group]
            yield Tried("low-rest", (self.weight, self.even), group)
            for sat in _nearest(stays, plane.union(footprints)):
                yield Tried("low-rest-and-sitting", sat.loads, group)

    @cached_property
    def cases(self) -> Cases:
        """Every case that is tried, on loose rests."""
        low = np.array([[b.group == tried.low for tried in self.tried] for b in self.carrying])
        low &= np.array([tried.low is not None for tried in self.tried])
        gaps = np.where(low, self.workshop.loads.low_rest_mm, 0.0)
        return self.rested.cases([tried.loads for tried in self.tried], gaps_mm=gaps)

    @cached_property
    def held(self) -> tuple[tuple[int, ...], Cases] | None:
        """The cases that tip a loose slab, on the same rests holding on: it is fixed in the end.

        It bends about them as if it were loose, no less: what hangs over is a cantilever. The
        solutions at the rests are shared; only the sign of their reactions is free.
        """
        tips = zip(self.tried, self.cases.tips, strict=True)
        tipped = tuple(k for k, (t, tip) in enumerate(tips) if tip is not None and t.low is None)
        if not tipped:
            return None
        footing = held_down(self.rested.footing)
        held = Rested(self.plate, footing, self.rested.support_count)
        return tipped, held.cases([self.tried[k].loads for k in tipped])

    @cached_property
    def found(self) -> tuple[Governing, ...]:
        """The stress of every case that is tried."""
        found = governing(self.cases)
        if self.held is not None:
            for k, one in zip(self.held[0], governing(self.held[1]), strict=True):
                found[k] = one
        return tuple(found)

    def everybody(self) -> Iterable[tuple[Cases, FloatArray]]:
        """Every case, loose and held, and the stress that is trusted in it, MPa.

        With a rest low, what is trusted has no bound: that is a caution to level it.
        """
        limits = np.array(
            [self._limit_mpa(t.case) if t.low is None else np.inf for t in self.tried]
        )
        yield self.cases, limits
        if self.held is not None:
            tipped, cases = self.held
            yield cases, limits[list(tipped)]

    def verdicts(self) -> Iterable[Verdict]:
        """Judge every case."""
        of: dict[Case, list[Governing]] = {}
        for tried, one in zip(self.tried, self.found, strict=True):
            of.setdefault(tried.case, []).append(one)
        for case, found in of.items():
            yield self._judged(case, worst_of(found))
        people = [one for case in _PEOPLE for one in of.get(case, [])]
        if people:
            yield self._after_a_crack(of["own-weight"][0], worst_of(people))

    def _after_a_crack(self, own: Governing, sitting: Governing) -> Verdict:
        """Judge the worst section for 1.35 G + 1.5 Q by its steel, or else as plain concrete."""
        lasting = min(own.mpa, sitting.mpa)
        stress = LASTING * lasting + CHANGING * (sitting.mpa - lasting)
        limit = cracked_limit_mpa(self.workshop.steel, self.concrete, self.slab.thickness.mm)
        case: Case = "after-a-crack"
        return Verdict(case, stress, limit, sitting.where_mm, IN_USE_DAYS, sitting.tips)

    # --- what is trusted --------------------------------------------------------------------

    def _basis(self, case: Case) -> DesignBasis:
        """How a case is judged: somebody standing is an accident, the others last."""
        if case == "somebody-standing":
            return replace(ACCIDENTAL, gamma_c=self.workshop.concrete.accidental_factor)
        return self.concrete.basis

    def _limit_mpa(self, case: Case) -> float:
        thickness, basis = self.slab.thickness.mm, self._basis(case)
        return self.concrete.design_bending_mpa(thickness, IN_USE_DAYS, basis=basis)

    def _judged(self, case: Case, one: Governing) -> Verdict:
        limit = self._limit_mpa(case)
        return Verdict(case, one.mpa, limit, one.where_mm, IN_USE_DAYS, one.tips)


def _sitting_case(place: Place, slab: Slab) -> Case:
    if place.kind == "free-corner":
        return "free-corner"
    leans = place.kind == "strip" or slab.use == "shelf"
    return "somebody-leaning" if leans else "somebody-sitting"


def _nearest(stays: Sequence[tuple[Place, Tried]], over: BaseGeometry) -> list[Tried]:
    """The places nearest to a rest, its middle first, of those where the slab stays down."""
    hull, middle = over.convex_hull, over.centroid
    away = [
        (round(hull.distance(Point(p.xy)), 1), round(middle.distance(Point(p.xy)), 1))
        for p, _ in stays
    ]
    order = sorted(range(len(stays)), key=away.__getitem__)
    return [stays[k][1] for k in order[:NEAREST_TO_A_LOW_REST]]
