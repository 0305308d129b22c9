"""Demoulding, turning, carrying and the pallet: the simplest way of handling that suffices."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import islice

from ledgerstone.errors import SlabTipsError
from ledgerstone.shape import Shape
from ledgerstone.strength._holding import BEST_LIFT, HANDS_AT_THE_ENDS, Holding, holding_of
from ledgerstone.strength._settling import by_stress, each_on, first_settled, scaled
from ledgerstone.strength.concrete import Concrete, adjusted_age_days
from ledgerstone.strength.cracked import IN_USE_DAYS
from ledgerstone.strength.edge import on_edge_stress
from ledgerstone.strength.governing import DIGITS, Governing
from ledgerstone.strength.plate import OwnWeight, Plate, PlateLoad, Pressure
from ledgerstone.strength.tested import GRAVITY
from ledgerstone.strength.verdict import Case, Verdict, worst
from ledgerstone.workshop.records import Way, Workshop

YOUNGEST_DAYS = 1.0  # none is demoulded sooner: methods §1.5
TEST_UNDER_DAYS = 3.0  # at 20 °C: methods §1.5, common practice, no source


@dataclass(frozen=True, slots=True)
class Handled:
    """One way of handling one slab, and its verdicts.

    Attributes
    ----------
    under_cover_days
        Days in the mould, by the calendar.
    age_days
        The concrete's age then, adjusted to 20 °C.
    needs_age_days
        The adjusted age at which every step that happens at demoulding is trusted; None if
        none is.
    turned_over
        The long side that the slab is turned up on; None if it stays flat.
    bearers_mm
        Places of the bearers of its pallet along its length; none if it stands on edge.
    """

    way: Way
    verdicts: tuple[Verdict, ...]
    under_cover_days: float
    age_days: float
    needs_age_days: float | None
    turned_over: str | None
    bearers_mm: tuple[float, ...] = ()

    @property
    def suffices(self) -> bool:
        """Whether every step stays within what is trusted."""
        return all(verdict.utilisation <= 1.0 for verdict in self.verdicts)


@dataclass(frozen=True, slots=True)
class Curing:
    """Least time of a slab in its mould, days, and the temperature there, °C."""

    least_days: float
    celsius: float


@dataclass(frozen=True)
class Handling:
    """One slab's ways through the workshop.

    Attributes
    ----------
    plate, braced
        The slab as it is; and with a rail across its openings, which is taken to replace the
        concrete of the openings (common practice, no source).
    slab_kg
        Its mass.
    workshop_temp_c
        Temperature of the workshop in the month of casting.
    curing
        How it lies in its mould.
    weight
        Its concrete's weight.
    """

    shape: Shape
    plate: Plate
    braced: Callable[[], Plate]
    concrete: Concrete
    workshop: Workshop
    slab_kg: float
    workshop_temp_c: float
    curing: Curing
    weight: OwnWeight

    def chosen(self) -> Handled:
        """Take the first of the workshop's ways that suffices; where none does, the nearest.

        A way that cannot take the mass, or waits longer than the profile lets a slab lie, is no
        way; where all fall to that, the last one is judged all the same.
        """
        every = self.workshop.ways
        ways = [way for way in every if self._possible(way)] or every[-1:]
        tried: dict[tuple[float, int], Handled] = {}
        for k, way in enumerate(ways):
            handled = self._handled(way)
            tried[_peak(handled), k] = handled
            if handled.suffices:
                break
        best = tried[min(tried)]
        bearers = self._on_best_bearers[1] if best.way.held == "flat" else ()
        return replace(best, turned_over=self._turned_over(best.way), bearers_mm=bearers)

    def flat_by_the_ends(self) -> Verdict:
        """Judge the slab carried flat by its ends when it is delivered."""
        stress = scaled(self._hung_by_the_ends, self.workshop.handling.carried_factor)
        return self._verdict("flat-by-the-ends", stress, IN_USE_DAYS)

    @property
    def too_heavy(self) -> bool:
        """Whether no way takes the mass of the slab in its mould."""
        return all(way.most_kg < self.turned_kg(way) for way in self.workshop.ways)

    def turned_kg(self, way: Way) -> float:
        """Mass at turning, kg: the slab, and its mould where sides and formers stay in.

        Source
        ------
        Arithmetic; the workshop's ``handling.mould_kg_per_m2``.
        """
        mould_kg_per_m2 = self.workshop.handling.mould_kg_per_m2 if way.sides_on else 0.0
        return self.slab_kg + mould_kg_per_m2 * self.shape.outline_area_m2

    def _possible(self, way: Way) -> bool:
        longest_days = self.workshop.handling.longest_cover_days
        return way.most_kg >= self.turned_kg(way) and self._under_cover_days(way) <= longest_days

    def _under_cover_days(self, way: Way) -> float:
        return max(self.curing.least_days + way.later_days, YOUNGEST_DAYS)

    def _handled(self, way: Way) -> Handled:
        under_cover_days = self._under_cover_days(way)
        age = adjusted_age_days([(under_cover_days, self.curing.celsius)])
        young = tuple(self._verdict(case, stress, age) for case, stress in self._steps(way))
        verdicts = (*young, *self._on_bearers(way))
        return Handled(way, verdicts, under_cover_days, age, self._needed_days(young), None)

    def _on_bearers(self, way: Way) -> Iterable[Verdict]:
        """Judge a slab flat on its pallet, at its age then.

        A slab that is turned on edge is packed and transported on edge.
        """
        if way.held == "on-edge":
            return
        rested = self.workshop.days.drying + self.workshop.days.after_sealing
        covered = (self._under_cover_days(way), self.curing.celsius)
        age = adjusted_age_days([covered, (rested, self.workshop_temp_c)])
        pallet = scaled(self._on_best_bearers[0], self.workshop.handling.pallet_factor)
        yield self._verdict("on-bearers", pallet, age)

    def _steps(self, way: Way) -> Iterable[tuple[Case, Governing]]:
        """Every step at demoulding, with its stress."""
        handling = self.workshop.handling
        if way.held == "flat":
            yield "lifted-out", self._lifted(way)
            placed = self._braced_on_lines if way.rail else self._on_lines
            yield "carried", scaled(placed, handling.carried_factor)
            return
        yield "turned", self._turned(way)
        held = self._braced_held if way.rail else self._held
        mould = handling.mould_kg_per_m2 if way.sides_on else 0.0
        yield "on-edge", self._on_edge(held, BEST_LIFT, handling.out_of_mould_factor, mould)
        yield "carried", self._on_edge(held, HANDS_AT_THE_ENDS, handling.carried_factor, 0.0)

    def _needed_days(self, verdicts: tuple[Verdict, ...]) -> float | None:
        hardest = worst([replace(verdict, limit_mpa=1.0) for verdict in verdicts])
        if hardest is None:
            return YOUNGEST_DAYS
        if hardest.tips:
            return None
        days = self.concrete.age_days_for(hardest.stress_mpa, self.shape.thickness_mm)
        return None if days is None else max(days, YOUNGEST_DAYS)

    def _verdict(self, case: Case, governing: Governing, age_days: float) -> Verdict:
        limit = self.concrete.design_bending_mpa(self.shape.thickness_mm, age_days)
        return Verdict(case, governing.mpa, limit, governing.where_mm, age_days, governing.tips)

    # --- what holds it, and what it weighs --------------------------------------------------

    def _heavier(self, factor: float) -> OwnWeight:
        return OwnWeight(factor * self.weight.n_per_mm3)

    @cached_property
    def _held(self) -> Holding:
        return holding_of(self.plate.outline)

    @cached_property
    def _braced_held(self) -> Holding:
        return holding_of(self.braced().outline)

    @cached_property
    def _on_lines(self) -> Governing:
        """Stress of its bare weight on two lines at the best places; more weight scales it."""
        return self._bare_on(self.plate, self._held, BEST_LIFT)

    @cached_property
    def _on_best_bearers(self) -> tuple[Governing, tuple[float, ...]]:
        """Stress of its bare weight on the bearers that suit it best, and their places along it."""
        tried = [
            (first_settled(each_on(self.plate, [self._held.on(at)]), [[self.weight]]), at)
            for at in self._held.bearers_mm()
        ]
        return min(tried, key=lambda bearers: by_stress(bearers[0]))

    @cached_property
    def _braced_on_lines(self) -> Governing:
        return self._bare_on(self.braced(), self._braced_held, BEST_LIFT)

    @cached_property
    def _hung_by_the_ends(self) -> Governing:
        return self._bare_on(self.plate, self._held, HANDS_AT_THE_ENDS)

    def _bare_on(self, plate: Plate, held: Holding, share: float) -> Governing:
        return first_settled(each_on(plate, held.lines(share)), [[self.weight]])

    # --- the steps --------------------------------------------------------------------------

    def _lifted(self, way: Way) -> Governing:
        """Level out of the mould at the best lines: 1.3 G, or G and the mould's pull."""
        handling = self.workshop.handling
        plate, held = self._as_moved(way)
        heavy: list[PlateLoad] = [self._heavier(handling.out_of_mould_factor)]
        stuck: list[PlateLoad] = [self.weight, Pressure(handling.adhesion_n_per_m2 * 1e-6)]
        return first_settled(each_on(plate, held.lines(BEST_LIFT)), [heavy, stuck])

    def _turned(self, way: Way) -> Governing:
        """Over on to the long edge that suits it best."""
        return min(self._turned_on_each(way), key=by_stress)

    def _turned_over(self, way: Way) -> str | None:
        """The long side on to which it is turned: the one that suits it best."""
        if way.held == "flat":
            return None
        sides = ("left", "right") if self._held.along_y else ("front", "back")
        on_each = self._turned_on_each(way)
        return sides[min(range(len(on_each)), key=lambda k: by_stress(on_each[k]))]

    def _turned_on_each(self, way: Way) -> list[Governing]:
        """One long edge on the table, grips at two far points; the mould on it, or letting go.

        A plan that is alike on both sides of its length is turned on the one edge alone.
        """
        if (way.rail, way.sides_on) not in self._turns:
            plate, held = self._as_moved(way)
            cases = self._young(way)
            edges = 1 if plate.model.mesh.is_even("x" if held.along_y else "y") else 2
            self._turns[way.rail, way.sides_on] = [
                first_settled(each_on(plate, [supports]), cases)
                for supports in islice(held.hinges, edges)
            ]
        return self._turns[way.rail, way.sides_on]

    @cached_property
    def _turns(self) -> dict[tuple[bool, bool], list[Governing]]:
        """Stress of each way of turning that was tried."""
        return {}

    def _young(self, way: Way) -> list[list[PlateLoad]]:
        """Loads on a slab that is turned out of its mould, or with its sides on."""
        handling = self.workshop.handling
        factor = handling.out_of_mould_factor
        heavy: list[PlateLoad] = [self._heavier(factor)]
        if way.sides_on:
            mould = factor * handling.mould_kg_per_m2 * GRAVITY * 1e-6
            return [[*heavy, Pressure(mould)]]
        return [heavy, [self.weight, Pressure(handling.adhesion_n_per_m2 * 1e-6)]]

    def _as_moved(self, way: Way) -> tuple[Plate, Holding]:
        return (self.braced(), self._braced_held) if way.rail else (self.plate, self._held)

    def _on_edge(
        self, held: Holding, share: float, factor: float, mould_kg_per_m2: float
    ) -> Governing:
        try:
            found = on_edge_stress(
                held.simpler,
                thickness_mm=self.shape.thickness_mm,
                n_per_mm3=factor * self.weight.n_per_mm3,
                held_mm=held.places_mm(share),
                more_n_per_mm=factor * mould_kg_per_m2 * GRAVITY * 1e-6 * held.depth_mm,
                along_y=held.along_y,
            )
        except SlabTipsError as tip:
            return Governing(0.0, tip.where_mm, tips=True)
        return Governing(round(found.mpa, DIGITS), (found.x_mm, found.y_mm))


def _peak(handled: Handled) -> float:
    return max(verdict.utilisation for verdict in handled.verdicts)
