"""Checks of carrying: people at the other end, what is beyond them, and what is not given."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.order import Delivery
from ledgerstone.stages import Judged
from ledgerstone.transport import people_to_lift, push_kg, team_lift_kg
from ledgerstone.wording import Listed, Message, People, Weight, slab_name

_SHARE = "the workshop's own share for one person; HSE L23 says when a lift is to be assessed"


def hands_at_the_other_end(judged: Judged) -> Iterable[Finding]:
    """Where the customer carries it in: how many people the heaviest slab takes."""
    planned = judged.planned
    order, workshop = planned.order, planned.workshop
    delivery = order.delivery
    if delivery.kind == "fitted":
        return
    heaviest = max(range(len(order.slabs)), key=lambda i: planned.slab_kg[i])
    kg = planned.slab_kg[heaviest]
    people = people_to_lift(kg, workshop)
    if people > workshop.lifting.most_people or people <= (delivery.people or 0):
        return
    slab = slab_name(order.slabs[heaviest], heaviest, len(order.slabs))
    needed, weight = People(people), Weight(kg)
    assess = "yes" if _to_be_assessed(people, kg) else "no"
    message = Message("hands-needed", people=needed, slab=slab, weight=weight, assess=assess)
    if delivery.people is not None:
        there = delivery.people
        message = Message(
            "hands-too-few",
            people=needed,
            slab=slab,
            weight=weight,
            count=there,
            there=People(there),
            assess=assess,
        )
    yield Finding(
        "hands-needed",
        "note" if delivery.people is None else "caution",
        message,
        _SHARE,
        slab=heaviest,
        at=("/delivery/people",),
        measured={"slab_kg": round(kg, 1)},
        limit={"one_person_kg": workshop.lifting.kg_per_person},
    )


def _to_be_assessed(people: int, kg: float) -> bool:
    """Return whether a mass is above the filter for a number of people, or has no filter."""
    filtered = team_lift_kg(men=people)
    return filtered is None or kg > filtered


def beyond_hands(judged: Judged) -> Iterable[Finding]:
    """A slab too heavy for the workshop's people goes by trolley or gear: a caution."""
    planned = judged.planned
    order, workshop = planned.order, planned.workshop
    lifting = workshop.lifting
    most = lifting.most_people * lifting.kg_per_person
    for i, (slab, kg) in enumerate(zip(order.slabs, planned.slab_kg, strict=True)):
        if kg <= most:
            continue
        yield Finding(
            "beyond-hands",
            "caution",
            Message(
                "beyond-hands",
                slab=slab_name(slab, i, len(order.slabs)),
                weight=Weight(kg),
            ),
            "the workshop's own limit, no safe limit",
            slab=i,
            at=(f"/slabs/{i}/outline", f"/slabs/{i}/thickness"),
            measured={
                "slab_kg": round(kg, 1),
                "push_kg": round(push_kg(kg), 1),
                "push_on_rough_ground_kg": round(push_kg(kg, rough=True), 1),
            },
            limit={"slab_kg": most},
        )


def way_in_given(judged: Judged) -> Iterable[Finding]:
    """A missing dimension of the way in is asked for, never assumed to be enough."""
    order = judged.planned.order
    delivery = order.delivery
    missing = () if delivery.kind == "collect" else tuple(_missing_access(delivery))
    if missing:
        yield Finding(
            "way-in-not-told",
            "note",
            Message("way-in-not-told", missing=Listed(missing, joined="comma-and")),
            "what was not told",
            at=("/delivery",),
        )


def _missing_access(delivery: Delivery) -> Iterable[Message]:
    if delivery.doorway is None:
        yield Message("way-in-part", part="doorway")
    if delivery.turn is None:
        yield Message("way-in-part", part="turn")
    if delivery.floor is None and delivery.steps is None:
        yield Message("way-in-part", part="floor")
    elif (delivery.floor or 0) != 0 and delivery.lift is None and delivery.steps is None:
        yield Message("way-in-part", part="steps-or-lift")
    elif delivery.steps is None and delivery.lift is None:
        yield Message("way-in-part", part="steps")
