"""What money and which clocks a country has: Unicode's data (CLDR), as Babel has them."""

from __future__ import annotations

from typing import Final

from babel.core import get_global
from babel.numbers import get_territory_currencies

# Where most people of a country with several clocks live; common knowledge, no source.
_CLOCKS: Final = {
    "ES": "Europe/Madrid",
    "PT": "Europe/Lisbon",
    "NZ": "Pacific/Auckland",
    "AU": "Australia/Sydney",
    "CA": "America/Toronto",
    "US": "America/New_York",
}


def currency_of(country: str) -> str | None:
    """Return a country's currency, as its ISO 4217 code."""
    return next(iter(get_territory_currencies(country)), None)


def currencies_of(country: str) -> tuple[str, ...]:
    """Return every currency that is legal tender in a country today, as ISO 4217 codes."""
    return tuple(get_territory_currencies(country))


def time_zones_of(country: str) -> tuple[str, ...]:
    """Return a country's time zones, by their IANA names."""
    return tuple(get_global("territory_zones").get(country, ()))


def zones_by_use(country: str) -> tuple[str, ...]:
    """Return a country's time zones, that in which most people live first."""
    usual = usual_clock(country)
    return tuple(dict.fromkeys((*((usual,) if usual else ()), *time_zones_of(country))))


def usual_clock(country: str) -> str | None:
    """Return the time zone in which most people of a country live, by its IANA name."""
    return _CLOCKS.get(country) or next(iter(time_zones_of(country)), None)
