"""Tipping by statics: equilibrium about every edge of the hull of what carries a slab."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.arrays import FloatArray
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength.weight import LEAST_LEFT

# EN 1990 table A1.2(A), equilibrium: what stabilises, own weight and a variable load that overturn.
STABILISING, OVERTURNING, VARIABLE = 0.9, 1.1, 1.5
SAME_NMM = 1e-6  # of the slab's moment: rounding, no overturning


@dataclass(frozen=True, slots=True)
class Equilibrium:
    """Moments about each edge of the hull of the rests.

    Parameters
    ----------
    start
        A point of each edge, shape (k, 2), mm.
    outward
        Unit normals away from the rests, shape (k, 2).
    spare_nmm
        0.9 × the moment of the slab's parts inside each edge, less 1.1 × that of the parts beyond
        it, shape (k,), N·mm.
    middle_mm
        The place of the weight's resultant.
    """

    start: FloatArray
    outward: FloatArray
    spare_nmm: FloatArray
    middle_mm: XY

    @property
    def tips_alone(self) -> bool:
        """Whether the slab's own weight overturns it."""
        return bool((self.spare_nmm < -SAME_NMM * np.abs(self.spare_nmm).max(initial=0.0)).any())

    def tips_under(self, places: FloatArray, newtons: FloatArray) -> FloatArray:
        """Whether a load at each place overturns the slab, shape (p,).

        Parameters
        ----------
        places, newtons
            Where, mm, shape (p, 2), and how much, N, down positive, shape (p,).

        Source
        ------
        EN 1990 6.4.1(1)a and table A1.2(A): 1.5 for what varies.
        """
        if not len(self.start):
            return np.zeros(len(places), dtype=bool)
        away = np.einsum("pki,ki->pk", places[:, None] - self.start, self.outward)
        upset = VARIABLE * newtons[:, None] * away
        return np.asarray((upset > self.spare_nmm + SAME_NMM).any(axis=1))


def equilibrium_of(slab: Slab, shape: Shape, rests: BaseGeometry, n_per_mm3: float) -> Equilibrium:
    """Equilibrium of a loose slab on the hull of its rests.

    Parameters
    ----------
    rests
        The hull of what carries the slab, plane mm; one without an area has no edges to turn about
        here, and is left to the contact problem.
    n_per_mm3
        Weight of a unit of concrete.

    Source
    ------
    EN 1990 6.4.1(1)a and table A1.2(A): by parts of the slab on each side of the tipping line.
    """
    _, middle = weight_at(slab, shape, n_per_mm3)
    if not isinstance(rests, Polygon) or rests.is_empty:
        none = np.zeros((0, 2))
        return Equilibrium(none, none, np.zeros(0), middle)
    corners = np.asarray(shapely.orient_polygons(rests).exterior.coords)[:, :2]
    along = np.diff(corners, axis=0)
    outward = np.column_stack([along[:, 1], -along[:, 0]])
    outward /= np.linalg.norm(outward, axis=1)[:, None]
    start, spare = corners[:-1], np.zeros(len(along))
    for area, n_per_mm2 in _parts(slab, shape, n_per_mm3):
        for k, (at, out) in enumerate(zip(start, outward, strict=True)):
            beyond = _moment(plane.intersection(area, _half_plane(at, out, area)), at, out)
            inside = beyond - _moment(area, at, out)
            spare[k] += n_per_mm2 * (STABILISING * inside - OVERTURNING * beyond)
    return Equilibrium(start, outward, spare, middle)


def weight_at(slab: Slab, shape: Shape, n_per_mm3: float) -> tuple[float, XY]:
    """Weight of a slab, N, and the place of its resultant, mm; reliefs are thinner.

    Source
    ------
    Statics: first moments of area.
    """
    whole = x = y = 0.0
    for area, n_per_mm2 in _parts(slab, shape, n_per_mm3):
        newtons, middle = n_per_mm2 * area.area, area.centroid
        whole, x, y = whole + newtons, x + newtons * middle.x, y + newtons * middle.y
    return whole, (x / whole, y / whole)


def _parts(slab: Slab, shape: Shape, n_per_mm3: float) -> list[tuple[BaseGeometry, float]]:
    """The slab's concrete, and what its reliefs take away as areas of negative weight."""
    thickness = slab.thickness.mm
    parts: list[tuple[BaseGeometry, float]] = [(shape.net, n_per_mm3 * thickness)]
    for relief, area in zip(slab.reliefs, shape.reliefs, strict=True):
        off = plane.intersection(area, shape.net)
        if not off.is_empty:
            parts.append((off, -n_per_mm3 * min(relief.depth.mm, (1.0 - LEAST_LEFT) * thickness)))
    return parts


def _moment(area: BaseGeometry, at: FloatArray, outward: FloatArray) -> float:
    """First moment of an area about a line, mm³, positive beyond it."""
    if area.is_empty:
        return 0.0
    middle = np.array([area.centroid.x, area.centroid.y])
    return float(area.area * ((middle - at) @ outward))


def _half_plane(at: FloatArray, outward: FloatArray, about: BaseGeometry) -> Polygon:
    """As much of the half plane beyond a line as an area may reach into."""
    x0, y0, x1, y1 = about.bounds
    reach = 2.0 * (x1 - x0 + y1 - y0) + float(np.abs(at).max()) + 1.0
    along = np.array([-outward[1], outward[0]]) * reach
    far = outward * reach
    return Polygon([at - along, at + along, at + along + far, at - along + far])
