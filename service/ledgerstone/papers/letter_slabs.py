"""A letter's description of each slab: name, size, look, openings, edges and rests, in a line."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from ledgerstone.drawing.frame import leading_length, shown
from ledgerstone.drawing.saying import (
    cutout_facts,
    cutout_size,
    edge_facts,
    edges_alike,
    rests_facts,
    side_named,
    sides_named,
)
from ledgerstone.goes_in import is_bowl
from ledgerstone.order import Cutout, Order, Slab
from ledgerstone.papers.descriptions import look_of, size_of, slab_titles
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape
from ledgerstone.wording import Listed, Message, Value, slab_name

# A rim beneath a flange is on the plan beside these words.
_LEFT_OUT: Final = ("plan-rim-covered",)


def slab_facts(slab: Slab, shape: Shape) -> Iterator[Value]:
    """Yield what a slab is, each thing in a few words."""
    yield size_of(slab, shape)
    yield look_of(slab)
    like = leading_length(slab)
    for cutout in slab.cutouts:
        yield _opening(cutout, shape, like)
    for relief in slab.reliefs:
        yield Message(
            "letter-relief", kind=relief.kind, depth=relief.depth, x=relief.at.x, y=relief.at.y
        )
    for names, edge in edges_alike(slab).items():
        if edge.profile == "wall":  # an unseen side has nothing to say
            continue
        yield Message("letter-edge", sides=sides_named(names), edge=edge_facts(edge))
    yield Message("letter-place", place=slab.place)
    if slab.rests is not None:
        facts = rests_facts(slab.rests)
        is_ours = slab.rests.assumed
        yield (
            Message("letter-on-assumed", rests=facts)
            if is_ours
            else Message("letter-on", rests=facts)
        )


def join_facts(order: Order, slab: int) -> Iterator[Message]:
    """State how a slab is joined to those before it: which side of it meets which of theirs."""
    for join in order.joins:
        one, other = sorted((join.one, join.other), key=lambda end: end.slab)
        if other.slab == slab != one.slab:
            yield Message(
                "letter-joined",
                side=side_named(other.side),
                other=side_named(one.side),
                that=slab_name(order.slabs[one.slab], one.slab, len(order.slabs)),
                gap=join.gap,
            )


def slabs_in_a_line(order: Order, shapes: Sequence[Shape]) -> Iterator[Message]:
    """Yield each slab whole: how many of it, its name, and what it is."""
    all_of_them = zip(slab_titles(order), order.slabs, shapes, strict=True)
    for i, (title, slab, shape) in enumerate(all_of_them):
        facts = Listed((*slab_facts(slab, shape), *join_facts(order, i)), joined="semicolon")
        yield Message("slab-in-a-line", count=slab.quantity, name=title, facts=facts)


def _opening(cutout: Cutout, shape: Shape, like: Length) -> Message:
    name: Value = cutout.label or Message("letter-opening-unnamed")
    parts: list[Value] = [cutout_size(cutout, like)]
    if cutout.diameter is not None:
        parts = [Message("change-across", across=cutout.diameter)]
    if cutout.centre is not None:
        x0, y0, _, _ = shape.outline.bounds
        x, y = shown(like, cutout.centre.x.mm - x0), shown(like, cutout.centre.y.mm - y0)
        parts.append(Message("letter-centre", x=x, y=y))
    parts += [fact for fact in cutout_facts(cutout) if fact.name not in _LEFT_OUT]
    if is_bowl(cutout) and cutout.rim == "shown" and not cutout.rim_taken:
        parts.append(Message("letter-from-below"))
    facts = Listed(tuple(parts), joined="comma")
    return Message("letter-opening", name=name, facts=facts)
