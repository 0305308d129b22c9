"""Quotes and send-backs as JSON members, by their schemas."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.drawings import Annotations, drawing_members
from ledgerstone.application.strength_answers import strength_members
from ledgerstone.application.told import told
from ledgerstone.checks import Finding
from ledgerstone.codec.changes import change_members
from ledgerstone.codec.drawing_schemas import DRAWINGS
from ledgerstone.codec.finding_schemas import FINDING
from ledgerstone.codec.links import LinkedOffer, link_members, offer_of
from ledgerstone.codec.order_out import write_order
from ledgerstone.codec.price_out import price_members
from ledgerstone.codec.problem_kinds import PROBLEMS, SENT_BACK_PROBLEM
from ledgerstone.codec.problem_schemas import SENT_BACK_ANSWER
from ledgerstone.codec.quote_schemas import QUOTE
from ledgerstone.codec.remedies_out import fix_members, remedy_members, saving_members
from ledgerstone.json_types import Members
from ledgerstone.message import Message
from ledgerstone.order import Slab
from ledgerstone.papers.costs import costs_content
from ledgerstone.papers.letter_slabs import slabs_in_a_line
from ledgerstone.quote import Quote, SentBack, SlabWeight
from ledgerstone.schedule import LeadTime
from ledgerstone.shade import appearance, lab_to_srgb, sealed_as, shade_seen
from ledgerstone.terms import trial_message
from ledgerstone.wording import Speech, speech_of
from ledgerstone.workshop.records import Workshop

MAX_FINDINGS = 100  # of one answer, the most serious ones
_OF_A_FINDING: Final = tuple(name for name in FINDING.fields if name not in ("remedies", "says"))


def write_quote(
    quote: Quote,
    context: QuoteContext,
    since: LinkedOffer | None = None,
    *,
    document: Members | None = None,
) -> Members:
    """Write a quote, with its signed link and its drawings' links.

    Parameters
    ----------
    since
        The offer that this one changes.
    document
        The order's JSON document, to which the patches of ways to save apply.
    """
    written: Members = QUOTE.dump(quote_members(quote, context, since, document=document))
    return written


def quote_members(
    quote: Quote,
    context: QuoteContext,
    since: LinkedOffer | None = None,
    *,
    document: Members | None = None,
) -> Members:
    """Return what ``QuoteSchema`` writes; parameters as of ``write_quote``."""
    quote, workshop = told(quote, context), context.workshop
    speech = speech_of(quote.order, workshop)
    offer = offer_of(quote, workshop, since)
    return {
        "reference": offer.reference,
        **link_members(offer, workshop, context.tokens),
        "order": write_order(quote.order),
        "issued": quote.issued,
        "valid_until": quote.valid_until,
        "standing": quote.standing,
        "note": quote.terms.note or None,
        "trial": speech.say(trial_message(workshop)) if workshop.standing.trial else None,
        "depends_on": [speech.say(condition) for condition in quote.depends_on],
        "changes": None if since is None else change_members(since, offer, speech),
        "price": price_members(quote.price, speech),
        "costs": costs_content(quote, workshop) if context.for_maker else None,
        "lead_time": lead_time_members(quote.lead_time, speech),
        "weight": {
            "slabs": [weight_members(weight, speech) for weight in quote.weights],
            "packed_kg": quote.packed_kg,
        },
        "findings": [finding_members(finding, speech) for finding in quote.findings[:MAX_FINDINGS]],
        "more_findings": _more(quote.findings),
        "drawings": _contained_drawings(quote, context, offer),
        "slabs": _slabs(quote, workshop, speech, for_maker=context.for_maker),
        "ways_to_save": saving_members(document, quote.ways, quote.price, speech)
        if document is not None and quote.searched
        else None,
    }


def write_sent_back(sent: SentBack, document: Members, context: QuoteContext) -> Members:
    """Write a send-back as the problem ``cannot-do-as-asked`` (RFC 9457).

    Parameters
    ----------
    document
        The order's JSON document, to which patches apply.
    """
    written: Members = SENT_BACK_ANSWER.dump(sent_back_members(sent, document, context))
    return written


def sent_back_members(sent: SentBack, document: Members, context: QuoteContext) -> Members:
    """Return what ``SentBackSchema`` writes; parameters as of ``write_sent_back``."""
    sent = told(sent, context)
    stops = [finding.id for finding in sent.findings if finding.level == "stops"]
    count = sum(f.level == "stops" and f.follows_from is None for f in sent.findings)
    speech = speech_of(sent.order, context.workshop)
    return {
        "type": PROBLEMS + SENT_BACK_PROBLEM.name,
        "title": speech.say(SENT_BACK_PROBLEM.title),
        "status": SENT_BACK_PROBLEM.status,
        "detail": speech.say(Message("things-to-change", count=count)),
        "order": write_order(sent.order),
        "findings": [
            finding_members(finding, speech, _remedies(document, sent, finding, context))
            for finding in sent.findings[:MAX_FINDINGS]
        ],
        "more_findings": _more(sent.findings),
        "not_checked": sent.not_checked,
        "drawings": _contained_drawings(sent, context),
        **_fixes(document, sent, stops, context),
    }


def _remedies(
    document: Members, sent: SentBack, finding: Finding, context: QuoteContext
) -> list[Members]:
    with context.contain("remedy"):
        return remedy_members(
            document, sent.found, finding.id, speech_of(sent.order, context.workshop)
        )
    return []


def _fixes(
    document: Members, sent: SentBack, stops: Sequence[str], context: QuoteContext
) -> Members:
    with context.contain("remedy"):
        return fix_members(document, sent.found, stops, speech_of(sent.order, context.workshop))
    return {}


def write_drawings(
    answer: Quote | SentBack, context: QuoteContext, since: LinkedOffer | None = None
) -> Members:
    """Return the links of the drawings, as the whole answer has them."""
    answer = told(answer, context)
    offer = offer_of(answer, context.workshop, since) if isinstance(answer, Quote) else None
    written: Members = DRAWINGS.dump(_contained_drawings(answer, context, offer))
    return written


def _contained_drawings(
    answer: Quote | SentBack, context: QuoteContext, offer: LinkedOffer | None = None
) -> Members:
    """Return the links of an answer's drawings; none if an internal fault lost them."""
    with context.contain("drawing"):
        return _drawings(answer, context, offer)
    return {}


def _drawings(
    answer: Quote | SentBack, context: QuoteContext, offer: LinkedOffer | None
) -> Members:
    """Return the links of an answer's drawings, with its findings as pins."""
    annotations = Annotations(
        reference=offer.name if offer is not None else "",
        issued=offer.issued if offer is not None else None,
        findings=answer.findings,
    )
    return drawing_members(
        answer.order, answer.shapes, context.workshop, context.tokens, annotations
    )


def _more(findings: Sequence[Finding]) -> int | None:
    """Return the number of findings left out of an answer; None if all are in."""
    return len(findings) - MAX_FINDINGS if len(findings) > MAX_FINDINGS else None


def finding_members(finding: Finding, speech: Speech, remedies: Sequence[Members] = ()) -> Members:
    """Return one finding as ``FindingSchema`` writes it, with its remedies."""
    members = {name: getattr(finding, name) for name in _OF_A_FINDING}
    return members | {"says": speech.say(finding.message), "remedies": remedies}


def lead_time_members(lead_time: LeadTime, speech: Speech) -> Members:
    """Return a lead time as ``LeadTimeSchema`` writes it."""
    return {
        "ready_on": lead_time.ready_on,
        "if_ordered_by": lead_time.if_ordered_by,
        "arrives_earliest": lead_time.arrives_earliest,
        "arrives_latest": lead_time.arrives_latest,
        "stages": [  # a phase's name on the wire: see `work.operation.Phase`
            {
                "name": speech.say(phase.name),
                "starts": phase.starts,
                "ends": phase.ends,
                "why": speech.say_all(phase.why),
            }
            for phase in lead_time.phases
        ],
    }


def weight_members(weight: SlabWeight, speech: Speech) -> Members:
    """Return a slab's weight as ``SlabWeightSchema`` writes it."""
    return {
        "label": weight.label,
        "slab_kg": weight.slab_kg,
        "people_to_lift": weight.people_to_lift,
        "says": speech.say(weight.message),
    }


def _slabs(quote: Quote, workshop: Workshop, speech: Speech, *, for_maker: bool) -> list[Members]:
    return [
        {
            "says": speech.say(description),
            "finished_mm": shape,
            "area_m2": shape.net_area_m2,
            "volume_l": shape.volume_l,
            "strength": strength_members(strength, slab, workshop, speech, for_maker=for_maker),
            "shade": shade_members(slab, workshop, speech),
        }
        for slab, shape, strength, description in zip(
            quote.order.slabs,
            quote.shapes,
            quote.strength,
            slabs_in_a_line(quote.order, quote.shapes),
            strict=True,
        )
    ]


def shade_members(slab: Slab, workshop: Workshop, speech: Speech) -> Members:
    """Return a slab's shade: colour dry, wet and sealed, their uncertainty, and the dose."""
    seen = shade_seen(slab.shade, workshop)
    if seen is None:
        return {}
    sealer = next(sealer for sealer in workshop.sealers if sealer.name == slab.finish.sealer)
    return {
        "name": slab.shade.name,
        "match": slab.shade.match,
        "hex": seen.hex,
        "hex_wet": lab_to_srgb(appearance(seen.lab, "wet")),
        "hex_sealed": lab_to_srgb(appearance(seen.lab, sealed_as(sealer))),
        "lab": [round(part, 2) for part in seen.lab],
        "by_eye": seen.by_eye,
        "dose_percent": seen.recipe.dose_percent,
        "uncertainty_delta_e": seen.uncertainty_delta_e,
        "away_delta_e": seen.away_delta_e,
        "says": speech.say(seen.message),
    }
