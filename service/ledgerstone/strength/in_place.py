"""In place: own weight, an even load and one person anywhere, on rests that only push."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import shapely
from shapely.geometry.base import BaseGeometry

from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength.concrete import ACCIDENTAL, Concrete, DesignBasis, flexural_factor
from ledgerstone.strength.places import Place, load_places
from ledgerstone.strength.plate import (
    Cases,
    Load,
    OwnWeight,
    PatchLoad,
    Plate,
    Pressure,
    Rested,
    Stress,
)
from ledgerstone.strength.rests import Bearing, bearings
from ledgerstone.strength.tested import GRAVITY
from ledgerstone.strength.verdict import Case, Verdict
from ledgerstone.workshop.records import Workshop

IN_USE_DAYS = 28.0
LASTING, CHANGING = 1.35, 1.5  # EN 1990 table A1.2(B)
STEADYING, UPSETTING = 0.9, 1.5  # EN 1990 table A1.2(A), equilibrium
MOST_LOW_RESTS = 4
NEAREST_TO_A_LOW_REST = 6
CLOSEST_BARS_MM = 50.0
NOBODY_SITS = ("upstand", "splashback", "end-panel")


@dataclass(frozen=True, slots=True)
class InPlace:
    """What the plate says of a slab on its rests.

    Attributes
    ----------
    verdicts
        One a case.
    off_the_slab
        Bearings no part of which meets the slab.
    tips_alone
        The place of the weight's resultant, where it lies outside the rests.
    tips_under
        Where a person makes a loose slab tip.
    sag_mm
        Largest sag under its own weight and the even load.
    """

    verdicts: tuple[Verdict, ...] = ()
    off_the_slab: tuple[Bearing, ...] = ()
    tips_alone: XY | None = None
    tips_under: tuple[XY, ...] = ()
    sag_mm: float = 0.0


def in_place(
    slab: Slab, shape: Shape, plate: Plate, concrete: Concrete, workshop: Workshop
) -> InPlace:
    """Try every load of the profile on a slab's rests.

    Nothing is tried where nothing was told of the rests, or the slab is bedded all over, or it
    stands against a wall.
    """
    if slab.use in NOBODY_SITS:
        return InPlace()
    told = bearings(slab, shape)
    off = tuple(bearing for bearing in told if not bearing.footprint.intersects(shape.net))
    carrying = tuple(bearing for bearing in told if bearing not in off)
    if not carrying:
        return InPlace(off_the_slab=off)
    trial = _Trial(slab, shape, plate, concrete, workshop, carrying)
    return replace(trial.result(), off_the_slab=off)


@dataclass(frozen=True)
class _Trial:
    """One slab on its rests, and the loads that are tried on it."""

    slab: Slab
    shape: Shape
    plate: Plate
    concrete: Concrete
    workshop: Workshop
    carrying: Sequence[Bearing]

    @cached_property
    def hull(self) -> BaseGeometry:
        return shapely.unary_union([bearing.footprint for bearing in self.carrying]).convex_hull

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

    @cached_property
    def held(self) -> Rested:
        """The same rests, holding on: what a slab that would tip is fixed to in the end."""
        return self.plate.on(
            [replace(bearing.support, holds_down=True) for bearing in self.carrying]
        )

    def newtons(self, place: Place, newtons: float) -> float:
        """A person's load at a place: leaning, on a shelf or where nobody can sit."""
        leans = place.kind == "strip" or self.slab.use == "shelf"
        return min(newtons, self.workshop.loads.leaning_n) if leans else newtons

    def person(self, place: Place, newtons: float) -> PatchLoad:
        side = self.workshop.loads.point_side_mm
        at = self.newtons(place, newtons)
        return PatchLoad(x=place.xy[0], y=place.xy[1], length=side, width=side, newtons=at)

    def with_person(self, newtons: float, weight: float = 1.0) -> list[list[Load]]:
        own = OwnWeight(weight * self.weight.n_per_mm3)
        return [[own, self.person(place, newtons)] for place in self.places]

    def result(self) -> InPlace:
        """Settle every case at once, then judge it."""
        loads, n = self.workshop.loads, len(self.places)
        cases = self.rested.cases(
            [
                [self.weight],
                [self.weight, self.even],
                *self.with_person(loads.point_n),
                *self.with_person(loads.standing_n),
                *self.with_person(UPSETTING * loads.point_n, STEADYING),
            ]
        )
        alone = cases.tips[0]
        if alone is not None:
            return InPlace(tips_alone=alone.where_mm)
        stresses = self._held_where_it_tips(cases, 2 + 2 * n)
        fixed = self.slab.rests is not None and self.slab.rests.fixed
        tips = (
            ()
            if fixed
            else tuple(place.xy for k, place in enumerate(self.places) if cases.tips[2 + 2 * n + k])
        )
        sitting, standing = stresses[2 : 2 + n], stresses[2 + n : 2 + 2 * n]
        return InPlace(
            verdicts=(
                self._judged("own-weight", stresses[0]),
                self._judged("even-load", stresses[1]),
                *self._people(sitting, standing),
                *self._after_a_crack(stresses[0], sitting),
                *self._low_rests(),
            ),
            tips_under=tips,
            sag_mm=float(cases.sags_mm()[1]),
        )

    def _held_where_it_tips(self, cases: Cases, count: int) -> list[Stress]:
        """Stresses of the first cases; one that would tip is held down, which relieves nothing."""
        stresses = list(cases.worst_stresses())[:count]
        tipped = [k for k in range(count) if cases.tips[k] is not None]
        if tipped:
            loads = self.workshop.loads
            n = len(self.places)
            every = [*self.with_person(loads.point_n), *self.with_person(loads.standing_n)]
            held = self.held.cases([every[k - 2] for k in tipped if k - 2 < 2 * n])
            for k, stress in zip(tipped, held.worst_stresses(), strict=True):
                stresses[k] = stress
        return stresses

    def _people(self, sitting: Sequence[Stress], standing: Sequence[Stress]) -> Iterable[Verdict]:
        """Judge a person by the kind of place; a free corner by itself, standing never there."""
        rows: tuple[tuple[Case, str, Sequence[Stress], DesignBasis], ...] = (
            ("somebody-sitting", "anywhere", sitting, self.lasting),
            ("somebody-leaning", "strip", sitting, self.lasting),
            ("free-corner", "free-corner", sitting, self.lasting),
            ("somebody-standing", "anywhere", standing, self.accidental),
        )
        for case, kind, stresses, basis in rows:
            mine = [s for s, p in zip(stresses, self.places, strict=True) if p.kind == kind]
            if mine and not (case == "somebody-standing" and self.slab.use == "shelf"):
                yield self._judged(case, max(mine, key=float), basis)

    def _after_a_crack(self, own: Stress, sitting: Sequence[Stress]) -> Iterable[Verdict]:
        """Judge the worst section for 1.35 G + 1.5 Q by its steel, or else as plain concrete."""
        pairs = zip(sitting, self.places, strict=True)
        mine = [stress for stress, place in pairs if place.kind == "anywhere"]
        if not mine:
            return
        worst = max(mine, key=float)
        lasting = min(float(own), float(worst))
        stress = LASTING * lasting + CHANGING * (float(worst) - lasting)
        limit = max(self._steel_mpa(), self._plain_mpa())
        yield Verdict("after-a-crack", stress, limit, (worst.x_mm, worst.y_mm), IN_USE_DAYS)

    def _steel_mpa(self) -> float:
        """What bars at their closest carry after a crack, as a stress of the whole section.

        ``A_s f_yd 0.9 d`` with the bars at mid-depth and ``f_yd = f_yk / 1.15`` (EN 1992-1-1
        6.1, 2.4.2.4); bars no closer than 50 mm.
        """
        steel, h = self.workshop.steel, self.slab.thickness.mm
        per_mm = 0.25 * math.pi * steel.bar_mm**2 / CLOSEST_BARS_MM
        moment = per_mm * steel.yield_mpa / 1.15 * 0.9 * h / 2
        return 6.0 * moment / h**2

    def _plain_mpa(self) -> float:
        """What a section without steel is trusted with in bending (EN 1992-1-1 12.3.1, 3.1.8)."""
        plain = self.concrete.plain_tension_mpa(IN_USE_DAYS, basis=self.lasting)
        return plain * flexural_factor(self.slab.thickness.mm)

    def _low_rests(self) -> Iterable[Verdict]:
        """Judge inner rests that lie low, one at a time: evenly loaded, and sat upon."""
        groups = sorted({b.group for b in self.carrying if b.group is not None})
        even: list[Stress] = []
        sat: list[Stress] = []
        for group in groups[:MOST_LOW_RESTS]:
            low = [bearing.group == group for bearing in self.carrying]
            gaps = [self.workshop.loads.low_rest_mm if is_low else 0.0 for is_low in low]
            of_it = [b.footprint for b, is_low in zip(self.carrying, low, strict=True) if is_low]
            people = self._near(shapely.unary_union(of_it))
            cases = self.rested.cases([[self.weight, self.even], *people], gaps_mm=gaps)
            stresses = cases.worst_stresses()
            even.append(stresses[0])
            sat += stresses[1:]
        if even:
            yield self._judged("low-rest", max(even, key=float))
            yield self._judged("low-rest-and-sitting", max(sat, key=float))

    def _near(self, footprint: BaseGeometry) -> list[list[Load]]:
        """Somebody sitting, at the places nearest to a rest."""
        anywhere = [place for place in self.places if place.kind == "anywhere"]
        near = sorted(anywhere, key=lambda place: footprint.distance(shapely.Point(place.xy)))
        sits = self.workshop.loads.point_n
        return [[self.weight, self.person(p, sits)] for p in near[:NEAREST_TO_A_LOW_REST]]

    @property
    def lasting(self) -> DesignBasis:
        return replace(self.concrete.basis, gamma_c=self.workshop.concrete.partial_factor)

    @property
    def accidental(self) -> DesignBasis:
        return replace(ACCIDENTAL, gamma_c=self.workshop.concrete.accidental_factor)

    def _judged(self, case: Case, stress: Stress, basis: DesignBasis | None = None) -> Verdict:
        limit = self.concrete.design_bending_mpa(
            self.slab.thickness.mm, IN_USE_DAYS, basis=basis or self.lasting
        )
        return Verdict(case, float(stress), limit, (stress.x_mm, stress.y_mm), IN_USE_DAYS)
