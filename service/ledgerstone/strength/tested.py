"""Strength of a recipe from strips that the workshop has broken over two trestles."""

from __future__ import annotations

import math
import statistics
from collections.abc import Sequence
from dataclasses import dataclass, replace

GRAVITY = 9.80665  # m/s²
# EN 1990 table D1, 5 % fractile, V_X unknown: t of n - 1 times sqrt(1 + 1/n), computed anew.
MARGIN_UNKNOWN = {3: 3.37, 4: 2.63, 5: 2.33, 6: 2.18, 8: 2.00, 10: 1.92, 20: 1.77, 30: 1.73}
# The same table, V_X known. One or two strips give no scatter: it is then declared.
MARGIN_KNOWN = {1: 2.31, 2: 2.01}
DECLARED_SCATTER = 0.15  # of the mean; common practice, no source
ALIKE = 1.1  # times the least: ages and thicknesses of strips that are judged together
MIN_SCATTER = 0.05  # of the mean; three alike strips are luck; common practice, no source


@dataclass(frozen=True, slots=True, kw_only=True)
class StripSample:
    """One strip, laid over two rests and loaded across its middle until it broke.

    Parameters
    ----------
    width_mm, thickness_mm
        Its section where it broke.
    span_mm
        Between the two rests.
    load_n
        Load at the middle when it broke, N, with its container: kg times 9.81.
    age_days
        Its age, at 20 °C.
    length_mm, density_kg_per_m3
        With both, its own weight is counted.
    """

    width_mm: float
    thickness_mm: float
    span_mm: float
    load_n: float
    age_days: float
    length_mm: float | None = None
    density_kg_per_m3: float | None = None

    @property
    def stress_mpa(self) -> float:
        """Bending stress at which it broke, ``3 P L / 2 b h²``, MPa, its own weight counted.

        Source
        ------
        Strength of materials, loaded in the middle. EN 12390-5 loads a prism at its third points
        (``F L / b h²``) and allows the middle in annex A; the middle reads higher, by about 13 % it
        says (from memory). The margin is taken on what was read here.
        """
        section = self.width_mm * self.thickness_mm**2
        return 1.5 * self.whole_load_n * self.span_mm / section

    @property
    def whole_load_n(self) -> float:
        """Load at the middle that makes the same moment as the load and the strip's own weight.

        Source
        ------
        Statics: a load ``P`` at the middle of a span ``L`` makes ``P L / 4``.
        """
        return self.load_n + 4.0 * self._own_moment_nmm / self.span_mm

    @property
    def _own_moment_nmm(self) -> float:
        if self.length_mm is None or self.density_kg_per_m3 is None:
            return 0.0
        area_mm2 = self.width_mm * self.thickness_mm
        weight = self.density_kg_per_m3 * 1e-9 * GRAVITY * area_mm2
        over = max(self.length_mm - self.span_mm, 0.0) / 2.0
        # w L² / 8 between the rests, less w c² / 2 of each end beyond them.
        return weight * (self.span_mm**2 / 8.0 - over**2 / 2.0)


def hung_load_n(strip: StripSample, stress_mpa: float) -> float:
    """Load to hang at a strip's middle for a stress there, its own weight counted, N.

    Source
    ------
    The inverse of ``StripSample.stress_mpa``.
    """
    unloaded = replace(strip, load_n=0.0)
    section = strip.width_mm * strip.thickness_mm**2
    return (stress_mpa - unloaded.stress_mpa) * section / (1.5 * strip.span_mm)


@dataclass(frozen=True, slots=True, kw_only=True)
class TestedStrength:
    """Test results of strips of one recipe.

    Parameters
    ----------
    mean_mpa, scatter_mpa
        Mean and standard deviation of the breaking stresses.
    strips
        How many were broken.
    thickness_mm, age_days
        Of the strips, their means.
    """

    __test__ = False  # a record, not a test: pytest collects names that begin with Test

    mean_mpa: float
    scatter_mpa: float
    strips: int
    thickness_mm: float
    age_days: float

    @property
    def characteristic_mpa(self) -> float:
        """Strength that 95 in 100 strips would reach, by the number that were broken.

        Source
        ------
        EN 1990 annex D, D7.2 and table D1 (V_X unknown; for one or two strips V_X known).
        """
        if self.strips < 3:
            margin, scatter = MARGIN_KNOWN[max(self.strips, 1)], DECLARED_SCATTER * self.mean_mpa
        else:
            margin = MARGIN_UNKNOWN[max(n for n in MARGIN_UNKNOWN if n <= self.strips)]
            scatter = max(self.scatter_mpa, MIN_SCATTER * self.mean_mpa)
        return max(self.mean_mpa - margin * scatter, 0.0)


def tested_strength_of(strips: Sequence[StripSample]) -> TestedStrength:
    """Tested strength of one or more strips of the same recipe and age, MPa.

    Raises
    ------
    ValueError
        If there are none, a size is not positive, or ages or thicknesses differ by more than a
        tenth.
    """
    if not strips:
        raise ValueError("Enter at least one strip.")
    for strip in strips:
        sizes = (strip.width_mm, strip.thickness_mm, strip.span_mm, strip.age_days)
        if min(sizes) <= 0.0 or not math.isfinite(sum(sizes)) or not strip.load_n >= 0.0:
            raise ValueError("Every width, thickness, span and age is a number above 0.")
    _alike([s.age_days for s in strips], "age")
    _alike([s.thickness_mm for s in strips], "thickness")
    stresses = [s.stress_mpa for s in strips]
    return TestedStrength(
        mean_mpa=statistics.fmean(stresses),
        scatter_mpa=statistics.stdev(stresses) if len(stresses) > 1 else 0.0,
        strips=len(strips),
        thickness_mm=statistics.fmean(s.thickness_mm for s in strips),
        age_days=statistics.fmean(s.age_days for s in strips),
    )


def _alike(values: Sequence[float], name: str) -> None:
    if max(values) > ALIKE * min(values):
        raise ValueError(f"The strips differ in {name} by more than a tenth: fit them apart.")
