"""Batches: concrete split evenly over the mixer, weighed in steps of the scale, and timed."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from ledgerstone.mix.mixes import Coat, Mix
from ledgerstone.workshop import proportions
from ledgerstone.workshop.proportions import Part, Role
from ledgerstone.workshop.records import Mixer, Recipe

NEARLY = 1e-9  # a litre over the mixer by rounding alone is no litre over


@dataclass(frozen=True, slots=True)
class Weighing:
    """One thing to weigh: exactly, and as the scale can show it."""

    name: str
    role: Role
    kg: float
    weighed_kg: float
    step_kg: float

    @property
    def off_percent(self) -> float:
        """How far the scale's step is off, in percent of the exact mass."""
        return 100 * (self.weighed_kg - self.kg) / self.kg if self.kg else 0.0


@dataclass(frozen=True, slots=True)
class Batch:
    """One filling of the mixer, in the order in which things go in.

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
        """Mass of the fresh batch."""
        return sum(weighing.kg for weighing in self.weighings)


@dataclass(frozen=True, slots=True)
class Batches:
    """The same batch so many times."""

    count: int
    batch: Batch

    @property
    def litres(self) -> float:
        """Litres of them all."""
        return self.count * self.batch.litres


def weighing(part: Part, mixer: Mixer) -> Weighing:
    """Return the part as weighed: on the small scale as far as that goes, else on the large."""
    fine = part.kg <= mixer.fine_scale_most_kg and part.role in ("pigment", "plasticiser", "fibre")
    step = mixer.fine_scale_step_kg if fine else mixer.scale_step_kg
    steps = math.floor(part.kg / step + 0.5)
    return Weighing(part.name, part.role, part.kg, round(steps * step, 9), step)


def as_they_lie(parts: tuple[Part, ...]) -> tuple[Part, ...]:
    """Return the parts as they lie in the shed: aggregate moist, and the less water added.

    Aggregate at SSD holds its absorption; what the heap holds beyond that is water that is not
    added, what it lacks is. The mass of all stays.

    Source: moisture correction of ACI 211.1, on the oven-dry mass.
    """
    moist = tuple(_moist(part) for part in parts)
    surplus = proportions.mass_kg(moist) - proportions.mass_kg(parts)
    return tuple(_less(part, surplus) if part.role == "water" else part for part in moist)


def _moist(part: Part) -> Part:
    if part.role != "aggregate":
        return part
    dry_kg = part.kg / (1 + part.absorption_percent / 100)
    return _less(part, part.kg - dry_kg * (1 + part.moisture_percent / 100))


def _less(part: Part, kg: float) -> Part:
    return replace(part, kg=part.kg - kg)


def batches(mix: Mix, litres: float, recipe: Recipe, mixer: Mixer) -> Batches:
    """Split so many litres of a mix evenly over as few batches as the mixer can do.

    Where the recipe takes whole bags, each batch takes as many of them, and makes a little more.
    """
    count, each = split(mix, litres, recipe, mixer)
    return Batches(count, _batch(mix, each, recipe, mixer))


def split(mix: Mix, litres: float, recipe: Recipe, mixer: Mixer) -> tuple[int, float]:
    """Return how many batches so many litres take, and the litres of each."""
    if recipe.bag is not None and recipe.bag.whole_bags:
        return _whole_bags(mix, litres, recipe.bag.bag_kg, mixer)
    count = max(1, math.ceil(litres / mixer.working_l - NEARLY))
    return count, litres / count


def _whole_bags(mix: Mix, litres: float, bag_kg: float, mixer: Mixer) -> tuple[int, float]:
    per_bag = 1000 * bag_kg / _bag_kg_per_m3(mix)
    bags = max(1, math.ceil(litres / per_bag - NEARLY))
    at_once = max(1, math.floor(mixer.working_l / per_bag + NEARLY))
    count = math.ceil(bags / at_once)
    return count, math.ceil(bags / count) * per_bag


def _bag_kg_per_m3(mix: Mix) -> float:
    return sum(part.kg for part in mix.parts if part.role == "bag")


def _batch(mix: Mix, litres: float, recipe: Recipe, mixer: Mixer) -> Batch:
    parts = proportions.scaled(mix.parts, litres / 1000)
    return Batch(
        coat=mix.coat,
        litres=litres,
        weighings=tuple(weighing(part, mixer) for part in as_they_lie(parts)),
        cement_kg=proportions.cement_kg(parts),
        water_cement_ratio=mix.water_cement_ratio,
        bags=_bag_kg_per_m3(mix) * litres / 1000 / recipe.bag.bag_kg if recipe.bag else None,
    )


def batch_minutes(count: int, mixer: Mixer) -> float:
    """Minutes to weigh, mix and place so many batches, one after the other."""
    return count * mixer.minutes_per_batch


def pour_minutes(face: int, backing: int, mixer: Mixer) -> float:
    """Minutes of one pour, from the first thing weighed to the last batch placed."""
    return batch_minutes(face + backing, mixer)


def open_minutes(face: int, backing: int, mixer: Mixer) -> float:
    """Minutes that the first concrete placed waits until the last is placed on it or against it.

    Compare it with the mixer's ``open_minutes``: a longer wait leaves a cold joint.
    """
    return batch_minutes(max(0, face + backing - 1), mixer)
