"""Laws of shades: proved for any pigment of the model's form, and held on the demonstration's."""

from itertools import pairwise

import numpy as np
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from ledgerstone.shade import (
    Lab,
    PigmentCurve,
    ShadeModel,
    appearance,
    delta_e_2000,
    dose_step_percent,
    lab_to_srgb,
    nearest_recipe,
    shade_model,
    srgb_to_lab,
)
from ledgerstone.shade.layer import lab_of_ratio, ratio_of_lab
from ledgerstone.shade.match import ALIKE_DELTA_E
from ledgerstone.workshop import DEMONSTRATION, Dose, load_profile

WORKSHOP = load_profile(DEMONSTRATION)
MODEL = shade_model(WORKSHOP)
SCALE_STEP_KG = WORKSHOP.mixer.fine_scale_step_kg
STEP_PERCENT = dose_step_percent(WORKSHOP.shade, SCALE_STEP_KG)
PIGMENTS = sorted(MODEL.curves)

percents = st.floats(0.0, 10.0)
written = st.integers(0, 0xFFFFFF).map(lambda code: f"#{code:06x}")
mineral = st.tuples(st.floats(20, 95), st.floats(-8, 8), st.floats(-5, 12))


def _three(low: float, high: float) -> st.SearchStrategy[Lab]:
    return st.tuples(*[st.floats(low, high)] * 3)


def _curve(name: str, scatter: Lab, masstone: Lab, saturation: float) -> PigmentCurve:
    return PigmentCurve(name, scatter, masstone, saturation, 1.0, 0.0, (), ())


@st.composite
def shelves(draw: st.DrawFn) -> ShadeModel:
    """A cement, an oxide darker in every band than it and than a second pigment, and that one."""
    base = draw(mineral)
    ratio = ratio_of_lab(np.array(base))
    second = draw(_three(1e-3, 50.0))
    darkest = np.maximum(ratio, second) * np.array(draw(_three(1.01, 40.0)))
    dark = (float(darkest[0]), float(darkest[1]), float(darkest[2]))
    curves = {
        "dark": _curve("dark", draw(_three(1e-3, 5.0)), dark, draw(st.floats(1.0, 12.0))),
        "second": _curve("second", draw(_three(1e-3, 5.0)), second, draw(st.floats(1.0, 12.0))),
    }
    return ShadeModel({"grey": base}, curves)


@given(shelves(), percents, percents, percents)
def test_more_dark_oxide_never_lightens(
    model: ShadeModel, less: float, more: float, beside: float
) -> None:
    """An oxide darker than all else in each band only darkens, alone or in a blend.

    K/S of a mix is a mean of the parts' K/S, weighted by what each scatters (a mediant), so that
    more of the largest raises it; reflectance falls with K/S, and L* is a rising function of a
    positive sum of the bands.
    """
    first, second = sorted((less, more))
    other = Dose(pigment="second", percent=beside) if beside else None
    blends = [
        tuple(filter(None, (Dose(pigment="dark", percent=dose), other))) for dose in (first, second)
    ]
    lighter, darker = (model.lab("grey", blend)[0] for blend in blends)
    assert darker <= lighter + 1e-9


@given(shelves())
def test_dark_oxide_darkens_less_and_less(model: ShadeModel) -> None:
    """From 1 to 2 % any dark oxide darkens more than from 5 to 6 %, and at each percent a little.

    K/S of the mix rises concavely with the dose. With 1 + K/S = cosh u, R = exp(-u), and the cube
    root of R falls convexly with K/S, for its slope is -exp(-u/3) / (3 sinh u). The cube root of
    luminance is a 3-norm of those, so that L* is convex in the dose.
    """
    L = [model.lab("grey", (Dose(pigment="dark", percent=c),))[0] for c in range(11)]
    assume(L[0] - L[10] > 0.5)
    assert all(less >= more for less, more in pairwise(L))
    assert L[1] - L[2] > L[5] - L[6] > (L[8] - L[10]) / 2 - 1e-9


@given(mineral, percents)
def test_a_pigment_keeps_between_cement_and_masstone(base: Lab, dose: float) -> None:
    """No dose leads past the pigment's own colour: in each band the mix lies between the two."""
    curve = MODEL.curves[PIGMENTS[0]]
    model = ShadeModel({"grey": base}, {curve.name: curve})
    mixed = ratio_of_lab(np.array(model.lab("grey", (Dose(pigment=curve.name, percent=dose),))))
    ends = np.array([ratio_of_lab(np.array(base)), curve.masstone])
    assert (mixed >= ends.min(axis=0) * (1 - 1e-6)).all()
    assert (mixed <= ends.max(axis=0) * (1 + 1e-6)).all()


@given(mineral)
def test_no_pigment_is_the_cement(base: Lab) -> None:
    """Whatever the cement's colour, a dose of zero returns it, through the model too."""
    model = ShadeModel({"grey": base}, MODEL.curves)
    assert model.lab("grey", ()) == base
    through = model.labs("grey", PIGMENTS, np.zeros(len(PIGMENTS)))
    assert delta_e_2000((through[0], through[1], through[2]), base) <= 1e-9


# --- back from a colour to a recipe ---------------------------------------------------------


@st.composite
def recipes(draw: st.DrawFn) -> tuple[str, tuple[Dose, ...]]:
    """A cement and up to three pigments in whole steps of the scale, within the limit."""
    cement = draw(st.sampled_from(sorted(MODEL.bases)))
    names = draw(st.lists(st.sampled_from(PIGMENTS), unique=True, max_size=3))
    steps = [draw(st.integers(1, int(10 / STEP_PERCENT / max(len(names), 1)))) for _ in names]
    return cement, tuple(
        Dose(pigment=name, percent=round(count * STEP_PERCENT, 9))
        for name, count in sorted(zip(names, steps, strict=True))
    )


@settings(deadline=None, max_examples=60)
@given(recipes())
def test_a_colour_that_can_be_made_comes_back(recipe: tuple[str, tuple[Dose, ...]]) -> None:
    """The recipe found for a recipe's own colour makes that colour; on its cement, it is that one.

    On the same cement, doses come back within one step of the scale: K/S is linear in what the
    doses count as, so that three bands settle three pigments.
    """
    cement, doses = recipe
    wished = MODEL.lab(cement, doses)
    match = nearest_recipe(wished, WORKSHOP.pigments, WORKSHOP.shade, SCALE_STEP_KG)
    assert match is not None
    assert match.away_delta_e <= ALIKE_DELTA_E
    assert delta_e_2000(MODEL.lab(match.cement, match.doses), wished) == match.away_delta_e
    if match.cement == cement:
        found = {dose.pigment: dose.percent for dose in match.doses}
        asked = {dose.pigment: dose.percent for dose in doses}
        for name in found | asked:
            assert abs(found.get(name, 0.0) - asked.get(name, 0.0)) <= STEP_PERCENT + 1e-9


@settings(deadline=None, max_examples=40)
@given(written)
def test_any_wish_has_a_recipe_that_can_be_weighed(wish: str) -> None:
    """Whatever is wished, a recipe has at most three pigments, whole steps, and keeps the limit."""
    match = nearest_recipe(srgb_to_lab(wish), WORKSHOP.pigments, WORKSHOP.shade, SCALE_STEP_KG)
    assert match is not None
    assert len(match.doses) <= 3
    assert sum(dose.percent for dose in match.doses) <= WORKSHOP.shade.most_percent + 1e-9
    for dose in match.doses:
        assert abs(dose.percent / STEP_PERCENT - round(dose.percent / STEP_PERCENT)) < 1e-6
    nothing = min(delta_e_2000(base, srgb_to_lab(wish)) for base in MODEL.bases.values())
    assert match.away_delta_e <= nothing + 1e-9


@settings(deadline=None, max_examples=25)
@given(written)
def test_a_finer_scale_never_comes_less_near(wish: str) -> None:
    """Every dose of a coarse scale is one of a scale five times as fine: it is no farther off."""
    away = [
        match.away_delta_e
        for step_kg in (5 * SCALE_STEP_KG, SCALE_STEP_KG)
        if (match := nearest_recipe(srgb_to_lab(wish), WORKSHOP.pigments, WORKSHOP.shade, step_kg))
    ]
    assert away[1] <= away[0] + ALIKE_DELTA_E + 1e-9


# --- colours --------------------------------------------------------------------------------


@given(written)
def test_a_screen_colour_comes_back(colour: str) -> None:
    """Every colour of a screen returns from CIELAB as it went."""
    assert lab_to_srgb(srgb_to_lab(colour)) == colour


@given(written, written)
def test_difference_has_no_direction(first: str, second: str) -> None:
    """A colour differs from another as that from it, and from itself not at all."""
    one, other = srgb_to_lab(first), srgb_to_lab(second)
    assert abs(delta_e_2000(one, other) - delta_e_2000(other, one)) < 1e-9
    assert delta_e_2000(one, one) == 0.0


@given(mineral)
def test_bands_keep_a_mineral_colour(lab: Lab) -> None:
    """Any colour that minerals have returns from K/S as it went."""
    back = lab_of_ratio(ratio_of_lab(np.array(lab)))
    assert np.abs(back - lab).max() < 1e-8


@given(mineral)
def test_wet_or_sealed_is_darker_than_dry(lab: Lab) -> None:
    """Wet and sealed concrete is darker than dry, by water more than by what soaks in."""
    dry, matt, satin, wet = (
        appearance(lab, kind)[0] for kind in ("dry", "sealed-matt", "sealed-satin", "wet")
    )
    assert dry == lab[0]
    assert wet < satin < matt < dry
