"""Batches: concrete split evenly over the mixer, weighed in steps of the scale, and timed."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from ledgerstone.mix.mixes import Coat, Mix
from ledgerstone.workshop.records import Mixer, Recipe, proportions
from ledgerstone.workshop.records.proportions import CementColour, MixPart, Role

ROUNDING_SLACK = 1e-9  # relative; a volume above the mixer's by rounding only is not above it


@dataclass(frozen=True, slots=True)
class Weighing:
    """One constituent to weigh: its exact mass, and rounded to the scale's step."""

    name: str
    role: Role
    kg: float
    weighed_kg: float
    step_kg: float
    cement: CementColour | None = None

    @property
    def off_percent(self) -> float:
        """How far the scale's step is off, in percent of the exact mass.

        Source
        ------
        Arithmetic.
        """
        return 100 * (self.weighed_kg - self.kg) / self.kg if self.kg else 0.0


@dataclass(frozen=True, slots=True)
class Batch:
    """One batch of the mixer, its constituents in the order of mixing.

    ``cement_kg`` and ``water_cement_ratio`` are of the exact masses; ``bags`` where it is mixed by
    the bag.
    """

    coat: Coat
    litres: float
    weighings: tuple[Weighing, ...]
    cement_kg: float
    water_cement_ratio: float
    bags: float | None = None

    @property
    def kg(self) -> float:
        """Mass of the fresh batch, kg.

        Source
        ------
        Arithmetic.
        """
        return sum(weighing.kg for weighing in self.weighings)


@dataclass(frozen=True, slots=True)
class Batches:
    """One batch, and how many times it is made."""

    count: int
    batch: Batch

    @property
    def litres(self) -> float:
        """Volume of all batches, litres.

        Source
        ------
        Arithmetic.
        """
        return self.count * self.batch.litres


def weighing(part: MixPart, mixer: Mixer) -> Weighing:
    """Return the part as weighed: on the small scale as far as that goes, else on the large."""
    fine = part.kg <= mixer.fine_scale_most_kg and part.role in ("pigment", "plasticiser", "fibre")
    step = mixer.fine_scale_step_kg if fine else mixer.scale_step_kg
    steps = math.floor(part.kg / step + 0.5)
    return Weighing(part.name, part.role, part.kg, round(steps * step, 9), step, part.cement)


def with_stored_moisture(parts: tuple[MixPart, ...]) -> tuple[MixPart, ...]:
    """Return the parts, kg, with the aggregate as moist as it is stored and the water corrected.

    Aggregate at SSD holds its absorption. Moisture beyond that is taken off the added water, and
    moisture short of it is added. The total mass does not change.

    Source
    ------
    Moisture correction of ACI 211.1, on the oven-dry mass.
    """
    moist = tuple(_moist(part) for part in parts)
    surplus = proportions.mass_kg(moist) - proportions.mass_kg(parts)
    return tuple(_less(part, surplus) if part.role == "water" else part for part in moist)


def _moist(part: MixPart) -> MixPart:
    if part.role != "aggregate":
        return part
    dry_kg = part.kg / (1 + part.absorption_percent / 100)
    return _less(part, part.kg - dry_kg * (1 + part.moisture_percent / 100))


def _less(part: MixPart, kg: float) -> MixPart:
    return replace(part, kg=part.kg - kg)


def batches(mix: Mix, litres: float, recipe: Recipe, mixer: Mixer) -> Batches:
    """Split a volume, litres, of a mix evenly over the fewest batches that the mixer holds.

    Where the recipe takes whole bags, each batch takes as many of them, and makes a little more.
    """
    count, each = split(mix, litres, recipe, mixer)
    return Batches(count, _batch(mix, each, recipe, mixer))


def split(mix: Mix, litres: float, recipe: Recipe, mixer: Mixer) -> tuple[int, float]:
    """Return the number of batches that a volume, litres, takes, and the litres of each.

    Source
    ------
    Arithmetic: as many equal batches as the mixer's ``working_l`` or whole bags ask for.
    """
    if recipe.bag is not None and recipe.bag.whole_bags:
        return _whole_bags(mix, litres, recipe.bag.bag_kg, mixer)
    count = max(1, math.ceil(litres / mixer.working_l - ROUNDING_SLACK))
    return count, litres / count


def _whole_bags(mix: Mix, litres: float, bag_kg: float, mixer: Mixer) -> tuple[int, float]:
    per_bag = 1000 * bag_kg / _bag_kg_per_m3(mix)
    bags = max(1, math.ceil(litres / per_bag - ROUNDING_SLACK))
    at_once = max(1, math.floor(mixer.working_l / per_bag + ROUNDING_SLACK))
    count = math.ceil(bags / at_once)
    return count, math.ceil(bags / count) * per_bag


def _bag_kg_per_m3(mix: Mix) -> float:
    return sum(part.kg for part in mix.parts if part.role == "bag")


def _batch(mix: Mix, litres: float, recipe: Recipe, mixer: Mixer) -> Batch:
    parts = proportions.scaled(mix.parts, litres / 1000)
    return Batch(
        coat=mix.coat,
        litres=litres,
        weighings=tuple(weighing(part, mixer) for part in with_stored_moisture(parts)),
        cement_kg=proportions.cement_kg(parts),
        water_cement_ratio=mix.water_cement_ratio,
        bags=_bag_kg_per_m3(mix) * litres / 1000 / recipe.bag.bag_kg if recipe.bag else None,
    )


def batch_minutes(count: int, mixer: Mixer) -> float:
    """Minutes to weigh, mix and place ``count`` batches, one after the other.

    Source
    ------
    The profile's ``mixer.minutes_per_batch``.
    """
    return count * mixer.minutes_per_batch


def pour_minutes(face: int, backing: int, mixer: Mixer) -> float:
    """Return the minutes of one pour, from the first weighing to the last batch placed.

    Source
    ------
    As `batch_minutes`.
    """
    return batch_minutes(face + backing, mixer)


def open_minutes(face: int, backing: int, mixer: Mixer) -> float:
    """Minutes from placing the first concrete of a pour to placing the last on or against it.

    Compare it with the mixer's ``open_minutes``: a longer wait leaves a cold joint.

    Source
    ------
    The profile's ``mixer.minutes_per_batch``; that a longer wait leaves a cold joint is common
    practice, no source.
    """
    return batch_minutes(max(0, face + backing - 1), mixer)
