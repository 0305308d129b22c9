"""The approval sheet: what the customer agrees to before anything is cast."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.cutouts import kind_of
from ledgerstone.drawing import MISSING, TitleBlock, draw_plan
from ledgerstone.drawing.saying import (
    cutout_notes,
    describe,
    edge_text,
    edges_alike,
    rests_text,
    side_title,
)
from ledgerstone.drawing.weeks import draw_weeks, say_weeks
from ledgerstone.order import LShape, Slab
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.sheet import Content, section, sheet
from ledgerstone.papers.words import (
    arrives_text,
    shade_text,
    size_text,
    slab_name,
    stage_text,
    tax_text,
)
from ledgerstone.shade import SCREENS_DIFFER, shade_seen
from ledgerstone.shape import Shape
from ledgerstone.wording import day_text, english, money_text, weight_text
from ledgerstone.workshop.records import Workshop

_SIZE_FROM = {
    "finished": "finished sizes, as you gave them",
    "between-walls": "your walls; {gap} mm came off each wall side, to fit it",
    "over-units": "your units, with the overhangs added",
    "template-to-follow": "a template that is still to come; nothing is cast before it is here",
}
_PLACES = {"indoors": "indoors", "wet-room": "in a wet room", "outdoors": "outdoors"}
EXPECT = (
    "Small pin holes and voids: air leaves them in every casting, and some open later.",
    "Mottling: one slab is lighter and darker within itself, and two are never quite alike.",
    "Hairlines: fine lines in the skin may show in certain light. They take no strength away.",
    "A shade that grows paler in its first months as it dries, and richer again when sealed.",
    "A bloom of white where water has stood in its first winter; it can be washed off.",
    "Edges are eased, never knife sharp. A sample tile shows all of this better than words.",
)
_CHECK = (
    "The sizes and where each came from are right.",
    "Every opening is where it should be, and is the size its own template asks for.",
    "Front and back, left and right are the right way round, seen from above.",
    "The shade, the surface and the sealer are those you chose from a cast sample.",
    "We know where it goes, what it rests on and how it gets in.",
)


def approval_sheet(records: PaperRecords) -> Content:
    """Write what the customer signs."""
    workshop, order = records.workshop, records.quote.order
    slabs = [_slab(records, i) for i in range(len(order.slabs))]
    return sheet(
        "To approve before we cast",
        _offer_facts(records),
        [
            *slabs,
            *_joins(records),
            *_weeks(records),
            section("What to expect of the material", says=EXPECT),
            section("Check before you sign", says=_CHECK),
            *([section("Terms", says=workshop.reply.terms)] if workshop.reply.terms else []),
        ],
        records,
        signs=(
            f"I have checked this sheet and ask {workshop.workshop.name} to cast what it shows."
            " What is cast cannot be changed."
        ),
    )


def _slab(records: PaperRecords, i: int) -> Content:
    """Say one slab: its drawing, and all that was asked of it."""
    order, workshop = records.quote.order, records.workshop
    slab, shape = order.slabs[i], records.quote.shapes[i]
    return section(
        slab_name(slab, i, len(order.slabs)),
        facts=_slab_facts(slab, shape, workshop),
        drawing=_plan(records, i),
        words=describe(slab, shape),
    )


def _plan(records: PaperRecords, i: int) -> str:
    """Draw one slab's plan; nothing that the sheet does not number is pinned on it."""
    slab, mine = records.quote.order.slabs[i], records.workshop.workshop
    title = TitleBlock(
        reference=records.name,
        label=slab.label,
        shade=slab.shade.name or slab.shade.match or "",
        workshop=mine.name,
    )
    with records.contain("drawing"):
        return draw_plan(slab, records.quote.shapes[i], title=title, speech=records.speech)
    return MISSING


def _offer_facts(records: PaperRecords) -> Iterable[tuple[str, str]]:
    quote, price, workshop = records.quote, records.quote.price, records.workshop
    if records.customer:
        yield "For", records.customer
    yield quote.standing.capitalize(), records.name
    yield "Offered on", f"{day_text(quote.issued)}; it stands until {day_text(quote.valid_until)}"
    tax = tax_text(price, workshop.tax.name)
    yield "Price", f"{money_text(price.currency, price.total)}{f', {tax}' if tax else ''}"
    for line in quote.terms.adjustments:
        yield (
            english(line.label),
            f"{money_text(price.currency, line.amount)}, in the price before tax",
        )
    yield "Deposit", money_text(price.currency, price.deposit)
    if quote.terms.note:
        yield "Agreed", quote.terms.note
    lead = quote.lead_time
    yield "Ready on", f"{day_text(lead.ready_on)}, if ordered by {day_text(lead.if_ordered_by)}"
    if records.whole:
        yield "Delivery", arrives_text(lead, quote.order.delivery.kind)
    yield "Weight, packed", weight_text(quote.packed_kg)


def _slab_facts(slab: Slab, shape: Shape, workshop: Workshop) -> Iterable[tuple[str, str]]:
    yield "How many", str(slab.quantity)
    yield "Finished size", size_text(slab, shape)
    gap = f"{workshop.shaping.fitting_gap_mm:g}"
    yield "Sizes from", _SIZE_FROM[slab.size_from].format(gap=gap)
    if isinstance(slab.outline, LShape):
        yield "Hand", hand_text(slab.outline)
    for i, cutout in enumerate(slab.cutouts):
        name = cutout.label.capitalize() if cutout.label else f"Opening {i + 1}"
        notes = "".join(f", {note}" for note in cutout_notes(cutout))
        source = "" if cutout.size_from == "template-to-follow" else ", as you measured it"
        yield name, f"{kind_of(cutout).described(cutout)}{notes}{source}"
    for names, edge in edges_alike(slab).items():
        yield f"Edge: {side_title(names).lower()}", edge_text(edge)
    yield "Shade and finish", shade_text(slab)
    seen = shade_seen(slab.shade, workshop)
    yield "How sure", seen.says if seen is not None else english(SCREENS_DIFFER)
    rests = "" if slab.rests is None else f", on {rests_text(slab.rests)}"
    yield "Where it goes", f"{_PLACES[slab.place]}{rests}"


def hand_text(outline: LShape) -> str:
    """Say which hand an L is, seen from above with its front towards the reader."""
    depth, side = outline.notch.corner.split("-")
    arm = "left" if side == "right" else "right"
    way = "back" if depth == "back" else "forward"
    return (
        f"{arm} hand: seen from above with the front towards you, its arm runs {way} on the {arm};"
        f" the {depth} {side} corner is left out"
    )


def _weeks(records: PaperRecords) -> Iterable[Content]:
    """Say the weeks, stage by stage, where their days are as they were offered."""
    lead = records.quote.lead_time
    if records.whole and lead.stages:
        facts = [(english(stage.name), stage_text(stage)) for stage in lead.stages]
        drawing, words = draw_weeks(lead), say_weeks(lead)
        yield section("The weeks", facts=facts, drawing=drawing, words=words)


def _joins(records: PaperRecords) -> Iterable[Content]:
    order = records.quote.order
    if not order.joins:
        return
    names = [slab_name(slab, i, len(order.slabs)) for i, slab in enumerate(order.slabs)]
    facts = [
        (
            f"{names[join.one.slab]}, {join.one.side}",
            f"meets {names[join.other.slab]}, {join.other.side}, with {join.gap.text()} between",
        )
        for join in order.joins
    ]
    yield section("Joins", facts=facts)
