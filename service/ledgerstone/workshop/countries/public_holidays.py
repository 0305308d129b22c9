"""Public holidays by country and part, with the names they have there in English."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from datetime import date
from difflib import get_close_matches
from functools import lru_cache
from types import MappingProxyType
from typing import Final

import holidays
from holidays import registry

from ledgerstone.message import Message
from ledgerstone.workshop.countries.parts_called import PARTS_CALLED

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
_A_PART: Final = re.compile(
    r"\s+state$|^(?:(?:the\s+)?state\s+of|freistaat|kanton|canton\s+of|land|province\s+of)\s+",
    re.IGNORECASE,
)
_SHORTEST_NAME: Final = 4  # of letters alone none is nearly another
_ALIKE: Final = 0.75


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


def plain_name(name: str) -> str:
    """Return a name without blanks, marks and capitals: ä, ae and a are the same."""
    letters = unicodedata.normalize("NFKD", name.casefold())
    return re.sub("([aou])e", r"\1", re.sub(r"[\W_]|[\u0300-\u036f]", "", letters))


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


def parts_told(country: str) -> tuple[str, ...]:
    """Return the same for people: a part that goes by a figure has its name too, ``9 (Wien)``."""
    names = _names_of_parts(country)
    return tuple(
        f"{part} ({names[part]})" if part.isdigit() and part in names else part
        for part in parts_of(country)
    )


@lru_cache(maxsize=32)
def _names_of_parts(country: str) -> Mapping[str, str]:
    """A country's parts, and the first name of each that is no letters alone."""
    names: dict[str, str] = {}
    for name, part in _aliases(country).items():
        names.setdefault(part, name)
    return MappingProxyType(names)


def _aliases(country: str) -> Mapping[str, str]:
    return getattr(holidays.country_holidays(country), "subdivisions_aliases", {})


@lru_cache(maxsize=32)
def _parts_by_name(country: str) -> Mapping[str, str]:
    """The letters of a country's parts by those, by their names, and by what they are called."""
    if country not in COUNTRIES:
        return MappingProxyType({})
    also = PARTS_CALLED.get(country, {})
    named = {**also, **_aliases(country), **{part: part for part in parts_of(country)}}
    return MappingProxyType({plain_name(name): part for name, part in named.items()})


def part_named(name: str, country: str) -> str | None:
    """Return the letters of a country's part by its name, or by its letters; None if unknown."""
    bare = name.strip().removeprefix(f"{country}-")
    return _parts_by_name(country).get(plain_name(_A_PART.sub("", bare)))


def part_meant(name: str, country: str) -> str | None:
    """Return the same, of a name that is nearly one's."""
    known = _parts_by_name(country)
    names = [each for each in known if len(each) >= _SHORTEST_NAME]
    close = get_close_matches(plain_name(name), names, n=1, cutoff=_ALIKE)
    return part_named(name, country) or next((known[each] for each in close), None)


def holiday_names(place: str, language: str = "en") -> tuple[str, ...]:
    """Return the names of a place's public holidays in a language; of two on one day both."""
    return tuple(sorted({pair[language == "de"] for pair in _named_days(place)}))


@lru_cache(maxsize=64)
def _named_days(place: str) -> tuple[tuple[str, str], ...]:
    """Each holiday of a place: its name there in English and, where it has one, in German."""
    nation, _, part = place.partition("-")
    has_german = "de" in holidays.country_holidays(nation).supported_languages
    found: set[tuple[str, str]] = set()
    for year in _YEARS:
        german = holidays.country_holidays(
            nation, subdiv=part or None, years=year, expand=False, language="de"
        )
        for day, both in public_holidays(place, year).items():
            names = [name.strip() for name in both.split(";")]
            own = [name.strip() for name in str(german[day]).split(";")] if has_german else names
            found.update(zip(names, own if len(own) == len(names) else names, strict=True))
    return tuple(sorted(found))


def holiday_named(name: str, place: str) -> str | None:
    """Return a place's holiday, as its days are named, by its English or German name."""
    said = plain_name(name)
    return next((pair[0] for pair in _named_days(place) if said in map(plain_name, pair)), None)


def _places_of(country: str) -> tuple[str, ...]:
    """A country and each of its parts, as a profile has them."""
    return country, *(f"{country}-{part}" for part in parts_of(country))


@lru_cache(maxsize=64)
def holiday_elsewhere(name: str, country: str) -> str | None:
    """Return the same of a holiday of the whole country or of some part of it."""
    return next(filter(None, (holiday_named(name, place) for place in _places_of(country))), None)


@lru_cache(maxsize=64)
def month_and_day_of(name: str, country: str) -> str | None:
    """Return the month and day of a holiday of a country that is on the same one each year."""
    days = {
        f"{day:%m-%d}"
        for place in _places_of(country)
        if (named := holiday_named(name, place)) is not None
        for year in _YEARS
        for day, both in public_holidays(place, year).items()
        if named in [each.strip() for each in both.split(";")]
    }
    return days.pop() if len(days) == 1 else None
