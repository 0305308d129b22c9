"""Colour against published figures and a general colour library.

Sources: CIEDE2000, Sharma, Wu and Dalal, Color Res. Appl. 30(1) 21-30, 2005, table 1 (tolerance
1e-4: the table prints four decimals). sRGB, IEC 61966-2-1:1999; CIELAB, CIE 15. Figures for named
colours were computed from those by two general colour libraries. Kubelka-Munk and Saunderson as in
Allen 1980. Limits on pigment: ASTM C979/C979M-16 clause 1.4; US National Park Service Preservation
Brief 2 (carbon black). Trends: pigment suppliers' notes. There is no open table of mortar colour
against pigment dose, so no predicted colour is held to one.
"""

import random
from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from coloraide import Color

from ledgerstone.shade import (
    Lab,
    absorption_ratio,
    delta_e_2000,
    lab_to_srgb,
    lightness,
    reflectance,
    shade_model,
    srgb_to_lab,
    through_film,
)
from ledgerstone.shade.layer import FILMS
from ledgerstone.workshop import Dose, Pigment, Workshop
from ledgerstone.workshop.records.doses import dose_verdict

BLUE, NEUTRAL, RED, OCHRE = (50, 0, -82.7485), (50, 0, 0), (50, 2.5, 0), (50, 2.49, -0.001)
GREEN = (50, -0.001, 2.49)
SHARMA: list[tuple[Lab, Lab, float]] = [
    ((50, 2.6772, -79.7751), BLUE, 2.0425),
    ((50, 3.1571, -77.2803), BLUE, 2.8615),
    ((50, 2.8361, -74.0200), BLUE, 3.4412),
    ((50, -1.3802, -84.2814), BLUE, 1.0000),
    ((50, -1.1848, -84.8006), BLUE, 1.0000),
    ((50, -0.9009, -85.5211), BLUE, 1.0000),
    (NEUTRAL, (50, -1, 2), 2.3669),
    ((50, -1, 2), NEUTRAL, 2.3669),
    (OCHRE, (50, -2.49, 0.0009), 7.1792),
    (OCHRE, (50, -2.49, 0.0010), 7.1792),
    (OCHRE, (50, -2.49, 0.0011), 7.2195),
    (OCHRE, (50, -2.49, 0.0012), 7.2195),
    (GREEN, (50, 0.0009, -2.49), 4.8045),
    (GREEN, (50, 0.0010, -2.49), 4.8045),
    (GREEN, (50, 0.0011, -2.49), 4.7461),
    (RED, (50, 0, -2.5), 4.3065),
    (RED, (61, -5, 29), 22.8977),
    (RED, (56, -27, -3), 31.9030),
    (RED, (58, 24, 15), 19.4535),
    (RED, (50, 3.1736, 0.5854), 1.0000),
    (RED, (50, 3.2972, 0), 1.0000),
    (RED, (50, 1.8634, 0.5757), 1.0000),
    (RED, (50, 3.2592, 0.3350), 1.0000),
]


@pytest.mark.parametrize(("first", "second", "expected"), SHARMA)
def test_difference_is_the_published_one(first: Lab, second: Lab, expected: float) -> None:
    """CIEDE2000 gives the table's figure, whichever colour comes first."""
    assert delta_e_2000(first, second) == pytest.approx(expected, abs=1e-4)
    assert delta_e_2000(second, first) == pytest.approx(expected, abs=1e-4)


@pytest.mark.parametrize(
    ("written", "lab", "within"),
    [
        ("#ffffff", (100, 0, 0), 0.01),
        ("#000000", (0, 0, 0), 0.01),
        ("#808080", (53.585, 0, 0), 0.01),
        ("#ff0000", (53.24, 80.09, 67.20), 0.02),
        ("#00ff00", (87.74, -86.18, 83.18), 0.02),
        ("#0000ff", (32.30, 79.19, -107.86), 0.02),
        ("#8b4513", (37.47, 26.44, 40.98), 0.02),
        ("#b7410e", (44.06, 45.75, 51.12), 0.02),
    ],
)
def test_a_screen_colour_has_its_lab(written: str, lab: Lab, within: float) -> None:
    """Named screen colours have the CIELAB (D65) that two libraries compute."""
    assert srgb_to_lab(written) == pytest.approx(lab, abs=within)


@pytest.mark.parametrize(
    ("lab", "written"),
    [
        ((64.18, 0.39, 9.44), "#a39b8b"),
        ((45, 28, 20), "#9e574b"),
        ((90, -1, 4), "#e4e3db"),
        ((64.2, 0.4, 9.4), "#a39b8b"),  # construction concrete, ECOSTRESS spectral library
    ],
)
def test_a_lab_colour_has_its_screen_colour(lab: Lab, written: str) -> None:
    """CIELAB colours are written as a general library writes them, within one step of 255."""
    ours, theirs = (
        [int(text[i : i + 2], 16) for i in (1, 3, 5)] for text in (lab_to_srgb(lab), written)
    )
    assert max(abs(one - other) for one, other in zip(ours, theirs, strict=True)) <= 1


def test_a_measured_concrete_is_grey_cement() -> None:
    """Measured concrete lies in the band of grey mortar, L* 55 to 68 (the band: from memory)."""
    assert 55 <= srgb_to_lab("#a39b8b")[0] <= 68


def test_a_general_library_agrees_on_a_thousand_colours() -> None:
    """Coloraide's ``lab-d65`` and its CIEDE2000 agree with ours over 1 000 random colours.

    Tolerance 1e-6: both derive the matrix from the same primaries, in double precision.
    """
    chance = random.Random(20_05)  # noqa: S311  colours, no secrets
    before = "#808080"
    for _ in range(1000):
        written = f"#{chance.randrange(1 << 24):06x}"
        lab, theirs = srgb_to_lab(written), Color(written).convert("lab-d65")
        assert lab == pytest.approx(theirs.coords(), abs=1e-6)
        assert lab_to_srgb(lab) == written
        difference = Color(before).delta_e(written, method="2000", space="lab-d65")
        assert delta_e_2000(srgb_to_lab(before), lab) == pytest.approx(difference, abs=1e-6)
        before = written


@pytest.mark.parametrize(
    ("luminance", "expected"), [(0.18, 49.496), (0.5, 76.069), (0.008856, 8.000)]
)
def test_lightness_is_that_of_the_standard(luminance: float, expected: float) -> None:
    """L* of a luminance factor is CIE 15's, on both sides of the straight part."""
    assert lightness(luminance) == pytest.approx(expected, abs=0.002)


# --- layers ---------------------------------------------------------------------------------


def test_absorption_ratio_is_kubelka_and_munks() -> None:
    """K/S of reflectances 0.8, 0.5, 0.25 and 0.1 is 0.025, 0.25, 1.125 and 4.05, by hand."""
    found = absorption_ratio(np.array([0.8, 0.5, 0.25, 0.1]))
    assert found == pytest.approx([0.025, 0.25, 1.125, 4.05], abs=1e-9)


def test_reflectance_undoes_it() -> None:
    """Reflectance of K/S 0.25, 1 and 2 is 0.5, 2 - √3 and 3 - √8, by hand."""
    found = reflectance(np.array([0.25, 1.0, 2.0]))
    assert found == pytest.approx([0.5, 0.267949, 0.171573], abs=1e-6)


def test_a_film_is_saundersons() -> None:
    """With K1 0.04 and K2 0.6, 0, 0.25, 0.5 and 1 become 0.04, 0.152941, 0.314286 and 1."""
    inner = np.array([0.0, 0.25, 0.5, 1.0])
    measured = through_film(inner, 0.04, 0.6)
    assert measured == pytest.approx([0.04, 0.152941, 0.314286, 1.0], abs=1e-6)


def test_single_constant_mixing_is_the_handbooks() -> None:
    """Base R 0.8 and 0.30 a percent gives R and L* of the worked row at 0, 1, 2 and 6 %."""
    found = reflectance(absorption_ratio(np.array(0.8)) + 0.30 * np.array([0.0, 1.0, 2.0, 6.0]))
    assert found == pytest.approx([0.8, 0.4557, 0.3441, 0.1829], abs=1e-4)
    assert [lightness(R) for R in found] == pytest.approx([91.68, 73.27, 65.29, 49.85], abs=0.01)


def _turned_back(n: float) -> float:
    """Part of diffuse light inside a medium that its flat surface turns back, by Fresnel."""
    theta = np.linspace(0.0, np.pi / 2, 200_001)
    sine = np.clip(n * np.sin(theta), 0.0, 1.0)
    inside, outside = np.cos(theta), np.sqrt(1.0 - sine**2)
    across = ((n * inside - outside) / (n * inside + outside)) ** 2
    along = ((inside - n * outside) / (inside + n * outside)) ** 2
    weight = np.sin(2 * theta)
    total = np.trapezoid((across + along) / 2 * weight, theta)
    return float(total / np.trapezoid(weight, theta))


def test_water_over_concrete_is_fresnels() -> None:
    """Wet, K1 and K2 are those of a flat surface of water (n = 1.333), to a thousandth."""
    outside, inside = FILMS["wet"]
    assert outside == pytest.approx((0.333 / 2.333) ** 2, abs=1e-3)
    assert inside == pytest.approx(_turned_back(1.333), abs=1e-3)


def test_a_resin_film_lies_in_the_published_range() -> None:
    """Satin's K1 is a film's of n = 1.5, and its K2 lies in Allen's 0.4 to 0.6."""
    outside, inside = FILMS["sealed-satin"]
    assert outside == pytest.approx((0.5 / 2.5) ** 2, abs=1e-9)
    assert 0.4 <= inside <= 0.6


# --- pigment in concrete --------------------------------------------------------------------

DARK = [("black iron oxide", "grey"), ("black iron oxide", "white"), ("red iron oxide", "white")]


@pytest.mark.parametrize(("pigment", "cement"), DARK)
def test_dark_oxide_darkens_less_and_less(workshop: Workshop, pigment: str, cement: str) -> None:
    """L* falls at every percent, most at first: suppliers' notes give trends and no figures."""
    model = shade_model(workshop)
    L = [model.lab(cement, (Dose(pigment=pigment, percent=c),))[0] for c in range(11)]
    assert all(less > more for less, more in pairwise(L))
    assert L[1] - L[2] > L[5] - L[6] > (L[8] - L[10]) / 2


@pytest.mark.parametrize("cement", ["grey", "white"])
def test_no_pigment_is_the_cements_own_colour(workshop: Workshop, cement: str) -> None:
    """A dose of zero, of any pigment, leaves the cement's reading as it is."""
    model = shade_model(workshop)
    base = model.bases[cement]
    assert delta_e_2000(model.lab(cement, ()), base) <= 1e-9
    for pigment in model.curves:
        tiny = model.labs(cement, [pigment], np.array([0.0]))
        assert delta_e_2000((tiny[0], tiny[1], tiny[2]), base) <= 1e-9


def _doses(**percents: float) -> tuple[Dose, ...]:
    return tuple(Dose(pigment=name, percent=percent) for name, percent in percents.items())


@pytest.mark.parametrize(
    ("doses", "verdict"),
    [
        (_doses(red=4.0), "fits"),
        (_doses(red=6.5), "strong"),
        (_doses(red=10.0), "strong"),
        (_doses(red=10.01), "over"),
        (_doses(red=6.0, black=5.0), "over"),
        (_doses(carbon=2.0), "fits"),
        (_doses(carbon=2.5), "over"),
        (_doses(carbon=1.0, red=1.5), "over"),  # a blend keeps to the lowest of its limits
    ],
)
def test_pigment_keeps_to_the_published_limits(
    workshop: Workshop, doses: tuple[Dose, ...], verdict: str
) -> None:
    """Ten percent in all and two with carbon black pass, no more does; past six it is reported."""
    oxide = workshop.pigments[0]
    shelf: list[Pigment] = [replace(oxide, name=name) for name in ("red", "black")]
    shelf.append(replace(oxide, name="carbon", kind="carbon"))
    assert dose_verdict(doses, shelf, workshop.shade).verdict == verdict
