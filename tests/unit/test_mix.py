"""The mix: face coat and backing, batches, scales, pours, slurry and what to buy."""

from dataclasses import replace
from decimal import Decimal

import pytest

from ledgerstone.mix import (
    BatchPlan,
    Tint,
    batch_plan,
    batches,
    hardened_kg_per_m3,
    late_pours,
    mixes_of,
    open_minutes,
    palette_tint,
    pour_minutes,
    repair_pot,
    slurry_of,
    weighing,
)
from ledgerstone.mix.batches import with_stored_moisture
from ledgerstone.shape import shape_of
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import Dose, FaceCoat, Mixer
from support.documents import Json
from support.mix_recipes import bag_of, constituent, mixing, part, recipe_of
from support.slabs import box, order_of, slab_json

GREY = Tint("grey")
BLACK = Tint("grey", (Dose(pigment="black iron oxide", percent=4),))
PLAIN = (
    constituent("water", 200, 1000),
    constituent("cement", 500, 3150, pack_kg=25.0),
    constituent("aggregate", 1646.4, 2650, "sand"),
)
COAT = FaceCoat(thickness_mm=8, water_cement_ratio=0.44)


def mixer(**more: float) -> Mixer:
    """Return a mixer of 50 litres, ten minutes a batch and an hour's open time."""
    figures = {
        "working_l": 50.0,
        "minutes_per_batch": 10.0,
        "open_minutes": 60.0,
        "scale_step_kg": 0.02,
        "fine_scale_step_kg": 0.001,
        "fine_scale_most_kg": 3.0,
    }
    return Mixer(**(figures | more))


def plan_of(workshop: Workshop, *slabs: Json, moulds: list[int] | None = None) -> BatchPlan:
    """Plan the batches of some slabs in plain grey."""
    order = order_of(workshop, *slabs)
    shapes = [shape_of(slab, workshop) for slab in order.slabs]
    return batch_plan(order, shapes, workshop, tints=[GREY] * len(slabs), moulds=moulds)


# --- mixes --------------------------------------------------------------------------------------


def test_pigment_takes_the_place_of_sand_and_leaves_the_cement(workshop: Workshop) -> None:
    """By volume a shade changes neither cement nor water in a cubic metre, and makes it heavier."""
    here = mixing(workshop, recipe_of(*PLAIN))
    (plain,), (black,) = mixes_of(GREY, here), mixes_of(BLACK, here)
    assert black.cement_kg_per_m3 == plain.cement_kg_per_m3 == 500
    assert black.water_cement_ratio == plain.water_cement_ratio
    assert black.fresh_kg_per_m3 > plain.fresh_kg_per_m3
    (pigment,) = (one for one in black.parts if one.role == "pigment")
    assert pigment.kg == pytest.approx(20)


def test_pigment_comes_on_top_of_a_bag(workshop: Workshop) -> None:
    """By the bag pigment makes a little more concrete: the cement in a cubic metre falls."""
    here = mixing(workshop, recipe_of(bag=bag_of()))
    (plain,), (black,) = mixes_of(GREY, here), mixes_of(BLACK, here)
    assert plain.cement_kg_per_m3 == pytest.approx(25 * 0.22 / 0.0125)
    extra_m3 = plain.cement_kg_per_m3 * 0.04 / 4600
    assert black.cement_kg_per_m3 == pytest.approx(plain.cement_kg_per_m3 / (1 + extra_m3))


def test_a_face_coat_is_the_same_with_more_water(workshop: Workshop) -> None:
    """Sand to cement stays, the water rises to the coat's own ratio."""
    here = mixing(workshop, recipe_of(*PLAIN, coat=COAT))
    face, backing = mixes_of(BLACK, here)
    assert (face.coat, backing.coat) == ("face", "backing")
    assert face.water_cement_ratio == pytest.approx(0.44)
    assert backing.water_cement_ratio == pytest.approx(0.40)
    share = [next(p.kg for p in m.parts if p.name == "sand") / m.cement_kg_per_m3
             for m in (face, backing)]  # fmt: skip
    assert share[0] == pytest.approx(share[1])


def test_a_face_coats_ratio_counts_the_admixtures_water(workshop: Workshop) -> None:
    """The demonstration's face coat comes out at the ratio that its profile asks for."""
    coat = workshop.recipe.face_coat
    assert coat is not None
    assert mixes_of(GREY, workshop)[0].water_cement_ratio == pytest.approx(coat.water_cement_ratio)


def test_white_cement_is_named(workshop: Workshop) -> None:
    """A shade in white cement weighs white cement, as much as there would be of grey."""
    here = mixing(workshop, recipe_of(*PLAIN))
    (mix,) = mixes_of(Tint("white"), here)
    assert [one.cement for one in mix.parts if one.name == "cement"] == ["white"]
    assert mix.cement_kg_per_m3 == 500


def test_the_palettes_shade_is_the_tint(workshop: Workshop) -> None:
    """A slab in graphite has the palette's cement and doses."""
    slab = order_of(workshop, slab_json(box(900, 500), shade={"name": "graphite"})).slabs[0]
    graphite = next(shade for shade in workshop.palette if shade.name == "graphite")
    assert palette_tint(slab, workshop) == Tint(graphite.cement, graphite.doses)


def test_hardened_density_is_as_weighed_and_heavier_with_pigment(workshop: Workshop) -> None:
    """Without pigment it is the recipe's own; with black it rises as the fresh mix does."""
    plain, black = (hardened_kg_per_m3(tint, workshop) for tint in (GREY, BLACK))
    assert plain == pytest.approx(workshop.recipe.density_kg_per_m3)
    fresh = [mixes_of(tint, workshop)[-1].fresh_kg_per_m3 for tint in (GREY, BLACK)]
    assert black / plain == pytest.approx(fresh[1] / fresh[0])


# --- batches ------------------------------------------------------------------------------------


@pytest.mark.parametrize(("litres", "count"), [(10, 1), (50, 1), (50.01, 2), (149, 3), (151, 4)])
def test_batches_are_as_few_as_the_mixer_does_and_even(
    workshop: Workshop, litres: float, count: int
) -> None:
    """A mixer of 50 litres does 149 in three batches of 49.67."""
    here = mixing(workshop, recipe_of(*PLAIN), mixer=mixer())
    made = batches(mixes_of(GREY, here)[0], litres, here.recipe, here.mixer)
    assert made.count == count
    assert made.batch.litres == pytest.approx(litres / count)
    assert made.litres == pytest.approx(litres)


def test_whole_bags_make_a_little_more(workshop: Workshop) -> None:
    """140 litres at 12.5 a bag are 12 bags; a mixer that holds four takes three batches of four."""
    here = mixing(workshop, recipe_of(bag=bag_of(whole_bags=True)), mixer=mixer())
    made = batches(mixes_of(GREY, here)[0], 140, here.recipe, here.mixer)
    assert made.count == 3
    assert made.batch.bags == pytest.approx(4)
    assert made.litres == pytest.approx(150)


def test_bags_are_split_where_that_is_allowed(workshop: Workshop) -> None:
    """Without whole bags a batch takes as much dry mix as it needs."""
    here = mixing(workshop, recipe_of(bag=bag_of()), mixer=mixer())
    made = batches(mixes_of(GREY, here)[0], 140, here.recipe, here.mixer)
    assert made.count * (made.batch.bags or 0) == pytest.approx(140 / 12.5)


@pytest.mark.parametrize(
    ("role", "kg", "weighed_kg"),
    [
        ("pigment", 0.4937, 0.494),
        ("pigment", 3.507, 3.5),
        ("cement", 12.349, 12.34),
        ("cement", 12.351, 12.36),
        ("plasticiser", 0.1234, 0.123),
    ],
)
def test_things_are_weighed_in_the_scales_steps(role: str, kg: float, weighed_kg: float) -> None:
    """Pigment up to 3 kg goes on the scale of 1 g, all else on that of 20 g."""
    found = weighing(part(role, kg, 1000), mixer())
    assert found.weighed_kg == weighed_kg
    assert abs(found.weighed_kg - kg) <= found.step_kg / 2 + 1e-12
    assert found.off_percent == pytest.approx(100 * (weighed_kg - kg) / kg)


def test_dry_sand_takes_more_water() -> None:
    """Sand that lacks 1 % to saturation is weighed lighter, and as much water more is added."""
    parts = (
        part("water", 100, 1000),
        part("aggregate", 1010, 2650, absorption_percent=1, moisture_percent=0),
    )
    water, sand = with_stored_moisture(parts)
    assert water.kg == pytest.approx(110)
    assert sand.kg == pytest.approx(1000)


# --- pours --------------------------------------------------------------------------------------


def test_a_slab_takes_its_volume_waste_and_what_is_sanded_off(workshop: Workshop) -> None:
    """1 × 0.5 m, 40 mm and 2 to sand, is 21 litres; with 10 % waste 23.1, of which 4.4 face."""
    here = mixing(workshop, recipe_of(*PLAIN, waste=10, coat=COAT), sanding_mm=2.0)
    (slab,) = plan_of(here, slab_json(box(1000, 500), edges={})).slabs
    assert slab.placed_l == pytest.approx(21)
    assert slab.mixed.face == pytest.approx(0.5 * 8 * 1.1)
    assert slab.mixed.total == pytest.approx(23.1)


def test_slabs_of_one_mix_share_batches(workshop: Workshop) -> None:
    """Two slabs of 20 litres share one batch of 40; in two shades they take one each."""
    here = mixing(workshop, recipe_of(*PLAIN), mixer=mixer())
    two = [slab_json(box(1000, 500))] * 2
    (pour,) = plan_of(here, *two).pours
    assert (pour.slabs, pour.backing.count) == ((0, 1), 1)
    order = order_of(here, *two)
    shapes = [shape_of(slab, here) for slab in order.slabs]
    apart = batch_plan(order, shapes, here, tints=[GREY, BLACK])
    assert [pour.slabs for pour in apart.pours] == [(0,), (1,)]


def test_equal_slabs_are_poured_again_and_again_in_one_mould(workshop: Workshop) -> None:
    """Five from one mould are five pours alike; from two moulds, two of two and one of one."""
    here = mixing(workshop, recipe_of(*PLAIN), mixer=mixer())
    five = slab_json(box(1000, 500), quantity=5)
    one = plan_of(here, five)
    assert [(pour.slabs, pour.times) for pour in one.pours] == [((0,), 5)]
    two = plan_of(here, five, moulds=[2])
    assert [(pour.slabs, pour.times) for pour in two.pours] == [((0, 0), 2), ((0,), 1)]
    assert one.batch_count == 5
    assert two.batch_count == 3


def test_a_pour_ends_where_the_open_time_does(workshop: Workshop) -> None:
    """With 25 minutes open and 10 a batch three batches make a pour: a fourth slab waits."""
    here = mixing(workshop, recipe_of(*PLAIN), mixer=mixer(open_minutes=25.0))
    plan = plan_of(here, *[slab_json(box(1200, 1000))] * 3)  # 48 litres, a batch each
    assert [pour.slabs for pour in plan.pours] == [(0, 1), (2,)]  # the table holds two
    roomy = replace(here, table=replace(here.table, count=4))
    plan = plan_of(roomy, *[slab_json(box(1200, 1000))] * 4)
    assert [pour.slabs for pour in plan.pours] == [(0, 1, 2), (3,)]
    assert late_pours(plan, roomy) == ()


def test_one_slab_too_large_for_the_open_time_is_late(workshop: Workshop) -> None:
    """128 litres in a mixer of 10 are 13 batches: the first waits two hours for the last."""
    here = mixing(workshop, recipe_of(*PLAIN), mixer=mixer(working_l=10.0))
    plan = plan_of(here, slab_json(box(2560, 1000), thickness=50))
    (late,) = late_pours(plan, here)
    assert late.open_minutes == 120
    assert late.minutes == 130


def test_minutes_of_a_pour() -> None:
    """Two of face coat and three of backing take 50 minutes, and the first waits 40."""
    assert pour_minutes(2, 3, mixer()) == 50
    assert open_minutes(2, 3, mixer()) == 40


# --- slurry and what to buy ---------------------------------------------------------------------


def test_slurry_has_the_bodys_dose_on_its_own_cement(workshop: Workshop) -> None:
    """4 % black is 4 % of the slurry's neat cement (common practice, no source)."""
    slurry = slurry_of("polished", 2.0, BLACK, workshop)
    assert slurry.kg("pigment") == pytest.approx(0.04 * slurry.kg("cement"))
    ratio = slurry.kg("water") / slurry.kg("cement")
    assert ratio == pytest.approx(workshop.slurry.water_cement_ratio)


def test_a_repair_pot_is_the_slurry_dry(workshop: Workshop) -> None:
    """A quarter of a kilogram at 4 %: 240 g of cement and 10 g of black, and no water in it."""
    pot = repair_pot(BLACK, workshop)
    assert pot is not None
    assert [(one.role, one.weighed_kg) for one in pot.weighings] == [
        ("cement", 0.24), ("pigment", 0.01),
    ]  # fmt: skip
    assert sum(one.kg for one in pot.weighings) == pytest.approx(0.25)
    # by hand: 0.25 / 1.04 of cement, 0.4 of that in water, at 3150, 4600 and 1000 kg a cubic metre
    litres = 1000 * 0.25 / 1.04 * (1 / 3150 + 0.04 / 4600 + 0.4 / 1000)
    assert pot.litres == pytest.approx(litres)
    none = replace(workshop, slurry=replace(workshop.slurry, repair_pot_kg=0.0))
    assert repair_pot(BLACK, none) is None


def test_no_slurry_is_made_for_a_surface_as_cast(workshop: Workshop) -> None:
    """The demonstration fills nothing on an as-cast face."""
    assert slurry_of("as-cast", 2.0, BLACK, workshop).litres == 0


def test_whole_packs_are_bought(workshop: Workshop) -> None:
    """40 litres with 500 kg of cement to the cubic metre take 20 kg: one bag of 25."""
    priced = replace(PLAIN[1], price_per_kg=Decimal("0.40"))
    recipe = recipe_of(PLAIN[0], priced, PLAIN[2])
    none = replace(workshop.slurry, amounts=(), repair_pot_kg=0.0)
    here = replace(mixing(workshop, recipe), slurry=none)
    plan = plan_of(here, slab_json(box(1000, 1000)))
    cement = next(one for one in plan.purchases if one.role == "cement")
    assert cement.kg == pytest.approx(20)
    assert (cement.packs, cement.use_price, cement.packs_price) == (1, Decimal(8), Decimal(10))


def test_the_bags_are_bought_and_their_slurrys_cement_apart(workshop: Workshop) -> None:
    """By the bag 40 litres take 3.2 bags, so four; the slurry's cement is neat, not from a bag."""
    here = mixing(workshop, recipe_of(bag=bag_of()))
    plan = plan_of(here, slab_json(box(1000, 1000), finish={"surface": "polished"}))
    bought = {one.name: one for one in plan.purchases}
    assert bought["bagged mix"].packs == 4
    assert bought["bagged mix"].packs_price == 4 * Decimal("11.50")
    assert (bought[""].role, bought[""].cement) == ("cement", "grey")
