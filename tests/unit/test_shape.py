"""A slab's plan: areas, openings, strips, reliefs and volumes, against cases worked by hand."""

import math
from typing import Any

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.shape import Shape, edge_lengths_mm, shape_of
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, cut, hole, polygon, shape_from, slab_of

BITE = 1 - math.pi / 4  # a corner of radius 1 less its arc


def strips(shape: Shape) -> dict[tuple[int, str | int], float]:
    """Widths of strips by opening and what it faces."""
    return {(strip.opening, strip.faces): strip.width_mm for strip in shape.strips}


def test_the_example_has_the_strips_that_a_ruler_shows(
    workshop: Workshop, example_order: dict[str, Any]
) -> None:
    """Basin 360 at (980, 270) and tap 35 at (980, 505) on 1450 by 560, worked by hand."""
    slab = read_order(example_order, workshop).slabs[0]
    assert strips(shape_of(slab, workshop)) == {
        (0, "front"): 270 - 180,
        (0, "right"): 1450 - 980 - 180,
        (0, "back"): 560 - 270 - 180,
        (0, "left"): 980 - 180,
        (1, "front"): 505 - 17.5,
        (1, "right"): 1450 - 980 - 17.5,
        (1, "back"): 560 - 505 - 17.5,
        (1, "left"): 980 - 17.5,
        (0, 1): 505 - 270 - 180 - 17.5,
    }


def test_a_strip_says_where_it_is(workshop: Workshop) -> None:
    """A strip's line runs across it, from the opening to what it faces."""
    shape = shape_from(workshop, box(1450, 560), hole(360, 980, 270))
    start, end = next(strip.line_mm for strip in shape.strips if strip.faces == "front")
    assert start == pytest.approx((980, 90))
    assert end == pytest.approx((980, 0))


def test_the_example_has_its_own_area_and_volume(
    workshop: Workshop, example_order: dict[str, Any]
) -> None:
    """Net area by the exact circles; volume less a 5 mm bevel along 1450 mm."""
    shape = shape_of(read_order(example_order, workshop).slabs[0], workshop)
    net = 1450 * 560 - math.pi / 4 * (360**2 + 35**2)
    assert shape.net_area_mm2 == pytest.approx(net, abs=1e-6)
    assert shape.volume_mm3 == pytest.approx(net * 40 - 0.5 * 5**2 * 1450, abs=1e-3)


@pytest.mark.parametrize(
    ("cutout", "area"),
    [
        (hole(200, 700, 300), math.pi * 100**2),
        (cut("rectangle", (400, 250), (700, 300)), 400 * 250 - 4 * 100 * BITE),
        (cut("rectangle", (400, 250), (700, 300), corner_radius=0), 400 * 250),
        (cut("rectangle", (400, 250), (700, 300), corner_radius=125), 150 * 250 + math.pi * 125**2),
        (cut("rectangle", (16, 12), (700, 300)), 4 * 12 + math.pi * 6**2),
        (cut("slot", (300, 40), (700, 300)), 260 * 40 + math.pi * 20**2),
        (cut("slot", (40, 300), (700, 300)), 260 * 40 + math.pi * 20**2),
        (polygon((500, 200), (800, 200), (800, 400), corner_radius=0), 300 * 200 / 2),
        (polygon((500, 400), (800, 400), (800, 200), (500, 200)), 300 * 200 - 4 * 100 * BITE),
    ],
)
@pytest.mark.parametrize("turn", [0, 30, 90, -200])
def test_an_opening_has_its_exact_area_however_turned(
    workshop: Workshop, cutout: Json, area: float, turn: float
) -> None:
    """Circles, rounded boxes, slots and polygons by their formulae; turning changes nothing."""
    turned = cutout if cutout["kind"] == "polygon" else cutout | {"turn_degrees": turn}
    shape = shape_from(workshop, box(1400, 600), turned)
    assert shape.openings[0].area_mm2 == pytest.approx(area)
    assert shape.net_area_mm2 == pytest.approx(1400 * 600 - area)
    assert shape.openings[0].polygon.area == pytest.approx(area, rel=2e-3)  # of chords


def test_a_slot_turned_by_90_degrees_lies_across(workshop: Workshop) -> None:
    """A slot of 300 by 40 that is turned reaches 150 mm to the front and back of its centre."""
    shape = shape_from(
        workshop, box(1400, 600), cut("slot", (300, 40), (700, 300), turn_degrees=90)
    )
    assert shape.openings[0].polygon.bounds == pytest.approx((680, 150, 720, 450))
    assert strips(shape)[0, "front"] == 150


def test_turns_are_anticlockwise(workshop: Workshop) -> None:
    """A slot turned by 30 degrees rises to the right."""
    shape = shape_from(
        workshop, box(1400, 600), cut("slot", (300, 40), (700, 300), turn_degrees=30)
    )
    right_end = max(shape.openings[0].polygon.exterior.coords)
    assert right_end[1] > 300


def test_an_opening_too_small_for_the_former_is_still_an_opening(workshop: Workshop) -> None:
    """A triangle of 20 mm takes the arcs that its sides hold: its inscribed circle."""
    shape = shape_from(
        workshop, box(900, 500), polygon((400, 200), (420, 200), (410, 200 + 10 * math.sqrt(3)))
    )
    inscribed = math.pi * (20 / (2 * math.sqrt(3))) ** 2
    assert shape.openings[0].polygon.is_valid
    assert shape.openings[0].area_mm2 == pytest.approx(inscribed, rel=1e-4)


def test_an_opening_across_the_slab_leaves_two_pieces(workshop: Workshop) -> None:
    """What is left is measured, not assumed."""
    shape = shape_from(workshop, box(1400, 600), cut("rectangle", (60, 900), (700, 300)))
    assert len(getattr(shape.net, "geoms", ())) == 2
    assert shape.net_area_mm2 == pytest.approx(1340 * 600)


def test_overlapping_openings_are_taken_off_once(workshop: Workshop) -> None:
    """Two openings one on the other take their common area off once."""
    one = cut("rectangle", (200, 200), (500, 300), corner_radius=0)
    other = cut("rectangle", (200, 200), (600, 300), corner_radius=0)
    shape = shape_from(workshop, box(1400, 600), one, other)
    assert shape.net_area_mm2 == pytest.approx(1400 * 600 - 300 * 200)
    assert strips(shape)[0, 1] == 0.0


@pytest.mark.parametrize(
    ("outline", "cutout", "expected"),
    [
        # A square turned by 45 degrees reaches half its diagonal.
        (box(1000, 1000),
         cut("rectangle", (200, 200), (500, 400), turn_degrees=45, corner_radius=0),
         {(0, "front"): 400 - 100 * math.sqrt(2), (0, "right"): 500 - 100 * math.sqrt(2)}),
        # On a disc the narrowest strip lies outwards from the middle.
        ({"kind": "round", "diameter": 1000}, hole(100, 500, 250), {(0, "rim"): 250 - 50}),
        # Side 2 of this triangle is x/900 + y/700 = 1.
        (polygon((0, 0), (900, 0), (0, 700)), hole(100, 200, 200),
         {(0, "1"): 150, (0, "3"): 150,
          (0, "2"): (1 - 200 / 900 - 200 / 700) / math.hypot(1 / 900, 1 / 700) - 50}),
    ],
)  # fmt: skip
def test_strips_on_other_outlines(
    workshop: Workshop, outline: Json, cutout: Json, expected: dict[tuple[int, str], float]
) -> None:
    """Distances by hand: a turned square, a hole in a disc, a hole in a triangle."""
    widths = strips(shape_from(workshop, outline, cutout))
    for strip, width in expected.items():
        assert widths[strip] == pytest.approx(width, abs=0.15)  # the sagitta of a chord, r = 500


def test_a_strip_faces_a_rounded_corner(workshop: Workshop) -> None:
    """A rounded corner takes concrete from a hole beside it: measured along the diagonal."""
    shape = shape_from(workshop, box(800, 800, corner_radius=300), hole(60, 100, 100))
    to_the_arc = 300 - math.hypot(200, 200) - 30
    assert strips(shape)[0, "front"] == pytest.approx(max(to_the_arc, 0), abs=0.06)


@pytest.mark.parametrize(
    ("edge", "volume_mm3"),
    [
        ({"profile": "square"}, 0.0),
        ({"profile": "wall"}, 0.0),
        ({"profile": "bevel", "size": 10}, -0.5 * 10**2 * 900),
        ({"profile": "round", "size": 10}, -BITE * 10**2 * 900),
        ({"profile": "bevel", "size": 4000}, -0.5 * 40**2 * 900),
        ({"drop": {"depth": 80}}, 80 * 40 * 900),
        ({"profile": "round", "size": 6, "drop": {"depth": 600, "mitred": True}},
         600 * 40 * 900 - BITE * 6**2 * 900),
    ],
)  # fmt: skip
def test_edges_add_and_take_concrete(workshop: Workshop, edge: Json, volume_mm3: float) -> None:
    """Bevels and rounds come off the top arris of a side of 900 mm; drops hang from it."""
    shape = shape_from(workshop, box(900, 500), edges={"front": edge})
    assert shape.volume_mm3 == pytest.approx(900 * 500 * 40 + volume_mm3, abs=1e-3)


def test_a_rim_is_bevelled_all_round(workshop: Workshop) -> None:
    """A bevel on a disc comes off along its circumference."""
    edges = {"rim": {"profile": "bevel", "size": 8}}
    shape = shape_from(workshop, {"kind": "round", "diameter": 900}, edges=edges)
    volume = math.pi * 450**2 * 40 - 0.5 * 64 * math.pi * 900
    assert shape.volume_mm3 == pytest.approx(volume, abs=1e-3)


def relief(size: tuple[float, float], depth: float, at: tuple[float, float]) -> Json:
    """Write a recess."""
    place = {"x": at[0], "y": at[1]}
    return {"kind": "recess", "outline": box(*size), "depth": depth, "at": place}


@pytest.mark.parametrize(
    ("reliefs", "taken"),
    [
        ([relief((400, 300), 6, (50, 50))], 400 * 300 * 6),
        ([relief((400, 300), 6, (700, 50))], 200 * 300 * 6),
        ([relief((400, 300), 60, (50, 50))], 400 * 300 * 40),
        ([relief((400, 300), 6, (50, 50)), relief((400, 300), 9, (250, 50))],
         400 * 300 * 9 + 200 * 300 * 6),
        ([relief((400, 300), 6, (50, 50))] * 20, 400 * 300 * 6),
        ([relief((400, 300), 6, (5000, 50))], 0),
    ],
    ids=("one", "over the edge", "deeper than the slab", "two that overlap", "the same", "far off"),
)  # fmt: skip
def test_reliefs_take_concrete_once(workshop: Workshop, reliefs: list[Json], taken: float) -> None:
    """A relief takes its area times its depth, on the slab alone; where two meet, the deeper."""
    shape = shape_from(workshop, box(900, 500), reliefs=reliefs)
    assert shape.volume_mm3 == pytest.approx(900 * 500 * 40 - taken, abs=1e-3)


def test_a_relief_takes_nothing_from_an_opening(workshop: Workshop) -> None:
    """Where a relief lies over an opening there is nothing left to take."""
    sink = cut("rectangle", (200, 200), (250, 200), corner_radius=0)
    shape = shape_from(workshop, box(900, 500), sink, reliefs=[relief((400, 300), 10, (50, 50))])
    net = 900 * 500 - 200 * 200
    assert shape.volume_mm3 == pytest.approx(net * 40 - (400 * 300 - 200 * 200) * 10, abs=1e-3)


def test_edge_lengths_add_up_to_the_outline(workshop: Workshop) -> None:
    """Sides that nobody described are square; every millimetre is counted once."""
    edges = {"front": {"profile": "bevel", "size": 5}, "back": {"profile": "wall"}}
    slab = slab_of(workshop, box(1450, 560), edges=edges)
    lengths = edge_lengths_mm(slab, shape_of(slab, workshop))
    assert lengths == {"bevel": 1450, "wall": 1450, "square": 1120}


def test_a_shape_knows_no_side_of_another_name(workshop: Workshop) -> None:
    """Asking a rectangle for its rim is a mistake."""
    with pytest.raises(KeyError):
        shape_from(workshop, box(900, 500)).side("rim")
