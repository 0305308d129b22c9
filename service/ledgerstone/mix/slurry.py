"""Slurry for the voids and sealer for the face."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.mix.batches import Weighing, weighing
from ledgerstone.mix.mixes import Tint, neat_cement, pigment_parts
from ledgerstone.surfaces import Surface
from ledgerstone.workshop.records import Workshop, proportions
from ledgerstone.workshop.records.proportions import MixPart


@dataclass(frozen=True, slots=True)
class Slurry:
    """Neat cement with the slab's own dose, for the voids of one piece."""

    litres: float
    weighings: tuple[Weighing, ...]

    def kg(self, role: str) -> float:
        """Exact mass of what has this role (cement, water or pigment), kg.

        Source
        ------
        Arithmetic.
        """
        return sum(weighing.kg for weighing in self.weighings if weighing.role == role)


def slurry_of(surface: Surface, area_m2: float, tint: Tint, workshop: Workshop) -> Slurry:
    """Return the slurry that fills the voids of a face, ``area_m2``: water, cement, pigment.

    The dose is that of the body, on the neat cement; what a square metre takes is the profile's.

    Source
    ------
    Absolute volumes: a litre holds ``1 / (1/ρ + w/c)`` of cement. The dose: common practice, no
    source.
    """
    litres = area_m2 * sum(o.l_per_m2 for o in workshop.slurry.amounts if o.surface == surface)
    parts = _parts(tint, workshop)
    made = proportions.scaled(parts, litres / 1000 / proportions.volume_m3(parts))
    return Slurry(litres, tuple(weighing(part, workshop.mixer) for part in made))


def repair_pot(tint: Tint, workshop: Workshop) -> Slurry | None:
    """Return the pot of dry slurry that goes with a piece; none if the profile has none.

    Its litres are those it makes with the water that is stirred in later.
    """
    if not workshop.slurry.repair_pot_kg:
        return None
    parts = _parts(tint, workshop)
    dry_kg = proportions.mass_kg(part for part in parts if part.role != "water")
    made = proportions.scaled(parts, workshop.slurry.repair_pot_kg / dry_kg)
    dry = (part for part in made if part.role != "water")
    litres = 1000 * proportions.volume_m3(made)
    return Slurry(litres, tuple(weighing(part, workshop.mixer) for part in dry))


def _parts(tint: Tint, workshop: Workshop) -> tuple[MixPart, ...]:
    """Return slurry of a kilogram of neat cement: water, cement, the slab's own dose."""
    rule = workshop.slurry
    name, cement = neat_cement(tint, workshop.recipe)
    return (
        MixPart(name="water", role="water", kg=rule.water_cement_ratio, density_kg_per_m3=1000.0),
        MixPart(
            name=name,
            cement=cement,
            role="cement",
            kg=1.0,
            density_kg_per_m3=rule.cement_density_kg_per_m3,
            cement_percent=100.0,
        ),
        *pigment_parts(tint.doses, 1.0, workshop.pigments),
    )


def sealer_l(area_m2: float, coats: int, coverage_m2_per_l: float) -> float:
    """Sealer for a face in some coats, litres: area times coats over coverage.

    Source
    ------
    The tin's coverage, in the profile.
    """
    return area_m2 * coats / coverage_m2_per_l
