"""How much work one slab's strength is, told from the order before any of it is done.

A count, never a time: the same slab is as much work on every machine. What it hangs on is counted
as the plate counts it: unknowns by the slab's size and what the mesh is finer at, stations by what
carries the slab, and openings, which ask for a second plate with a rail across them.
"""

from __future__ import annotations

import math
from typing import Final

from ledgerstone.order import LShape, Outline, Polygon, Rectangle, Rests, Round, Slab
from ledgerstone.outline import XY
from ledgerstone.strength._spacing import COARSEST_MM, ELEMENTS_ACROSS, FINEST_STRIP_MM
from ledgerstone.strength._supports import (
    MOST_STATIONS,
    MOST_STATIONS_AREA,
    STATION_SHARE,
)
from ledgerstone.strength.mesh import MOST_NODES
from ledgerstone.strength.slabs import MOST_NODES_KEPT

# One unit is the strength of a plain slab, about a thirtieth of a second. The figures were fitted
# to 350 slabs of every kind, from what each took beside a fixed piece of work.
_PLAIN: Final = 0.7
_A_THOUSAND_NODES: Final = 0.8
_UNEVEN: Final = 1.6  # more for each thousand nodes, where openings or reliefs make the mesh finer
_AN_OPENING: Final = 0.1
_A_CORNER, _SEATED_AT_A_CORNER = 0.05, 0.09  # meshed; and tried by people and steel
_MESHED_AGAIN, _LARGE_NODES = 1.8, 1700.0  # a mesh that came out too fine is made anew, coarser
_A_STATION_NODE: Final = 22e-6  # a column of the plate's factor carried through
_CUBED_STATIONS: Final = 0.5e-6  # cases settled one by one, where rests are close together
_NODES_AT_AN_OPENING: Final = 120.0
_NODES_AT_A_CORNER: Final = 4.0
_SURELY_TOO_MANY: Final = 1.3
_UNITS_APART: Final = 6  # so many are never close


def plate_effort(slab: Slab) -> float:
    """Units of work until a slab's plates are meshed and factored.

    With openings it has two, the second with a rail across them; where both are large, the first
    is made once more. Without, it has a second one on its rests, finer where an overhang turns.
    """
    nodes, openings = _nodes(slab), len(slab.cutouts)
    plain = _A_THOUSAND_NODES * nodes / 1000.0
    each = plain + _A_CORNER * _corners(slab)
    if openings or slab.reliefs:
        each += (_UNEVEN + _AN_OPENING * openings) * nodes / 1000.0
        each *= _MESHED_AGAIN if _wanted_nodes(slab) > _LARGE_NODES else 1.0
    if not openings:
        return each * (1.0 if slab.rests is None else 2.0)
    return plain + each * (2.0 if is_large(slab) else 1.0)


def is_large(slab: Slab) -> bool:
    """Whether a slab's two plates are too large to be kept for the next one of its plan."""
    return 2 * _nodes(slab) > MOST_NODES_KEPT


def settling_effort(slab: Slab) -> float:
    """Units of work of all that is tried on a slab's plates once they are there."""
    stations = _stations(slab)
    settled = _A_STATION_NODE * stations * _nodes(slab) + _SEATED_AT_A_CORNER * _corners(slab)
    if _may_crowd(slab.rests):
        settled += _CUBED_STATIONS * stations**3
    return _PLAIN + settled


def _size_mm(outline: Outline) -> XY:
    match outline:
        case Rectangle() | LShape():
            return outline.length.mm, outline.width.mm
        case Round():
            return outline.diameter.mm, outline.diameter.mm
        case Polygon(points=points):
            xs, ys = [p.x.mm for p in points], [p.y.mm for p in points]
            return max(xs) - min(xs), max(ys) - min(ys)


def _corners(slab: Slab) -> int:
    """Corners beyond a rectangle's four, rounded."""
    outlines = [slab.outline, *(relief.outline for relief in slab.reliefs)]
    around = sum(len(o.points) if isinstance(o, Polygon) else 8 for o in outlines)
    return max(0, around - 8) + sum(len(cutout.points) for cutout in slab.cutouts)


def _coarse_mm(slab: Slab) -> float:
    width = min(_size_mm(slab.outline))
    return min(max(width / ELEMENTS_ACROSS, FINEST_STRIP_MM / 2), COARSEST_MM)


def _nodes(slab: Slab) -> float:
    return min(MOST_NODES, _wanted_nodes(slab))


def _wanted_nodes(slab: Slab) -> float:
    (length, width), coarse = _size_mm(slab.outline), _coarse_mm(slab)
    even = length * width / (0.866 * coarse**2) + 0.8 * (length + width) / coarse
    return even + _NODES_AT_AN_OPENING * len(slab.cutouts) + _NODES_AT_A_CORNER * _corners(slab)


def _stations(slab: Slab) -> float:
    rests = slab.rests
    if rests is None:
        return 0.0
    (length, width), step = _size_mm(slab.outline), STATION_SHARE * _coarse_mm(slab)

    def line(mm: float) -> float:
        return min(mm, math.hypot(length, width)) / step + 1.0

    def area(long_mm: float, wide_mm: float) -> float:
        return min(MOST_STATIONS_AREA + 4.0, line(long_mm) * line(wide_mm))

    def unit(mm: float) -> float:
        return 2.0 * line(width) + 2.0 * line(min(mm, length))

    many = {
        "units": sum(unit(one.width.mm) for one in rests.units),
        "frame": 2.0 * (line(length) + line(width)) + 2.0 * _corners(slab),
        "ends": 2.0 * area(_mm(rests.depth), width),
        "legs": len(rests.at) * area(_mm(rests.pad), _mm(rests.pad)),
        "ledges": sum(
            area(math.dist((e.start.x.mm, e.start.y.mm), (e.end.x.mm, e.end.y.mm)), e.depth.mm)
            for e in rests.lines
        ),
        "pedestal": area(_mm(rests.plate), _mm(rests.plate)),
    }
    return _thinned(many.get(rests.kind, 0.0))


def _thinned(stations: float) -> float:
    """Stations that are left of too many; of a few too many, in doubt, as many as may be."""
    if stations <= _SURELY_TOO_MANY * MOST_STATIONS:
        return min(MOST_STATIONS, stations)
    return 1.1 * stations / math.ceil(stations / MOST_STATIONS)


def _mm(length: object) -> float:
    return float(getattr(length, "mm", 20.0))


def _may_crowd(rests: Rests | None) -> bool:
    """Whether rests may lie so near together that their cases are settled one by one."""
    return rests is not None and (
        len(rests.units) > _UNITS_APART or len(rests.lines) > 1 or len(rests.at) > 4
    )
