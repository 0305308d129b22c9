"""Mixes against published ones: rows of the reference page on mixes, ACI 211.1, Navy, BRE.

"Worked" rows are absolute volume worked by hand in the reference page; the others are printed in
the source named beside them.
"""

from dataclasses import replace

import pytest

from ledgerstone.mix import (
    Tint,
    batch_plan,
    batches,
    largest_aggregate_mm,
    mixes_of,
    sealer_l,
    slurry_of,
)
from ledgerstone.mix.batches import as_they_lie
from ledgerstone.shape import shape_of
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.proportions import (
    Part,
    counted_admixture_water_kg,
    filled_to_1_m3,
    fresh_kg_per_m3,
    scaled,
    scaled_to_1_m3,
    volume_m3,
    water_cement_ratio,
)
from ledgerstone.workshop.records import Constituent, Dose
from unit.recipes import bag_of, constituent, mixing, part, recipe_of
from unit.slabs import box, order_of, slab_json

KG_PER_M3_OF_LB_PER_YD3 = 0.45359237 / 0.764554857984  # exact pound; 0.9144³ m³
KG_PER_M3_OF_LB_PER_FT3 = 27 * KG_PER_M3_OF_LB_PER_YD3
LITRES_OF_FT3 = 28.316846592


def kg_of(parts: tuple[Part, ...], name: str) -> float:
    """Mass of the part of that name."""
    return next(one.kg for one in parts if one.name == name)


def mix_b() -> tuple[Constituent, ...]:
    """Mix B's constituents; how much sand is written does not matter, for it fills."""
    return (
        constituent("water", 190, 1000),
        constituent("plasticiser", 5, 1070),
        constituent("cement", 500, 3150),
        constituent("aggregate", 1650, 2650, "sand"),
    )


def pigmented(workshop: Workshop, name: str, density: float) -> Workshop:
    """Return the workshop with one pigment of that density on the shelf."""
    (first, *_) = workshop.pigments
    return replace(workshop, pigments=(replace(first, name=name, density_kg_per_m3=density),))


# --- absolute volume ----------------------------------------------------------------------------


def test_row_21_mix_a(workshop: Workshop) -> None:
    """Cement 500, w/c 0.40 and 2 % air take 1646.4 kg of sand and weigh 2346.4 (worked)."""
    recipe = recipe_of(
        constituent("water", 200, 1000),
        constituent("cement", 500, 3150),
        constituent("aggregate", 1600, 2650, "sand"),
    )
    (mix,) = mixes_of(Tint("grey"), mixing(workshop, recipe))
    assert kg_of(mix.parts, "sand") == pytest.approx(1646.4, abs=0.5)
    assert mix.fresh_kg_per_m3 == pytest.approx(2346.4, abs=0.5)
    assert mix.water_cement_ratio == pytest.approx(0.40)


def test_row_22_mix_b(workshop: Workshop) -> None:
    """With 1 % plasticiser and 4 % red it takes 1649.9 kg of sand and weighs 2364.9 (worked)."""
    here = mixing(pigmented(workshop, "red", 5000), recipe_of(*mix_b()))
    (mix,) = mixes_of(Tint("grey", (Dose(pigment="red", percent=4),)), here)
    assert kg_of(mix.parts, "water") == pytest.approx(190.0, abs=0.5)
    assert kg_of(mix.parts, "red") == pytest.approx(20.0, abs=0.5)
    assert kg_of(mix.parts, "sand") == pytest.approx(1649.9, abs=0.5)
    assert mix.fresh_kg_per_m3 == pytest.approx(2364.9, abs=0.5)


def test_row_23_mix_d(workshop: Workshop) -> None:
    """Two aggregates, half of the volume each, take 862.4 and 878.6 kg (worked)."""
    recipe = recipe_of(
        constituent("water", 180, 1000),
        constituent("plasticiser", 3.6, 1070),
        constituent("cement", 450, 3150),
        constituent("aggregate", 2650, 2650, "sand"),
        constituent("aggregate", 2700, 2700, "coarse"),
    )
    here = mixing(pigmented(workshop, "black", 4600), recipe)
    (mix,) = mixes_of(Tint("grey", (Dose(pigment="black", percent=3),)), here)
    assert kg_of(mix.parts, "sand") == pytest.approx(862.4, abs=0.5)
    assert kg_of(mix.parts, "coarse") == pytest.approx(878.6, abs=0.5)
    assert mix.fresh_kg_per_m3 == pytest.approx(2388.1, abs=0.5)


def test_row_24_a_published_mix_fills_a_cubic_metre() -> None:
    """228, 456, 719 and 883 kg with 3 % air fill 1.000 m³ and weigh 2286 (printed in a course).

    The densities are the course's; the printed volumes have three decimals.
    """
    parts = (
        part("water", 228, 1000),
        part("cement", 456, 3155),
        part("aggregate", 719, 2660, "coarse"),
        part("aggregate", 883, 2700, "fine"),
    )
    assert volume_m3(parts) + 0.03 == pytest.approx(1.000, abs=0.002)
    assert fresh_kg_per_m3(parts, 3.0) == pytest.approx(2286, abs=2286 * 0.002 + 1)


def test_strength_row_32_aci_211_1() -> None:
    """ACI 211.1's SI example: sand fills 0.2924 m³, 772 kg (ACI prints 771).

    Its coarse aggregate is given, so it stands here as a part that does not fill.
    """
    parts = (
        part("water", 181, 1000),
        part("cement", 292, 3150),
        part("addition", 0.71 * 1600, 2680, "coarse"),
        part("aggregate", 1, 2640, "sand"),
    )
    sand = filled_to_1_m3(parts, 1.0)[-1]
    assert sand.volume_m3 == pytest.approx(0.2924, rel=0.003)
    assert sand.kg == pytest.approx(772, rel=0.003)


def test_aci_211_1_moisture() -> None:
    """Its heaps at 2 % and 6 % moisture are weighed 1159 and 849 kg with 121.5 kg of water.

    The example's masses are oven-dry: ours are SSD, so they come in with their absorption.
    """
    parts = (
        part("water", 181, 1000),
        part("aggregate", 1136 * 1.005, 2680, "coarse", absorption_percent=0.5,
             moisture_percent=2),
        part("aggregate", 801 * 1.007, 2640, "sand", absorption_percent=0.7, moisture_percent=6),
    )  # fmt: skip
    found = as_they_lie(parts)
    assert kg_of(found, "coarse") == pytest.approx(1159, abs=0.5)
    assert kg_of(found, "sand") == pytest.approx(849, abs=0.5)
    assert kg_of(found, "water") == pytest.approx(121.5, abs=0.1)


def test_strength_row_33_navy() -> None:
    """The US Navy manual's mix: cement 610, coarse 1735 and fine 1152 lb in a cubic yard."""
    water_lb_per_ft3 = 62.4
    pounds = {"water": 305.0, "cement": 305 / 0.50, "coarse": 0.63 * 27 * 102}
    gravity = {"water": 1.0, "cement": 3.15, "coarse": 2.60, "fine": 2.65}
    roles = {"water": "water", "cement": "cement", "coarse": "addition", "fine": "aggregate"}
    parts = tuple(
        part(
            roles[name],
            pounds.get(name, 1.0) * KG_PER_M3_OF_LB_PER_YD3,
            gravity[name] * water_lb_per_ft3 * KG_PER_M3_OF_LB_PER_FT3,
            name,
        )
        for name in roles
    )
    filled = filled_to_1_m3(parts, 5.0)
    found = {one.name: one.kg / KG_PER_M3_OF_LB_PER_YD3 for one in filled}
    assert found["cement"] == pytest.approx(610, rel=0.003)
    assert found["coarse"] == pytest.approx(1735, rel=0.003)
    assert found["fine"] == pytest.approx(1152, rel=0.003)


def test_course_example_c_moisture() -> None:
    """A course's trial batch: 2.37 % over and 0.81 % under SSD give 15.52, 12.41 and 3.58 lb.

    Pounds scale like kilograms. The source rounds each step: its water is 0.01 lb off its own sum.
    """
    parts = (
        part("water", 3.85, 1000),
        part("aggregate", 15.16, 2670, "fine", moisture_percent=2.37),
        part("aggregate", 12.51, 2680, "coarse", moisture_percent=-0.81),
    )
    found = as_they_lie(parts)
    assert kg_of(found, "fine") == pytest.approx(15.52, abs=0.01)
    assert kg_of(found, "coarse") == pytest.approx(12.41, abs=0.01)
    assert kg_of(found, "water") == pytest.approx(3.58, abs=0.015)


def test_strength_row_34_bre() -> None:
    """BRE's method: 205 kg of water at w/c 0.46 take 446 kg of cement, and weigh 2360 with 1710.

    BRE reads 2360 off a chart for SSD aggregate of 2.65; 1 % of entrapped air is from memory.
    """
    cement = 205 / 0.46
    parts = (
        part("water", 205, 1000),
        part("cement", cement, 3150),
        part("aggregate", 1, 2650),
    )
    filled = filled_to_1_m3(parts, 1.0)
    assert cement == pytest.approx(446, rel=0.005)
    assert filled[-1].kg == pytest.approx(1710, rel=0.005)
    assert fresh_kg_per_m3(filled, 1.0) == pytest.approx(2360, rel=0.005)


def test_row_35_gfrc() -> None:
    """Premix of 1 to 1, w/c 0.34, with 3 % fibre by mass: 905 cement, 65.8 fibre, 2194 (worked)."""
    dry = 1 + 1 + 0.34 + 0.01
    fibre = 0.03 * dry / 0.97
    parts = (
        part("water", 0.34, 1000),
        part("cement", 1, 3150),
        part("plasticiser", 0.01, 1070),
        part("aggregate", 1, 2650),
        part("fibre", fibre, 2680),
    )
    placed = scaled_to_1_m3(parts, 3.0)
    assert kg_of(placed, "cement") == pytest.approx(905, rel=0.005)
    assert kg_of(placed, "fibre") == pytest.approx(65.8, rel=0.005)
    assert fresh_kg_per_m3(placed, 3.0) == pytest.approx(2194, rel=0.005)


# --- pieces and bags ----------------------------------------------------------------------------


def test_row_25_a_piece_of_mix_b(workshop: Workshop) -> None:
    """2400 × 620 × 40 mm is 59.52 litres: 29.76 kg cement, 1.190 pigment, 140.8 in all (worked)."""
    here = mixing(pigmented(workshop, "red", 5000), recipe_of(*mix_b()))
    order = order_of(workshop, slab_json(box(2400, 620)))
    tint = Tint("grey", (Dose(pigment="red", percent=4),))
    plan = batch_plan(order, [shape_of(order.slabs[0], here)], here, tints=[tint])
    (pour,) = plan.pours
    assert pour.backing.count == 1
    batch = pour.backing.batch
    red = next(one for one in batch.weighings if one.name == "red")
    assert batch.litres == pytest.approx(59.52, rel=1e-3)
    assert batch.cement_kg == pytest.approx(29.76, rel=1e-3)
    assert red.kg == pytest.approx(1.190, rel=1e-3)
    assert red.weighed_kg == 1.19
    assert batch.kg == pytest.approx(140.8, rel=1e-3)


def test_row_26_bags(workshop: Workshop) -> None:
    """A 25 kg bag with 2.5 litres at 2200 makes 12.50: 65.472 litres are 6 bags (worked).

    At 22 % cement they hold 33.0 kg, and 4 % of that is 1.32 kg.
    """
    bag = bag_of(whole_bags=True)
    here = mixing(pigmented(workshop, "red", 5000), recipe_of(bag=bag))
    assert bag.litres == pytest.approx(12.50)
    assert 65.472 / bag.litres == pytest.approx(5.24, abs=0.005)
    for doses, pigment in (((), 0.0), ((Dose(pigment="red", percent=4),), 1.32)):
        (mix,) = mixes_of(Tint("grey", doses), here)
        made = batches(mix, 65.472, here.recipe, here.mixer)
        assert made.count == 1
        assert made.batch.bags == pytest.approx(6)
        assert made.batch.cement_kg == pytest.approx(33.0)
        found = sum(one.kg for one in made.batch.weighings if one.role == "pigment")
        assert found == pytest.approx(pigment)


def test_an_eighty_pound_bag() -> None:
    """80 lb that make 0.60 cubic feet are 2.136 kg dry to the litre (row 3.13, from memory)."""
    bag = bag_of(bag_kg=80 * 0.45359237, yield_l=0.60 * LITRES_OF_FT3, fresh_kg_per_m3=None)
    assert bag.bag_kg / bag.litres == pytest.approx(2.136, abs=0.001)


def test_row_3_19_neat_slurry(workshop: Workshop) -> None:
    """Neat cement at w/c 0.40 is 1.394 kg to the litre of slurry (worked)."""
    (honed,) = (one for one in workshop.slurry.amounts if one.surface == "honed")
    assert workshop.slurry.water_cement_ratio == 0.40
    slurry = slurry_of("honed", 10.0, Tint("grey"), workshop)
    assert slurry.litres == pytest.approx(10 * honed.l_per_m2)
    assert slurry.kg("cement") / slurry.litres == pytest.approx(1.394, abs=0.001)


def test_row_34_sealer() -> None:
    """1.488 m² in two coats at 5 m² to the litre take 0.595 litres (worked)."""
    assert sealer_l(1.488, 2, 5.0) == pytest.approx(0.595, abs=0.001)


# --- rules --------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("narrowest_mm", "depth_mm", "clear_mm", "largest_mm"),
    [(None, 40, None, 13.3), (None, 40, 50, 13.3), (25, None, None, 5.0), (None, 60, 20, 15.0)],
)
def test_row_27_largest_aggregate(
    narrowest_mm: float | None, depth_mm: float | None, clear_mm: float | None, largest_mm: float
) -> None:
    """The least of 1/5 of the form, 1/3 of the depth and 3/4 of the gap (ACI 318-19 26.4.2.1)."""
    found = largest_aggregate_mm(narrowest_mm, depth_mm, clear_mm)
    assert found == pytest.approx(largest_mm, abs=0.05)


@pytest.mark.parametrize(
    ("litres", "counted_kg"),
    [(2.0, 0.0), (3.0, 0.0), (3.1, 3.1 * 1.07 * 0.65), (6.0, 6.0 * 1.07 * 0.65)],
)
def test_en_206_admixture_water(litres: float, counted_kg: float) -> None:
    """Over 3 litres of liquid admixture in a cubic metre their water counts (EN 206 5.2.6).

    From memory; 35 % of it is solids here.
    """
    parts = filled_to_1_m3(
        (
            part("water", 190, 1000),
            part("cement", 480, 3150),
            part("plasticiser", litres * 1.07, 1070, solids_percent=35),
            part("aggregate", 1, 2650),
        ),
        2.0,
    )
    assert counted_admixture_water_kg(parts, 2.0) == pytest.approx(counted_kg)
    assert water_cement_ratio(parts, 2.0) == pytest.approx((190 + counted_kg) / 480)
    half = scaled(parts, 0.5)
    assert water_cement_ratio(half, 2.0) == pytest.approx(water_cement_ratio(parts, 2.0))
