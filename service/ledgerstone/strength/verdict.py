"""The verdict on one case: a stress, the stress that is trusted, and where."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from ledgerstone.outline import XY

Case = Literal[
    "lifted-out",
    "turned",
    "on-edge",
    "carried",
    "on-bearers",
    "flat-by-the-ends",
    "own-weight",
    "even-load",
    "somebody-sitting",
    "somebody-standing",
    "somebody-leaning",
    "free-corner",
    "low-rest",
    "low-rest-and-sitting",
    "after-a-crack",
]
# Cracking in these cases is reported, and does not stop an order.
CAUTIONS: tuple[Case, ...] = ("free-corner", "low-rest-and-sitting")
# Cases that act for as long as the slab is in place.
PERMANENT: tuple[Case, ...] = ("own-weight", "even-load", "low-rest")
# A person somewhere on the slab in place.
PEOPLE: tuple[Case, ...] = ("somebody-standing", "somebody-sitting", "somebody-leaning")
NEVER = 99.0  # utilisation of what tips, or of concrete that has no strength yet


@dataclass(frozen=True, slots=True)
class Verdict:
    """One case of one slab.

    Attributes
    ----------
    stress_mpa
        Characteristic bending stress, averaged as methods §1.4 says.
    limit_mpa
        What is trusted at that age.
    where_mm
        Where the stress is largest; where the slab tips, its weight's place.
    age_days
        Temperature-adjusted age of the concrete.
    tips
        Whether the slab tips off what holds it, so that there is no stress to judge.
    load_n, load_n_per_m2
        A person on it, or what is spread over it, beside its own weight.
    own_mpa
        Stress at the same place under its own weight alone.
    """

    case: Case
    stress_mpa: float
    limit_mpa: float
    where_mm: XY
    age_days: float
    tips: bool = False
    load_n: float = 0.0
    load_n_per_m2: float = 0.0
    own_mpa: float = 0.0

    @property
    def utilisation(self) -> float:
        """Stress over what is trusted, a pure number to 0.001: over 1 it may crack.

        Source
        ------
        methods §1.4.
        """
        if self.tips or self.limit_mpa <= 0.0:
            return NEVER
        return round(min(self.stress_mpa / self.limit_mpa, NEVER), 3)

    def cracks_at_times(self, mean_mpa: float) -> float | None:
        """How many times its load cracks a section of a mean strength, MPa; None if none does.

        Own weight stays as it is, where there is a load beside it; else it is the load.

        Source
        ------
        Statics: the stress of a load grows in proportion to it.
        """
        loaded = self.load_n > 0.0 or self.load_n_per_m2 > 0.0
        own = self.own_mpa if loaded else 0.0
        live = self.stress_mpa - own
        return None if self.tips or live <= 0.0 else (mean_mpa - own) / live


def worst(verdicts: Sequence[Verdict]) -> Verdict | None:
    """Return the verdict with the largest utilisation; the first of equals."""
    return max(verdicts, key=lambda verdict: verdict.utilisation, default=None)
