"""The reason why no fix keeps everything that was ordered: parts that provably have no room."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from ledgerstone.order import Cutout, Round, Slab
from ledgerstone.quantities import Length
from ledgerstone.remedies.cut_outlines import plan_of
from ledgerstone.remedies.placeable import MAX_PLACED_TOGETHER
from ledgerstone.remedies.placing import has_no_room
from ledgerstone.remedies.policy import SIZES_WITHIN, has_its_size, may_grow
from ledgerstone.remedies.rooms import FINE_MM, Layout
from ledgerstone.shape import Shape
from ledgerstone.stages import Planned
from ledgerstone.stages.placement import Freedom
from ledgerstone.wording import Listed, Message, cutout_name, slab_name
from ledgerstone.workshop.records import Workshop


def reason(planned: Planned, workshop: Workshop) -> Message | None:
    """State what has no room with any change that a fix may make; None if none is proved."""
    return next(_reasons(planned, workshop), None)


def _reasons(planned: Planned, workshop: Workshop) -> Iterator[Message]:
    slabs = planned.order.slabs
    for i, (slab, shape) in enumerate(zip(slabs, planned.shapes, strict=True)):
        name = slab_name(slab, i, len(slabs))
        yield from _one_piece(slab, shape, name, workshop)
        alone = [k for k in range(len(slab.cutouts)) if _full(slab, shape, workshop, (k,))]
        yield from (_alone(slab, shape, k, name, workshop) for k in alone)
        every = tuple(range(len(slab.cutouts)))
        if (
            not alone
            and 1 < len(every) <= MAX_PLACED_TOGETHER
            and _full(slab, shape, workshop, every)
        ):
            names = Listed(tuple(cutout_name(slab, k) for k in every))
            yield Message("no-room-together", cutouts=names, slab=name)


def _one_piece(slab: Slab, shape: Shape, name: Message, workshop: Workshop) -> Iterator[Message]:
    """What is too large for the table, and is not made in pieces."""
    table, say = workshop.table, slab.thickness
    sizes = sorted((shape.length_mm, shape.width_mm))
    limits = sorted((table.length_mm, table.width_mm))
    fits = all(size <= limit for size, limit in zip(sizes, limits, strict=True))
    if fits or plan_of(slab, workshop.shaping.fitting_gap_mm) is not None:
        return
    like = slab.outline.diameter if isinstance(slab.outline, Round) else say
    yield Message(
        "cast-in-one-piece",
        slab=name,
        shape="round" if isinstance(slab.outline, Round) else "other",
        length=like.like(table.length_mm, "down"),
        width=like.like(table.width_mm, "down"),
    )


def _full(slab: Slab, shape: Shape, workshop: Workshop, which: tuple[int, ...]) -> bool:
    """Whether some openings are shown to have no room, at the sizes that a fix may give them."""
    layout = Layout(slab, shape, workshop, _freedom(slab, which), FINE_MM)
    room = layout.room()
    items = layout.items(room)
    if len(which) < len(items):
        pairs = zip(items, shape.openings, strict=True)
        items = [replace(item, follows=None) for item, own in pairs if own.index in which]
    return has_no_room(items, room)


def _freedom(slab: Slab, which: tuple[int, ...]) -> Freedom:
    free = frozenset(k for k in which if not has_its_size(slab.cutouts[k]))
    return Freedom(
        frozenset(which), free, grows=may_grow(slab), most_share=SIZES_WITHIN, at_home=False
    )


def _alone(slab: Slab, shape: Shape, k: int, name: Message, workshop: Workshop) -> Message:
    """State how much one opening takes, and how much there is."""
    layout = Layout(slab, shape, workshop, Freedom(frozenset((k,))), FINE_MM)
    item = layout.items(layout.room())[k]
    spans = (("long", (1.0, 0.0), shape.length_mm), ("deep", (0.0, 1.0), shape.width_mm))
    what, clear = cutout_name(slab, k), 2 * item.clear_mm
    for way, n, size in spans:
        takes = item.support_between(n) + clear
        if takes > size:
            like = _like(slab.cutouts[k])
            return Message(
                "takes-too-much",
                cutout=what,
                takes=like.like(takes, "up"),
                way=way,
                slab=name,
                size=like.like(size, "down"),
            )
    over = "units" if slab.rests and slab.rests.units else "others"
    return Message("no-room-for-cutout", cutout=what, slab=name, over=over)


def _like(cutout: Cutout) -> Length:
    given = cutout.diameter or cutout.length
    return given if given is not None else cutout.points[0].x
