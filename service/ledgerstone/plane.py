"""Overlay and offset of plane geometry: the one module that calls GEOS for them.

GEOS refuses an invalid or nearly degenerate geometry with a ``TopologyException`` (JTS developer
guide, "Robustness"). So what goes in is tried as it is, and where it is refused it is made valid
and snapped to a grid that is far below any tolerance of casting, and tried again.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any, Final

import shapely
from shapely.errors import GEOSException
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

__all__ = ["GRID_MM", "buffer", "difference", "intersection", "polygons_in", "sound", "union"]

GRID_MM: Final = 1e-6
_COARSE_MM: Final = 1e-3  # the second grid: a sixtieth of the chords' own error


def difference(
    geometry: BaseGeometry, other: BaseGeometry, *, grid_mm: float | None = None
) -> BaseGeometry:
    """Return the difference of two geometries, snapped to a grid if one is given."""
    return _tried(shapely.difference, geometry, other, grid_mm)


def intersection(geometry: BaseGeometry, other: BaseGeometry) -> BaseGeometry:
    """Return what two geometries have in common."""
    return _tried(shapely.intersection, geometry, other)


def union(parts: Iterable[BaseGeometry], *, grid_mm: float | None = None) -> BaseGeometry:
    """Return the union of geometries, snapped to a grid if one is given."""
    every = list(parts)
    try:
        return shapely.union_all(every, grid_size=grid_mm)
    except GEOSException:
        return shapely.union_all([sound(part) for part in every], grid_size=_COARSE_MM)


def buffer(shape: BaseGeometry, by_mm: float, **style: Any) -> Polygon:
    """Return a geometry offset outwards by a distance, or inwards if it is negative.

    One polygon, or several where a shape that is drawn in comes apart: typed as in shapely's stubs.
    """
    try:
        made: Polygon = shapely.buffer(shape, by_mm, **style)
    except GEOSException:
        made = shapely.buffer(sound(shape, _COARSE_MM), by_mm, **style)
    return made


def sound(shape: BaseGeometry, grid_mm: float = GRID_MM) -> BaseGeometry:
    """Return a geometry made valid and snapped to a grid: the nearest that GEOS takes."""
    return shapely.set_precision(shapely.make_valid(shape), grid_mm)


def polygons_in(shape: BaseGeometry) -> list[Polygon]:
    """Return the polygons of a geometry that have an area, whatever else it holds."""
    return [
        part
        for part in shapely.get_parts(shape)
        if isinstance(part, Polygon) and not part.is_empty and part.area > 0.0
    ]


def _tried(
    operation: Callable[..., BaseGeometry],
    geometry: BaseGeometry,
    other: BaseGeometry,
    grid_mm: float | None = None,
) -> BaseGeometry:
    try:
        met = operation(geometry, other, grid_size=grid_mm)
    except GEOSException:
        met = operation(sound(geometry), sound(other), grid_size=_COARSE_MM)
    return met
