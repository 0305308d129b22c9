"""What a workshop writes otherwise than its country does."""

from __future__ import annotations

from dataclasses import dataclass, field, fields, replace
from functools import lru_cache
from typing import Any

from ledgerstone.workshop._keys import about, documented
from ledgerstone.workshop.countries import (
    English,
    LengthUnit,
    MassUnit,
    Paper,
    Place,
    Postcodes,
    StrengthUnit,
    TemperatureUnit,
    VolumeUnit,
    usual_in,
)


def _otherwise(words: str) -> Any:  # noqa: ANN401  dataclasses.field is typed by its use
    """A key that says nothing where it is left out: then the country's own way stands."""
    return field(default=None, metadata=about(words))


@dataclass(frozen=True, slots=True, kw_only=True)
class Word:
    """One English word in the place of another."""

    usual: str = documented("the word as we say it: worktop")
    here: str = documented("the word that is said in its place: benchtop")


@dataclass(frozen=True, slots=True, kw_only=True)
class Conventions:
    """Units, paper and words, where the workshop's are not the usual ones of its country."""

    lengths: LengthUnit | None = _otherwise("the unit of lengths that nobody typed")
    masses: MassUnit | None = _otherwise("what slabs are weighed in")
    temperatures: TemperatureUnit | None = _otherwise("degrees Celsius or Fahrenheit")
    volumes: VolumeUnit | None = _otherwise("litres, or US gallons")
    strengths: StrengthUnit | None = _otherwise("what strength is told in")
    paper: Paper | None = _otherwise("what letters and sheets are printed on")
    words: English | None = _otherwise("whose English words: kerb or curb, hob or cooktop")
    postcodes: str | None = _otherwise(
        "a regular expression for a postcode in capitals, without blanks; its first part in"
        " brackets is what areas begin with: ([0-9]{5})"
    )
    replaced: tuple[Word, ...] = field(
        default=(), metadata=about("English words of your own in the place of ours")
    )


@lru_cache(maxsize=32)
def place_of(country: str, conventions: Conventions) -> Place:
    """Return what is usual in a country, and what the workshop says otherwise."""
    told = {f.name: getattr(conventions, f.name) for f in fields(conventions)}
    given = {name: value for name, value in told.items() if value is not None}
    own = given.pop("postcodes", None)
    given["replaced"] = tuple((word.usual, word.here) for word in conventions.replaced)
    place = replace(usual_in(country), **given)
    return place if own is None else replace(place, postcodes=Postcodes(own, "", parts=1))
