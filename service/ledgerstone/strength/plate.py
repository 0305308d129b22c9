"""A slab as a thin plate: sag, moments and stress under any loads on any rests.

>>> from shapely.geometry import box
>>> plate = Plate(box(0, 0, 600, 600), thickness_mm=40, e_mpa=33_000, nu=0.2)
>>> edge = LineSupport([(0, 0), (600, 0), (600, 600), (0, 600), (0, 0)], holds_down=True)
>>> answer = plate.solve(supports=[edge], loads=[Pressure(0.003)])
>>> round(answer.moments_at(300, 300)[0])  # .0442 q a²
48
"""

from __future__ import annotations

from collections.abc import Sequence

from shapely.geometry import Polygon

from ledgerstone.arrays import BoolArray, FloatArray
from ledgerstone.errors import SlabTipsError
from ledgerstone.outline import XY
from ledgerstone.strength import _rested
from ledgerstone.strength._cases import CaseResult, Cases, Stress
from ledgerstone.strength._influence import Influence, influence
from ledgerstone.strength._loads import LineLoad, OwnWeight, PatchLoad, PlateLoad, Pressure
from ledgerstone.strength._model import Model, as_deep, model_of
from ledgerstone.strength._supports import (
    AreaSupport,
    LineSupport,
    PointSupport,
    Support,
)
from ledgerstone.strength.concrete import POISSON

__all__ = [
    "AreaSupport",
    "CaseResult",
    "Cases",
    "LineLoad",
    "LineSupport",
    "OwnWeight",
    "PatchLoad",
    "Plate",
    "PlateLoad",
    "PointSupport",
    "Pressure",
    "Rested",
    "Stress",
    "Support",
]


class Plate:
    """A slab in bending.

    Parameters
    ----------
    outline
        Slab in plan with its openings, mm.
    thickness_mm
        Thickness away from any zone.
    e_mpa
        Young's modulus.
    nu
        Poisson's ratio; 0.2 for concrete that has not cracked (EN 1992-1-1 3.1.3(4)).
    mesh_mm
        Coarse element size; None takes the rule of methods §1.2.
    zones
        Areas of another thickness (what is left under a relief), mm; the later one on top.
    turning
        Places about which it turns, ends of rests and grips, mm: the mesh is finer there.

    Raises
    ------
    OutlineUnusableError
        If the outline is no single piece of concrete.
    """

    __slots__ = ("e_mpa", "model", "nu", "outline", "thickness_mm")

    def __init__(
        self,
        outline: Polygon,
        *,
        thickness_mm: float,
        e_mpa: float,
        nu: float = POISSON,
        mesh_mm: float | None = None,
        zones: Sequence[tuple[Polygon, float]] = (),
        turning: Sequence[XY] = (),
    ) -> None:
        self.outline = outline
        self.thickness_mm = float(thickness_mm)
        self.e_mpa = float(e_mpa)
        self.nu = float(nu)
        self.model: Model = model_of(
            outline,
            thickness_mm=self.thickness_mm,
            nu=self.nu,
            mesh_mm=mesh_mm,
            zones=zones,
            turning=turning,
        )

    def at(self, *, thickness_mm: float | None = None, e_mpa: float | None = None) -> Plate:
        """Same geometry at another thickness or age: mesh and factor are shared.

        Zones keep their share of the thickness.
        """
        other = object.__new__(Plate)
        other.outline, other.nu, other.model = self.outline, self.nu, self.model
        other.thickness_mm = self.thickness_mm if thickness_mm is None else float(thickness_mm)
        other.e_mpa = self.e_mpa if e_mpa is None else float(e_mpa)
        return other

    def with_zones(self, zones: Sequence[tuple[Polygon, float]]) -> Plate:
        """Same geometry with other thicknesses in the same zones, mm: the mesh is shared.

        Raises
        ------
        OutlineUnusableError
            If a part of the plate has no stiffness.
        """
        other = self.at()
        other.model = as_deep(self.model, self.thickness_mm, zones)
        return other

    @property
    def rigidity_nmm(self) -> float:
        """``D = E h³ / 12 (1 - nu²)``, N·mm.

        Source
        ------
        Timoshenko and Woinowsky-Krieger, *Theory of Plates and Shells*, (3), from memory.
        """
        return self.e_mpa * self.thickness_mm**3 / (12.0 * (1.0 - self.nu**2))

    def on(self, supports: Sequence[Support]) -> Rested:
        """Plate on its rests, ready for any number of cases.

        Raises
        ------
        OffTheSlabError
            If a rest does not meet the slab.
        """
        footing = _rested.footing_of(self.model, supports, self.rigidity_nmm)
        return Rested(self, footing, len(supports))

    def solve(self, *, supports: Sequence[Support], loads: Sequence[PlateLoad]) -> CaseResult:
        """Answer for one set of rests and the loads together.

        Raises
        ------
        OffTheSlabError
            If a rest or a load does not meet the slab.
        SlabTipsError
            If the rests cannot carry the load without pulling.
        """
        return self.on(supports).cases([loads]).answer(0)


class Rested:
    """A plate on its rests; see ``Plate.on``."""

    __slots__ = ("footing", "plate", "support_count")

    def __init__(self, plate: Plate, footing: _rested.Footing, support_count: int) -> None:
        self.plate = plate
        self.footing = footing
        self.support_count = support_count

    def at(self, *, thickness_mm: float | None = None, e_mpa: float | None = None) -> Rested:
        """Same rests at another thickness or age."""
        other = self.plate.at(thickness_mm=thickness_mm, e_mpa=e_mpa)
        footing = _rested.with_compliance(self.footing, other.rigidity_nmm)
        return Rested(other, footing, self.support_count)

    def giving_way(self, supports: Sequence[Support]) -> Rested:
        """Same plate on supports at the same places, of another compliance."""
        footing = _rested.with_compliance(self.footing, self.plate.rigidity_nmm, supports)
        return Rested(self.plate, footing, self.support_count)

    def influence(self, columns: FloatArray, touching: BoolArray, weight: OwnWeight) -> Influence:
        """Influence surfaces of stresses, MPa/N, while the stations that touch stay the same.

        Parameters
        ----------
        columns
            The stresses as ``Cases.stress_columns`` gives them, shape (3 n, k).
        touching
            As ``Cases.touching`` gives it, shape (stations, k).
        """
        own = OwnWeight(weight.n_per_mm3 * self.plate.thickness_mm)
        return influence(self.plate.model, self.footing, columns, touching, own)

    def tips(self, cases: Sequence[Sequence[PlateLoad]]) -> tuple[SlabTipsError | None, ...]:
        """For each case how the slab tips; None if it rests.

        Raises
        ------
        OffTheSlabError
            If a load does not meet the slab.
        """
        return _rested.tips_of(
            self.plate.model, self.footing, cases, thickness_mm=self.plate.thickness_mm
        )

    def cases(
        self,
        cases: Sequence[Sequence[PlateLoad]],
        *,
        gaps_mm: Sequence[float] | FloatArray | None = None,
    ) -> Cases:
        """Solve every case.

        Parameters
        ----------
        cases
            Loads of each case; they act together.
        gaps_mm
            How low each support lies, mm, in the order of the supports: shape (supports,) for all
            cases, or (supports, cases). None is all level.

        Raises
        ------
        OffTheSlabError
            If a load does not meet the slab.
        ContactNotSettledError
            If the contact problem does not balance (an internal fault).
        """
        found = _rested.settled_cases(
            self.plate.model,
            self.footing,
            cases,
            thickness_mm=self.plate.thickness_mm,
            rigidity=self.plate.rigidity_nmm,
            gaps_mm=gaps_mm,
        )
        return Cases(self, cases, found)
