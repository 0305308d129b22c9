"""In place: statics by hand, rests of every kind, and rests that carry nothing."""

from dataclasses import replace

import pytest
from shapely.geometry import Point

from ledgerstone.order import Slab
from ledgerstone.shape import Shape, shape_of
from ledgerstone.strength._judging import every_batch
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength.in_place import InPlace, in_place
from ledgerstone.strength.places import LoadPlace
from ledgerstone.strength.rests import bearings
from ledgerstone.strength.slabs import Plates, concrete_of, plate_of
from ledgerstone.strength.tested import GRAVITY
from ledgerstone.strength.weight import weight_of
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, cut, hole, polygon, slab_of

ENDS = {"kind": "ends", "depth": 20}


def _lies(workshop: Workshop, outline: Json, *cutouts: Json, **more: object) -> InPlace:
    slab = slab_of(workshop, outline, *cutouts, **more)
    shape = shape_of(slab, workshop)
    concrete = concrete_of(workshop)
    plate = plate_of(slab, shape, concrete, Plates())
    return in_place(slab, shape, plate, concrete, workshop)


def _placed(workshop: Workshop, outline: Json, **more: object) -> tuple[PlacedSlab, Slab, Shape]:
    slab = slab_of(workshop, outline, **more)
    shape = shape_of(slab, workshop)
    concrete = concrete_of(workshop)
    plate = plate_of(slab, shape, concrete, Plates())
    weight = weight_of(slab, workshop)
    return (
        PlacedSlab(slab, shape, plate, concrete, workshop, bearings(slab, shape), weight),
        slab,
        shape,
    )


def _stress(result: InPlace, case: str) -> float:
    return next(verdict.stress_mpa for verdict in result.verdicts if verdict.case == case)


def test_a_shelf_between_two_ends_bends_as_a_beam(workshop: Workshop) -> None:
    """Own weight over 1.42 m makes ``6 w L² / 8 h²``, within 3 % for a slab that is a plate.

    Strength of materials: w L²/8. The span is the effective one of EN 1992-1-1 5.3.2.2: 1400 mm
    between the faces and half of each bearing of 20 mm.
    """
    result = _lies(workshop, box(1440, 150), rests=ENDS)
    weight = workshop.recipe.density_kg_per_m3 * 1e-9 * GRAVITY
    by_hand = 6 * weight * 40 * 1420**2 / 8 / 40**2
    assert _stress(result, "own-weight") == pytest.approx(by_hand, rel=0.03)


def test_someone_in_the_middle_makes_a_quarter_of_p_l(workshop: Workshop) -> None:
    """1 kN over 100 mm at mid-span makes ``P (L - 50 mm) / 4`` and own weight's moment more.

    Strength of materials: P L/4 - P c/8 for a load spread over c. Across 150 mm the plate's own
    stress varies by some per cent.
    """
    result = _lies(workshop, box(1440, 150), rests=ENDS)
    own = _stress(result, "own-weight")
    moment = 1000 * 1420 / 4 - 1000 * 100 / 8
    by_hand = own + 6 * moment / (150 * 40**2)
    assert _stress(result, "somebody-sitting") == pytest.approx(by_hand, rel=0.05)


def test_no_stress_over_an_overhang_is_under_its_mean(workshop: Workshop) -> None:
    """The worst stress is no less than the moment about the front edge, spread over the length.

    Statics: 1.5 kN with its lever, and the overhang's own weight, held down behind.
    """
    units = {"kind": "units", "units": [{"width": 600}] * 2, "overhang": {"front": 300}}
    result = _lies(workshop, box(1200, 900), rests={**units, "fixed": True})
    weight = workshop.recipe.density_kg_per_m3 * 1e-9 * GRAVITY
    mean = 1500 * 250 / 1200 + weight * 40 * 300**2 / 2
    assert _stress(result, "somebody-standing") > 6 * mean / 40**2


@pytest.mark.parametrize(("overhang", "tips"), [(150, False), (350, True)])
def test_tipping_is_as_statics_has_it(overhang: int, tips: bool, workshop: Workshop) -> None:
    """Loose on units, it tips where 1.5 Q past the front edge outdoes 0.9 G behind it.

    By hand: 1.5 × 1000 N × (overhang - 50 mm) against 0.9 × weight × (450 mm - overhang).
    """
    units = {"kind": "units", "units": [{"width": 900}], "overhang": {"front": overhang}}
    result = _lies(workshop, box(900, 900), rests=units)
    kilos = 0.9 * 0.9 * 0.04 * workshop.recipe.density_kg_per_m3
    upset = 1.5 * 1000 * (overhang - 50)
    steady = 0.9 * kilos * GRAVITY * (450 - overhang)
    assert (upset > steady) == tips
    assert bool(result.tips_under) == tips


def test_fixed_rests_clear_tipping_and_relieve_nothing(workshop: Workshop) -> None:
    """Screwed down, the overhang tips no more, and bends no less."""
    units = {"kind": "units", "units": [{"width": 900}], "overhang": {"front": 350}}
    loose = _lies(workshop, box(900, 900), rests=units)
    fixed = _lies(workshop, box(900, 900), rests={**units, "fixed": True})
    assert loose.tips_under
    assert fixed.tips_under == ()
    assert _stress(fixed, "somebody-standing") >= _stress(loose, "somebody-standing") - 1e-6


def test_rests_away_from_the_weight_tip_the_slab(workshop: Workshop) -> None:
    """Legs that all stand under one half leave the weight outside them."""
    at = [{"x": x, "y": y} for x in (100, 400) for y in (100, 400)]
    result = _lies(workshop, box(1400, 500), rests={"kind": "legs", "pad": 60, "at": at})
    assert result.tips_alone == pytest.approx((700, 250), abs=2)
    assert result.verdicts == ()


def test_one_leg_and_coincident_legs_tip_or_carry_without_a_fault(workshop: Workshop) -> None:
    """A leg as thin as a point, and two legs in one place, have an answer."""
    one = {"kind": "legs", "pad": 1, "at": [{"x": 450, "y": 250}]}
    assert _lies(workshop, box(900, 500), rests=one).tips_alone == (450.0, 250.0)
    twice = [{"x": 100, "y": 100}, {"x": 100, "y": 100}, {"x": 800, "y": 100}, {"x": 450, "y": 400}]
    result = _lies(workshop, box(900, 500), rests={"kind": "legs", "pad": 50, "at": twice})
    assert result.tips_alone is None
    assert result.verdicts


def test_a_leg_under_a_hole_is_off_the_slab(workshop: Workshop) -> None:
    """What stands where there is no concrete is named; the others carry."""
    at = [{"x": x, "y": y} for x in (100, 1100) for y in (100, 400)] + [{"x": 600, "y": 250}]
    result = _lies(
        workshop, box(1200, 500), hole(300, 600, 250), rests={"kind": "legs", "pad": 40, "at": at}
    )
    assert [bearing.pointer for bearing in result.off_the_slab] == ["/rests/at/4"]
    assert result.verdicts


def test_rests_that_all_stand_elsewhere_carry_nothing(workshop: Workshop) -> None:
    """Told, and none of them under the slab: said, not worked out."""
    ledge = {"start": {"x": 0, "y": 5000}, "end": {"x": 900, "y": 5000}, "depth": 30}
    result = _lies(workshop, box(900, 500), rests={"kind": "ledges", "lines": [ledge]})
    assert result.nothing_carries
    assert len(result.off_the_slab) == 1


def test_nothing_is_tried_without_rests_or_on_a_bed(workshop: Workshop) -> None:
    """No rests told, bedded all over, and a splashback: no verdict."""
    assert _lies(workshop, box(900, 500)) == InPlace()
    assert _lies(workshop, box(900, 500), rests={"kind": "full"}) == InPlace()
    assert _lies(workshop, box(900, 100), use="splashback", rests=ENDS) == InPlace()


def test_a_corner_that_nobody_sits_near_is_no_fault(workshop: Workshop) -> None:
    """Beside a notch that leaves slender horns behind, a slab on a frame is judged all the same."""
    notch = cut("rectangle", (200, 200), (230, 300), open_to="back")
    result = _lies(workshop, box(400, 500), notch, rests={"kind": "frame", "width": 30})
    assert all(verdict.stress_mpa >= 0.0 for verdict in result.verdicts)
    assert result.verdicts


def test_on_a_shelf_a_person_leans(workshop: Workshop) -> None:
    """A shelf is leant on with half the load, and nobody stands on it."""
    shelf = _lies(workshop, box(900, 250), use="shelf", rests=ENDS)
    cases = {verdict.case for verdict in shelf.verdicts}
    assert "somebody-leaning" in cases
    assert not cases & {"somebody-sitting", "somebody-standing"}


def test_a_thicker_slab_is_stressed_less_by_its_own_weight(workshop: Workshop) -> None:
    """On rests that do not give, stress of own weight goes with 1 / h: ``6 γ h L² / 8 h²``."""
    frame = {"kind": "frame", "sides": ["left", "right"], "width": 40}
    thin, thick = (
        _stress(_lies(workshop, box(1200, 400), thickness=h, rests=frame), "own-weight")
        for h in (30, 60)
    )
    assert thick == pytest.approx(thin / 2, rel=0.01)


def test_a_relief_counts_with_what_is_left(workshop: Workshop) -> None:
    """A recess 20 mm deep across mid-span raises the stress there: 4 times for the same moment."""
    recess = {
        "kind": "recess",
        "outline": box(200, 300),
        "depth": 20,
        "at": {"x": 500, "y": 0},
    }
    whole = _lies(workshop, box(1200, 300), rests=ENDS)
    thinner = _lies(workshop, box(1200, 300), rests=ENDS, reliefs=[recess])
    ratio = _stress(thinner, "own-weight") / _stress(whole, "own-weight")
    assert 3.0 < ratio < 4.2


def test_a_low_inner_rest_is_tried(workshop: Workshop) -> None:
    """The middle one of three units may lie low: the even load is judged with it so."""
    units = {"kind": "units", "units": [{"width": 600}] * 3}
    result = _lies(workshop, box(1800, 600), rests=units)
    assert _stress(result, "low-rest") >= _stress(result, "even-load") - 1e-6


@pytest.mark.parametrize(("width", "front"), [(60, 0), (95, 0), (160, 60), (300, 0), (300, 100)])
def test_a_low_rest_is_tried_where_hardly_anybody_can_sit(
    width: int, front: int, workshop: Workshop
) -> None:
    """On a strip over three units, and where most of it hangs over: an answer, never a fault."""
    units = {"kind": "units", "units": [{"width": 600}] * 3, "overhang": {"front": front}}
    result = _lies(workshop, box(1800, width), rests=units)
    assert "own-weight" in {verdict.case for verdict in result.verdicts}


def sat_upon(placed: PlacedSlab) -> float:
    """The worst stress that someone sitting makes on level rests, MPa."""
    return max(
        one.mpa
        for batch in every_batch(placed)
        for tried, one in zip(batch.tried, batch.found, strict=True)
        if tried.case == "somebody-sitting"
    )


@pytest.mark.parametrize(
    "rests",
    [
        {"kind": "units", "units": [{"width": 600}, {"width": 900}], "overhang": {"front": 20}},
        {"kind": "frame", "sides": ["front", "back", "left", "right"], "width": 50},
        {"kind": "ends", "depth": 60},
    ],
    ids=lambda rests: rests["kind"],
)
def test_the_places_tried_find_the_worst_of_many(rests: Json, workshop: Workshop) -> None:
    """Nowhere on a fine grid does someone sitting make 8 % more than at the places tried."""
    placed, _, shape = _placed(workshop, box(1500, 620), rests=rests)
    tried = sat_upon(placed)
    grid = [
        LoadPlace((50 + 1400 * i / 18, 50 + 520 * j / 6), "anywhere")
        for i in range(19)
        for j in range(7)
    ]
    assert all(shape.net.contains(Point(place.xy)) for place in grid)
    fine = replace(placed)
    fine.__dict__["places"] = tuple(grid)
    assert tried > sat_upon(fine) / 1.08


def test_rests_of_every_kind_lie_under_odd_outlines(workshop: Workshop) -> None:
    """An L, a round and a triangle on each kind of rest: an answer, never a fault."""
    outlines = [
        {
            "kind": "l-shape",
            "length": 1500,
            "width": 900,
            "notch": {"corner": "back-right", "length": 800, "width": 400},
        },
        {"kind": "round", "diameter": 900},
        polygon((0, 0), (1200, 0), (300, 800)),
    ]
    for outline in outlines:
        for rests in (
            {"kind": "units", "units": [{"width": 600}, {"width": 300}]},
            {"kind": "frame", "width": 40},
            {"kind": "frame", "width": 3000},
            ENDS,
        ):
            assert isinstance(_lies(workshop, outline, rests=rests), InPlace)


def test_a_strip_too_narrow_to_sit_on_is_leant_on(workshop: Workshop) -> None:
    """Beside a hob, where the concrete is 65 mm wide, a person leans."""
    hob = cut("rectangle", (560, 490), (600, 310), rim="covered")
    result = _lies(
        workshop, box(1200, 620), hob, rests={"kind": "units", "units": [{"width": 600}] * 2}
    )
    assert "somebody-leaning" in {verdict.case for verdict in result.verdicts}


def test_a_strip_on_a_pedestal_hangs_over_as_two_cantilevers(workshop: Workshop) -> None:
    """Own weight over 450 mm each side of a plate 300 mm wide: ``w L² / 2`` at the plate's edge.

    Strength of materials. The mean over half the thickness takes a little of it, the plate's own
    pressure gives a little back: within 6 %.
    """
    pedestal = {"kind": "pedestal", "plate": 300}
    result = _lies(workshop, box(1200, 300), rests=pedestal)
    own = next(one for one in result.verdicts if one.case == "own-weight")
    n_per_mm3 = workshop.recipe.density_kg_per_m3 * 1e-9 * GRAVITY
    assert own.stress_mpa == pytest.approx(6.0 * n_per_mm3 * 450**2 / 2 / 40, rel=0.06)


def test_a_loose_slab_on_a_pedestal_tips_under_a_person_at_its_edge(workshop: Workshop) -> None:
    """A table's top is fixed to its plate: loose, someone at the rim tips it."""
    pedestal = {"kind": "pedestal", "plate": 300}
    assert _lies(workshop, box(1000, 1000), rests=pedestal).tips_under
    assert not _lies(workshop, box(1000, 1000), rests={**pedestal, "fixed": True}).tips_under
