"""The receiving and fitting sheet, for the people who receive and lay the slabs.

Statements without a source are common practice; the sheet defers to local rules and licensed
people, and calls no load safe. It has only the sections that apply: fires for a hearth, gas for
a hot appliance.
"""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.checks.rails import rail_conditions, rails_to_fit
from ledgerstone.drawing.saying import rests_facts
from ledgerstone.message import Message, People, Value, Weight
from ledgerstone.order import Order, Slab
from ledgerstone.papers.descriptions import Fact, size_of, slab_titles
from ledgerstone.papers.lifting import held_at, holds_drawing, holds_of
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.sheet import Content, section, sheet
from ledgerstone.quantities import Length
from ledgerstone.quote import Quote
from ledgerstone.strength.movement import drying_bow_mm
from ledgerstone.terms import on_solid_base
from ledgerstone.wording import slab_name, slabs_name
from ledgerstone.workshop.records import Workshop

LEVEL_MM, DOTS_MM, CLEAR_OF_HEAT_MM = 3, 300, 10  # common practice, no source
SEEN_BOW_MM = 2.0  # a bow that the eye sees along an edge; common practice, no source


def fitting_sheet(records: PaperRecords) -> Content:
    """Return the content of the sheet."""
    quote, workshop = records.quote, records.workshop
    cautions = [finding.message for finding in quote.findings if finding.level == "caution"]
    way = quote.order.delivery.kind
    return sheet(
        Message("fitting-title"),
        _head(records),
        [
            section(Message("fitting-signing", way=way), says=_before_signing(way)),
            section(Message("fitting-weights"), facts=_weights(records)),
            section(Message("fitting-carrying"), says=[*_carrying(), *_drying(quote)]),
            *_holds(records),
            section(
                Message("fitting-base"),
                says=[
                    *rail_conditions(quote.order, quote.strength, workshop),
                    *rails_to_fit(quote.order, quote.strength, workshop),
                    *_base(quote.order),
                ],
            ),
            section(Message("fitting-bedding"), facts=_bedding(quote.order)),
            section(Message("fitting-gaps"), says=_gaps(quote.order, workshop)),
            section(Message("fitting-cutting"), says=_cutting()),
            section(Message("fitting-about"), says=cautions),
            section(Message("fitting-decides"), says=_who_decides(quote.order)),
        ],
        records,
    )


def _head(records: PaperRecords) -> Iterator[Fact]:
    if records.customer:
        yield Message("paper-for"), records.customer
    yield Message("paper-order"), records.name
    yield Message("paper-ready-on"), records.quote.lead_time.ready_on
    if records.quote.terms.note:
        yield Message("paper-agreed"), records.quote.terms.note


def _before_signing(way: str) -> Iterator[Value]:
    yield Message("fitting-open", way=way)
    yield Message("fitting-damage", way=way)
    yield Message("fitting-ring")


def _carrying() -> Iterator[Value]:
    yield Message("fitting-on-edge")
    yield Message("fitting-way")
    yield Message("fitting-gloves")
    yield Message("fitting-assess")
    yield Message("fitting-until")


def _cutting() -> Iterator[Value]:
    """State what cutting does: it frees silica dust.

    Source
    ------
    HSE, COSHH essentials CN6, of kerbs; from memory.
    """
    yield Message("fitting-cut-dry")
    yield Message("fitting-cut-ask")
    yield Message("fitting-cut-wet")
    yield Message("fitting-cut-strip")


def _weights(records: PaperRecords) -> Iterator[Fact]:
    quote, most = records.quote, records.workshop.lifting.most_people
    names = slab_titles(quote.order)
    for name, slab, shape, weight in zip(
        names, quote.order.slabs, quote.shapes, quote.weights, strict=True
    ):
        message = Message(
            "paper-weight-size" if slab.quantity == 1 else "paper-weight-size-each",
            weight=Weight(weight.slab_kg),
            size=size_of(slab, shape),
            people=People(weight.people_to_lift),
            gear="yes" if weight.people_to_lift > most else "no",
        )
        many = Message("paper-many", count=slab.quantity, name=name)
        yield name if slab.quantity == 1 else many, message
    yield Message("paper-packed"), Weight(quote.packed_kg)


def _holds(records: PaperRecords) -> Iterator[Content]:
    """Draw each slab with the places to hold it."""
    quote, names = records.quote, slab_titles(records.quote.order)
    for name, shape, strength in zip(names, quote.shapes, quote.strength, strict=True):
        holds = holds_of(shape, strength)
        svg, words = holds_drawing(shape, holds, name, records.speech, records.contain)
        first, last = holds.from_ends_mm
        grip = Message("fitting-grip", first=held_at(first), last=held_at(last))
        facts = [(Message("fitting-grip-at", name=name), grip)]
        heading = Message("paper-grips-picture")
        yield section(heading, facts=facts, drawing=svg, words=words, wide_mm=76)


def _drying(quote: Quote) -> Iterator[Value]:
    """State how far a long thin slab bows that dries on one face, where it would be seen."""
    pairs = zip(quote.order.slabs, quote.shapes, strict=True)
    bow = max(drying_bow_mm(slab, shape) for slab, shape in pairs)
    if bow >= SEEN_BOW_MM:
        yield Message("fitting-dries", bow=Length.of_mm(round(bow)))


# --- laying ---------------------------------------------------------------------------------


def _base(order: Order) -> Iterator[Value]:
    yield Message("fitting-level", most=Length.of_mm(LEVEL_MM))
    if any(slab.rests is not None and slab.rests.kind == "units" for slab in order.slabs):
        yield Message("fitting-units")
    based = on_solid_base(order)
    if based:
        yield Message("fitting-solid-base", slabs=slabs_name(order, based))
    if any(slab.rests is None for slab in order.slabs):
        yield Message("fitting-rests-not-given")
    if any(slab.place == "outdoors" for slab in order.slabs):
        yield Message("fitting-fall")
    yield Message("fitting-dry-run")


def _bedding(order: Order) -> Iterator[Fact]:
    for name, slab in zip(slab_titles(order), order.slabs, strict=True):
        yield name, _bed(slab)


def _bed(slab: Slab) -> Message:
    if slab.use == "hearth":
        return Message("fitting-bed-hearth")
    if slab.rests is None:
        return Message("fitting-bed-not-given")
    return Message(
        "fitting-bed",
        rests=rests_facts(slab.rests),
        kind=slab.rests.kind,
        every=Length.of_mm(DOTS_MM),
        fixed="yes" if slab.rests.fixed else "no",
    )


def _gaps(order: Order, workshop: Workshop) -> Iterator[Value]:
    away = [slab for slab in order.slabs if slab.use != "hearth"]
    if len(away) < len(order.slabs):
        yield Message("fitting-wall-hearth")
    if any(_meets_wall(slab) for slab in away):
        yield Message("fitting-wall", gap=Length.of_mm(workshop.shaping.fitting_gap_mm))
    for join in order.joins:
        one, other = (
            slab_name(order.slabs[end.slab], end.slab, len(order.slabs))
            for end in (join.one, join.other)
        )
        yield Message("fitting-join", gap=join.gap, one=one, other=other)
    if is_hot(order):
        yield Message("fitting-hot", clear=Length.of_mm(CLEAR_OF_HEAT_MM))
    if any(slab.cutouts for slab in away):
        yield Message("fitting-seal")


def _who_decides(order: Order) -> Iterator[Value]:
    has_hearth = any(slab.use == "hearth" for slab in order.slabs)
    if has_hearth:
        yield Message("fitting-fire")
    if has_hearth or is_hot(order):
        yield Message("fitting-gas")
    if is_hot(order):
        yield Message("fitting-hot-maker")
    if any(slab.cutouts or slab.place != "indoors" for slab in order.slabs):
        yield Message("fitting-electrics")
    yield Message("fitting-bears")


def is_hot(order: Order) -> bool:
    """Return whether a hot appliance sits in a slab, or a unit is a hob's."""
    return any(
        any(cutout.heat for cutout in slab.cutouts)
        or (slab.rests is not None and any(unit.use == "hob" for unit in slab.rests.units))
        for slab in order.slabs
    )


def _meets_wall(slab: Slab) -> bool:
    return slab.size_from == "between-walls" or any(
        edge.profile == "wall" for edge in slab.edges.values()
    )
