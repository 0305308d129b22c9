"""Where a finding is, as GeoJSON writes it (RFC 7946)."""

from shapely.geometry import GeometryCollection, LineString, Point, box

from ledgerstone.checks.finding import geojson


def test_a_place_of_areas_and_edges_is_its_areas() -> None:
    """A collection has no coordinates of its own (RFC 7946 section 3.1.8): its area is reported."""
    both = GeometryCollection([LineString([(0, 0), (9, 0)]), box(0, 0, 4, 2), Point(7, 7)])
    found = geojson(both)
    assert found["type"] == "Polygon"
    assert sorted(map(tuple, found["coordinates"][0][:4])) == [(0, 0), (0, 2), (4, 0), (4, 2)]


def test_lines_and_points_are_their_lines() -> None:
    """Without an area the lines are reported, and a plain place is reported as it is."""
    edges = GeometryCollection([LineString([(0, 0), (9.04, 0)]), Point(7, 7)])
    assert geojson(edges) == {"type": "LineString", "coordinates": [[0.0, 0.0], [9.0, 0.0]]}
    assert geojson(Point(1, 2)) == {"type": "Point", "coordinates": [1.0, 2.0]}
