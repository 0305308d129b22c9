"""The approval sheet: what the customer agrees to before anything is cast.

The declaration to sign is last, on the same page as the last slab's drawing.
"""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.drawing import TitleBlock, draw_plan, missing_drawing
from ledgerstone.drawing.saying import describe, side_word
from ledgerstone.drawing.weeks import draw_weeks, say_weeks
from ledgerstone.message import Figure, Listed, Message, Money, Value, Weekday, Weight
from ledgerstone.order import LShape, Slab
from ledgerstone.papers.descriptions import (
    Fact,
    delivery_of,
    edges_of,
    look_of,
    opening_facts,
    place_of,
    size_of,
    slab_titles,
)
from ledgerstone.papers.own_terms import own_terms
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.sheet import Content, section, sheet
from ledgerstone.price import Price
from ledgerstone.quantities import Length
from ledgerstone.schedule import PhaseDays
from ledgerstone.shade import SCREENS_DIFFER, shade_seen
from ledgerstone.shape import Shape
from ledgerstone.terms import trial_message
from ledgerstone.wording import percent_of
from ledgerstone.workshop.records import Workshop

# Units for a slab's own height: with it a plan across the whole width leaves room to sign beneath.
PLAN_TALLEST = 330.0


def approval_sheet(records: PaperRecords) -> Content:
    """Write what the customer signs."""
    slabs = records.quote.order.slabs
    return sheet(
        Message("approval-title"),
        _offer_facts(records),
        [
            *_weeks(records),
            section(Message("approval-expect"), says=_expect(slabs)),
            section(Message("approval-terms"), says=own_terms(records.workshop)),
            section(Message("approval-joins"), facts=_joins(records)),
            section(Message("approval-check"), says=_checks(records)),
            *(_slab(records, i) for i in range(len(slabs))),
        ],
        records,
        signs=Message("approval-signs", workshop=records.workshop.workshop.name),
    )


def _expect(slabs: tuple[Slab, ...]) -> Iterator[Value]:
    yield Message("approval-expect-holes")
    yield Message("approval-expect-mottling")
    yield Message("approval-expect-hairlines")
    yield Message("approval-expect-paler")
    if any(slab.place == "outdoors" for slab in slabs):
        yield Message("approval-expect-bloom")
    yield Message("approval-expect-edges")


def _checks(records: PaperRecords) -> Iterator[Value]:
    tile = any(step.phase == "sample" for step in records.quote.work)
    yield Message("approval-check-sizes")
    if any(slab.cutouts for slab in records.quote.order.slabs):
        yield Message("approval-check-openings")
    yield Message("approval-check-round")
    yield Message("approval-check-look", tile="yes" if tile else "no")
    yield Message("approval-check-place")


# --- the offer ------------------------------------------------------------------------------


def _offer_facts(records: PaperRecords) -> Iterator[Fact]:
    quote, price, lead = records.quote, records.quote.price, records.quote.lead_time
    if records.workshop.standing.trial:
        yield Message("approval-trial"), trial_message(records.workshop)
    if records.customer:
        yield Message("paper-for"), records.customer
    yield Message("approval-standing", standing=quote.standing), records.name
    stands = Message(
        "approval-stands",
        issued=quote.issued,
        until=quote.valid_until,
        standing=quote.standing,
    )
    yield Message("approval-offered"), stands
    yield from _price_facts(records)
    yield Message("approval-deposit"), Money(price.currency, price.deposit)
    if quote.terms.note:
        yield Message("paper-agreed"), quote.terms.note
    ready = Message("approval-ready", day=lead.ready_on, by=lead.if_ordered_by)
    yield Message("paper-ready-on"), ready
    yield Message("paper-delivery"), delivery_of(quote.order, lead, whole=records.whole)
    if quote.order.delivery.postcode:
        yield Message("approval-postcode"), quote.order.delivery.postcode
    yield Message("approval-weight"), Weight(quote.packed_kg)


def _price_facts(records: PaperRecords) -> Iterator[Fact]:
    """Describe the price with its tax, and the lines that the maker added."""
    price = records.quote.price
    yield Message("approval-price"), price_of(price, records.workshop)
    for line in records.quote.terms.adjustments:
        amount = Money(price.currency, line.amount)
        yield line.label, Message("approval-line", amount=amount)


def price_of(price: Price, workshop: Workshop) -> Value:
    """Describe a price, with the tax that it includes, if any."""
    total = Money(price.currency, price.total)
    if not price.tax:
        return total
    return Message(
        "approval-price-taxed",
        total=total,
        tax=Money(price.currency, price.tax),
        name=workshop.tax.name,
        percent=percent_of(price.tax_percent),
    )


def _weeks(records: PaperRecords) -> Iterator[Content]:
    """Describe the weeks, phase by phase, where their days are as they were offered."""
    lead = records.quote.lead_time
    if records.whole and lead.phases:
        yield section(
            Message("approval-weeks"),
            facts=((phase.name, phase_of(phase)) for phase in lead.phases),
            drawing=draw_weeks(lead, records.speech),
            words=say_weeks(lead, records.speech),
        )


def phase_of(phase: PhaseDays) -> Message:
    """Describe a phase's days, then its reasons."""
    why = Listed(phase.why, joined="sentences")
    first, last = (Weekday(day, with_year=False) for day in (phase.starts, phase.ends))
    if phase.starts == phase.ends:
        return Message("approval-stage-day", first=first, why=why)
    return Message("approval-stage", first=first, last=last, why=why)


# --- slabs ----------------------------------------------------------------------------------


def _slab(records: PaperRecords, i: int) -> Content:
    """Describe one slab as ordered, with its drawing."""
    order, shape = records.quote.order, records.quote.shapes[i]
    slab = order.slabs[i]
    return section(
        slab_titles(order)[i],
        facts=_slab_facts(slab, shape, records.workshop),
        drawing=_plan(records, i),
        words=describe(slab, shape, records.speech),
        is_slab=True,
    )


def _plan(records: PaperRecords, i: int) -> str:
    """Draw one slab's plan; nothing that the sheet does not number is pinned on it."""
    slab, shape = records.quote.order.slabs[i], records.quote.shapes[i]
    title = TitleBlock(reference=records.name, label=slab.label)
    with records.contain("drawing"):
        return draw_plan(
            slab, shape, title=title, alone=True, speech=records.speech, tallest=PLAN_TALLEST
        )
    return missing_drawing(records.speech)


def _slab_facts(slab: Slab, shape: Shape, workshop: Workshop) -> Iterator[Fact]:
    yield Message("approval-quantity"), Figure(slab.quantity, 0)
    yield Message("approval-size"), size_of(slab, shape)
    gap = Length.of_mm(workshop.shaping.fitting_gap_mm, "mm")
    yield Message("approval-sizes-from"), Message("approval-from", source=slab.size_from, gap=gap)
    if isinstance(slab.outline, LShape):
        yield Message("approval-hand"), hand_of(slab.outline)
    yield from opening_facts(slab, shape)
    yield from edges_of(slab, shape)
    yield Message("approval-look"), look_of(slab)
    seen = shade_seen(slab.shade, workshop)
    yield Message("approval-sure"), SCREENS_DIFFER if seen is None else seen.message
    yield Message("approval-goes"), place_of(slab)


def hand_of(outline: LShape) -> Message:
    """State which hand an L is, seen from above with its front towards the reader."""
    depth, side = outline.notch.corner.split("-")
    return Message("approval-hand-of", arm="left" if side == "right" else "right", depth=depth)


def _joins(records: PaperRecords) -> Iterator[Fact]:
    order = records.quote.order
    names = slab_titles(order)
    for join in order.joins:
        one = Message("approval-join", name=names[join.one.slab], side=side_word(join.one.side))
        other, side = names[join.other.slab], side_word(join.other.side)
        yield one, Message("approval-join-meets", name=other, side=side, gap=join.gap)
