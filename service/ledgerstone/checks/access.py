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
from ledgerstone.stages import Planned, Scheduled
from ledgerstone.transport import (
    Piece,
    least_tilt_degrees,
    longest_round_corner,
    on_edge,
    tilt_in_lift_degrees,
)
from ledgerstone.wording import capital, people_text, slab_words, weight_text

HANDS_MM = 300.0  # room for a carrier at an end: 300 to 400 mm, from memory
RIDER_KG = 75.0  # a person in a lift: EN 81-20, from memory
RIDERS = 2
FEW_STEPS = 3  # so many are ramped over; common practice, no source
_GEOMETRY = "geometry alone: the slab on edge, with foam on both its faces"


@dataclass(frozen=True, slots=True)
class Carried:
    """One slab on its way in, and the level at which it is said that it does not pass."""

    index: int
    name: str
    piece: Piece
    kg: float
    level: Level


def carried(planned: Planned) -> Iterable[Carried]:
    """Go through the slabs as they are carried in."""
    order = planned.order
    level: Level = "stops" if order.delivery.kind == "fitted" else "caution"
    for i, slab, shape in planned.slabs():
        name = slab_words(slab, i, len(order.slabs))
        yield Carried(i, name, on_edge(slab, shape), planned.slab_kg[i], level)


def through_the_doorway(scheduled: Scheduled) -> Iterable[Finding]:
    """Each slab passes the doorway on edge."""
    planned = scheduled.planned
    order = planned.order
    doorway = order.delivery.doorway
    if doorway is None:
        return
    for one in carried(planned):
        across = one.piece.across_mm
        if across > doorway.mm:
            says = (
                f"On edge and padded, {one.name} is {doorway.like(across, 'up')} across; the"
                f" doorway is {doorway.text()} wide."
            )
            yield _finding(
                one, "doorway-too-narrow", says, "doorway", ("width_mm", across, doorway.mm)
            )


def round_the_turn(scheduled: Scheduled) -> Iterable[Finding]:
    """Each slab gets round the turn, level or tilted beneath the ceiling."""
    planned = scheduled.planned
    order = planned.order
    turn, ceiling = order.delivery.turn, order.delivery.ceiling
    if turn is None:
        return
    for one in carried(planned):
        most = longest_round_corner(turn.before.mm, turn.after.mm, one.piece.across_mm)
        rough = most - 2 * HANDS_MM
        numbers = ("length_mm", one.piece.length_mm, most)
        if not _passes(one.piece, most, ceiling):
            says = _does_not_turn(one, turn, most, ceiling)
            yield _finding(one, "turn-too-tight", says, "turn", numbers)
        elif not _passes(one.piece, rough, ceiling):
            says = (
                f"{capital(one.name)} gets round the turn by geometry alone, and whoever carries"
                " it needs room too. Try it with a batten of that length, or name another way in."
            )
            tight = _finding(one, "turn-too-tight", says, "turn", numbers)
            yield replace(tight, level="caution")


def _passes(piece: Piece, longest_mm: float, ceiling: Length | None) -> bool:
    """Whether a piece is short enough in plan, level or tilted; untold ceilings tilt nothing."""
    if piece.length_mm <= longest_mm:
        return True
    height = ceiling.mm if ceiling is not None else 0.0
    return least_tilt_degrees(piece, longest_mm, height) is not None


def _does_not_turn(one: Carried, turn: Turn, most_mm: float, ceiling: Length | None) -> str:
    said = turn.before
    if most_mm == 0.0:
        what = f"padded, {one.name} is wider than the way round the turn"
    else:
        what = (
            f"{one.name} is {said.like(one.piece.length_mm, 'up')} long; level and on edge, no more"
            f" than {said.like(most_mm, 'down')} gets round the turn"
        )
    tilted = " Tell us the ceiling height: it may pass tilted." if ceiling is None else ""
    return f"{capital(what)}.{tilted}"


def into_the_lift(scheduled: Scheduled) -> Iterable[Finding]:
    """Each slab goes into the lift, level or tilted, with people to hold it, at its rated load.

    Where steps were told too, what the lift does not take goes up those: a caution.
    """
    planned = scheduled.planned
    order = planned.order
    lift = order.delivery.lift
    if lift is None:
        return
    for one in carried(planned):
        found = _lift_finding(one, lift)
        if found is not None:
            yield replace(found, level="caution") if order.delivery.steps else found


def _lift_finding(one: Carried, lift: Lift) -> Finding | None:
    name = capital(one.name)
    if tilt_in_lift_degrees(one.piece, lift) is None:
        says = (
            f"{name} does not go into the lift, level or tilted. If there are steps that it can be"
            " carried up, tell us of them."
        )
        numbers = ("length_mm", one.piece.length_mm, _diagonal_mm(lift))
        return _finding(one, "lift-too-small", says, "lift", numbers)
    kg = one.kg + RIDERS * RIDER_KG
    if kg <= lift.rated_kg:
        return None
    says = (
        f"{name} and two people weigh {weight_text(kg)} together; the lift is rated for"
        f" {lift.rated_kg:g} kg."
    )
    numbers = ("load_kg", kg, lift.rated_kg)
    return _finding(one, "lift-overloaded", says, "lift/rated_kg", numbers)


def _diagonal_mm(lift: Lift) -> float:
    return math.hypot(lift.width.mm, lift.depth.mm)


def goes_by_lift(one: Carried, lift: Lift | None) -> bool:
    """Whether there is a lift and it takes a slab."""
    return lift is not None and _lift_finding(one, lift) is None


def up_the_steps(scheduled: Scheduled) -> Iterable[Finding]:
    """What goes up steps is carried: by no more hands than the workshop has round a slab."""
    planned = scheduled.planned
    order, workshop = planned.order, planned.workshop
    steps, lifting = order.delivery.steps or 0, workshop.lifting
    most = lifting.most_people * lifting.kg_per_person
    for one in carried(planned):
        if steps == 0 or one.kg <= most or goes_by_lift(one, order.delivery.lift):
            continue
        says = (
            f"{capital(one.name)} weighs {weight_text(one.kg)}, and up steps"
            f" {people_text(lifting.most_people)} here carry no more than {most:g} kg."
        )
        found = _finding(one, "too-heavy-for-steps", says, "steps", ("slab_kg", one.kg, most))
        found = replace(found, source="the workshop's own limit, no safe limit")
        yield replace(found, level="caution") if steps <= FEW_STEPS else found


def _finding(
    one: Carried, check: str, says: str, pointer: str, numbers: tuple[str, float, float]
) -> Finding:
    key, measured, limit = numbers
    return Finding(
        check,
        one.level,
        says,
        _GEOMETRY,
        slab=one.index,
        at=(f"/delivery/{pointer}", f"/slabs/{one.index}/outline"),
        measured={key: round(measured, 1)},
        limit={key: round(limit, 1)},
    )
