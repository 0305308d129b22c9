"""A section after a crack: by its steel, or plain."""

import pytest

from ledgerstone.strength.concrete import Concrete
from ledgerstone.strength.cracked import (
    CLOSEST_BARS_MM,
    cracked_limit_mpa,
    spacing_for_mm,
    steel_moment_nmm_per_mm,
)
from ledgerstone.workshop import Workshop

C30 = {"yield_mpa": 500.0, "fck_mpa": 30.0, "gamma_c": 1.5}


def test_steel_carries_its_force_times_its_lever() -> None:
    """500 mm²/m at 150 mm in C30: 31.1 kN·m a metre.

    By hand (EN 1992-1-1 6.1): A f_yd = 217.4 kN; x_b = 217.4 / (0.85 × 20) = 12.8 mm;
    M = 217.4 × (150 - 6.4) = 31.2 kN·m.
    """
    assert steel_moment_nmm_per_mm(0.5, 150.0, **C30) == pytest.approx(31_220, rel=0.002)


def test_more_steel_than_the_concrete_balances_adds_nothing() -> None:
    """Past x = 0.45 d the moment stays."""
    lots = steel_moment_nmm_per_mm(5.0, 20.0, **C30)
    assert steel_moment_nmm_per_mm(50.0, 20.0, **C30) == pytest.approx(lots)


@pytest.mark.parametrize("moment", [300.0, 1000.0, 2000.0])
def test_the_spacing_carries_just_the_moment(moment: float) -> None:
    """Bars at the spacing that was worked out carry the moment that it was worked out for."""
    spacing = spacing_for_mm(moment, 6.0, 20.0, **C30)
    assert spacing is not None
    carried = steel_moment_nmm_per_mm(28.274 / spacing, 20.0, **C30)
    assert carried == pytest.approx(moment, rel=1e-3)


def test_no_spacing_carries_what_the_concrete_cannot_balance() -> None:
    """A moment past the balanced section has no spacing."""
    assert spacing_for_mm(10_000.0, 6.0, 20.0, **C30) is None


def test_where_steel_does_little_the_plain_section_counts(workshop: Workshop) -> None:
    """The larger of steel at its closest and the plain section is trusted."""
    concrete = Concrete(fck_mpa=30)
    limit = cracked_limit_mpa(workshop.steel, concrete, 40.0)
    area = 28.274 / CLOSEST_BARS_MM
    by_steel = 6 * steel_moment_nmm_per_mm(area, 20.0, **C30) / 40**2
    assert limit == pytest.approx(by_steel, rel=1e-3)
    assert limit > concrete.plain_tension_mpa(28.0) * 1.56
