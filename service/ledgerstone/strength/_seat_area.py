"""Where on a slab a person may be at all, and which corners are only leant on."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely
from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.arrays import BoolArray, FloatArray, IntArray
from ledgerstone.shape import Shape
from ledgerstone.strength._off_hull import HullEdges
from ledgerstone.strength._rims import Rim, rim_of
from ledgerstone.strength.rests import PANEL_MM

CORNER_OUT_MM = 300.0  # a corner farther out is sat and stood on
NEAR_A_CORNER_MM = 100.0  # places within its overhang plus this of a corner are the corner's
CORNER_ASIDE_MM = 50.0  # an overhang up to this is a worktop's front edge, not a second direction
FADING_MM = 50.0  # past either limit, over which a corner's part shrinks to nothing
HANGS_OVER_MM = 1.0  # places no farther off the hull of the rests are over them
NEARLY = 0.925  # of a seat's side: a strip at least this wide is sat and stood on
NARROW = 0.7  # of it: a strip up to this wide is leant on only

Seen = Callable[[FloatArray], FloatArray]


@dataclass(frozen=True, slots=True)
class LeantOn:
    """Corners that are leant on, mm, shape (n, 2), and each one's share of its whole part, (n,)."""

    corners: FloatArray
    share: FloatArray

    def depth_mm(self, xy: FloatArray, out_mm: FloatArray, which: IntArray | int) -> FloatArray:
        """How deep places lie in the part of a corner, mm, shape (p, ...); negative outside it.

        Parameters
        ----------
        xy, out_mm
            Places, mm, shape (p, ..., 2), and how far each lies off the hull of the rests, mm,
            shape (p, ...).
        which
            Each place's corner, by its number, shape (p, ...), or one for all.

        Source
        ------
        Within the place's own overhang and 100 mm of the corner: common practice, no source.
        """
        away = np.hypot(*np.moveaxis(xy - self.corners[which], -1, 0))
        reach = self.share[which] * (out_mm + NEAR_A_CORNER_MM)
        return np.asarray(np.minimum(reach - away, out_mm - HANGS_OVER_MM))


@dataclass(frozen=True)
class SeatArea:
    """One slab over its rests, for a person on a square of ``side_mm``.

    Attributes
    ----------
    rests
        What carries the slab, in plane mm.
    meshed
        The slab as it is meshed, small radii as sharp corners, plane mm.
    seen
        Maps places to the plan's mirror image that is meshed: they are taken in their order
        there.
    """

    shape: Shape
    side_mm: float
    rests: Sequence[BaseGeometry]
    meshed: Polygon
    seen: Seen

    @cached_property
    def room(self) -> Polygon | MultiPolygon:
        """Where the middle of a person may be: so that the square, or nearly so, is on the slab.

        A strip that is narrower than the square by no more than a few millimetres counts as wide.
        """
        side, net = self.side_mm, self.shape.net
        whole = plane.buffer(net, -side / 2, join_style="mitre")
        nearly = plane.buffer(net, -NEARLY * side / 2, join_style="mitre")
        around = plane.buffer(whole, side * (1.0 - NEARLY), join_style="mitre")
        strips = plane.difference(nearly, around)
        parts = plane.polygons_in(whole if strips.is_empty else plane.union([whole, strips]))
        room = MultiPolygon(parts) if parts else net
        shapely.prepare(room)
        return room

    @cached_property
    def room_and_rim(self) -> BaseGeometry:
        """That room with its edges, whatever rounding does to a place on them."""
        room = plane.buffer(self.room, 1e-6)
        shapely.prepare(room)
        return room

    @cached_property
    def rims(self) -> tuple[Rim, ...]:
        """The rings around that room."""
        return tuple(rim_of(ring) for ring in shapely.get_rings(shapely.get_parts(self.room)))

    @cached_property
    def under(self) -> BaseGeometry:
        """All rests as one."""
        return plane.union(self.rests)

    @cached_property
    def hull(self) -> BaseGeometry:
        """The hull of what meets the slab."""
        slab = plane.buffer(self.shape.net, 1.0, join_style="mitre")
        hull = plane.intersection(self.under, slab).convex_hull
        shapely.prepare(hull)
        return hull

    @cached_property
    def _hull_edges(self) -> HullEdges:
        return HullEdges.of(self.hull)

    @property
    def _hangs_over(self) -> bool:
        """Whether a person hangs over somewhere: if so, at a corner of the room."""
        if self.hull.is_empty:
            return False
        off = self.off_hull(shapely.get_coordinates(self.room))
        return bool((off > 0.5 * HANGS_OVER_MM).any())

    @cached_property
    def leant_on(self) -> LeantOn:
        """Corners that hang out in one direction, at most 300 mm: they are leant on.

        Past 300 mm, or 50 mm the other way, the part of a corner that is leant on shrinks to
        nothing over another 50 mm, so that a millimetre more changes little.

        Source
        ------
        Common practice, no source.
        """
        corners = np.array(self.shape.corners).reshape(-1, 2)
        if not self._hangs_over:
            return LeantOn(corners[:0], np.empty(0))
        lines = shapely.shortest_line(self.hull, shapely.points(corners))
        ends = shapely.get_coordinates(lines).reshape(-1, 2, 2)
        aside, out = np.sort(np.abs(ends[:, 1] - ends[:, 0]), axis=1).T
        past = np.maximum(out - CORNER_OUT_MM - PANEL_MM, aside - CORNER_ASIDE_MM)
        share = np.clip(1.0 - past / FADING_MM, 0.0, 1.0)
        some = (out > HANGS_OVER_MM) & (share > 0.0)
        return LeantOn(corners[some], share[some])

    def is_near_a_free_corner(self, xy: FloatArray, within_mm: float = 0.0) -> BoolArray:
        """Whether places (n, 2), mm, are in a leant-on corner's part, or within so much, (n,).

        Source
        ------
        Geometry; where a corner is leant on, as ``leant_on``.
        """
        near = np.zeros(len(xy), dtype=bool)
        if not len(self.leant_on.share):
            return near
        off = self.off_hull(xy)
        for which in range(len(self.leant_on.share)):  # one by one: a slab may have 200 corners
            near |= self.leant_on.depth_mm(xy, off, which) >= -within_mm
        return near

    def off_hull(self, xy: FloatArray) -> FloatArray:
        """How far places lie off the hull of what meets the slab, mm.

        Places have shape (n, 2), distances (n,), or with as many axes before them.

        Source
        ------
        Geometry.
        """
        return self._hull_edges.distance_mm(xy)

    def in_order(self, places: FloatArray) -> FloatArray:
        """Places in their order in the image that is meshed, mm, shape (n, 2) each.

        So they are the same in a mirror image.

        Source
        ------
        Geometry.
        """
        keys = np.round(self.seen(places), 1) + 0.0
        return np.asarray(places[np.lexsort(keys.T)])
