"""Areas, lengths and distances against shapely's own and against areas worked by hand.

Shapely (GEOS) measures polygons of chords; ours are exact. An n-gon inscribed in a circle of radius
r has the area n/2 r² sin(2 pi/n) and lies within r (1 - cos(pi/n)) of it, which are the tolerances
here: with 128 chords a four-hundredth of a part in area, a third of a thousandth of the radius.
"""

import math

import pytest
import shapely
from shapely.geometry import LineString, Point, box
from shapely.geometry import Polygon as ShapelyPolygon

from ledgerstone.codec.order_in import read_order
from ledgerstone.shape import Shape, shape_of
from ledgerstone.workshop import Workshop
from support.documents import Json

CHORDS = 128
AREA_OF_CHORDS = CHORDS / (2 * math.pi) * math.sin(2 * math.pi / CHORDS)  # of a disc's, 0.9996
SAGITTA = 1 - math.cos(math.pi / CHORDS)  # of the radius, 0.0003


def shape(workshop: Workshop, outline: Json, *cutouts: Json) -> Shape:
    """Work out a slab 40 mm thick."""
    slab = {"outline": outline, "thickness": 40, "cutouts": list(cutouts)}
    return shape_of(read_order({"slabs": [slab]}, workshop).slabs[0], workshop)


def ring(*points: tuple[float, float], **more: object) -> Json:
    """Write a polygon."""
    return {"kind": "polygon", "points": [{"x": x, "y": y} for x, y in points], **more}


@pytest.mark.parametrize(
    ("outline", "area_mm2"),
    [
        ({"kind": "rectangle", "length": 1450, "width": 560}, 812_000),
        # 1450 x 560 less the four corners of a 40 mm radius: (4 - pi) 1600 = 1373.45
        ({"kind": "rectangle", "length": 1450, "width": 560, "corner_radius": 40}, 810_626.548),
        # A stadium: a square of 600 and a disc of 600.
        ({"kind": "rectangle", "length": 1200, "width": 600, "corner_radius": 300}, 642_743.339),
        ({"kind": "round", "diameter": 1000}, 785_398.163),
        # 1800 x 1100 less 900 x 500, and (1 - pi/4) 100 that fills the inside corner: 21.46
        ({"kind": "l-shape", "length": 1800, "width": 1100,
          "notch": {"corner": "back-right", "length": 900, "width": 500}}, 1_530_021.460),
        # The same with radii of 50 all round: five outside corners off, one inside filled.
        ({"kind": "l-shape", "length": 1800, "width": 1100, "corner_radius": 50,
          "notch": {"corner": "front-left", "length": 900, "width": 500}}, 1_527_853.982),
        (ring((0, 0), (900, 0), (0, 700)), 315_000),
        # A trapezium: (1500 x 600 + 1500 x 560) / 2
        (ring((0, 0), (1500, 0), (1500, 600), (0, 560)), 870_000),
        # A triangle of 3-4-5 rounded by 60: its area less r² (cot a/2 + cot b/2 + cot c/2 - pi),
        # where the cotangents come to (s/r): 3 + 2 + 1 = 6.
        (ring((0, 0), (800, 0), (0, 600), corner_radius=60), 240_000 - 3600 * (6 - math.pi)),
    ],
)  # fmt: skip
def test_areas_worked_by_hand(workshop: Workshop, outline: Json, area_mm2: float) -> None:
    """Outlines of every kind; tolerance half of the last figure given."""
    assert shape(workshop, outline).outline_area_mm2 == pytest.approx(area_mm2, abs=5e-4)


@pytest.mark.parametrize("diameter", [60, 400, 1000])
def test_a_disc_of_chords_has_the_polygons_own_area(workshop: Workshop, diameter: float) -> None:
    """Shapely measures n/2 r² sin(2 pi/n) of our polygon, and we say pi r²."""
    disc = shape(workshop, {"kind": "round", "diameter": diameter})
    assert disc.outline_area_mm2 == pytest.approx(math.pi * diameter**2 / 4, rel=1e-12)
    assert disc.outline.area == pytest.approx(disc.outline_area_mm2 * AREA_OF_CHORDS, rel=1e-9)


def test_a_rounded_box_is_shapelys_buffered_box(workshop: Workshop) -> None:
    """A box of 1200 by 500 rounded by 80 is one of 1040 by 340 widened by 80 all round."""
    ours = shape(
        workshop, {"kind": "rectangle", "length": 1200, "width": 500, "corner_radius": 80}
    ).outline
    theirs = box(80, 80, 1120, 420).buffer(80, quad_segs=CHORDS // 4)
    assert ours.area == pytest.approx(theirs.area, rel=1e-9)
    assert ours.hausdorff_distance(theirs) < 1e-6


def test_a_slot_is_shapelys_buffered_line(workshop: Workshop) -> None:
    """A slot of 300 by 40 is a line of 260 widened by 20 all round, turned as asked."""
    slot = {"kind": "slot", "length": 300, "width": 40, "centre": {"x": 700, "y": 300}}
    found = shape(workshop, {"kind": "rectangle", "length": 1400, "width": 600},
                  slot | {"turn_degrees": 30}).openings[0]  # fmt: skip
    dx, dy = 130 * math.cos(math.pi / 6), 130 * math.sin(math.pi / 6)
    line = LineString([(700 - dx, 300 - dy), (700 + dx, 300 + dy)])
    theirs = line.buffer(20, quad_segs=CHORDS // 4)
    assert found.polygon.hausdorff_distance(theirs) < 1e-6
    assert found.area_mm2 == pytest.approx(theirs.area, rel=1 - AREA_OF_CHORDS)


def test_net_area_is_shapelys_difference(workshop: Workshop) -> None:
    """Three openings in an L, and shapely's difference of its own discs and boxes."""
    outline = {"kind": "l-shape", "length": 1800, "width": 1100, "corner_radius": 0,
               "notch": {"corner": "back-right", "length": 900, "width": 500}}  # fmt: skip
    found = shape(
        workshop,
        outline,
        {"kind": "circle", "diameter": 360, "centre": {"x": 450, "y": 700}},
        {"kind": "rectangle", "length": 490, "width": 300, "corner_radius": 0,
         "centre": {"x": 1350, "y": 300}},
        {"kind": "circle", "diameter": 35, "centre": {"x": 450, "y": 950}},
    )  # fmt: skip
    ell = ShapelyPolygon([(0, 0), (1800, 0), (1800, 600), (900, 600), (900, 1100), (0, 1100)])
    discs = [
        Point(450, 700).buffer(180, quad_segs=512),
        Point(450, 950).buffer(17.5, quad_segs=512),
    ]
    theirs = ell.difference(shapely.unary_union([*discs, box(1105, 150, 1595, 450)]))
    assert found.net_area_mm2 == pytest.approx(theirs.area, abs=1.0)  # of 2048 chords


@pytest.mark.parametrize("turn", [0, 20, 45, 90])
def test_strips_are_shapelys_distances(workshop: Workshop, turn: float) -> None:
    """A hob's opening to every side and to a tap, against shapely's distance of its own boxes."""
    hob = {"kind": "rectangle", "length": 560, "width": 490, "corner_radius": 0,
           "centre": {"x": 700, "y": 500}, "turn_degrees": turn}  # fmt: skip
    tap = {"kind": "circle", "diameter": 35, "centre": {"x": 1300, "y": 900}}
    found = shape(workshop, ring((0, 0), (1500, 0), (1500, 1000), (0, 960)), hob, tap)
    theirs = shapely.affinity.rotate(box(420, 255, 980, 745), turn, origin=(700, 500))
    hole = Point(1300, 900).buffer(17.5, quad_segs=512)
    sides = {"1": [(0, 0), (1500, 0)], "2": [(1500, 0), (1500, 1000)],
             "3": [(1500, 1000), (0, 960)], "4": [(0, 960), (0, 0)]}  # fmt: skip
    widths = {(strip.opening, strip.faces): strip.width_mm for strip in found.strips}
    for name, ends in sides.items():
        assert widths[0, name] == pytest.approx(theirs.distance(LineString(ends)), abs=0.006)
        near = hole.distance(LineString(ends))
        assert widths[1, name] == pytest.approx(near, abs=17.5 * SAGITTA + 0.006)
    assert widths[0, 1] == pytest.approx(theirs.distance(hole), abs=17.5 * SAGITTA + 0.006)


@pytest.mark.parametrize(("x", "y"), [(450, 250), (300, 700), (641, 641), (200, 450)])
def test_a_strip_to_a_rim_is_the_radius_less_the_rest(
    workshop: Workshop, x: float, y: float
) -> None:
    """R - distance from the middle - r, to the chords' sagitta of the larger circle."""
    disc = {"kind": "round", "diameter": 1000}
    hole = {"kind": "circle", "diameter": 100, "centre": {"x": x, "y": y}}
    exact = 500 - math.hypot(x - 500, y - 500) - 50
    found = shape(workshop, disc, hole).strips[0].width_mm
    assert exact - 500 * SAGITTA - 0.006 <= found <= exact + 50 * SAGITTA + 0.006
