"""When hands work, how long things take and what they cost."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from typing import Literal

from ledgerstone.workshop._keys import about, above_0, at_least_0, documented, may_be_0


@dataclass(frozen=True, slots=True, kw_only=True)
class Hours:
    """Rules for hours of hands; what is left out is done within the step beside it."""

    set_up_per_order: float = at_least_0("boards, clearing the table: once an order")
    mould_per_slab: float = at_least_0("base board and squaring up")
    mould_per_m: float = at_least_0("side strips, each metre of outline")
    cutout: float = at_least_0("one knockout former, made and fixed")
    relief: float = at_least_0("one relief's former")
    drop_per_m: float = at_least_0("a downstand, each metre")
    steel_per_m2: float = at_least_0("mesh, cut and tied")
    bar: float = field(
        default=0.05, metadata=about("each bar beside the mesh, cut and tied", at_least=0)
    )
    pour_per_slab: float = at_least_0("weighing, mixing, cleaning out")
    pour_per_m2: float = at_least_0("steel laid, back-fill")
    demould_per_slab: float = at_least_0("sides off, base off")
    cutout_trim: float = at_least_0("knockout out, arris dressed, each")
    pack_per_slab: float = at_least_0("crate or pallet")
    in_hand_per_order: float = may_be_0("templates, sinks and the signed drawing looked over")
    bead_per_m: float = may_be_0("bead, each metre of outline")
    release_per_slab: float = may_be_0("release agent wiped on")
    level_per_slab: float = may_be_0("levelled on the table")
    face_coat_per_m2: float = may_be_0("face coat, where the recipe has one")
    strike_off_per_m2: float = may_be_0("struck off and vibrated")
    cover_per_slab: float = may_be_0("damp cover laid on")
    sand_back_per_m2: float = may_be_0("the back sanded flat, where it is cast proud")
    turn_per_slab: float = may_be_0("turned over, the plainest way")
    wash_per_slab: float = may_be_0("face washed")
    fill_per_m2: float = may_be_0("voids filled, where the finish takes slurry")
    test_per_slab: float = may_be_0("tested with water, weighed")


@dataclass(frozen=True, slots=True, kw_only=True)
class Days:
    """Waits, in days; strength at demoulding is checked against the first."""

    under_cover: float = above_0("from pouring to demoulding, at least")
    drying: float = at_least_0("from finishing to the first coat of sealer")
    after_sealing: float = at_least_0("before packing")
    buffer: int = field(metadata=about("working days in hand before the promised day", at_least=0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Rates:
    """What hours and small things cost, and how materials are charged."""

    hour: Decimal = at_least_0("one hour of hands")
    machine_hour: Decimal = at_least_0("mixer and polisher, each hour of finishing")
    steel_kg_per_m2: float = at_least_0("mass of that steel")
    packing_per_slab: Decimal = at_least_0("crate, film, corner guards")
    consumables_per_m2: Decimal = at_least_0("gloves, blades, film, each square metre")
    margin_percent: Decimal = field(
        metadata=about("on everything but delivery", at_least=0, at_most=500)
    )
    packs: Literal["whole", "by-use"] = field(
        default="by-use",
        metadata=about("whole: an order pays for every pack it opens; by-use: for what it takes"),
    )
    offcuts_percent: float = field(
        default=0.0,
        metadata=about(
            "by use: what is cut off boards, foam, strip and steel and kept for nothing",
            at_least=0,
            at_most=200,
        ),
    )
    recast_percent: float = field(
        default=0.0,
        metadata=about(
            "pieces in a hundred that are cast twice, whatever they are", at_least=0, at_most=100
        ),
    )
    recast_percent_per_m2: float = field(
        default=0.0,
        metadata=about(
            "added for each square metre of a piece beyond the first", at_least=0, at_most=100
        ),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Closure:
    """Days on which nobody works, both ends included."""

    first: date = documented("first day shut")
    last: date = documented("last day shut")
    why: str = documented("in a word")


@dataclass(frozen=True, slots=True, kw_only=True)
class Calendar:
    """When hands work."""

    weekdays: tuple[
        Literal["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"], ...
    ] = documented("days that are worked")
    hours_per_day: float = field(metadata=about("of one pair of hands", above=0, at_most=16))
    hands: int = field(metadata=about("pairs of hands", at_least=1, at_most=10))
    orders_ahead_days: int = field(
        metadata=about("working days of work taken on, where no calendar is read", at_least=0)
    )
    closures: tuple[Closure, ...] = field(default=(), metadata=about("holidays of our own"))
