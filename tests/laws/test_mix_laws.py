"""Laws of the mix: masses are volume × density, batches add up, and everything scales."""

from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from ledgerstone.codec.order_in import read_order
from ledgerstone.mix import BatchPlan, Tint, batch_plan, batches, late_pours, mixes_of, weighing
from ledgerstone.mix.batches import with_stored_moisture
from ledgerstone.shape import shape_of
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile
from ledgerstone.workshop.records import Dose, Mixer, Recipe
from ledgerstone.workshop.records.proportions import (
    MixPart,
    filled_to_1_m3,
    fresh_kg_per_m3,
    mass_kg,
    scaled_to_1_m3,
    volume_m3,
    with_air_m3,
)
from support.documents import Json
from support.mix_recipes import bag_of, mixing, part, recipe_of
from support.strategies.orders import orders, thorough, usual

WORKSHOP = load_profile(DEMONSTRATION)
EXACT = 1e-9


@st.composite
def part_lists(draw: DrawFn) -> tuple[MixPart, ...]:
    """Parts of a fine concrete, in whatever proportions leave room for sand."""
    cement = draw(st.floats(200, 800))
    water = cement * draw(st.floats(0.25, 0.6))
    moisture = st.floats(0, 8)
    return (
        part("water", water, 1000),
        part("plasticiser", cement * draw(st.floats(0, 0.03)), 1070, solids_percent=35.0),
        part("cement", cement, draw(st.floats(3000, 3200))),
        part("aggregate", draw(st.floats(100, 2000)), 2650, "sand", absorption_percent=1.0,
             moisture_percent=draw(moisture)),
        part("aggregate", draw(st.floats(100, 2000)), 2700, "grit", absorption_percent=0.5,
             moisture_percent=draw(moisture)),
    )  # fmt: skip


airs = st.floats(0, 8)
tints = st.builds(
    lambda cement, names, percents: Tint(
        cement,
        tuple(Dose(pigment=n, percent=p) for n, p in zip(names, percents, strict=False)),
    ),
    st.sampled_from(("grey", "white")),
    st.lists(st.sampled_from([p.name for p in WORKSHOP.pigments]), unique=True, max_size=2),
    st.lists(st.floats(0.1, 5), min_size=2, max_size=2),
)
mixers = st.builds(
    Mixer,
    working_l=st.floats(15, 200),
    minutes_per_batch=st.floats(3, 15),
    open_minutes=st.floats(15, 120),
    scale_step_kg=st.sampled_from((0.01, 0.02, 0.05)),
    fine_scale_step_kg=st.sampled_from((0.001, 0.0001)),
    fine_scale_most_kg=st.floats(0, 5),
)
recipes = st.sampled_from(
    (WORKSHOP.recipe, recipe_of(bag=bag_of()), recipe_of(bag=bag_of(whole_bags=True), waste=8.0))
)


@given(part_lists(), airs)
def test_a_closed_mix_fills_a_cubic_metre(parts: tuple[MixPart, ...], air: float) -> None:
    """Filled or scaled, parts and air are one cubic metre, and mass is volume × density."""
    room = 1 - air / 100 - volume_m3(p for p in parts if p.role != "aggregate")
    assume(room > 0.01)
    for closed in (filled_to_1_m3(parts, air), scaled_to_1_m3(parts, air)):
        assert volume_m3(closed) + air / 100 == pytest.approx(1, abs=EXACT)
        assert mass_kg(closed) == pytest.approx(fresh_kg_per_m3(closed, air), rel=EXACT)


@given(part_lists(), st.floats(0.1, 10), airs)
def test_density_knows_no_amount(parts: tuple[MixPart, ...], factor: float, air: float) -> None:
    """More of everything is no denser."""
    more = tuple(replace(one, kg=one.kg * factor) for one in parts)
    assert fresh_kg_per_m3(more, air) == pytest.approx(fresh_kg_per_m3(parts, air), rel=EXACT)
    assert with_air_m3(more, air) == pytest.approx(factor * with_air_m3(parts, air), rel=EXACT)


@given(part_lists())
def test_moisture_moves_water_and_makes_none(parts: tuple[MixPart, ...]) -> None:
    """However wet the heaps are, the batch weighs the same."""
    assert mass_kg(with_stored_moisture(parts)) == pytest.approx(mass_kg(parts), rel=EXACT)


@given(tints, recipes, st.floats(1, 400), mixers)
@usual
def test_a_batch_weighs_its_volume_times_its_density(
    tint: Tint, recipe: Recipe, litres: float, mixer: Mixer
) -> None:
    """Whatever the mixer, recipe and shade; and no batch is more than the mixer holds."""
    here = mixing(WORKSHOP, recipe, mixer=mixer)
    for mix in mixes_of(tint, here):
        made = batches(mix, litres, recipe, mixer)
        density = mix.fresh_kg_per_m3
        assert made.batch.kg == pytest.approx(made.batch.litres / 1000 * density, rel=1e-7)
        assert made.batch.litres <= mixer.working_l * (1 + 1e-7)
        assert made.litres >= litres * (1 - EXACT)
        if recipe.bag is None or not recipe.bag.whole_bags:
            assert made.litres == pytest.approx(litres, rel=EXACT)


@given(st.floats(0, 300), mixers)
def test_a_scale_is_off_by_half_a_step_at_most(kg: float, mixer: Mixer) -> None:
    """What is weighed lies within half a step of what was worked out."""
    for role in ("cement", "pigment"):
        found = weighing(part(role, kg, 3000), mixer)
        assert abs(found.weighed_kg - kg) <= found.step_kg / 2 + 1e-9


def plan_of(document: Json, workshop: Workshop) -> tuple[BatchPlan, list[int]]:
    """Plan the batches of a random order, and say how many of each slab it has."""
    order = read_order(document, workshop)
    shapes = [shape_of(slab, workshop) for slab in order.slabs]
    assume(all(shape.net_area_mm2 > 1 and shape.volume_mm3 > 1 for shape in shapes))
    return batch_plan(order, shapes, workshop), [slab.quantity for slab in order.slabs]


@given(orders(), mixers)
@thorough
def test_batches_add_up_to_the_order(document: Json, mixer: Mixer) -> None:
    """Every piece is poured as often as it was asked for, and the litres are those of the pieces.

    What is bought weighs what is mixed and filled, and the dry slurry in the repair pots.
    """
    workshop = replace(WORKSHOP, mixer=mixer)
    plan, quantities = plan_of(document, workshop)
    poured = [0] * len(quantities)
    for pour in plan.pours:
        for i in pour.slabs:
            poured[i] += pour.times
    assert poured == quantities
    wanted = sum(n * s.mixed.total for n, s in zip(quantities, plan.slabs, strict=True))
    mixed = sum(pour.times * pour.litres for pour in plan.pours)
    assert mixed == pytest.approx(wanted, rel=1e-9)
    kg = sum(pour.times * one.count * one.batch.kg for pour in plan.pours for one in pour.batches)
    kg += sum(
        n * sum(one.kg for one in s.slurry.weighings) + n * workshop.slurry.repair_pot_kg
        for n, s in zip(quantities, plan.slabs, strict=True)
    )
    assert sum(one.kg for one in plan.purchases) == pytest.approx(kg, rel=1e-9)


@given(orders(), mixers)
@usual
def test_only_a_single_piece_is_poured_late(document: Json, mixer: Mixer) -> None:
    """Pieces are put together only as far as the open time goes."""
    workshop = replace(WORKSHOP, mixer=mixer)
    plan, _ = plan_of(document, workshop)
    assert all(len(pour.slabs) == 1 for pour in late_pours(plan, workshop))


@given(st.integers(300, 2000), st.integers(200, 1000), st.sampled_from((2, 3)), tints)
@usual
def test_twice_the_slab_is_twice_the_mix(length: int, width: int, times: int, tint: Tint) -> None:
    """A slab so many times as wide takes as much of everything so many times over.

    But for the repair pot: that is one for a piece, however large.
    """
    workshop = replace(WORKSHOP, slurry=replace(WORKSHOP.slurry, repair_pot_kg=0.0))
    used = []
    for across in (width, width * times):
        slab = {"outline": {"kind": "rectangle", "length": length, "width": across},
                "thickness": 40}  # fmt: skip
        order = read_order({"slabs": [slab]}, workshop)
        shapes = [shape_of(slab, workshop) for slab in order.slabs]
        plan = batch_plan(order, shapes, workshop, tints=[tint])
        used.append({one.name: one.kg for one in plan.purchases})
    assert used[1] == {name: pytest.approx(times * kg, rel=1e-9) for name, kg in used[0].items()}
