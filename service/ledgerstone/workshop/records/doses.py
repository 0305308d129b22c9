"""How much pigment is too much: the limits on a recipe's doses."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from ledgerstone.workshop.records import Colouring, Dose, Pigment

ADVISED_PERCENT = 10.0  # ASTM C979/C979M-16 clause 1.4: all pigments together
# Beyond 5-8 % a strong oxide hardly deepens (suppliers' notes); self-compacting concrete stays
# workable below 6 % (Adv. Civil Eng. 2018, art. 8093576).
HARDLY_DEEPER_PERCENT = 6.0


@dataclass(frozen=True, slots=True)
class DoseVerdict:
    """All pigments together, the most they may be, and which of the three it is."""

    total_percent: float
    most_percent: float
    verdict: Literal["fits", "strong", "over"]


def dose_verdict(
    doses: Sequence[Dose], pigments: Sequence[Pigment], colouring: Colouring
) -> DoseVerdict:
    """Whether a recipe's pigment keeps within the workshop's limit.

    A blend may be as strong as the most sensitive of its pigments allows for all of it.
    ``strong``: allowed, and past what still deepens the shade.

    Source
    ------
    ASTM C979/C979M-16 clause 1.4.
    """
    total = round(sum(dose.percent for dose in doses), 6)
    most = most_percent([dose.pigment for dose in doses if dose.percent], pigments, colouring)
    if total > most:
        return DoseVerdict(total, most, "over")
    return DoseVerdict(total, most, "strong" if total > HARDLY_DEEPER_PERCENT else "fits")


def most_percent(names: Sequence[str], pigments: Sequence[Pigment], colouring: Colouring) -> float:
    """The most that pigments of these names may be together, in percent of the cement."""
    used = [pigment for pigment in pigments if pigment.name in names]
    if any(pigment.kind == "carbon" for pigment in used):
        return min(colouring.most_percent, colouring.carbon_most_percent)
    return colouring.most_percent
