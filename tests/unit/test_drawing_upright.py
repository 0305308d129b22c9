"""Slabs that stand upright in the view: where they stand, and how they are seen.

The eye looks from 24° right of the front and 37° down, in parallel: cos 24° = 0.91355,
sin 24° = 0.40674, cos 37° = 0.79864, sin 37° = 0.60182. Areas and corners are worked out by hand
from these.
"""

from __future__ import annotations

from typing import Any

import pytest
from shapely.geometry import Polygon

from ledgerstone.codec.order_in import read_order
from ledgerstone.drawing import DrawnSlab, draw_view
from ledgerstone.drawing.camera import LEVEL, Camera, Pose, on_end_pose, standing_pose
from ledgerstone.drawing.room import walls_of
from ledgerstone.drawing.setting import stand_together
from ledgerstone.drawing.standing import Standing
from ledgerstone.shape import shape_of
from ledgerstone.workshop import Workshop
from support.calibration import on_units, order
from support.drawing_reader import read
from support.slabs import box, hole, slab_json

COS_TURN, SIN_TURN, COS_RISE, SIN_RISE = 0.91355, 0.40674, 0.79864, 0.60182
COLLECT = {"kind": "collect"}
TOP = slab_json(box(2400, 620), rests=on_units(600, 600, 600, 600, front=20))
SPLASH = slab_json(box(2400, 500), use="splashback", thickness=20)
PANEL = slab_json(box(620, 900), use="end-panel")
CORNER = {"one": {"slab": 0, "side": "front"}, "other": {"slab": 1, "side": "right"}, "gap": 2}


def stood(workshop: Workshop, *slabs: dict[str, Any], **more: Any) -> list[Standing]:
    """Set an order's slabs in the room."""
    asked = read_order(order(COLLECT, *slabs, **more), workshop)
    return stand_together(pieces(workshop, *slabs, **more), asked.joins)


def pieces(workshop: Workshop, *slabs: dict[str, Any], **more: Any) -> list[DrawnSlab]:
    """Set a different grey on each of an order's slabs."""
    asked = read_order(order(COLLECT, *slabs, **more), workshop)
    return [DrawnSlab(one, shape_of(one, workshop), "#5b5d5a", 0.2, "x") for one in asked.slabs]


def space(standing: Standing) -> tuple[float, ...]:
    """Box that a slab takes up: the room's x, y and height above the floor, least and most."""
    xs, ys, zs = zip(*standing.corners(), strict=True)
    return min(xs), max(xs), min(ys), max(ys), min(zs), max(zs)


def seen_area(standing: Standing) -> float:
    """Area on the sheet of a rectangular slab's face, a millimetre a unit."""
    x0, y0, x1, y1 = standing.piece.shape.outline.bounds
    camera = Camera().set_down(standing.at_mm, standing.pose)
    course = ((x0, y0), (x1, y0), (x1, y1), (x0, y1))
    return Polygon([camera.at(x, y, 0.0) for x, y in course]).area


def test_a_splashback_stands_on_the_back_of_its_top(workshop: Workshop) -> None:
    """Its back is in line with the top's, its foot on the top, its face to the room."""
    top, splash = stood(workshop, TOP, SPLASH)
    height = 40 + 0.36 * 2400  # as high as the view shows units under so short a run
    assert top.height_mm == pytest.approx(height)
    assert space(splash) == pytest.approx((0, 2400, 600, 620, height, height + 500))
    assert splash.front == pytest.approx((0.0, -1.0))


def test_its_face_is_seen_as_large_as_its_turn_makes_it(workshop: Workshop) -> None:
    """One to the front by cos 24° cos 37°, one to the right by sin 24° cos 37°."""
    _, splash = stood(workshop, TOP, SPLASH)
    assert seen_area(splash) == pytest.approx(2400 * 500 * COS_TURN * COS_RISE, rel=1e-4)
    _, panel = stood(workshop, TOP, PANEL)
    assert seen_area(panel) == pytest.approx(620 * 900 * SIN_TURN * COS_RISE, rel=1e-4)


def test_corners_of_an_upright_plate_are_seen_where_they_stand() -> None:
    """From a plate's foot, 1000 mm along and 1000 mm up, each where the projection says by hand."""
    camera = Camera().set_down((0.0, 600.0, 40.0), standing_pose((0.0, -1.0)))
    foot = (600 * SIN_TURN, -(600 * COS_TURN * SIN_RISE + 40 * COS_RISE))
    assert camera.at(0, 0, 0) == pytest.approx(foot, abs=0.01)
    along = (foot[0] + 1000 * COS_TURN, foot[1] + 1000 * SIN_TURN * SIN_RISE)
    assert camera.at(1000, 0, 0) == pytest.approx(along, abs=0.02)
    assert camera.at(0, 1000, 0) == pytest.approx((foot[0], foot[1] - 1000 * COS_RISE), abs=0.02)


@pytest.mark.parametrize("pose", [standing_pose((0.0, -1.0)), on_end_pose((1.0, 0.0)), LEVEL])
def test_a_plates_transform_lays_points_where_its_camera_sees_them(pose: Pose) -> None:
    """What is drawn in plane millimetres and what is drawn on the sheet fall together."""
    camera = Camera(0.3, (40.0, 500.0), pose)
    a, b, c, d, e, f = map(float, camera.plane(-20.0)[7:-1].split())
    laid = (a * 700 + c * 300 + e, b * 700 + d * 300 + f)
    assert laid == pytest.approx(camera.at(700, 300, -20), abs=0.01)


def test_a_way_across_the_sheet_is_square_to_what_a_plate_is_thick() -> None:
    """For a level plate it is the sheet's own; for each the thickness runs square to it."""
    assert Camera().across == pytest.approx((1.0, 0.0))
    for pose in (standing_pose((0.0, -1.0)), standing_pose((1.0, 0.0))):
        camera = Camera(1.0, (0.0, 0.0), pose)
        x, y = camera.at(0.0, 0.0, 1.0)
        assert x * camera.across[0] + y * camera.across[1] == pytest.approx(0.0, abs=1e-9)


def test_two_end_panels_stand_at_both_ends_and_carry_the_top(workshop: Workshop) -> None:
    """They reach from the floor to the top's own level, beyond its ends, whichever way entered."""
    for panel in (PANEL, slab_json(box(900, 620), use="end-panel")):
        top, *ends = stood(workshop, TOP, {**panel, "quantity": 2})
        left, right = sorted(ends, key=lambda one: one.front[0])
        assert top.height_mm == pytest.approx(900)
        assert space(right) == pytest.approx((2400, 2440, 0, 620, 0, 900))
        assert space(left) == pytest.approx((-40, 0, 0, 620, 0, 900))


def test_a_panel_keeps_off_a_wall_and_off_a_corner(workshop: Workshop) -> None:
    """It stands at the end that is free."""
    walled = {**TOP, "edges": {"right": {"profile": "wall"}}}
    assert stood(workshop, walled, PANEL)[1].front == pytest.approx((-1.0, 0.0))
    short = slab_json(box(1300, 620))
    *_, panel = stood(workshop, TOP, short, PANEL, joins=[CORNER])
    assert panel.front == pytest.approx((1.0, 0.0))  # the second run stands at the left end


def test_a_join_says_on_which_top_and_side_it_stands(workshop: Workshop) -> None:
    """A splashback joined to a top's left side stands along the left wall, over its gap."""
    side = slab_json(box(620, 300), use="splashback", thickness=20)
    join = {"one": {"slab": 1, "side": "front"}, "other": {"slab": 0, "side": "left"}, "gap": 3}
    top, splash = stood(workshop, TOP, side, joins=[join])
    low = top.height_mm + 3
    assert space(splash) == pytest.approx((0, 20, 0, 620, low, low + 300))
    assert walls_of([top, splash]).left_mm == pytest.approx(0)


def test_a_long_upstand_goes_into_the_corner_of_two_tops(workshop: Workshop) -> None:
    """Behind the second run it also passes the end of the first, and leaves neither."""
    own = slab_json(box(2400, 100), use="upstand", thickness=20)
    long = slab_json(box(1922, 100), use="upstand", thickness=20)
    tops = (TOP, slab_json(box(1300, 620)))
    first, second, *_, upstand = stood(workshop, *tops, own, long, joins=[CORNER])
    (_, low, _, _), (_, _, _, high) = second.bounds, first.bounds
    assert space(upstand)[:4] == pytest.approx((0, 20, low, high), abs=0.01)
    assert high - low == pytest.approx(1300 + 2 + 620)


def test_copies_stand_in_a_row_as_far_as_there_is_room(workshop: Workshop) -> None:
    """Of three of 1200 behind 2400, two are seen, end to end."""
    upstand = slab_json(box(1200, 100), use="upstand", thickness=20, quantity=3)
    _, one, other = stood(workshop, TOP, upstand)
    assert space(one)[:2] == pytest.approx((0, 1200))
    assert space(other)[:2] == pytest.approx((1200, 2400))


def test_a_splashback_by_itself_stands_at_a_wall(workshop: Workshop) -> None:
    """With no top it stands on the floor, the wall behind it."""
    (splash,) = stood(workshop, SPLASH)
    assert space(splash) == pytest.approx((0, 2400, -20, 0, 0, 500))
    assert walls_of([splash]).back_mm == pytest.approx(0)


def test_a_picture_of_all_of_it_is_light_and_shows_each(workshop: Workshop) -> None:
    """A run with a splashback, its socket, and two panels: four faces, at most 80 kB."""
    socket = {**SPLASH, "cutouts": [hole(70, 2000, 150, label="socket")]}
    slabs = (TOP, socket, {**PANEL, "quantity": 2})
    svg = draw_view(pieces(workshop, *slabs), title="View")
    parts = [node for node in read(svg).iter() if node.get("data-part") == "top"]
    assert len(parts) == 4
    assert len(svg.encode()) <= 80_000
