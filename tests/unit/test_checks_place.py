"""Checks of the place and of use: frost, wet, heat, food, acids, hearths, electrics."""

from dataclasses import replace
from typing import Any

import pytest

from ledgerstone.checks.place import air_percent, exposure_of
from ledgerstone.order import Place, Use
from ledgerstone.quantities import Length
from ledgerstone.wording import Figure, Listed, Message, Strength
from ledgerstone.workshop import Recipe, Workshop
from support.documents import Json
from support.in_english import in_english
from support.slabs import box, cut, hole, slab_json, slab_of
from unit.checked import found, levels, plain, values_of


def with_recipe(workshop: Workshop, **more: Any) -> Workshop:
    """The same workshop with another recipe."""
    return replace(workshop, recipe=replace(workshop.recipe, **more))


def sealed(sealer: str, **more: Any) -> Json:
    """Write a slab with one sealer."""
    return plain(finish={"sealer": sealer}, **more)


# --- frost and wet --------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("place", "use", "name", "water", "cement", "frost"),
    [
        ("outdoors", "worktop", "XF3 and XC4", 0.50, 320, True),
        ("outdoors", "end-panel", "XF1 and XC4", 0.50, 300, False),
        ("wet-room", "worktop", "XC4", 0.50, 300, False),
    ],
)
def test_a_place_has_its_exposure(  # noqa: PLR0917  a row of the standard's table
    workshop: Workshop, place: Place, use: Use, name: str, water: float, cement: int, *, frost: bool
) -> None:
    """EN 206-1:2000 table F.1: the stricter value of the classes that meet."""
    slab = slab_of(workshop, box(1400, 600), place=place, use=use)
    exposure = exposure_of(slab)
    assert exposure is not None
    assert (exposure.name, exposure.most_water_cement) == (name, water)
    assert (exposure.cement_kg_per_m3, exposure.frost) == (cement, frost)
    assert exposure.fck_mpa == 30


def test_indoors_asks_nothing_of_the_mix(workshop: Workshop) -> None:
    """Dry inside, no exposure is reported."""
    assert exposure_of(slab_of(workshop, box(1400, 600))) is None
    assert found(workshop, "mix-for-place", plain()) == []


@pytest.mark.parametrize(
    ("grain", "air"), [(6, 5.5), (8, 5.5), (10, 4.5), (16, 4.5), (20, 4.0), (32, 4.0)]
)
def test_finer_mixes_need_more_air(grain: float, air: float) -> None:
    """DIN 1045-2 table F.2.2, from memory; EN 206-1 F.1 has 4.0 % at grains of 20 to 32 mm."""
    assert air_percent(grain) == air


@pytest.mark.parametrize(("air", "expected"), [(5.5, []), (5.4, ["caution"])])
def test_frost_asks_for_air(workshop: Workshop, air: float, expected: list[str]) -> None:
    """The house mix of 6 mm sand lasts outdoors with 5.5 % air; with less it is a caution."""
    airy = with_recipe(workshop, air_percent=air)
    assert levels(found(airy, "mix-for-place", plain(place="outdoors"))) == expected


def test_one_finding_says_all_that_a_mix_lacks(workshop: Workshop) -> None:
    """Air, strength and cement are named together, each with what ours has, once an order."""
    weak: Recipe = replace(
        workshop.recipe,
        fck_mpa=25,
        constituents=tuple(
            replace(part, kg_per_m3=290) if part.role == "cement" else part
            for part in workshop.recipe.constituents
        ),
    )
    slabs = [plain(place="outdoors"), plain(place="outdoors")]
    (finding,) = found(replace(workshop, recipe=weak), "mix-for-place", *slabs)
    values = values_of(finding, "mix-for-place")
    assert values["unproven"] == "yes"
    assert isinstance(values["short"], Listed)
    assert values["short"].things == (
        Message("mix-has-water", water=Figure(0.66, 2), limit=Figure(0.5, 2)),
        Message("mix-has-strength", strength=Strength(25), limit=Strength(30)),
        # 488.8 and 539.4 lb in a cubic yard
        Message("mix-has-cement", cement=290, limit=320, cement_lb=488, limit_lb=539),
    )
    assert finding.at == ("/slabs/0/place", "/slabs/1/place")


def test_a_wet_room_asks_for_no_air(workshop: Workshop) -> None:
    """The house mix is dense enough for a wet room."""
    assert found(workshop, "mix-for-place", plain(place="wet-room")) == []


@pytest.mark.parametrize(
    ("sealer", "place", "expected"),
    [
        ("matt", "outdoors", []),
        ("satin", "outdoors", ["stops"]),
        ("satin", "wet-room", []),
        ("hard wax oil", "wet-room", ["stops"]),
        ("hard wax oil", "indoors", []),
    ],
)
def test_a_sealer_stands_its_place(
    workshop: Workshop, sealer: str, place: str, expected: list[str]
) -> None:
    """What the sealer's own sheet does not allow stops."""
    slab = sealed(sealer, place=place)
    assert levels(found(workshop, "sealer-not-for-place", slab)) == expected


def test_a_wrong_sealer_is_named(workshop: Workshop) -> None:
    """The sentence names the sealer and the place; where none is for it, the customer asks."""
    slab = sealed("hard wax oil", place="wet-room", label="Vanity")
    (finding,) = found(workshop, "sealer-not-for-place", slab)
    place = {"sealer": "hard wax oil", "place": "wet-room"}
    assert {**values_of(finding, "sealer-not-for-place")} == {
        **place,
        "slab": Message("slab-labelled", label="Vanity"),
        "others": "some",
    }
    alone = replace(workshop, sealers=workshop.sealers[2:])
    (finding,) = found(alone, "sealer-not-for-place", slab)
    assert values_of(finding, "sealer-not-for-place")["others"] == "none"


def test_rain_is_led_off(workshop: Workshop) -> None:
    """Outdoors a drip and a fall are advised as notes; with a drip the fall; inside neither."""
    outside = plain(place="outdoors")
    assert levels(found(workshop, "drip-advised", outside)) == ["note"]
    (fall,) = found(workshop, "fall-advised", outside)
    assert fall.level == "note"
    assert "a fall of about 10 mm" in in_english(fall)  # 600 mm at 1 in 60
    dripped = plain(place="outdoors", edges={"front": {"profile": "square", "drip": True}})
    assert found(workshop, "drip-advised", dripped) == []
    for inside in (plain(), plain(place="outdoors", use="upstand")):
        assert found(workshop, "drip-advised", inside) == []
        assert found(workshop, "fall-advised", inside) == []


@pytest.mark.parametrize(
    ("shade", "place", "expected"),
    [
        ("graphite", "outdoors", ["note"]),
        ("graphite", "indoors", []),
        ("chalk", "outdoors", []),
        ("tarn slate", "outdoors", []),
    ],
)
def test_dark_shades_fade_outdoors(
    workshop: Workshop, shade: str, place: str, expected: list[str]
) -> None:
    """Under L* 45 the customer hears of bloom and fading."""
    slab = plain(place=place, shade={"name": shade})
    assert levels(found(workshop, "dark-outdoors", slab)) == expected


# --- heat, food, acids ----------------------------------------------------------------------


def test_a_hot_appliance_is_its_fitters_matter(workshop: Workshop) -> None:
    """Each hot appliance is a caution that defers to its manual and a registered fitter."""
    oven = cut("rectangle", (500, 400), (700, 300), label="oven", heat=True)
    (finding,) = found(workshop, "hot-appliance", slab_json(box(1400, 600), oven))
    assert finding.level == "caution"
    assert finding.message == Message(
        "hot-appliance",
        cutout=Message("cutout-labelled", label="oven"),
        gap=Length.of_mm(10),
    )
    cold = {**oven, "heat": False}
    assert found(workshop, "hot-appliance", slab_json(box(1400, 600), cold)) == []


@pytest.mark.parametrize(
    ("sealer", "expected"), [("matt", []), ("satin", ["caution"]), ("hard wax oil", ["caution"])]
)
def test_a_sealer_beside_heat_stands_100_degrees(
    workshop: Workshop, sealer: str, expected: list[str]
) -> None:
    """Sealers that stand 70 and 80 °C are cautioned beside a hot appliance, 120 is not."""
    oven = cut("rectangle", (500, 400), (700, 300), label="oven", heat=True)
    slab = slab_json(box(1400, 600), oven, finish={"sealer": sealer})
    findings = found(workshop, "sealer-near-heat", slab)
    assert levels(findings) == expected
    assert all("Choose matt" in in_english(finding) for finding in findings)


def test_every_indoor_top_has_a_note_on_acids_and_oil(workshop: Workshop) -> None:
    """Each sealer's words come once, a film's and one that soaks in; a splashback needs none."""
    films, soaked = sealed("satin"), sealed("matt")
    said = [f.message for f in found(workshop, "acids-and-oil", films, soaked, films)]
    assert said == [
        Message("acids-and-oil", kind="penetrating", sealer="matt"),
        Message("acids-and-oil", kind="film", sealer="satin"),
    ]
    assert found(workshop, "acids-and-oil", plain(use="splashback")) == []
    assert found(workshop, "acids-and-oil", plain(place="outdoors")) == []


def test_a_food_surface_hears_of_the_declaration(workshop: Workshop) -> None:
    """A sealer that is not declared says so and names those that are, where the place allows."""
    (bare,) = found(workshop, "food-surface", sealed("matt"))
    others = Listed(("satin", "hard wax oil"), joined="or")
    assert bare.message == Message("food-not-declared", sealer="matt", others=others)
    (wet,) = found(workshop, "food-surface", sealed("matt", place="wet-room"))
    others = Listed(("satin",), joined="or")
    assert wet.message == Message("food-not-declared", sealer="matt", others=others)
    (declared,) = found(workshop, "food-surface", sealed("satin"))
    assert declared.message == Message("food-declared", sealer="satin")
    assert found(workshop, "food-surface", plain(use="hearth")) == []


def test_a_hearth_is_the_installers(workshop: Workshop) -> None:
    """A hearth's size and build are deferred, and sections are advised; a worktop hears nothing."""
    (finding,) = found(workshop, "hearth", plain(use="hearth"))
    assert finding.level == "caution"
    assert "registered installer decides the size and build" in in_english(finding)
    assert "sections" in in_english(finding)
    assert found(workshop, "hearth", plain()) == []


@pytest.mark.parametrize(
    ("labels", "place", "expected"),
    [
        (("basin", "socket"), "indoors", ["caution"]),
        (("tap", "hob"), "indoors", ["caution"]),
        (("cable", ""), "wet-room", ["caution"]),
        (("cable", ""), "indoors", []),
        (("basin", "tap"), "wet-room", []),
        (("tapestry", "cable"), "indoors", []),
    ],
)
def test_electrics_near_water_are_an_electricians(
    workshop: Workshop, labels: tuple[str, str], place: str, expected: list[str]
) -> None:
    """A socket beside a basin, or anything live in a wet room, is a caution."""
    holes = [hole(80, 300 + 500 * k, 300, label=label) for k, label in enumerate(labels)]
    slab = slab_json(box(1400, 600), *holes, place=place)
    assert levels(found(workshop, "electrics-near-water", slab)) == expected
