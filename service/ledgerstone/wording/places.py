"""What money and which clocks a country has: Unicode's data (CLDR), as Babel has them."""

from __future__ import annotations

from babel.core import get_global
from babel.numbers import get_territory_currencies


def currency_of(country: str) -> str | None:
    """Return a country's currency, as its ISO 4217 code."""
    return next(iter(get_territory_currencies(country)), None)


def time_zones_of(country: str) -> tuple[str, ...]:
    """Return a country's time zones, by their IANA names."""
    return tuple(get_global("territory_zones").get(country, ()))
