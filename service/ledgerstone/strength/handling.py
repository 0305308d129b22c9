"""Out of the mould, over on its edge, carried and on the pallet: the plainest way that suffices."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from functools import cached_property

import shapely
from shapely.geometry import LineString, Polygon

from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength.concrete import Concrete, adjusted_age_days
from ledgerstone.strength.edge import on_edge_stress
from ledgerstone.strength.in_place import IN_USE_DAYS
from ledgerstone.strength.plate import (
    LineSupport,
    Load,
    OwnWeight,
    Plate,
    PointSupport,
    Pressure,
    Support,
)
from ledgerstone.strength.tested import GRAVITY
from ledgerstone.strength.verdict import Case, Verdict, worst
from ledgerstone.workshop.records import Way, Workshop

# Two lifting lines at (sqrt(2) - 1) / 2 of the length from each end: the moments over the lines
# and between them are then equal (strength of materials; the reference page 1.9).
BEST_LIFT = 0.2071
HANDS_AT_THE_ENDS = 0.05
IN_FROM_THE_EDGE_MM = 10.0
YOUNGEST_DAYS = 1.0
TEST_UNDER_DAYS = 3.0

Stressed = tuple[float, XY]


@dataclass(frozen=True, slots=True)
class Handled:
    """One way of handling one slab, and what the plate says of it.

    Attributes
    ----------
    cover_days
        Days in the mould, by the calendar.
    age_days
        The concrete's age then, adjusted to 20 °C.
    needs_age_days
        The adjusted age at which every step that happens at demoulding is trusted; None where
        none is.
    """

    way: Way
    verdicts: tuple[Verdict, ...]
    cover_days: float
    age_days: float
    needs_age_days: float | None

    @property
    def suffices(self) -> bool:
        """Whether every step stays within what is trusted."""
        return all(verdict.utilisation <= 1.0 for verdict in self.verdicts)


@dataclass(frozen=True)
class Handling:
    """One slab's ways through the workshop.

    Attributes
    ----------
    plate, braced
        The slab as it is; and as it is with a rail across its openings, which stands in for the
        concrete that is not there (common practice, no source).
    slab_kg
        Its mass.
    shed_c
        Temperature of the workshop in the month of casting.
    """

    shape: Shape
    plate: Plate
    braced: Callable[[], Plate]
    concrete: Concrete
    workshop: Workshop
    slab_kg: float
    shed_c: float

    def chosen(self) -> Handled:
        """Take the first of the workshop's ways that suffices; where none does, the nearest.

        A way that cannot take the mass, or waits longer than the profile lets a slab lie, is no
        way; where all fall to that, the last one is judged all the same.
        """
        ways = [way for way in self.workshop.handling.ways if self._possible(way)]
        tried = []
        for way in ways or self.workshop.handling.ways[-1:]:
            tried.append(self._handled(way))
            if tried[-1].suffices:
                return tried[-1]
        return min(tried, key=_peak)

    def flat_by_the_ends(self) -> Verdict:
        """Judge the slab carried flat by its ends when it is delivered."""
        stress = self._flat(self.plate, HANDS_AT_THE_ENDS, self.workshop.handling.carried_factor)
        return self._verdict("flat-by-the-ends", stress, IN_USE_DAYS)

    @property
    def too_heavy(self) -> bool:
        """Whether no way takes the mass of the slab in its mould."""
        return all(way.most_kg < self.mould_and_slab_kg for way in self.workshop.handling.ways)

    @cached_property
    def mould_and_slab_kg(self) -> float:
        """Mass at turning: the slab and its mould."""
        area_m2 = self.shape.outline_area_mm2 / 1e6
        return self.slab_kg + self.workshop.handling.mould_kg_per_m2 * area_m2

    def _possible(self, way: Way) -> bool:
        return (
            way.most_kg >= self.mould_and_slab_kg
            and self._cover_days(way) <= self.workshop.handling.longest_cover_days
        )

    def _cover_days(self, way: Way) -> float:
        return max(self.workshop.days.under_cover + way.later_days, YOUNGEST_DAYS)

    def _handled(self, way: Way) -> Handled:
        cover_days = self._cover_days(way)
        age = adjusted_age_days([(cover_days, self.shed_c)])
        rested = cover_days + self.workshop.days.drying + self.workshop.days.after_sealing
        packed_age = adjusted_age_days([(rested, self.shed_c)])
        young = tuple(self._verdict(case, stress, age) for case, stress in self._steps(way))
        pallet = self._flat(self.plate, BEST_LIFT, self.workshop.handling.pallet_factor)
        on_bearers = self._verdict("on-bearers", pallet, packed_age)
        return Handled(way, (*young, on_bearers), cover_days, age, self._needed_days(young))

    def _steps(self, way: Way) -> Iterable[tuple[Case, Stressed]]:
        """Every step at demoulding, with its stress."""
        handling = self.workshop.handling
        plate = self.braced() if way.rail else self.plate
        if way.held == "flat":
            yield "lifted-out", self._lifted(plate)
            yield "carried", self._flat(plate, BEST_LIFT, handling.carried_factor)
            return
        yield "turned", self._turned(plate, sides_on=way.sides_on)
        solid = way.rail
        mould = handling.mould_kg_per_m2 if way.sides_on else 0.0
        yield "on-edge", self._on_edge(BEST_LIFT, handling.out_of_mould_factor, mould, solid=solid)
        yield "carried", self._on_edge(HANDS_AT_THE_ENDS, handling.carried_factor, 0.0, solid=solid)

    def _needed_days(self, verdicts: tuple[Verdict, ...]) -> float | None:
        hardest = worst([replace(verdict, limit_mpa=1.0) for verdict in verdicts])
        if hardest is None:
            return YOUNGEST_DAYS
        days = self.concrete.age_days_for(hardest.stress_mpa, self.shape.thickness_mm)
        return None if days is None else max(days, YOUNGEST_DAYS)

    def _verdict(self, case: Case, stressed: Stressed, age_days: float) -> Verdict:
        basis = replace(self.concrete.basis, gamma_c=self.workshop.concrete.partial_factor)
        limit = self.concrete.design_bending_mpa(self.shape.thickness_mm, age_days, basis=basis)
        return Verdict(case, stressed[0], limit, stressed[1], age_days)

    @property
    def _weight(self) -> float:
        return self.workshop.recipe.density_kg_per_m3 * 1e-9 * GRAVITY

    def _lifted(self, plate: Plate) -> Stressed:
        """Level out of the mould at the best lines: 1.3 G, or G and the mould's pull."""
        handling = self.workshop.handling
        heavy: list[Load] = [OwnWeight(handling.out_of_mould_factor * self._weight)]
        stuck: list[Load] = [OwnWeight(self._weight), Pressure(handling.adhesion_n_per_m2 * 1e-6)]
        return _worst_of(plate, self._lines(BEST_LIFT), [heavy, stuck])

    def _turned(self, plate: Plate, *, sides_on: bool) -> Stressed:
        """One long edge on the table, hands at two far points; the mould on it, or letting go."""
        handling = self.workshop.handling
        factor = handling.out_of_mould_factor
        heavy: list[Load] = [OwnWeight(factor * self._weight)]
        cases = [heavy]
        if sides_on:
            cases = [[*heavy, Pressure(factor * handling.mould_kg_per_m2 * GRAVITY * 1e-6)]]
        else:
            cases.append([OwnWeight(self._weight), Pressure(handling.adhesion_n_per_m2 * 1e-6)])
        return _worst_of(plate, self._hinge(), cases)

    def _flat(self, plate: Plate, share: float, factor: float) -> Stressed:
        return _worst_of(plate, self._lines(share), [[OwnWeight(factor * self._weight)]])

    def _on_edge(
        self, share: float, factor: float, mould_kg_per_m2: float, *, solid: bool
    ) -> Stressed:
        outline = self.shape.outline if solid else self.shape.net
        if not isinstance(outline, Polygon):
            return 0.0, (0.0, 0.0)  # in two pieces: a check of the shape has stopped it already
        x0, y0, x1, y1 = outline.bounds
        start, end = (y0, y1) if self._along_y else (x0, x1)
        deep = (x1 - x0) if self._along_y else (y1 - y0)
        found = on_edge_stress(
            outline,
            thickness_mm=self.shape.thickness_mm,
            n_per_mm3=factor * self._weight,
            held_mm=(start + share * (end - start), end - share * (end - start)),
            more_n_per_mm=factor * mould_kg_per_m2 * GRAVITY * 1e-6 * deep,
            along_y=self._along_y,
        )
        return found.mpa, (found.x_mm, found.y_mm)

    @property
    def _along_y(self) -> bool:
        x0, y0, x1, y1 = self.shape.outline.bounds
        return bool(y1 - y0 > x1 - x0)

    def _lines(self, share: float) -> list[Support]:
        """Two lines across the slab, so far from its ends."""
        x0, y0, x1, y1 = self.shape.outline.bounds
        start, end = (y0, y1) if self._along_y else (x0, x1)
        places = (start + share * (end - start), end - share * (end - start))
        if self._along_y:
            return [LineSupport([(x0, y), (x1, y)]) for y in places]
        return [LineSupport([(x, y0), (x, y1)]) for x in places]

    def _hinge(self) -> list[Support]:
        """The long edge it turns about, and two hands on the far side."""
        x0, y0, x1, y1 = self.shape.outline.bounds
        near = IN_FROM_THE_EDGE_MM
        if self._along_y:
            edge = LineSupport([(x0 + near, y0), (x0 + near, y1)])
            hands = [self._hand((x0, y), (x1, y)) for y in _two(y0, y1)]
        else:
            edge = LineSupport([(x0, y0 + near), (x1, y0 + near)])
            hands = [self._hand((x, y0), (x, y1)) for x in _two(x0, x1)]
        return [edge, *hands]

    def _hand(self, near: XY, far: XY) -> PointSupport:
        """A hand at the far end of a line across the slab, a little in from its edge."""
        across = LineString([near, far]).intersection(self.shape.outline)
        ends = shapely.get_coordinates(across)
        tip = max(map(tuple, ends), key=lambda xy: (xy[0] - near[0]) ** 2 + (xy[1] - near[1]) ** 2)
        back = LineString([tip, near]).interpolate(IN_FROM_THE_EDGE_MM)
        return PointSupport(float(back.x), float(back.y))


def _two(start: float, end: float) -> tuple[float, float]:
    return start + BEST_LIFT * (end - start), end - BEST_LIFT * (end - start)


def _peak(handled: Handled) -> float:
    return max(verdict.utilisation for verdict in handled.verdicts)


def _worst_of(plate: Plate, supports: list[Support], cases: list[list[Load]]) -> Stressed:
    stress = max(plate.on(supports).cases(cases).worst_stresses(), key=float)
    return float(stress), (stress.x_mm, stress.y_mm)
