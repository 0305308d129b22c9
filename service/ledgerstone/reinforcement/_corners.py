"""A bar across each corner that turns into the slab."""

from __future__ import annotations

import math
from collections.abc import Iterator

import shapely
from shapely.geometry import LineString, Point, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from ledgerstone import plane
from ledgerstone.outline import XY, unit_vector
from ledgerstone.reinforcement._bars import BarStock, PlacedBar, clipped
from ledgerstone.shape import Shape
from ledgerstone.workshop.records import Workshop

SHARP_RADIANS = 0.6  # a rim that turns more than this at one place has a corner there
ROUNDING_MM = 40.0  # a corner rounded less than this is a corner


def corner_bars(
    shape: Shape, workshop: Workshop, stock: BarStock, room: BaseGeometry
) -> Iterator[PlacedBar]:
    """A bar across each corner that turns into the slab, its anchorage to either side."""
    offset = workshop.steel.cover_mm + stock.diameter_mm / 2
    anchor = stock.anchorage_mm
    for (x, y), (bx, by) in _inward_corners(shape):
        middle = Point(x + bx * offset, y + by * offset)
        across = LineString(
            [(middle.x + s * by * anchor, middle.y - s * bx * anchor) for s in (-1.0, 1.0)]
        )
        yield from clipped(across, middle, room, stock, "across an inside corner")


def _inward_corners(shape: Shape) -> Iterator[tuple[XY, XY]]:
    """Corners that turn into the concrete, and the direction from each into it, of length one.

    A corner's rounding is drawn out sharp first; a circle has no corner.
    """
    grown = plane.buffer(shape.net, ROUNDING_MM, join_style="mitre")
    sharp = plane.buffer(grown, -ROUNDING_MM, join_style="mitre")
    parts = [part for part in shapely.get_parts(sharp) if isinstance(part, Polygon)]
    for ring in (ring for part in parts for ring in shapely.get_rings(orient(part))):
        points = [(x, y) for x, y in ring.simplify(1.0).coords[:-1]]
        for k, here in enumerate(points):
            u = unit_vector(points[k - 1], here)
            v = unit_vector(here, points[(k + 1) % len(points)])
            turn = math.atan2(u[0] * v[1] - u[1] * v[0], u[0] * v[0] + u[1] * v[1])
            if turn < -SHARP_RADIANS:
                yield here, unit_vector((0.0, 0.0), (u[0] - v[0], u[1] - v[1]))
