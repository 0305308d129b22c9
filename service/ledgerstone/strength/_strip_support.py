"""A strip that a slab spans from, or hangs over: an end's rest or a ledge."""

from __future__ import annotations

import numpy as np
import shapely
from shapely import affinity
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.strength._supports import AreaSupport, LineSupport

# A pad, ledge or bearer of timber 25 mm deep, across the grain: 370 MPa (EN 338, C24, mean; from
# memory). On a rigid one, the stress of a slab turning about its corner is singular: it grows
# without bound as the mesh is refined.
BEDDING_N_PER_MM3 = 370.0 / 25.0
NARROWEST_CORE_MM = 10.0  # what of a strip presses is taken as a line where it is narrower


def strip_of(line: LineString, depth_mm: float) -> Polygon:
    """Return the strip about its middle line, plane mm."""
    return plane.buffer(line, depth_mm / 2, cap_style="flat")


def strip_support(
    line: LineString, depth_mm: float, thickness_mm: float, slab: BaseGeometry
) -> AreaSupport | LineSupport:
    """Support by a strip that presses no nearer to its edges than the effective span ends.

    The span ends half of the strip's depth beyond its face, or half of the slab's thickness where
    that is less; so does that of an overhang. Of a strip that reaches past the slab, the depth is
    that of its part beneath it.

    Parameters
    ----------
    line
        The strip's middle, mm.
    slab
        The concrete in plan, mm.

    Source
    ------
    EN 1992-1-1 5.3.2.2(1), figure 5.4 (a) and (e): ``l_eff = l_n + a_1 + a_2``,
    ``a_i = min(h / 2, t / 2)``.
    """
    line, depth_mm = _under(slab, line, depth_mm)
    core_mm = depth_mm - min(thickness_mm, depth_mm)
    if core_mm < NARROWEST_CORE_MM:
        if plane.intersection(line, slab).length > 0.0:
            points = [(float(x), float(y)) for x, y in line.coords]
            return LineSupport(points, crushes_n_per_mm2=BEDDING_N_PER_MM3 * depth_mm)
    elif (core := strip_of(line, core_mm)).intersects(slab):
        return AreaSupport(core, crushes_n_per_mm3=BEDDING_N_PER_MM3 * depth_mm / core_mm)
    return AreaSupport(strip_of(line, depth_mm), crushes_n_per_mm3=BEDDING_N_PER_MM3)


def _under(slab: BaseGeometry, line: LineString, depth_mm: float) -> tuple[LineString, float]:
    """Return the middle line and the depth of what of a straight strip is under the slab, mm."""
    beneath = shapely.get_coordinates(plane.intersection(strip_of(line, depth_mm), slab))
    if not len(beneath):
        return line, depth_mm
    start, end = np.array(line.coords[0]), np.array(line.coords[-1])
    x, y = (end - start) / line.length
    across = np.array([-y, x])
    low, high = np.quantile((beneath - start) @ across, (0.0, 1.0)).tolist()
    return affinity.translate(line, *(0.5 * (low + high) * across)), high - low
