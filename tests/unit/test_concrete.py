"""Concrete by age, tested strips and what may be counted on."""

from __future__ import annotations

import dataclasses
import io
import re
import sys
import tomllib
from pathlib import Path

import pytest
from scipy.stats import t as student

from ledgerstone.cli.strips import report, run
from ledgerstone.strength import tested
from ledgerstone.strength.concrete import (
    ACCIDENTAL,
    CementClass,
    Concrete,
    DesignBasis,
    adjusted_age_days,
    age_days_of,
    beta_cc,
    tensile_growth,
)
from ledgerstone.strength.strips import StripFault, profile_lines, strips_from
from ledgerstone.strength.tested import MARGIN_UNKNOWN, StripSample
from ledgerstone.wording import speech_in
from ledgerstone.workshop import DEMONSTRATION
from ledgerstone.workshop.form.bags import UNTESTED_PERCENT

TABLE = [
    "age_days,width_mm,thickness_mm,span_mm,load_kg",
    "7,100,40,400,110",
    "7,100,40,400,121",
    "7,100,40,400,118",
]


fitted = tested.tested_strength_of  # a name that a test runner does not take for a test


def strip(**changes: float) -> StripSample:
    """A strip of 100 by 40 mm on 400 mm."""
    plain = StripSample(width_mm=100, thickness_mm=40, span_mm=400, load_n=1200, age_days=7)
    return dataclasses.replace(plain, **changes)


def test_the_design_value_is_the_characteristic_over_one_and_a_half() -> None:
    """C30, 40 mm, 28 days: 1.56 x 0.7 x 2.896 / 1.5 (EN 1992-1-1 3.1.8, table 3.1, 2.4.2.4)."""
    assert Concrete(fck_mpa=30).design_bending_mpa(40, 28) == pytest.approx(
        1.56 * 0.7 * 2.896 / 1.5, rel=1e-3
    )


def test_an_accident_is_allowed_the_smaller_factor() -> None:
    """Persistent 1.5, accidental 1.2 (EN 1992-1-1 table 2.1N)."""
    c30 = Concrete(fck_mpa=30)
    ratio = c30.design_bending_mpa(40, 28, basis=ACCIDENTAL) / c30.design_bending_mpa(40, 28)
    assert ratio == pytest.approx(1.25)


def test_the_profile_can_change_the_basis() -> None:
    """A workshop's own factor is used everywhere."""
    careful = Concrete(fck_mpa=30, basis=DesignBasis(gamma_c=2.0))
    plain = Concrete(fck_mpa=30)
    assert careful.design_bending_mpa(40, 28) == pytest.approx(
        0.75 * plain.design_bending_mpa(40, 28)
    )
    assert careful.plain_tension_mpa(28) == pytest.approx(0.75 * plain.plain_tension_mpa(28))


def test_an_untested_bagged_mix_is_trusted_with_less() -> None:
    """The declared share multiplies bending and plain tension alike."""
    trusted, bagged = Concrete(fck_mpa=30), Concrete(fck_mpa=30, share=UNTESTED_PERCENT / 100)
    assert bagged.design_bending_mpa(40, 7) == pytest.approx(
        0.75 * trusted.design_bending_mpa(40, 7)
    )
    assert bagged.plain_tension_mpa(7) == pytest.approx(0.75 * trusted.plain_tension_mpa(7))


@pytest.mark.parametrize("stated_mpa", [23.0, 27.6, 34.5, 41.4, 50.0])
def test_a_bags_stated_mean_is_never_trusted_with_more_than_its_characteristic_strength(
    stated_mpa: float,
) -> None:
    """Taken as characteristic and by the share, it gives no more than 8 MPa below it would.

    EN 1992-1-1 table 3.1: ``f_ck = f_cm - 8 MPa``; 4000, 5000 and 6000 psi among them.
    """
    bagged = Concrete(fck_mpa=stated_mpa, share=UNTESTED_PERCENT / 100)
    standard = Concrete(fck_mpa=stated_mpa - 8.0)
    assert bagged.design_bending_mpa(40, 28) <= standard.design_bending_mpa(40, 28)


@pytest.mark.parametrize("cement", ["R", "N", "S"])
@pytest.mark.parametrize("age", [0.5, 1.0, 3.0, 27.9, 28.0, 56.0])
def test_the_age_for_a_strength_gives_the_strength_back(cement: CementClass, age: float) -> None:
    """Age to growth and back again is the same age."""
    assert age_days_of(tensile_growth(age, cement), cement) == pytest.approx(age)


def test_a_strength_that_is_never_reached_has_no_age() -> None:
    """Ten times the design value is never reached; nothing is reached at once."""
    c30 = Concrete(fck_mpa=30)
    assert c30.age_days_for(20.0, 40) is None
    assert c30.age_days_for(0.0, 40) == 0.0
    wanted = c30.design_bending_mpa(40, 3.0)
    assert c30.age_days_for(wanted, 40) == pytest.approx(3.0)


def test_concrete_has_no_strength_at_age_nought_and_gains_none_below_freezing() -> None:
    """The formula's limit is nothing, not a division by zero."""
    assert beta_cc(0.0, "N") == 0.0
    assert adjusted_age_days([(3.0, -5.0)]) == 0.0


def test_a_strip_breaks_at_three_halves_of_load_times_span_over_section() -> None:
    """3 P L / 2 b h²: 1200 N on 400 mm, 100 x 40 mm, is 4.5 MPa (statics)."""
    assert strip().stress_mpa == pytest.approx(4.5)


def test_a_strips_own_weight_counts_where_its_density_is_given() -> None:
    """W L²/8 less the ends' w o²/2, over b h²/6 (statics, by hand)."""
    heavy = strip(load_n=0.0, length_mm=500, density_kg_per_m3=2400)
    weight = 2400e-9 * 9.80665 * 100 * 40
    assert heavy.stress_mpa == pytest.approx(6 * weight * (400**2 / 8 - 50**2 / 2) / (100 * 40**2))
    assert strip(length_mm=500, density_kg_per_m3=2400).stress_mpa > strip().stress_mpa


@pytest.mark.parametrize("count", sorted(MARGIN_UNKNOWN))
def test_the_margin_by_number_of_strips_is_students(count: int) -> None:
    """EN 1990 table D1, V_X unknown: t(0.95, n - 1) sqrt(1 + 1/n), printed to 0.01."""
    exact = student.ppf(0.95, count - 1) * (1 + 1 / count) ** 0.5
    assert MARGIN_UNKNOWN[count] == pytest.approx(exact, abs=0.011)


def test_more_strips_of_the_same_scatter_are_trusted_more() -> None:
    """Three, six and twelve strips of the same two values."""
    counted = [fitted([strip(), strip(load_n=1100)] * n).characteristic_mpa for n in (2, 3, 6)]
    assert counted == sorted(counted)
    assert counted[0] < counted[-1] < 4.5


def test_one_strip_is_trusted_with_a_declared_scatter() -> None:
    """K 2.31 on 15 % of the mean (EN 1990 table D1, V_X known)."""
    assert fitted([strip()]).characteristic_mpa == pytest.approx(4.5 * (1 - 2.31 * 0.15))


def test_a_tested_recipe_stands_in_place_of_the_standard() -> None:
    """At the strips' own thickness and age it is their characteristic strength over 1.5."""
    shown = fitted([strip()] * 3)
    concrete = Concrete(fck_mpa=30, tested=shown, share=0.7)
    assert concrete.design_bending_mpa(40, 7) == pytest.approx(shown.characteristic_mpa / 1.5)
    older = concrete.design_bending_mpa(40, 14) / concrete.design_bending_mpa(40, 7)
    assert older == pytest.approx(beta_cc(14, "N") / beta_cc(7, "N"))


@pytest.mark.parametrize(
    "strips",
    [
        [],
        [strip(width_mm=0)],
        [strip(span_mm=float("nan"))],
        [strip(), strip(age_days=28)],
        [strip(), strip(thickness_mm=60)],
    ],
)
def test_strips_that_cannot_be_fitted_together_are_refused(strips: list[StripSample]) -> None:
    """None, no size, or strips of unlike age or thickness raise ValueError with a sentence."""
    with pytest.raises(ValueError, match=r"\.$"):
        fitted(strips)


def test_the_report_says_what_to_write_and_to_guard_eyes_and_toes() -> None:
    """One TOML table a strip, and the cautions."""
    text = report(TABLE, speech_in("en"))
    assert text.count("[[concrete.tested]]") == 3
    assert "load_n = 1079" in text
    assert "eye protection" in text
    assert "toe-capped" in text


def test_the_profile_lines_fit_to_the_same_strength() -> None:
    """What is written into the profile reads back as the same strips."""
    strips = strips_from(TABLE)
    rows = tomllib.loads(profile_lines(strips))["concrete"]["tested"]
    again = fitted([StripSample(**row) for row in rows])
    assert again.mean_mpa == pytest.approx(fitted(strips).mean_mpa, rel=1e-3)


def test_a_cell_that_is_no_number_is_named_by_row_and_column() -> None:
    """Row 2, column load_kg."""
    with pytest.raises(StripFault) as caught:
        strips_from([TABLE[0], "7,100,40,400,lots"])
    assert dict(caught.value.message.values) == {"row": 2, "column": "load_kg"}


def test_the_command_prints_the_report(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Exit 0 and the report; exit 2 and a sentence where the file cannot be used."""
    table = tmp_path / "strips.csv"
    table.write_text("\n".join(TABLE), encoding="utf-8")
    assert run([str(table)], sys.stdout, sys.stderr) == 0
    assert "[[concrete.tested]]" in capsys.readouterr().out
    assert run([str(tmp_path / "none.csv")], sys.stdout, sys.stderr) == 2
    table.write_text(TABLE[0], encoding="utf-8")
    assert run([str(table)], sys.stdout, sys.stderr) == 2


HOMES = [
    ("demonstration", r"at [0-9]\.[0-9]{2} N/mm² on average"),
    ("germany", r"im Mittel bei [0-9],[0-9]{2} N/mm²"),
    ("united_states", r"at [0-9,]+ psi on average"),
]


@pytest.mark.parametrize(("name", "says"), HOMES)
def test_the_command_answers_in_the_profile_s_language_and_units(
    name: str, says: str, tmp_path: Path
) -> None:
    """So it does of strips that a spreadsheet of that country has saved."""
    table, out = tmp_path / "strips.csv", io.StringIO()
    file = str(DEMONSTRATION.with_name(f"{name}.toml"))
    told = "\n".join(TABLE)
    if name == "germany":
        told = told.replace(",", ";").replace(".", ",")
    table.write_text(told, encoding="utf-8")
    assert run([str(table), "--workshop", file], out, out, {}) == 0
    assert re.search(says, out.getvalue())
    assert "load_n = 1079" in out.getvalue()
    named = io.StringIO()
    assert run([str(table)], named, named, {"LEDGERSTONE_WORKSHOP": file}) == 0
    assert named.getvalue() == out.getvalue()


def test_a_strip_may_be_told_in_inches_and_pounds() -> None:
    """4 in by 1 1/2 in over 16 in, broken by 55 lb: 101.6, 38.1 and 406.4 mm, 24.948 kg.

    Source: NIST SP 811 appendix B.8.
    """
    (strip,) = strips_from([TABLE[0].split(",length")[0], "7, 4 in, 1 1/2 in, 16 in, 55 lb"])
    assert (strip.width_mm, strip.thickness_mm, strip.span_mm) == pytest.approx(
        (101.6, 38.1, 406.4)
    )
    assert strip.load_n == pytest.approx(55 * 0.45359237 * 9.80665, rel=1e-5)
