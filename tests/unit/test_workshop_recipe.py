"""Recipes in a profile: what they come to, and what is refused with which figure."""

from typing import Literal

import pytest

from ledgerstone.errors import ProfileError
from ledgerstone.wording import Figure, Message, english
from ledgerstone.workshop import DEMONSTRATION, Workshop, read_profile
from ledgerstone.workshop.keys.value_keys import KeyNumber
from ledgerstone.workshop.review.second_looks import second_looks

TEXT = DEMONSTRATION.read_text(encoding="utf-8")
WEIGHED = "weighed_kg_per_m3 ="
BAG = """
[recipe.bag]
name = "bagged mix"
bag_kg = 25
cement_percent = 22
water_l_per_bag = 2.5
fresh_kg_per_m3 = 2200
price_per_bag = 11.50
"""


def by_the_bag(**changes: str) -> str:
    """Return the demonstration mixed by the bag: its constituents and face coat left out."""
    start = TEXT.index("# Densities are those of sources §6.1 (service/docs/sources.md).")
    end = TEXT.index("# The mixer and the scales.")
    bag = BAG
    for old, new in changes.items():
        line = next(row for row in bag.splitlines() if row.startswith(f"{old} ="))
        bag = bag.replace(line, new)
    before = "".join(row for row in TEXT[:start].splitlines(keepends=True) if WEIGHED not in row)
    return before + bag + "\n" + TEXT[end:]


def changed(*pairs: tuple[str, str]) -> str:
    """Return the demonstration with each first text replaced."""
    text = TEXT
    for old, new in pairs:
        assert old in text
        text = text.replace(old, new, 1)
    return text


def test_the_demonstration_closes(workshop: Workshop) -> None:
    """Its parts and 2 % air fill a cubic metre, with 480 kg of cement at w/c 0.40."""
    recipe = workshop.recipe
    filled = sum(one.part.volume_m3 for one in recipe.constituents) + recipe.air_percent / 100
    assert filled == pytest.approx(1, abs=0.0005)
    assert recipe.cement_kg_per_m3 == 480
    assert recipe.water_cement_ratio == pytest.approx(0.40, abs=0.001)
    assert recipe.density_kg_per_m3 == recipe.weighed_kg_per_m3


def test_a_recipe_that_was_not_weighed_is_as_heavy_as_fresh() -> None:
    """Without a weighed slab the density is the fresh one: the safe side for lifting."""
    row = next(row for row in TEXT.splitlines() if row.startswith("weighed_kg_per_m3"))
    recipe = read_profile(changed((row, ""))).recipe
    assert recipe.density_kg_per_m3 == recipe.fresh_kg_per_m3


def test_a_bag_gives_what_price_strength_and_weight_need() -> None:
    """25 kg, 22 % cement and 2.5 litres at 2200: 440 kg/m³, w/c 0.4545, 80 bags a cubic metre."""
    recipe = read_profile(by_the_bag()).recipe
    assert recipe.cement_kg_per_m3 == pytest.approx(440)
    assert recipe.water_cement_ratio == pytest.approx(2.5 / 5.5)
    assert recipe.fresh_kg_per_m3 == pytest.approx(2200)
    assert float(recipe.price_per_m3) == pytest.approx(80 * 11.50)


def test_a_yield_says_the_same_as_a_density() -> None:
    """12.5 litres from that bag are 2200 kg/m³."""
    recipe = read_profile(
        by_the_bag(fresh_kg_per_m3="yield_l = 12.5", cement_percent="cement_percent = 22")
    )
    assert recipe.recipe.fresh_kg_per_m3 == pytest.approx(2200, rel=0.01)


def density(kg_per_m3: float, rounding: Literal["up", "down", "nearest"]) -> KeyNumber:
    """A density of a part of the mix."""
    return KeyNumber("Constituent", "density_kg_per_m3", kg_per_m3, rounding)


@pytest.mark.parametrize(
    ("text", "key", "says"),
    [
        (
            changed(("kg_per_m3 = 1007", "kg_per_m3 = 1100")),
            "recipe.constituents",
            "fill 103.5%",
        ),
        (
            changed(("kg_per_m3 = 1007", "kg_per_m3 = 960")),
            "recipe.constituents",
            "fill 98.2%",
        ),
        (
            changed(("kg_per_m3 = 480", "kg_per_m3 = 3000")),
            "recipe.constituents",
            "a smaller part",
        ),
        (
            changed(("density_kg_per_m3 = 2650", "density_kg_per_m3 = 26500")),
            "recipe.constituents[4].density_kg_per_m3",
            english(
                Message(
                    "fault-density",
                    role="aggregate",
                    least=density(300, "up"),
                    most=density(5200, "down"),
                    here=density(26500, "nearest"),
                )
            ),
        ),
        (
            changed(('role = "water"', 'role = "addition"')),
            "recipe.constituents",
            'the role "water"',
        ),
        (
            changed(('name = "grit 2-6"', 'name = "Washed sand 0-2"')),
            "recipe.constituents[5].name",
            "stands twice",
        ),
        (
            changed(("weighed_kg_per_m3 = 2350", "weighed_kg_per_m3 = 2500")),
            "recipe.weighed_kg_per_m3",
            "this is 2500 kg/m³; fresh it weighs 2366 kg/m³, and 2177 kg/m³",
        ),
        (
            changed(("water_cement_ratio = 0.42", "water_cement_ratio = 0.38")),
            "recipe.face_coat.water_cement_ratio",
            "at least the backing's 0.400",
        ),
        (
            changed(("thickness_mm = 8\n", "thickness_mm = 25\n")),
            "recipe.face_coat.thickness_mm",
            "the thinnest slab, 25 mm",
        ),
        (
            changed(("moisture_percent = 3.0", "moisture_percent = 25.0")),
            "recipe.constituents",
            "the recipe has 189",
        ),
        (
            changed(("open_minutes = 60", "open_minutes = 5")),
            "mixer.open_minutes",
            "9 minutes",
        ),
        (
            changed(("fine_scale_step_kg = 0.001", "fine_scale_step_kg = 0.1")),
            "mixer.fine_scale_step_kg",
            "coarser than scale_step_kg",
        ),
        (
            changed(('  { surface = "honed", l_per_m2 = 0.3 },\n', "")),
            "slurry.amounts",
            'the surface "honed"',
        ),
        (
            changed(("width_mm = 1525", "width_mm = 3100")),
            "boards.width_mm",
            "longer than length_mm",
        ),
        (
            changed(("kerf_mm = 3\n", "kerf_mm = 300\n")),
            "boards.kerf_mm",
            "the saw takes 300 mm",
        ),
        (
            by_the_bag(cement_percent="cement_percent = 122"),
            "recipe.bag.cement_percent",
            english(
                Message(
                    "fault-bound",
                    value=KeyNumber("Bag", "cement_percent", 122, "nearest"),
                    bound="most",
                    limit=KeyNumber("Bag", "cement_percent", 100, "down"),
                )
            ),
        ),
        (
            by_the_bag(fresh_kg_per_m3="fresh_kg_per_m3 = 900"),
            "recipe.bag.fresh_kg_per_m3",
            "weigh 900 kg",
        ),
        (
            by_the_bag(fresh_kg_per_m3="yield_l = 1.25"),
            "recipe.bag.yield_l",
            "weigh 22000 kg/m³",
        ),
        (
            by_the_bag(fresh_kg_per_m3=""),
            "recipe.bag",
            "fresh_kg_per_m3",
        ),
        (
            by_the_bag(price_per_bag="price_per_bag = 11.50\nwhole_bags = true").replace(
                "working_l = 50", "working_l = 10"
            ),
            "recipe.bag.whole_bags",
            english(
                Message(
                    "fault-bag-mixer",
                    makes=KeyNumber("Bag", "yield_l", 12.5, "nearest"),
                    takes=KeyNumber("Mixer", "working_l", 10, "down"),
                )
            ),
        ),
        (
            changed(
                ("kg_per_m3 = 188.9", "kg_per_m3 = 62.88"),
                ("kg_per_m3 = 1007", "kg_per_m3 = 1341"),
            ),
            "recipe.constituents",
            "comes to 0.138; it is",
        ),
        (
            TEXT.replace("# The mixer and the scales.", BAG + "\n# The mixer and the scales."),
            "recipe.bag",
            "Keep the kind",
        ),
    ],
)  # fmt: skip
def test_what_cannot_be_is_refused_with_its_figure(text: str, key: str, says: str) -> None:
    """A recipe, mixer or saw that cannot be is a fault at its key, with the figure."""
    with pytest.raises(ProfileError) as caught:
        read_profile(text)
    assert [
        fault
        for fault in caught.value.faults
        if fault.key == key and says in english(fault.message)
    ]


def test_too_much_plasticiser_is_flagged() -> None:
    """60 g of plasticiser on a kilogram of cement is reported, and loads (EN 206, from memory)."""
    text = changed(
        ("kg_per_m3 = 4.8 ", "kg_per_m3 = 28.8 "),
        ("kg_per_m3 = 1007", "kg_per_m3 = 948"),
        ("water_cement_ratio = 0.42", "water_cement_ratio = 0.45"),
    )
    (look,) = second_looks(read_profile(text))
    found = look.values["found"]
    assert isinstance(found, Figure)
    assert found.amount == pytest.approx(60, abs=0.5)


@pytest.mark.parametrize("name", ["cobalt blue", "Lake Country ochre", "non-organic red"])
def test_a_pigment_that_lasts_in_cement_passes(name: str) -> None:
    """Mineral pigments pass by whatever name the tin has."""
    profile = read_profile(TEXT.replace("chromium oxide green", name))
    assert profile.pigments[3].name == name
