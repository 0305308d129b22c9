"""What is to be said, before it is said: a message's name and its values."""

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
    """An amount of a currency, said to the hundredth."""

    currency: str
    amount: Decimal


@dataclass(frozen=True, slots=True)
class Percent(Spoken):
    """A share of a hundred, said with as many places as it has."""

    amount: Decimal


@dataclass(frozen=True, slots=True)
class Weight(Spoken):
    """A mass, kg, said to a tenth of a kilogram."""

    kg: float


@dataclass(frozen=True, slots=True)
class LineLoad(Spoken):
    """A mass on a running length, kg on each metre: said as the mass on a metre, or on a foot."""

    kg_per_m: float


@dataclass(frozen=True, slots=True)
class Temperature(Spoken):
    """A temperature, °C."""

    celsius: float


@dataclass(frozen=True, slots=True)
class Volume(Spoken):
    """A volume, litres, said with two figures after the point under ten and one above."""

    litres: float


@dataclass(frozen=True, slots=True)
class Strength(Spoken):
    """A stress or a strength, MPa, said with so many places where it is told in MPa."""

    mpa: float
    places: int = 0


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
class Days(Spoken):
    """Days from one to another, or one day where both are the same."""

    first: date
    last: date


@dataclass(frozen=True, slots=True)
class WeekdayName(Spoken):
    """A day of the next week by its name alone, short."""

    day: date


@dataclass(frozen=True, slots=True)
class Figure(Spoken):
    """A number, said with so many places."""

    amount: float
    places: int


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
        return hash((self.name, tuple(sorted(self.values))))

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
