"""The plan of a slab: polygons, areas, edge lengths and strips, in plane millimetres.

Arcs become short chords with their vertices on the true arc, so distances to a circle's four
extreme points are exact; areas come from the exact formulae.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import combinations, pairwise

import numpy as np
import shapely
from shapely import affinity
from shapely.geometry import LineString, MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.cutouts import kind_of
from ledgerstone.order import Cutout, LShape, Rectangle, Relief, Slab
from ledgerstone.outline import (
    XY,
    Side,
    finished_size_mm,
    outline_shape,
    unit_vector,
)
from ledgerstone.quantities import MM2_PER_M2, MM3_PER_L
from ledgerstone.workshop.records import Workshop

MIN_GRAINS_ACROSS = 5.0  # of the narrowest place between forms: ACI 318-19 26.4.2.1(a)(5)
_AT_THE_CENTRE_MM = 1e-6
_CONVEX_MM2 = 1e-3
_OUTWARD: Mapping[str, XY] = {
    "front": (0.0, -1.0),
    "right": (1.0, 0.0),
    "back": (0.0, 1.0),
    "left": (-1.0, 0.0),
}


@dataclass(frozen=True, slots=True)
class Opening:
    """One cut-out's polygon, with the exact area and the longer side of its shape."""

    index: int
    polygon: Polygon
    area_mm2: float
    longer_mm: float
    radius_mm: float | None


@dataclass(frozen=True, slots=True)
class Strip:
    """The narrowest concrete between an opening and a side or another opening.

    ``line_mm`` runs across it, from the opening to what it faces.
    """

    opening: int
    faces: str | int
    width_mm: float
    line_mm: tuple[XY, XY]


@dataclass(frozen=True, slots=True)
class Shape:
    """A slab in plan: finished outline, openings, what is left, and the measures of each."""

    outline: Polygon
    corners: tuple[XY, ...]
    sides: tuple[Side, ...]
    openings: tuple[Opening, ...]
    net: Polygon | MultiPolygon
    reliefs: tuple[Polygon, ...]
    length_mm: float
    width_mm: float
    thickness_mm: float
    outline_area_mm2: float
    net_area_mm2: float
    volume_mm3: float
    strips: tuple[Strip, ...]

    @property
    def net_area_m2(self) -> float:
        """Area of the concrete in plan, m²."""
        return self.net_area_mm2 / MM2_PER_M2

    @property
    def outline_area_m2(self) -> float:
        """Area within the outline, openings in it, m²."""
        return self.outline_area_mm2 / MM2_PER_M2

    @property
    def volume_l(self) -> float:
        """Volume of the concrete, litres."""
        return self.volume_mm3 / MM3_PER_L

    def side(self, name: str) -> Side:
        """Return the side of that name.

        Raises
        ------
        KeyError
            The outline has no such side.
        """
        for side in self.sides:
            if side.name == name:
                return side
        raise KeyError(name)


def _opened(polygon: Polygon, side: Side, outline: Polygon) -> Polygon:
    """Extend an opening through a side, and leave off what lies outside the slab.

    Empty if the opening lies outside to begin with. Where its way out crosses the slab twice,
    the part that the opening stands in is kept.
    """
    x, y = _outward(side, polygon, outline)
    way_out = _swept(polygon, x * outline.length, y * outline.length)
    met = plane.polygons_in(plane.intersection(way_out, outline))
    parts = [p for p in met if plane.intersection(p, polygon).area > 0.0]
    return max(parts, key=lambda part: plane.intersection(part, polygon).area, default=Polygon())


def _outward(side: Side, polygon: Polygon, outline: Polygon) -> XY:
    """Direction in which an opening leaves the slab through a side, length one."""
    if side.name in _OUTWARD:
        return _OUTWARD[side.name]
    if side.name == "rim":
        centre, opening = outline.centroid, polygon.centroid
        if centre.distance(opening) < _AT_THE_CENTRE_MM:
            return _OUTWARD["front"]
        return unit_vector((centre.x, centre.y), (opening.x, opening.y))
    points = [(x, y) for x, y in side.line.coords]
    straight = max(pairwise(points), key=lambda ends: math.dist(*ends))  # not the rounded ends
    along = unit_vector(*straight)
    return along[1], -along[0]  # the outline runs anticlockwise: outside lies to the right


def _swept(polygon: Polygon, dx: float, dy: float) -> BaseGeometry:
    """Area that a polygon passes over when it is moved along one straight line."""
    moved = affinity.translate(polygon, dx, dy)
    if polygon.convex_hull.area - polygon.area < _CONVEX_MM2:
        return MultiPolygon([polygon, moved]).convex_hull
    here, there = (shapely.get_coordinates(outline.exterior) for outline in (polygon, moved))
    corners = np.stack([here[:-1], here[1:], there[:-1], there[1:]], axis=1)
    bands = np.asarray(shapely.convex_hull(shapely.multipoints(corners)))
    return plane.union([polygon, moved, *bands[shapely.area(bands) > 0.0]])


def _opening(
    index: int, cutout: Cutout, outline: Polygon, sides: tuple[Side, ...], inside_radius_mm: float
) -> Opening:
    kind = kind_of(cutout)
    polygon, area = kind.placed(cutout, inside_radius_mm)
    longer = max(kind.size_mm(cutout))
    radius = longer / 2 if kind.is_circle else None
    if cutout.open_to is not None:
        side = next(side for side in sides if side.name == cutout.open_to)
        polygon = _opened(polygon, side, outline)
        area, radius = polygon.area, None
    return Opening(index, polygon, area, longer, radius)


def _strips(slab: Slab, openings: tuple[Opening, ...], sides: tuple[Side, ...]) -> Iterable[Strip]:
    for opening in openings:
        open_to = slab.cutouts[opening.index].open_to
        for side in sides:
            if side.name != open_to and not opening.polygon.is_empty:
                yield _strip(opening, side.name, side.line)
    for one, other in combinations(openings, 2):
        if not one.polygon.is_empty and not other.polygon.is_empty:
            yield _strip(one, other.index, other.polygon)


def _strip(opening: Opening, faces: str | int, what: LineString | Polygon) -> Strip:
    line = shapely.shortest_line(opening.polygon, what)
    (x0, y0), (x1, y1) = line.coords
    width = 0.0 if opening.polygon.intersects(what) else line.length
    return Strip(opening.index, faces, round(width, 2), ((x0, y0), (x1, y1)))


def openings_of(slab: Slab, workshop: Workshop) -> tuple[tuple[Opening, ...], float]:
    """Work out a slab's openings and its finished length, mm: a fraction of its plan's work."""
    inside = workshop.shaping.inside_radius_mm
    length, width = finished_size_mm(slab, workshop.shaping.fitting_gap_mm)
    outline, sides, _, _ = outline_shape(slab.outline, length, width, inside)
    return _openings(slab, outline, sides, inside), length


def _openings(
    slab: Slab, outline: Polygon, sides: tuple[Side, ...], inside_radius_mm: float
) -> tuple[Opening, ...]:
    each = enumerate(slab.cutouts)
    return tuple(_opening(i, cutout, outline, sides, inside_radius_mm) for i, cutout in each)


def shape_of(slab: Slab, workshop: Workshop) -> Shape:
    """Work out a slab's plan as it will be cast."""
    inside = workshop.shaping.inside_radius_mm
    length, width = finished_size_mm(slab, workshop.shaping.fitting_gap_mm)
    outline, sides, corners, outline_area = outline_shape(slab.outline, length, width, inside)
    openings = _openings(slab, outline, sides, inside)
    net = _left_of(outline, openings)
    net_area = _net_area_mm2(outline, openings, net, outline_area)
    reliefs = tuple(_relief_polygon(relief, inside) for relief in slab.reliefs)
    thickness = slab.thickness.mm
    volume = net_area * thickness + _edge_volume_mm3(slab, sides, thickness)
    volume -= _relief_volume_mm3(slab, reliefs, net)
    return Shape(
        outline=outline,
        corners=corners,
        sides=sides,
        openings=openings,
        net=net,
        reliefs=reliefs,
        length_mm=length,
        width_mm=width,
        thickness_mm=thickness,
        outline_area_mm2=outline_area,
        net_area_mm2=net_area,
        volume_mm3=volume,
        strips=tuple(_strips(slab, openings, sides)),
    )


def _left_of(outline: Polygon, openings: tuple[Opening, ...]) -> Polygon | MultiPolygon:
    """Return the concrete that is left: one piece, or several; none if openings take all."""
    taken = plane.union(opening.polygon for opening in openings)
    # On the grid, so that no sliver is left at an open side.
    pieces = plane.polygons_in(plane.difference(outline, taken, grid_mm=plane.GRID_MM))
    return pieces[0] if len(pieces) == 1 else MultiPolygon(pieces)


def _net_area_mm2(
    outline: Polygon, openings: tuple[Opening, ...], net: Polygon | MultiPolygon, area: float
) -> float:
    """Net area by the exact formulae where the openings lie inside and apart, else measured."""
    inside = all(outline.contains(o.polygon) for o in openings)
    apart = all(not a.polygon.intersects(b.polygon) for a, b in combinations(openings, 2))
    if inside and apart:
        return area - sum(opening.area_mm2 for opening in openings)
    return float(net.area)


def _relief_polygon(relief: Relief, inside_radius_mm: float) -> Polygon:
    outline, size = relief.outline, (0.0, 0.0)
    if isinstance(outline, Rectangle | LShape):
        size = (outline.length.mm, outline.width.mm)
    polygon, _, _, _ = outline_shape(outline, *size, inside_radius_mm)
    return affinity.translate(polygon, relief.at.x.mm, relief.at.y.mm)


def _relief_volume_mm3(
    slab: Slab, reliefs: tuple[Polygon, ...], net: Polygon | MultiPolygon
) -> float:
    """What reliefs take off, in mm³; where two overlap, the deeper one counts."""
    left: BaseGeometry = net
    volume = 0.0
    pairs = zip(slab.reliefs, reliefs, strict=True)
    for relief, polygon in sorted(pairs, key=lambda pair: -pair[0].depth.mm):
        volume += plane.intersection(polygon, left).area * min(relief.depth.mm, slab.thickness.mm)
        left = plane.difference(left, polygon)
    return volume


def _edge_volume_mm3(slab: Slab, sides: tuple[Side, ...], thickness_mm: float) -> float:
    """What edges add (drops) and take off (bevels and rounds along the top arris), in mm³."""
    volume = 0.0
    for side in sides:
        edge = slab.edges.get(side.name)
        if edge is None:
            continue
        size = min(edge.size.mm, thickness_mm) if edge.size is not None else 0.0
        if edge.profile == "bevel":
            volume -= 0.5 * size**2 * side.length_mm
        if edge.profile == "round":
            # A square less a quarter of a circle.
            volume -= (1 - math.pi / 4) * size**2 * side.length_mm
        if edge.drop is not None:
            volume += edge.drop.depth.mm * thickness_mm * side.length_mm
    return volume


def edge_lengths_mm(slab: Slab, shape: Shape) -> dict[str, float]:
    """Return the length of outline by edge profile, mm; sides without a profile are square.

    Source
    ------
    Geometry.
    """
    lengths: dict[str, float] = {}
    for side in shape.sides:
        edge = slab.edges.get(side.name)
        profile = edge.profile if edge is not None else "square"
        lengths[profile] = lengths.get(profile, 0.0) + side.length_mm
    return lengths
