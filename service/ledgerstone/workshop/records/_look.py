"""How a slab may look: shades, pigments, surfaces, sealers and edges."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from typing import Literal

from ledgerstone.order import Place, Profile
from ledgerstone.surfaces import Surface
from ledgerstone.workshop.records._keys import about, above_0, at_least_0, documented
from ledgerstone.workshop.records._shade import PigmentSample


@dataclass(frozen=True, slots=True, kw_only=True)
class Dose:
    """How much of one pigment a shade takes."""

    pigment: str = documented("the pigment, by its name")
    percent: float = field(metadata=about("dose, of the cement's mass", above=0, at_most=15))


@dataclass(frozen=True, slots=True, kw_only=True)
class PaletteShade:
    """One shade of the palette."""

    name: str = documented("name for customers")
    colour: str = documented("colour of a cast tile, #rrggbb", kind="colour")
    by_eye: bool = field(
        default=True, metadata=about("whether the colour was judged by eye from a cast tile")
    )
    cement: Literal["grey", "white"] = documented("the cement's colour")
    doses: tuple[Dose, ...] = field(default=(), metadata=about("pigments in it"))
    extra_per_m3: Decimal = field(
        default=Decimal(0), metadata=about("added for white cement", at_least=0)
    )
    recast_percent: float = field(
        default=0.0,
        metadata=about("more that are cast twice, in this shade", at_least=0, at_most=100),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Pigment:
    """One pigment on the shelf."""

    name: str = documented("name on the tin")
    density_kg_per_m3: float = above_0("density")
    price_per_kg: Decimal = at_least_0("price")
    kind: Literal["oxide", "carbon"] = field(
        default="oxide", metadata=about("what it is made of; carbon black has a limit of its own")
    )
    samples: tuple[PigmentSample, ...] = field(
        default=(), metadata=about("tiles cast with this pigment alone and read, dry and unsealed")
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class FinishOffered:
    """One surface the workshop makes."""

    surface: Surface = documented("the surface")
    says: str = documented("a line for customers")
    hours_per_m2: float = at_least_0("hours, all grits together")
    consumables_per_m2: Decimal = at_least_0("pads and discs")
    days: int = field(metadata=about("working days between demoulding and sealing", at_least=0))
    grits: tuple[int, ...] = field(
        default=(), metadata=about("grits in their order, as on the disc", at_least=16)
    )
    recast_percent: float = field(
        default=0.0,
        metadata=about("more that are cast twice, in this finish", at_least=0, at_most=100),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Sealer:
    """One sealer the workshop uses."""

    name: str = documented("name for customers")
    says: str = documented("a line for customers")
    kind: Literal["penetrating", "film"] = documented("how it seals")
    places: tuple[Place, ...] = documented("places that its data sheet allows")
    coats: int = field(metadata=about("number of coats", at_least=1, at_most=10))
    coverage_m2_per_l: float = above_0("area that a litre covers in one coat")
    price_per_l: Decimal = at_least_0("price")
    hours_per_m2_coat: float = at_least_0("hours, each coat")
    youngest_days: int = field(metadata=about("age of the concrete at the first coat", at_least=0))
    recoat_hours: float = field(
        default=0.0, metadata=about("time from one coat to the next; zero: wet on wet", at_least=0)
    )
    rags_ignite: bool = field(
        default=False,
        metadata=about("whether oily rags with it heat up and catch fire by themselves"),
    )
    heat_limit_c: float = above_0("hottest that its data sheet allows")
    food_declared: bool = documented("whether its maker declares it for food contact")


@dataclass(frozen=True, slots=True, kw_only=True)
class EdgeOffered:
    """One edge profile the workshop makes."""

    profile: Profile = documented("the profile")
    hours_per_m: float = at_least_0("hours")
    smallest_mm: float = field(default=0.0, metadata=about("smallest size", at_least=0))
    largest_mm: float = field(default=0.0, metadata=about("largest size", at_least=0))
