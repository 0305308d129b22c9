"""Moving a slab: two-line lifts by hand, the plainest way that suffices, outlines that tip."""

from dataclasses import replace

import pytest

from ledgerstone.shape import shape_of
from ledgerstone.strength._holding import Holding
from ledgerstone.strength.handling import Handling
from ledgerstone.strength.slabs import Plates, concrete_of, handling_of
from ledgerstone.strength.tested import GRAVITY
from ledgerstone.strength.verdict import Verdict
from ledgerstone.transport import slab_kg
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import Way
from support.documents import Json
from support.slabs import box, cut, polygon, slab_of

HEAVY_C = 15.0
L_SHAPE = {
    "kind": "l-shape",
    "length": 1800,
    "width": 1100,
    "notch": {"corner": "back-right", "length": 1700, "width": 1000},
}


def _handling(
    workshop: Workshop,
    outline: Json,
    *cutouts: Json,
    workshop_temp_c: float = HEAVY_C,
    **more: object,
) -> Handling:
    slab = slab_of(workshop, outline, *cutouts, **more)
    shape = shape_of(slab, workshop)
    kg = slab_kg(slab, shape, workshop)
    return handling_of(
        slab, shape, workshop, slab_kg=kg, workshop_temp_c=workshop_temp_c, plates=Plates()
    )


def _by(workshop: Workshop, held: str) -> Workshop:
    """The workshop with one way alone, the first that holds a slab so."""
    way = next(way for way in workshop.handling.ways if way.held == held)
    way = replace(way, most_kg=9999.0, later_days=0.0, rail=False)
    return replace(workshop, handling=replace(workshop.handling, ways=(way,)))


def _case(verdicts: tuple[Verdict, ...], case: str) -> Verdict:
    return next(verdict for verdict in verdicts if verdict.case == case)


def _weighing(workshop: Workshop, n_per_mm3: float = 25e-6) -> float:
    """What a stress worked out for 25 kN/m³ is at this recipe's weight."""
    return workshop.recipe.density_kg_per_m3 * 1e-9 * GRAVITY / n_per_mm3


def test_a_slab_on_two_lines_at_the_best_places_is_row_16(workshop: Workshop) -> None:
    """2.4 × 0.62 m, 40 mm, lifted at 0.2071 L: 0.463 MPa for bare weight (row 16), times 1.5.

    Row 16 is beam theory; over the lines a plate's hogging rises towards the edges, hence 6 %.
    """
    flat = tuple(way for way in workshop.handling.ways if way.held == "flat")
    lifted = replace(workshop, handling=replace(workshop.handling, ways=flat))
    found = _handling(lifted, box(2400, 620)).chosen().verdicts
    expected = 0.463 * workshop.handling.carried_factor * _weighing(workshop)
    assert _case(found, "carried").stress_mpa == pytest.approx(expected, rel=0.06)
    assert _case(found, "on-bearers").stress_mpa <= _case(found, "carried").stress_mpa


def test_bearers_lie_clear_of_an_opening(workshop: Workshop) -> None:
    """A slab that stays flat rides on bearers 100 mm wide, none of them under its opening."""
    hob = cut("rectangle", (560, 490), (600, 310))
    found = _handling(_by(workshop, "flat"), box(2400, 620), hob).chosen()
    assert len(found.bearers_mm) in (2, 3)
    assert all(not 270 < at < 930 and 50 <= at <= 2350 for at in found.bearers_mm)
    assert _handling(workshop, box(1400, 600)).chosen().bearers_mm == ()


def test_what_is_turned_on_edge_never_lies_on_its_pallet(workshop: Workshop) -> None:
    """It is carried, packed and driven on edge: no case has it flat."""
    found = _handling(workshop, box(1400, 600)).chosen()
    assert found.way.held == "on-edge"
    assert "on-bearers" not in {verdict.case for verdict in found.verdicts}


def test_a_slab_hung_by_its_ends_is_row_17(workshop: Workshop) -> None:
    """Held 5 % from its ends it bends ``1 - 4 × 0.05`` of the 2.70 MPa of row 17, times 1.5."""
    found = _handling(workshop, box(2400, 620)).flat_by_the_ends()
    expected = 2.70 * (1 - 4 * 0.05) * workshop.handling.carried_factor * _weighing(workshop)
    assert found.stress_mpa == pytest.approx(expected, rel=0.04)


def test_leaving_the_mould_level_is_the_larger_of_rows_18_and_19(workshop: Workshop) -> None:
    """Own weight with 1 kN/m² of adhesion makes 0.926 MPa (row 18), more than 1.3 G (row 19)."""
    flat = _by(workshop, "flat")
    found = _handling(flat, box(2400, 620)).chosen().verdicts
    weighing = _weighing(workshop)
    expected = max(0.463 * weighing * (1 + 1.0 / (1.0 * weighing)), 0.602 * weighing)
    assert _case(found, "lifted-out").stress_mpa == pytest.approx(expected, rel=0.06)


def test_the_plainest_way_that_suffices_is_taken(workshop: Workshop) -> None:
    """A small slab goes the first way; a long one round a hob needs the rail."""
    assert _handling(workshop, box(1200, 500)).chosen().way == workshop.handling.ways[0]
    hob = cut("rectangle", (560, 490), (1200, 310), rim="covered")
    assert _handling(workshop, box(2400, 620), hob).chosen().way.rail


def test_a_rail_stands_in_for_the_opening(workshop: Workshop) -> None:
    """Turned with a rail across a hob, a slab is stressed as if the hob were not there."""
    hob = cut("rectangle", (560, 490), (1200, 310), rim="covered")
    railed = _by(workshop, "on-edge")
    ways = (replace(railed.handling.ways[0], rail=True),)
    railed = replace(railed, handling=replace(railed.handling, ways=ways))
    with_hob = _case(_handling(railed, box(2400, 620), hob).chosen().verdicts, "turned")
    whole = _case(_handling(railed, box(2400, 620)).chosen().verdicts, "turned")
    assert with_hob.stress_mpa == pytest.approx(whole.stress_mpa, rel=0.02)


@pytest.mark.parametrize("right", [200, 300])
def test_a_rail_gains_nothing_where_there_is_no_opening(right: int, workshop: Workshop) -> None:
    """Turned with a rail or without, it is the same plate: an overhang's finer mesh with it."""
    rests = {"kind": "units", "units": [{"width": 700}] * 2, "overhang": {"right": right}}
    handling = _handling(workshop, box(1400 + right, 600), rests=rests)
    bare, railed = (
        replace(workshop.handling.ways[0], rail=rail, most_kg=9999.0) for rail in (False, True)
    )
    turned = [_case(handling._handled(way).verdicts, "turned") for way in (bare, railed)]
    assert turned[0] == turned[1]


def test_what_no_way_can_lift_is_too_heavy(workshop: Workshop) -> None:
    """Over 650 kg with its mould nothing here lifts it; a way is judged all the same."""
    thick = _handling(workshop, box(2700, 1200), thickness=100)
    assert thick.too_heavy
    assert thick.chosen().verdicts


def test_colder_concrete_needs_longer(workshop: Workshop) -> None:
    """The needed age is the concrete's own; in a colder workshop the slab is younger that day."""
    warm, cold = (
        _handling(workshop, box(1600, 600), workshop_temp_c=degrees).chosen()
        for degrees in (20.0, 5.0)
    )
    assert warm.needs_age_days == pytest.approx(cold.needs_age_days)
    assert cold.age_days < warm.age_days


def test_nothing_leaves_its_mould_before_a_day(workshop: Workshop) -> None:
    """However short the profile's cover, a slab lies there for 24 hours."""
    hasty = replace(workshop, days=replace(workshop.days, under_cover=0.2))
    assert _handling(hasty, box(600, 300)).chosen().under_cover_days == 1.0


def test_the_profiles_partial_factor_is_the_one_that_is_used(workshop: Workshop) -> None:
    """A margin of 2 instead of 1.5 trusts three quarters, at once everywhere."""
    careful = replace(workshop, concrete=replace(workshop.concrete, partial_factor=2.0))
    usual, wary = (
        _case(_handling(w, box(1200, 500)).chosen().verdicts, "turned").limit_mpa
        for w in (workshop, careful)
    )
    assert wary == pytest.approx(0.75 * usual)
    later, sooner = (concrete_of(w).age_days_for(1.0, 40) for w in (careful, workshop))
    assert later is not None
    assert sooner is not None
    assert later > sooner


@pytest.mark.parametrize(
    "outline",
    [
        L_SHAPE,
        {"kind": "round", "diameter": 1000},
        polygon((0, 0), (1800, 0), (1800, 90), (300, 90), (300, 900), (0, 900)),
        polygon((0, 0), (1200, 500), (0, 1000)),
        polygon(
            (0, 0), (1800, 0), (1800, 900), (1500, 900), (1500, 300), (300, 300), (300, 900),
            (0, 900),
        ),
    ],
    ids=["a slim L", "a disc", "a flag", "a wedge", "a U"],
)  # fmt: skip
def test_an_odd_outline_is_held_where_it_has_concrete(outline: Json, workshop: Workshop) -> None:
    """Hands and lines lie on the slab: every step of every way has a stress, none a hole."""
    handling = _handling(workshop, outline)
    for way in workshop.handling.ways:
        handled = handling._handled(way)
        for verdict in handled.verdicts:
            assert verdict.tips or verdict.stress_mpa > 0.0
            assert not (verdict.tips and handled.suffices)


def test_hands_keep_off_an_opening_in_the_far_edge(workshop: Workshop) -> None:
    """Where a notch is open to the back, the hand goes to the last concrete before it."""
    post = cut("rectangle", (200, 300), (373, 450), open_to="back")
    handling = _handling(workshop, box(1800, 600), post)
    assert _case(handling.chosen().verdicts, "turned").stress_mpa > 0.0


def test_what_tips_is_never_fine() -> None:
    """A case in which the slab tips has no stress, and fails all the same."""
    tipped = Verdict("turned", 0.0, 1.0, (0.0, 0.0), 2.0, tips=True)
    assert tipped.utilisation > 1.0


def test_the_weight_lies_between_the_places_of_holding(workshop: Workshop) -> None:
    """A wedge, heavy at one end, is held on both sides of its weight."""
    shape = shape_of(slab_of(workshop, polygon((0, 0), (1800, 0), (0, 400))), workshop)
    first, second = Holding(shape.outline).places_mm(0.45)
    assert first < shape.net.centroid.x < second


def test_a_slab_is_turned_over_the_side_that_its_weight_leans_on(workshop: Workshop) -> None:
    """A rectangle goes over its front, a blade over its back (statics).

    The blade's weight, (850, 370), lies in front of the line from its tip to the far hand, (60, 0)
    to (1110, 600), so it falls off its front. Along y the sides are left and right; a slab that is
    lifted flat is not turned at all.
    """
    on_edge = _by(workshop, "on-edge")
    assert _handling(on_edge, box(1400, 500)).chosen().turned_over == "front"
    assert _handling(on_edge, box(500, 1400)).chosen().turned_over == "left"
    blade = polygon((0, 0), (60, 0), (1400, 300), (1400, 600), (900, 600))
    assert _handling(on_edge, blade).chosen().turned_over == "back"
    flat = _by(workshop, "flat")
    assert _handling(flat, box(1400, 500)).chosen().turned_over is None


ENOUGH_MM = 40  # thickness at which some way suffices


@pytest.mark.parametrize("thickness", [16, 20, 40, 60])
def test_the_way_chosen_is_the_one_that_trying_each_alone_would_choose(
    workshop: Workshop, thickness: int
) -> None:
    """A sink and a hob in 2.4 m: the first way that suffices, or else the nearest to it."""
    openings = (
        cut("rectangle", (500, 400), (500, 310)),
        cut("rectangle", (560, 490), (1700, 310), rim="covered"),
    )

    def moved(ways: tuple[Way, ...]) -> Handling:
        shop = replace(workshop, handling=replace(workshop.handling, ways=ways))
        return _handling(shop, box(2400, 620), *openings, thickness=thickness)

    every = moved(workshop.handling.ways)
    takes = [way for way in workshop.handling.ways if way.most_kg >= every.turned_kg(way)]
    alone = [moved((way,)).chosen() for way in takes]
    suffices = [one for one in alone if one.suffices]
    nearest = min(alone, key=lambda one: max(verdict.utilisation for verdict in one.verdicts))
    assert bool(suffices) == (thickness >= ENOUGH_MM)
    assert every.chosen() == (suffices[0] if suffices else nearest)
