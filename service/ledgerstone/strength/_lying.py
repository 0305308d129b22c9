"""One slab on its rests: the loads that are tried on it, settled together and judged."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import shapely
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength.concrete import ACCIDENTAL, Concrete, DesignBasis, flexural_factor
from ledgerstone.strength.cracked import steel_moment_nmm_per_mm
from ledgerstone.strength.governing import Governing, governing, worst_of
from ledgerstone.strength.places import Place, load_places
from ledgerstone.strength.plate import Cases, Load, OwnWeight, PatchLoad, Plate, Pressure, Rested
from ledgerstone.strength.rests import Bearing
from ledgerstone.strength.tested import GRAVITY
from ledgerstone.strength.tipping import tipping_places
from ledgerstone.strength.verdict import Case, Verdict
from ledgerstone.workshop.records import Steel, Workshop

IN_USE_DAYS = 28.0
LASTING, CHANGING = 1.35, 1.5  # EN 1990 table A1.2(B)
MOST_LOW_RESTS = 4
NEAREST_TO_A_LOW_REST = 6
CLOSEST_BARS_MM = 50.0
_PEOPLE: tuple[Case, ...] = ("somebody-sitting", "somebody-leaning")


def hold_down(bearings: Sequence[Bearing]) -> tuple[Bearing, ...]:
    """Return the same rests, holding the slab down as well."""
    return tuple(replace(b, support=replace(b.support, holds_down=True)) for b in bearings)


def closest_steel_mm2_per_mm(steel: Steel) -> float:
    """Area of the profile's bars at their closest, mm² on each mm."""
    return 0.25 * math.pi * steel.bar_mm**2 / CLOSEST_BARS_MM


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
        return footprints.intersection(self.plate.outline.buffer(1.0)).convex_hull

    @cached_property
    def places(self) -> tuple[Place, ...]:
        return load_places(self.shape, self.workshop.loads.point_side_mm, self.hull)

    @cached_property
    def weight(self) -> OwnWeight:
        return OwnWeight(self.workshop.recipe.density_kg_per_m3 * 1e-9 * GRAVITY)

    @cached_property
    def even(self) -> Pressure:
        return Pressure(self.workshop.loads.even_n_per_m2 * 1e-6)

    @cached_property
    def rested(self) -> Rested:
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

    @cached_property
    def people(self) -> tuple[tuple[Case, Place], ...]:
        """Every case of a person: sitting everywhere, standing where somebody could stand.

        The two of a place follow each other, for they lift the slab off much the same rests.
        """
        listed: list[tuple[Case, Place]] = []
        for place in self.places:
            listed.append((_sitting_case(place, self.slab), place))
            if place.kind == "anywhere" and self.slab.use != "shelf":
                listed.append(("somebody-standing", place))
        return tuple(listed)

    def _load_of(self, case: Case, place: Place) -> list[Load]:
        return [self.weight, self._person(place, sits=case != "somebody-standing")]

    # --- cases ------------------------------------------------------------------------------

    @cached_property
    def cases(self) -> Cases:
        """Own weight; the even load with it; then every person with it."""
        people = [self._load_of(case, place) for case, place in self.people]
        return self.rested.cases([[self.weight], [self.weight, self.even], *people])

    @cached_property
    def found(self) -> tuple[Governing, ...]:
        """The stress of each case; where it would tip, with the slab held down.

        What is fixed to its rests in the end bends about them as if it were loose, no less: the
        part that hangs over is a cantilever either way.
        """
        found = governing(self.cases)
        tipped = [k for k, one in enumerate(found) if one.tips]
        if tipped:
            held = self.plate.on([bearing.support for bearing in hold_down(self.carrying)])
            loads = [self._load_of(*self.people[k - 2]) for k in tipped if k >= 2]
            if tipped[:1] == [1]:
                loads.insert(0, [self.weight, self.even])
            for k, one in zip(tipped, governing(held.cases(loads)), strict=True):
                found[k] = one
        return tuple(found)

    def verdicts(self) -> Iterable[Verdict]:
        """Judge every case."""
        own, even, *people = self.found
        yield self._judged("own-weight", own)
        yield self._judged("even-load", even)
        rows = list(zip(self.people, people, strict=True))
        for case in dict.fromkeys(case for case, _ in self.people):
            mine = worst_of(one for (other, _), one in rows if other == case)
            basis = self.accidental if case == "somebody-standing" else self.lasting
            yield self._judged(case, mine, basis)
        sitting = [one for (case, _), one in rows if case in _PEOPLE]
        if sitting:
            yield self._after_a_crack(own, worst_of(sitting))
        yield from self._low_rests()

    def _after_a_crack(self, own: Governing, sitting: Governing) -> Verdict:
        """Judge the worst section for 1.35 G + 1.5 Q by its steel, or else as plain concrete."""
        lasting = min(own.mpa, sitting.mpa)
        stress = LASTING * lasting + CHANGING * (sitting.mpa - lasting)
        limit = max(self._steel_mpa(), self._plain_mpa())
        case: Case = "after-a-crack"
        return Verdict(case, stress, limit, sitting.where_mm, IN_USE_DAYS, sitting.tips)

    def _steel_mpa(self) -> float:
        """What bars at their closest, in mid-depth, carry: as a stress of the whole section."""
        h = self.slab.thickness.mm
        moment = steel_moment_nmm_per_mm(
            closest_steel_mm2_per_mm(self.workshop.steel),
            h / 2,
            yield_mpa=self.workshop.steel.yield_mpa,
            fck_mpa=self.concrete.fck_mpa,
            gamma_c=self.workshop.concrete.partial_factor,
        )
        return 6.0 * moment / h**2

    def _plain_mpa(self) -> float:
        """What a section without steel is trusted with in bending (EN 1992-1-1 12.3.1, 3.1.8)."""
        plain = self.concrete.plain_tension_mpa(IN_USE_DAYS, basis=self.lasting)
        return plain * flexural_factor(self.slab.thickness.mm)

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
        loads = [self._load_of("somebody-sitting", place) for place in near]
        cases = self.rested.cases([[self.weight, self.even], *loads], gaps_mm=gaps)
        return governing(cases)

    def _near(self, footprint: BaseGeometry) -> list[Place]:
        """The places nearest to a rest, of those where somebody sits and the slab stays down."""
        people = zip(self.people, self.cases.tips[2:], strict=True)
        stays = [p for (case, p), tip in people if case == "somebody-sitting" and tip is None]
        stays.sort(key=lambda place: round(footprint.distance(Point(place.xy)), 3))
        return stays[:NEAREST_TO_A_LOW_REST]

    # --- what is trusted --------------------------------------------------------------------

    @property
    def lasting(self) -> DesignBasis:
        return self.concrete.basis

    @property
    def accidental(self) -> DesignBasis:
        return replace(ACCIDENTAL, gamma_c=self.workshop.concrete.accidental_factor)

    def _judged(self, case: Case, one: Governing, basis: DesignBasis | None = None) -> Verdict:
        limit = self.concrete.design_bending_mpa(
            self.slab.thickness.mm, IN_USE_DAYS, basis=basis or self.lasting
        )
        return Verdict(case, one.mpa, limit, one.where_mm, IN_USE_DAYS, one.tips)


def _sitting_case(place: Place, slab: Slab) -> Case:
    if place.kind == "free-corner":
        return "free-corner"
    leans = place.kind == "strip" or slab.use == "shelf"
    return "somebody-leaning" if leans else "somebody-sitting"
