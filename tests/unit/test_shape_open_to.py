"""Openings that are open to a side: which way they leave, and what they take with them."""

import math

import pytest
from shapely.geometry import Polygon

from ledgerstone.shape import Shape
from ledgerstone.workshop import Workshop
from support.slabs import box, cut, hole, polygon, shape_from

BITE = 1 - math.pi / 4  # a corner of radius 1 less its arc


def strips(shape: Shape) -> dict[tuple[int, str | int], float]:
    """Widths of strips by opening and what it faces."""
    return {(strip.opening, strip.faces): strip.width_mm for strip in shape.strips}


def test_an_opening_is_open_to_the_side_it_names(workshop: Workshop) -> None:
    """An apron sink of 600 by 450 whose back is at 425 leaves no concrete before it."""
    sink = cut("rectangle", (600, 450), (900, 200), open_to="front")
    shape = shape_from(workshop, box(1800, 650), sink)
    assert shape.openings[0].polygon.bounds == pytest.approx((600, 0, 1200, 425))
    assert shape.openings[0].area_mm2 == pytest.approx(600 * 425 - 2 * 100 * BITE, rel=1e-5)
    assert "front" not in {strip.faces for strip in shape.strips}
    assert strips(shape)[0, "back"] == 225


@pytest.mark.parametrize(
    ("side", "bounds"),
    [
        ("front", (600, 0, 700, 350)),
        ("back", (600, 250, 700, 600)),
        ("left", (0, 250, 700, 350)),
        ("right", (600, 250, 1400, 350)),
    ],
)
def test_an_opening_leaves_straight_through_its_side(
    workshop: Workshop, side: str, bounds: tuple[float, ...]
) -> None:
    """A hole of 100 mm at (650, 300) grows to the side it is open to, no wider than it was."""
    shape = shape_from(workshop, box(1400, 600), hole(100, 650, 300, open_to=side))
    assert shape.openings[0].polygon.bounds == pytest.approx(bounds)


def test_an_opening_in_an_l_leaves_square_to_its_notch(workshop: Workshop) -> None:
    """The rounded end of a notch's side does not tilt the opening's way out."""
    notch = {"corner": "back-right", "length": 900, "width": 500}
    outline = {"kind": "l-shape", "length": 1800, "width": 1100, "notch": notch}
    outline["corner_radii"] = {"back-right": 200}
    shape = shape_from(workshop, outline, hole(90, 1500, 520, open_to="notch-x"))
    assert shape.openings[0].polygon.bounds == pytest.approx((1455, 475, 1545, 600))


def test_an_opening_leaves_a_round_top_by_the_shortest_way(workshop: Workshop) -> None:
    """A hole that is open to the rim reaches it outwards from the middle."""
    disc = {"kind": "round", "diameter": 900}
    shape = shape_from(workshop, disc, hole(80, 450, 120, open_to="rim"))
    x0, y0, x1, y1 = shape.openings[0].polygon.bounds
    assert (x0, x1, y1) == pytest.approx((410, 490, 160))
    assert y0 == pytest.approx(0, abs=0.1)


def test_an_opening_at_the_middle_of_a_round_top_leaves_by_the_front(workshop: Workshop) -> None:
    """Where no way out is the shortest, the front is taken."""
    disc = {"kind": "round", "diameter": 900}
    shape = shape_from(workshop, disc, hole(80, 450, 450, open_to="rim"))
    assert shape.openings[0].polygon.bounds[3] == pytest.approx(490)
    assert shape.openings[0].polygon.bounds[1] == pytest.approx(0, abs=0.1)


def test_an_opening_leaves_square_to_a_skewed_side(workshop: Workshop) -> None:
    """The way out of a polygon is square to the side it is open to."""
    shape = shape_from(
        workshop,
        polygon((0, 0), (1000, 0), (1000, 600), (0, 350)),
        hole(100, 500, 250, open_to="3"),
    )
    opening = shape.openings[0].polygon
    assert opening.distance(shape.side("3").line) == pytest.approx(0, abs=1e-6)
    # Along the wall, which falls by 1 in 4, the opening is as wide as it was.
    along = [(x * 4 + y) / math.sqrt(17) for x, y in opening.exterior.coords]
    assert max(along) - min(along) == pytest.approx(100, abs=0.1)


def test_an_opening_with_a_step_keeps_it_on_its_way_out(workshop: Workshop) -> None:
    """An L-shaped opening that leaves by the back has its step filled only where it passes."""
    ring = [(500, 300), (900, 300), (900, 500), (800, 500), (800, 400), (500, 400)]
    opened = polygon(*ring, corner_radius=0, open_to="front")
    shape = shape_from(workshop, box(1500, 700), opened)
    # 400 wide to the front from 300; behind it the step 400 x 100 and the tongue 100 x 100.
    assert shape.openings[0].area_mm2 == pytest.approx(400 * 300 + 400 * 100 + 100 * 100)


def test_an_opening_stays_in_its_own_arm_of_a_u(workshop: Workshop) -> None:
    """A way out that would cross the other arm ends where the slab first does."""
    u = polygon(
        (0, 0), (1800, 0), (1800, 900), (1300, 900), (1300, 400), (500, 400), (500, 900), (0, 900)
    )
    shape = shape_from(workshop, u, hole(90, 250, 650, open_to="6"))
    assert shape.openings[0].polygon.bounds == pytest.approx((205, 605, 500, 695))


def test_an_opening_outside_the_slab_is_no_opening_in_it(workshop: Workshop) -> None:
    """Being open to a side does not draw an opening in from beyond the other one."""
    shape = shape_from(workshop, box(900, 500), hole(100, 400, 2000, open_to="front"))
    assert shape.openings[0].polygon.is_empty
    assert shape.net_area_mm2 == 900 * 500
    assert shape.strips == ()


def test_nothing_is_left_where_an_opening_takes_all(workshop: Workshop) -> None:
    """A slab that is all opening has no pieces and no area."""
    hole_ = cut("rectangle", (950, 1200), (450, 250), open_to="front")
    shape = shape_from(workshop, box(900, 500), hole_)
    assert (shape.net.is_empty, shape.net.geom_type, shape.net_area_mm2) == (
        True,
        "MultiPolygon",
        0,
    )


def test_no_sliver_of_concrete_is_left_at_an_open_side(workshop: Workshop) -> None:
    """A slot turned half round and open to the left is a bite out of the side, and no hole.

    Found by random orders: turning left its way out 1e-14 mm short of the side.
    """
    slot = cut("slot", (8, 259), (557, 545), turn_degrees=180, open_to="left")
    outline = box(1759, 968, corner_radii={"front-left": 33, "back-left": 117})
    shape = shape_from(workshop, outline, slot)
    assert isinstance(shape.net, Polygon)
    assert len(shape.net.interiors) == 0
    assert shape.net.area == pytest.approx(
        shape.outline.area - shape.openings[0].polygon.area, rel=1e-9
    )
