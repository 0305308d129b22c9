"""Absolute volumes: what parts of known density fill, weigh and hold in water.

A part is anything with a mass and a density. Masses may be those of a cubic metre, of a bag or of a
batch: every function here only compares them. The recipe's figures and the mix's come from here.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Literal

Role = Literal[
    "cement", "addition", "water", "aggregate", "plasticiser", "polymer", "pigment", "fibre", "bag"
]
CementColour = Literal["grey", "white"]
ADMIXTURES: tuple[Role, ...] = ("plasticiser", "polymer")
ADMIXTURE_L_PER_M3 = 3.0  # EN 206 5.2.6, from memory: above this their water counts


@dataclass(frozen=True, slots=True, kw_only=True)
class MixPart:
    """One part of a mix: aggregate as saturated and surface-dry (SSD), admixtures as poured.

    ``cement_percent`` is what of its own mass is cement; ``solids_percent`` what of an admixture
    is not water; ``absorption_percent`` and ``moisture_percent`` are of an aggregate's oven-dry
    mass. ``cement`` is its cement's colour where its name does not tell it: then it is another
    one than the recipe's own, or a cement without a name.
    """

    name: str
    role: Role
    kg: float
    density_kg_per_m3: float
    cement_percent: float = 0.0
    solids_percent: float = 100.0
    absorption_percent: float = 0.0
    moisture_percent: float = 0.0
    cement: CementColour | None = None

    @property
    def volume_m3(self) -> float:
        """Volume that the part takes up."""
        return self.kg / self.density_kg_per_m3

    @property
    def cement_kg(self) -> float:
        """Cement in the part."""
        return self.kg * self.cement_percent / 100

    @property
    def admixture_water_kg(self) -> float:
        """Water that an admixture brings."""
        return self.kg * (1 - self.solids_percent / 100) if self.role in ADMIXTURES else 0.0


def volume_m3(parts: Iterable[MixPart]) -> float:
    """Volume of the parts together, without air."""
    return sum(part.volume_m3 for part in parts)


def mass_kg(parts: Iterable[MixPart]) -> float:
    """Mass of the parts together."""
    return sum(part.kg for part in parts)


def cement_kg(parts: Iterable[MixPart]) -> float:
    """Cement in the parts together: the mass on which a dose is reckoned."""
    return sum(part.cement_kg for part in parts)


def with_air_m3(parts: Iterable[MixPart], air_percent: float) -> float:
    """Volume of the parts together with the air in the fresh concrete."""
    return volume_m3(parts) / (1 - air_percent / 100)


def fresh_kg_per_m3(parts: Sequence[MixPart], air_percent: float) -> float:
    """Density of the fresh concrete.

    Source
    ------
    Absolute volumes, ``Σ m / (Σ m/ρ + air)`` (ACI 211.1).
    """
    return mass_kg(parts) / with_air_m3(parts, air_percent)


def scaled(parts: Iterable[MixPart], factor: float) -> tuple[MixPart, ...]:
    """Return the parts with every mass multiplied."""
    return tuple(replace(part, kg=part.kg * factor) for part in parts)


def scaled_to_1_m3(parts: Sequence[MixPart], air_percent: float) -> tuple[MixPart, ...]:
    """Return the parts of one cubic metre in the proportions given: the yield of a batch."""
    return scaled(parts, 1 / with_air_m3(parts, air_percent))


def filled_to_1_m3(parts: Sequence[MixPart], air_percent: float) -> tuple[MixPart, ...]:
    """Return the parts of one cubic metre, aggregate filling what the others leave.

    The aggregates keep their volumes' ratio to one another.

    Raises
    ------
    ValueError
        No part is aggregate with a mass of its own, or the others leave no room for any.

    Source
    ------
    Absolute volume method, ACI 211.1: aggregate is one cubic metre less the rest.
    """
    stone = [part for part in parts if part.role == "aggregate"]
    room = 1 - air_percent / 100 - volume_m3(p for p in parts if p.role != "aggregate")
    if volume_m3(stone) <= 0:
        raise ValueError("there is no aggregate to fill the cubic metre with")
    if room <= 0:
        raise ValueError("there is no room for aggregate in the cubic metre")
    factor = room / volume_m3(stone)
    return tuple(replace(p, kg=p.kg * factor) if p.role == "aggregate" else p for p in parts)


def counted_admixture_water_kg(parts: Sequence[MixPart], air_percent: float) -> float:
    """Water of the liquid admixtures, as far as it counts towards the water-cement ratio.

    It counts as soon as the admixtures together exceed 3 litres in a cubic metre.

    Source
    ------
    EN 206 5.2.6, from memory.
    """
    litres = 1000 * volume_m3(p for p in parts if p.role in ADMIXTURES and p.solids_percent < 100)
    if litres / with_air_m3(parts, air_percent) <= ADMIXTURE_L_PER_M3 + 1e-9:
        return 0.0
    return sum(part.admixture_water_kg for part in parts)


def water_kg(parts: Iterable[MixPart]) -> float:
    """Water that is added as water: free water, aggregate being at SSD."""
    return sum(part.kg for part in parts if part.role == "water")


def water_cement_ratio(parts: Sequence[MixPart], air_percent: float) -> float:
    """Free water over cement by mass, some admixtures' water counted.

    Source
    ------
    EN 206 5.2.6, for the admixtures.
    """
    counted = counted_admixture_water_kg(parts, air_percent)
    return (water_kg(parts) + counted) / cement_kg(parts)


def admixture_g_per_kg(parts: Sequence[MixPart]) -> float:
    """Plasticiser on cement, g/kg.

    Source
    ------
    EN 206 5.2.6, which allows 50 g/kg in all; from memory.
    """
    plasticiser = sum(part.kg for part in parts if part.role == "plasticiser")
    return 1000 * plasticiser / cement_kg(parts)
