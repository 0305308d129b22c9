"""What the bench works with at once, and which of the calendar's entries take its time."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal

from ledgerstone.workshop.records._keys import about, at_least_0


@dataclass(frozen=True, slots=True, kw_only=True)
class Bench:
    """What the bench works with at once."""

    day_starts_at: float = field(
        default=8.0,
        metadata=about(
            "hour at which work begins; half past eight is 8½ as a decimal", at_least=0, at_most=23
        ),
    )
    mixers: int = field(
        default=1, metadata=about("mixers that run at once", at_least=1, at_most=10)
    )
    polishers: int = field(
        default=1, metadata=about("polishers that run at once", at_least=1, at_most=10)
    )
    damp_days: float | None = field(
        default=None,
        metadata=about(
            ("days of damp cover from the pour; left out: EN 13670 class 2 by warmth, from memory"),
            at_least=0,
            at_most=90,
        ),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Tent:
    """A heated tent over the casting tables, under which concrete gains its strength sooner."""

    warmth_c: float = field(
        metadata=about("warmth in it while a slab is under it", at_least=15, at_most=50)
    )
    under_cover_days: float = field(
        metadata=about("time in it from pouring to demoulding, at least", above=0, at_most=30)
    )
    hours_per_order: float = field(
        metadata=about("hours to put it up and take it down", at_least=0, at_most=24)
    )
    price_per_day: Decimal = at_least_0("price of heating the tent, each piece and day")


@dataclass(frozen=True, slots=True, kw_only=True)
class BookingRules:
    """The calendar file that the maker's own calendar exports, and what its entries hold."""

    file: str = field(metadata=about("the iCalendar file; beside the profile, or a whole path"))
    table_words: tuple[str, ...] = field(
        default=("table", "mould"),
        metadata=about("an entry whose title or category has a word that begins so holds a table"),
    )
    people_words: tuple[str, ...] = field(
        default=("away", "holiday", "fitting", "hands"),
        metadata=about("one whose title or category has a word that begins so holds all hands"),
    )
    others_hold_people: bool = field(
        default=False, metadata=about("true: every other entry holds all hands too")
    )
