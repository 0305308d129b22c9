"""What a workshop writes otherwise than its country does."""

from __future__ import annotations

from dataclasses import dataclass, field, fields, replace
from functools import lru_cache
from typing import Any

from ledgerstone.workshop.countries import (
    English,
    LengthUnit,
    MassUnit,
    PaperFormat,
    RegionalSettings,
    StrengthUnit,
    TemperatureUnit,
    VolumeUnit,
    WorkLengthUnit,
    usual_in,
)
from ledgerstone.workshop.countries.postcodes import Postcodes
from ledgerstone.workshop.records._keys import about, documented


def _otherwise(words: str) -> Any:  # noqa: ANN401  dataclasses.field is typed by its use
    """A key that says nothing if it is left out: then the country's own way stands."""
    return field(default=None, metadata=about(words))


@dataclass(frozen=True, slots=True, kw_only=True)
class WordChoice:
    """One English word that replaces another."""

    usual: str = documented("the word as we say it: worktop")
    here: str = documented("the word that is said in its place: benchtop")


@dataclass(frozen=True, slots=True, kw_only=True)
class Conventions:
    """Units, paper and words, where the workshop's are not the usual ones of its country."""

    lengths: LengthUnit | None = _otherwise("the unit of lengths that nobody typed")
    masses: MassUnit | None = _otherwise("what slabs are weighed in")
    temperatures: TemperatureUnit | None = _otherwise("what temperatures are told in")
    volumes: VolumeUnit | None = _otherwise("what volumes are told in")
    strengths: StrengthUnit | None = _otherwise("what strength is told in")
    paper: PaperFormat | None = _otherwise("what letters and sheets are printed on")
    words: English | None = _otherwise("whose English words: kerb or curb, hob or cooktop")
    work_lengths: WorkLengthUnit | None = _otherwise(
        "the unit of the job sheet, where it is not what customers read"
    )
    work_masses: MassUnit | None = _otherwise("what is weighed in at the mixer")
    work_volumes: VolumeUnit | None = _otherwise("what a batch is measured in")
    work_temperatures: TemperatureUnit | None = _otherwise(
        "what temperatures in the workshop are told in"
    )
    work_strengths: StrengthUnit | None = _otherwise("what strength is told in on the job sheet")
    postcodes: str | None = _otherwise(
        "a regular expression for a postcode in capitals, without blanks; its first part in"
        " brackets is what areas begin with: ([0-9]{5})"
    )
    replaced: tuple[WordChoice, ...] = field(
        default=(), metadata=about("English words of your own in the place of ours")
    )


@lru_cache(maxsize=32)
def place_of(country: str, conventions: Conventions) -> RegionalSettings:
    """Return what is usual in a country, and what the workshop says otherwise."""
    every = {f.name: getattr(conventions, f.name) for f in fields(conventions)}
    given = {name: value for name, value in every.items() if value is not None}
    own = given.pop("postcodes", None)
    given["replaced"] = tuple((word.usual, word.here) for word in conventions.replaced)
    place = replace(usual_in(country), **given)
    return place if own is None else replace(place, postcodes=Postcodes(own, "", parts=1))
