"""What carries a slab: each kind of rest as lines and areas on the slab."""

import numpy as np
import pytest
from shapely.geometry import Point
from shapely.geometry import box as rectangle

from ledgerstone.shape import shape_of
from ledgerstone.strength._seat_area import SeatArea
from ledgerstone.strength.places import load_places
from ledgerstone.strength.plate import LineSupport
from ledgerstone.strength.rests import (
    Bearing,
    bearings,
    crowded_units,
    on_rails,
    turning_places,
)
from ledgerstone.strength.tipping import equilibrium_of, weight_at
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, cut, hole, polygon, slab_of


def _rests(workshop: Workshop, outline: Json, rests: Json) -> tuple[Bearing, ...]:
    slab = slab_of(workshop, outline, rests=rests)
    return bearings(slab, shape_of(slab, workshop))


def test_a_unit_carries_on_two_panels_and_two_rails(workshop: Workshop) -> None:
    """600 mm: a panel at each side and a rail all along front and back."""
    found = _rests(workshop, box(600, 580), {"kind": "units", "units": [{"width": 600}]})
    bounds = sorted(bearing.footprint.bounds for bearing in found)
    assert bounds == sorted(
        [(9, 0, 9, 580), (591, 0, 591, 580), (9, 0, 591, 0), (9, 580, 591, 580)]
    )


def test_rails_bend_as_beams_and_panels_crush(workshop: Workshop) -> None:
    """A hob unit's own rail stands upright, a base unit's lies flat; a post cuts the span in two.

    By hand: chipboard 18 × 100 mm, E 2 500 MPa: E I = 2 500 × 18 × 100³ / 12 N·mm².
    """
    units = [{"width": 600}, {"width": 600, "for": "hob"}]
    slab = slab_of(workshop, box(1200, 600), rests={"kind": "units", "units": units})
    assert slab.rests is not None
    found = on_rails(
        bearings(slab, shape_of(slab, workshop)),
        slab.rests,
        workshop.rails,
        {0: "cabinet", 1: "post"},
    )
    lines = [(b.unit, b.support) for b in found if isinstance(b.support, LineSupport)]
    rails = {unit: line.beam for unit, line in lines if line.beam is not None}
    assert rails[0] is not None
    assert rails[0].ei_nmm2 == pytest.approx(2500 * 100 * 18**3 / 12)
    assert rails[1] is not None
    assert rails[1].ei_nmm2 == pytest.approx(11_000 * 20 * 100**3 / 12)
    assert rails[1].posts == (0.5,)
    upright = on_rails(found, slab.rests, workshop.rails, {0: "cabinet", 1: "cabinet"})
    own = {b.unit: b.support for b in upright if b.footprint.bounds[1] == b.footprint.bounds[3]}
    assert isinstance(own[1], LineSupport)
    assert own[1].beam is not None
    assert own[1].beam.ei_nmm2 == pytest.approx(2500 * 18 * 100**3 / 12)
    assert {line.crushes_n_per_mm2 for _, line in lines if line.beam is None} == {60.0}


def test_only_what_stands_between_others_may_lie_low(workshop: Workshop) -> None:
    """Of three units the middle one; a gap is none."""
    units = [{"width": 400}, {"width": 400}, {"width": 300, "for": "gap"}, {"width": 400}]
    found = _rests(workshop, box(1500, 580), {"kind": "units", "units": units})
    assert {b.group for b in found if b.pointer == "/rests/units/1"} == {1}
    assert {b.group for b in found if b.pointer != "/rests/units/1"} == {None}
    assert not [b for b in found if b.pointer == "/rests/units/2"]


def test_an_overhang_moves_the_units_in(workshop: Workshop) -> None:
    """The front rail lies the overhang from the front, and the first panel that from the left."""
    rests = {"kind": "units", "units": [{"width": 600}], "overhang": {"front": 20, "left": 30}}
    found = _rests(workshop, box(660, 600), rests)
    assert min(b.footprint.bounds[1] for b in found) == 20
    assert min(b.footprint.bounds[0] for b in found) == 39


def test_a_frame_stands_under_the_sides_that_are_named(workshop: Workshop) -> None:
    """Half its width inside each side; a side that has no room for that is taken itself."""
    found = _rests(workshop, box(1200, 600), {"kind": "frame", "sides": ["front"], "width": 60})
    (bearing,) = found
    assert bearing.footprint.bounds == pytest.approx((0, 30, 1200, 30))
    wide = _rests(workshop, box(1200, 600), {"kind": "frame", "width": 3000})
    assert len(wide) == 4


def test_a_frame_under_a_round_runs_inside_its_rim(workshop: Workshop) -> None:
    """It lies within the slab all round."""
    (bearing,) = _rests(
        workshop, {"kind": "round", "diameter": 900}, {"kind": "frame", "width": 50}
    )
    assert rectangle(24, 24, 876, 876).covers(bearing.footprint)


def test_sixteen_places_or_more_are_tried(workshop: Workshop) -> None:
    """On any slab with room for them, its corners among them, and all on the concrete."""
    for outline in (box(1200, 600), polygon((0, 0), (1200, 0), (300, 800))):
        slab = slab_of(workshop, outline, hole(200, 500, 300))
        shape = shape_of(slab, workshop)
        rests = [rectangle(0, 0, 1200, 20), rectangle(0, 300, 400, 320)]
        places = load_places(SeatArea(shape, 100.0, rests, shape.outline, lambda xy: xy))
        assert len(places) >= 16
        for place in places:
            assert shape.net.buffer(0.01).covers(Point(place.xy))
        for corner in shape.corners:
            near = min(Point(corner).distance(Point(place.xy)) for place in places)
            assert near < 300


def test_the_tip_of_an_overhang_by_a_corner_is_a_free_corner(workshop: Workshop) -> None:
    """Beyond the rests and near the corner: told apart from the rest of the edge."""
    shape = shape_of(slab_of(workshop, box(1800, 900)), workshop)
    rests = [rectangle(0, 300, 1800, 320), rectangle(0, 880, 1800, 900)]
    area = SeatArea(shape, 100.0, rests, shape.outline, lambda xy: xy)
    kinds = {place.xy: place.kind for place in load_places(area)}
    assert kinds[(50.0, 50.0)] == "free-corner"
    assert kinds[(1750.0, 50.0)] == "free-corner"
    middle = [kind for (x, y), kind in kinds.items() if y < 100 and 700 < x < 1100]
    assert middle
    assert set(middle) == {"anywhere"}


def test_a_relief_moves_the_weight_away(workshop: Workshop) -> None:
    """A recess over the left half, half as deep as the slab, moves its weight to 7/12.

    By hand: (1/3 × 1/4 + 2/3 × 3/4) of the length.
    """
    recess = {"kind": "recess", "outline": box(600, 500), "depth": 20, "at": {"x": 0, "y": 0}}
    slab = slab_of(workshop, box(1200, 500), reliefs=[recess])
    newtons, (x, y) = weight_at(slab, shape_of(slab, workshop), 25e-6)
    assert newtons == pytest.approx(1200 * 500 * 30 * 25e-6, rel=1e-3)
    assert x == pytest.approx(1200 * 7 / 12, rel=2e-3)
    assert y == pytest.approx(250, abs=0.5)


@pytest.mark.parametrize(("newtons", "tips"), [(440.0, False), (446.0, True)])
def test_tipping_turns_at_the_hand_worked_load(
    newtons: float, tips: bool, workshop: Workshop
) -> None:
    """A board 1000 × 500 × 40 of 25 kN/m³ on rests from 200 to 1000, loaded at its tip.

    EN 1990 table A1.2(A): 0.9 × 400 N × 400 mm of the part over the rests, against 1.1 × 100 N ×
    100 mm of the part beyond them and 1.5 × P × 200 mm: P = 443.3 N.
    """
    slab = slab_of(workshop, box(1000, 500))
    shape = shape_of(slab, workshop)
    rests = rectangle(200, 0, 1000, 500)
    balance = equilibrium_of(slab, shape, rests, 25e-6)
    found = balance.tips_under(np.array([[0.0, 250.0]]), np.array([newtons]))
    assert bool(found) == tips


@pytest.mark.parametrize(
    ("front", "right", "places"),
    [
        (20, 0, set()),
        (300, 0, {(9, 300), (591, 300), (609, 300), (1391, 300)}),
        (20, 200, {(1391, 20), (1391, 600)}),
    ],
)
def test_an_overhang_turns_about_the_ends_of_panels(
    front: int, right: int, places: set[tuple[int, int]], workshop: Workshop
) -> None:
    """Units of 600 and 800: their panels' ends along the overhang; 20 mm at the front is none."""
    over = {"front": front, "right": right}
    rests = {"kind": "units", "units": [{"width": 600}, {"width": 800}], "overhang": over}
    slab = slab_of(workshop, box(1400 + right, 580 + front), rests=rests)
    assert set(turning_places(slab, shape_of(slab, workshop))) == places


def test_a_pedestal_carries_on_its_plate_under_the_middle_or_at_its_given_place(
    workshop: Workshop,
) -> None:
    """A square plate with its middle there, and nothing else."""
    pedestal: Json = {"kind": "pedestal", "plate": 300}
    told = {**pedestal, "centre": {"x": 400, "y": 300}}
    bounds = [
        [bearing.footprint.bounds for bearing in _rests(workshop, box(1000, 600), rests)]
        for rests in (pedestal, told)
    ]
    assert bounds == [[(350, 150, 650, 450)], [(250, 150, 550, 450)]]


@pytest.mark.parametrize(("front_mm", "crowded"), [(65, (1,)), (119, (1,)), (121, ())])
def test_a_flat_rail_under_an_opening_is_in_the_way(
    front_mm: int, crowded: tuple[int, ...], workshop: Workshop
) -> None:
    """100 mm of flat rail behind a 20 mm overhang reach to 120 mm; a basin's unit has none."""
    opening = cut("rectangle", (400, 300), (900, front_mm + 150))
    for use, found in (("base", crowded), ("basin", ())):
        rests = {
            "kind": "units",
            "units": [{"width": 600}, {"width": 600, "for": use}],
            "overhang": {"front": 20},
        }
        slab = slab_of(workshop, box(1200, 620), opening, rests=rests)
        assert slab.rests is not None
        assert crowded_units(slab.rests, shape_of(slab, workshop), workshop.rails) == found
