"""The test strip that is loaded before young concrete is moved, and the load it must carry."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.strength.concrete import Concrete
from ledgerstone.strength.handling import TEST_UNDER_DAYS, Handled
from ledgerstone.strength.tested import GRAVITY, StripSample, hung_load_n
from ledgerstone.strength.verdict import worst

CONDITION_UNDER_DAYS = 2.5  # moved only after the strip has passed; common practice, no source
# The strip, cast with the slab and kept beside it; common practice, no source.
WIDTH_MM, SPAN_MM, LENGTH_MM = 100.0, 600.0, 700.0


@dataclass(frozen=True, slots=True)
class StripTest:
    """What a strip must carry at its middle before its slab is moved.

    Attributes
    ----------
    stress_mpa
        Mean strength that the step with the largest stress needs, MPa.
    load_n
        Load to hang for it, N; 0 if its own weight makes as much.
    is_condition
        Whether the slab is moved only after it has passed.
    """

    thickness_mm: float
    stress_mpa: float
    load_n: float
    is_condition: bool

    @property
    def load_kg(self) -> float:
        """Mass to hang for it, kg.

        Source
        ------
        Its load over the standard acceleration, 9.80665 m/s².
        """
        return self.load_n / GRAVITY


def strip_test_of(
    handled: Handled, concrete: Concrete, thickness_mm: float, density_kg_per_m3: float
) -> StripTest | None:
    """Compute the strip's test; None if the concrete is three days old or more when moved.

    Source
    ------
    ``hung_load_n`` and ``Concrete.mean_behind_mpa``; methods §1.5.
    """
    young = [v for v in handled.verdicts if v.age_days == handled.age_days and not v.tips]
    hardest = worst(young)
    if hardest is None or handled.age_days >= TEST_UNDER_DAYS:
        return None
    strip = StripSample(
        width_mm=WIDTH_MM,
        thickness_mm=thickness_mm,
        span_mm=SPAN_MM,
        load_n=0.0,
        age_days=handled.age_days,
        length_mm=LENGTH_MM,
        density_kg_per_m3=density_kg_per_m3,
    )
    stress = concrete.mean_behind_mpa(hardest.stress_mpa)
    load = max(hung_load_n(strip, stress), 0.0)
    return StripTest(thickness_mm, stress, load, handled.age_days < CONDITION_UNDER_DAYS)
