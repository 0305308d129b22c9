"""What the plate says of one case: a stress, what is trusted, and where."""

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
# What would crack a slab in these is said, and stops nothing.
CAUTIONS: tuple[Case, ...] = ("free-corner", "low-rest-and-sitting")
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
    """

    case: Case
    stress_mpa: float
    limit_mpa: float
    where_mm: XY
    age_days: float
    tips: bool = False

    @property
    def utilisation(self) -> float:
        """Stress over what is trusted, to 0.001: over 1 it may crack."""
        if self.tips or self.limit_mpa <= 0.0:
            return NEVER
        return round(min(self.stress_mpa / self.limit_mpa, NEVER), 3)


def worst(verdicts: Sequence[Verdict]) -> Verdict | None:
    """Return the verdict with the largest utilisation; the first of equals."""
    return max(verdicts, key=lambda verdict: verdict.utilisation, default=None)
