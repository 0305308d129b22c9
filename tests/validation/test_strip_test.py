"""The load that a test strip must carry before young concrete is moved, by hand."""

from dataclasses import replace

import pytest

from ledgerstone.strength.concrete import Concrete
from ledgerstone.strength.strip_test import strip_test_of
from ledgerstone.strength.tested import StripSample, hung_load_n
from ledgerstone.strength.verdict import Verdict
from ledgerstone.workshop import Workshop
from support.calibration import HOB, on_units
from support.slabs import box, slab_json
from support.whole_orders import stages

HOB_RUN = slab_json(box(2400, 620), HOB, rests=on_units(600, 300, (600, "hob"), 900, front=20))


def test_a_strip_carries_three_halves_of_its_load_times_span() -> None:
    """By hand, 100 × 40 mm over 600 mm, 700 mm long, 2400 kg/m³, wanted 2.571 MPa.

    2.571 × 100 × 40² / (1.5 × 600) = 457.1 N; its own 0.0941 N/mm makes as much as
    4 (0.0941 × 600² / 8 - 0.0941 × 50² / 2) / 600 = 27.5 N; so 429.6 N are hung.
    """
    strip = StripSample(
        width_mm=100,
        thickness_mm=40,
        span_mm=600,
        load_n=0,
        age_days=2,
        length_mm=700,
        density_kg_per_m3=2400,
    )
    load = hung_load_n(strip, 2.571)
    assert load == pytest.approx(429.6, abs=0.5)
    assert replace(strip, load_n=load).stress_mpa == pytest.approx(2.571)


def test_the_strip_must_reach_the_mean_that_the_hardest_step_rests_on(workshop: Workshop) -> None:
    """1.2 MPa when it is moved: 1.2 × 1.5 / 0.7 = 2.571 MPa (EN 1992-1-1 table 3.1, 2.4.2.4)."""
    known = stages(workshop, HOB_RUN)
    handled = known.strength[0].handled
    turned = Verdict("turned", 1.2, 1.34, (0.0, 0.0), handled.age_days)
    test = strip_test_of(replace(handled, verdicts=(turned,)), Concrete(fck_mpa=40), 40.0, 2400.0)
    assert test is not None
    assert test.stress_mpa == pytest.approx(2.571, abs=0.001)
    assert test.load_n == pytest.approx(429.6, abs=0.5)
    assert test.load_kg == pytest.approx(43.8, abs=0.1)


@pytest.mark.parametrize(("age", "is_condition"), [(2.2, True), (2.6, False)])
def test_under_two_and_a_half_days_the_strip_is_a_condition(
    age: float, is_condition: bool, workshop: Workshop
) -> None:
    """Cold concrete is moved only after its strip has passed; at 2.6 days the strip is a look."""
    handled = stages(workshop, HOB_RUN).strength[0].handled
    turned = Verdict("turned", 1.0, 1.34, (0.0, 0.0), age)
    young = replace(handled, verdicts=(turned,), age_days=age)
    test = strip_test_of(young, Concrete(fck_mpa=40), 40.0, 2400.0)
    assert test is not None
    assert test.is_condition is is_condition


def test_at_three_days_no_strip_is_asked_for(workshop: Workshop) -> None:
    """Concrete of three days is moved without a test."""
    handled = replace(stages(workshop, HOB_RUN).strength[0].handled, age_days=3.1)
    assert strip_test_of(handled, Concrete(fck_mpa=40), 40.0, 2400.0) is None
