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


@dataclass(frozen=True, slots=True)
class Verdict:
    """One case of one slab.

    Attributes
    ----------
    stress_mpa
        Characteristic bending stress, averaged as design.md §4 says.
    limit_mpa
        What is trusted at that age.
    where_mm
        Where the stress is largest.
    age_days
        Temperature-adjusted age of the concrete.
    """

    case: Case
    stress_mpa: float
    limit_mpa: float
    where_mm: XY
    age_days: float

    @property
    def utilisation(self) -> float:
        """Stress over what is trusted, to 0.001: over 1 it may crack."""
        if self.limit_mpa <= 0.0:
            return 99.0
        return round(min(self.stress_mpa / self.limit_mpa, 99.0), 3)


def worst(verdicts: Sequence[Verdict]) -> Verdict | None:
    """Return the verdict with the largest utilisation; the first of equals."""
    return max(verdicts, key=lambda verdict: verdict.utilisation, default=None)
