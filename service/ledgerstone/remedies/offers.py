"""Which offers belong to which check: a check without a row has no remedy of its own."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from ledgerstone.checks import Facts, Finding
from ledgerstone.order import Order
from ledgerstone.remedies import making_offers as making
from ledgerstone.remedies import plan_offers as plan
from ledgerstone.remedies import promise_offers as promise
from ledgerstone.remedies import soon_offers as soon
from ledgerstone.remedies import strength_offers as strength
from ledgerstone.remedies.option import WITHIN, Option
from ledgerstone.remedies.plain import plain_slab
from ledgerstone.remedies.split import two_pieces
from ledgerstone.remedies.turn_offers import turned

Offer = Callable[[Finding, Order, Facts, float], Iterable[Option]]

_PLAN: tuple[Offer, ...] = (plan.layout_options, turned)
_WHOLE_PLAN: tuple[Offer, ...] = (plan.whole_layouts, turned)
_BEARING: tuple[Offer, ...] = (
    plan.other_thickness,
    strength.other_rests,
    strength.smaller_openings,
    strength.smaller_slab,
    plan.fewer_openings,
)

OFFERS: dict[str, tuple[Offer, ...]] = {
    "too-big-for-table": (plan.smaller_outline, two_pieces),
    "aggregate-too-large": (plan.layout_options, making.shallower_relief, plan.other_thickness),
    "steel-rusts": (plan.other_thickness,),
    "strength-unknown": (plan.layout_options, plan.other_thickness, strength.other_rests),
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
        plan.fewer_openings,
    ),
    "too-heavy-to-handle": (plan.other_thickness, strength.smaller_slab, two_pieces),
    "cracks-in-place": _BEARING,
    "postcode-needed": (promise.other_delivery,),
    "postcode-unknown": (promise.other_delivery,),
    "area-not-served": (promise.other_delivery,),
    "way-not-served": (promise.other_delivery,),
    "needed-too-soon": (soon.sooner, soon.later_day),
    "relief-off-slab": (making.relief_within,),
    "relief-too-deep": (making.shallower_relief, plan.other_thickness),
    "too-thin-for-drip": (plan.other_thickness, making.without_drip),
    "edge-not-made": (making.edge_size,),
    "edge-too-deep": (making.edge_size, plan.other_thickness),
    "edge-too-thin-for-finish": (making.edge_size, making.plainer_finish, plan.other_thickness),
    "neck-too-narrow": (plan.slimmer_notch, plan.other_thickness),
    "cutout-over-unit-side": (making.cutout_inside_unit,),
    "pour-too-slow": (plan.other_thickness, strength.smaller_slab, two_pieces),
    "sealer-not-for-place": (promise.other_sealer,),
    "too-long-for-pallet": (promise.other_delivery, strength.short_enough, two_pieces),
    "too-heavy-for-pallet": (promise.other_delivery, plan.other_thickness),
    "too-much-for-van": (promise.other_delivery, strength.short_enough, two_pieces),
    "doorway-too-narrow": (making.carried_by_others,),
    "turn-too-tight": (making.carried_by_others, strength.short_enough, two_pieces),
    "lift-too-small": (making.carried_by_others, strength.smaller_slab, two_pieces),
    "lift-overloaded": (making.carried_by_others, plan.other_thickness, strength.smaller_slab),
    "too-heavy-for-steps": (
        making.carried_by_others,
        plan.other_thickness,
        strength.smaller_slab,
        two_pieces,
    ),
}


def options(finding: Finding, order: Order, facts: Facts) -> list[Option]:
    """List what may settle a finding by itself, the smallest change first."""
    return _sorted(OFFERS.get(finding.check, ()), finding, order, facts, WITHIN)


def steps(finding: Finding, order: Order, facts: Facts, most_share: float) -> list[Option]:
    """List steps towards an order that nothing stops: a crowded plan is laid out as a whole."""
    offers = OFFERS.get(finding.check, ())
    whole = _WHOLE_PLAN if offers is _PLAN else offers
    return _sorted(whole, finding, order, facts, most_share)


def last_resort(finding: Finding, order: Order, facts: Facts) -> list[Option]:
    """List plain slabs, the nearest first: for where nothing else is found."""
    return _sorted((plain_slab,), finding, order, facts, 1.0)


def _sorted(
    offers: tuple[Offer, ...], finding: Finding, order: Order, facts: Facts, most_share: float
) -> list[Option]:
    found = [o for offer in offers for o in offer(finding, order, facts, most_share)]
    return sorted(found, key=lambda option: option.cost)
