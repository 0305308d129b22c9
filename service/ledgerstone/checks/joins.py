"""Checks of joins: sides, thickness and shade that meet, and what of a join is not worked out."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding, Level
from ledgerstone.order import Join, JoinEnd, Order
from ledgerstone.stages import Judged, Planned
from ledgerstone.wording import Message, relief_name, side_name, slab_name

ALIKE_THICKNESS_MM = 3.0  # thickness range at a join: a natural-stone trade body's manual
_STONE = "natural-stone practice: pieces within 3 mm of each other at a join"
_NEAR_MM = 5.0  # a relief so near comes to the join: over the joint's own width
_ENDS = ("left", "right")


def joins_as_suggested(judged: Judged) -> Iterable[Finding]:
    """A join is priced as ordered; its place is a suggestion until it is agreed."""
    order = judged.planned.order
    for k, join in enumerate(order.joins):
        if join.one.slab == join.other.slab and order.slabs[join.one.slab].quantity == 1:
            message = Message("join-to-itself", join=k + 1, slab=_name(order, join.one))
            yield _finding("join-to-itself", "caution", k, message, "geometry")
            continue
        yield _finding(
            "join-suggested",
            "note",
            k,
            Message("join-suggested", one=_name(order, join.one), other=_name(order, join.other)),
            "strength is checked for each slab by itself; a join carries nothing",
        )


def sides_meet(judged: Judged) -> Iterable[Finding]:
    """The two sides of a join have the same length, and the slabs the same thickness."""
    planned = judged.planned
    order = planned.order
    for k, join in _real_joins(order):
        one, other = (_side_mm(planned, end) for end in (join.one, join.other))
        if one is not None and other is not None and abs(one - other) > ALIKE_THICKNESS_MM:
            yield _unlike_sides(order, k, join, one, other)
        thick = [order.slabs[end.slab].thickness for end in (join.one, join.other)]
        if abs(thick[0].mm - thick[1].mm) > ALIKE_THICKNESS_MM:
            yield _finding(
                "join-of-unlike-thickness",
                "caution",
                k,
                Message(
                    "join-of-unlike-thickness",
                    one=_name(order, join.one),
                    thickness=thick[0],
                    other=_name(order, join.other),
                    other_thickness=thick[1],
                ),
                _STONE,
                measured={"apart_mm": round(abs(thick[0].mm - thick[1].mm), 1)},
                limit={"apart_mm": ALIKE_THICKNESS_MM},
            )


def _unlike_sides(order: Order, k: int, join: Join, side_mm: float, other_mm: float) -> Finding:
    thickness = order.slabs[join.one.slab].thickness
    both_ends = all(end.side in _ENDS for end in (join.one, join.other))
    return _finding(
        "join-of-unlike-sides",
        "caution" if both_ends else "note",
        k,
        Message(
            "join-of-unlike-ends" if both_ends else "join-along-a-side",
            side=side_name(join.one.side),
            one=_name(order, join.one),
            length=thickness.like(side_mm),
            other_side=side_name(join.other.side),
            other=_name(order, join.other),
            other_length=thickness.like(other_mm),
        ),
        _STONE,
        measured={"apart_mm": round(abs(side_mm - other_mm), 1)},
        limit={"apart_mm": ALIKE_THICKNESS_MM},
    )


def looks_meet(judged: Judged) -> Iterable[Finding]:
    """Joined slabs have the same shade and finish."""
    order = judged.planned.order
    for k, join in _real_joins(order):
        one, other = (order.slabs[end.slab] for end in (join.one, join.other))
        if one.shade == other.shade and one.finish == other.finish:
            continue
        yield _finding(
            "join-of-unlike-looks",
            "caution",
            k,
            Message(
                "join-of-unlike-looks",
                one=_name(order, join.one),
                other=_name(order, join.other),
                unlike="shade" if one.shade != other.shade else "finish",
            ),
            "what was ordered",
        )


def detail_at_join(judged: Judged) -> Iterable[Finding]:
    """A drop or a relief at a join is cast in each slab; their alignment is not checked."""
    planned = judged.planned
    order = planned.order
    for k, join in _real_joins(order):
        for end in (join.one, join.other):
            what = _at_the_join(planned, end)
            if what is not None:
                yield _finding(
                    "join-through-relief",
                    "caution",
                    k,
                    Message("join-through-relief", what=what, slab=_name(order, end), join=k + 1),
                    "not worked out",
                    key=f"{k}-{end.slab}",
                )


def _at_the_join(planned: Planned, end: JoinEnd) -> Message | None:
    """What of a slab comes to its joined side: a drop there, or a relief that touches it."""
    slab, shape = planned.order.slabs[end.slab], planned.shapes[end.slab]
    edge = slab.edges.get(end.side)
    if edge is not None and edge.drop is not None:
        return Message("drop")
    line = next((side.line for side in shape.sides if side.name == end.side), None)
    for i, area in enumerate(shape.reliefs):
        if line is not None and area.distance(line) < _NEAR_MM:
            return relief_name(slab, i)
    return None


def drops_not_checked(judged: Judged) -> Iterable[Finding]:
    """A drop is priced and weighed; the strength of its corner is not checked."""
    order = judged.planned.order
    for i, slab in enumerate(order.slabs):
        sides = [name for name, edge in slab.edges.items() if edge.drop is not None]
        if not sides:
            continue
        yield Finding(
            "drop-not-checked",
            "caution",
            Message(
                "drop-not-checked",
                count=len(sides),
                side=side_name(sides[0]),
                slab=slab_name(slab, i, len(order.slabs)),
            ),
            "not worked out",
            slab=i,
            at=tuple(f"/slabs/{i}/edges/{name}/drop" for name in sides),
        )


def _real_joins(order: Order) -> Iterable[tuple[int, Join]]:
    return ((k, j) for k, j in enumerate(order.joins) if j.one.slab != j.other.slab)


def _side_mm(planned: Planned, end: JoinEnd) -> float | None:
    sides = planned.shapes[end.slab].sides
    return next((side.length_mm for side in sides if side.name == end.side), None)


def _name(order: Order, end: JoinEnd) -> Message:
    return slab_name(order.slabs[end.slab], end.slab, len(order.slabs))


def _finding(
    check: str,
    level: Level,
    k: int,
    message: Message,
    source: str,
    *,
    measured: dict[str, float] | None = None,
    limit: dict[str, float] | None = None,
    key: str = "",
) -> Finding:
    return Finding(
        check,
        level,
        message,
        source,
        at=(f"/joins/{k}",),
        measured=measured or {},
        limit=limit or {},
        key=key or str(k),
    )
