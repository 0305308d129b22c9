"""Which offers belong to which check: a check without a row has no remedy of its own."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from ledgerstone.checks import Facts, Finding
from ledgerstone.order import Order
from ledgerstone.remedies import plan_offers as plan
from ledgerstone.remedies import promise_offers as promise
from ledgerstone.remedies import strength_offers as strength
from ledgerstone.remedies.option import Option
from ledgerstone.remedies.split import two_pieces

Offer = Callable[[Finding, Order, Facts, float], Iterable[Option]]

_PLAN: tuple[Offer, ...] = (plan.layout_options, plan.without_cutouts)
_BEARING: tuple[Offer, ...] = (
    plan.other_thickness,
    strength.other_rests,
    strength.smaller_openings,
    strength.smaller_slab,
    plan.without_cutouts,
)

OFFERS: dict[str, tuple[Offer, ...]] = {
    "too-big-for-table": (plan.smaller_outline, two_pieces),
    "too-thin": (plan.other_thickness,),
    "too-thick": (plan.other_thickness,),
    "sliver": (plan.wider_outline,),
    "cutout-off-slab": _PLAN,
    "cutouts-overlap": _PLAN,
    "two-pieces": _PLAN,
    "strip-too-narrow": _PLAN,
    "inside-corner-too-tight": (plan.rounder,),
    "shade-not-matched": (promise.other_shade,),
    "dose-over-limit": (promise.other_shade,),
    "rest-under-nothing": (strength.other_rests, plan.layout_options),
    "tips-over": (strength.other_rests,),
    "cracks-when-moved": (
        plan.other_thickness,
        strength.smaller_openings,
        strength.smaller_slab,
        two_pieces,
        plan.without_cutouts,
    ),
    "too-heavy-to-handle": (plan.other_thickness, strength.smaller_slab, two_pieces),
    "cracks-in-place": _BEARING,
    "postcode-needed": (promise.other_delivery,),
    "postcode-unknown": (promise.other_delivery,),
    "area-not-served": (promise.other_delivery,),
    "way-not-served": (promise.other_delivery,),
    "needed-too-soon": (promise.later_day,),
}


def options(finding: Finding, order: Order, facts: Facts, most_share: float) -> list[Option]:
    """List what may settle a finding, the smallest change first."""
    found = [
        option
        for offer in OFFERS.get(finding.check, ())
        for option in offer(finding, order, facts, most_share)
    ]
    return sorted(found, key=lambda option: option.cost)
