"""A started workshop set in another country: its currency, clock and tax, and one area."""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from decimal import Decimal
from typing import Any, TypeVar, cast

from ledgerstone.wording.variants import words_of
from ledgerstone.workshop.countries import TAX_PERCENT, usual_in
from ledgerstone.workshop.countries.places import currency_of, usual_clock
from ledgerstone.workshop.records import DeliveryArea, Workshop

_Held = TypeVar("_Held")


def in_country(workshop: Workshop, country: str) -> Workshop:
    """Return a workshop with a country's money, clock and tax, and one area of its postcodes.

    Its texts are spelled as they are there.
    A tax that is not known here is none until the maker says so; where no postcodes are known
    there is no area.
    """
    if country == workshop.workshop.country:
        return workshop
    words = words_of(workshop.workshop.language, usual_in(country))
    workshop = _respelled(workshop, words.spelled)
    moved = dataclasses.replace(
        workshop.workshop,
        country=country,
        region="",
        currency=currency_of(country) or workshop.workshop.currency,
        timezone=usual_clock(country) or workshop.workshop.timezone,
    )
    percent = TAX_PERCENT.get(country)
    tax = dataclasses.replace(
        workshop.tax,
        registered=percent is not None,
        name=usual_in(country).tax_name,
        percent=Decimal(percent or 0),
    )
    calendar = dataclasses.replace(workshop.calendar, holidays_added=(), holidays_worked=())
    return dataclasses.replace(
        workshop, workshop=moved, tax=tax, calendar=calendar, areas=_areas(workshop, country)
    )


def _respelled(part: _Held, spelled: Callable[[str], str]) -> _Held:
    """Return a record, or what is in one, with each of its texts spelled another way."""
    other: Any = part
    if isinstance(part, str):
        other = spelled(part)
    elif isinstance(part, tuple):
        other = tuple(_respelled(each, spelled) for each in part)
    elif dataclasses.is_dataclass(part) and not isinstance(part, type):
        held = {each.name: getattr(part, each.name) for each in dataclasses.fields(part)}
        spelt = {name: _respelled(each, spelled) for name, each in held.items()}
        other = dataclasses.replace(part, **spelt)
    return cast("_Held", other)


def _areas(workshop: Workshop, country: str) -> tuple[DeliveryArea, ...]:
    """The first area of a workshop, with the first postcodes that a country's example begins."""
    known = usual_in(country).postcodes
    read = known.read(known.example) if known is not None else None
    if read is None:
        return ()
    beginning = read[1][:1] if read[1].isdecimal() else read[1]
    first = dataclasses.replace(workshop.areas[0], tax_percent=None, fitted_tax_percent=None)
    return (dataclasses.replace(first, postcodes=(beginning,)),)
