"""Shades: fitted to tiles, looked up in the palette, and what a profile may say of them."""

from dataclasses import replace
from itertools import product

import pytest

from ledgerstone.errors import ProfileError
from ledgerstone.order import Shade
from ledgerstone.shade import (
    SCREENS_DIFFER,
    Lab,
    delta_e_2000,
    fit_curve,
    lab_to_srgb,
    nearest_palette_shade,
    palette_shade_seen,
    sealed_as,
    shade_model,
    shade_recipe,
    shade_seen,
)
from ledgerstone.shade.model import ShadeModel
from ledgerstone.wording import Message, english
from ledgerstone.workshop import (
    DEMONSTRATION,
    Dose,
    PaletteShade,
    PigmentSample,
    Workshop,
    read_profile,
)
from ledgerstone.workshop.review.second_looks import second_looks
from support.in_english import in_english

BASES: dict[str, Lab] = {"grey": (66.0, -0.5, 4.0), "white": (89.0, 0.0, 5.0)}
TEXT = DEMONSTRATION.read_text(encoding="utf-8")


def tile(cement: str, dose: float, lab: Lab) -> PigmentSample:
    """Return one reading."""
    raw = {"cement": cement, "dose_percent": dose}
    raw |= dict(zip(("lightness", "a", "b"), lab, strict=True))
    return PigmentSample(**raw)  # type: ignore[arg-type]  # keys are the record's own


def palette_shade(workshop: Workshop, name: str) -> PaletteShade:
    """Return a shade of the palette."""
    return next(shade for shade in workshop.palette if shade.name == name)


# --- the fit --------------------------------------------------------------------------------


def test_a_fit_goes_through_readings_of_its_own_form(workshop: Workshop) -> None:
    """Tiles that a known curve makes are fitted within ΔE00 0.3, and so are doses between."""
    model = shade_model(workshop)
    doses = [(cement, dose) for cement in ("grey", "white") for dose in (0.5, 2.0, 4.0, 8.0)]

    def made(cement: str, dose: float) -> Lab:
        return model.lab(cement, (Dose(pigment="red iron oxide", percent=dose),))

    tiles = [tile(cement, dose, made(cement, dose)) for cement, dose in doses]
    curve = fit_curve("red iron oxide", tiles, model.bases)
    again = ShadeModel(model.bases, {"red iron oxide": curve})
    assert curve.residual_delta_e < 0.3
    for cement, dose in product(("grey", "white"), (1.0, 3.0, 6.0, 10.0)):
        found = again.lab(cement, (Dose(pigment="red iron oxide", percent=dose),))
        assert delta_e_2000(found, made(cement, dose)) < 0.5


@pytest.mark.parametrize("lab", [(40.0, 22.0, 14.0), (60.0, 4.0, 30.0), (78.0, -2.0, 3.0)])
def test_one_tile_is_met_and_the_rest_is_unproven(lab: Lab) -> None:
    """With one tile the curve meets it, and its residual is no less than 2."""
    curve = fit_curve("one", [tile("grey", 3.0, lab)], BASES)
    found = ShadeModel(BASES, {"one": curve}).lab("grey", (Dose(pigment="one", percent=3.0),))
    assert delta_e_2000(found, lab) < 0.5
    assert curve.residual_delta_e >= 2.0


def test_a_tile_left_out_lies_within_twice_the_uncertainty(workshop: Workshop) -> None:
    """Of the demonstration's tiles, each in turn unknown, all lie within twice what is stated.

    Those at a pigment's weakest and strongest dose are left in: nothing is promised beyond them.
    """
    tried = 0
    for pigment in workshop.pigments:
        for left_out in pigment.samples:
            kept = [one for one in pigment.samples if one != left_out]
            around = [one.dose_percent for one in kept if one.cement == left_out.cement]
            if not around or not min(around) < left_out.dose_percent < max(around):
                continue
            bases = shade_model(workshop).bases
            model = ShadeModel(bases, {pigment.name: fit_curve(pigment.name, kept, bases)})
            doses = (Dose(pigment=pigment.name, percent=left_out.dose_percent),)
            read = (left_out.lightness, left_out.a, left_out.b)
            away = delta_e_2000(model.lab(left_out.cement, doses), read)
            assert away <= 2 * model.uncertainty_delta_e(left_out.cement, doses), (
                pigment.name,
                away,
            )
            tried += 1
    assert tried >= 6


def test_uncertainty_grows_away_from_the_tiles(workshop: Workshop) -> None:
    """A dose that was read is surer than one far beyond, and a blend less sure than its parts."""
    model = shade_model(workshop)

    def sure(**percents: float) -> float:
        doses = tuple(Dose(pigment=f"{n} iron oxide", percent=p) for n, p in percents.items())
        return model.uncertainty_delta_e("white", doses)

    assert sure(black=4.0) < sure(black=10.0)
    assert max(sure(red=2.0), sure(yellow=2.5)) < sure(red=2.0, yellow=2.5)
    assert model.uncertainty_delta_e("white", ()) == 1.0


# --- the palette ----------------------------------------------------------------------------


def test_a_shade_whose_pigments_were_read_is_worked_out(workshop: Workshop) -> None:
    """Graphite is what its recipe makes, with how sure that is, and not as it was judged."""
    seen = palette_shade_seen(palette_shade(workshop, "graphite"), workshop)
    assert not seen.by_eye
    assert seen.lab == shade_model(workshop).lab("grey", seen.recipe.doses)
    assert seen.hex == lab_to_srgb(seen.lab)
    assert seen.uncertainty_delta_e is not None
    assert english(SCREENS_DIFFER) in in_english(seen)


def test_a_shade_with_a_pigment_unread_is_by_eye(workshop: Workshop) -> None:
    """Lichen's green has no tiles, so its colour is the one judged by eye, and it says so."""
    seen = palette_shade_seen(palette_shade(workshop, "lichen"), workshop)
    assert seen.by_eye
    assert seen.hex == "#a3ab92"
    assert seen.uncertainty_delta_e is None
    assert "by eye" in in_english(seen)


def test_by_eye_needs_no_instrument(workshop: Workshop) -> None:
    """A profile with no readings at all shows every shade as it was judged."""
    bare = replace(
        workshop,
        pigments=tuple(replace(pigment, samples=()) for pigment in workshop.pigments),
        shade=replace(workshop.shade, bases=()),
    )
    for shade in bare.palette:
        seen = palette_shade_seen(shade, bare)
        assert (seen.hex, seen.by_eye) == (shade.colour, True)


def test_a_tile_read_by_instrument_is_not_by_eye(workshop: Workshop) -> None:
    """A palette colour that was not judged by eye is shown as it is, and says how it was had."""
    shade = replace(palette_shade(workshop, "lichen"), by_eye=False)
    seen = palette_shade_seen(shade, workshop)
    assert not seen.by_eye
    assert seen.hex == shade.colour
    assert "by instrument" in in_english(seen)


def test_a_shade_without_pigment_is_the_cements(workshop: Workshop) -> None:
    """Chalk takes no pigment: it is the white cement's own reading."""
    seen = palette_shade_seen(palette_shade(workshop, "chalk"), workshop)
    assert seen.lab == shade_model(workshop).bases["white"]
    assert seen.recipe.dose_percent == 0.0


def test_an_unknown_name_is_no_shade(workshop: Workshop) -> None:
    """A name that the palette lacks has neither a colour nor a recipe."""
    assert shade_seen(Shade(name="no such"), workshop) is None
    assert shade_recipe(Shade(name="no such"), workshop) is None


def test_film_sealers_look_satin(workshop: Workshop) -> None:
    """A film deepens the colour as satin does; what soaks in leaves it nearly as it is."""
    looks = {sealer.name: sealed_as(sealer) for sealer in workshop.sealers}
    assert looks["satin"] == "sealed-satin"
    assert looks["matt"] == "sealed-matt"


def test_nearest_of_the_palette(workshop: Workshop) -> None:
    """Each shade of the palette is the nearest to its own colour."""
    for shade in workshop.palette:
        seen = palette_shade_seen(shade, workshop)
        nearest, away = nearest_palette_shade(seen.hex, workshop)
        assert nearest.name == shade.name
        assert away < 0.5


# --- the profile ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("old", "new", "key", "says"),
    [
        ('[[shade.bases]]\ncement = "white"', '[[shade.bases]]\ncement = "grey"',
         "shade.bases[2].cement", "stands twice"),
        ("lightness = 66.2", "lightness = 166.2", "shade.bases[1].lightness", "100 at most"),
        ("most_percent = 10\n", "most_percent = 16\n", "shade.most_percent", "15% at most"),
    ],
)  # fmt: skip
def test_faults_of_the_readings_are_reported(old: str, new: str, key: str, says: str) -> None:
    """A cement told twice, a lightness past white and a limit past reason are faults."""
    assert old in TEXT
    with pytest.raises(ProfileError) as caught:
        read_profile(TEXT.replace(old, new, 1))
    assert any(fault.key == key and says in english(fault.message) for fault in caught.value.faults)


def test_tiles_need_their_cements_own_colour() -> None:
    """A tile on a cement that nobody read alone is a fault at that tile."""
    start = TEXT.index('[[shade.bases]]\ncement = "white"')
    end = TEXT.index("\n\n", start)
    with pytest.raises(ProfileError) as caught:
        read_profile(TEXT[:start] + TEXT[end:])
    assert caught.value.faults[0].key.startswith("pigments[1].samples[")
    assert caught.value.faults[0].message == Message("fault-no-base", cement="white")


def test_more_than_six_percent_is_flagged(workshop: Workshop) -> None:
    """A palette shade past 6 % loads, and its maker is told that it hardly deepens."""
    strong = replace(workshop.palette[0], doses=(Dose(pigment="black iron oxide", percent=6.5),))
    looks = second_looks(replace(workshop, palette=(strong,)))
    assert [look.name for look in looks] == ["check-deep-shade"]
    assert second_looks(workshop) == ()
