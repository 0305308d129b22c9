"""What one maker can do, charges and stocks: frozen records, one for each table of the profile.

The loader builds its checks from these records: a field's type says what may stand there, its
``metadata`` the bounds (``at_least``, ``above``, ``at_most``) and, as ``about``, the comment that
the starting profile prints beside it. A field with a default may be left out of the profile.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from typing import Any, Literal

from ledgerstone.order import Place, Profile, Surface


def _about(about: str, **bounds: Any) -> dict[str, Any]:  # noqa: ANN401  bounds may be any number
    return {"about": about, **bounds}


def _above_0(about: str) -> Any:  # noqa: ANN401  dataclasses.field is typed by its use
    return field(metadata=_about(about, above=0))


def _at_least_0(about: str) -> Any:  # noqa: ANN401  as above
    return field(metadata=_about(about, at_least=0))


def _percent(about: str) -> Any:  # noqa: ANN401  as above
    return field(metadata=_about(about, at_least=0, at_most=100))


def _said(about: str) -> Any:  # noqa: ANN401  as above
    return field(metadata=_about(about))


@dataclass(frozen=True, slots=True, kw_only=True)
class Identity:
    """Whose workshop it is."""

    name: str = _said("the name customers know")
    town: str = _said("where it stands")
    country: str = _said("ISO 3166-1 letters, for public holidays and postcodes: GB")
    region: str = _said("ISO 3166-2 part, for public holidays: ENG, SCT, WLS, NIR")
    timezone: str = _said("IANA name: Europe/London")
    currency: str = _said("ISO 4217 letters: GBP")
    email: str = _said("where customers write")
    telephone: str = _said("where customers ring")


@dataclass(frozen=True, slots=True, kw_only=True)
class CastingTable:
    """What one piece may measure."""

    length_mm: float = _above_0("longest side that can be cast")
    width_mm: float = _above_0("shorter side that can be cast")
    count: int = field(default=1, metadata=_about("tables of this size", at_least=1))


@dataclass(frozen=True, slots=True, kw_only=True)
class StripRule:
    """How wide the concrete beside an opening must stay; the first rule that fits is used."""

    beside: str = _said("what the opening is, in words: a tap hole")
    opening_up_to_mm: float = field(
        default=20_000.0, metadata=_about("the opening's longer side, at most", above=0)
    )
    rim: Literal["shown", "covered", "any"] = field(
        default="any", metadata=_about("shown, covered or any")
    )
    stops_mm: float = _at_least_0("narrower than this is not made")
    cautions_mm: float = _at_least_0("narrower than this is made with care")


@dataclass(frozen=True, slots=True, kw_only=True)
class Shaping:
    """What shapes the workshop makes."""

    thicknesses_mm: tuple[float, ...] = _above_0("thicknesses the mould sides are stocked in")
    thinnest_mm: float = _above_0("thinner is not made")
    thickest_mm: float = _above_0("thicker is not made")
    smallest_side_mm: float = _above_0("a slab's shorter side, at least")
    inside_radius_mm: float = _at_least_0("smallest radius a former gives an inside corner")
    fitting_gap_mm: float = _at_least_0("taken off each wall side of a slab between walls")
    strips: tuple[StripRule, ...] = _said("widths of concrete beside openings")


@dataclass(frozen=True, slots=True, kw_only=True)
class Recipe:
    """The concrete, as it is mixed here."""

    name: str = _said("what the batch card calls it")
    cement: Literal["grey", "white"] = _said("grey or white")
    cement_class: Literal["R", "N", "S"] = _said("EN 1992-1-1 3.1.2(6): R rapid, N normal, S slow")
    fck_mpa: float = field(
        metadata=_about("characteristic cylinder strength at 28 days", at_least=12, at_most=90)
    )
    cement_kg_per_m3: float = _above_0("cement in a cubic metre placed")
    water_cement_ratio: float = field(
        metadata=_about("free water over cement", at_least=0.2, at_most=0.8)
    )
    largest_aggregate_mm: float = _above_0("largest grain")
    air_percent: float = _percent("air in the fresh concrete")
    density_kg_per_m3: float = field(
        metadata=_about("hardened, without steel", at_least=1500, at_most=3000)
    )
    price_per_m3: Decimal = _at_least_0("everything in it but pigment")
    waste_percent: float = _percent("left in the mixer and on the boots")


@dataclass(frozen=True, slots=True, kw_only=True)
class Dose:
    """How much of one pigment a shade takes."""

    pigment: str = _said("a name from [[pigments]]")
    percent: float = field(metadata=_about("of the cement's mass", above=0, at_most=15))


@dataclass(frozen=True, slots=True, kw_only=True)
class PaletteShade:
    """One shade of the palette."""

    name: str = _said("what customers call it")
    colour: str = _said("as a cast tile looks, #rrggbb")
    by_eye: bool = field(
        default=True, metadata=_about("the colour was judged by eye from a cast tile")
    )
    cement: Literal["grey", "white"] = _said("grey or white")
    doses: tuple[Dose, ...] = field(default=(), metadata=_about("pigments in it"))
    extra_per_m3: Decimal = field(
        default=Decimal(0), metadata=_about("what white cement adds to a cubic metre", at_least=0)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Pigment:
    """One pigment on the shelf."""

    name: str = _said("what the tin says it is")
    density_kg_per_m3: float = _above_0("for the volume it takes up")
    price_per_kg: Decimal = _at_least_0("bought loose")


@dataclass(frozen=True, slots=True, kw_only=True)
class FinishOffered:
    """One surface the workshop makes."""

    surface: Surface = _said("as-cast, honed or polished")
    says: str = _said("one line for customers")
    hours_per_m2: float = _at_least_0("hands, all grits and void filling together")
    consumables_per_m2: Decimal = _at_least_0("pads, slurry")
    days: int = field(metadata=_about("working days between demoulding and sealing", at_least=0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Sealer:
    """One sealer the workshop uses."""

    name: str = _said("what customers choose")
    says: str = _said("one line for customers")
    kind: Literal["penetrating", "film"] = _said("penetrating or film")
    places: tuple[Place, ...] = _said("where its own sheet allows it")
    coats: int = field(metadata=_about("coats", at_least=1, at_most=10))
    coverage_m2_per_l: float = _above_0("a litre covers, one coat")
    price_per_l: Decimal = _at_least_0("bought by the litre")
    hours_per_m2_coat: float = _at_least_0("hands, each coat")
    youngest_days: int = field(metadata=_about("concrete's age before the first coat", at_least=0))
    heat_limit_c: float = _above_0("hottest its own sheet allows")
    food_declared: bool = _said("its maker declares it for food contact")


@dataclass(frozen=True, slots=True, kw_only=True)
class EdgeOffered:
    """One edge profile the workshop makes."""

    profile: Profile = _said("square, bevel, round or wall")
    hours_per_m: float = _at_least_0("hands")
    smallest_mm: float = field(default=0.0, metadata=_about("smallest size", at_least=0))
    largest_mm: float = field(default=0.0, metadata=_about("largest size", at_least=0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Hours:
    """Rules for hours of hands."""

    set_up_per_order: float = _at_least_0("drawings, boards, clearing the table: once an order")
    mould_per_slab: float = _at_least_0("base board and squaring up")
    mould_per_m: float = _at_least_0("side strips and bead, each metre of outline")
    cutout: float = _at_least_0("one knockout former, made and fixed")
    relief: float = _at_least_0("one relief's former")
    drop_per_m: float = _at_least_0("a downstand, each metre")
    steel_per_m2: float = _at_least_0("mesh and bars")
    pour_per_slab: float = _at_least_0("batching and cleaning out")
    pour_per_m2: float = _at_least_0("face coat, back-fill, strike off")
    demould_per_slab: float = _at_least_0("turning, sides off, washing")
    cutout_trim: float = _at_least_0("knockout out, arris dressed, each")
    pack_per_slab: float = _at_least_0("crate or pallet")


@dataclass(frozen=True, slots=True, kw_only=True)
class Days:
    """Waits, in days; strength at demoulding is checked against the first."""

    under_cover: float = _above_0("from pouring to demoulding, at least")
    drying: float = _at_least_0("from finishing to the first coat of sealer")
    after_sealing: float = _at_least_0("before packing")
    buffer: int = field(metadata=_about("working days in hand before the promised day", at_least=0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Rates:
    """What hours, boards and steel cost."""

    hour: Decimal = _at_least_0("one hour of hands")
    machine_hour: Decimal = _at_least_0("mixer and polisher, each hour of finishing")
    mould_board_per_m2: Decimal = _at_least_0("melamine board and sides")
    steel_per_m2: Decimal = _at_least_0("mesh and bars, each square metre of slab")
    steel_kg_per_m2: float = _at_least_0("mass of that steel")
    packing_per_slab: Decimal = _at_least_0("crate, film, corner guards")
    consumables_per_m2: Decimal = _at_least_0("release agent, gloves, blades")
    margin_percent: Decimal = field(
        metadata=_about("on everything but delivery", at_least=0, at_most=500)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Tax:
    """What tax is shown."""

    registered: bool = _said("a workshop that is not registered shows and charges none")
    name: str = _said("VAT")
    percent: Decimal = _percent("the rate for slabs and their delivery")


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer:
    """How a price is offered."""

    standing: Literal["estimate", "quotation"] = _said("what a price from the page is")
    valid_days: int = field(metadata=_about("days it stands", at_least=1, at_most=365))
    deposit_percent: Decimal = _percent("of the total")
    round_to: Decimal = _above_0("the total steps by this")
    smallest_order: Decimal = _at_least_0("before delivery and tax")
    revoke_before: date | None = field(
        default=None, metadata=_about("links issued before this day no longer stand")
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Area:
    """Where the workshop delivers, and for how much; the first area that fits is used."""

    name: str = _said("what customers call it")
    postcodes: tuple[str, ...] = _said("beginnings: HR, LD1, LD1-6")
    pallet: Decimal | None = field(default=None, metadata=_about("to the kerb", at_least=0))
    own_van: Decimal | None = field(default=None, metadata=_about("to the door", at_least=0))
    fitted: Decimal | None = field(default=None, metadata=_about("carried in", at_least=0))
    fitting_per_slab: Decimal = field(
        default=Decimal(0), metadata=_about("added for fitting, each slab", at_least=0)
    )
    days: int = field(default=2, metadata=_about("working days on the road", at_least=0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Closure:
    """Days on which nobody works, both ends included."""

    first: date = _said("first day shut")
    last: date = _said("last day shut")
    why: str = _said("in a word")


@dataclass(frozen=True, slots=True, kw_only=True)
class Calendar:
    """When hands work."""

    weekdays: tuple[
        Literal["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"], ...
    ] = _said("days that are worked")
    hours_per_day: float = field(metadata=_about("of one pair of hands", above=0, at_most=16))
    hands: int = field(metadata=_about("pairs of hands", at_least=1, at_most=10))
    orders_ahead_days: int = field(
        metadata=_about("working days of work already taken on", at_least=0)
    )
    closures: tuple[Closure, ...] = field(default=(), metadata=_about("holidays of our own"))


@dataclass(frozen=True, slots=True, kw_only=True)
class StripTest:
    """One strip of this recipe, broken over two trestles."""

    age_days: float = _above_0("the strip's age when it broke")
    width_mm: float = _above_0("across")
    thickness_mm: float = _above_0("top to bottom")
    span_mm: float = _above_0("between the trestles")
    load_n: float = _above_0("what broke it, hung at the middle, in newtons (kg × 9.81)")


@dataclass(frozen=True, slots=True, kw_only=True)
class Concrete:
    """How far the concrete is trusted."""

    partial_factor: float = field(
        default=1.5, metadata=_about("EN 1992-1-1 2.4.2.4: 1.5; accidental 1.2", at_least=1.0)
    )
    accidental_factor: float = field(
        default=1.2, metadata=_about("EN 1992-1-1 2.4.2.4, accidental", at_least=1.0)
    )
    untested_percent: float = field(
        default=100.0,
        metadata=_about(
            "of the EN strength that is trusted while no strip was tested: 100 for a recipe by"
            " the standard, 70 for a bagged, fibre or heavily pigmented one",
            above=0,
            at_most=100,
        ),
    )
    tested: tuple[StripTest, ...] = field(default=(), metadata=_about("strips broken here"))


@dataclass(frozen=True, slots=True, kw_only=True)
class Way:
    """One way the workshop can get a slab out of its mould and onto its pallet."""

    name: str = _said("what the job sheet calls it")
    most_kg: float = _above_0("heaviest piece, with its mould, that this way handles")
    people: int = field(metadata=_about("hands it takes", at_least=1, at_most=12))
    held: Literal["on-edge", "flat"] = _said(
        "on-edge: tipped up about a long side; flat: lifted level by gear at two lines"
    )
    sides_on: bool = _said("mould sides and formers stay in until it stands on edge")
    rail: bool = field(
        default=False, metadata=_about("a stiff rail is clamped across openings while it moves")
    )
    later_days: float = field(
        default=0.0, metadata=_about("days under cover beyond the usual", at_least=0)
    )
    hours: float = _at_least_0("hours of hands beyond the usual, each slab")
    price: Decimal = field(default=Decimal(0), metadata=_about("hire of gear", at_least=0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Handling:
    """How a slab is moved while it is young; the ways stand from the plainest on."""

    out_of_mould_factor: float = field(
        default=1.3,
        metadata=_about("on own weight; precast practice, from memory", at_least=1.0),
    )
    adhesion_n_per_m2: float = field(
        default=1000.0, metadata=_about("pull of an oiled mould; lifting-anchor manual", at_least=0)
    )
    carried_factor: float = field(
        default=1.5, metadata=_about("on own weight; precast practice, from memory", at_least=1.0)
    )
    pallet_factor: float = field(
        default=1.5, metadata=_about("on own weight; precast practice, from memory", at_least=1.0)
    )
    mould_kg_per_m2: float = _at_least_0("base board, sides and formers, each square metre")
    workshop_c: tuple[float, ...] = field(
        metadata=_about("temperature of the shed, January to December", at_least=-5, at_most=45)
    )
    longest_cover_days: float = _above_0("a slab stays in its mould no longer than this")
    ways: tuple[Way, ...] = _said("ways of moving a slab, the plainest first")


@dataclass(frozen=True, slots=True, kw_only=True)
class Loads:
    """What a slab must bear in place: the workshop's own choice, not a rule."""

    even_n_per_m2: float = field(
        default=1500.0, metadata=_about("spread over the slab; our judgement", at_least=0)
    )
    point_n: float = field(
        default=1000.0,
        metadata=_about("a person sitting, anywhere; our judgement", at_least=0),
    )
    point_side_mm: float = field(
        default=100.0, metadata=_about("on a square of this side", above=0)
    )
    standing_n: float = field(
        default=1500.0,
        metadata=_about("a person standing, as an accident; our judgement", at_least=0),
    )
    low_rest_mm: float = field(
        default=2.0, metadata=_about("how low one inner rest may be", at_least=0, at_most=10)
    )
    sag_limit: float = field(
        default=720.0, metadata=_about("span over sag that looks flat: L/720", above=0)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Steel:
    """The reinforcement on the rack."""

    stainless: bool = _said("stainless or glass fibre: may be used outdoors and in wet rooms")
    mesh_wire_mm: float = _above_0("wire of the mesh")
    mesh_pitch_mm: float = _above_0("between wires")
    bar_mm: float = _above_0("thinnest bar kept")
    yield_mpa: float = field(default=500.0, metadata=_about("0.2 % proof or yield", above=0))
    cover_mm: float = field(
        default=15.0, metadata=_about("least cover; EN 1992-1-1 table 4.4N, XC1", above=0)
    )
    stock_length_mm: float = _above_0("bars as bought")


@dataclass(frozen=True, slots=True, kw_only=True)
class Lifting:
    """What people carry here, on edge with clamps on a level floor. Not a safe limit."""

    kg_per_person: float = field(
        metadata=_about("share of one person; a lift above it is assessed first", above=0)
    )
    most_people: int = field(metadata=_about("hands round one slab", at_least=1, at_most=8))
    pallet_kg: float = _at_least_0("the pallet itself")
    crate_kg_per_slab: float = _at_least_0("crate, foam and straps, each slab")
    pallet_length_mm: float = _above_0("longest piece the carrier takes on a pallet")
    pallet_most_kg: float = _above_0("heaviest pallet the carrier takes")


@dataclass(frozen=True, slots=True, kw_only=True)
class Web:
    """Where the page stands and who may ask."""

    base_url: str = _said("the service's own address, for links")
    page_url: str = _said("the page that opens a link")
    origins: tuple[str, ...] = field(default=(), metadata=_about("sites whose pages may ask"))


@dataclass(frozen=True, slots=True, kw_only=True)
class Workshop:
    """The whole profile of one maker."""

    workshop: Identity = _said("whose workshop it is")
    table: CastingTable = _said("what one piece may measure")
    shaping: Shaping = _said("what shapes are made")
    recipe: Recipe = _said("the concrete")
    palette: tuple[PaletteShade, ...] = _said("shades offered")
    pigments: tuple[Pigment, ...] = _said("pigments on the shelf")
    finishes: tuple[FinishOffered, ...] = _said("surfaces offered")
    sealers: tuple[Sealer, ...] = _said("sealers offered")
    edges: tuple[EdgeOffered, ...] = _said("edge profiles offered")
    hours: Hours = _said("rules for hours of hands")
    days: Days = _said("waits")
    rates: Rates = _said("what things cost")
    tax: Tax = _said("tax")
    offer: Offer = _said("how a price is offered")
    areas: tuple[Area, ...] = _said("delivery areas")
    calendar: Calendar = _said("when hands work")
    concrete: Concrete = _said("how far the concrete is trusted")
    handling: Handling = _said("how a young slab is moved")
    loads: Loads = _said("what a slab must bear in place")
    steel: Steel = _said("the reinforcement on the rack")
    lifting: Lifting = _said("what people carry")
    web: Web = _said("where the page stands")
    fingerprint: str = field(default="", metadata={"computed": True})
