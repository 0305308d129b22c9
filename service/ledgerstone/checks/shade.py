"""Checks of the colour asked for: matched only where that is offered, within reach and the dose."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.shade import (
    difference_message,
    matched_shade_seen,
    nearest_palette_shade,
    shade_recipe,
    srgb_to_lab,
)
from ledgerstone.stages import Planned
from ledgerstone.wording import Message, slab_name
from ledgerstone.workshop.records.doses import dose_verdict

OUT_OF_REACH_DELTA_E = 5.0  # seen at once, not only side by side: from memory, common in trade
_OURS = "the workshop's own rule"
_DIFFERENCE = "colour difference CIEDE2000; that 5 is seen at once is common practice, no source"


def matching_offered(planned: Planned) -> Iterable[Finding]:
    """The workshop offers matching, if a colour is to be matched."""
    order, workshop = planned.order, planned.workshop
    for i, slab in enumerate(order.slabs):
        wished = slab.shade.match
        if wished is None or workshop.shade.matching:
            continue
        near, away = nearest_palette_shade(wished, workshop)
        how = difference_message(near.lab, srgb_to_lab(wished))
        yield Finding(
            "shade-not-matched",
            "stops",
            Message("shade-not-matched", wished=wished, nearest=near.name, difference=how),
            _OURS,
            slab=i,
            at=(f"/slabs/{i}/shade",),
            measured={"nearest_name": near.name, "away_delta_e": round(away, 1)},
        )


def within_reach(planned: Planned) -> Iterable[Finding]:
    """The nearest recipe is close enough to the colour to match."""
    order, workshop = planned.order, planned.workshop
    for i, slab in enumerate(order.slabs):
        wished = slab.shade.match
        seen = matched_shade_seen(wished, workshop) if wished is not None else None
        if wished is None or seen is None or (seen.away_delta_e or 0.0) <= OUT_OF_REACH_DELTA_E:
            continue
        yield Finding(
            "shade-out-of-reach",
            "caution",
            Message(
                "shade-out-of-reach",
                slab=slab_name(slab, i, len(order.slabs)),
                wished=wished,
                nearest=seen.hex,
                difference=difference_message(seen.lab, srgb_to_lab(wished)),
            ),
            _DIFFERENCE,
            slab=i,
            at=(f"/slabs/{i}/shade/match",),
            measured={"away_delta_e": round(seen.away_delta_e or 0.0, 1)},
            limit={"away_delta_e": OUT_OF_REACH_DELTA_E},
        )


def dose_within_limit(planned: Planned) -> Iterable[Finding]:
    """No shade takes more pigment than the workshop casts with."""
    order, workshop = planned.order, planned.workshop
    for i, slab in enumerate(order.slabs):
        recipe = shade_recipe(slab.shade, workshop)
        if recipe is None:
            continue
        dose = dose_verdict(recipe.doses, workshop.pigments, workshop.shade)
        if dose.verdict != "over":
            continue
        yield Finding(
            "dose-over-limit",
            "stops",
            Message(
                "dose-over-limit",
                shade=slab.shade.name or slab.shade.match or "",
                dose=dose.total_percent,
                limit=dose.most_percent,
            ),
            "ASTM C979/C979M-16 clause 1.4; for carbon black, US National Park Service"
            " Preservation Brief 2; as the workshop sets them",
            slab=i,
            at=(f"/slabs/{i}/shade",),
            measured={"dose_percent": dose.total_percent},
            limit={"dose_percent": dose.most_percent},
        )
