"""When hands work, how long things take and what they cost."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from typing import Literal

from ledgerstone.workshop.records._keys import about, above_0, at_least_0, documented


@dataclass(frozen=True, slots=True, kw_only=True)
class DaySettings:
    """Waits, in days; strength at demoulding is checked against the first."""

    under_cover: float = above_0("from pouring to demoulding, at least")
    drying: float = at_least_0("from finishing to the first coat of sealer")
    after_sealing: float = at_least_0("from the last coat of sealer to packing")
    bead_hours: float = field(
        default=12.0,
        metadata=about("hours until the bead has skinned and cured: overnight", at_least=0),
    )
    release_hours: float = field(
        default=0.5, metadata=about("hours that release agent stands before the pour", at_least=0)
    )
    slurry_hours: float = field(
        default=24.0,
        metadata=about("hours that slurry hardens in the voids before the next grit", at_least=0),
    )
    strip_hours: float = field(
        default=24.0,
        metadata=about("hours from sealing the test strip until it is looked at", at_least=0),
    )
    buffer: int = field(metadata=about("working days in hand before the promised day", at_least=0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Rates:
    """What hours and small things cost, and how materials are charged."""

    hour: Decimal = at_least_0("an hour of hands, before your markup")
    machine_hour: Decimal = at_least_0("an hour of mixer and polisher")
    steel_kg_per_m2: float = at_least_0("mass of steel in a square metre of slab")
    consumables_per_m2: Decimal = at_least_0("gloves, blades, film")
    margin_percent: Decimal = field(
        metadata=about(
            "markup on cost, of all but delivery: at 40, a cost of 100 is asked as 140",
            at_least=0,
            at_most=500,
        )
    )
    packs: Literal["whole", "by-use"] = field(
        default="by-use",
        metadata=about("what an order pays for, of what comes in packs"),
    )
    offcuts_percent: float = field(
        default=0.0,
        metadata=about(
            "waste of boards, foam, strip and steel, where use is paid for",
            at_least=0,
            at_most=200,
        ),
    )
    recast_percent: float = field(
        default=0.0,
        metadata=about("pieces that are cast twice", at_least=0, at_most=100),
    )
    recast_percent_per_m2: float = field(
        default=0.0,
        metadata=about(
            "more that are cast twice, for each square metre of a piece beyond the first",
            at_least=0,
            at_most=100,
        ),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Closure:
    """Days on which no work is done, both ends included."""

    first: date = documented("first day")
    last: date = documented("last day")
    why: str = documented("reason, in a word")


@dataclass(frozen=True, slots=True, kw_only=True)
class Calendar:
    """When hands work."""

    weekdays: tuple[
        Literal["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"], ...
    ] = documented("days that are worked")
    hours_per_day: float = field(metadata=about("hours of a working day", above=0, at_most=16))
    hands: int = field(metadata=about("people at work", at_least=1, at_most=10))
    orders_ahead_days: int = field(
        metadata=about("working days already taken, where no calendar is read", at_least=0)
    )
    holidays_added: tuple[str, ...] = field(
        default=(),
        metadata=about("days off each year beside the public holidays, by month and day: 08-15"),
    )
    holidays_worked: tuple[str, ...] = field(
        default=(), metadata=about("public holidays that are worked, by name: Columbus Day")
    )
    closures: tuple[Closure, ...] = field(
        default=(), metadata=about("days that the workshop is shut")
    )
