"""What makers hold to without a standard that says so: sanity checks of the demonstration.

Common practice, no source, throughout.
"""

from datetime import date

import pytest

from ledgerstone.mix import Tint, batches, mixes_of, slurry_of
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import Dose
from support.mix_recipes import bag_of, mixing, recipe_of
from support.slabs import box, order_of, shape_from, slab_json, stages_of

DOSE = 3.0
BLACK = Tint("grey", (Dose(pigment="black iron oxide", percent=DOSE),))


def test_pigment_is_a_percentage_of_the_cement_in_the_bag(workshop: Workshop) -> None:
    """Of the cement, not of the bag: a 25 kg bag at 22 % takes 3 % of 5.5 kg, 165 g."""
    here = mixing(workshop, recipe_of(bag=bag_of(whole_bags=True)))
    (mix,) = mixes_of(BLACK, here)
    made = batches(mix, 12.0, here.recipe, here.mixer)
    black = next(one for one in made.batch.weighings if one.role == "pigment")
    assert made.batch.bags == pytest.approx(1)
    assert black.weighed_kg == 0.165


def test_slurry_has_the_same_percentage_on_neat_cement(workshop: Workshop) -> None:
    """So that filled voids have the slab's own shade."""
    here = mixing(workshop, recipe_of(bag=bag_of()))
    slurry = slurry_of("polished", 1.0, BLACK, here)
    assert 100 * slurry.kg("pigment") / slurry.kg("cement") == pytest.approx(DOSE)


def test_slabs_stay_covered_and_damp_for_three_to_four_days(
    workshop: Workshop, today: date
) -> None:
    """An ordinary slab leaves its mould after three or four days, in any month of the year."""
    assert 3 <= workshop.days.under_cover <= 4
    order = order_of(workshop, slab_json(box(1450, 560), rests={"kind": "full"}))
    for month in range(1, 13):
        (days,) = stages_of(order, workshop, today.replace(month=month)).known.under_cover_days
        assert 3 <= days <= 4


def test_a_breathable_sealer_goes_on_a_dry_face_and_a_film_weeks_later(workshop: Workshop) -> None:
    """Several coats in one go once it is dry; what makes a film waits for its own age, weeks."""
    for sealer in workshop.sealers:
        assert sealer.coats >= 2
        if sealer.kind == "film":
            assert sealer.youngest_days >= 14
        assert sealer.recoat_hours <= 24
    assert workshop.days.drying >= 1


def test_between_walls_a_slab_is_shorter_and_never_longer(workshop: Workshop) -> None:
    """A kitchen takes one or two millimetres, and nothing over between walls: a gap each side."""
    edges = {"left": {"profile": "wall"}, "right": {"profile": "wall"}}
    shape = shape_from(workshop, box(2000, 600), size_from="between-walls", edges=edges)
    assert 2 <= 2000 - shape.length_mm <= 2 * 5
    assert workshop.shaping.fitting_gap_mm >= 1
