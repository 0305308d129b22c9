"""Results of a plate's cases: sag, moments, stress and reactions."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import cached_property
from typing import Protocol, Self

import numpy as np

from ledgerstone.arrays import BoolArray, FloatArray
from ledgerstone.errors import OffTheSlabError, SlabTipsError
from ledgerstone.strength import _cut, _recovery, _stress
from ledgerstone.strength._element import deflection_row
from ledgerstone.strength._influence import Peak, stress_columns
from ledgerstone.strength._loads import PlateLoad
from ledgerstone.strength._model import Model
from ledgerstone.strength._rested import Footing, Settled
from ledgerstone.strength._supports import REACH_MM


class SolvedPlate(Protocol):
    """What cases read of a plate, which makes them."""

    model: Model
    thickness_mm: float

    @property
    def rigidity_nmm(self) -> float:
        """``D = E h³ / 12 (1 - nu²)``, N·mm.

        Source
        ------
        Timoshenko and Woinowsky-Krieger, *Theory of Plates and Shells*, (3), from memory.
        """


class OnRests(Protocol):
    """What cases read of a plate on its rests."""

    @property
    def plate(self) -> SolvedPlate:
        """The plate."""

    @property
    def footing(self) -> Footing:
        """The stations that carry it."""

    @property
    def support_count(self) -> int:
        """How many supports were given."""


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

    def __new__(cls, mpa: float, *, x_mm: float, y_mm: float, face: str) -> Self:
        """Stress of ``mpa`` at a place on a face."""
        made = super().__new__(cls, mpa)
        made.x_mm, made.y_mm, made.face = x_mm, y_mm, face
        return made


class Cases:
    """Cases of one slab on one set of rests; see ``Rested.cases``."""

    def __init__(
        self, rested: OnRests, loads: Sequence[Sequence[PlateLoad]], found: Settled
    ) -> None:
        self.rested = rested
        self.loads = loads
        self._found = found

    @property
    def tips(self) -> tuple[SlabTipsError | None, ...]:
        """For each case how the slab tips; None if it rests."""
        return self._found.tips

    @cached_property
    def components(self) -> FloatArray:
        """Averaged stresses (x, y, xy) of the bottom around every node, MPa, shape (3, n, k).

        Source
        ------
        methods §1.4: averaged within half the thickness, at least 15 mm.
        """
        plate = self.rested.plate
        return _stress.averaged_components(plate.model, self._found.u, plate.thickness_mm)

    @cached_property
    def faces(self) -> tuple[FloatArray, FloatArray]:
        """Averaged tension of bottom and top around every node, MPa, shape (n, k) each.

        Source
        ------
        As ``principal_stress``.
        """
        return _stress.principal_stress(self.components)

    def worst_stresses(self) -> list[Stress]:
        """Worst averaged stress of each case, MPa; 0 if the slab tips."""
        return [self._worst(k) for k in range(len(self.tips))]

    def _worst(self, case: int) -> Stress:
        bottom, top = (face[:, case] for face in self.faces)
        low, high = int(np.argmax(bottom)), int(np.argmax(top))
        face, at = ("bottom", low) if bottom[low] >= top[high] else ("top", high)
        x, y = self.rested.plate.model.mesh.nodes[at].tolist()
        return Stress(max(bottom[low], top[high]), x_mm=x, y_mm=y, face=face)

    def stress_columns(self, peaks: Sequence[Peak]) -> FloatArray:
        """Columns ``s`` with ``s'u`` the stress of each peak, MPa, shape (3 n, k).

        Source
        ------
        As ``_influence.stress_columns``.
        """
        plate = self.rested.plate
        return stress_columns(plate.model, plate.thickness_mm, self._found.u, peaks)

    def touching(self, peaks: Sequence[Peak]) -> BoolArray:
        """Which stations touch in each peak's case, shape (stations, k).

        Source
        ------
        A rest pushes where it touches (methods §1.3).
        """
        return np.asarray(self._found.reactions[:, [peak.case for peak in peaks]] != 0.0)

    def stress_field(self) -> tuple[FloatArray, FloatArray]:
        """Places (n, 2), and the greater averaged stress of both faces there, MPa, (n, k).

        Source
        ------
        As ``averaged_rows``; methods §1.4.
        """
        bottom, top = self.faces
        return self.rested.plate.model.mesh.nodes, np.maximum(bottom, top)

    @property
    def deflections_mm(self) -> FloatArray:
        """Downward deflection of every node in each case, mm, shape (n, k).

        Source
        ------
        The plate is linear: what is found for unit ``D``, over ``D``.
        """
        return np.asarray(self._found.u[0::3] / self.rested.plate.rigidity_nmm)

    def sags_mm(self) -> FloatArray:
        """Largest downward deflection of any node in each case, mm, shape (k,).

        Source
        ------
        Arithmetic.
        """
        return np.asarray(self.deflections_mm.max(axis=0))

    def reactions_n(self) -> FloatArray:
        """Whole force of each support in each case, N, up positive, shape (supports, k).

        Source
        ------
        Statics: the sum of a support's stations.
        """
        stations = self.rested.footing.stations
        total = np.zeros((self.rested.support_count, len(self.tips)))
        forces = stations.is_force
        np.add.at(total, stations.owner[forces], self._found.reactions[forces])
        return total

    def answer(self, case: int) -> CaseResult:
        """One case by itself.

        Raises
        ------
        SlabTipsError
            If the slab tips in this case.
        """
        tip = self.tips[case]
        if tip is not None:
            raise tip
        return CaseResult(self, case)


class CaseResult:
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
        """Deflection at a place, in mm as the place is; down positive.

        Raises
        ------
        OffTheSlabError
            If the place is not on the slab.

        Source
        ------
        As ``deflection_row``.
        """
        triangle, share = self._located(x, y)
        mesh = self._plate.model.mesh
        row = deflection_row(mesh.nodes[mesh.triangles[[triangle]]], share)
        unknowns = self._plate.model.unknowns[triangle]
        return float(row[0] @ self._u[unknowns]) / self._plate.rigidity_nmm

    @cached_property
    def _corner(self) -> FloatArray:
        return _stress.corner_moments(self._plate.model, self._u[:, None])[..., 0]

    def moments_at(self, x: float, y: float) -> tuple[float, float, float]:
        """Moments ``(mx, my, mxy)`` at a place in mm, N·mm/mm; ``mx`` bends the slab along x.

        Sagging is positive.

        Raises
        ------
        OffTheSlabError
            If the place is not on the slab.

        Source
        ------
        As ``_recovery.moments_at``.
        """
        triangle, share = self._located(x, y)
        return _recovery.moments_at(self._plate.model, self._corner, triangle, share[0])

    def moment_across(self, start: tuple[float, float], end: tuple[float, float]) -> float:
        """Mean moment across a straight cut between two edges of the concrete, N·mm/mm.

        It bends the slab square to the cut, sagging positive; the cut's ends are in mm.

        Source
        ------
        As ``_cut.moment_across``.
        """
        plate, loads = self._plate, self._cases.loads[self._case]
        found = _cut.moment_across(plate.model, self._u, loads, plate.thickness_mm, (start, end))
        return found / math.dist(start, end)

    def worst_stress(self) -> Stress:
        """Worst tensile stress averaged over half the thickness (at least 15 mm), MPa."""
        return self._cases._worst(self._case)  # noqa: SLF001 - one object in two classes

    @property
    def reactions(self) -> tuple[float, ...]:
        """Whole force of each support, N, up positive, in the order the supports were given.

        Source
        ------
        As ``Cases.reactions_n``.
        """
        return tuple(self._cases.reactions_n()[:, self._case].tolist())
