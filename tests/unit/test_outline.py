"""Outlines: names of sides, sizes as cast, rounded corners, which way round they run."""

import math

import pytest
from shapely.geometry import LineString, Point

from ledgerstone.outline import (
    can_round,
    circle,
    corner_radii_mm,
    fillet,
    finished_size_mm,
    largest_radius_mm,
    outline_shape,
    rounded,
    side_names,
    wall_sides,
)
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, polygon, shape_from, slab_of

SQUARE = ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0))
# An L of 1000 by 600 with a notch of 300 by 200, by the notch's corner: each side's name and its
# two ends, anticlockwise, drawn and read off by hand.
L_SIDES = {
    "front-left": (
        ("notch-x", (0, 200), (300, 200)),
        ("notch-y", (300, 200), (300, 0)),
        ("front", (300, 0), (1000, 0)),
        ("right", (1000, 0), (1000, 600)),
        ("back", (1000, 600), (0, 600)),
        ("left", (0, 600), (0, 200)),
    ),
    "front-right": (
        ("front", (0, 0), (700, 0)),
        ("notch-y", (700, 0), (700, 200)),
        ("notch-x", (700, 200), (1000, 200)),
        ("right", (1000, 200), (1000, 600)),
        ("back", (1000, 600), (0, 600)),
        ("left", (0, 600), (0, 0)),
    ),
    "back-right": (
        ("front", (0, 0), (1000, 0)),
        ("right", (1000, 0), (1000, 400)),
        ("notch-x", (1000, 400), (700, 400)),
        ("notch-y", (700, 400), (700, 600)),
        ("back", (700, 600), (0, 600)),
        ("left", (0, 600), (0, 0)),
    ),
    "back-left": (
        ("front", (0, 0), (1000, 0)),
        ("right", (1000, 0), (1000, 600)),
        ("back", (1000, 600), (300, 600)),
        ("notch-y", (300, 600), (300, 400)),
        ("notch-x", (300, 400), (0, 400)),
        ("left", (0, 400), (0, 0)),
    ),
}
CORNERS = tuple(L_SIDES)


def l_shape(corner: str, **more: object) -> Json:
    """Write the L above."""
    notch = {"corner": corner, "length": 300, "width": 200}
    return {"kind": "l-shape", "length": 1000, "width": 600, "notch": notch, **more}


@pytest.mark.parametrize("corner", CORNERS)
def test_an_l_names_its_sides_wherever_its_notch_is(workshop: Workshop, corner: str) -> None:
    """Every side of an L lies where its name says, anticlockwise, with a sharp inside corner."""
    shape = shape_from(workshop, l_shape(corner, corner_radius=0))
    ends = [(s.name, s.line.coords[0], s.line.coords[-1]) for s in shape.sides]
    assert ends == list(L_SIDES[corner])
    assert shape.outline.exterior.is_ccw


@pytest.mark.parametrize("corner", CORNERS)
def test_an_l_is_a_rectangle_less_its_notch(workshop: Workshop, corner: str) -> None:
    """The area of an L is that of its box less its notch, and the fillet that fills the corner."""
    fillet_mm2 = 10**2 * (1 - math.pi / 4)
    shape = shape_from(workshop, l_shape(corner))
    assert shape.outline_area_mm2 == pytest.approx(600_000 - 60_000 + fillet_mm2, abs=1e-6)


@pytest.mark.parametrize("corner", CORNERS)
def test_an_l_has_one_inside_corner(workshop: Workshop, corner: str) -> None:
    """A notch's radius rounds the inside corner and no other."""
    outline = slab_of(workshop, l_shape(corner, corner_radii={corner: 60})).outline
    radii = corner_radii_mm(outline, 10.0)
    at = [i for i, radius in enumerate(radii) if radius == 60]
    box_corners = len(radii) - 3
    assert (len(at), sum(radii), box_corners) == (1, 60, 3)
    polygon_, _, _, area = outline_shape(outline, 1000, 600, 10)
    assert area == pytest.approx(540_000 + 3600 * (1 - math.pi / 4))
    assert polygon_.is_valid


def test_a_radius_for_all_rounds_every_corner_of_an_l(workshop: Workshop) -> None:
    """One corner radius takes five outside corners off and fills one inside."""
    shape = shape_from(workshop, l_shape("back-right", corner_radius=50))
    bite = 2500 * (1 - math.pi / 4)
    assert shape.outline_area_mm2 == pytest.approx(540_000 - 5 * bite + bite)


def test_a_notch_smaller_than_the_former_is_rounded_as_far_as_it_holds(workshop: Workshop) -> None:
    """A notch of 6 by 4 mm takes a radius of 4 mm, not the former's 10."""
    notch = {"corner": "back-left", "length": 6, "width": 4}
    outline = slab_of(workshop, l_shape("back-left") | {"notch": notch}).outline
    assert max(corner_radii_mm(outline, 10.0)) == 4
    assert shape_from(workshop, l_shape("back-left") | {"notch": notch}).outline.is_valid


@pytest.mark.parametrize(
    ("outline", "names"),
    [
        (box(900, 500), ("front", "right", "back", "left")),
        ({"kind": "round", "diameter": 900}, ("rim",)),
        (polygon((0, 0), (900, 0), (0, 700)), ("1", "2", "3")),
    ],
)
def test_sides_are_named_by_kind(workshop: Workshop, outline: Json, names: tuple[str, ...]) -> None:
    """A rectangle has four named sides, a round its rim, a polygon numbers from its first point."""
    assert side_names(slab_of(workshop, outline).outline) == names


@pytest.mark.parametrize("first", range(5))
@pytest.mark.parametrize("step", [1, -1])
def test_a_polygon_keeps_its_sides_numbers_either_way_round(
    workshop: Workshop, first: int, step: int
) -> None:
    """Side n of a polygon runs between its points n and n + 1, whichever way round they go."""
    ring = [(0, 0), (1500, 0), (1500, 600), (700, 900), (0, 560)]
    points = [ring[(first + step * i) % 5] for i in range(5)]
    shape = shape_from(workshop, polygon(*points))
    assert shape.outline.exterior.is_ccw
    for i in range(5):
        asked = LineString([points[i], points[(i + 1) % 5]])
        side = shape.side(str(i + 1))
        assert side.line.equals(asked)
        assert side.length_mm == pytest.approx(asked.length)


def test_an_inside_corner_of_a_polygon_is_rounded_like_an_ls(workshop: Workshop) -> None:
    """An L given by its points has the area of the L."""
    points = [(0, 0), (1000, 0), (1000, 400), (700, 400), (700, 600), (0, 600)]
    by_points = shape_from(workshop, polygon(*points))
    by_name = shape_from(workshop, l_shape("back-right"))
    assert by_points.outline_area_mm2 == pytest.approx(by_name.outline_area_mm2, abs=1e-6)
    assert by_points.outline.equals_exact(by_name.outline, 1e-6)


def test_outside_corners_of_a_polygon_stay_sharp(workshop: Workshop) -> None:
    """A triangle that nobody rounded has three corners and its own area."""
    shape = shape_from(workshop, polygon((0, 0), (900, 0), (0, 700)))
    assert len(shape.outline.exterior.coords) == 4
    assert shape.outline_area_mm2 == 315_000


@pytest.mark.parametrize("degrees", [30, 60, 90, 135, 170])
def test_a_fillet_touches_both_sides(degrees: float) -> None:
    """An arc begins and ends at r / tan(half the angle) from its corner, square to the sides."""
    half = math.radians(degrees) / 2
    after = (math.cos(2 * half) * 500, math.sin(2 * half) * 500)
    points, tangent, area = fillet((500, 0), (0, 0), after, 40)
    assert tangent == pytest.approx(40 / math.tan(half))
    assert points[0] == pytest.approx((tangent, 0))
    assert math.dist(points[-1], (0, 0)) == pytest.approx(tangent)
    centre = (tangent, 40)
    assert all(math.dist(point, centre) == pytest.approx(40) for point in points)
    assert area == pytest.approx(40 * tangent - 0.5 * 40**2 * (math.pi - 2 * half))


@pytest.mark.parametrize("along", [(1, 0), (1, 1), (43, 43), (-7, 3), (0.1, 0.3)])
def test_a_straight_corner_has_no_arc(along: tuple[float, float]) -> None:
    """A point on a straight side stays one point, whatever its radius and however it lies."""
    x, y = along
    corner = (422 + 43 * x, 550 + 43 * y)
    after = (422 + 119 * x, 550 + 119 * y)
    assert fillet((422, 550), corner, after, 20) == ([corner], 0.0, 0.0)


@pytest.mark.parametrize("degrees", [37, 66.4, 90, 141])
def test_an_arc_has_a_point_in_its_middle(degrees: float) -> None:
    """So that the sides on both of its hands take half of it each."""
    half = math.radians(degrees) / 2
    after = (math.cos(2 * half) * 500, math.sin(2 * half) * 500)
    points, _, _ = fillet((500, 0), (0, 0), after, 40)
    middle = points[len(points) // 2]
    assert len(points) % 2 == 1
    assert math.dist(middle, points[0]) == pytest.approx(math.dist(middle, points[-1]))


def test_a_rounded_square_loses_its_corners() -> None:
    """Four arcs of radius r take (4 - pi) r² off, and a side runs between the middles of arcs."""
    outline, sides, area = rounded(SQUARE, (30.0,) * 4, ("a", "b", "c", "d"))
    assert area == pytest.approx(10_000 - (4 - math.pi) * 900)
    assert outline.area == pytest.approx(area, rel=2e-4)  # chords lie inside their arcs
    for side in sides:
        assert side.length_mm == pytest.approx(40 + math.pi * 30 / 2, rel=1e-3)


def test_arcs_that_use_up_a_side_meet() -> None:
    """A square rounded by half its side is a disc, without a point twice."""
    outline, _, area = rounded(SQUARE, (50.0,) * 4, ("a", "b", "c", "d"))
    assert area == pytest.approx(math.pi * 2500)
    points = outline.exterior.coords[:-1]
    assert outline.is_valid
    assert len(points) == 128


@pytest.mark.parametrize(
    ("corners", "radius", "fits"),
    [
        (SQUARE, 50.0, True),
        (SQUARE, 50.01, False),
        (((0, 0), (20, 0), (10, 17.32)), 5.77, True),
        (((0, 0), (20, 0), (10, 17.32)), 5.78, False),
    ],
)
def test_a_ring_holds_arcs_up_to_a_radius(
    corners: tuple[tuple[float, float], ...], radius: float, *, fits: bool
) -> None:
    """A square holds arcs of half its side, an equilateral triangle of side / (2 sqrt 3)."""
    assert can_round(corners, (radius,) * len(corners)) is fits
    assert largest_radius_mm(corners) == pytest.approx(50 if len(corners) == 4 else 5.773, abs=1e-3)


def test_corners_that_cannot_be_rounded_stay_sharp() -> None:
    """A radius that the sides do not hold rounds nothing, and the area is the sharp one's."""
    outline, _, area = rounded(SQUARE, (51.0,) * 4, ("a", "b", "c", "d"))
    assert (len(outline.exterior.coords), area) == (5, 10_000)


def test_an_arc_that_would_run_into_another_side_is_left_out() -> None:
    """A spike that pokes into the corner to be rounded keeps the ring sharp."""
    ring = (
        (0, 0),
        (900, 0),
        (900, 600),
        (460, 600),
        (451, 305),
        (450, 300),
        (449, 305),
        (440, 600),
        (0, 600),
    )
    assert not can_round(ring, tuple(200.0 if i == 5 else 0.0 for i in range(9)))


def test_a_disc_reaches_its_four_extreme_points() -> None:
    """A disc of chords is exactly as wide and as deep as its diameter."""
    disc = circle((300, 200), 175)
    assert disc.bounds == pytest.approx((125, 25, 475, 375))
    assert all(
        Point(300, 200).distance(Point(p)) == pytest.approx(175) for p in disc.exterior.coords
    )


@pytest.mark.parametrize(
    ("more", "length", "width"),
    [
        ({}, 1200, 600),
        ({"size_from": "template-to-follow"}, 1200, 600),
        ({"size_from": "between-walls"}, 1194, 600),
        ({"size_from": "between-walls", "edges": {"back": {"profile": "wall"}}}, 1200, 597),
        ({"size_from": "between-walls",
          "edges": {s: {"profile": "wall"} for s in ("left", "back")}}, 1197, 597),
        ({"size_from": "over-units"}, 1200, 600),
        ({"size_from": "over-units",
          "rests": {"kind": "units", "units": [{"width": 600}],
                    "overhang": {"front": 20, "left": 15, "right": 300}}}, 1515, 620),
    ],
)  # fmt: skip
def test_a_slab_is_cast_to_the_size_that_it_needs(
    workshop: Workshop, more: Json, length: float, width: float
) -> None:
    """Fitting gaps of 3 mm come off wall sides, overhangs are added to units."""
    slab = slab_of(workshop, box(1200, 600), **more)
    assert finished_size_mm(slab, 3.0) == (length, width)
    shape = shape_from(workshop, box(1200, 600), **more)
    assert shape.outline.bounds == pytest.approx((0, 0, length, width))


def test_a_slab_between_walls_meets_them_left_and_right(workshop: Workshop) -> None:
    """Where no side is said to meet a wall, the left and the right one do."""
    assert wall_sides(slab_of(workshop, box(1200, 600))) == {"left", "right"}


def test_a_polygon_and_a_disc_are_as_large_as_drawn(workshop: Workshop) -> None:
    """Their finished size is that of the smallest upright box round them."""
    assert finished_size_mm(slab_of(workshop, {"kind": "round", "diameter": 900}), 3.0) == (
        900,
        900,
    )
    ring = slab_of(workshop, polygon((-100, 50), (900, 50), (0, 750)))
    assert finished_size_mm(ring, 3.0) == (1000, 700)
