"""The concrete, as it is mixed here."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from typing import Literal

from ledgerstone.workshop._keys import about, above_0, at_least_0, percentage, said


@dataclass(frozen=True, slots=True, kw_only=True)
class Recipe:
    """The concrete, as it is mixed here."""

    name: str = said("what the batch card calls it")
    cement: Literal["grey", "white"] = said("grey or white")
    cement_class: Literal["R", "N", "S"] = said("EN 1992-1-1 3.1.2(6): R rapid, N normal, S slow")
    fck_mpa: float = field(
        metadata=about("characteristic cylinder strength at 28 days", at_least=12, at_most=90)
    )
    cement_kg_per_m3: float = above_0("cement in a cubic metre placed")
    water_cement_ratio: float = field(
        metadata=about("free water over cement", at_least=0.2, at_most=0.8)
    )
    largest_aggregate_mm: float = above_0("largest grain")
    air_percent: float = percentage("air in the fresh concrete")
    density_kg_per_m3: float = field(
        metadata=about("hardened, without steel", at_least=1500, at_most=3000)
    )
    price_per_m3: Decimal = at_least_0("everything in it but pigment")
    waste_percent: float = percentage("left in the mixer and on the boots")
