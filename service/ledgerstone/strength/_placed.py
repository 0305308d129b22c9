"""One slab on its rests: the loads that are tried on it, settled together and judged."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from ledgerstone.arrays import BoolArray, FloatArray
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength._rested import held_down
from ledgerstone.strength._seat_area import SeatArea
from ledgerstone.strength._tried import CaseBatch, TriedCase
from ledgerstone.strength.concrete import ACCIDENTAL, Concrete
from ledgerstone.strength.cracked import IN_USE_DAYS
from ledgerstone.strength.governing import governing
from ledgerstone.strength.places import LoadPlace, Seats, load_places, seats
from ledgerstone.strength.plate import OwnWeight, PatchLoad, Plate, Pressure, Rested
from ledgerstone.strength.rests import Bearing
from ledgerstone.strength.tipping import Equilibrium, equilibrium_of, weight_at
from ledgerstone.strength.verdict import Case
from ledgerstone.workshop.records import Workshop


def hold_down(bearings: Sequence[Bearing]) -> tuple[Bearing, ...]:
    """Return the same rests, holding the slab down as well."""
    return tuple(replace(b, support=replace(b.support, holds_down=True)) for b in bearings)


@dataclass(frozen=True)
class PlacedSlab:
    """One slab on its rests, and the loads that are tried on it."""

    slab: Slab
    shape: Shape
    plate: Plate
    concrete: Concrete
    workshop: Workshop
    carrying: Sequence[Bearing]
    weight: OwnWeight

    @cached_property
    def seat_area(self) -> SeatArea:
        """Where a person may be."""
        side_mm, mesh = self.workshop.loads.point_side_mm, self.plate.model.mesh
        return SeatArea(self.shape, side_mm, self.footprints, mesh.polygon, mesh.seen)

    @property
    def hull(self) -> BaseGeometry:
        """The hull of what meets the slab."""
        return self.seat_area.hull

    @property
    def footprints(self) -> list[BaseGeometry]:
        """What carries the slab, in plan."""
        return [bearing.footprint for bearing in self.carrying]

    @cached_property
    def places(self) -> tuple[LoadPlace, ...]:
        """Where a person is tried first."""
        return load_places(self.seat_area)

    @cached_property
    def seats(self) -> Seats:
        """Every place where a person may be."""
        return seats(self.seat_area)

    @cached_property
    def even(self) -> Pressure:
        """The profile's even load, N/mm²."""
        return Pressure(self.workshop.loads.even_n_per_m2 * 1e-6)

    @cached_property
    def rested(self) -> Rested:
        """The plate on its rests."""
        return self.plate.on([bearing.support for bearing in self.carrying])

    @cached_property
    def held(self) -> Rested:
        """The plate on the same rests, holding on."""
        footing = held_down(self.rested.footing)
        return Rested(self.plate, footing, self.rested.support_count)

    @cached_property
    def equilibrium(self) -> Equilibrium:
        """How the loose slab keeps its balance."""
        return equilibrium_of(self.slab, self.shape, self.hull, self.weight.n_per_mm3)

    @property
    def tips_alone(self) -> XY | None:
        """Place of the weight's resultant, mm, if the slab's own weight overturns it; else None.

        Source
        ------
        As ``equilibrium_of``, or ``Rested.tips``.
        """
        if self.equilibrium.tips_alone:
            return self.equilibrium.middle_mm
        return self.tips_alone_at

    @cached_property
    def tips_alone_at(self) -> XY | None:
        """Place of the weight's resultant, mm, if it is outside the rests; else None.

        Source
        ------
        As ``Rested.tips``.
        """
        (tip,) = self.rested.tips([[self.weight]])
        return None if tip is None else tip.where_mm

    def tips_off(self, places: FloatArray, newtons: FloatArray) -> BoolArray:
        """Whether a load at each place lifts the slab off its rests, shape (p,).

        Parameters
        ----------
        places, newtons
            Where, mm, shape (p, 2), and how much, N, down positive, shape (p,).

        Source
        ------
        Statics: a resultant outside the hull of the rests lifts the slab off them.
        """
        whole, middle = self._own_weight
        at = (whole * np.array(middle) + newtons[:, None] * places) / (whole + newtons)[:, None]
        return np.asarray(~shapely.intersects_xy(self.hull, at[:, 0], at[:, 1]))

    @cached_property
    def _own_weight(self) -> tuple[float, XY]:
        """The slab's weight, N, and the place of its resultant, mm."""
        return weight_at(self.slab, self.shape, self.weight.n_per_mm3)

    @property
    def tips_under(self) -> tuple[XY, ...]:
        """Places, mm, where a person makes the slab tip if it is loose.

        Source
        ------
        As ``Equilibrium.tips_under``.
        """
        tips = self.tips_about(self.equilibrium)
        return tuple((x, y) for x, y in self.seats.xy[tips].tolist())

    def tips_about(self, equilibrium: Equilibrium) -> BoolArray:
        """Whether a person on each of the seats overturns the loose slab, shape (p,).

        Source
        ------
        As ``Equilibrium.tips_under``.
        """
        corner, anywhere = (
            self.newtons(self.sitting_case(LoadPlace((0.0, 0.0), kind)))
            for kind in ("free-corner", "anywhere")
        )
        seats = self.seats
        newtons = np.where(seats.at_a_corner, corner, anywhere)
        return np.asarray(equilibrium.tips_under(seats.xy, newtons), dtype=bool)

    # --- people -----------------------------------------------------------------------------

    def sitting_case(self, place: LoadPlace) -> Case:
        """What a person does at a place for long: leans on a strip and on a shelf, else sits."""
        if place.kind == "free-corner":
            return "free-corner"
        return self.hardest_case(place) if self._leans(place) else "somebody-sitting"

    def hardest_case(self, place: LoadPlace) -> Case:
        """Of the cases that stop an order, the one with the largest utilisation at a place."""
        return "somebody-leaning" if self._leans(place) else self._hardest

    @cached_property
    def _hardest(self) -> Case:
        loads = self.workshop.loads
        stands, sits = (self.limit_mpa(case) for case in ("somebody-standing", "somebody-sitting"))
        harder = loads.standing_n * sits >= loads.point_n * stands
        return "somebody-standing" if harder else "somebody-sitting"

    def _leans(self, place: LoadPlace) -> bool:
        return place.kind != "anywhere" or self.slab.use == "shelf"

    def newtons(self, case: Case) -> float:
        """A person's load in a case, N.

        Source
        ------
        The profile, loads.
        """
        loads = self.workshop.loads
        if case == "somebody-standing":
            return loads.standing_n
        shelf_corner = case == "free-corner" and self.slab.use == "shelf"
        if case == "somebody-leaning" or shelf_corner:
            return min(loads.point_n, loads.leaning_n)
        return loads.point_n

    def borne_n(self, place: LoadPlace, case: Case) -> float:
        """A person's load in a case that the slab bears at a place, N.

        On a narrow strip it begins with what uses the slab as much as leaning does, and grows by
        the same percentage with each millimetre.

        Source
        ------
        Our judgement, no source.
        """
        most, leaning = self.newtons(case), self.newtons("somebody-leaning")
        least = leaning * self.limit_mpa(case) / self.limit_mpa("somebody-leaning")
        return float(most * min(least / most, 1.0) ** (1.0 - place.wide))

    def with_person(self, place: LoadPlace, case: Case) -> TriedCase:
        """A person at a place."""
        (x, y), side = place.xy, self.workshop.loads.point_side_mm
        newtons = self.borne_n(place, case)
        patch = PatchLoad(x=x, y=y, length=side, width=side, newtons=newtons)
        return TriedCase(case, (self.weight, patch), place=place)

    # --- cases ------------------------------------------------------------------------------

    @cached_property
    def first(self) -> CaseBatch:
        """Own weight, the even load, and a person at the places that are tried first."""
        return self.settled(
            [
                TriedCase("own-weight", (self.weight,)),
                TriedCase("even-load", (self.weight, self.even)),
                *(self.with_person(place, self.hardest_case(place)) for place in self.places),
            ]
        )

    def over_a_low_rest(self, place: LoadPlace, group: int) -> TriedCase:
        """Someone sitting at a place with some rests low."""
        seated = self.with_person(place, "somebody-sitting")
        return replace(seated, case="low-rest-and-sitting", low=group)

    def settled(self, tried: Sequence[TriedCase]) -> CaseBatch:
        """Settle some cases: on loose rests, and those that tip on the same rests holding on.

        A slab that tips is fixed in the end. It bends about its rests as if it were loose, no
        less: what hangs over is a cantilever.
        """
        low = np.array([[b.group == case.low for case in tried] for b in self.carrying])
        low &= np.array([case.low is not None for case in tried])
        gaps = np.where(low, self.workshop.loads.low_rest_mm, 0.0)
        loose = self.rested.cases([case.loads for case in tried], gaps_mm=gaps)
        off = self._off_their_rests(tried)
        tipped = tuple(
            k
            for k, (case, tip) in enumerate(zip(tried, loose.tips, strict=True))
            if (tip is not None or off[k]) and case.low is None
        )
        held = self.held.cases([tried[k].loads for k in tipped]) if tipped else None
        found = governing(loose)
        if held is not None:
            for k, stress in zip(tipped, governing(held), strict=True):
                found[k] = stress
        return CaseBatch(tuple(tried), loose, tipped, held, tuple(found))

    def _off_their_rests(self, tried: Sequence[TriedCase]) -> BoolArray:
        """Whether a person lifts the slab off its rests in each case, shape (k,).

        The stations of a rest reach a few millimetres past it; on those alone the slab would lie on
        slivers, and be bent several times as much as a millimetre to either side.
        """
        off = np.zeros(len(tried), dtype=bool)
        people = [(k, case.place.xy) for k, case in enumerate(tried) if case.place is not None]
        if people and not self.carrying[0].support.holds_down:
            at = [k for k, _ in people]
            newtons = np.array([tried[k].person_n for k in at])
            off[at] = self.tips_off(np.array([xy for _, xy in people]), newtons)
        return off

    # --- what is trusted --------------------------------------------------------------------

    def limit_mpa(self, case: Case) -> float:
        """Stress that is trusted in a case, MPa.

        Source
        ------
        As ``Concrete.design_bending_mpa``; somebody standing is an accident (EN 1990 6.4.3.3).
        """
        return self._limits["accident" if case == "somebody-standing" else "lasting"]

    @cached_property
    def _limits(self) -> dict[str, float]:
        """Someone standing is an accident, the other cases last."""
        accident = replace(ACCIDENTAL, gamma_c=self.workshop.concrete.accidental_factor)
        bases = {"accident": accident, "lasting": self.concrete.basis}
        return {
            name: self.concrete.design_bending_mpa(self.slab.thickness.mm, IN_USE_DAYS, basis=basis)
            for name, basis in bases.items()
        }
