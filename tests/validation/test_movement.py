"""Sun and drying: a restrained plate's stress and a free one's bow, by hand and as published."""

import pytest

from ledgerstone.quote import Quote
from ledgerstone.strength.movement import (
    DRYING_STRAIN,
    EXPANSION_PER_K,
    free_bow_mm,
    restrained_stress_mpa,
    sun_kelvin,
)
from ledgerstone.strength.slabs import concrete_of
from ledgerstone.workshop import Workshop
from support.calibration import on_units
from support.in_english import in_english
from support.slabs import box, slab_json
from support.whole_orders import answered

MATT = {"surface": "as-cast", "sealer": "matt"}


def test_a_restrained_gradient_makes_e_alpha_t_over_two(workshop: Workshop) -> None:
    """C40 at 20 K: 35 220 × 10e-6 × 20 / (2 × 0.8) = 4.40 MPa; C30 4.105 (row 38).

    Timoshenko's published case: 30e6 psi, 7e-6, 100 °F, ν = 0.3 makes 15 000 psi; for ν = 0.2
    that is 15 000 × 0.7 / 0.8, its α 0.7 of ours.
    """
    assert restrained_stress_mpa(concrete_of(workshop).ecm_mpa, 20.0) == pytest.approx(
        4.40, abs=0.01
    )
    assert restrained_stress_mpa(32_840.0, 20.0) == pytest.approx(4.105, rel=0.003)
    published = restrained_stress_mpa(30e6, 100.0) * 0.7 * 0.8 / 0.7
    assert published == pytest.approx(15_000.0, rel=0.001)


def test_a_free_slab_bows_by_strain_times_length_squared() -> None:
    """2400 × 40: 20 K make 10e-6 × 20 × 2400² / (8 × 40) = 3.6 mm, and so do 200 µε of drying."""
    assert free_bow_mm(EXPANSION_PER_K * 20.0, 2400.0, 40.0) == pytest.approx(3.6)
    assert free_bow_mm(DRYING_STRAIN, 2400.0, 40.0) == pytest.approx(3.6)


def test_a_dark_slab_held_fast_outdoors_is_to_slide(workshop: Workshop) -> None:
    """2400 × 640 × 40 in graphite, fixed outdoors: 4.4 MPa of 2.55, a caution; loose, none."""
    rests = on_units(600, 600, 600, 600, front=20, back=20)
    slab = slab_json(
        box(2400, 640), place="outdoors", shade={"name": "graphite"}, finish=MATT, rests=rests
    )
    fixed = answered(workshop, {**slab, "rests": {**rests, "fixed": True}})
    assert isinstance(fixed, Quote)
    (sun,) = [finding for finding in fixed.findings if finding.check == "sun-on-fixed"]
    assert sun.level == "caution"
    assert sun.measured["stress_mpa"] == pytest.approx(4.4, abs=0.01)
    assert "3.6 mm" in in_english(sun)
    assert not [one for one in answered(workshop, slab).findings if one.check == "sun-on-fixed"]


def test_a_darker_shade_is_warmer() -> None:
    """Dark 20 K, middle 15 K, pale 10 K; from memory."""
    assert [sun_kelvin(lightness) for lightness in (30.0, 55.0, 80.0)] == [20.0, 15.0, 10.0]
