"""Matching a wished colour: the nearest recipe that can be weighed, and how far off it stays."""

import random
from dataclasses import replace
from decimal import Decimal
from itertools import product
from typing import Literal

import numpy as np
import pytest

from ledgerstone.order import Shade
from ledgerstone.shade import (
    Lab,
    certainty_of,
    delta_e_2000,
    difference_message,
    dose_step_percent,
    matched_shade_seen,
    model_of,
    nearest_recipe,
    shade_model,
    shade_recipe,
    srgb_to_lab,
)
from ledgerstone.shade.colour import delta_e_2000_all
from ledgerstone.wording import Listed, Message, english
from ledgerstone.workshop import Dose, Pigment, Workshop
from support.in_english import in_english


@pytest.fixture
def matching(workshop: Workshop) -> Workshop:
    """The demonstration workshop, where colours are matched to order."""
    return replace(workshop, shade=replace(workshop.shade, matching=True))


# --- matching -------------------------------------------------------------------------------


def test_no_match_where_it_is_not_offered(workshop: Workshop) -> None:
    """A workshop that does not match has no recipe for a wished colour."""
    assert matched_shade_seen("#5b5d5a", workshop) is None
    assert shade_recipe(Shade(match="#5b5d5a"), workshop) is None


def test_no_match_where_nothing_was_read(workshop: Workshop) -> None:
    """Without a cement's colour there is nothing to work from."""
    assert (
        nearest_recipe(
            (50.0, 0.0, 0.0), workshop.pigments, replace(workshop.shade, bases=()), 0.001
        )
        is None
    )


def test_without_pigments_read_the_nearer_cement_is_the_match(workshop: Workshop) -> None:
    """Where only cements were read, a wish is met by the cement that comes nearer."""
    bare = tuple(replace(pigment, samples=()) for pigment in workshop.pigments)
    for cement, wished in (("white", (95.0, 0.0, 0.0)), ("grey", (40.0, 0.0, 0.0))):
        found = nearest_recipe(wished, bare, workshop.shade, 0.001)
        assert found is not None
        assert (found.cement, found.doses) == (cement, ())


def test_a_match_says_what_it_makes(matching: Workshop) -> None:
    """A matched shade shows the recipe's colour, how far it stays, and the cement's extra."""
    seen = matched_shade_seen("#d0a080", matching)
    assert seen is not None
    assert seen.recipe.cement == "white"
    assert seen.recipe.extra_per_m3 == Decimal("290.00")
    assert seen.away_delta_e == delta_e_2000(seen.lab, srgb_to_lab("#d0a080"))
    assert "same to the eye" in in_english(seen)


@pytest.mark.parametrize("kind", ["oxide", "carbon"])
def test_the_nearest_recipe_is_the_nearest_of_all(
    workshop: Workshop, kind: Literal["oxide", "carbon"]
) -> None:
    """No recipe on a coarse scale's steps comes nearer: every one of them is tried beside it."""
    black, *others = workshop.pigments
    pigments = (replace(black, kind=kind), *others)
    colouring, step_kg = workshop.shade, 0.05
    model, names = model_of(pigments, colouring), sorted(shade_model(workshop).curves)
    percents = np.array(list(product(range(21), repeat=3))) * dose_step_percent(colouring, step_kg)
    within = percents.sum(axis=1) <= 10.0
    if kind == "carbon":  # a trace of it holds all to 2 %
        within &= (percents[:, names.index(black.name)] == 0) | (percents.sum(axis=1) <= 2.0)
    every = np.vstack([model.labs(cement, names, percents[within]) for cement in model.bases])
    chance = random.Random(4)  # noqa: S311  colours, no secrets
    for _ in range(60):
        wished = (chance.uniform(5, 98), chance.uniform(-40, 60), chance.uniform(-50, 60))
        found = nearest_recipe(wished, pigments, colouring, step_kg)
        assert found is not None
        best = float(delta_e_2000_all(every, np.array(wished)).min())
        assert best - 1e-9 <= found.away_delta_e <= best + 0.006


def test_of_equal_recipes_the_plainer(workshop: Workshop) -> None:
    """Two tins of the same pigment are never both in a recipe that one of them makes."""
    black = workshop.pigments[0]
    twice = (black, replace(black, name="black, another tin"))
    wished = shade_model(workshop).lab("grey", (Dose(pigment=black.name, percent=3.0),))
    found = nearest_recipe(wished, twice, workshop.shade, 0.001)
    assert found is not None
    assert len(found.doses) == 1


def test_carbon_black_keeps_its_own_limit_in_a_match(workshop: Workshop) -> None:
    """A wish for black is met with no more than 2 % where the black is carbon."""
    carbon: tuple[Pigment, ...] = (replace(workshop.pigments[0], kind="carbon"),)
    found = nearest_recipe((5.0, 0.0, 0.0), carbon, workshop.shade, 0.001)
    assert found is not None
    assert found.doses[0].percent == pytest.approx(2.0)


def test_steps_follow_the_scale_and_the_batch(workshop: Workshop) -> None:
    """Five grams in ten kilograms of cement is a step of 0.05 %."""
    assert dose_step_percent(workshop.shade, 0.005) == pytest.approx(0.05)


# --- words ----------------------------------------------------------------------------------


def apart(amount: str, *directions: str) -> Message:
    """How far a colour stays off, and in which directions."""
    listed = Listed(tuple(Message("shade-direction", direction=one) for one in directions))
    return Message("shade-difference", amount=amount, directions=listed)


@pytest.mark.parametrize(
    ("made", "wished", "message"),
    [
        ((50, 0, 3), (50, 0, 3), Message("shade-the-same")),
        ((52.5, 0.5, 4.5), (50, 0, 1), apart("little", "warmer", "lighter")),
        ((45, 0, 1), (50, 0, 1), apart("little", "darker")),
        ((50, 0, -3), (50, 0, 1), apart("little", "cooler")),
        ((50, -3, 2), (50, 0, 1), apart("little", "greener")),
        ((50, 15, 15), (50, 30, 30), apart("clearly", "greyer")),
        ((30, 0, 0), (80, 0, 0), apart("far", "darker")),
        ((51.5, 0, 1), (50, 0, 1), apart("touch", "lighter")),
    ],
)
def test_a_difference_in_plain_words(made: Lab, wished: Lab, message: Message) -> None:
    """How far a colour stays off, and in which direction, is stated as one would say it."""
    assert difference_message(made, wished) == message


def test_how_sure_in_plain_words() -> None:
    """Less sure is stated with less: a batch apart, seen side by side, clearly different."""
    sure = [certainty_of(delta_e) for delta_e in (1.2, 3.0, 8.0)]
    said = [english(Message("shade-worked-out", certainty=one)) for one in sure]
    assert [any(word in s for s in said) for word in ("batch", "side by side", "clearly")] == [
        True
    ] * 3
    assert len(set(said)) == 3
