"""Checks of hands: who carries at the other end, what is beyond hands, and what was not told."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.order import Delivery
from ledgerstone.stages import Scheduled
from ledgerstone.transport import people_to_lift, push_kg, team_lift_kg
from ledgerstone.wording import capital, people_text, slab_words, weight_text

_LEFT: dict[str, str] = {
    "collect": "Collected",
    "pallet": "Left at the kerb",
    "own-van": "Brought to your door by our van",
}
_SHARE = "the workshop's own share for one person; HSE L23 says when a lift is to be assessed"
_ASSESS = " Plan and assess that lift first: these figures are no safe limit."


def hands_at_the_other_end(scheduled: Scheduled) -> Iterable[Finding]:
    """Where the customer carries it in, they are told how many people the heaviest slab takes."""
    planned = scheduled.planned
    order, workshop = planned.order, planned.workshop
    delivery = order.delivery
    if delivery.kind == "fitted":
        return
    heaviest = max(range(len(order.slabs)), key=lambda i: planned.slab_kg[i])
    kg = planned.slab_kg[heaviest]
    people = people_to_lift(kg, workshop)
    if people > workshop.lifting.most_people or people <= (delivery.people or 0):
        return
    name = slab_words(order.slabs[heaviest], heaviest, len(order.slabs))
    carry = f"{people_text(people)} to carry in {name}, {weight_text(kg)}"
    if delivery.people is None:
        says = f"{_LEFT[delivery.kind]}: you need {carry}.{_assess(people, kg)}"
    else:
        only = people_text(delivery.people) if delivery.people else "nobody"
        says = (
            f"It takes {carry}, and {only} will be there. Have more people there on the day, or"
            f" choose fitting.{_assess(people, kg)}"
        )
    yield Finding(
        "hands-needed",
        "note" if delivery.people is None else "caution",
        says,
        _SHARE,
        slab=heaviest,
        at=("/delivery/people",),
        measured={"slab_kg": round(kg, 1)},
        limit={"one_person_kg": workshop.lifting.kg_per_person},
    )


def _assess(people: int, kg: float) -> str:
    """Ask for an assessment above the filter of so many, or where there is no filter for them."""
    filtered = team_lift_kg(men=people)
    return _ASSESS if filtered is None or kg > filtered else ""


def beyond_hands(scheduled: Scheduled) -> Iterable[Finding]:
    """A slab heavier than the workshop's hands carry goes by trolley or gear: a caution."""
    planned = scheduled.planned
    order, workshop = planned.order, planned.workshop
    lifting = workshop.lifting
    most = lifting.most_people * lifting.kg_per_person
    for i, (slab, kg) in enumerate(zip(order.slabs, planned.slab_kg, strict=True)):
        if kg <= most:
            continue
        name = capital(slab_words(slab, i, len(order.slabs)))
        yield Finding(
            "beyond-hands",
            "caution",
            f"{name} weighs {weight_text(kg)}: more than the {most:g} kg that"
            f" {people_text(lifting.most_people)} here carry. It goes on a trolley or by lifting"
            " gear, on a firm and level way.",
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


def way_in_told(scheduled: Scheduled) -> Iterable[Finding]:
    """What was not told of the way in is asked, and is never taken as passing."""
    order = scheduled.planned.order
    delivery = order.delivery
    missing = [] if delivery.kind == "collect" else list(_untold(delivery))
    if missing:
        yield Finding(
            "way-in-not-told",
            "note",
            f"Tell us {_listed(missing)}. Until then we can't check that it can be carried in.",
            "what was not told",
            at=("/delivery",),
        )


def _untold(delivery: Delivery) -> Iterable[str]:
    if delivery.doorway is None:
        yield "the narrowest doorway on the way in"
    if delivery.turn is None:
        yield "any tight turn"
    if delivery.floor is None and delivery.steps is None:
        yield "the floor, with any steps"
    elif (delivery.floor or 0) != 0 and delivery.lift is None and delivery.steps is None:
        yield "the steps up, or the size of the lift"
    elif delivery.steps is None and delivery.lift is None:
        yield "any steps"


def _listed(parts: list[str]) -> str:
    return parts[0] if len(parts) == 1 else f"{', '.join(parts[:-1])}, and {parts[-1]}"
