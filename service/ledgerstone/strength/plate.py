"""A slab as a thin plate: put any rests and loads to it and read off sag, moments and stress.

>>> from shapely.geometry import box
>>> plate = Plate(box(0, 0, 600, 600), thickness_mm=40, e_mpa=33_000, nu=0.2)
>>> edge = LineSupport([(0, 0), (600, 0), (600, 600), (0, 600), (0, 0)], holds_down=True)
>>> answer = plate.solve(supports=[edge], loads=[Pressure(0.003)])
>>> round(answer.moments_at(300, 300)[0])  # .0442 q a²
48
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property

import numpy as np
from shapely.geometry import Polygon

from ledgerstone.strength import _recovery, _rested, _stress
from ledgerstone.strength._element import deflection_row
from ledgerstone.strength._faults import OffTheSlabError, SlabTipsError
from ledgerstone.strength._loads import LineLoad, Load, OwnWeight, PatchLoad, Pressure
from ledgerstone.strength._model import Model, model_of
from ledgerstone.strength._outline import FloatArray
from ledgerstone.strength._supports import (
    REACH_MM,
    AreaSupport,
    LineSupport,
    PointSupport,
    Support,
)

__all__ = [
    "Answer",
    "AreaSupport",
    "Cases",
    "LineLoad",
    "LineSupport",
    "Load",
    "OwnWeight",
    "PatchLoad",
    "Plate",
    "PointSupport",
    "Pressure",
    "Rested",
    "Stress",
    "Support",
]


class Stress(float):
    """Tensile stress in MPa, and where it is.

    Parameters
    ----------
    mpa
        The stress, tension positive.
    x_mm, y_mm
        Where, plane slab millimetres.
    face
        ``"bottom"`` where sagging makes it, ``"top"`` where hogging does.
    """

    __slots__ = ("face", "x_mm", "y_mm")

    x_mm: float
    y_mm: float
    face: str

    def __new__(cls, mpa: float, *, x_mm: float, y_mm: float, face: str) -> Stress:
        made = super().__new__(cls, mpa)
        made.x_mm, made.y_mm, made.face = x_mm, y_mm, face
        return made


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
        Coarse element size; None takes the rule of design.md §4.
    zones
        Areas of another thickness (what is left under a relief), mm; the later one on top.

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
        nu: float = 0.2,
        mesh_mm: float | None = None,
        zones: Sequence[tuple[Polygon, float]] = (),
    ) -> None:
        self.outline = outline
        self.thickness_mm = float(thickness_mm)
        self.e_mpa = float(e_mpa)
        self.nu = float(nu)
        self.model: Model = model_of(
            outline, thickness_mm=self.thickness_mm, nu=self.nu, mesh_mm=mesh_mm, zones=zones
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

    @property
    def rigidity_nmm(self) -> float:
        """``D = E h³ / 12 (1 - nu²)``, N·mm."""
        return self.e_mpa * self.thickness_mm**3 / (12.0 * (1.0 - self.nu**2))

    def on(self, supports: Sequence[Support]) -> Rested:
        """Plate on its rests, ready for any number of cases.

        Raises
        ------
        OffTheSlabError
            If a rest does not meet the slab.
        """
        return Rested(self, _rested.footing_of(self.model, supports), len(supports))

    def solve(self, *, supports: Sequence[Support], loads: Sequence[Load]) -> Answer:
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
        return Rested(other, self.footing, self.support_count)

    def cases(
        self, cases: Sequence[Sequence[Load]], *, gaps_mm: Sequence[float] | None = None
    ) -> Cases:
        """Every case worked out.

        Parameters
        ----------
        cases
            Loads of each case; they act together.
        gaps_mm
            How low each support lies, in the order of the supports; None puts all level.

        Raises
        ------
        OffTheSlabError
            If a load does not meet the slab.
        ContactNotSettledError
            If the contact problem does not balance (a fault of ours).
        """
        found = _rested.settled_cases(
            self.plate.model,
            self.footing,
            cases,
            thickness_mm=self.plate.thickness_mm,
            rigidity=self.plate.rigidity_nmm,
            gaps_mm=gaps_mm,
        )
        return Cases(self, found)


class Cases:
    """Cases of one slab on one set of rests; see ``Rested.cases``."""

    def __init__(self, rested: Rested, found: _rested.Settled) -> None:
        self.rested = rested
        self._found = found

    @property
    def tips(self) -> tuple[SlabTipsError | None, ...]:
        """For each case how the slab tips, or None where it rests."""
        return self._found.tips

    @cached_property
    def _faces(self) -> tuple[FloatArray, FloatArray]:
        """Averaged stress of the bottom and of the top around every node, MPa, (n, k) each."""
        plate = self.rested.plate
        return _stress.averaged_stress(
            plate.model,
            plate.model.averaging(plate.thickness_mm),
            self._found.u,
            plate.thickness_mm,
        )

    def worst_stresses(self) -> list[Stress]:
        """Worst averaged stress of each case; nothing where the slab tips."""
        return [self._worst(k) for k in range(len(self.tips))]

    def _worst(self, case: int) -> Stress:
        bottom, top = (face[:, case] for face in self._faces)
        low, high = int(np.argmax(bottom)), int(np.argmax(top))
        face, at = ("bottom", low) if bottom[low] >= top[high] else ("top", high)
        x, y = self.rested.plate.model.mesh.nodes[at].tolist()
        return Stress(max(bottom[low], top[high]), x_mm=x, y_mm=y, face=face)

    def stress_field(self) -> tuple[FloatArray, FloatArray]:
        """Places (n, 2), and the greater averaged stress of both faces there, MPa, (n, k)."""
        bottom, top = self._faces
        return self.rested.plate.model.mesh.nodes, np.maximum(bottom, top)

    def sags_mm(self) -> FloatArray:
        """Largest downward deflection of any node in each case, mm, shape (k,)."""
        return np.asarray(self._found.u[0::3].max(axis=0) / self.rested.plate.rigidity_nmm)

    def reactions_n(self) -> FloatArray:
        """Whole force of each support in each case, N, up positive, shape (supports, k)."""
        stations = self.rested.footing.stations
        total = np.zeros((self.rested.support_count, len(self.tips)))
        forces = stations.is_force
        np.add.at(total, stations.owner[forces], self._found.reactions[forces])
        return total

    def answer(self, case: int) -> Answer:
        """One case by itself.

        Raises
        ------
        SlabTipsError
            If the slab tips in this case.
        """
        tip = self.tips[case]
        if tip is not None:
            raise tip
        return Answer(self, case)


class Answer:
    """One case: deflection down positive, sagging moments positive, reactions up positive."""

    def __init__(self, cases: Cases, case: int) -> None:
        self._cases = cases
        self._case = case
        self._u = cases._found.u[:, case]  # noqa: SLF001 - one object in two classes
        self._plate = cases.rested.plate

    def _located(self, x: float, y: float) -> tuple[int, FloatArray]:
        triangle, share, moved = self._plate.model.mesh.nearest(np.array([[x, y]]))
        if moved[0] > REACH_MM:
            raise OffTheSlabError("place", (x, y))
        return int(triangle[0]), share

    def deflection_at(self, x: float, y: float) -> float:
        """Deflection at a place, mm, down positive."""
        triangle, share = self._located(x, y)
        mesh = self._plate.model.mesh
        row = deflection_row(mesh.nodes[mesh.triangles[[triangle]]], share)
        unknowns = self._plate.model.unknowns[triangle]
        return float(row[0] @ self._u[unknowns]) / self._plate.rigidity_nmm

    @cached_property
    def _corner(self) -> FloatArray:
        return _stress.corner_moments(self._plate.model, self._u[:, None])[..., 0]

    def moments_at(self, x: float, y: float) -> tuple[float, float, float]:
        """Moments ``(mx, my, mxy)`` at a place, N·mm/mm; ``mx`` bends the slab along x."""
        triangle, share = self._located(x, y)
        return _recovery.moments_at(self._plate.model, self._corner, triangle, share[0])

    def principal_at(self, x: float, y: float) -> tuple[float, float]:
        """Larger and smaller principal moment at a place, N·mm/mm."""
        mx, my, mxy = self.moments_at(x, y)
        middle, reach = 0.5 * (mx + my), float(np.hypot(0.5 * (mx - my), mxy))
        return middle + reach, middle - reach

    def worst_stress(self) -> Stress:
        """Worst tensile stress averaged over half the thickness (at least 15 mm), MPa."""
        return self._cases._worst(self._case)  # noqa: SLF001 - one object in two classes

    @property
    def reactions(self) -> tuple[float, ...]:
        """Whole force of each support, N, up positive, in the order the supports were given."""
        return tuple(self._cases.reactions_n()[:, self._case].tolist())

    @property
    def contacts(self) -> FloatArray:
        """Places and forces of every station, rows ``(x, y, newtons)``, shape (k, 3)."""
        stations = self._cases.rested.footing.stations
        forces = stations.is_force
        return np.column_stack(
            [stations.places[forces], self._cases._found.reactions[forces, self._case]]  # noqa: SLF001
        )
