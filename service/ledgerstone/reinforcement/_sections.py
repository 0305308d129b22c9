"""What the steel of a slab carries across a crack, section by section."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import shapely
from shapely.geometry import LineString

from ledgerstone import plane
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.reinforcement._bars import BarStock, PlacedBar
from ledgerstone.reinforcement._mesh import mesh_of
from ledgerstone.shape import Shape
from ledgerstone.steel_rules import least_thickness_mm
from ledgerstone.strength.cracked import (
    BarMaterial,
    SteelLayer,
    cracked_moment_nmm_per_mm,
    round_mm2,
)
from ledgerstone.workshop.records import Workshop

OPENING_MM = 100.0  # sections are looked at beside openings larger than this
FAR_MM = 1e5


@dataclass(frozen=True, slots=True)
class CrossSection:
    """One section through concrete: across bars that run along x (axis 0) or y (axis 1).

    ``at_mm`` is its place along the bars, ``low_mm`` and ``high_mm`` where the concrete ends.
    """

    axis: int
    at_mm: float
    low_mm: float
    high_mm: float

    @property
    def width_mm(self) -> float:
        """Its width, mm."""
        return self.high_mm - self.low_mm

    def bars_mm2(self, bars: Sequence[PlacedBar], stock: BarStock) -> float:
        """Area of the bars that cross it, each as far as its nearer end anchors it, mm².

        Source
        ------
        EN 1992-1-1 8.4.3: strength grows in proportion to the length that anchors it.
        """
        return sum(self._anchored(bar, stock) * round_mm2(bar.diameter_mm) for bar in bars)

    def _anchored(self, bar: PlacedBar, stock: BarStock) -> float:
        (a0, b0), (a1, b1) = (
            (xy[self.axis], xy[1 - self.axis]) for xy in (bar.start_mm, bar.end_mm)
        )
        level = 0.5 * (b0 + b1)
        if abs(b1 - b0) > 1.0 or not self.low_mm <= level <= self.high_mm:
            return 0.0
        beyond = min(self.at_mm - min(a0, a1), max(a0, a1) - self.at_mm)
        return min(max(beyond / stock.anchorage_mm, 0.0), 1.0)


def cuts_of(
    shape: Shape, axis: int, governing_mm: XY, narrowest_mm: float
) -> tuple[CrossSection, ...]:
    """The sections that bars one way must cross: the governing one, and beside each opening."""
    beside_openings = [
        opening.polygon.centroid.coords[0][axis]
        for opening in shape.openings
        if opening.longer_mm > OPENING_MM and not opening.polygon.is_empty
    ]
    found = [cut for place in beside_openings for cut in _cuts_at(shape, axis, place)]
    beside = governing_mm[1 - axis]
    here = sorted(
        _cuts_at(shape, axis, governing_mm[axis]),
        key=lambda cut: max(cut.low_mm - beside, beside - cut.high_mm, 0.0),
    )
    return tuple(cut for cut in (*here[:1], *found) if cut.width_mm >= narrowest_mm)


def _cuts_at(shape: Shape, axis: int, place: float) -> Iterator[CrossSection]:
    ends = [(place, -FAR_MM), (place, FAR_MM)]
    line = LineString(ends if axis == 0 else [(y, x) for x, y in ends])
    for part in shapely.get_parts(plane.intersection(line, shape.net)):
        reach = [xy[1 - axis] for xy in part.coords]
        if reach:  # a line beside the slab meets nothing of it
            yield CrossSection(axis, place, min(reach), max(reach))


@dataclass(frozen=True, slots=True)
class ReinforcedSection:
    """A slab's thickness with its bars and mesh; without mesh, the spacing of wires is infinite."""

    thickness_mm: float
    wire_mm: float
    pitch_mm: float
    bar_mm: float | None
    material: BarMaterial
    fck_mpa: float
    gamma_c: float

    @classmethod
    def of(cls, slab: Slab, shape: Shape, workshop: Workshop) -> ReinforcedSection:
        """Take a slab at its thinnest, with its mesh where it has room for one."""
        steel = workshop.steel
        meshes, _ = mesh_of(slab, shape, workshop, steel.cover_mm)
        return cls(
            least_thickness_mm(slab),
            steel.mesh_wire_mm,
            steel.mesh_pitch_mm if meshes else math.inf,
            steel.bar_mm,
            BarMaterial.of(steel),
            workshop.recipe.fck_mpa,
            workshop.concrete.partial_factor,
        )

    def limit_mpa(self, bars_mm2_per_mm: float, *, crossing: bool) -> float:
        """Stress of the uncracked section, MPa, under the moment that mesh and bars carry.

        The steel is in mid-depth and serves both faces: the smaller of the two effective depths is
        taken. A bar is on top of a wire or, where bars cross, of a bar.

        Source
        ------
        ``cracked_moment_nmm_per_mm`` (EN 1992-1-1 6.1).
        """
        middle = 0.5 * self.thickness_mm
        wires = SteelLayer(round_mm2(self.wire_mm) / self.pitch_mm, middle - 0.5 * self.wire_mm)
        lies_on = self.bar_mm if crossing and self.bar_mm is not None else self.wire_mm
        bars = SteelLayer(bars_mm2_per_mm, middle - 0.5 * lies_on)
        moment = cracked_moment_nmm_per_mm(
            [wires, bars], self.material, fck_mpa=self.fck_mpa, gamma_c=self.gamma_c
        )
        return 6.0 * moment / self.thickness_mm**2

    def widest_spacing_mm(
        self, wanted_mpa: float, closest_mm: float, *, crossing: bool
    ) -> float | None:
        """Widest spacing of bars that carries a stress; None if the closest does not.

        Source
        ------
        ``limit_mpa``, by bisection.
        """
        if self.bar_mm is None:
            return None
        area = round_mm2(self.bar_mm)
        if self.limit_mpa(area / closest_mm, crossing=crossing) < wanted_mpa:
            return None
        low, high = 0.0, area / closest_mm
        for _ in range(30):
            half = 0.5 * (low + high)
            enough = self.limit_mpa(half, crossing=crossing) >= wanted_mpa
            low, high = (low, half) if enough else (half, high)
        return math.inf if high <= 0.0 else area / high
