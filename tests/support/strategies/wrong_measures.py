"""How people say lengths, and how they get them wrong: the unit, the end, the corner."""

from dataclasses import dataclass
from random import Random
from typing import Final

from ledgerstone.quantities import UnitName
from support.documents import Json
from support.strategies.plans import written

WrittenLength = str | int | float
_MM_PER: Final[dict[str, float]] = {"cm": 10.0, "in": 25.4}
_FARTHEST_MM: Final = 19_900.0
_MIXED: Final[tuple[UnitName | None, ...]] = (None, "mm", "cm", "m", "in", "ft")


@dataclass(frozen=True, slots=True)
class Speaker:
    """Someone who says lengths: in one unit, or in any that comes to mind."""

    rng: Random
    unit: UnitName | None
    mixed: bool = False

    def say(self, mm: float) -> WrittenLength:
        """Write a length, to the nearest millimetre."""
        unit = self.rng.choice(_MIXED) if self.mixed else self.unit
        return written(round(mm), unit)

    def place(self, x_mm: float, y_mm: float) -> Json:
        """Write a place, no farther off than the contract lets one be."""
        x, y = (max(-_FARTHEST_MM, min(_FARTHEST_MM, mm)) for mm in (x_mm, y_mm))
        return {"x": self.say(x), "y": self.say(y)}


def a_speaker(rng: Random) -> Speaker:
    """Someone who speaks millimetres mostly, or another unit, or all of them in one order."""
    unit: UnitName | None = rng.choices((None, "mm", "cm", "m", "in", "ft"), (6, 2, 2, 1, 3, 1))[0]
    return Speaker(rng, unit, rng.random() < 0.15)


@dataclass(slots=True)
class Spot:
    """Where an opening was meant to be, and what it was meant to measure, in mm."""

    x: float
    y: float
    length: float
    width: float


def roughly(rng: Random, mm: float, by_mm: float) -> float:
    """A measure taken by eye: off by about so much, then said in a round number."""
    grid = rng.choice((1, 5, 10, 10, 50, 50, 100))
    return grid * round(rng.gauss(mm, by_mm) / grid)


def misplace(rng: Random, spot: Spot, slab_mm: tuple[float, float], last: Spot | None) -> None:
    """Get one opening wrong, in one of the ways in which people do."""
    how = rng.choices(tuple(WAYS), [weight for _, weight in WAYS.values()])[0]
    WAYS[how][0](rng, spot, slab_mm, last)


def _nothing(_rng: Random, _spot: Spot, _slab: tuple[float, float], _last: Spot | None) -> None:
    """By rough measure alone."""


def _off_by_a_unit(rng: Random, spot: Spot, _slab: tuple[float, float], _last: Spot | None) -> None:
    """Centimetres or inches for millimetres, or the other way round, in one number."""
    per = rng.choice(tuple(_MM_PER.values()))
    name = rng.choices(("x", "y", "length", "width"), (6, 6, 1, 1))[0]
    times = rng.choices((1.0 / per, per), (5, 1))[0]
    setattr(spot, name, getattr(spot, name) * times)


def _wrong_end(rng: Random, spot: Spot, slab: tuple[float, float], _last: Spot | None) -> None:
    """From the right, or from the back."""
    if rng.random() < 0.5:
        spot.x = slab[0] - spot.x
    else:
        spot.y = slab[1] - spot.y


def _over_an_edge(rng: Random, spot: Spot, slab: tuple[float, float], _last: Spot | None) -> None:
    """Its middle near a side, so that it hangs over it."""
    if rng.random() < 0.5:
        spot.x = rng.choice((0.0, slab[0])) + rng.gauss(0.0, spot.length / 3)
    else:
        spot.y = rng.choice((0.0, slab[1])) + rng.gauss(0.0, spot.width / 3)


def _over_another(rng: Random, spot: Spot, _slab: tuple[float, float], last: Spot | None) -> None:
    """Where another thing already is."""
    if last is not None:
        spot.x, spot.y = last.x + rng.gauss(0.0, 80.0), last.y + rng.gauss(0.0, 40.0)


def _by_its_corner(
    _rng: Random, spot: Spot, _slab: tuple[float, float], _last: Spot | None
) -> None:
    """Its near corner for its middle."""
    spot.x, spot.y = spot.x - spot.length / 2, spot.y - spot.width / 2


def _crosswise(_rng: Random, spot: Spot, _slab: tuple[float, float], _last: Spot | None) -> None:
    """Across for along."""
    spot.x, spot.y = spot.y, spot.x


def _anywhere(rng: Random, spot: Spot, slab: tuple[float, float], _last: Spot | None) -> None:
    """Somewhere else on the slab."""
    spot.x, spot.y = rng.uniform(0.0, slab[0]), rng.uniform(0.0, slab[1])


WAYS: Final = {
    "rough": (_nothing, 16),
    "off by a unit": (_off_by_a_unit, 4),
    "wrong end": (_wrong_end, 3),
    "over an edge": (_over_an_edge, 4),
    "over another": (_over_another, 3),
    "by its corner": (_by_its_corner, 2),
    "crosswise": (_crosswise, 1),
    "anywhere": (_anywhere, 2),
}
