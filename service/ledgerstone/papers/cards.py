"""The carry cards, a quarter of a page each: a slab's mass, which way up, where to grip it.

After them come the labels of the repair pots.
"""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.message import Listed, Message, People, Ruled, Value, Weight
from ledgerstone.mix import repair_pot
from ledgerstone.papers.descriptions import Fact, look_of, slab_titles
from ledgerstone.papers.lifting import Holds, held_at, holds_drawing, holds_of
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.repair_pot import pot_label, pot_skin
from ledgerstone.papers.sheet import Content, section, sheet
from ledgerstone.shade import tint_of
from ledgerstone.work import packing_way


def carry_cards(records: PaperRecords) -> Content:
    """Write a card for each slab, then the labels."""
    many = range(len(records.quote.order.slabs))
    return sheet(
        Message("card-title", reference=records.name),
        [],
        [*(_card(records, i) for i in many), *_labels(records)],
        records,
    )


def _card(records: PaperRecords, i: int) -> Content:
    """Write the card of one slab: its mass and its hands first, large."""
    quote = records.quote
    name, shape = slab_titles(quote.order)[i], quote.shapes[i]
    holds = holds_of(shape, quote.strength[i])
    svg, words = holds_drawing(shape, holds, name, records.speech, records.contain)
    large = list(_large(records, i, holds))
    return section(
        name,
        facts=_facts(records, i),
        says=[*large, *_small(records, i)],
        drawing=svg,
        words=words,
        large=len(large),
    )


def _large(records: PaperRecords, i: int, holds: Holds) -> Iterator[Value]:
    """Return the facts in large type, to be read from a distance."""
    weight = records.quote.weights[i]
    yield Weight(weight.slab_kg)
    people = weight.people_to_lift
    gear = "yes" if people > records.workshop.lifting.most_people else "no"
    yield Message("card-hands", people=People(people), gear=gear)
    yield Message("card-up")
    yield Message("card-flat" if holds.bearers_mm else "card-edge")
    first, last = holds.from_ends_mm
    yield Message("card-grip", first=held_at(first), last=held_at(last))
    if holds.bearers_mm:
        side = "front" if holds.along_y else "left"
        places = Listed(tuple(Ruled(at, coarse=True) for at in holds.bearers_mm))
        yield Message("card-bearers", side=side, places=places)
    if holds.rail_mm is not None:
        yield Message("card-rail")


def _facts(records: PaperRecords, i: int) -> Iterator[Fact]:
    quote, shape = records.quote, records.quote.shapes[i]
    slab, bare_kg = quote.order.slabs[i], quote.weights[i].slab_kg
    length, width, thickness = map(Ruled, (shape.length_mm, shape.width_mm, slab.thickness.mm))
    size = Message("card-size", length=length, width=width, thickness=thickness)
    yield Message("card-is"), size
    yield Message("card-look"), look_of(slab)
    wrapped = bare_kg + packing_way(quote.order, records.workshop).kg_per_piece
    yield Message("card-wrapped"), Weight(wrapped)
    yield Message("card-weighed"), Message("card-weighed-line")


def _small(records: PaperRecords, i: int) -> Iterator[Value]:
    if not records.quote.strength[i].handled.bearers_mm:
        yield Message("card-not-flat")
    yield Message("card-set-down")
    yield Message("card-two-hands")
    for finding in records.quote.findings:
        if finding.check == "young-in-place" and finding.slab == i:
            yield finding.message
    yield Message("card-lifting")


def _labels(records: PaperRecords) -> Iterator[Content]:
    """Write the label of each slab's repair pot, to cut off and stick on."""
    workshop = records.workshop
    names = slab_titles(records.quote.order)
    for name, slab in zip(names, records.quote.order.slabs, strict=True):
        pot = repair_pot(tint_of(slab, workshop), workshop)
        if pot is not None:
            shade = slab.shade.name or slab.shade.match or ""
            label = pot_label(records.name, shade, pot, workshop)
            yield section(Message("card-pot", name=name), says=[label, pot_skin()])
