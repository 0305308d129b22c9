"""The receiving and fitting sheet: for whoever takes the slabs in and lays them.

What it says is common practice where no source stands beside it; it defers to the rules of the
place and to licensed people, and calls no load safe.
"""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.rails import rail_conditions
from ledgerstone.drawing.saying import rests_text
from ledgerstone.order import Order, Slab
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.sheet import Content, Fact, section, sheet
from ledgerstone.papers.words import size_text, slab_name
from ledgerstone.quote import Quote
from ledgerstone.strength.movement import drying_bow_mm
from ledgerstone.wording import day_text, english, people_text, weight_text
from ledgerstone.workshop.records import Workshop

SEEN_MM = 2.0  # a bow that the eye sees along an edge; common practice, no source
_BEFORE_SIGNING = (
    "Open every crate while the driver waits. Look at each face, edge and corner.",
    "Photograph what is damaged, and write it on the carrier's paper before you sign it.",
    "Ring us the same day. Do not fit a slab that you would not keep.",
)
_CARRYING = (
    (
        "Carry every slab on edge, its long side down, and set it down on timber or foam."
        " Never carry it flat by its ends."
    ),
    "Walk the whole way first, with its turns, steps and doors. Decide who leads.",
    "Hands in gloves, feet in boots; nobody beneath a slab that is being raised.",
    (
        "Plan and assess each lift for the people who do it, as local rules ask. No weight on this"
        " sheet is one that is safe to lift."
    ),
    "Until it is fitted, keep it on edge, leaning a little, dry, and tied back.",
)
# From memory: HSE, COSHH essentials CN6, of cutting kerbs and flags: the dust is silica.
_CUTTING = (
    "Never cut, grind or drill it dry: the dust holds silica, which harms lungs for good.",
    "Better not at all: ask us, and we cast or cut it here.",
    (
        "What must be done on site is done wet, with extraction and the mask that local rules ask"
        " for, outdoors where that is possible."
    ),
    "A cut through a thin strip, or past a corner of an opening, cracks it. Ask us first.",
)
_WHO_DECIDES = (
    (
        "Gas: a gas engineer registered for it where you live connects and tests it, and says what"
        " clear space and vents it needs."
    ),
    "Electrics, and anything electric near water: a qualified electrician.",
    (
        "Fires and stoves: size and build of a hearth are the registered installer's, or building"
        " control's. This sheet is no approval of them."
    ),
    "Walls, floors and cabinets: ask their supplier or builder what load they take.",
    "Hot appliances: their maker's own instructions on clear space come before this sheet.",
)
_BEDS = {
    "units": "Dots of silicone on the units' rails, one at every 300 mm; no hard adhesive.",
    "frame": "A thin soft strip or dots of silicone all along the frame.",
    "ends": "A soft pad over the whole bearing at each end.",
    "legs": "A soft pad on each leg; all of them touch before anything is put on it.",
    "ledges": "A soft strip along each ledge.",
    "full": "A slip layer, such as a sheet of polythene, then a full even bed beneath it.",
}


def fitting_sheet(records: PaperRecords) -> Content:
    """Write what whoever receives and fits the slabs needs to know."""
    quote, workshop = records.quote, records.workshop
    cautions = [finding.says for finding in quote.findings if finding.level == "caution"]
    facts: list[Fact] = [("For", records.customer)] if records.customer else []
    facts += [("Order", records.name), ("Ready on", day_text(quote.lead_time.ready_on))]
    sections = [
        section("Before you sign for it", says=_BEFORE_SIGNING),
        section("What each piece weighs", facts=list(_weights(quote))),
        section("Carrying", says=[*_CARRYING, *_drying(quote)]),
        section("The base", says=[*_rails(quote, workshop), *_base(quote.order)]),
        section("Bedding", facts=list(_bedding(quote.order))),
        section("Gaps", says=list(_gaps(quote.order, workshop))),
        section("Cutting", says=_CUTTING),
        *([section("About this order", says=cautions)] if cautions else []),
        section("Who decides", says=_WHO_DECIDES),
    ]
    return sheet("Receiving and fitting", facts, sections, records)


def _weights(quote: Quote) -> Iterable[tuple[str, str]]:
    many = len(quote.order.slabs)
    for i, (slab, shape, weight) in enumerate(
        zip(quote.order.slabs, quote.shapes, quote.weights, strict=True)
    ):
        each = " each" if slab.quantity > 1 else ""
        planned = f"we plan {people_text(weight.people_to_lift)} round it"
        count = f"{slab.quantity} × " if slab.quantity > 1 else ""
        yield (
            f"{count}{slab_name(slab, i, many)}",
            f"{weight_text(weight.slab_kg)}{each}; {size_text(slab, shape)}; {planned}",
        )
    yield "All of it, packed", weight_text(quote.packed_kg)


def _base(order: Order) -> Iterable[str]:
    yield "Level each way: at most 3 mm under a straight edge. Shim the base, not the slab."
    kinds = {slab.rests.kind for slab in order.slabs if slab.rests is not None}
    if "units" in kinds:
        yield "Units fixed to the wall and to each other, solid-sided, with rails front and back."
    if any(slab.rests is None for slab in order.slabs):
        yield "We were not told what some of it rests on: ask us before it is laid."
    if any(slab.place == "outdoors" for slab in order.slabs):
        yield "Outdoors with a fall, so that no water stands on it, and clear of the ground."
    yield "Lay it dry first. Look at every gap, then lift it again and bed it."


def _rails(quote: Quote, workshop: Workshop) -> Iterable[str]:
    """Say which rails must be there first."""
    for message in rail_conditions(quote.order, quote.strength, workshop):
        yield english(message)


def _drying(quote: Quote) -> Iterable[str]:
    """Say how far a long thin slab bows that dries on one face, where it would be seen."""
    pairs = zip(quote.order.slabs, quote.shapes, strict=True)
    bow = max(drying_bow_mm(slab, shape) for slab, shape in pairs)
    if bow >= SEEN_MM:
        yield (
            "Keep air at both faces until it is laid, and seal both: dried on one face alone, the"
            f" longest would bow by about {bow:.0f} mm."
        )


def _bedding(order: Order) -> Iterable[tuple[str, str]]:
    many = len(order.slabs)
    for i, slab in enumerate(order.slabs):
        if slab.rests is None:
            says = "not told to us: ask before you bed it"
        else:
            held = (
                " It is fixed down." if slab.rests.fixed else " It lies loose, held by its weight."
            )
            says = f"on {rests_text(slab.rests)}. {_BEDS[slab.rests.kind]}{held}"
        yield slab_name(slab, i, many), says


def _gaps(order: Order, workshop: Workshop) -> Iterable[str]:
    gap = f"{workshop.shaping.fitting_gap_mm:g} mm"
    if any(_meets_wall(slab) for slab in order.slabs):
        yield f"Leave {gap} to every wall, and fill it with silicone, never with mortar or grout."
    for join in order.joins:
        one, other = join.one.slab + 1, join.other.slab + 1
        yield f"Leave {join.gap.text()} at the join of pieces {one} and {other}."
    if any(cutout.heat for slab in order.slabs for cutout in slab.cutouts):
        yield (
            "A hot appliance hangs from its own frame and touches no concrete: 10 mm clear all"
            " round at the least, or what its maker asks for. Never grout it in."
        )
    yield "Soft silicone at every sink and hob; let it cure before anything is used."


def _meets_wall(slab: Slab) -> bool:
    return slab.size_from == "between-walls" or any(
        edge.profile == "wall" for edge in slab.edges.values()
    )
