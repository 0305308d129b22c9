"""Overlay and offset of plane geometry, also of what GEOS refuses."""

import pytest
import shapely
from shapely.errors import GEOSException
from shapely.geometry import LineString, Polygon, box

from ledgerstone import plane

BOW_TIE = Polygon([(0, 0), (100, 100), (100, 0), (0, 100)])  # crosses itself at its middle
UNIT = box(0, 0, 100, 100)


def test_what_geos_refuses_is_taken() -> None:
    """A bow tie, which GEOS refuses, is cut, met and joined by its two triangles' area."""
    with pytest.raises(GEOSException):
        shapely.difference(BOW_TIE, box(0, 0, 50, 100))
    assert plane.difference(BOW_TIE, box(0, 0, 50, 100)).area == pytest.approx(2500)
    assert plane.intersection(BOW_TIE, box(0, 0, 50, 100)).area == pytest.approx(2500)
    assert plane.union([BOW_TIE, box(200, 0, 300, 100)]).area == pytest.approx(15_000)


def test_what_geos_takes_is_left_as_it_is() -> None:
    """Sound geometries come out to the last digit as shapely itself gives them."""
    other = Polygon([(1 / 3, 1 / 7), (90, 10), (50, 130)])
    assert plane.difference(UNIT, other).equals_exact(UNIT.difference(other))
    assert plane.intersection(UNIT, other).equals_exact(UNIT.intersection(other))
    assert plane.buffer(other, -2.0, join_style="mitre").equals_exact(
        other.buffer(-2.0, join_style="mitre")
    )


def test_an_offset_is_of_the_textbook_area() -> None:
    """A square grown with mitred corners, and drawn in to nothing, has the area of its sides."""
    assert plane.buffer(UNIT, 10.0, join_style="mitre").area == pytest.approx(120.0**2)
    assert plane.buffer(UNIT, -50.0).is_empty


def test_only_polygons_of_some_area_are_polygons() -> None:
    """Lines, empty polygons and polygons without area are left out of what is drawn."""
    needle = Polygon([(0, 0), (10, 0), (5, 0)])
    mixed = shapely.GeometryCollection([UNIT, LineString([(0, 0), (1, 1)]), Polygon(), needle])
    assert plane.polygons_in(mixed) == [UNIT]


def test_a_geometry_is_made_sound_on_the_grid() -> None:
    """What crosses itself becomes valid, with every coordinate on the grid."""
    made = plane.sound(BOW_TIE, 1e-3)
    assert made.is_valid
    assert made.area == pytest.approx(5000)
    assert shapely.get_precision(made) == 1e-3
