"""Quotes, send-backs and their parts as JSON members: every quantity's key ends in its unit."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from shapely.geometry import Point

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.drawings import Annotations, drawing_members
from ledgerstone.checks import Finding
from ledgerstone.checks.finding import geojson
from ledgerstone.codec.changes import write_changes
from ledgerstone.codec.links import Offer, link_members, offer_of
from ledgerstone.codec.money import write_price
from ledgerstone.codec.order_out import write_order
from ledgerstone.codec.problem_kinds import PROBLEMS, SENT_BACK
from ledgerstone.codec.remedies_out import write_fixes, write_remedies, write_ways
from ledgerstone.order import Slab
from ledgerstone.papers.costs import costs_content
from ledgerstone.quote import Quote, SentBack, SlabWeight
from ledgerstone.schedule import LeadTime
from ledgerstone.shade import appearance, lab_to_srgb, sealed_as, shade_seen
from ledgerstone.shape import Shape
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.workshop.records import Workshop

MM2_PER_M2 = 1e6
MM3_PER_L = 1e6
MOST_FINDINGS = 100  # the gravest; an order that has more is not read to its end


def write_quote(
    quote: Quote,
    context: QuoteContext,
    since: Offer | None = None,
    *,
    document: dict[str, Any] | None = None,
) -> dict[str, Any]:
    """Write a quote, with its signed link and its drawings' links.

    Parameters
    ----------
    since
        The offer that this one changes.
    document
        The order as it was sent: the patches of ways to save apply to it.
    """
    workshop, tokens = context.workshop, context.tokens
    offer = offer_of(quote, workshop, since)
    return {
        "reference": offer.reference,
        **link_members(offer, workshop, tokens),
        "order": write_order(quote.order),
        "issued": quote.issued.isoformat(),
        "valid_until": quote.valid_until.isoformat(),
        "standing": quote.standing,
        "depends_on": list(quote.depends_on),
        **({} if since is None else {"changes": write_changes(since, offer)}),
        "price": write_price(quote.price),
        **({"costs": costs_content(quote, workshop)} if context.for_maker else {}),
        "lead_time": _lead_time(quote.lead_time),
        "weight": _weight(quote.weights, quote.packed_kg),
        "findings": [write_finding(finding) for finding in quote.findings[:MOST_FINDINGS]],
        **_more(quote.findings),
        "drawings": _contained_drawings(quote, context, offer),
        "slabs": _slabs(quote, workshop),
        **(
            {"ways_to_save": write_ways(document, quote.ways, quote.price)}
            if document is not None and quote.searched
            else {}
        ),
    }


def write_sent_back(
    sent: SentBack, document: dict[str, Any], context: QuoteContext
) -> dict[str, Any]:
    """Write a send-back as the problem ``cannot-do-as-asked`` (RFC 9457).

    Parameters
    ----------
    document
        The order as it was sent: patches apply to it.
    """
    stops = sum(finding.level == "stops" for finding in sent.findings)
    order = write_order(sent.order)
    return {
        "type": PROBLEMS + SENT_BACK.name,
        "title": SENT_BACK.title,
        "status": SENT_BACK.status,
        "detail": f"{stops} thing{'' if stops == 1 else 's'} to change before it can be made.",
        "order": order,
        "findings": [
            write_finding(finding, _remedies(document, sent, finding, context))
            for finding in sent.findings[:MOST_FINDINGS]
        ],
        **_more(sent.findings),
        "not_checked": list(sent.not_checked),
        "drawings": _contained_drawings(sent, context),
        **_fixes(document, sent, context),
    }


def _remedies(
    document: dict[str, Any], sent: SentBack, finding: Finding, context: QuoteContext
) -> list[dict[str, Any]]:
    with context.contain("remedy"):
        return write_remedies(document, sent.found, finding.id)
    return []


def _fixes(document: dict[str, Any], sent: SentBack, context: QuoteContext) -> dict[str, Any]:
    stops = [finding.id for finding in sent.findings if finding.level == "stops"]
    with context.contain("remedy"):
        return write_fixes(document, sent.found, stops)
    return {}


def write_drawings(
    answer: Quote | SentBack, context: QuoteContext, since: Offer | None = None
) -> dict[str, Any]:
    """Write the drawings' links alone, as the whole answer gives them."""
    offer = offer_of(answer, context.workshop, since) if isinstance(answer, Quote) else None
    return _contained_drawings(answer, context, offer)


def _contained_drawings(
    answer: Quote | SentBack, context: QuoteContext, offer: Offer | None = None
) -> dict[str, Any]:
    """Link an answer's drawings; none where a fault of ours lost them."""
    with context.contain("drawing"):
        return _drawings(answer, context, offer)
    return {}


def _drawings(
    answer: Quote | SentBack, context: QuoteContext, offer: Offer | None
) -> dict[str, Any]:
    """Link an answer's drawings, its findings pinned on them; an offer has a name and a day."""
    annotations = Annotations(
        reference=offer.name if offer is not None else "",
        issued=offer.issued if offer is not None else None,
        findings=answer.findings,
    )
    return drawing_members(
        answer.order, answer.shapes, context.workshop, context.tokens, annotations
    )


def _more(findings: Sequence[Finding]) -> dict[str, int]:
    """Say how many findings are left out of an answer, where they are too many."""
    more = len(findings) - MOST_FINDINGS
    return {"more_findings": more} if more > 0 else {}


def write_finding(finding: Finding, remedies: Sequence[dict[str, Any]] = ()) -> dict[str, Any]:
    """Write one finding, with what would settle it."""
    members: dict[str, Any] = {
        "id": finding.id,
        "check": finding.check,
        "level": finding.level,
        "slab": finding.slab,
        "at": list(finding.at),
        "says": finding.says,
        "measured": dict(finding.measured),
        "limit": dict(finding.limit),
        "where_mm": finding.where_mm,
        "source": finding.source,
        "remedies": list(remedies),
    }
    return {key: value for key, value in members.items() if value is not None}


def _lead_time(lead: LeadTime) -> dict[str, Any]:
    return {
        "ready_on": lead.ready_on.isoformat(),
        "if_ordered_by": lead.if_ordered_by.isoformat(),
        "arrives": {
            "earliest": lead.arrives_earliest.isoformat(),
            "latest": lead.arrives_latest.isoformat(),
        },
        "stages": [
            {
                "name": stage.name,
                "starts": stage.starts.isoformat(),
                "ends": stage.ends.isoformat(),
                "why": stage.why,
            }
            for stage in lead.stages
        ],
    }


def _weight(weights: Sequence[SlabWeight], packed_kg: float) -> dict[str, Any]:
    return {
        "slabs": [
            {
                "label": weight.label,
                "slab_kg": round(weight.slab_kg, 1),
                "people_to_lift": weight.people_to_lift,
                "says": weight.says,
            }
            for weight in weights
        ],
        "packed_kg": round(packed_kg, 1),
    }


def _slabs(quote: Quote, workshop: Workshop) -> list[dict[str, Any]]:
    return [
        {
            "finished_mm": {
                "length_mm": round(shape.length_mm, 1),
                "width_mm": round(shape.width_mm, 1),
                "thickness_mm": round(shape.thickness_mm, 1),
            },
            **measures(shape),
            "strength": _strength(strength),
            "shade": shade_members(slab, workshop),
        }
        for slab, shape, strength in zip(
            quote.order.slabs, quote.shapes, quote.strength, strict=True
        )
    ]


def _strength(strength: SlabStrength) -> dict[str, Any]:
    """Write the case nearest to its limit."""
    worst = strength.worst
    if worst is None:
        return {}
    return {
        "worst_case": worst.case,
        "utilisation": worst.utilisation,
        "where_mm": geojson(Point(worst.where_mm)),
    }


def measures(shape: Shape) -> dict[str, float]:
    """Net area and volume, as a customer reads them."""
    return {
        "area_m2": round(shape.net_area_mm2 / MM2_PER_M2, 4),
        "volume_l": round(shape.volume_mm3 / MM3_PER_L, 2),
    }


def shade_members(slab: Slab, workshop: Workshop) -> dict[str, Any]:
    """How a slab's shade looks dry, wet and sealed, how sure that is, and its dose."""
    seen = shade_seen(slab.shade, workshop)
    if seen is None:
        return {}
    sealer = next(one for one in workshop.sealers if one.name == slab.finish.sealer)
    members = {
        "name": slab.shade.name,
        "match": slab.shade.match,
        "hex": seen.hex,
        "hex_wet": lab_to_srgb(appearance(seen.lab, "wet")),
        "hex_sealed": lab_to_srgb(appearance(seen.lab, sealed_as(sealer))),
        "lab": [round(part, 2) for part in seen.lab],
        "by_eye": seen.by_eye,
        "dose_percent": round(seen.recipe.dose_percent, 3),
        "uncertainty_delta_e": _tenths(seen.uncertainty_delta_e),
        "away_delta_e": _tenths(seen.away_delta_e),
        "says": seen.says,
    }
    return {key: value for key, value in members.items() if value is not None}


def _tenths(value: float | None) -> float | None:
    return None if value is None else round(value, 1)
