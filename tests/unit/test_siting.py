"""Where an opening goes whose place nobody said."""

import math
from dataclasses import replace

import pytest
from shapely.geometry import Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from ledgerstone.siting import PlacedOpening, UnplacedOpening, place_for
from ledgerstone.strip_rules import clear_mm
from ledgerstone.workshop import Workshop

TOP = box(0, 0, 1400, 560)
L_SHAPE = Polygon([(0, 0), (600, 0), (600, 900), (2400, 900), (2400, 1500), (0, 1500)])


def test_an_opening_goes_in_the_middle(workshop: Workshop) -> None:
    """Where nothing stands in its way an opening is centred on the slab."""
    place = place_for(TOP, [], UnplacedOpening(400, 300), workshop.shaping.strips)
    assert place == pytest.approx((700, 280))


def test_an_opening_goes_in_the_middle_of_its_unit(workshop: Workshop) -> None:
    """A basin over a unit is centred in that unit's width."""
    wanted = UnplacedOpening(380, 380, is_round=True, between_mm=(600, 1400))
    assert place_for(TOP, [], wanted, workshop.shaping.strips) == pytest.approx((1000, 280))


def test_a_tap_stands_behind_its_basin(workshop: Workshop) -> None:
    """A tap's hole is on its basin's centre line, behind it, with the workshop's strips kept."""
    basin = PlacedOpening(500, 250, 380, 380, is_round=True)
    wanted = UnplacedOpening(35, 35, is_round=True, rim="covered", behind=basin)
    place = place_for(TOP, [basin], wanted, workshop.shaping.strips)
    assert place is not None
    keep = clear_mm(workshop.shaping.strips, 35, "covered")
    assert place[0] == pytest.approx(500)
    assert 250 + 190 + keep + 17.5 - 1e-3 <= place[1] <= 560 - keep - 17.5 + 1e-3


def test_an_opening_is_at_the_side_that_was_said(workshop: Workshop) -> None:
    """The workshop's strip from the front or the back; a tap at the back is behind its basin."""
    keep = clear_mm(workshop.shaping.strips, 35, "shown")
    hole = UnplacedOpening(35, 35, is_round=True, at_side="back")
    place = place_for(TOP, [], hole, workshop.shaping.strips)
    assert place == pytest.approx((700, 560 - keep - 17.5))
    front = replace(hole, at_side="front")
    assert place_for(TOP, [], front, workshop.shaping.strips) == pytest.approx((700, keep + 17.5))
    basin = PlacedOpening(500, 250, 380, 380, is_round=True)
    tap = place_for(TOP, [basin], replace(hole, behind=basin), workshop.shaping.strips)
    assert tap is not None
    assert tap[0] == pytest.approx(500)
    off_it = replace(hole, behind=basin, x_mm=700.0)
    assert place_for(TOP, [basin], off_it, workshop.shaping.strips) == pytest.approx(
        (700, 560 - keep - 17.5)
    )


def test_a_coordinate_that_is_known_stays(workshop: Workshop) -> None:
    """Only what nobody said is looked for."""
    place = place_for(TOP, [], UnplacedOpening(400, 300, x_mm=345), workshop.shaping.strips)
    assert place == pytest.approx((345, 280))


def test_it_keeps_from_what_is_there(workshop: Workshop) -> None:
    """A second opening goes beside the first, as far from it as the workshop's strip asks."""
    hob = PlacedOpening(700, 280, 560, 400, rim="covered")
    place = place_for(TOP, [hob], UnplacedOpening(220, 300), workshop.shaping.strips)
    assert place is not None
    keep = clear_mm(workshop.shaping.strips, 560, "covered")
    assert abs(place[0] - 700) - 280 - 110 >= keep - 1e-3


def test_an_l_has_it_in_a_leg(workshop: Workshop) -> None:
    """On an L no opening is put where there is no slab."""
    place = place_for(L_SHAPE, [], UnplacedOpening(400, 300), workshop.shaping.strips)
    assert place is not None
    assert L_SHAPE.contains(box(place[0] - 200, place[1] - 150, place[0] + 200, place[1] + 150))


def test_what_fits_nowhere_has_no_place(workshop: Workshop) -> None:
    """An opening that leaves no strip has no place to propose."""
    assert place_for(TOP, [], UnplacedOpening(800, 540), workshop.shaping.strips) is None
    assert place_for(TOP, [], UnplacedOpening(300, 300, x_mm=20), workshop.shaping.strips) is None


@pytest.mark.parametrize("is_round", [False, True])
def test_no_nearer_place_has_room(workshop: Workshop, *, is_round: bool) -> None:
    """Of a grid about the wish none that is nearer keeps its strips, by GEOS' own distances."""
    rules = workshop.shaping.strips
    placed = [
        PlacedOpening(700, 300, 500, 380),
        PlacedOpening(1150, 280, 360, 360, is_round=True),
        PlacedOpening(980, 520, 35, 35, is_round=True),
    ]
    wanted = UnplacedOpening(220, 220, is_round=is_round, wish_mm=(900.0, 300.0))
    place = place_for(TOP, placed, wanted, rules)
    assert place is not None
    keep = clear_mm(rules, 220, "shown")
    far = math.dist(place, (900.0, 300.0))
    for x in range(200, 1301, 10):
        for y in range(100, 501, 10):
            if math.dist((x, y), (900.0, 300.0)) < far - 1e-6:
                assert not _has_room(_body(x, y, 220, is_round=is_round), placed, keep)


def _body(x: float, y: float, size: float, *, is_round: bool, width: float = 0.0) -> BaseGeometry:
    if is_round:
        return Point(x, y).buffer(size / 2, quad_segs=64)
    half_x, half_y = size / 2, (width or size) / 2
    return box(x - half_x, y - half_y, x + half_x, y + half_y)


def _has_room(body: BaseGeometry, placed: list[PlacedOpening], keep: float) -> bool:
    others = [
        _body(o.x_mm, o.y_mm, o.length_mm, is_round=o.is_round, width=o.width_mm) for o in placed
    ]
    # Strips beside what is there are as wide or narrower; a body that breaks them by a tenth of
    # a millimetre, as far as chords stray, has no room.
    return (
        TOP.contains(body)
        and TOP.exterior.distance(body) >= keep + 0.1
        and all(other.distance(body) >= keep + 0.1 for other in others)
    )
