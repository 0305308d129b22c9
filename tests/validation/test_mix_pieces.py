"""Pieces, bags, slurry, sealer and rules of the mix, against sources §6 and §7.

"Worked" rows are worked by hand (sources §6.2); the others name their source.
"""

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
from ledgerstone.shape import shape_of
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import Dose
from ledgerstone.workshop.records.proportions import (
    counted_admixture_water_kg,
    filled_to_1_m3,
    scaled,
    water_cement_ratio,
)
from support.mix_recipes import bag_of, mix_b, mixing, part, pigmented, recipe_of
from support.slabs import box, order_of, slab_json

LITRES_OF_FT3 = 28.316846592

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
