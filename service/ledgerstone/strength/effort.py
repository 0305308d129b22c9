"""How much work one slab's strength is, estimated from the order before any of it is done.

A count, never a time: the same slab costs the same on every machine. It depends on what the plate's
cost depends on: unknowns (the slab's size, and where the mesh is finer), stations (what carries the
slab) and openings (a way of handling with a rail across them needs a second plate, without them).
"""

from __future__ import annotations

import math
from typing import Final

from ledgerstone.order import LShape, Outline, Polygon, Rectangle, Round, Slab
from ledgerstone.outline import XY
from ledgerstone.strength._spacing import COARSEST_MM, ELEMENTS_ACROSS, EQUILATERAL, FINEST_STRIP_MM
from ledgerstone.strength._supports import (
    MAX_STATIONS,
    MAX_STATIONS_AREA,
    STATION_SHARE,
)
from ledgerstone.strength.mesh import MAX_NODES
from ledgerstone.strength.slabs import MAX_NODES_KEPT

# One unit is a thirtieth of a second of a quiet machine. The figures were fitted to 180 checks of
# everyday, random and crowded slabs, and are a fifth above the fit: tests/benchmarks/
# effort_benchmark.py prints how what is charged scatters about what it takes.
_PLAIN: Final = 0.6
_MESHED, _HANDLED, _RESTED = 1.2, 0.5, 0.73  # for each thousand nodes
_UNEVEN: Final = 0.4  # added on rests, where openings or reliefs make the mesh finer
_AN_OPENING: Final = 0.43  # added for each thousand nodes
_MADE_AGAIN: Final = 3.15  # for each thousand nodes of plates that the store does not keep both
_A_CORNER: Final = 0.065  # fitted to our own timings (effort_benchmark.py)
_A_STATION: Final = 0.0165  # fitted to our own timings
_NODES_AT_AN_OPENING: Final = 120.0  # fitted to our own meshes
_NODES_AT_A_CORNER: Final = 4.0  # fitted to our own meshes
_ROUNDED: Final = 8  # corners of a rectangle with four rounded ones
_AT_THE_EDGE: Final = 0.8  # nodes for each coarse size of half the edge, fitted to our own meshes
_CORNERS_OF_AN_AREA: Final = 4.0  # stations beside those of its grid
_LEFT: Final = 1.1  # thinned, so much more than an even share: fitted to our own supports
_USUAL_MM: Final = 20.0  # depth of a rest that nobody told
_SURELY_TOO_MANY: Final = 1.3  # the estimate is within so much of the count


def plate_effort(slab: Slab) -> float:
    """Units of work until a slab's plates are meshed and factored, a pure number.

    A slab has one plate for handling and for its rests. With openings a way that braces them needs
    a second one, without them; where both are large, the store of plates does not keep the first,
    and it is made again.

    Source
    ------
    Fitted to our own measurements.
    """
    each = _MESHED + _AN_OPENING * len(slab.cutouts)
    each += _MADE_AGAIN * bool(slab.cutouts and is_large(slab))
    return each * _nodes(slab) / 1000.0 + _A_CORNER * _corners(slab)


def is_large(slab: Slab) -> bool:
    """Return whether two plates of a slab's size have more nodes than the store of plates keeps."""
    return 2 * _nodes(slab) > MAX_NODES_KEPT


def settling_effort(slab: Slab) -> float:
    """Units of work of every case on a slab's plates once they are factored, a pure number.

    Source
    ------
    Fitted to our own measurements.
    """
    stations, each = _stations(slab), _HANDLED
    if stations:
        each += _RESTED + _UNEVEN * bool(slab.cutouts or slab.reliefs)
    return _PLAIN + each * _nodes(slab) / 1000.0 + _A_STATION * stations


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
    """Corners beyond those of a rectangle with four rounded corners."""
    outlines = [slab.outline, *(relief.outline for relief in slab.reliefs)]
    around = sum(len(o.points) if isinstance(o, Polygon) else _ROUNDED for o in outlines)
    return max(0, around - _ROUNDED) + sum(len(cutout.points) for cutout in slab.cutouts)


def _coarse_mm(slab: Slab) -> float:
    width = min(_size_mm(slab.outline))
    return min(max(width / ELEMENTS_ACROSS, FINEST_STRIP_MM / 2), COARSEST_MM)


def _nodes(slab: Slab) -> float:
    return min(MAX_NODES, _wanted_nodes(slab))


def _wanted_nodes(slab: Slab) -> float:
    (length, width), coarse = _size_mm(slab.outline), _coarse_mm(slab)
    even = length * width / (EQUILATERAL * coarse**2) + _AT_THE_EDGE * (length + width) / coarse
    return even + _NODES_AT_AN_OPENING * len(slab.cutouts) + _NODES_AT_A_CORNER * _corners(slab)


def _stations(slab: Slab) -> float:
    rests = slab.rests
    if rests is None:
        return 0.0
    (length, width), step = _size_mm(slab.outline), STATION_SHARE * _coarse_mm(slab)

    def line(mm: float) -> float:
        return min(mm, math.hypot(length, width)) / step + 1.0

    def area(long_mm: float, wide_mm: float) -> float:
        return min(MAX_STATIONS_AREA + _CORNERS_OF_AN_AREA, line(long_mm) * line(wide_mm))

    def unit(mm: float) -> float:
        return 2.0 * line(width) + 2.0 * line(min(mm, length))

    many = {
        "units": sum(unit(base.width.mm) for base in rests.units),
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
    """Stations left after thinning, a pure number; up to 1.3 times the most, the most there are."""
    if stations <= _SURELY_TOO_MANY * MAX_STATIONS:
        return min(MAX_STATIONS, stations)
    return _LEFT * stations / math.ceil(stations / MAX_STATIONS)


def _mm(length: object) -> float:
    return float(getattr(length, "mm", _USUAL_MM))
