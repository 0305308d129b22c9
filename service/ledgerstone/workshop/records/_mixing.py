"""The mixer, the scales, and the slurry that fills voids."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal

from ledgerstone.surfaces import Surface
from ledgerstone.workshop.records._keys import about, above_0, at_least_0, documented


@dataclass(frozen=True, slots=True, kw_only=True)
class Mixer:
    """What is mixed at once, how fast, and how finely it is weighed."""

    working_l: float = above_0("placed concrete from one batch")
    minutes_per_batch: float = above_0("time to weigh, mix, empty and place one batch")
    open_minutes: float = above_0("how long the face coat takes the backing")
    scale_step_kg: float = above_0("step of the scale")
    fine_scale_step_kg: float = above_0("step of the small scale, for pigment and plasticiser")
    fine_scale_most_kg: float = at_least_0("the most that the small scale weighs")


@dataclass(frozen=True, slots=True, kw_only=True)
class SlurryFor:
    """How much slurry fills the voids of one surface."""

    surface: Surface = documented("the surface")
    l_per_m2: float = at_least_0("slurry for a square metre, all passes together")


@dataclass(frozen=True, slots=True, kw_only=True)
class SlurryRule:
    """The slurry that fills voids: neat cement with the slab's own dose."""

    water_cement_ratio: float = field(
        metadata=about("water over cement", at_least=0.2, at_most=1.0)
    )
    cement_density_kg_per_m3: float = field(
        default=3150.0,
        metadata=about("density of the cement's grains", at_least=2700, at_most=3300),
    )
    cement_price_per_kg: Decimal = field(
        default=Decimal(0),
        metadata=about("price of neat cement, where the recipe is a bag", at_least=0),
    )
    cement_pack_kg: float | None = field(
        default=None,
        metadata=about("neat cement in a bag as bought, where the recipe is a bag", above=0),
    )
    repair_pot_kg: float = field(
        default=0.0,
        metadata=about(
            "dry slurry packed with each slab for later repairs",
            at_least=0,
        ),
    )
    fills: int = field(
        default=1,
        metadata=about(
            "times that voids are filled: after the first grit, again after the second",
            at_least=1,
            at_most=3,
        ),
    )
    amounts: tuple[SlurryFor, ...] = documented("litres by surface")
