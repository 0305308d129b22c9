"""What is kept between orders and trials of one workshop: factored plates and results by slab.

It affects how soon an answer comes, never the answer.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Hashable, Iterable, Mapping
from dataclasses import dataclass, fields
from typing import Any, Final, Generic, TypeVar

from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.reinforcement import AfterCrack, SteelPlan
from ledgerstone.shape import Shape
from ledgerstone.strength.handling import Curing
from ledgerstone.strength.in_place import InPlace
from ledgerstone.strength.plate import OwnWeight
from ledgerstone.strength.slabs import Plates, SlabStrength
from ledgerstone.workshop.records import Workshop

MAX_SHAPES = 48
MAX_RESULTS = 32  # of each kind, a few kilobytes each
# What none of the results depends on, so that a maker who tries another price keeps them; of days
# they depend by the temperature of the month alone, which is in their keys.
_SET_ASIDE: Final = frozenset(
    {"rates", "tax", "offer", "services", "sample", "areas", "hours", "web", "reply", "mail"}
    | {"mailbox", "standing", "fingerprint", "workshop", "calendar"}
)

K = TypeVar("K", bound=Hashable)
V = TypeVar("V")


class BoundedStore(Generic[K, V]):
    """A least-recently-used store of results by their inputs."""

    def __init__(self, most: int) -> None:
        self._most = most
        self._kept: OrderedDict[K, V] = OrderedDict()

    def get_or_compute(self, key: K, compute: Callable[[], V]) -> V:
        """Return what is kept under a key, or compute and keep it."""
        if key not in self._kept:
            self._kept[key] = compute()
            if len(self._kept) > self._most:
                self._kept.popitem(last=False)
        self._kept.move_to_end(key)
        return self._kept[key]


# What a record holds, by value: its numbers and texts, and of a record the name and the members.
PlainValue = str | int | float | None | tuple["PlainValue", ...]


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
    if thing is None or isinstance(thing, str | int | float):
        return thing
    if isinstance(thing, Length):
        exact = thing.exact_mm
        return exact.numerator, exact.denominator, thing.unit, thing.came
    if isinstance(thing, tuple):
        return tuple([_plain(one) for one in thing])
    if isinstance(thing, Mapping):
        return tuple([(str(name), _plain(member)) for name, member in thing.items()])
    return _members_of(thing, thing.__dataclass_fields__)


@dataclass(frozen=True, slots=True)
class HandlingKey:
    """What the handling of a slab depends on, beside the workshop.

    Of its rests that is what they make of its size and of its mesh.
    """

    slab: SlabKey
    slab_kg: float
    size_mm: tuple[float, float]
    workshop_temp_c: float
    cover: Curing
    turning: tuple[XY, ...]


@dataclass(frozen=True, slots=True)
class InPlaceKey:
    """What the stresses of a slab on its rests depend on, beside the workshop.

    Its edges and its shade affect them by its weight alone, of which the edges' part is left out.
    """

    slab: SlabKey
    weight: OwnWeight


@dataclass(frozen=True, slots=True)
class OnItsRests:
    """A slab's stresses on its rests, and what holds it once it has cracked."""

    in_place: InPlace
    after: AfterCrack | None


@dataclass(frozen=True, slots=True)
class SteelKey:
    """What the steel of a slab depends on, beside the workshop."""

    slab: SlabKey
    workshop_temp_c: float
    cover: Curing


class Results:
    """One bounded store for each result of a stage, all of one workshop."""

    def __init__(self) -> None:
        self.shapes: BoundedStore[SlabKey, Shape] = BoundedStore(MAX_SHAPES)
        self.handling: BoundedStore[HandlingKey, SlabStrength] = BoundedStore(MAX_RESULTS)
        self.in_place: BoundedStore[InPlaceKey, OnItsRests] = BoundedStore(MAX_RESULTS)
        self.steel: BoundedStore[SteelKey, SteelPlan] = BoundedStore(MAX_RESULTS)
        self.layouts: BoundedStore[Hashable, Any] = BoundedStore(MAX_SHAPES)  # of openings


class StageCache:
    """The results of the stages, and the factored plates.

    Results depend on the workshop's profile too. Another profile has results of its own; those of
    the one before it are kept, since a maker's trials go to and fro between two: as it was, and as
    it is changed.
    """

    def __init__(self, plates: Plates | None = None) -> None:
        self.plates = plates if plates is not None else Plates()
        self.results = Results()
        self._workshop: Workshop | None = None
        self._before: tuple[Workshop, Results] | None = None

    def use_for(self, workshop: Workshop) -> None:
        """Take the results of a profile: those in use, those of the one before, or none yet."""
        if workshop is self._workshop:
            return
        if self._workshop is not None and _bearing(workshop) != _bearing(self._workshop):
            before, self._before = self._before, (self._workshop, self.results)
            is_back = before is not None and _bearing(workshop) == _bearing(before[0])
            self.results = before[1] if before is not None and is_back else Results()
        self._workshop = workshop


def _bearing(workshop: Workshop) -> list[Any]:
    """Return the tables of a profile that affect the results."""
    names = [f.name for f in fields(workshop) if f.name not in _SET_ASIDE]
    return [getattr(workshop, name) for name in names]
