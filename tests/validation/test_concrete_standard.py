"""Concrete's strength by age against its standard's formulae and printed worked values.

Sources: EN 1992-1-1:2004 table 3.1, (3.1) to (3.4), (3.23), (B.10), (12.1). A row's own tolerance
covers the digits that the printed figure has.
"""

from __future__ import annotations

import pytest

from ledgerstone.strength.concrete import (
    CementClass,
    Concrete,
    adjusted_age_days,
    age_days_of,
    beta_cc,
    flexural_factor,
    tensile_growth,
)


def approx(value: float, tolerance: float) -> object:
    """Within a share of a value."""
    return pytest.approx(value, rel=tolerance)


@pytest.mark.parametrize(
    ("fck", "fcm", "fctm", "ecm"),
    [
        (20, 28, 2.21, 29_960),
        (30, 38, 2.896, 32_840),
        (50, 58, 4.07, 37_280),
        (60, 68, 4.355, 39_100),
    ],
)
def test_strength_by_class_is_table_3_1(fck: float, fcm: float, fctm: float, ecm: float) -> None:
    """Rows 22 and 23: EN 1992-1-1 table 3.1 (0.2 %: the printed formulae, not its rounded rows)."""
    concrete = Concrete(fck_mpa=fck)
    assert concrete.fcm_mpa == fcm
    assert concrete.fctm_mpa == approx(fctm, 0.002)
    assert concrete.ecm_mpa == approx(ecm, 0.002)
    assert concrete.fctk_005_mpa == approx(0.7 * fctm, 0.002)


def test_bending_strength_of_a_thin_slab_is_3_23() -> None:
    """Row 24: C30 at 40 mm, 4.518 MPa (EN 1992-1-1 (3.23))."""
    assert Concrete(fck_mpa=30).mean_bending_mpa(40, 27.999999) == approx(4.518, 0.003)
    for h, factor in {30: 1.57, 40: 1.56, 80: 1.52, 700: 1.0}.items():
        assert flexural_factor(h) == approx(factor, 1e-9)


@pytest.mark.parametrize(
    ("cement", "age", "beta"), [("N", 3, 0.5982), ("R", 1, 0.4239), ("S", 7, 0.6839)]
)
def test_strength_grows_as_3_2(cement: CementClass, age: float, beta: float) -> None:
    """Row 25: EN 1992-1-1 (3.2), 0.0005 of strength."""
    assert beta_cc(age, cement) == pytest.approx(beta, abs=5e-4)


@pytest.mark.parametrize(
    ("cement", "age", "mpa"), [("R", 1, 1.915), ("N", 1, 1.545), ("S", 1, 0.885), ("N", 7, 3.519)]
)
def test_bending_strength_grows_as_3_4(cement: CementClass, age: float, mpa: float) -> None:
    """Row 26: C30, 40 mm, young (EN 1992-1-1 (3.23) and (3.4))."""
    assert Concrete(fck_mpa=30, cement=cement).mean_bending_mpa(40, age) == approx(mpa, 0.005)


def test_tension_past_28_days_grows_by_two_thirds() -> None:
    """Row 27: C40 N at 56 days, 3.684 MPa (EN 1992-1-1 (3.4), exponent 2/3)."""
    assert Concrete(fck_mpa=40).fctm_mpa * tensile_growth(56, "N") == approx(3.684, 0.003)


@pytest.mark.parametrize(("cement", "days"), [("R", 0.941), ("N", 1.344), ("S", 2.502)])
def test_the_age_for_a_wanted_strength_inverts_3_2(cement: CementClass, days: float) -> None:
    """Row 28: 0.926 MPa with a factor of 2.0 on C30 at 40 mm, beta .4102."""
    assert age_days_of(2.0 * 0.926 / 4.518, cement) == approx(days, 0.005)


@pytest.mark.parametrize(
    ("days", "celsius", "aged", "cement", "beta"),
    [(7, 10, 4.313, "N", 0.6791), (3, 15, 2.363, "R", 0.6135)],
)
def test_cold_days_count_less_by_b_10(
    days: float, celsius: float, aged: float, cement: CementClass, beta: float
) -> None:
    """Rows 29 and 30: EN 1992-1-1 (B.10)."""
    age = adjusted_age_days([(days, celsius)])
    assert age == approx(aged, 0.002)
    assert beta_cc(age, cement) == approx(beta, 0.002)


def test_maturity_of_a_changing_day_is_the_worked_sequence() -> None:
    """Row 31: 12 h at 20, 12 h at 25, 24 h at 30, 24 h at 25, 48 h at 15 °C (B.10)."""
    steps = [(12, 20), (12, 25), (24, 30), (24, 25), (48, 15)]
    assert adjusted_age_days((h / 24, c) for h, c in steps) == approx(5.523, 0.002)


def test_plain_concrete_in_tension_is_12_1() -> None:
    """C30: 0.8 x 2.03 / 1.5 = 1.08 MPa (EN 1992-1-1 (12.1))."""
    assert Concrete(fck_mpa=30).plain_tension_mpa(28) == approx(1.08, 0.005)
