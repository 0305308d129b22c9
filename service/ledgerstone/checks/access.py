"""Checks of the way in: doorway, turn, lift and steps, for a slab carried on edge.

Where we carry it in, to fit it, what does not pass stops the order. A carrier, and our own van,
leave it at the door: the customer carries it on, and what does not pass is a caution.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace

from ledgerstone.checks.finding import Finding, Level
from ledgerstone.order import Lift, Turn
from ledgerstone.quantities import Length
from ledgerstone.stages import Judged, Planned
from ledgerstone.transport import (
    CarriedBox,
    least_tilt_degrees,
    longest_round_corner,
    on_edge,
    tilt_in_lift_degrees,
)
from ledgerstone.wording import Message, People, Weight, slab_name

HANDS_MM = 300.0  # room for a carrier at an end: 300 to 400 mm, from memory
RIDER_KG = 75.0  # a person in a lift: EN 81-20, from memory
RIDERS = 2  # who carry go up with it: one at each end
FEW_STEPS = 3  # as few as this are ramped over; common practice, no source
_GEOMETRY = "geometry alone: the slab on edge, with foam on both its faces"


@dataclass(frozen=True, slots=True)
class CarriedSlab:
    """One slab on its way in, and the level of a finding that it does not pass."""

    index: int
    name: Message
    piece: CarriedBox
    kg: float
    level: Level


def carried(planned: Planned) -> Iterable[CarriedSlab]:
    """Go through the slabs as they are carried in."""
    order = planned.order
    level: Level = "stops" if order.delivery.kind == "fitted" else "caution"
    for i, slab, shape in planned.slabs():
        name = slab_name(slab, i, len(order.slabs))
        yield CarriedSlab(i, name, on_edge(slab, shape), planned.slab_kg[i], level)


def fits_doorway(judged: Judged) -> Iterable[Finding]:
    """Each slab passes the doorway on edge."""
    planned = judged.planned
    order = planned.order
    doorway = order.delivery.doorway
    if doorway is None:
        return
    for carrying in carried(planned):
        across = carrying.piece.across_mm
        if across > doorway.mm:
            message = Message(
                "doorway-too-narrow",
                slab=carrying.name,
                across=doorway.like(across, "up"),
                doorway=doorway,
            )
            yield _finding(
                carrying, "doorway-too-narrow", message, "doorway", ("width_mm", across, doorway.mm)
            )


def fits_turn(judged: Judged) -> Iterable[Finding]:
    """Each slab gets round the turn, level or tilted beneath the ceiling."""
    planned = judged.planned
    order = planned.order
    turn, ceiling = order.delivery.turn, order.delivery.ceiling
    if turn is None:
        return
    for carrying in carried(planned):
        most = longest_round_corner(turn.before.mm, turn.after.mm, carrying.piece.across_mm)
        rough = most - 2 * HANDS_MM
        numbers = ("length_mm", carrying.piece.length_mm, most)
        if not _passes(carrying.piece, most, ceiling):
            message = _does_not_turn(carrying, turn, most, ceiling)
            yield _finding(carrying, "turn-too-tight", message, "turn", numbers)
        elif not _passes(carrying.piece, rough, ceiling):
            message = Message("turn-only-by-geometry", slab=carrying.name)
            tight = _finding(carrying, "turn-too-tight", message, "turn", numbers)
            yield replace(tight, level="caution")


def _passes(piece: CarriedBox, longest_mm: float, ceiling: Length | None) -> bool:
    """Whether a piece is short enough in plan, level or tilted where the ceiling is given."""
    if piece.length_mm <= longest_mm:
        return True
    height = ceiling.mm if ceiling is not None else 0.0
    return least_tilt_degrees(piece, longest_mm, height) is not None


def _does_not_turn(
    slab: CarriedSlab, turn: Turn, most_mm: float, ceiling: Length | None
) -> Message:
    before, ceiling_given = turn.before, "no" if ceiling is None else "yes"
    if most_mm == 0.0:
        return Message("turn-narrower-than-slab", slab=slab.name, ceiling_given=ceiling_given)
    return Message(
        "turn-too-tight",
        slab=slab.name,
        length=before.like(slab.piece.length_mm, "up"),
        most=before.like(most_mm, "down"),
        ceiling_given=ceiling_given,
    )


def fits_lift(judged: Judged) -> Iterable[Finding]:
    """Each slab goes into the lift, level or tilted, with people to hold it, at its rated load.

    Where steps are given too, what does not fit the lift goes up those: a caution.
    """
    planned = judged.planned
    order = planned.order
    lift = order.delivery.lift
    if lift is None:
        return
    for carrying in carried(planned):
        found = _lift_finding(carrying, lift)
        if found is not None:
            yield replace(found, level="caution") if order.delivery.steps else found


def _lift_finding(slab: CarriedSlab, lift: Lift) -> Finding | None:
    if tilt_in_lift_degrees(slab.piece, lift) is None:
        message = Message("lift-too-small", slab=slab.name)
        numbers = ("length_mm", slab.piece.length_mm, _diagonal_mm(lift))
        return _finding(slab, "lift-too-small", message, "lift", numbers)
    kg = slab.kg + RIDERS * RIDER_KG
    if kg <= lift.rated_kg:
        return None
    rated = Weight(lift.rated_kg)
    message = Message("lift-overloaded", slab=slab.name, together=Weight(kg), rated=rated)
    numbers = ("load_kg", kg, lift.rated_kg)
    return _finding(slab, "lift-overloaded", message, "lift/rated_kg", numbers)


def _diagonal_mm(lift: Lift) -> float:
    return math.hypot(lift.width.mm, lift.depth.mm)


def goes_by_lift(slab: CarriedSlab, lift: Lift | None) -> bool:
    """Return whether there is a lift and it takes a slab."""
    return lift is not None and _lift_finding(slab, lift) is None


def carried_up_steps(judged: Judged) -> Iterable[Finding]:
    """What goes up steps is carried: by no more hands than the workshop has round a slab."""
    planned = judged.planned
    order, workshop = planned.order, planned.workshop
    steps, lifting = order.delivery.steps or 0, workshop.lifting
    most = lifting.most_people * lifting.kg_per_person
    for carrying in carried(planned):
        if steps == 0 or carrying.kg <= most or goes_by_lift(carrying, order.delivery.lift):
            continue
        message = Message(
            "too-heavy-for-steps",
            slab=carrying.name,
            weight=Weight(carrying.kg),
            people=People(lifting.most_people),
            most=Weight(most),
        )
        found = _finding(
            carrying, "too-heavy-for-steps", message, "steps", ("slab_kg", carrying.kg, most)
        )
        found = replace(found, source="the workshop's own limit, no safe limit")
        yield replace(found, level="caution") if steps <= FEW_STEPS else found


def _finding(
    carrying: CarriedSlab,
    check: str,
    message: Message,
    pointer: str,
    numbers: tuple[str, float, float],
) -> Finding:
    key, measured, limit = numbers
    return Finding(
        check,
        carrying.level,
        message,
        _GEOMETRY,
        slab=carrying.index,
        at=(f"/delivery/{pointer}", f"/slabs/{carrying.index}/outline"),
        measured={key: round(measured, 1)},
        limit={key: round(limit, 1)},
    )
