"""A slab as a room for its openings: planes, pockets, the sides of units and legs beneath."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
import shapely
from shapely.geometry import Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.checks.shape import strip_rule
from ledgerstone.checks.units import StandingUnit, standing_units
from ledgerstone.cutouts import kind_of
from ledgerstone.goes_in import TAP_SIZED_MM, unit_for
from ledgerstone.order import Cutout, Slab
from ledgerstone.outline import XY, unit_vector
from ledgerstone.quantities import INCH_MM, Length
from ledgerstone.remedies.belonging import companions
from ledgerstone.remedies.placeable import Item, Obstacle, Plane, Room
from ledgerstone.remedies.placing import place
from ledgerstone.shape import MIN_GRAINS_ACROSS, Opening, Shape
from ledgerstone.stages.placement import Freedom, Placement
from ledgerstone.workshop.records import Workshop

COARSE_MM, FINE_MM = 5.0, 1.0
COARSE_INCHES, FINE_INCHES = 1 / 4, 1 / 16  # the same where a length is in inches or feet
_MOST_OUT = 1 / 4  # of an opening's longer side: how much farther out of its side it may go
_MIDDLE = (0.49, 0.51)  # of a side: between these is its direction in the middle
_ALONG_IT = 0.05  # of two unit vectors: so much apart they are one side's
_TIDY_MM = 0.5  # the roughness of an outline's arcs, which may be evened
_ON_EDGE_MM = 0.8  # more than that roughness
_MIN_POCKET_MM2 = 1.0  # rounding of an overlay
# Normals of a box's sides.
_AXES: tuple[XY, ...] = ((1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0))


@dataclass(frozen=True, slots=True)
class Layout:
    """One slab whose openings are to be placed, in steps of about ``to_mm``, clear of a joint."""

    slab: Slab
    shape: Shape
    workshop: Workshop
    freedom: Freedom
    to_mm: float
    keeps_off: Obstacle | None = None

    def placed(self) -> Placement | None:
        """Return the openings' new positions; None if no room was found for them."""
        room = self.room()
        return place(self.items(room), room)

    def room(self) -> Room:
        """The slab as a room: the sides of units are its last obstacles."""
        box = self.shape.outline.bounds
        shares = [self.freedom.most_share * grows for grows in self.freedom.grows]
        given = [getattr(self.slab.outline, n, self.slab.thickness) for n in ("length", "width")]
        return Room(
            planes=tuple(_planes(self.shape.outline)),
            obstacles=(*self._in_plan(), *self._joint(), *self._panels()),
            box_mm=box,
            grows_mm=(shares[0] * (box[2] - box[0]), shares[1] * (box[3] - box[1])),
            grow_step_mm=(step_mm(given[0], self.to_mm), step_mm(given[1], self.to_mm)),
            most_share=self.freedom.most_share,
        )

    def items(self, room: Room) -> list[Item]:
        """The slab's openings as items to be placed in its room."""
        follows = companions(self.slab, self.shape)
        panels = range(
            len(room.planes) + len(room.obstacles) - len(list(self._panels())),
            len(room.planes) + len(room.obstacles),
        )
        return [self._item(opening, room, panels, follows) for opening in self.shape.openings]

    def _item(
        self, opening: Opening, room: Room, panels: range, follows: Mapping[int, int]
    ) -> Item:
        cutout, k = self.slab.cutouts[opening.index], opening.index
        hull = _hull(opening, cutout)
        centre = np.array(hull.centroid.coords[0])
        side = self._open_side(opening, cutout)
        n, passes = None, set[int]()
        if side is not None:
            n = _outward(side, self.shape.outline)
            passes |= {i for i, plane in enumerate(room.planes) if _same(plane.n, n)}
        if opening.longer_mm <= TAP_SIZED_MM:
            passes |= set(panels)
        x, y = _spoken(cutout)
        home = self._own_unit(opening)
        return Item(
            centre=centre,
            points=np.asarray(hull.exterior.coords)[:-1] - centre,
            clear_mm=self._clear_mm(opening),
            step_mm=(step_mm(x, self.to_mm), step_mm(y, self.to_mm)),
            moves=k in self.freedom.moves,
            shrinks=k in self.freedom.shrinks,
            passes=frozenset(passes),
            follows=follows.get(k),
            within_mm=home.inside_mm if home is not None else None,
            outward=n,
            most_out_mm=_MOST_OUT * opening.longer_mm,
        )

    def kept_units(self) -> frozenset[int]:
        """The units, by their number, that openings which may move keep over."""
        own = (self._own_unit(self.shape.openings[k]) for k in self.freedom.moves)
        return frozenset(unit.index for unit in own if unit is not None)

    def _own_unit(self, opening: Opening) -> StandingUnit | None:
        """The only unit whose use is an opening's, unless the opening is well over another."""
        rests, use = self.slab.rests, unit_for(self.slab.cutouts[opening.index])
        if rests is None or use is None or not self.freedom.at_home:
            return None
        units = standing_units(rests, self.shape)
        kept_units = [unit for unit in units if unit.use == use]
        if len(kept_units) != 1 or opening.polygon.is_empty:
            return None
        x0, _, x1, _ = opening.polygon.bounds
        insides = [unit.inside_mm for unit in units if unit.use != use]
        return None if any(a <= x0 and x1 <= b for a, b in insides) else kept_units[0]

    def _open_side(self, opening: Opening, cutout: Cutout) -> BaseGeometry | None:
        """Return the side that an opening is open to, if it reaches it."""
        if cutout.open_to is None or opening.polygon.is_empty:
            return None
        side = self.shape.side(cutout.open_to).line
        return side if opening.polygon.distance(side) <= _TIDY_MM else None

    def _clear_mm(self, opening: Opening) -> float:
        """Return the clearance that an opening's rule and the grains require."""
        cutout = self.slab.cutouts[opening.index]
        rule = strip_rule(cutout, opening.longer_mm, self.workshop)
        grains = MIN_GRAINS_ACROSS * self.workshop.recipe.largest_aggregate_mm
        clear = max(rule.stops_mm if rule is not None else 1.0, grains)
        return clear * (self.freedom.times if opening.longer_mm <= TAP_SIZED_MM else 1.0)

    def _in_plan(self) -> Iterator[Obstacle]:
        """Pockets of the outline, and legs beneath it."""
        outline = self.shape.outline
        for pocket in shapely.get_parts(plane.difference(outline.convex_hull, outline)):
            if isinstance(pocket, Polygon) and pocket.area > _MIN_POCKET_MM2:
                yield from _convex_obstacles(pocket.simplify(_TIDY_MM))
        rests = self.slab.rests
        if rests is not None and rests.kind == "legs":
            half = (rests.pad.mm if rests.pad is not None else 0.0) / 2 + 1.0
            for leg in rests.at:
                pad = box(leg.x.mm - half, leg.y.mm - half, leg.x.mm + half, leg.y.mm + half)
                yield Obstacle(np.asarray(pad.exterior.coords), _AXES, is_edge=False)

    def _joint(self) -> Iterator[Obstacle]:
        if self.keeps_off is not None:
            yield self.keeps_off

    def _panels(self) -> Iterator[Obstacle]:
        """The sides of units, where the use of one is a basin or a hob."""
        rests = self.slab.rests
        if rests is None or not any(unit.use in ("basin", "hob") for unit in rests.units):
            return
        for unit in standing_units(rests, self.shape):
            for panel in unit.sides:
                yield Obstacle(np.asarray(panel.exterior.coords), _AXES[:2], is_edge=False)


def step_mm(given: Length, to_mm: float) -> float:
    """Return the step that is round in a length's unit: 5 mm or a quarter of an inch; or fine."""
    if given.unit in ("in", "ft"):
        return INCH_MM * (COARSE_INCHES if to_mm >= COARSE_MM else FINE_INCHES)
    return to_mm


def _spoken(cutout: Cutout) -> tuple[Length, Length]:
    place = cutout.centre if cutout.centre is not None else cutout.points[0]
    return place.x, place.y


def _hull(opening: Opening, cutout: Cutout) -> Polygon:
    polygon = (
        opening.polygon if not opening.polygon.is_empty else kind_of(cutout).placed(cutout, 0.0)[0]
    )
    hull = polygon.convex_hull
    return hull if isinstance(hull, Polygon) else plane.buffer(hull, _TIDY_MM)


def _planes(outline: Polygon) -> Iterator[Plane]:
    """The sides of a slab's hull; those that bridge a pocket are no edge."""
    hull = shapely.orient_polygons(outline.convex_hull.simplify(_TIDY_MM))
    ring = shapely.get_coordinates(hull)
    for start, end in pairwise([(float(x), float(y)) for x, y in ring]):
        along = unit_vector(start, end)
        n = (along[1], -along[0])
        middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
        is_edge = Point(middle).distance(outline.exterior) < _ON_EDGE_MM
        yield Plane(n, n[0] * start[0] + n[1] * start[1], is_edge)


def _convex_obstacles(pocket: BaseGeometry) -> Iterator[Obstacle]:
    parts = [pocket]
    if pocket.convex_hull.area - pocket.area > _MIN_POCKET_MM2:
        parts = list(shapely.get_parts(shapely.constrained_delaunay_triangles(pocket)))
    for part in parts:
        if isinstance(part, Polygon):
            ring = [(float(x), float(y)) for x, y in part.exterior.coords]
            ring = ring if part.exterior.is_ccw else ring[::-1]
            inward = [unit_vector(a, b) for a, b in pairwise(ring)]
            normals = [(-y, x) for x, y in inward]  # from the opening into the pocket
            yield Obstacle(np.array(ring), tuple(dict.fromkeys((*normals, *_AXES))))


def _outward(side: BaseGeometry, outline: Polygon) -> XY:
    """The direction out of a slab through the middle of a side."""
    middle = side.interpolate(0.5, normalized=True)
    before, after = (side.interpolate(share, normalized=True) for share in _MIDDLE)
    along = unit_vector((before.x, before.y), (after.x, after.y))
    n = (along[1], -along[0])
    return n if not outline.contains(Point(middle.x + n[0], middle.y + n[1])) else (-n[0], -n[1])


def _same(point: XY, other: XY) -> bool:
    return abs(point[0] - other[0]) + abs(point[1] - other[1]) < _ALONG_IT
