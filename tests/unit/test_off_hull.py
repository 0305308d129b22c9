"""Distances from a convex hull, beside shapely's own."""

import numpy as np
import pytest
import shapely
from shapely.geometry import LineString, MultiPoint, Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from ledgerstone.strength._off_hull import HullEdges

SCATTERED = np.random.default_rng(1).random((9, 2)) * 1000.0
HULLS = {
    "a box": box(0, 0, 2000, 600),
    "a narrow box": box(0, 0, 2, 600),
    "a polygon": MultiPoint(SCATTERED).convex_hull,
    "a clockwise polygon": Polygon([(0, 0), (0, 500), (800, 100)]),
    "a line": LineString([(0, 0), (500, 20)]),
    "a point": Point(3, 4),
}


@pytest.mark.parametrize("name", HULLS)
def test_a_distance_from_a_hull_is_shapelys(name: str) -> None:
    """Two thousand places about it: as far as shapely says, to rounding."""
    hull: BaseGeometry = HULLS[name]
    places = np.random.default_rng(2).random((300, 7, 2)) * 3000.0 - 500.0
    found = HullEdges.of(hull).distance_mm(places)
    assert found == pytest.approx(shapely.distance(shapely.points(places), hull), abs=1e-9)


def test_every_place_is_infinitely_far_from_no_hull() -> None:
    """Where no rest meets the slab, no place is near one."""
    assert np.isinf(HullEdges.of(Polygon()).distance_mm(np.zeros((3, 2)))).all()
