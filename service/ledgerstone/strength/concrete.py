"""Strength of concrete by its age: EN 1992-1-1 3.1, and what may be counted on in bending.

Strengths in MPa, ages in days at 20 °C unless a temperature is given, thickness in mm.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Literal

from ledgerstone.strength.tested import TestedStrength

CementClass = Literal["R", "N", "S"]

# EN 1992-1-1 3.1.2(6): R is CEM 42.5R, 52.5N, 52.5R; N is 32.5R, 42.5N; S is 32.5N.
CEMENT_S: dict[CementClass, float] = {"R": 0.20, "N": 0.25, "S": 0.38}


@dataclass(frozen=True, slots=True, kw_only=True)
class DesignBasis:
    """From mean to design bending strength: the one place that defines it.

    Parameters
    ----------
    characteristic_share
        Characteristic strength, the 5 % fractile, over the mean (EN 1992-1-1 table 3.1: 0.7).
    gamma_c
        Partial factor of concrete (EN 1992-1-1 2.4.2.4: 1.5; accidental 1.2).
    plain_alpha
        ``alpha_ct,pl`` for a section without steel (EN 1992-1-1 12.3.1: 0.8).
    """

    characteristic_share: float = 0.7
    gamma_c: float = 1.5
    plain_alpha: float = 0.8


# Design situations by EN 1990 3.2(2).
PERSISTENT = DesignBasis()
ACCIDENTAL = DesignBasis(gamma_c=1.2)  # EN 1992-1-1 table 2.1N
POISSON = 0.2  # uncracked concrete, EN 1992-1-1 3.1.3(4)


@dataclass(frozen=True, slots=True, kw_only=True)
class Concrete:
    """A concrete, and the strength that may be counted on at any age.

    Parameters
    ----------
    fck_mpa
        Characteristic cylinder strength at 28 days.
    cement
        Class of the cement's early strength.
    share
        Share of the standard's tensile strength that is assumed for this mix.
    tested
        Results of broken strips of this recipe; they replace the standard's value.
    basis
        The design basis in persistent situations.
    """

    fck_mpa: float
    cement: CementClass = "N"
    share: float = 1.0
    tested: TestedStrength | None = None
    basis: DesignBasis = field(default=PERSISTENT)

    @property
    def fcm_mpa(self) -> float:
        """Mean compressive strength at 28 days, MPa: ``fck + 8``.

        Source
        ------
        EN 1992-1-1 table 3.1.
        """
        return self.fck_mpa + 8.0

    @property
    def fctm_mpa(self) -> float:
        """Mean tensile strength at 28 days, MPa; above C50 from ``fcm``.

        Source
        ------
        EN 1992-1-1 table 3.1.
        """
        if self.fck_mpa <= 50.0:
            return float(0.30 * self.fck_mpa ** (2.0 / 3.0))
        return 2.12 * math.log(1.0 + self.fcm_mpa / 10.0)

    @property
    def fctk_005_mpa(self) -> float:
        """Characteristic tensile strength, 5 % fractile, MPa: ``0.7 fctm``.

        Source
        ------
        EN 1992-1-1 table 3.1.
        """
        return 0.7 * self.fctm_mpa

    @property
    def ecm_mpa(self) -> float:
        """Secant modulus of elasticity at 28 days with quartzite, MPa: ``22 (fcm / 10)^0.3`` GPa.

        Source
        ------
        EN 1992-1-1 table 3.1.
        """
        return float(22_000.0 * (self.fcm_mpa / 10.0) ** 0.3)

    def mean_bending_mpa(self, thickness_mm: float, age_days: float) -> float:
        """Mean bending strength of a plain slab at an age, MPa: where it cracks, in the mean.

        Source
        ------
        EN 1992-1-1 (3.23) and (3.4), or as strips of the recipe have broken.
        """
        growth = tensile_growth(age_days, self.cement)
        if self.tested is None:
            return flexural_factor(thickness_mm) * self.fctm_mpa * growth
        size = flexural_factor(thickness_mm) / flexural_factor(self.tested.thickness_mm)
        then = tensile_growth(self.tested.age_days, self.cement)
        return self.tested.mean_mpa * size * growth / then

    def design_bending_mpa(
        self, thickness_mm: float, age_days: float, *, basis: DesignBasis | None = None
    ) -> float:
        """Design bending strength of a slab at an age, MPa.

        ``k_fl(h) · 0.7 fctm(t) / 1.5`` times the mix's share; or, where the recipe was tested, the
        characteristic strength of its strips, brought to this thickness and age, over 1.5.

        Source
        ------
        EN 1992-1-1 3.1.8, table 3.1, 2.4.2.4; methods §1.4.
        """
        return self._at_28_days_mpa(thickness_mm, basis) * tensile_growth(age_days, self.cement)

    def _at_28_days_mpa(self, thickness_mm: float, basis: DesignBasis | None) -> float:
        chosen = self.basis if basis is None else basis
        if self.tested is None:
            mean = flexural_factor(thickness_mm) * self.fctm_mpa * self.share
            return mean * chosen.characteristic_share / chosen.gamma_c
        tested = self.tested
        size = flexural_factor(thickness_mm) / flexural_factor(tested.thickness_mm)
        growth = tensile_growth(tested.age_days, self.cement)
        return tested.characteristic_mpa * size / growth / chosen.gamma_c

    def mean_behind_mpa(self, design_mpa: float) -> float:
        """Mean bending strength on which a design stress rests, ``f γ_c / 0.7``.

        Source
        ------
        EN 1992-1-1 table 3.1 and 2.4.2.4; of a tested recipe, its strips' own share.
        """
        share = self.basis.characteristic_share
        if self.tested is not None:
            share = self.tested.characteristic_mpa / self.tested.mean_mpa
        return design_mpa * self.basis.gamma_c / share

    def age_days_for(
        self, wanted_mpa: float, thickness_mm: float, *, basis: DesignBasis | None = None
    ) -> float | None:
        """Age at which ``design_bending_mpa`` reaches a stress, days; None if it never does.

        Source
        ------
        ``design_bending_mpa`` solved for the age: EN 1992-1-1 (3.2) and (3.4).
        """
        return age_days_of(wanted_mpa / self._at_28_days_mpa(thickness_mm, basis), self.cement)

    def plain_tension_mpa(self, age_days: float, *, basis: DesignBasis | None = None) -> float:
        """Design tensile strength of plain concrete, MPa.

        Source
        ------
        EN 1992-1-1 (12.1).
        """
        chosen = self.basis if basis is None else basis
        growth = tensile_growth(age_days, self.cement) * self.share
        return chosen.plain_alpha * self.fctk_005_mpa * growth / chosen.gamma_c


def flexural_factor(thickness_mm: float) -> float:
    """Bending strength over that in pure tension, ``max(1.6 - h/1000, 1)``, a pure number.

    Source
    ------
    EN 1992-1-1 (3.23).
    """
    return max(1.6 - thickness_mm / 1000.0, 1.0)


def beta_cc(age_days: float, cement: CementClass) -> float:
    """Compressive strength at an age over that at 28 days, a pure number; 0 at age zero.

    Source
    ------
    EN 1992-1-1 (3.2).
    """
    if age_days <= 0.0:
        return 0.0
    return math.exp(CEMENT_S[cement] * (1.0 - math.sqrt(28.0 / age_days)))


def tensile_growth(age_days: float, cement: CementClass) -> float:
    """Tensile strength at an age over that at 28 days: ``beta_cc``, to the 2/3 from 28 days on.

    Source
    ------
    EN 1992-1-1 (3.4).
    """
    beta = beta_cc(age_days, cement)
    return beta if age_days < 28.0 else float(beta ** (2.0 / 3.0))


def age_days_of(growth: float, cement: CementClass) -> float | None:
    """Age at which ``tensile_growth`` reaches a value, days; None if it never does.

    Source
    ------
    The inverse of EN 1992-1-1 (3.2): ``t = 28 / (1 - ln(beta) / s)²``.
    """
    if growth <= 0.0:
        return 0.0
    beta = growth if growth < 1.0 else growth**1.5
    rest = 1.0 - math.log(beta) / CEMENT_S[cement]
    return 28.0 / rest**2 if rest > 1e-6 else None


def ageing_rate(celsius: float) -> float:
    """Days of age gained in a day at a temperature, ``exp(13.65 - 4000 / (273 + T))``.

    Source
    ------
    EN 1992-1-1 (B.10), for 0 to 80 °C. At 20 °C it is 0.998, as in the standard. Below 0 °C we
    take 0.
    """
    return math.exp(13.65 - 4000.0 / (273.0 + celsius)) if celsius >= 0.0 else 0.0


def adjusted_age_days(steps: Iterable[tuple[float, float]]) -> float:
    """Temperature-adjusted age of ``(days, celsius)`` steps, days.

    Source
    ------
    EN 1992-1-1 (B.10).
    """
    return sum(days * ageing_rate(celsius) for days, celsius in steps)
