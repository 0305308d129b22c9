"""Where a slab is held while it is moved: lines across it, its long edge, grips at its far side."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache

import shapely
from shapely.geometry import LineString, Polygon

from ledgerstone import plane
from ledgerstone.outline import XY
from ledgerstone.strength.plate import LineSupport, PointSupport, Support

# Two lifting lines at (sqrt(2) - 1) / 2 of the length from each end: the moments over the lines
# and between them are then equal (strength of materials; methods §1.6).
BEST_LIFT = 0.2071
# Of the length, where it is carried by its ends: common practice, no source.
HANDS_AT_THE_ENDS = 0.05
OTHER_BEARERS = (0.12, 0.28)  # shares of its length where bearers may lie instead
# The middle of a grip, so that it bears on concrete: our own choice.
IN_FROM_THE_EDGE_MM = 10.0
BEARER_MM = 100.0  # how wide a pallet's bearer is; common practice, no source
SHORT_BY_MM = 1.0  # nearer to the edge's own end is that end: over any rounding
SIMPLER_MM = 0.3  # greatest deviation of the simplified arcs

Supports = Sequence[Support]


@lru_cache(maxsize=8)
def holding_of(outline: Polygon) -> Holding:
    """The slab of a plan, mm, as it is held: for its mesh, and for every way of moving it."""
    return Holding(outline)


@dataclass(frozen=True)
class Holding:
    """One slab in plan, as it is held; its long side is the longer side of the box around it."""

    outline: Polygon

    @cached_property
    def along_y(self) -> bool:
        """Whether its long side lies along y."""
        x0, y0, x1, y1 = self.outline.bounds
        return bool(y1 - y0 > x1 - x0)

    @cached_property
    def simpler(self) -> Polygon:
        """The same plan with fewer points to its arcs, for sections through it."""
        simple = self.outline.simplify(SIMPLER_MM)
        return simple if isinstance(simple, Polygon) and simple.is_valid else self.outline

    @property
    def depth_mm(self) -> float:
        """Its size across its long side, mm.

        Source
        ------
        Geometry.
        """
        x0, y0, x1, y1 = self.outline.bounds
        return float(x1 - x0 if self.along_y else y1 - y0)

    def places_mm(self, share: float) -> XY:
        """Two places along its length, mm, with the centre of its area between them.

        They are ``share`` of its length from its ends, but at most half-way from an end to the
        centre.

        Source
        ------
        Statics: the slab stays down on two places with its weight between them.
        """
        x0, y0, x1, y1 = self.outline.bounds
        start, end = (y0, y1) if self.along_y else (x0, x1)
        middle = self.outline.centroid
        weight = middle.y if self.along_y else middle.x
        first = min(start + share * (end - start), 0.5 * (start + weight))
        return first, max(end - share * (end - start), 0.5 * (end + weight))

    def lines(self, share: float) -> Iterable[Supports]:
        """Two lines across it, ``share`` of its length from its ends; then two more at its ends.

        The four are for a plan that tips off the two.
        """
        two = [self._across(place) for place in self.places_mm(share)]
        yield two
        yield [*two, *(self._across(place) for place in self.places_mm(HANDS_AT_THE_ENDS))]

    def bearers_mm(self) -> Iterable[tuple[float, ...]]:
        """Places along it for a pallet's bearers, mm, clear of openings: two or three of them.

        The first are those of least moment; the others are tried where openings are in the way.

        Source
        ------
        methods §1.6 for the first; the others: common practice, no source.
        """
        for share in (BEST_LIFT, *OTHER_BEARERS):
            yield tuple(self._clear(place) for place in self.places_mm(share))
        first, last = self.places_mm(HANDS_AT_THE_ENDS)
        yield tuple(self._clear(place) for place in (first, 0.5 * (first + last), last))

    def on(self, places_mm: Sequence[float]) -> Supports:
        """Lines across it at places along its length, mm."""
        return [self._across(place) for place in places_mm]

    def _clear(self, place: float) -> float:
        """The place nearest to a given one where a bearer is clear of every opening, mm.

        Where openings take the whole length, the place stays.
        """
        axis = 1 if self.along_y else 0
        half = BEARER_MM / 2
        spans = [(r.bounds[axis] - half, r.bounds[axis + 2] + half) for r in self.outline.interiors]
        start, end = self.outline.bounds[axis] + half, self.outline.bounds[axis + 2] - half
        ends = [place, *(end for span in spans for end in span)]
        free = [
            at
            for at in ends
            if start <= at <= end and not any(low < at < high for low, high in spans)
        ]
        return min(free, key=lambda at: (abs(at - place), at), default=place)

    def _across(self, place: float) -> Support:
        x0, y0, x1, y1 = self.outline.bounds
        if self.along_y:
            return LineSupport([(x0, place), (x1, place)])
        return LineSupport([(place, y0), (place, y1)])

    @cached_property
    def hinges(self) -> tuple[Supports, ...]:
        """Its near long edge on the table and two grips at the far side; then the other edge."""
        x0, y0, x1, y1 = self.outline.bounds
        places = self.places_mm(BEST_LIFT)
        near, far = (x0, x1) if self.along_y else (y0, y1)
        found: list[Supports] = []
        for edge, other, inward in ((near, far, 1.0), (far, near, -1.0)):
            at = edge + inward * IN_FROM_THE_EDGE_MM
            ends = [(at, y0), (at, y1)] if self.along_y else [(x0, at), (x1, at)]
            grips = [self._grip(self._xy(p, edge), self._xy(p, other)) for p in places]
            found.append([LineSupport(ends), *grips])
        return tuple(found)

    @property
    def turned_at_mm(self) -> tuple[XY, ...]:
        """Places about which it is turned over, mm: grips, and ends of the table's edge.

        Ends of that edge at a corner of the slab's box are left out: a straight side's corners
        carry next to nothing. At the other places the reaction is nearly a point load.

        Source
        ------
        Statics: an edge that overhanging concrete presses on carries at its ends; which ends carry
        is from our own trials.
        """
        held = [support for supports in self.hinges for support in supports]
        grips = [(s.x, s.y) for s in held if isinstance(s, PointSupport)]
        edges = [LineString(s.points) for s in held if isinstance(s, LineSupport)]
        return (*grips, *(end for edge in edges for end in self._short_ends(edge)))

    def _short_ends(self, edge: LineString) -> list[XY]:
        met = shapely.get_parts(plane.intersection(edge, self.outline))
        ends = [end for part in met for end in (part.coords[0], part.coords[-1])]
        return [end for end in ends if edge.boundary.distance(shapely.Point(end)) > SHORT_BY_MM]

    def _xy(self, along: float, across: float) -> XY:
        return (across, along) if self.along_y else (along, across)

    def _grip(self, near: XY, far: XY) -> Support:
        """A grip on the last concrete of a line across the slab, a little in from its edge."""
        met = shapely.get_parts(plane.intersection(LineString([near, far]), self.outline))
        back = LineString([far, near])
        pieces = [part for part in met if part.geom_type == "LineString" and part.length > 0.0]
        last = min(pieces, key=lambda piece: back.project(piece.centroid))
        ends = sorted(back.project(shapely.Point(xy)) for xy in last.coords)
        at = back.interpolate(min(ends[0] + IN_FROM_THE_EDGE_MM, 0.5 * (ends[0] + ends[-1])))
        return PointSupport(float(at.x), float(at.y))
