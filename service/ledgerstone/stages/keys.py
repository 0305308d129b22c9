"""Keys by value of an order, and of what a stage's result of one slab depends on."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, fields
from datetime import date
from typing import Any, Final

from ledgerstone.order import Order, Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.strength.handling import Curing
from ledgerstone.strength.plate import OwnWeight

# What a record holds, by value: its numbers and texts, and of a record the name and the members.
PlainValue = str | int | float | date | None | tuple["PlainValue", ...]


@dataclass(frozen=True, slots=True)
class SlabKey:
    """A slab by value: two identical slabs have equal keys.

    How a length came belongs to it, since what is worked out may be said as it was: an opening
    that is laid elsewhere is said in the customer's own unit.
    """

    value: PlainValue

    @classmethod
    def of(cls, slab: Slab) -> SlabKey:
        """Make the key of a slab."""
        return cls(_members_of(slab, _EVERY))

    @classmethod
    def of_one_piece(cls, slab: Slab) -> SlabKey:
        """Make the key of a slab whatever it is called, however many and what was left open."""
        return cls(_members_of(slab, _OF_ONE_PIECE))

    @classmethod
    def without_appearance(cls, slab: Slab) -> SlabKey:
        """Make the key of a slab's plan and strength, which appearance affects only by its mass."""
        return cls(_members_of(slab, _WITHOUT_APPEARANCE))


_EVERY: Final = tuple(member.name for member in fields(Slab))
_OF_ONE_PIECE: Final = tuple(n for n in _EVERY if n not in {"label", "quantity", "taken"})
_WITHOUT_APPEARANCE: Final = tuple(n for n in _OF_ONE_PIECE if n not in {"shade", "finish"})


def _members_of(record: object, names: Iterable[str]) -> PlainValue:
    """These members of a record by value, and what record it is."""
    return type(record).__name__, *[_plain(getattr(record, name)) for name in names]


def _plain(thing: Any) -> PlainValue:  # noqa: ANN401 - whatever a member of a record holds
    """A member of a record by value; mappings in the order in which they were written."""
    if thing is None or isinstance(thing, str | int | float | date):
        return thing
    if isinstance(thing, Length):
        exact = thing.exact_mm
        return exact.numerator, exact.denominator, thing.unit, thing.origin
    if isinstance(thing, tuple):
        return tuple([_plain(one) for one in thing])
    if isinstance(thing, Mapping):
        return tuple([(str(name), _plain(member)) for name, member in thing.items()])
    return _members_of(thing, thing.__dataclass_fields__)


@dataclass(frozen=True, slots=True)
class OrderKey:
    """An order by value: two ways to the same order have equal keys."""

    value: PlainValue

    @classmethod
    def of(cls, order: Order) -> OrderKey:
        """Make the key of an order."""
        return cls(_plain(order))


@dataclass(frozen=True, slots=True)
class HandlingKey:
    """What the handling of a slab depends on, beside the workshop.

    Of its rests that is what they make of its size and of its mesh.
    """

    slab: SlabKey
    slab_kg: float
    size_mm: tuple[float, float]
    workshop_temp_c: float
    curing: Curing
    turning: tuple[XY, ...]


@dataclass(frozen=True, slots=True)
class InPlaceKey:
    """What the stresses of a slab on its rests depend on, beside the workshop.

    Its edges and its shade affect them by its weight alone, of which the edges' part is left out.
    """

    slab: SlabKey
    weight: OwnWeight


@dataclass(frozen=True, slots=True)
class SteelKey:
    """What the steel of a slab depends on, beside the workshop."""

    slab: SlabKey
    workshop_temp_c: float
    curing: Curing
