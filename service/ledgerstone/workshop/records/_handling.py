"""How far the concrete is trusted, how a slab is moved and what it must bear."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from typing import Literal

from ledgerstone.workshop.records._carrying import Pallet, Van
from ledgerstone.workshop.records._keys import about, above_0, at_least_0, documented


@dataclass(frozen=True, slots=True, kw_only=True)
class BrokenStrip:
    """One strip of this recipe, broken over two trestles."""

    age_days: float = above_0("the strip's age when it broke")
    width_mm: float = above_0("width of the strip")
    thickness_mm: float = above_0("thickness of the strip")
    span_mm: float = above_0("distance of the trestles")
    load_n: float = above_0("load that broke it, hung at the middle, in newtons (kg × 9.81)")


@dataclass(frozen=True, slots=True, kw_only=True)
class ConcreteSettings:
    """How far the concrete is trusted."""

    partial_factor: float = field(
        default=1.5,
        metadata=about("partial factor of the concrete, EN 1992-1-1 2.4.2.4", at_least=1.0),
    )
    accidental_factor: float = field(
        default=1.2,
        metadata=about("partial factor for accidents, EN 1992-1-1 2.4.2.4", at_least=1.0),
    )
    untested_percent: float = field(
        default=100.0,
        metadata=about(
            (
                "share of the EN strength that is trusted untested: 100 by the standard, "
                "75 bagged, 70 with fibre or much pigment"
            ),
            above=0,
            at_most=100,
        ),
    )
    tested: tuple[BrokenStrip, ...] = field(default=(), metadata=about("strips broken here"))


@dataclass(frozen=True, slots=True, kw_only=True)
class Way:
    """One way the workshop can get a slab out of its mould and onto its pallet."""

    name: str = documented("name on the job sheet")
    most_kg: float = above_0("heaviest piece, with its mould, that this way handles")
    people: int = field(metadata=about("people it takes", at_least=1, at_most=12))
    held: Literal["on-edge", "flat"] = documented("how the slab is held")
    sides_on: bool = documented("whether mould sides and formers stay in until it stands on edge")
    rail: bool = field(
        default=False,
        metadata=about("whether a stiff rail is clamped across openings while it moves"),
    )
    later_days: float = field(
        default=0.0, metadata=about("days under cover beyond the usual", at_least=0)
    )
    hours: float = at_least_0("hours beyond the usual, each slab")
    price: Decimal = field(
        default=Decimal(0), metadata=about("hire of the gear for this way", at_least=0)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class HandlingSettings:
    """How a slab is moved while it is young; the ways stand from the plainest on."""

    out_of_mould_factor: float = field(
        default=1.3,
        metadata=about(
            "factor on own weight out of the mould; precast practice, from memory", at_least=1.0
        ),
    )
    adhesion_n_per_m2: float = field(
        default=1000.0, metadata=about("pull of an oiled mould; lifting-anchor manual", at_least=0)
    )
    carried_factor: float = field(
        default=1.5,
        metadata=about(
            "factor on own weight while carried; precast practice, from memory", at_least=1.0
        ),
    )
    pallet_factor: float = field(
        default=1.5,
        metadata=about(
            "factor on own weight on a pallet; precast practice, from memory", at_least=1.0
        ),
    )
    mould_kg_per_m2: float = at_least_0("mass of a mould: base board, sides and formers")
    workshop_c: tuple[float, ...] = field(
        metadata=about("temperature of the workshop, January to December", at_least=-5, at_most=45)
    )
    longest_cover_days: float = above_0("longest time of a slab in its mould")
    ways: tuple[Way, ...] = documented("ways of moving a slab, the plainest first")


@dataclass(frozen=True, slots=True, kw_only=True)
class Loads:
    """What a slab must bear in place: the workshop's own choice, not a rule."""

    even_n_per_m2: float = field(
        default=1500.0, metadata=about("load spread over the slab; our judgement", at_least=0)
    )
    point_n: float = field(
        default=1000.0,
        metadata=about("load of a person sitting, anywhere; our judgement", at_least=0),
    )
    point_side_mm: float = field(
        default=100.0, metadata=about("side of the square that a person's load stands on", above=0)
    )
    leaning_n: float = field(
        default=500.0,
        metadata=about(
            "load of a person leaning, on a narrow strip or a shelf; our judgement",
            at_least=0,
        ),
    )
    standing_n: float = field(
        default=1500.0,
        metadata=about("load of a person standing, as an accident; our judgement", at_least=0),
    )
    low_rest_mm: float = field(
        default=2.0, metadata=about("how much lower one inner rest may be", at_least=0, at_most=10)
    )
    sag_limit: float = field(
        default=720.0, metadata=about("span over sag that still looks flat: 720 is L/720", above=0)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Steel:
    """The reinforcement on the rack, steel or glass fibre; ``bar_mm`` left out: mesh alone."""

    material: Literal["stainless", "plain", "glass-fibre"] = documented(
        "material of bars and mesh; stainless and glass fibre do not rust under thin cover"
    )
    mesh_wire_mm: float = above_0("wire of the mesh; of glass fibre, as thick as its section")
    mesh_pitch_mm: float = above_0("distance between wires")
    bar_mm: float | None = field(
        default=None, metadata=about("thinnest bar in stock; left out: no bars are laid", above=0)
    )
    yield_mpa: float = field(
        default=500.0,
        metadata=about(
            "0.2 % proof stress or yield; of glass fibre, what 95 in 100 reach", above=0
        ),
    )
    e_mpa: float | None = field(
        default=None,
        metadata=about(
            "its stiffness; left out: 200 000 of steel (EN 1992-1-1 3.2.7, EN 1993-1-4 2.1.3),"
            " 45 000 of glass fibre (from memory)",
            above=0,
        ),
    )
    cover_mm: float = field(
        default=15.0, metadata=about("least cover; EN 1992-1-1 table 4.4N, XC1", above=0)
    )
    stock_length_mm: float = field(
        default=3000.0, metadata=about("length of bars as bought", above=0)
    )
    bar_price: Decimal = field(
        default=Decimal(0),
        metadata=about("price of a reinforcing bar as bought, in its full length", at_least=0),
    )
    mesh_sheet_length_mm: float = above_0("longer side of a sheet of mesh")
    mesh_sheet_width_mm: float = above_0("shorter side of a sheet of mesh")
    mesh_price_per_sheet: Decimal = at_least_0("price of a sheet of mesh")

    @property
    def rusts(self) -> bool:
        """Whether it wants its cover against rust."""
        return self.material == "plain"


@dataclass(frozen=True, slots=True, kw_only=True)
class Lifting:
    """What people carry here, on edge with clamps on a level floor. Not a safe limit."""

    kg_per_person: float = field(
        metadata=about("share of one person; a lift above it is assessed first", above=0)
    )
    most_people: int = field(metadata=about("most people round one slab", at_least=1, at_most=8))
    tail_lift_kg: float = field(
        default=750.0, metadata=about("most that the carrier's tail lift sets down", above=0)
    )
    pallets: tuple[Pallet, ...] = documented("pallets that the carrier takes, the cheapest first")
    van: Van | None = field(
        default=None, metadata=about("your own van; without it nothing is said of what fits")
    )
