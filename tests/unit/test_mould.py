"""The mould: strips that meet at corners, formers, beads, screws, and boards on sheets."""

import math
from dataclasses import replace

import pytest

from ledgerstone.mould import (
    CutLength,
    Mould,
    SheetPart,
    cut_lengths,
    mould_of,
    mould_plan,
    nest,
    runs,
)
from ledgerstone.mould.forms import screws_for
from ledgerstone.shape import shape_of
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, cut, hole, order_of, shape_from, slab_json

BOARD_MM = 18
BASIN = hole(360, 980, 270, label="basin", rim="shown")
TAP = hole(35, 980, 505, label="tap", rim="covered")


@pytest.fixture(name="plain")
def plain_workshop(workshop: Workshop) -> Workshop:
    """The demonstration workshop with nothing sanded off, 18 mm board and no kerf."""
    foam = replace(workshop.boards.foam, thickness_mm=25.0)
    boards = replace(workshop.boards, sanding_mm=0.0, thickness_mm=18.0, foam=foam)
    return replace(workshop, boards=boards)


def mould(workshop: Workshop, outline: Json, *cutouts: Json, **more: object) -> Mould:
    """Work out one slab's mould."""
    slab = order_of(workshop, slab_json(outline, *cutouts, **more)).slabs[0]
    return mould_of(slab, shape_of(slab, workshop), workshop)


def lengths(one: Mould) -> dict[str, float]:
    """Length of each side strip by its name."""
    return {piece.name.removeprefix("side "): piece.length_mm for piece in one.sides}


# --- sides --------------------------------------------------------------------------------------


def test_strips_of_a_rectangle_run_past_one_corner_each(plain: Workshop) -> None:
    """Round 1450 × 560 the strips are 1468 and 578, and as high as the slab is thick."""
    made = mould(plain, box(1450, 560))
    assert lengths(made) == {"front": 1468, "right": 578, "back": 1468, "left": 578}
    assert {piece.width_mm for piece in made.sides} == {40}


def test_strips_stand_higher_by_what_is_sanded_off(plain: Workshop) -> None:
    """With 2 mm to sand the sides of a 40 mm slab are 42 mm high."""
    boards = replace(plain.boards, sanding_mm=2.0)
    made = mould(replace(plain, boards=boards), box(1450, 560))
    assert made.height_mm == 42
    assert {piece.width_mm for piece in made.sides} == {42}


def test_an_inside_corner_shortens_its_strip(plain: Workshop) -> None:
    """In the sharp notch of an L the strip that comes in stops a board's thickness short."""
    notch = {"corner": "back-right", "length": 600, "width": 300}
    outline = {"kind": "l-shape", "length": 1600, "width": 800, "notch": notch,
               "corner_radii": {"back-right": 0}}  # fmt: skip
    found = lengths(mould(plain, outline))
    shape = shape_from(plain, outline)
    inside = next(run.side for run in runs(shape) if run.turn_radians < 0)
    assert found[inside] == shape.side(inside).length_mm - BOARD_MM
    others = [side for side in found if side != inside]
    assert all(found[s] == shape.side(s).length_mm + BOARD_MM for s in others)


def test_a_rounded_corner_takes_flexible_strip(plain: Workshop) -> None:
    """Corners of 50 mm leave 1350 straight of 1450, and four quarters of a circle to bend round."""
    made = mould(plain, box(1450, 560, corner_radius=50))
    assert lengths(made) == {
        side: pytest.approx(length)
        for side, length in (("front", 1350), ("right", 460), ("back", 1350), ("left", 460))
    }
    assert [curve.length_mm for curve in made.curves] == [pytest.approx(25 * math.pi)] * 4


def test_a_round_slab_has_one_curve_and_no_straight_side(plain: Workshop) -> None:
    """A disc of 900 mm is bent round in one strip of its girth."""
    made = mould(plain, {"kind": "round", "diameter": 900})
    assert made.sides == ()
    assert [curve.length_mm for curve in made.curves] == [pytest.approx(900 * math.pi)]


def test_a_drop_has_a_higher_side_and_an_inner_face(plain: Workshop) -> None:
    """A front that drops 60 mm takes a strip 100 mm high and an inner one of 60."""
    edges = {"front": {"profile": "square", "drop": {"depth": 60}}}
    made = mould(plain, box(1450, 560), edges=edges)
    found = {piece.name: (piece.length_mm, piece.width_mm) for piece in made.sides}
    assert found.items() >= {"side front": (1468, 100), "drop front": (1450, 60)}.items()


def test_a_strip_longer_than_a_sheet_is_of_equal_parts(plain: Workshop) -> None:
    """A side of 3200 on sheets of 3050 is of two strips of 1609."""
    made = mould(plain, box(3200, 560))
    front = next(piece for piece in made.sides if piece.name == "side front")
    assert (front.length_mm, front.count) == (1609, 2)
    assert made.base[0].count == 2


@pytest.mark.parametrize(("length_mm", "screws"), [(60, 2), (150, 2), (151, 3), (1468, 11)])
def test_screws_stand_no_farther_apart_than_the_pitch(
    workshop: Workshop, length_mm: float, screws: int
) -> None:
    """At 150 mm a strip of 1468 takes eleven screws; a short one takes two."""
    assert screws_for(length_mm, workshop.boards) == screws


# --- formers, beads, drips ----------------------------------------------------------------------


def test_a_basin_is_foam_in_layers_and_a_tap_a_plug(plain: Workshop) -> None:
    """40 mm of knockout are two layers of 25 mm foam, cut from squares of the hole's diameter."""
    made = mould(plain, box(1450, 560), BASIN, TAP)
    basin, tap = made.formers
    assert (basin.kind, basin.layers, basin.length_mm, basin.width_mm) == ("knockout", 2, 360, 360)
    assert (tap.kind, tap.layers) == ("plug", 0)
    assert made.foam == (SheetPart("basin", 360, 360, 2),)


def test_a_turned_opening_is_cut_from_its_own_rectangle(plain: Workshop) -> None:
    """A hob of 560 × 490, turned by 30°, still takes a blank of 560 × 490."""
    hob = cut("rectangle", (560, 490), (725, 400), corner_radius=0, turn_degrees=30)
    (former,) = mould(plain, box(1450, 800), hob).formers
    assert former.length_mm == pytest.approx(560)
    assert former.width_mm == pytest.approx(490)


def test_a_recess_is_a_former_as_high_as_it_is_deep(plain: Workshop) -> None:
    """A recess of 8 mm takes one layer, and stands 8 mm high."""
    recess = {"kind": "recess", "outline": box(300, 200), "depth": 8, "at": {"x": 100, "y": 100}}
    (former,) = mould(plain, box(1450, 560), reliefs=[recess]).formers
    assert (former.kind, former.height_mm, former.layers) == ("recess", 8, 1)


def test_beads_run_where_an_edge_is_seen(plain: Workshop) -> None:
    """The wall side and the covered tap have no bead; the bevel has one of its size."""
    edges = {"front": {"profile": "bevel", "size": 5}, "back": {"profile": "wall"}}
    made = mould(plain, box(1450, 560), BASIN, TAP, edges=edges)
    found = {bead.along: (bead.profile, bead.size_mm) for bead in made.beads}
    assert found.items() >= {"front": ("bevel", 5)}.items()
    assert set(found) == {"front", "left", "right", "basin"}
    assert made.bead_mm == pytest.approx(1450 + 2 * 560 + 360 * math.pi)


def test_a_drip_stops_short_of_both_ends(plain: Workshop) -> None:
    """A drip along 1450 mm that stops 30 mm from each end is 1390 long."""
    boards = replace(plain.boards, drip_stop_mm=30.0)
    edges = {"front": {"profile": "square", "drip": True}}
    assert mould(replace(plain, boards=boards), box(1450, 560), edges=edges).drips_mm == {
        "front": 1390
    }


def test_release_agent_covers_all_that_concrete_touches(plain: Workshop) -> None:
    """1 × 0.5 m, 40 mm high, is 0.5 m² of face and 3 m of sides: 0.62 m²."""
    boards = replace(plain.boards, release_m2_per_l=10.0)
    made = mould(replace(plain, boards=boards), box(1000, 500))
    assert made.release_l == pytest.approx((0.5 + 3 * 0.04) / 10)


# --- the whole order ----------------------------------------------------------------------------


def test_boards_of_the_whole_order_share_sheets(plain: Workshop) -> None:
    """Two small moulds come from one sheet; what is left of it is stated."""
    order = order_of(plain, slab_json(box(900, 400)), slab_json(box(800, 400)))
    plan = mould_plan(order, [shape_of(slab, plain) for slab in order.slabs], plain)
    assert plan.boards.sheets == 1
    assert len(plan.boards.placed) == 10
    assert 0 < plan.boards.waste_percent < 100


def test_one_mould_serves_every_casting_and_foam_only_one(plain: Workshop) -> None:
    """Three equal slabs take one mould unless more are asked for, and three knockouts."""
    order = order_of(plain, slab_json(box(1450, 560), BASIN, quantity=3))
    shapes = [shape_of(slab, plain) for slab in order.slabs]
    one, three = (mould_plan(order, shapes, plain, moulds=[n]) for n in (1, 3))
    assert len(three.boards.placed) == 3 * len(one.boards.placed)
    assert len(one.foam.placed) == len(three.foam.placed) == 3 * 2
    beads = [next(s for s in plan.supplies if s.name == "sealant-bead") for plan in (one, three)]
    assert beads[0] == beads[1]


def test_curves_are_cut_from_lengths_as_bought(plain: Workshop) -> None:
    """The girth of a disc of 900 mm, 2827 mm, takes two lengths of 2400, in two parts."""
    boards = replace(plain.boards, flexible_length_mm=2400.0)
    here = replace(plain, boards=boards)
    order = order_of(here, slab_json({"kind": "round", "diameter": 900}))
    plan = mould_plan(order, [shape_of(order.slabs[0], here)], here)
    assert len(plan.strips) == 2
    strip = next(s for s in plan.supplies if s.name == "flexible-strip")
    assert strip.packs == 2
    assert strip.packs_price == 2 * boards.flexible_price


# --- nesting ------------------------------------------------------------------------------------


def test_a_piece_as_large_as_the_sheet_fits() -> None:
    """The saw takes nothing off a piece that is the whole sheet."""
    assert nest([SheetPart("A", 2440, 1220, 2)], 2440, 1220, 3).sheets == 2


def test_a_kerf_between_two_halves_takes_a_second_sheet() -> None:
    """Two pieces of 1220 come from 2440 with no kerf, and not with 3 mm."""
    halves = [SheetPart("A", 1220, 1220, 2)]
    assert nest(halves, 2440, 1220, 0).sheets == 1
    assert nest(halves, 2440, 1220, 3).sheets == 2


def test_a_piece_is_turned_where_that_fits() -> None:
    """A piece of 600 × 1200 lies on a sheet of 1200 × 600."""
    (placed,) = nest([SheetPart("A", 600, 1200)], 1200, 600, 2).placed
    assert (placed.length_mm, placed.width_mm) == (1200, 600)


def test_a_piece_that_no_sheet_holds_is_named() -> None:
    """A piece wider than the sheet, whichever way it lies, is refused with its size."""
    with pytest.raises(ValueError, match="base, 2000 × 1300 mm, is larger"):
        nest([SheetPart("base", 2000, 1300)], 2440, 1220, 3)


def test_a_cut_that_is_the_whole_stock_fits() -> None:
    """A length of stock can be used whole."""
    (stock,) = cut_lengths([CutLength("A", 3000)], 3000, 2)
    assert stock.waste_mm == 0
