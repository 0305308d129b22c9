"""What carries a slab, cut into stations: places where the slab is held or pushed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.arrays import FloatArray, IntArray
from ledgerstone.errors import OffTheSlabError
from ledgerstone.strength._beams import Beam
from ledgerstone.strength._element import deflection_row
from ledgerstone.strength._stations_along import filled, spaced
from ledgerstone.strength.mesh import Mesh

STATION_SHARE = 1.33  # stations of push-only rests, over the coarse element size
AREA_SHARE = 0.67  # stations of an area, over the coarse element size
CLOSEST_SHARE = 0.6  # stations nearer than this share of a step are one
MAX_STATIONS_AREA = 120  # of one rest, which bounds the work: a wider one has coarser stations
FEWEST_ACROSS = 3  # a pad presses in its middle too
# Of all rests together, where they only push: a slab on rests of usual sizes has 30 to 250. What is
# settled costs their cube, so a frame along 200 sides, or ledges all over, are taken more sparsely.
MAX_STATIONS = 320
SAME_MM = 1e-6  # rounding
NEAREST_HELD = 0.02  # of the coarse size: two stations that hold may be as near
CORNERS_MM = 5.0  # an area's outline is simplified by so much before its corners are stations
APART = 0.45  # of the step of an area's grid: a corner nearer than that takes a place of it
REACH_MM = 6.0  # a rest this little outside the meshed outline still meets it


@dataclass(frozen=True, slots=True)
class LineSupport:
    """Support along a line of straight pieces; it pushes only, unless it holds down.

    Parameters
    ----------
    points
        Corners of the line, mm.
    clamped
        Whether the slab can neither lift nor turn there.
    holds_down
        Whether the slab cannot lift there.
    beam
        What carries along the line, from its first point to its last, where that bends.
    crushes_n_per_mm2
        How the line gives, N for each mm of it and mm of sinking; None if it is stiff.
    """

    points: Sequence[tuple[float, float]]
    clamped: bool = False
    holds_down: bool = False
    beam: Beam | None = None
    crushes_n_per_mm2: float | None = None

    def __post_init__(self) -> None:
        object.__setattr__(self, "points", tuple((float(x), float(y)) for x, y in self.points))


@dataclass(frozen=True, slots=True)
class PointSupport:
    """Support at a point, mm; it pushes only, unless it holds down."""

    x: float
    y: float
    holds_down: bool = False


@dataclass(frozen=True, slots=True)
class AreaSupport:
    """Support over an area, mm; it pushes only, unless it holds down.

    Parameters
    ----------
    crushes_n_per_mm3
        How it gives, N for each mm² of it and mm of sinking; None if it is stiff.
    """

    polygon: Polygon
    holds_down: bool = False
    crushes_n_per_mm3: float | None = None


Support = LineSupport | PointSupport | AreaSupport


@dataclass(frozen=True, slots=True)
class Stations:
    """Places where supports act on the mesh, one row for each reaction.

    Parameters
    ----------
    places
        Where each reaction acts, mm, shape (k, 2).
    owner
        Which support it belongs to, shape (k,).
    pushes_only
        Whether it can only push, shape (k,).
    is_force
        Whether it is a force (a clamp's turning reactions are not), shape (k,).
    triangle, row
        Triangle it acts on and its nine weights there, shapes (k,) and (k, 9).
    """

    places: FloatArray
    owner: IntArray
    pushes_only: NDArray[np.bool_]
    is_force: NDArray[np.bool_]
    triangle: IntArray
    row: FloatArray

    def columns(self, mesh: Mesh, part: slice = slice(None)) -> FloatArray:
        """Unit reactions of all stations or a part, as forces on the unknowns, shape (3 n, k).

        Source
        ------
        methods §1.3: a reaction acts by the element's own cubic, as ``deflection_row``.
        """
        triangle, row = self.triangle[part], self.row[part]
        columns = np.zeros((3 * len(mesh.nodes), len(row)), order="F")
        unknowns = (3 * mesh.triangles[triangle][:, :, None] + np.arange(3)).reshape(-1, 9)
        columns[unknowns, np.arange(len(row))[:, None]] = row
        return columns


def stations_of(supports: Sequence[Support], mesh: Mesh) -> Stations:
    """Stations of all supports, in the order given.

    Raises
    ------
    OffTheSlabError
        If no part of a support meets the slab.
    """
    reach = _reach_of(mesh.polygon)
    wished = _not_too_many([_places(support, mesh, reach) for support in supports], supports)
    places = np.concatenate(wished)
    owner = np.repeat(np.arange(len(wished)), [len(p) for p in wished])
    triangle, share, moved = mesh.nearest(places)
    on = moved <= REACH_MM
    met = np.bincount(owner[on], minlength=len(wished)) > 0
    if not met.all():
        x, y = wished[int(np.argmin(met))][0].tolist()
        raise OffTheSlabError("rest", (x, y))
    places, owner, triangle, share = places[on], owner[on], triangle[on], share[on]
    rows = deflection_row(mesh.nodes[mesh.triangles[triangle]], share)
    clamps = np.array([isinstance(s, LineSupport) and s.clamped for s in supports])
    pushes = ~clamps & ~np.array([s.holds_down for s in supports])
    force = Stations(places, owner, pushes[owner], np.ones(len(owner), dtype=bool), triangle, rows)
    return _with_turning(force, share, clamps[owner])


@lru_cache(maxsize=8)
def _reach_of(slab: Polygon) -> BaseGeometry:
    """A slab and a little round it: a rest there still meets it."""
    reach = plane.buffer(slab, REACH_MM / 2.0, join_style="mitre")
    shapely.prepare(reach)
    return reach


def _not_too_many(wished: list[FloatArray], supports: Sequence[Support]) -> list[FloatArray]:
    """Every n-th place of rests that only push; each keeps one, or its first and last."""
    held = [s.holds_down or (isinstance(s, LineSupport) and s.clamped) for s in supports]
    pushing = sum(len(w) for w, is_held in zip(wished, held, strict=True) if not is_held)
    stride = -(-pushing // MAX_STATIONS)
    if stride <= 1:
        return wished
    return [
        places if is_held else places[_every(stride, len(places))]
        for places, is_held in zip(wished, held, strict=True)
    ]


def _every(stride: int, count: int) -> IntArray:
    if count <= stride:
        return np.array([count // 2])
    return np.unique(np.append(np.arange(0, count - 1, stride), count - 1))


def _with_turning(force: Stations, share: FloatArray, clamped: NDArray[np.bool_]) -> Stations:
    """Stations and, for those that are clamped, their two turning reactions after them."""
    if not clamped.any():
        return force
    at = np.tile(np.flatnonzero(clamped), 2)
    turning = np.concatenate([_slope_rows(share[clamped], 1), _slope_rows(share[clamped], 2)])
    return Stations(
        places=np.concatenate([force.places, force.places[at]]),
        owner=np.concatenate([force.owner, force.owner[at]]),
        pushes_only=np.concatenate([force.pushes_only, np.zeros(len(at), dtype=bool)]),
        is_force=np.concatenate([force.is_force, np.zeros(len(at), dtype=bool)]),
        triangle=np.concatenate([force.triangle, force.triangle[at]]),
        row=np.concatenate([force.row, turning]),
    )


def _slope_rows(share: FloatArray, unknown: int) -> FloatArray:
    rows = np.zeros((len(share), 9))
    rows[:, unknown::3] = share
    return rows


def _places(support: Support, mesh: Mesh, reach: BaseGeometry) -> FloatArray:
    match support:
        case PointSupport(x=x, y=y):
            return np.array([[x, y]])
        case LineSupport():
            return _line_places(support, mesh, reach)
        case AreaSupport(polygon=polygon):
            return _area_places(polygon, mesh)


def _line_places(support: LineSupport, mesh: Mesh, reach: BaseGeometry) -> FloatArray:
    """Nodes on the line where it has them, filled up where it has none.

    ``reach`` is the slab and a little round it, made once for all supports.
    """
    line = LineString(support.points) if len(support.points) > 1 else None
    if line is None or line.length < 1.0:
        return np.array(support.points[:1])
    met = line if reach.contains(line) else plane.intersection(line, reach)
    pieces = [
        p for p in getattr(met, "geoms", [met]) if p.geom_type == "LineString" and not p.is_empty
    ]
    if not pieces:
        return np.array(support.points[:1])
    bilateral = support.clamped or support.holds_down
    step = mesh.coarse_mm * (1.0 if bilateral else STATION_SHARE)
    nearest = NEAREST_HELD if bilateral else CLOSEST_SHARE
    return np.concatenate([_along(piece, mesh, step, nearest * step) for piece in pieces])


def _along(line: LineString, mesh: Mesh, step: float, closest: float) -> FloatArray:
    corners = np.asarray(line.coords)[:, :2]
    kept: list[FloatArray] = []
    for a, b in pairwise(corners):
        length = float(np.hypot(*(b - a)))
        along = np.concatenate([[0.0], _nodes_on(mesh, a, b, length), [length]])
        along = filled(spaced(along, min(closest, 0.5 * length)), step)
        places = a + (along / length)[:, None] * (b - a)
        same = bool(kept) and _coincide(kept[-1][-1], places[0])
        kept.append(places[1:] if same else places)
    places = np.concatenate(kept)
    closed = len(places) > 2 and _coincide(places[0], places[-1])
    return places[:-1] if closed else places


def _coincide(a: FloatArray, b: FloatArray) -> bool:
    return math.dist(a, b) < SAME_MM


def _nodes_on(mesh: Mesh, a: FloatArray, b: FloatArray, length: float) -> FloatArray:
    """Distances from ``a`` of the mesh's nodes that lie on the line from ``a`` to ``b``."""
    unit = (b - a) / length
    away = mesh.nodes - a
    along = away @ unit
    off = np.abs(away[:, 0] * unit[1] - away[:, 1] * unit[0])
    return np.sort(along[(off < 0.01) & (along > 0.01) & (along < length - 0.01)])


def _area_places(polygon: Polygon, mesh: Mesh) -> FloatArray:
    """Grid over the part of an area that meets the slab, its corners among the places."""
    met = plane.intersection(polygon, plane.buffer(mesh.polygon, 0.01, join_style="mitre"))
    if met.is_empty or met.area < 1e-6:
        near = shapely.get_coordinates(shapely.shortest_line(mesh.polygon, polygon))[1]
        return np.array([near])
    step = max(AREA_SHARE * mesh.coarse_mm, float(np.sqrt(met.area / MAX_STATIONS_AREA)))
    x0, y0, x1, y1 = met.bounds
    nx, ny = (max(FEWEST_ACROSS, round(d / step) + 1) for d in (x1 - x0, y1 - y0))
    gx, gy = np.meshgrid(np.linspace(x0, x1, nx), np.linspace(y0, y1, ny))
    grid = np.column_stack([gx.ravel(), gy.ravel()])
    grid = grid[shapely.intersects_xy(plane.buffer(met, 1e-6), grid[:, 0], grid[:, 1])]
    corners = shapely.get_coordinates(met.simplify(CORNERS_MM))
    return _apart(np.concatenate([corners, grid]), APART * min(step, x1 - x0, y1 - y0))


def _apart(places: FloatArray, closest: float) -> FloatArray:
    kept: list[FloatArray] = []
    for place in places:
        if not kept or np.hypot(*(np.array(kept) - place).T).min() > closest:
            kept.append(place)
    return np.array(kept)
