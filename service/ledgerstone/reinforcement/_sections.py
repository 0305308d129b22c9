"""What the steel of a slab carries across a crack, section by section."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np
import shapely
from shapely.geometry import LineString
from shapely.geometry.polygon import orient

from ledgerstone import plane
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.reinforcement._bars import OPENING_MM, BarStock, PlacedBar
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

FAR_MM = 1e5
FILLET_MM = 20.0  # corners rounded by less than this are taken as sharp
SQUARE = 0.02  # slope of a face that is square to the bars


@dataclass(frozen=True, slots=True)
class CrossSection:
    """One section through concrete: across bars that run along x (axis 0) or y (axis 1).

    ``at_mm`` is its place along the bars, ``low_mm`` and ``high_mm`` where the concrete ends, and
    ``idle_mm`` how much of that carries nothing along the bars, just before a face where they end.
    """

    axis: int
    at_mm: float
    low_mm: float
    high_mm: float
    idle_mm: float = 0.0

    @property
    def width_mm(self) -> float:
        """Its width that carries, mm.

        Source
        ------
        Arithmetic.
        """
        return self.high_mm - self.low_mm - self.idle_mm

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
    shape: Shape, axis: int, governing_mm: XY, beside_mm: float, anchorage_mm: float
) -> tuple[CrossSection, ...]:
    """The sections that bars one way must cross: the governing one, and beside each opening.

    Parameters
    ----------
    axis
        Of the bars: 0 along x, 1 along y.
    governing_mm
        Where the demand is largest.
    beside_mm, anchorage_mm
        From a face to a bar's end or its middle, and the length that anchors a bar.
    """
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
    faces = list(_inward_faces(shape, axis))
    here = [
        replace(cut, idle_mm=_idle_mm(cut, beside, faces, beside_mm, anchorage_mm))
        for cut in here[:1]
    ]
    return tuple(cut for cut in (*here, *found) if cut.width_mm >= 2.0 * beside_mm)


@dataclass(frozen=True, slots=True)
class _InwardFace:
    """A straight face square to the bars, at one end of which at least the concrete runs on.

    It lies at ``at_mm`` along them and reaches from ``low_mm`` to ``high_mm``; the concrete is
    before it (1) or after it (-1). ``corners_mm`` are its ends that are inward corners.
    """

    at_mm: float
    low_mm: float
    high_mm: float
    side: int
    corners_mm: tuple[float, ...]


def _inward_faces(shape: Shape, axis: int) -> Iterator[_InwardFace]:
    """The faces of an L's notch and of openings at which bars end that run along an axis."""
    for polygon in plane.polygons_in(shape.net):
        for ring in shapely.get_rings(orient(polygon)):
            points = shapely.get_coordinates(ring.simplify(FILLET_MM))[:-1]
            edge = np.roll(points, -1, axis=0) - points
            before = np.roll(edge, 1, axis=0)
            inward = before[:, 0] * edge[:, 1] - before[:, 1] * edge[:, 0] < 0.0
            long = np.hypot(*edge.T) > OPENING_MM
            square = np.abs(edge[:, axis]) <= SQUARE * np.abs(edge[:, 1 - axis])
            for k in np.flatnonzero(long & square & (inward | np.roll(inward, -1))).tolist():
                after = (k + 1) % len(points)
                ends = [(points[j, 1 - axis], inward[j]) for j in (k, after)]
                low, high = sorted(float(end) for end, _ in ends)
                concrete = -edge[k, 1] if axis == 0 else edge[k, 0]  # it lies left of the edge
                yield _InwardFace(
                    float(0.5 * (points[k, axis] + points[after, axis])),
                    low,
                    high,
                    1 if concrete < 0.0 else -1,
                    tuple(float(end) for end, turns in ends if turns),
                )


def _idle_mm(
    cut: CrossSection,
    beside: float,
    faces: Sequence[_InwardFace],
    beside_mm: float,
    anchorage_mm: float,
) -> float:
    """How much of a section's width carries nothing, where bars end at faces close by, mm.

    Parameters
    ----------
    beside
        Where along the section the demand is largest, mm.

    Source
    ------
    No moment acts across a free edge. What the concrete before it carries is taken to grow as its
    bars are anchored, and none of it to be idle where the demand itself is so deep behind the
    inward corner: our judgement, no source.
    """
    idle = list[tuple[float, float, float]]()
    for face in faces:
        ahead = (face.at_mm - cut.at_mm) * face.side
        low, high = max(face.low_mm, cut.low_mm), min(face.high_mm, cut.high_mm)
        if ahead >= 0.0 and high > low:
            deep = face.low_mm < beside < face.high_mm
            depth = min(abs(beside - corner) for corner in face.corners_mm) if deep else 0.0
            busy = max(ahead - beside_mm, depth, 0.0) / anchorage_mm
            idle.append((low, high, max(1.0 - busy, 0.0)))
    ends = sorted({end for low, high, _ in idle for end in (low, high)})
    return sum(
        (b - a) * max((share for low, high, share in idle if low <= a and b <= high), default=0.0)
        for a, b in pairwise(ends)
    )


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
