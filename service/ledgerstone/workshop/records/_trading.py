"""Whose workshop it is, and how it trades."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from typing import Literal

from ledgerstone.workshop.records._keys import about, above_0, at_least_0, documented, percentage


@dataclass(frozen=True, slots=True, kw_only=True)
class Identity:
    """Whose workshop it is."""

    name: str = documented("the name customers know")
    town: str = documented("the town it stands in")
    country: str = documented("two letters of your country, for holidays and postcodes: <country>")
    region: str = field(
        default="",
        metadata=about(
            "letters of your part of the country, for its holidays: <regions>; left out,"
            " those of the whole country"
        ),
    )
    timezone: str = documented("your clock, by continent and city: <clock>")
    currency: str = documented("three letters of your currency: <currency>")
    email: str = documented("email address that customers write to")
    telephone: str = documented("telephone number that customers ring")
    reached: str = field(
        default="",
        metadata=about("when you can be reached, as customers read it: Monday to Friday, 8 to 17"),
    )
    language: Literal["en", "de"] = field(
        default="en", metadata=about("language for customers who ask for no other")
    )
    also_in: tuple[Literal["en", "de"], ...] = field(
        default=(),
        metadata=about("other languages that your page offers, beside those spoken there: en, de"),
    )
    demonstration: bool = field(
        default=False, metadata=about("whether this is the invented workshop, for show")
    )

    @property
    def ring(self) -> str:
        """Where customers ring, and when."""
        return f"{self.telephone} ({self.reached})" if self.reached else self.telephone


@dataclass(frozen=True, slots=True, kw_only=True)
class Tax:
    """What tax is shown."""

    registered: bool = documented(
        "whether tax is charged: a workshop that is not registered charges none"
    )
    name: str = documented("name of the tax")
    percent: Decimal = percentage("tax on slabs and their delivery, and on what is collected")
    shown: Literal["included", "before-tax"] = field(
        default="included",
        metadata=about("amounts in customers' sentences"),
    )
    fitted_percent: Decimal | None = field(
        default=None,
        metadata=about("rate for what you deliver and fit, if another", at_least=0, at_most=100),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer:
    """How a price is offered."""

    standing: Literal["estimate", "quotation"] = documented("what a price from the page is")
    valid_days: int = field(metadata=about("days that a price stands", at_least=1, at_most=365))
    deposit_percent: Decimal = percentage("deposit, of the total")
    round_to: Decimal = above_0("step that the total is rounded to")
    smallest_order: Decimal = at_least_0("smallest order: before delivery, services and tax")
    deposit_round_to: Decimal = field(
        default=Decimal("0.01"), metadata=about("step that the deposit is rounded to", above=0)
    )
    deposit_days: int = field(
        default=3,
        metadata=about(
            "working days to pay the deposit in, while its day is kept", at_least=1, at_most=30
        ),
    )
    payment: str | None = field(
        default=None, metadata=about("how a deposit is paid, as customers read it")
    )
    balance_due: str | None = field(
        default=None, metadata=about("when the rest is due: before it leaves us")
    )
    revoke_before: date | None = field(
        default=None, metadata=about("day before which links no longer stand")
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class DeliveryArea:
    """Where the workshop delivers, and for how much; the first area that fits is used."""

    name: str = documented("name for customers")
    postcodes: tuple[str, ...] = documented("beginnings of its postcodes: <postcodes>")
    pallet: Decimal | None = field(
        default=None,
        metadata=about("price of a pallet, to the kerb; left out: none is sent", at_least=0),
    )
    own_van: Decimal | None = field(
        default=None,
        metadata=about("price of your own van, to the door; left out: none goes", at_least=0),
    )
    fitted: Decimal | None = field(
        default=None, metadata=about("price delivered and fitted; left out: not done", at_least=0)
    )
    fitting_per_slab: Decimal = field(
        default=Decimal(0), metadata=about("added for fitting, each slab", at_least=0)
    )
    days: int = field(default=2, metadata=about("working days on the road", at_least=0))
    tax_percent: Decimal | None = field(
        default=None,
        metadata=about("tax on what is sent there, if another", at_least=0, at_most=100),
    )
    fitted_tax_percent: Decimal | None = field(
        default=None,
        metadata=about("tax on what is fitted there, if another", at_least=0, at_most=100),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Services:
    """What is done beside the making: before tax, and without a margin."""

    templating_visit: Decimal = field(
        default=Decimal(0),
        metadata=about("visit to measure, where one is ordered or you fit", at_least=0),
    )
    templating_per_slab: Decimal = field(
        default=Decimal(0), metadata=about("added for each piece measured", at_least=0)
    )
    cover_percent: Decimal = field(
        default=Decimal(0),
        metadata=about("cover while a carrier has it, of its value", at_least=0, at_most=100),
    )
    cover_least: Decimal = field(
        default=Decimal(0), metadata=about("least that cover costs", at_least=0)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Sample:
    """A tile of the recipe, cast before the order: sold, and credited when the order goes ahead."""

    price: Decimal = at_least_0("price of a tile, before tax, without a markup")
    hours: float = at_least_0("hours to cast, finish and send one")
    litres: float = above_0("litres of concrete in a tile")
    ready_days: float = at_least_0("days from its pour until it is with the customer")
    yes_days: float = at_least_0("days that the customer is given to say yes")
    always_from: Decimal | None = field(
        default=None,
        metadata=about(
            "value of an order, before delivery and tax, from which tiles are always made",
            above=0,
        ),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Web:
    """Where the page stands and who may ask."""

    base_url: str = documented("address of the service itself, for pictures in letters")
    page_url: str = documented("page that a link opens")
    origins: tuple[str, ...] = field(default=(), metadata=about("other sites whose pages may ask"))
