"""Descriptions shared by all papers: a slab's name, size, look, openings and edges."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.drawing.frame import leading_length, shown
from ledgerstone.drawing.saying import cutout_size, edge_facts, rests_facts, sides_named
from ledgerstone.drawing.schedule import letter_of, opening_notes, relief_notes, relief_size
from ledgerstone.drawing.sections import details
from ledgerstone.message import Listed, Message, Value
from ledgerstone.order import Order, Polygon, Round, Slab
from ledgerstone.schedule import LeadTime
from ledgerstone.shape import Shape

Fact = tuple[Value, Value]


def slab_title(slab: Slab, index: int, slabs: int) -> Value:
    """Name a slab on paper: its label, or what it is and its number."""
    if slab.label:
        return slab.label
    return Message("paper-use", use=slab.use, number=0 if slabs == 1 else index + 1)


def slab_titles(order: Order) -> tuple[Value, ...]:
    """Name every slab of an order."""
    many = len(order.slabs)
    return tuple(slab_title(slab, i, many) for i, slab in enumerate(order.slabs))


def size_of(slab: Slab, shape: Shape) -> Message:
    """Describe a slab's finished size in the customer's own units."""
    like, thickness = leading_length(slab), slab.thickness
    length, width = shown(like, shape.length_mm), shown(like, shape.width_mm)
    if isinstance(slab.outline, Round):
        return Message("paper-size-round", across=length, thickness=thickness)
    if isinstance(slab.outline, Polygon):
        return Message("paper-size-over-all", length=length, width=width, thickness=thickness)
    return Message("paper-size", length=length, width=width, thickness=thickness)


def look_of(slab: Slab) -> Message:
    """Describe a slab's shade, surface and sealer."""
    surface, sealer = slab.finish.surface, slab.finish.sealer
    if slab.shade.match is not None:
        colour = slab.shade.match
        return Message("paper-look-matched", colour=colour, surface=surface, sealer=sealer)
    return Message("paper-look", shade=slab.shade.name or "", surface=surface, sealer=sealer)


def opening_facts(slab: Slab, shape: Shape) -> Iterator[Fact]:
    """Describe each opening and relief by its letter: its size, its place, and what else it has."""
    like = leading_length(slab)
    x0, y0, _, _ = shape.outline.bounds
    for i, cutout in enumerate(slab.cutouts):
        letter = letter_of(i)
        name = Message("paper-opening-unnamed", letter=letter)
        if cutout.label:
            name = Message("paper-opening", letter=letter, label=cutout.label)
        notes = [cutout_size(cutout, like), *opening_notes(cutout, (x0, y0), like)]
        if cutout.size_from != "template-to-follow":
            notes.append(Message("approval-measured"))
        yield name, Listed(tuple(notes), joined="comma")
    for i, relief in enumerate(slab.reliefs, start=len(slab.cutouts)):
        letter = letter_of(i)
        name = Message("paper-relief-unnamed", letter=letter, kind=relief.kind)
        if relief.label:
            name = Message("paper-opening", letter=letter, label=relief.label)
        yield name, Listed((relief_size(relief), *relief_notes(relief, like)), joined="comma")


def edges_of(slab: Slab, shape: Shape) -> Iterator[Fact]:
    """State how each side is made, by the letter that it has on the plan."""
    for detail in details(slab, shape):
        sides = sides_named(detail.names)
        yield Message("paper-edge", letter=detail.letter, sides=sides), edge_facts(detail.edge)


def place_of(slab: Slab) -> Message:
    """State where a slab goes and what it rests on."""
    if slab.rests is None:
        return Message("paper-place-not-given", place=slab.place)
    return Message("paper-place-on", place=slab.place, rests=rests_facts(slab.rests))


def delivery_of(order: Order, lead: LeadTime, *, whole: bool) -> Message:
    """State how an order comes, and when where its days on the road are as they were offered."""
    way = order.delivery.kind
    if not whole:
        return Message("paper-delivery-open", way=way)
    if way == "collect":
        return Message("paper-delivery-collect", first=lead.ready_on)
    first, last = lead.arrives_earliest, lead.arrives_latest
    if first == last:
        return Message("paper-delivery-on", way=way, first=first)
    return Message("paper-delivery-between", way=way, first=first, last=last)
