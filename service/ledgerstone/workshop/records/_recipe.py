"""The concrete, as it is mixed here: by absolute volume or by the bag."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from typing import Literal

from ledgerstone.workshop.records import proportions
from ledgerstone.workshop.records._keys import about, above_0, at_least_0, documented, percentage
from ledgerstone.workshop.records.proportions import MixPart

ConstituentRole = Literal[
    "cement", "addition", "water", "aggregate", "plasticiser", "polymer", "fibre"
]
WATER_KG_PER_M3 = 1000.0
# Cement in a dry mix whose maker states none: the middle of the 10 to 30 % that safety data sheets
# of bagged concrete give, from memory.
USUAL_CEMENT_PERCENT = 20.0


@dataclass(frozen=True, slots=True, kw_only=True)
class _Bought:
    """What every part of a recipe says of itself."""

    name: str = documented("name on the batch card")
    density_kg_per_m3: float = above_0("density of its grains or of the liquid")
    price_per_kg: Decimal = at_least_0("price as bought")
    pack_kg: float | None = field(
        default=None,
        metadata=about("contents of a bag or drum as bought; left out: bought loose", above=0),
    )
    solids_percent: float = field(
        default=100.0,
        metadata=about("solids of a liquid admixture: what is not water", at_least=0, at_most=100),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Constituent(_Bought):
    """One part of a recipe by volume; they go into the mixer in the order in which they stand."""

    role: ConstituentRole = documented("what it is in the concrete")
    kg_per_m3: float = above_0("mass in a cubic metre placed; aggregate saturated and surface-dry")
    absorption_percent: float = field(
        default=0.0,
        metadata=about(
            "water that aggregate takes up, of its oven-dry mass", at_least=0, at_most=30
        ),
    )
    moisture_percent: float = field(
        default=0.0,
        metadata=about("water in the heap, of its oven-dry mass", at_least=0, at_most=30),
    )

    @property
    def part(self) -> MixPart:
        """The part as its share of a cubic metre."""
        return MixPart(
            name=self.name,
            role=self.role,
            kg=self.kg_per_m3,
            density_kg_per_m3=self.density_kg_per_m3,
            cement_percent=100.0 if self.role == "cement" else 0.0,
            solids_percent=self.solids_percent,
            absorption_percent=self.absorption_percent,
            moisture_percent=self.moisture_percent,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Added(_Bought):
    """Something that goes into the mixer with each bag."""

    role: Literal["cement", "addition", "plasticiser", "polymer", "fibre"] = documented(
        "what it is in the concrete"
    )
    kg_per_bag: float = above_0("mass to each bag")

    @property
    def part(self) -> MixPart:
        """The part as its share of one bag's batch."""
        return MixPart(
            name=self.name,
            role=self.role,
            kg=self.kg_per_bag,
            density_kg_per_m3=self.density_kg_per_m3,
            cement_percent=100.0 if self.role == "cement" else 0.0,
            solids_percent=self.solids_percent,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Bag:
    """A recipe by the bag: dry mix as bought, and water."""

    name: str = documented("name on the bag")
    bag_kg: float = above_0("dry mix in one bag")
    cement_percent: float | None = field(
        default=None,
        metadata=about(
            "cement in the dry mix, as its maker tells; left out: 20, a usual figure",
            above=0,
            at_most=100,
        ),
    )
    water_l_per_bag: float = above_0("water to one bag")
    yield_l: float | None = field(
        default=None,
        metadata=about("litres placed from one bag, as the bag says: about 12 of 25 kg", above=0),
    )
    fresh_kg_per_m3: float | None = field(
        default=None, metadata=about("density freshly mixed, in place of the yield", above=0)
    )
    whole_bags: bool = field(
        default=False,
        metadata=about("whether a batch takes whole bags: dry mix settles in its bag"),
    )
    price_per_bag: Decimal = at_least_0("price of a bag")
    added: tuple[Added, ...] = field(default=(), metadata=about("what goes in with each bag"))

    @property
    def cement_share_percent(self) -> float:
        """Cement in the dry mix, or what is usual where it is not given."""
        return USUAL_CEMENT_PERCENT if self.cement_percent is None else self.cement_percent

    @property
    def litres(self) -> float:
        """Litres from one bag and its water, before anything is added.

        Source
        ------
        Yield = (bag + water) / fresh density; a litre of water weighs a kilogram.
        """
        if self.yield_l is not None:
            return self.yield_l
        fresh = self.fresh_kg_per_m3 or 0.0  # the profile's check asks for one of the two
        return 1000 * (self.bag_kg + self.water_l_per_bag) / fresh if fresh else 0.0

    @property
    def parts(self) -> tuple[MixPart, ...]:
        """Bag, water and additions; the bag's density is such that its air is in it."""
        solid_m3 = self.litres / 1000 - self.water_l_per_bag / WATER_KG_PER_M3
        return (
            water(self.water_l_per_bag),
            MixPart(
                name=self.name,
                role="bag",
                kg=self.bag_kg,
                density_kg_per_m3=self.bag_kg / solid_m3,
                cement_percent=self.cement_share_percent,
            ),
            *(added.part for added in self.added),
        )


def water(kg: float) -> MixPart:
    """Return so much water."""
    return MixPart(name="water", role="water", kg=kg, density_kg_per_m3=WATER_KG_PER_M3)


@dataclass(frozen=True, slots=True, kw_only=True)
class FaceCoat:
    """The first, wetter coat against the mould: its own dry parts, with water of their own."""

    thickness_mm: float = above_0("thickness over the whole face")
    water_cement_ratio: float = field(
        metadata=about("free water over cement", at_least=0.2, at_most=1.0)
    )
    without: tuple[str, ...] = field(
        default=(),
        metadata=about(
            "aggregates left out of it: grains larger than a third of its thickness show"
        ),
    )

    @property
    def largest_grain_mm(self) -> float:
        """Return the largest grain that lies down in it: a third of its thickness."""
        return self.thickness_mm / 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Recipe:
    """The concrete, as it is mixed here: ``constituents`` by volume, or ``bag`` by the bag."""

    name: str = documented("name on the batch card")
    cement: Literal["grey", "white"] = documented("the cement's colour")
    cement_class: Literal["R", "N", "S"] = documented(
        "how fast the cement hardens; EN 1992-1-1 3.1.2(6)"
    )
    fck_mpa: float = field(
        metadata=about(
            "characteristic cylinder strength at 28 days, of the weaker of face coat and backing",
            at_least=12,
            at_most=90,
        )
    )
    largest_aggregate_mm: float = above_0("largest grain")
    air_percent: float = field(
        metadata=about(
            "air in the fresh concrete; by the bag it is in the yield", at_least=0, at_most=15
        )
    )
    waste_percent: float = percentage("concrete lost in the mixer and on tools")
    weighed_kg_per_m3: float | None = field(
        default=None,
        metadata=about(
            "density hardened, as weighed on a slab, without steel; left out: as fresh",
            at_least=1500,
            at_most=3000,
        ),
    )
    constituents: tuple[Constituent, ...] = field(
        default=(), metadata=about("recipe by volume: what is in a cubic metre")
    )
    bag: Bag | None = field(
        default=None, metadata=about("recipe from the bag, in place of one by volume")
    )
    face_coat: FaceCoat | None = field(
        default=None, metadata=about("the wetter coat against the mould, where one is laid")
    )

    @property
    def parts(self) -> tuple[MixPart, ...]:
        """The parts of one cubic metre, closed exactly; without pigment."""
        if self.bag is not None:
            return proportions.scaled_to_1_m3(self.bag.parts, 0.0)
        parts = tuple(constituent.part for constituent in self.constituents)
        return proportions.filled_to_1_m3(parts, self.air_percent)

    @property
    def unfilled_percent(self) -> float:
        """Air that the parts themselves leave out: none by the bag, whose yield holds it."""
        return 0.0 if self.bag is not None else self.air_percent

    @property
    def cement_kg_per_m3(self) -> float:
        """Cement in a cubic metre placed."""
        return proportions.cement_kg(self.parts)

    @property
    def water_cement_ratio(self) -> float:
        """Free water over cement by mass, some admixtures' water counted.

        Source
        ------
        EN 206 5.2.6, for the admixtures.
        """
        return proportions.water_cement_ratio(self.parts, self.unfilled_percent)

    @property
    def fresh_kg_per_m3(self) -> float:
        """Density freshly mixed, without pigment."""
        return proportions.fresh_kg_per_m3(self.parts, self.unfilled_percent)

    @property
    def density_kg_per_m3(self) -> float:
        """Density hardened, without steel: as weighed, else as heavy as fresh (the safe side)."""
        return self.weighed_kg_per_m3 or self.fresh_kg_per_m3

    @property
    def price_per_m3(self) -> Decimal:
        """Price of everything in a cubic metre but pigment."""
        if self.bag is not None:
            extra = sum((_price(a.price_per_kg, a.kg_per_bag) for a in self.bag.added), Decimal(0))
            litres = 1000 * proportions.volume_m3(self.bag.parts)
            return (self.bag.price_per_bag + extra) * 1000 / Decimal(repr(round(litres, 9)))
        prices = {c.name: c.price_per_kg for c in self.constituents}
        return sum((_price(prices[part.name], part.kg) for part in self.parts), Decimal(0))


def _price(per_kg: Decimal, kg: float) -> Decimal:
    return per_kg * Decimal(repr(round(kg, 9)))
