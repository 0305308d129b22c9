"""Public holidays by country and part, with the names they have there in English."""

from __future__ import annotations

import re
from collections.abc import Mapping
from datetime import date
from functools import lru_cache
from types import MappingProxyType
from typing import Final

import holidays
from holidays import registry

from ledgerstone.message import Message

# The two letters of each country whose holidays are known, by its other names, in small letters.
_LETTERS: Final = {
    name.casefold(): letters
    for names, letters in ((entity, entity[1]) for entity in registry.COUNTRIES.values())
    for name in names
}
_AS_SAID: Final = {
    "america": "US",
    "deutschland": "DE",
    "england": "GB",
    "greatbritain": "GB",
    "northernireland": "GB",
    "österreich": "AT",
    "schweiz": "CH",
    "scotland": "GB",
    "unitedstatesofamerica": "US",
    "wales": "GB",
}
COUNTRIES: Final = frozenset(_LETTERS.values())
_YEARS: Final = range(2026, 2030)  # movable and observed ones come up within these


@lru_cache(maxsize=256)
def public_holidays(country: str, year: int) -> Mapping[date, str]:
    """Return a year's public holidays by their days; what the calendar of days is made of."""
    nation, _, part = country.partition("-")
    found = holidays.country_holidays(
        nation, subdiv=part or None, years=year, expand=False, language=_names_in(nation)
    )
    return MappingProxyType({day: str(name) for day, name in found.items()})


@lru_cache(maxsize=32)
def _names_in(nation: str) -> str | None:
    """English names where there are some, so that they are the same on every machine."""
    known = holidays.country_holidays(nation).supported_languages
    return next((language for language in ("en_GB", "en_US") if language in known), None)


def country_meant(name: str) -> str:
    """Return the two letters of a country that is named in another way; empty if none is.

    By three letters or its name, in English and where we speak German: ``USA``, ``Germany``.
    """
    said = re.sub(r"[\W_]", "", name).casefold()
    return _LETTERS.get(said) or _AS_SAID.get(said, "")


def country_fault(name: str) -> Message:
    """Say that what stands for a country is none of our two letters, and which were meant."""
    guess = country_meant(name)
    near = "guess" if guess else "none"
    return Message("fault-country", land=name, near=near, guess=guess, known="")


def parts_of(country: str) -> tuple[str, ...]:
    """Return the letters of a country's parts whose holidays are known."""
    return tuple(holidays.country_holidays(country).subdivisions) if country in COUNTRIES else ()


def part_named(name: str, country: str) -> str | None:
    """Return the letters of a country's part by its name, or by its letters; None if unknown."""
    if country not in COUNTRIES:
        return None
    aliases = getattr(holidays.country_holidays(country), "subdivisions_aliases", {})
    letters = {part.casefold(): part for part in parts_of(country)}
    letters |= {alias.casefold(): part for alias, part in aliases.items()}
    return letters.get(name.strip().casefold())


def holiday_names(country: str) -> tuple[str, ...]:
    """Return the names of a place's public holidays; of two on one day both."""
    every = (public_holidays(country, year).values() for year in _YEARS)
    names = {name.strip() for year in every for both in year for name in both.split(";")}
    return tuple(sorted(names))


def is_holiday(name: str, known: tuple[str, ...]) -> bool:
    """Return whether a name is that of a known holiday, in capital or small letters."""
    return name.casefold() in {known_name.casefold() for known_name in known}


@lru_cache(maxsize=64)
def is_kept_elsewhere(name: str, country: str) -> bool:
    """Return whether some part of a country, or the whole, has a holiday of this name."""
    places = (country, *(f"{country}-{part}" for part in parts_of(country)))
    return any(is_holiday(name, holiday_names(place)) for place in places)
