"""A message before it is formatted: its name in the catalogues, and its typed values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from types import MappingProxyType
from typing import Literal


class Spoken:
    """A value that each language writes in its own way; a length is one too."""

    __slots__ = ()


@dataclass(frozen=True, slots=True)
class Money(Spoken):
    """An amount of a currency, to the hundredth."""

    currency: str
    amount: Decimal


@dataclass(frozen=True, slots=True)
class Percent(Spoken):
    """A percentage, with as many decimals as it has."""

    amount: Decimal


@dataclass(frozen=True, slots=True)
class Weight(Spoken):
    """A mass, kg, to 0.1 kg."""

    kg: float


@dataclass(frozen=True, slots=True)
class MassPerLength(Spoken):
    """A mass on a running length, kg on each metre: said as the mass on a metre, or on a foot."""

    kg_per_m: float


@dataclass(frozen=True, slots=True)
class Temperature(Spoken):
    """A temperature, °C."""

    celsius: float


@dataclass(frozen=True, slots=True)
class Volume(Spoken):
    """A volume, litres, said with two figures after the point under ten and one above.

    ``bare`` leaves its unit to the sentence.
    """

    litres: float
    places: int | None = None
    bare: bool = False


@dataclass(frozen=True, slots=True)
class SmallVolume(Spoken):
    """A volume that is measured in a beaker, millilitres: in fluid ounces beside gallons.

    ``as_litres`` says it in litres with so many places, where litres are spoken.
    """

    ml: float
    as_litres: int | None = None


@dataclass(frozen=True, slots=True)
class Strength(Spoken):
    """A stress or a strength, MPa, said with so many places where it is written in MPa.

    ``bare`` leaves its unit to the sentence.
    """

    mpa: float
    places: int = 0
    bare: bool = False


@dataclass(frozen=True, slots=True)
class Ruled(Spoken):
    """A length, mm, as a rule shows it: to half a millimetre, or to 1/32 in. Its unit is beside.

    ``down`` never says more than there is; ``coarse`` is a place to hold, to a quarter of an inch.
    """

    mm: float
    down: bool = False
    coarse: bool = False


@dataclass(frozen=True, slots=True)
class RunningLength(Spoken):
    """So much of what is sold by length, m: in feet beside inches."""

    metres: float


@dataclass(frozen=True, slots=True)
class Gauge(Spoken):
    """A size of wire, bars or slabs, mm, as it is sold: up to three places. Its unit is beside."""

    mm: float


@dataclass(frozen=True, slots=True)
class Mass(Spoken):
    """A mass of material, kg, with so many places: under a pound it is in ounces."""

    kg: float
    places: int


@dataclass(frozen=True, slots=True)
class Weighed(Spoken):
    """A mass, kg, as its scale shows it, whose step is given: in kg or lb without its unit.

    Beside pounds a fine scale's are in ounces, with their unit.
    """

    kg: float
    step_kg: float


@dataclass(frozen=True, slots=True)
class Area(Spoken):
    """An area, m²."""

    m2: float


@dataclass(frozen=True, slots=True)
class Density(Spoken):
    """A density, kg/m³, or in pounds in a cubic yard beside pounds."""

    kg_per_m3: float


@dataclass(frozen=True, slots=True)
class Force(Spoken):
    """A force, N, or in pounds beside psi."""

    newtons: float


@dataclass(frozen=True, slots=True)
class AreaLoad(Spoken):
    """An even load, N/m², or in pounds on a square foot beside psi."""

    n_per_m2: float


@dataclass(frozen=True, slots=True)
class Clock(Spoken):
    """A time of day."""

    hour: int
    minute: int


@dataclass(frozen=True, slots=True)
class Weekday(Spoken):
    """A day with its day of the week, with or without its year."""

    day: date
    with_year: bool


@dataclass(frozen=True, slots=True)
class DayMonth(Spoken):
    """A day by its month alone, short where ``short``: with its day of the week then."""

    day: date
    short: bool = False


@dataclass(frozen=True, slots=True)
class DateRange(Spoken):
    """Days from one to another, or one day where both are the same."""

    first: date
    last: date


@dataclass(frozen=True, slots=True)
class WeekdayName(Spoken):
    """A day of the next week by its name alone, short."""

    day: date


@dataclass(frozen=True, slots=True)
class Figure(Spoken):
    """A number with a fixed number of decimals."""

    amount: float
    places: int


@dataclass(frozen=True, slots=True)
class Spelled(Spoken):
    """A number with its unit, written with a point: said with the language's own mark."""

    text: str


@dataclass(frozen=True, slots=True)
class People(Spoken):
    """So many people; small numbers are words."""

    count: int


@dataclass(frozen=True, slots=True)
class Listed(Spoken):
    """Several things in one sentence.

    Attributes
    ----------
    joined
        What stands between the last two: the catalogue's word, or a comma.
    most
        Of more things than this, the first two are said and the others counted.
    count
        How many are meant, where one name stands for several.
    """

    things: tuple[Value, ...]
    joined: Literal["and", "or", "comma", "comma-and", "semicolon", "sentences"] = "and"
    most: int | None = None
    count: int | None = None


class Message:
    """One sentence or more, or the name of a thing, by its name in the catalogues.

    Two messages are equal where their names and values are. A text among the values is the
    customer's own (a label, a postcode), or a word that the catalogue chooses by and never prints.

    Parameters
    ----------
    name
        Its name in the catalogues.
    values
        What it is filled in with, by the catalogues' names.
    """

    __slots__ = ("name", "values")

    name: str
    values: Mapping[str, Value]

    def __init__(self, name: str, /, **values: Value) -> None:
        object.__setattr__(self, "name", name)
        object.__setattr__(self, "values", MappingProxyType(values))

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"{name} of a message stays as it is")

    def __delattr__(self, name: str) -> None:
        raise AttributeError(f"{name} of a message stays as it is")

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Message):
            return NotImplemented
        return (self.name, self.values) == (other.name, other.values)

    def __hash__(self) -> int:
        return hash((self.name, frozenset(self.values.items())))

    def __repr__(self) -> str:
        values = "".join(f", {name}={value!r}" for name, value in self.values.items())
        return f"Message({self.name!r}{values})"

    def with_values(self, values: Mapping[str, Value]) -> Message:
        """Return the same message of other values."""
        return Message(self.name, **values)

    def __reduce__(self) -> tuple[object, ...]:
        return _again, (self.name, dict(self.values))


Value = str | int | float | date | Spoken | Message


def _again(name: str, values: dict[str, Value]) -> Message:
    return Message(name, **values)
