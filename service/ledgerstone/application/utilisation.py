"""The utilisation map of a slab of a drawing's token: for the maker only."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from functools import partial
from typing import Any

from ledgerstone.checks import check_plan
from ledgerstone.codec.order_in import read_order
from ledgerstone.drawing.stress import draw_stress
from ledgerstone.errors import PlateError
from ledgerstone.order import Order, Slab
from ledgerstone.remedies import Budget
from ledgerstone.shape import Shape
from ledgerstone.stages import StageCache, StageContext, plan
from ledgerstone.strength.slabs import Plates, concrete_of, plate_of, slab_strength
from ledgerstone.strength.utilisation_map import UtilisationMap, utilisation_map
from ledgerstone.strength.verdict import Verdict
from ledgerstone.wording import Message, slab_name, speech_of
from ledgerstone.workshop.records import Workshop

_NO_DAY = date(2000, 1, 1)  # shape checks do not depend on the day


def draw_utilisation(
    slabs: Sequence[Any], number: int, workshop: Workshop, cache: StageCache, budget: Budget
) -> str:
    """Draw the utilisation map of one slab of a drawing's token: for the maker only.

    The temperature is that of the workshop's coldest month, so the map does not depend on the day.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    order = read_order({"slabs": slabs}, workshop)
    budget.begin(Order(slabs=(order.slabs[number],)), _NO_DAY)
    planned = plan(order, StageContext(workshop, (), _NO_DAY, cache))
    slab, shape = order.slabs[number], planned.shapes[number]
    speech = speech_of(order, workshop)
    named = Message("stress-title", slab=slab_name(slab, number, len(order.slabs)))
    drawn = partial(draw_stress, slab, shape, title=speech.say(named), speech=speech)
    stopped = any(f.level == "stops" for f in check_plan(planned) if f.slab == number)
    if stopped:
        return drawn(None, None)
    try:
        field, worst = _utilised(slab, shape, workshop, planned.slab_kg[number], cache.plates)
    except PlateError:  # a quote of it reports that its strength is not known
        return drawn(None, None)
    return drawn(field, worst)


def _utilised(
    slab: Slab, shape: Shape, workshop: Workshop, slab_kg: float, plates: Plates
) -> tuple[UtilisationMap, Verdict | None]:
    """Return the utilisation all over a slab, and its worst verdict."""
    coldest, concrete = min(workshop.handling.workshop_c), concrete_of(workshop)
    found = slab_strength(
        slab, shape, workshop, slab_kg=slab_kg, workshop_temp_c=coldest, plates=plates
    )
    plate = plate_of(slab, shape, concrete, plates)
    return utilisation_map(slab, shape, plate, concrete, workshop), found.worst
