"""A section after a crack: by its steel or glass fibre, or plain."""

from dataclasses import replace

import pytest

from ledgerstone.strength.concrete import Concrete
from ledgerstone.strength.cracked import (
    BarMaterial,
    SteelLayer,
    cracked_moment_nmm_per_mm,
    plain_limit_mpa,
)
from ledgerstone.workshop import Workshop

C30 = {"fck_mpa": 30.0, "gamma_c": 1.5}
B500 = BarMaterial(200_000.0, 500.0 / 1.15)


def test_steel_carries_its_force_times_its_lever() -> None:
    """500 mm²/m at 150 mm in C30: 31.1 kN·m a metre.

    By hand (EN 1992-1-1 6.1): A f_yd = 217.4 kN; x_b = 217.4 / (0.85 × 20) = 12.8 mm;
    M = 217.4 × (150 - 6.4) = 31.2 kN·m.
    """
    found = cracked_moment_nmm_per_mm([SteelLayer(0.5, 150.0)], B500, **C30)
    assert found == pytest.approx(31_220, rel=0.002)


def test_more_steel_than_the_concrete_balances_adds_nothing() -> None:
    """Past x = 0.45 d the moment stays."""
    lots = cracked_moment_nmm_per_mm([SteelLayer(5.0, 20.0)], B500, **C30)
    more = cracked_moment_nmm_per_mm([SteelLayer(50.0, 20.0)], B500, **C30)
    assert more == pytest.approx(lots)


def test_glass_fibre_carries_by_its_strain() -> None:
    """565 mm²/m of glass fibre at 150 mm in C30: 37.5 kN·m a metre, by hand.

    x = 24.6 mm: concrete 0.8 × 24.6 × 17 = 334.6 N/mm; strain 0.0035 × 125.4 / 24.6 = 0.01784,
    times 45 000 MPa is 803 MPa, over what is trusted: f_d = 0.7 × 1000 / 1.5 = 466.7 MPa. So the
    bars give 0.565 × 466.7 = 263.7 N/mm, x_b = 15.5 mm, M = 263.7 × (150 - 7.76) = 37.5 kN·m.
    In a thin section they strain less: at d = 20 mm, x = 6.19 mm, ε = 0.0035 × 13.81 / 6.19 =
    0.00781, 351 MPa, 0.24 × 351 = 84.3 N/mm = 0.8 × 6.19 × 17; M = 84.3 × (20 - 2.48) = 1477.
    """
    glass = BarMaterial(45_000.0, 0.7 * 1000 / 1.5)
    deep = cracked_moment_nmm_per_mm([SteelLayer(0.565, 150.0)], glass, **C30)
    thin = cracked_moment_nmm_per_mm([SteelLayer(0.24, 20.0)], glass, **C30)
    assert deep == pytest.approx(37_500, rel=0.005)
    assert thin == pytest.approx(1477, rel=0.005)


def test_stuff_is_as_stiff_and_as_strong_as_its_material(workshop: Workshop) -> None:
    """Steel 200 GPa over 1.15; glass fibre 45 GPa, 0.7 of its strength over 1.5; or as written."""
    glass = replace(workshop.steel, material="glass-fibre", yield_mpa=1000.0)
    assert BarMaterial.of(workshop.steel) == B500
    assert BarMaterial.of(glass).e_mpa == 45_000.0
    assert BarMaterial.of(glass).design_mpa == pytest.approx(466.7, abs=0.1)
    assert BarMaterial.of(replace(glass, e_mpa=60_000.0)).e_mpa == 60_000.0


def test_plain_concrete_is_trusted_with_0_8_of_its_tension() -> None:
    """C30: 0.8 × 2.03 / 1.5 = 1.08 MPa in tension (EN 1992-1-1 (12.1)), 1.56 times in bending."""
    assert plain_limit_mpa(Concrete(fck_mpa=30), 40.0) == pytest.approx(1.08 * 1.56, rel=0.003)


def test_nothing_carries_across_a_crack_without_steel() -> None:
    """No layer, no moment."""
    assert cracked_moment_nmm_per_mm([], B500, **C30) == 0.0
