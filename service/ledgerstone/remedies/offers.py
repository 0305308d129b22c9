"""Which offers belong to which check: a check without a row has no remedy of its own."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from ledgerstone.checks import Finding
from ledgerstone.remedies import making_offers as making
from ledgerstone.remedies import place_offers as places
from ledgerstone.remedies import promise_offers as promise
from ledgerstone.remedies import size_offers as sizes
from ledgerstone.remedies import soon_offers as soon
from ledgerstone.remedies import strength_offers as strength
from ledgerstone.remedies.cut_offers import in_pieces
from ledgerstone.remedies.option import Option
from ledgerstone.remedies.plain import plain_slab
from ledgerstone.remedies.policy import KIND_OF_EFFECT, SIZES_WITHIN, Kind
from ledgerstone.stages import Planned, StageContext

OptionSource = Callable[[Finding, Planned, StageContext, float], Iterable[Option]]

_PLAN: tuple[OptionSource, ...] = (places.moved, places.resized, places.opened)
_WHOLE_PLAN: tuple[OptionSource, ...] = (
    places.placed_anew,
    places.resized,
    places.opened,
    places.turned,
    places.fewer,
)
_BEARING: tuple[OptionSource, ...] = (
    strength.other_rests,
    strength.centred,
    places.roomier,
    sizes.other_thickness,
    in_pieces,
    strength.smaller_openings,
    sizes.smaller_slab,
    places.fewer,
)

OFFERS: dict[str, tuple[OptionSource, ...]] = {
    "too-big-for-table": (in_pieces, sizes.to_the_table),
    "aggregate-too-large": (places.moved, making.shallower_relief, sizes.other_thickness),
    "steel-rusts": (sizes.other_thickness,),
    "strength-unknown": (places.moved, sizes.other_thickness, strength.other_rests),
    "too-thin": (sizes.other_thickness,),
    "too-thick": (sizes.other_thickness,),
    "sliver": (sizes.wider_outline,),
    "cutout-off-slab": _PLAN,
    "cutouts-overlap": _PLAN,
    "two-pieces": _PLAN,
    "strip-too-narrow": _PLAN,
    "inside-corner-too-tight": (places.rounder,),
    "shade-not-matched": (promise.other_shade,),
    "dose-over-limit": (promise.other_shade,),
    "rest-under-nothing": (strength.other_rests, places.moved),
    "tips-over": (strength.other_rests,),
    "cracks-when-moved": (
        strength.centred,
        places.roomier,
        sizes.other_thickness,
        strength.smaller_openings,
        sizes.smaller_slab,
        in_pieces,
        places.fewer,
    ),
    "too-heavy-to-handle": (sizes.other_thickness, sizes.smaller_slab, in_pieces),
    "cracks-in-place": _BEARING,
    "postcode-needed": (promise.other_delivery,),
    "postcode-unknown": (promise.other_delivery,),
    "area-not-served": (promise.other_delivery,),
    "way-not-served": (promise.other_delivery,),
    "needed-too-soon": (soon.sooner, soon.later_day),
    "relief-off-slab": (making.relief_within,),
    "relief-too-deep": (making.shallower_relief, sizes.other_thickness),
    "too-thin-for-drip": (sizes.other_thickness, making.without_drip),
    "edge-not-made": (making.edge_size,),
    "edge-too-deep": (making.edge_size, sizes.other_thickness),
    "edge-too-thin-for-finish": (making.edge_size, making.plainer_finish, sizes.other_thickness),
    "neck-too-narrow": (sizes.slimmer_notch, sizes.other_thickness),
    "cutout-over-unit-side": (places.moved,),
    "pour-too-slow": (sizes.other_thickness, sizes.smaller_slab, in_pieces),
    "sealer-not-for-place": (promise.other_sealer,),
    "too-long-for-pallet": (promise.other_delivery, sizes.short_enough, in_pieces),
    "too-heavy-for-pallet": (promise.other_delivery, sizes.other_thickness),
    "too-much-for-van": (promise.other_delivery, sizes.short_enough, in_pieces),
    "doorway-too-narrow": (making.carried_by_others,),
    "turn-too-tight": (making.carried_by_others, sizes.short_enough, in_pieces),
    "lift-too-small": (making.carried_by_others, sizes.smaller_slab, in_pieces),
    "lift-overloaded": (making.carried_by_others, sizes.other_thickness, sizes.smaller_slab),
    "too-heavy-for-steps": (
        making.carried_by_others,
        sizes.other_thickness,
        sizes.smaller_slab,
        in_pieces,
    ),
}


# Options that are tried only if no lighter one works, since they take long to compute.
_HEAVY: frozenset[OptionSource] = frozenset(
    (
        in_pieces,
        places.resized,
        places.opened,
        places.turned,
        places.fewer,
        strength.smaller_openings,
        sizes.smaller_slab,
        sizes.to_the_table,
    )
)


def options(
    finding: Finding, planned: Planned, context: StageContext, *, heavy: bool
) -> list[Option]:
    """List what may settle a finding by itself, the lightest change first.

    An opening that runs past a side may be meant to be open to it, so that is asked.
    """
    offers = _weighing(OFFERS.get(finding.check, ()), heavy=heavy)
    every = _sorted(offers, finding, planned, context, SIZES_WITHIN)
    return [option for option in every if _is_a_fix(option) or option.name == "open-to"]


def steps(
    finding: Finding, planned: Planned, context: StageContext, most_share: float, *, heavy: bool
) -> list[Option]:
    """List steps towards an order that nothing stops: a crowded plan is laid out as a whole."""
    offers = OFFERS.get(finding.check, ())
    whole = _weighing(_WHOLE_PLAN if offers is _PLAN else offers, heavy=heavy)
    every = _sorted(whole, finding, planned, context, most_share)
    return [option for option in every if _is_a_fix(option) or most_share > SIZES_WITHIN]


def _weighing(offers: tuple[OptionSource, ...], *, heavy: bool) -> tuple[OptionSource, ...]:
    return tuple(offer for offer in offers if (offer in _HEAVY) == heavy)


def _is_a_fix(option: Option) -> bool:
    return KIND_OF_EFFECT[option.name] < Kind.FAR


def last_resort(finding: Finding, planned: Planned, context: StageContext) -> list[Option]:
    """List plain slabs, the nearest first: for where nothing else is found."""
    return sorted(plain_slab(finding, planned, context), key=lambda option: option.cost)


def _sorted(
    offers: tuple[OptionSource, ...],
    finding: Finding,
    planned: Planned,
    context: StageContext,
    most_share: float,
) -> list[Option]:
    found = [o for offer in offers for o in offer(finding, planned, context, most_share)]
    return sorted(found, key=lambda option: option.weight)
