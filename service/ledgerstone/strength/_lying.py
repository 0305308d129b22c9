"""One slab on its rests: the loads that are tried on it, settled together and judged."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import shapely
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength._rested import held_down
from ledgerstone.strength.concrete import ACCIDENTAL, Concrete, DesignBasis
from ledgerstone.strength.cracked import IN_USE_DAYS, cracked_limit_mpa
from ledgerstone.strength.governing import Governing, governing, worst_of
from ledgerstone.strength.places import Place, load_places
from ledgerstone.strength.plate import Cases, Load, OwnWeight, PatchLoad, Plate, Pressure, Rested
from ledgerstone.strength.rests import Bearing
from ledgerstone.strength.tested import GRAVITY
from ledgerstone.strength.tipping import tipping_places
from ledgerstone.strength.verdict import Case, Verdict
from ledgerstone.workshop.records import Workshop

LASTING, CHANGING = 1.35, 1.5  # EN 1990 table A1.2(B)
MOST_LOW_RESTS = 4
NEAREST_TO_A_LOW_REST = 6
WORTH_STANDING = 0.6
_PEOPLE: tuple[Case, ...] = ("somebody-sitting", "somebody-leaning")


def hold_down(bearings: Sequence[Bearing]) -> tuple[Bearing, ...]:
    """Return the same rests, holding the slab down as well."""
    return tuple(replace(b, support=replace(b.support, holds_down=True)) for b in bearings)


@dataclass(frozen=True)
class Lying:
    """One slab on its rests, and the loads that are tried on it."""

    slab: Slab
    shape: Shape
    plate: Plate
    concrete: Concrete
    workshop: Workshop
    carrying: Sequence[Bearing]

    @cached_property
    def hull(self) -> BaseGeometry:
        """The hull of what meets the slab."""
        footprints = shapely.unary_union([bearing.footprint for bearing in self.carrying])
        slab = self.plate.outline.buffer(1.0, join_style="mitre")
        return footprints.intersection(slab).convex_hull

    @cached_property
    def places(self) -> tuple[Place, ...]:
        """Where a person is tried."""
        side = self.workshop.loads.point_side_mm
        return load_places(self.shape, side, [bearing.footprint for bearing in self.carrying])

    @cached_property
    def weight(self) -> OwnWeight:
        """The slab's own weight."""
        return OwnWeight(self.workshop.recipe.density_kg_per_m3 * 1e-9 * GRAVITY)

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
        tip = self.cases.tips[0]
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

    def _with(self, places: Sequence[Place], *, sits: bool) -> list[list[Load]]:
        return [[self.weight, self._person(place, sits=sits)] for place in places]

    # --- cases ------------------------------------------------------------------------------

    @cached_property
    def cases(self) -> Cases:
        """Own weight; the even load with it; then, with it, somebody sitting at every place."""
        still: list[list[Load]] = [[self.weight], [self.weight, self.even]]
        return self.rested.cases([*still, *self._with(self.places, sits=True)])

    @cached_property
    def still(self) -> tuple[Governing, ...]:
        """Stresses of own weight, and of the even load with it."""
        found = governing(self.cases)[:2]
        if found[1].tips:
            found[1] = governing(self.held.cases([[self.weight, self.even]]))[0]
        return tuple(found)

    @cached_property
    def sitting(self) -> tuple[Governing, ...]:
        """The stress of somebody sitting, or leaning, at each place."""
        return self._held_where_it_tips(governing(self.cases)[2:], self.places, sits=True)

    @cached_property
    def held(self) -> Rested:
        """The same rests, holding on: what a slab that a person would tip is fixed to in the end.

        It bends about them as if it were loose, no less: what hangs over is a cantilever. The
        solutions at the rests are shared; only the sign of their reactions is free.
        """
        footing = held_down(self.rested.footing)
        return Rested(self.plate, footing, self.rested.support_count)

    def _held_where_it_tips(
        self, found: Sequence[Governing], places: Sequence[Place], *, sits: bool
    ) -> tuple[Governing, ...]:
        tipped = [place for place, one in zip(places, found, strict=True) if one.tips]
        if not tipped:
            return tuple(found)
        held = iter(governing(self._held_cases(tipped, sits=sits)))
        return tuple(next(held) if one.tips else one for one in found)

    def _held_cases(self, places: Sequence[Place], *, sits: bool) -> Cases:
        return self.held.cases(self._with(places, sits=sits))

    def everybody(self) -> Iterable[tuple[Cases, DesignBasis]]:
        """Every case of what is tried, loose and held, and how it is judged."""
        for cases, places, sits in (
            (self.cases, self.places, True),
            (self.standing_cases, self.stood_on, False),
        ):
            basis = self.lasting if sits else self.accidental
            if not places:
                continue
            yield cases, basis
            tips = cases.tips[-len(places) :]
            tipped = [p for p, tip in zip(places, tips, strict=True) if tip is not None]
            if tipped:
                yield self._held_cases(tipped, sits=sits), basis

    @cached_property
    def stood_on(self) -> tuple[Place, ...]:
        """Places where somebody standing may be the worst.

        Only places are tried where sitting makes ``WORTH_STANDING`` of the worst that it makes
        anywhere. No proof: over the ten calibration jobs and three breakers standing made 1.36 to
        1.51 times the stress of sitting at the worst place, and never over 1.81 times elsewhere.
        """
        rows = [
            (place, one)
            for place, one in zip(self.places, self.sitting, strict=True)
            if _sitting_case(place, self.slab) == "somebody-sitting"
        ]
        worth = WORTH_STANDING * max((one.mpa for _, one in rows), default=0.0)
        return tuple(place for place, one in rows if one.mpa >= worth)

    @cached_property
    def standing_cases(self) -> Cases:
        """Own weight and somebody standing, at each place of ``stood_on``."""
        return self.rested.cases(self._with(self.stood_on, sits=False))

    def _standing(self) -> tuple[Governing, ...]:
        if not self.stood_on:
            return ()
        found = governing(self.standing_cases)
        return self._held_where_it_tips(found, self.stood_on, sits=False)

    def verdicts(self) -> Iterable[Verdict]:
        """Judge every case."""
        own, even = self.still
        yield self._judged("own-weight", own)
        yield self._judged("even-load", even)
        sat: dict[Case, list[Governing]] = {}
        for place, one in zip(self.places, self.sitting, strict=True):
            sat.setdefault(_sitting_case(place, self.slab), []).append(one)
        for case, found in sat.items():
            yield self._judged(case, worst_of(found))
        standing = self._standing()
        if standing:
            yield self._judged("somebody-standing", worst_of(standing), self.accidental)
        people = [one for case in _PEOPLE for one in sat.get(case, [])]
        if people:
            yield self._after_a_crack(own, worst_of(people))
        yield from self._low_rests()

    def _after_a_crack(self, own: Governing, sitting: Governing) -> Verdict:
        """Judge the worst section for 1.35 G + 1.5 Q by its steel, or else as plain concrete."""
        lasting = min(own.mpa, sitting.mpa)
        stress = LASTING * lasting + CHANGING * (sitting.mpa - lasting)
        limit = cracked_limit_mpa(self.workshop.steel, self.concrete, self.slab.thickness.mm)
        case: Case = "after-a-crack"
        return Verdict(case, stress, limit, sitting.where_mm, IN_USE_DAYS, sitting.tips)

    # --- rests that lie low -----------------------------------------------------------------

    def _low_rests(self) -> Iterable[Verdict]:
        """Judge inner rests that lie low, one at a time: evenly loaded, and sat upon.

        Of many, the ones that carry along the longest lines are tried.
        """
        groups = {b.group: 0.0 for b in self.carrying if b.group is not None}
        for bearing in self.carrying:
            if bearing.group is not None:
                groups[bearing.group] += bearing.footprint.length
        tried = sorted(groups, key=lambda group: (-round(groups[group], 3), group))
        found = [self._with_one_low(group) for group in tried[:MOST_LOW_RESTS]]
        if found:
            yield self._judged("low-rest", worst_of(one[0] for one in found))
            sat = [one for others in found for one in others[1:]]
            if sat:
                yield self._judged("low-rest-and-sitting", worst_of(sat))

    def _with_one_low(self, group: int) -> list[Governing]:
        low = [bearing.group == group for bearing in self.carrying]
        gaps = [self.workshop.loads.low_rest_mm if is_low else 0.0 for is_low in low]
        of_it = [b.footprint for b, is_low in zip(self.carrying, low, strict=True) if is_low]
        near = self._near(shapely.unary_union(of_it))
        still: list[list[Load]] = [[self.weight, self.even]]
        loads = [*still, *self._with(near, sits=True)]
        cases = self.rested.cases(loads, gaps_mm=gaps)
        return governing(cases)

    def _near(self, footprint: BaseGeometry) -> list[Place]:
        """The places over a rest, its middle first, where somebody sits and the slab stays down."""
        people = zip(self.places, self.cases.tips[2:], strict=True)
        stays = [p for p, tip in people if p.kind == "anywhere" and tip is None]
        over, middle = footprint.convex_hull, footprint.centroid
        away = {p: (over.distance(Point(p.xy)), middle.distance(Point(p.xy))) for p in stays}
        stays.sort(key=lambda place: tuple(round(mm, 1) for mm in away[place]))
        return stays[:NEAREST_TO_A_LOW_REST]

    # --- what is trusted --------------------------------------------------------------------

    @property
    def lasting(self) -> DesignBasis:
        """How lasting cases are judged."""
        return self.concrete.basis

    @property
    def accidental(self) -> DesignBasis:
        """How somebody standing, an accident, is judged."""
        return replace(ACCIDENTAL, gamma_c=self.workshop.concrete.accidental_factor)

    def limit_mpa(self, basis: DesignBasis) -> float:
        """Stress that is trusted in use, MPa."""
        thickness = self.slab.thickness.mm
        return self.concrete.design_bending_mpa(thickness, IN_USE_DAYS, basis=basis)

    def _judged(self, case: Case, one: Governing, basis: DesignBasis | None = None) -> Verdict:
        limit = self.limit_mpa(basis or self.lasting)
        return Verdict(case, one.mpa, limit, one.where_mm, IN_USE_DAYS, one.tips)


def _sitting_case(place: Place, slab: Slab) -> Case:
    if place.kind == "free-corner":
        return "free-corner"
    leans = place.kind == "strip" or slab.use == "shelf"
    return "somebody-leaning" if leans else "somebody-sitting"
