"""Whose workshop it is, and how it trades."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from typing import Literal

from ledgerstone.workshop._keys import about, above_0, at_least_0, documented, percentage


@dataclass(frozen=True, slots=True, kw_only=True)
class Identity:
    """Whose workshop it is."""

    name: str = documented("the name customers know")
    town: str = documented("where it stands")
    country: str = documented("ISO 3166-1 letters, for public holidays and postcodes: GB")
    region: str = documented("ISO 3166-2 part, for public holidays: ENG, SCT, WLS, NIR")
    timezone: str = documented("IANA name: Europe/London")
    currency: str = documented("ISO 4217 letters: GBP")
    email: str = documented("where customers write")
    telephone: str = documented("where customers ring")
    language: Literal["en", "de"] = field(
        default="en", metadata=about("what customers read where they ask for no other")
    )
    demonstration: bool = field(
        default=False, metadata=about("whether this is the invented workshop, for show")
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Tax:
    """What tax is shown."""

    registered: bool = documented("a workshop that is not registered shows and charges none")
    name: str = documented("VAT")
    percent: Decimal = percentage("the rate for slabs and their delivery, and of what is collected")
    shown: Literal["included", "before-tax"] = field(
        default="included",
        metadata=about("amounts in customers' sentences: with the tax in them, or before it"),
    )
    fitted_percent: Decimal | None = field(
        default=None,
        metadata=about("the rate of what we deliver and fit, if another", at_least=0, at_most=100),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer:
    """How a price is offered."""

    standing: Literal["estimate", "quotation"] = documented("what a price from the page is")
    valid_days: int = field(metadata=about("days it stands", at_least=1, at_most=365))
    deposit_percent: Decimal = percentage("of the total")
    round_to: Decimal = above_0("the total steps by this")
    smallest_order: Decimal = at_least_0("of the goods: before delivery, services and tax")
    deposit_round_to: Decimal = field(
        default=Decimal("0.01"), metadata=about("the deposit steps by this", above=0)
    )
    payment: str | None = field(
        default=None, metadata=about("how a deposit is paid, as customers read it")
    )
    balance_due: str | None = field(
        default=None, metadata=about("when the rest is due: before it leaves us")
    )
    revoke_before: date | None = field(
        default=None, metadata=about("links issued before this day no longer stand")
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Area:
    """Where the workshop delivers, and for how much; the first area that fits is used."""

    name: str = documented("what customers call it")
    postcodes: tuple[str, ...] = documented("beginnings: HR, LD1, LD1-6")
    pallet: Decimal | None = field(default=None, metadata=about("to the kerb", at_least=0))
    own_van: Decimal | None = field(default=None, metadata=about("to the door", at_least=0))
    fitted: Decimal | None = field(default=None, metadata=about("carried in", at_least=0))
    fitting_per_slab: Decimal = field(
        default=Decimal(0), metadata=about("added for fitting, each slab", at_least=0)
    )
    days: int = field(default=2, metadata=about("working days on the road", at_least=0))
    tax_percent: Decimal | None = field(
        default=None,
        metadata=about("the tax of what is sent there, if another", at_least=0, at_most=100),
    )
    fitted_tax_percent: Decimal | None = field(
        default=None,
        metadata=about("the tax of what is fitted there, if another", at_least=0, at_most=100),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Services:
    """What is done beside the making: before tax, and without a margin."""

    templating_visit: Decimal = field(
        default=Decimal(0),
        metadata=about("a visit to measure, where one is ordered or we fit", at_least=0),
    )
    templating_per_slab: Decimal = field(
        default=Decimal(0), metadata=about("added for each piece measured", at_least=0)
    )
    cover_percent: Decimal = field(
        default=Decimal(0),
        metadata=about(
            "cover while a carrier has it, of what it is worth", at_least=0, at_most=100
        ),
    )
    cover_least: Decimal = field(
        default=Decimal(0), metadata=about("the least that cover costs", at_least=0)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Sample:
    """A tile of the recipe, cast before the order: sold, and credited when the order goes ahead."""

    price: Decimal = at_least_0("one tile, before tax, without a margin")
    hours: float = at_least_0("hands, to cast, finish and send one")
    litres: float = above_0("concrete for one")
    ready_days: float = at_least_0("from its pour until it is with the customer")
    yes_days: float = at_least_0("days that the customer is given to say yes")
    always_from: Decimal | None = field(
        default=None,
        metadata=about(
            "an order worth this much, before delivery and tax, has tiles whether asked for or not",
            above=0,
        ),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Web:
    """Where the page stands and who may ask."""

    base_url: str = documented("the service's own address, for links")
    page_url: str = documented("the page that opens a link")
    origins: tuple[str, ...] = field(default=(), metadata=about("sites whose pages may ask"))
