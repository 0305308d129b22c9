"""Second stage: stresses of every slab in every position, how it is handled, and its steel."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date
from functools import partial

from ledgerstone.errors import PlateError
from ledgerstone.order import Slab
from ledgerstone.reinforcement import SteelPlan, advise, after_a_crack
from ledgerstone.schedule import NoWorkingDay, calendar_of, days_ahead
from ledgerstone.shape import Shape
from ledgerstone.stages.cache import OnItsRests
from ledgerstone.stages.context import StageContext
from ledgerstone.stages.costs_aside import same_way
from ledgerstone.stages.keys import HandlingKey, InPlaceKey, SlabKey, SteelKey
from ledgerstone.stages.planned import Planned
from ledgerstone.strength.handling import Curing
from ledgerstone.strength.in_place import InPlace, in_place
from ledgerstone.strength.rests import turning_places
from ledgerstone.strength.slabs import SlabStrength, concrete_of, plate_of, slab_strength
from ledgerstone.strength.weight import weight_of

DIGITS_KG = 6
_DAYS_TO_CASTING = 2  # working days from the order to its casting, about; only the month counts


@dataclass(frozen=True, slots=True)
class Assessed:
    """An order whose slabs the plate has an answer for.

    Attributes
    ----------
    strength
        Of each slab: how it is handled, at which age, and its stresses in every position.
    steel
        Where steel belongs in each slab.
    curing
        The least time in the mould, and the temperature there.
    workshop_temp_c
        Mean temperature of the workshop in the month of casting.
    """

    planned: Planned
    strength: tuple[SlabStrength, ...]
    steel: tuple[SteelPlan, ...]
    curing: Curing
    workshop_temp_c: float

    def slabs(self) -> Iterator[tuple[int, Slab, Shape, SlabStrength]]:
        """Each slab by its index, with its plan and its verdicts."""
        return ((i, slab, shape, self.strength[i]) for i, slab, shape in self.planned.slabs())

    @property
    def under_cover_days(self) -> tuple[float, ...]:
        """Days under cover of each slab, by the way it is handled."""
        return tuple(strength.handled.under_cover_days for strength in self.strength)


@dataclass(frozen=True, slots=True)
class Unassessed:
    """An order of which the plate has no answer for some slabs, by their indices."""

    planned: Planned
    slabs: tuple[int, ...]


def assess(planned: Planned, context: StageContext) -> Assessed | Unassessed:
    """Work out the stresses of every slab, how it is handled, and its steel."""
    each = [_strength_or_none(planned, i, context) for i in range(len(planned.order.slabs))]
    known = tuple(strength for strength in each if strength is not None)
    if len(known) < len(each):
        return Unassessed(planned, tuple(i for i, strength in enumerate(each) if strength is None))
    steel = tuple(_steel_of(planned, i, strength, context) for i, strength in enumerate(known))
    return Assessed(planned, known, steel, _curing(planned, context), _workshop_temp_c(context))


def _strength_or_none(planned: Planned, i: int, context: StageContext) -> SlabStrength | None:
    try:
        handled = assess_handling(planned, i, context)
        return replace(handled, in_place=assess_in_place(planned, i, context))
    except PlateError:
        return None


def assess_handling(planned: Planned, i: int, context: StageContext) -> SlabStrength:
    """Work out one slab's stresses until it lies on its rests.

    They affect the strength only by where the slab is turned on them: the mesh is finer there.

    Raises
    ------
    PlateError
        The plate has no answer for it.
    """
    slab, shape = planned.order.slabs[i], planned.shapes[i]
    temp_c, curing = _workshop_temp_c(context), _curing(planned, context)
    without_rests, turning = replace(slab, rests=None), turning_places(slab, shape)
    compute = partial(
        slab_strength,
        without_rests,
        shape,
        context.workshop,
        slab_kg=planned.slab_kg[i],
        workshop_temp_c=temp_c,
        plates=context.cache.plates,
        curing=curing,
        turning=turning,
    )
    size = (shape.length_mm, shape.width_mm)
    key = HandlingKey(
        SlabKey.without_appearance(without_rests),
        round(planned.slab_kg[i], DIGITS_KG),
        size,
        temp_c,
        curing,
        turning,
    )
    kept = context.cache.results.handling.get_or_compute(key, compute)
    way = same_way(kept.handled.way, context.workshop.handling.ways)
    return replace(kept, handled=replace(kept.handled, way=way))


def assess_in_place(planned: Planned, i: int, context: StageContext) -> InPlace:
    """Work out one slab's stresses on its rests, and what holds it once it has cracked.

    Raises
    ------
    PlateError
        The plate has no answer for it.
    """
    return _on_its_rests(planned, i, context).in_place


def _on_its_rests(planned: Planned, i: int, context: StageContext) -> OnItsRests:
    slab, shape, workshop = planned.order.slabs[i], planned.shapes[i], context.workshop

    def compute() -> OnItsRests:
        concrete = concrete_of(workshop)
        plate = plate_of(slab, shape, concrete, context.cache.plates)
        found = in_place(slab, shape, plate, concrete, workshop)
        if found.cracking is None:
            return OnItsRests(found, None)
        after = after_a_crack(slab, shape, found.cracking, workshop)
        return OnItsRests(replace(found, verdicts=(*found.verdicts, after.verdict)), after)

    without_edges = replace(slab, edges={})
    key = InPlaceKey(SlabKey.without_appearance(without_edges), weight_of(slab, workshop))
    return context.cache.results.in_place.get_or_compute(key, compute)


def _steel_of(planned: Planned, i: int, strength: SlabStrength, context: StageContext) -> SteelPlan:
    slab = planned.order.slabs[i]
    key = SteelKey(SlabKey.of_one_piece(slab), _workshop_temp_c(context), _curing(planned, context))
    after = _on_its_rests(planned, i, context).after
    compute = partial(advise, slab, planned.shapes[i], strength, after, context.workshop)
    return context.cache.results.steel.get_or_compute(key, compute)


def _casting_day(context: StageContext) -> date:
    """About when it is cast, by the month of which the workshop is as warm; today, if never."""
    ahead = days_ahead(context.workshop, context.bookings) + _DAYS_TO_CASTING
    try:
        calendar = calendar_of(context.workshop, context.bookings or ())
        return calendar.add_working_days(context.today, ahead)
    except NoWorkingDay:
        return context.today


def _workshop_temp_c(context: StageContext) -> float:
    return context.workshop.handling.workshop_c[_casting_day(context).month - 1]


def _curing(planned: Planned, context: StageContext) -> Curing:
    """Return the curing conditions in the mould: in the heated tent if it is ordered."""
    workshop, temp_c = context.workshop, _workshop_temp_c(context)
    tent = workshop.tent
    if tent is None or not planned.order.heated_curing:
        return Curing(workshop.days.under_cover, temp_c)
    return Curing(tent.under_cover_days, max(tent.warmth_c, temp_c))
