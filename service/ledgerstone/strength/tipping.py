"""Tipping by statics: where 0.9 of a slab's weight does not hold against 1.5 of a person's."""

from __future__ import annotations

from collections.abc import Sequence

from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape

STEADYING, UPSETTING = 0.9, 1.5  # EN 1990 table A1.2(A), equilibrium
OUTSIDE_MM = 1e-6


def weight_at(slab: Slab, shape: Shape, n_per_mm3: float) -> tuple[float, XY]:
    """Weight of a slab, N, and the place of its resultant; reliefs are thinner."""
    whole = shape.net.area * slab.thickness.mm
    middle = shape.net.centroid
    x, y = whole * middle.x, whole * middle.y
    for relief, area in zip(slab.reliefs, shape.reliefs, strict=True):
        off = plane.intersection(area, shape.net)
        if off.is_empty:
            continue
        gone = off.area * min(relief.depth.mm, 0.8 * slab.thickness.mm)
        whole, x, y = whole - gone, x - gone * off.centroid.x, y - gone * off.centroid.y
    return whole * n_per_mm3, (x / whole, y / whole)


def tipping_places(
    slab: Slab,
    shape: Shape,
    rests: BaseGeometry,
    n_per_mm3: float,
    people: Sequence[tuple[XY, float]],
) -> tuple[XY, ...]:
    """Places where a person makes a slab tip off its rests.

    It tips where the resultant of both lies outside the hull of the rests.

    Parameters
    ----------
    rests
        The hull of what carries the slab, plane mm.
    people
        Each one's place and load, N.

    Source
    ------
    EN 1990 table A1.2(A): 0.9 of what steadies against 1.5 of what upsets.
    """
    weight, (gx, gy) = weight_at(slab, shape, n_per_mm3)
    steady = STEADYING * weight
    tips: list[XY] = []
    for (x, y), newtons in people:
        upset = UPSETTING * newtons
        whole = steady + upset
        at = Point((steady * gx + upset * x) / whole, (steady * gy + upset * y) / whole)
        if rests.distance(at) > OUTSIDE_MM:
            tips.append((x, y))
    return tuple(tips)
