"""What is kept between orders and trials of one workshop: factored plates and results by slab.

It affects how soon an answer comes, never the answer.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Hashable
from dataclasses import dataclass, fields
from typing import Final, Generic, TypeVar

from ledgerstone.reinforcement import AfterCrack, SteelPlan
from ledgerstone.shape import Shape
from ledgerstone.stages.costs_aside import without_costs
from ledgerstone.stages.keys import HandlingKey, InPlaceKey, SlabKey, SteelKey
from ledgerstone.stages.placement import LayoutKey, Placement
from ledgerstone.strength.in_place import InPlace
from ledgerstone.strength.slabs import Plates, SlabStrength
from ledgerstone.workshop.records import Workshop

MAX_SHAPES = 48
MAX_RESULTS = 32  # of each kind, a few kilobytes each
# What none of the results depends on, so that a maker who tries another price keeps them, as on no
# price or hours of other tables; of days they depend by the temperature of the month alone, which
# is in their keys.
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


@dataclass(frozen=True, slots=True)
class OnItsRests:
    """A slab's stresses on its rests, and what holds it once it has cracked."""

    in_place: InPlace
    after: AfterCrack | None


class Results:
    """One bounded store for each result of a stage, all of one workshop."""

    def __init__(self) -> None:
        self.shapes: BoundedStore[SlabKey, Shape] = BoundedStore(MAX_SHAPES)
        self.handling: BoundedStore[HandlingKey, SlabStrength] = BoundedStore(MAX_RESULTS)
        self.in_place: BoundedStore[InPlaceKey, OnItsRests] = BoundedStore(MAX_RESULTS)
        self.steel: BoundedStore[SteelKey, SteelPlan] = BoundedStore(MAX_RESULTS)
        self.layouts: BoundedStore[LayoutKey, Placement | None] = BoundedStore(MAX_SHAPES)


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
        self._bearing: object = None
        self._before: tuple[object, Results] | None = None

    def use_for(self, workshop: Workshop) -> None:
        """Take the results of a profile: those in use, those of the one before, or none yet."""
        if workshop is self._workshop:
            return
        bearing = _bearing(workshop)
        if self._workshop is not None and bearing != self._bearing:
            before, self._before = self._before, (self._bearing, self.results)
            is_back = before is not None and bearing == before[0]
            self.results = before[1] if before is not None and is_back else Results()
        self._workshop, self._bearing = workshop, bearing


def _bearing(workshop: Workshop) -> list[object]:
    """Return what of a profile affects the results: its other tables, without money and hours."""
    names = [f.name for f in fields(workshop) if f.name not in _SET_ASIDE]
    return [without_costs(getattr(workshop, name)) for name in names]
