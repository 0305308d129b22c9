"""How a slab may look: shades, pigments, surfaces, sealers and edges."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from typing import Literal

from ledgerstone.order import Place, Profile
from ledgerstone.surfaces import Surface
from ledgerstone.workshop._keys import about, above_0, at_least_0, documented
from ledgerstone.workshop._shade import PigmentSample


@dataclass(frozen=True, slots=True, kw_only=True)
class Dose:
    """How much of one pigment a shade takes."""

    pigment: str = documented("a name from [[pigments]]")
    percent: float = field(metadata=about("of the cement's mass", above=0, at_most=15))


@dataclass(frozen=True, slots=True, kw_only=True)
class PaletteShade:
    """One shade of the palette."""

    name: str = documented("what customers call it")
    colour: str = documented("as a cast tile looks, #rrggbb")
    by_eye: bool = field(
        default=True, metadata=about("the colour was judged by eye from a cast tile")
    )
    cement: Literal["grey", "white"] = documented("grey or white")
    doses: tuple[Dose, ...] = field(default=(), metadata=about("pigments in it"))
    extra_per_m3: Decimal = field(
        default=Decimal(0), metadata=about("what white cement adds to a cubic metre", at_least=0)
    )
    recast_percent: float = field(
        default=0.0, metadata=about("more of its pieces are cast twice", at_least=0, at_most=100)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Pigment:
    """One pigment on the shelf."""

    name: str = documented("what the tin says it is")
    density_kg_per_m3: float = above_0("for the volume it takes up")
    price_per_kg: Decimal = at_least_0("bought loose")
    kind: Literal["oxide", "carbon"] = field(
        default="oxide", metadata=about("oxide; carbon for carbon black, which has its own limit")
    )
    samples: tuple[PigmentSample, ...] = field(
        default=(), metadata=about("tiles cast with this pigment alone and read, dry and unsealed")
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class FinishOffered:
    """One surface the workshop makes."""

    surface: Surface = documented("as-cast, honed or polished")
    says: str = documented("one line for customers")
    hours_per_m2: float = at_least_0("hands, all grits together")
    consumables_per_m2: Decimal = at_least_0("pads and discs")
    days: int = field(metadata=about("working days between demoulding and sealing", at_least=0))
    grits: tuple[int, ...] = field(
        default=(), metadata=about("grits in the order used, as on the disc", at_least=16)
    )
    recast_percent: float = field(
        default=0.0, metadata=about("more of its pieces are cast twice", at_least=0, at_most=100)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Sealer:
    """One sealer the workshop uses."""

    name: str = documented("what customers choose")
    says: str = documented("one line for customers")
    kind: Literal["penetrating", "film"] = documented("penetrating or film")
    places: tuple[Place, ...] = documented("where its own sheet allows it")
    coats: int = field(metadata=about("coats", at_least=1, at_most=10))
    coverage_m2_per_l: float = above_0("a litre covers, one coat")
    price_per_l: Decimal = at_least_0("bought by the litre")
    hours_per_m2_coat: float = at_least_0("hands, each coat")
    youngest_days: int = field(metadata=about("concrete's age before the first coat", at_least=0))
    recoat_hours: float = field(
        default=0.0, metadata=about("from one coat to the next; zero: wet on wet", at_least=0)
    )
    rags_ignite: bool = field(
        default=False, metadata=about("oily: rags with it on heat up and catch fire by themselves")
    )
    heat_limit_c: float = above_0("hottest its own sheet allows")
    food_declared: bool = documented("its maker declares it for food contact")


@dataclass(frozen=True, slots=True, kw_only=True)
class EdgeOffered:
    """One edge profile the workshop makes."""

    profile: Profile = documented("square, bevel, round or wall")
    hours_per_m: float = at_least_0("hands")
    smallest_mm: float = field(default=0.0, metadata=about("smallest size", at_least=0))
    largest_mm: float = field(default=0.0, metadata=about("largest size", at_least=0))
