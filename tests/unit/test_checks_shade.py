"""Checks of the colour asked for, and what the answers, the choices and the price say of it."""

from dataclasses import replace
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from ledgerstone.application.choices import write_choices
from ledgerstone.checks import GROUP_OF, Finding, check_plan
from ledgerstone.order import Order
from ledgerstone.price import costs
from ledgerstone.shade import palette_shade_seen, shade_recipe
from ledgerstone.shade.words import SCREENS_DIFFER
from ledgerstone.wording import Listed, Message, english, speech_in
from ledgerstone.workshop import Dose, Workshop
from support.contexts import context_of
from support.in_english import in_english
from support.slabs import box, order_of, plan_of, shapes_of, slab_json, steps_of
from support.written import write_shade

NAMES = {"shade-not-matched", "shade-out-of-reach", "dose-over-limit"}


@pytest.fixture
def matching(workshop: Workshop) -> Workshop:
    """The demonstration workshop, where colours are matched to order."""
    return replace(workshop, shade=replace(workshop.shade, matching=True))


def ordered(workshop: Workshop, shade: dict[str, str], **more: Any) -> Order:
    """Order one slab of 1000 by 500 in a shade."""
    finish = {"surface": "as-cast", "sealer": "matt"}
    return order_of(workshop, slab_json(box(1000, 500), shade=shade, finish=finish, **more))


def found(workshop: Workshop, shade: dict[str, str], **more: Any) -> list[Finding]:
    """Return what the checks of shades say of one slab."""
    planned = plan_of(ordered(workshop, shade, **more), workshop)
    return [finding for finding in check_plan(planned) if finding.check in NAMES]


def test_the_checks_are_registered() -> None:
    """Each of the three names belongs to a check that runs with the shape."""
    assert {GROUP_OF[name] for name in NAMES} == {"shape"}


@pytest.mark.parametrize("name", ["graphite", "chalk", "tarn slate", "fell clay", "lichen"])
def test_the_palette_passes(workshop: Workshop, name: str) -> None:
    """Every shade of the demonstration's palette is cast without a word."""
    assert found(workshop, {"name": name}) == []


def test_a_match_stops_where_it_is_not_offered(workshop: Workshop) -> None:
    """Without matching, a wished colour stops and the palette's nearest is named."""
    (finding,) = found(workshop, {"match": "#5c5e60"}, label="Shelf")
    assert (finding.check, finding.level, finding.slab) == ("shade-not-matched", "stops", 0)
    assert finding.at == ("/slabs/0/shade",)
    assert finding.measured["nearest_name"] == "graphite"
    assert finding.measured["away_delta_e"] < 2
    assert "The nearest is graphite" in in_english(finding)


def test_a_match_within_reach_passes(matching: Workshop) -> None:
    """With matching on, a colour that can be mixed is cast without a word."""
    assert found(matching, {"match": "#d0a080"}) == []


def test_a_match_out_of_reach_is_cautioned(matching: Workshop) -> None:
    """A pure red cannot be had in concrete: what can is named, and how far it stays is stated."""
    (finding,) = found(matching, {"match": "#ff0000"})
    assert (finding.check, finding.level) == ("shade-out-of-reach", "caution")
    assert finding.measured["away_delta_e"] > finding.limit["away_delta_e"] == 5.0
    assert finding.at == ("/slabs/0/shade/match",)
    greyer = Listed((Message("shade-direction", direction="greyer"),))
    far = Message("shade-difference", amount="far", directions=greyer)
    assert finding.message.values["difference"] == far
    assert "cast sample" in in_english(finding)


@pytest.mark.parametrize(("percent", "stops"), [(10.0, False), (10.01, True)])
def test_too_much_pigment_stops(workshop: Workshop, percent: float, *, stops: bool) -> None:
    """ASTM C979 1.4: 10 % of the cement passes, a hundredth more does not."""
    strong = replace(
        workshop.palette[0], doses=(Dose(pigment="black iron oxide", percent=percent),)
    )
    findings = found(replace(workshop, palette=(strong,)), {"name": "graphite"})
    assert [(f.check, f.level) for f in findings] == [("dose-over-limit", "stops")] * stops


def test_a_workshops_own_limit_stops(workshop: Workshop) -> None:
    """A workshop that casts with 3 % at most does not cast its own 4 %."""
    strict = replace(workshop, shade=replace(workshop.shade, most_percent=3.0))
    (finding,) = found(strict, {"name": "graphite"})
    assert finding.measured == {"dose_percent": 4.0}
    assert finding.limit == {"dose_percent": 3.0}
    assert "graphite takes 4% pigment" in in_english(finding)


# --- answers, choices, price ----------------------------------------------------------------


def test_an_answer_says_the_models_colour_and_how_sure(workshop: Workshop) -> None:
    """A read shade comes with its Lab, dose and uncertainty; wet and sealed it is darker."""
    (slab,) = ordered(workshop, {"name": "graphite"}).slabs
    members = write_shade(slab, workshop)
    seen = palette_shade_seen(workshop.palette[0], workshop)
    assert members["name"] == "graphite"
    assert members["hex"] == seen.hex
    assert members["lab"] == [round(part, 2) for part in seen.lab]
    assert members["dose_percent"] == 4.0
    assert members["uncertainty_delta_e"] > 0
    assert members["by_eye"] is False
    assert members["hex_wet"] < members["hex_sealed"] < members["hex"]
    assert members["says"].endswith(english(SCREENS_DIFFER))


def test_an_answer_by_eye_claims_no_certainty(workshop: Workshop) -> None:
    """A shade judged by eye is marked so, and no uncertainty is made up for it."""
    (slab,) = ordered(workshop, {"name": "lichen"}).slabs
    members = write_shade(slab, workshop)
    assert members["by_eye"] is True
    assert "uncertainty_delta_e" not in members


def test_an_answer_to_a_match_says_how_far_it_stays(matching: Workshop) -> None:
    """A matched shade comes with the wish, what is made of it, and the distance."""
    (slab,) = ordered(matching, {"match": "#5b5d5a"}).slabs
    members = write_shade(slab, matching)
    assert members["match"] == "#5b5d5a"
    assert members["hex"] != "#5b5d5a"
    assert 0 < members["away_delta_e"] < 5
    assert "name" not in members


def test_choices_show_what_the_recipes_make(workshop: Workshop, matching: Workshop) -> None:
    """Each swatch is the model's colour, or marked as by eye; matching is the profile's."""
    choices, other = (
        write_choices(context_of(shop, date(2026, 11, 25)), speech_in("en"))
        for shop in (workshop, matching)
    )
    for shade, offered in zip(workshop.palette, choices["shades"], strict=True):
        seen = palette_shade_seen(shade, workshop)
        assert (offered["hex"], offered["by_eye"]) == (seen.hex, seen.by_eye)
    assert [shade["by_eye"] for shade in choices["shades"]] == [False] * 4 + [True]
    assert "Screens" in choices["screens_say"]
    assert (choices["matching"], other["matching"]) == (False, True)


def materials(workshop: Workshop, shade: dict[str, str]) -> dict[str, Decimal]:
    """Return the costs of one slab in a shade by label."""
    order = ordered(workshop, shade)
    every = costs(order, shapes_of(order, workshop), steps_of(order, workshop), workshop)
    return {english(cost.label): cost.amount for cost in every}


def test_a_match_is_priced_by_its_recipe(matching: Workshop) -> None:
    """Pigment and cement of a matched shade cost what a palette shade of that recipe costs."""
    order = ordered(matching, {"match": "#d0a080"})
    recipe = shade_recipe(order.slabs[0].shade, matching)
    assert recipe is not None
    assert recipe.doses
    same = replace(
        matching.palette[0],
        name="the same",
        cement="white",
        doses=recipe.doses,
        extra_per_m3=recipe.extra_per_m3,
        recast_percent=0.0,
    )
    offering = replace(matching, palette=(same,))
    matched, named = (
        materials(offering, shade) for shade in ({"match": "#d0a080"}, {"name": "the same"})
    )
    assert matched == named
    assert all(matched[dose.pigment.capitalize()] > 0 for dose in recipe.doses)
