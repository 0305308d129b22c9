"""An order with changes, and the origin of each of its parts in the order as sent.

Slabs, cut-outs, reliefs and joins keep their index in the order as sent, also when some are moved,
cut or left out. The changes are found at the end, by comparing the two orders.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType

from ledgerstone.order import MAX_SLABS, Join, JoinEnd, Order, Slab
from ledgerstone.outline import XY, side_names
from ledgerstone.remedies.change import Change, Changes, changed, differences
from ledgerstone.remedies.cut_outlines import Sides
from ledgerstone.remedies.cutting import CutPiece, SlabCut, apart
from ledgerstone.stages.keys import OrderKey

_PARTS = ("cutouts", "reliefs")


@dataclass(frozen=True, slots=True)
class SlabOrigin:
    """Origin of one slab in the order as sent.

    Attributes
    ----------
    of
        Its slab in the order as sent.
    was
        What it would be if that slab had been cut, and nothing else; without its openings.
    at_mm
        Its front-left corner in that slab's plan.
    cutouts, reliefs
        For each of its own, which one of that slab's it is; ``halved`` are shared with a neighbour.
    sides
        By side of that slab, where it was cut: its own side on it, and how much of it, in mm.
    beneath
        What is new beneath its joint.
    cut, plain
        Whether that slab was cut, or put a plain one in its place.
    """

    of: int
    was: Slab
    cutouts: tuple[int, ...]
    reliefs: tuple[int, ...]
    at_mm: XY = (0.0, 0.0)
    halved: frozenset[int] = frozenset()
    sides: Sides | None = None
    beneath: str = ""
    cut: bool = False
    plain: bool = False


@dataclass(frozen=True, slots=True)
class State:
    """An order as sent, the order with changes, and the origin of its parts.

    The first slabs are those that were sent, in their order; further pieces come after them.
    """

    sent: Order
    order: Order
    pieces: tuple[SlabOrigin, ...]
    joins: tuple[int | None, ...]

    @property
    def key(self) -> OrderKey:
        """The order as it now is, by value: two ways to the same order are one state."""
        return OrderKey.of(self.order)

    def after(self, changes: Changes) -> State:
        """Return the state after changes, each applied to the result of the one before."""
        here = self
        for change in changes:
            order = changed(here.order, (change,))
            here = replace(here, order=order, pieces=_kept(here, change))
        return here

    def cut(self, cut: SlabCut, fitting_gap_mm: float) -> State | None:
        """Return the state after a slab is cut in two; None if the cut cannot be described.

        A plain slab that replaces another is not cut: it is already small enough.
        """
        slab, piece = self.order.slabs[cut.slab], self.pieces[cut.slab]
        if piece.plain:
            return None
        parts = apart(slab, cut, fitting_gap_mm)
        plain = replace(cut, through=None)
        was = apart(piece.was, plain, fitting_gap_mm) if parts is not None else None
        if parts is None or was is None or len(self.order.slabs) >= MAX_SLABS:
            return None
        pieces = tuple(
            _piece(piece, part, old.slab) for part, old in zip(parts[:2], was[:2], strict=True)
        )
        own = Join(JoinEnd(0, parts[0].joint), JoinEnd(1, parts[1].joint), parts[2])
        two, sides = [part.slab for part in parts[:2]], [part.sides for part in parts[:2]]
        return self._in_place(cut.slab, two, pieces, (own,), sides)

    def with_slab(self, i: int, alone: State) -> State:
        """Put what was found for a slab by itself in its place among the others."""
        pieces = tuple(replace(piece, of=i) for piece in alone.pieces)
        sides = [piece.sides for piece in pieces]
        return self._in_place(i, alone.order.slabs, pieces, alone.order.joins, sides)

    def _in_place(
        self,
        i: int,
        slabs: Sequence[Slab],
        pieces: Sequence[SlabOrigin],
        joins: Sequence[Join],
        sides: Sequence[Sides | None],
    ) -> State:
        """Replace a slab by others with their joins: one at its index, the rest at the end."""
        n = len(self.order.slabs)
        moved = (i, *range(n, n + len(slabs) - 1))
        pairs = zip(self.order.joins, self.joins, strict=True)
        old = [(_refound(join, i, moved, sides), k) for join, k in pairs]
        new = [_renumbered(join, dict(enumerate(moved))) for join in joins]
        order = replace(
            self.order,
            slabs=(*self.order.slabs[:i], slabs[0], *self.order.slabs[i + 1 :], *slabs[1:]),
            joins=(*(join for join, _ in old), *new),
        )
        own = (*self.pieces[:i], pieces[0], *self.pieces[i + 1 :], *pieces[1:])
        return State(self.sent, order, own, (*(k for _, k in old), *(None for _ in new)))

    def without_loose_joins(self) -> State:
        """Leave out the joins at sides that a slab no longer has."""
        sides = [side_names(slab.outline) for slab in self.order.slabs]
        kept = [
            (join, k)
            for join, k in zip(self.order.joins, self.joins, strict=True)
            if all(end.side in sides[end.slab] for end in (join.one, join.other))
        ]
        order = replace(self.order, joins=tuple(join for join, _ in kept))
        return replace(self, order=order, joins=tuple(k for _, k in kept))

    def of_slab(self, i: int) -> list[tuple[SlabOrigin, Slab]]:
        """What has become of one slab of the order as sent: its pieces, in their order."""
        every = zip(self.pieces, self.order.slabs, strict=True)
        return [(piece, slab) for piece, slab in every if piece.of == i]

    def changes(self) -> Changes:
        """Return what turns the order as sent into this one, taking away from the end."""
        return (*self._members(), *self._slabs())

    def _members(self) -> Iterator[Change]:
        """Changes beside the slabs."""
        orders = (replace(self.sent, slabs=()), replace(self.order, slabs=()))
        yield from differences((), *orders)

    def _slabs(self) -> Iterator[Change]:
        """Changes to the slabs that were sent, then the pieces that come after them."""
        for k in range(len(self.sent.slabs)):
            yield from self.of_piece(k, k)
        for k in range(len(self.sent.slabs), len(self.order.slabs)):
            yield Change(("slabs", k), self.order.slabs[k])

    def of_piece(self, k: int, at: int) -> Iterator[Change]:
        """Changes to slab ``k``, as changes to its original, which is at ``at``."""
        piece, slab = self.pieces[k], self.order.slabs[k]
        was, base = self.sent.slabs[piece.of], ("slabs", at)
        yield from differences(base, without_openings(was), without_openings(slab))
        for name in _PARTS:
            kept: tuple[int, ...] = getattr(piece, name)
            before, now = getattr(was, name), getattr(slab, name)
            for index, part in zip(kept, now, strict=True):
                yield from differences((*base, name, index), before[index], part)
            for index in sorted(set(range(len(before))) - set(kept), reverse=True):
                yield Change((*base, name, index), None)


def start(order: Order) -> State:
    """Begin with the order as it was sent."""
    return State(
        order,
        order,
        tuple(
            SlabOrigin(
                i,
                without_openings(slab),
                tuple(range(len(slab.cutouts))),
                tuple(range(len(slab.reliefs))),
            )
            for i, slab in enumerate(order.slabs)
        ),
        tuple(range(len(order.joins))),
    )


def without_openings(slab: Slab) -> Slab:
    """Return a slab without its cut-outs and reliefs."""
    return replace(slab, cutouts=(), reliefs=())


def _kept(state: State, change: Change) -> tuple[SlabOrigin, ...]:
    """Origins of the slabs after one change, without what was taken away."""
    path = change.path
    if path[0] != "slabs" or not isinstance(path[1], int):
        return state.pieces
    i, piece = path[1], state.pieces[path[1]]
    if len(path) == 2:
        piece = replace(piece, cutouts=(), reliefs=(), plain=True)
    # one of a slab's parts is taken away: slabs, 1, cutouts, 2
    elif len(path) == 4 and path[2] in _PARTS and change.new is None:
        name, k = str(path[2]), int(path[3])
        held: tuple[int, ...] = getattr(piece, name)
        left = (*held[:k], *held[k + 1 :])
        piece = replace(piece, cutouts=left) if name == "cutouts" else replace(piece, reliefs=left)
    return (*state.pieces[:i], piece, *state.pieces[i + 1 :])


def _piece(old: SlabOrigin, part: CutPiece, was: Slab) -> SlabOrigin:
    """Origin of a part, through the piece that was cut."""
    return SlabOrigin(
        of=old.of,
        was=was,
        cutouts=tuple(old.cutouts[k] for k in part.cutouts),
        reliefs=tuple(old.reliefs[k] for k in part.reliefs),
        at_mm=(old.at_mm[0] + part.at_mm[0], old.at_mm[1] + part.at_mm[1]),
        halved=frozenset(
            {*(old.cutouts[k] for k in part.halved)}
            | (old.halved & {old.cutouts[k] for k in part.cutouts})
        ),
        sides=_through(old.sides, part.sides),
        beneath=part.beneath or old.beneath,
        cut=True,
    )


def _through(outer: Sides | None, inner: Sides) -> Sides:
    if outer is None:
        return MappingProxyType(dict(inner))
    return MappingProxyType(
        {side: inner[mine] for side, (mine, _) in outer.items() if mine in inner}
    )


def _refound(join: Join, i: int, moved: Sequence[int], sides: Sequence[Sides | None]) -> Join:
    """Return an ordered join, now at the piece that has most of its side."""

    def end_of(end: JoinEnd) -> JoinEnd:
        if end.slab != i:
            return end
        having = [
            (own[end.side][1], -k, own[end.side][0])
            for k, own in enumerate(sides)
            if own is not None and end.side in own
        ]
        if not having:
            return end
        _, k, side = max(having)
        return JoinEnd(moved[-k], side)

    return replace(join, one=end_of(join.one), other=end_of(join.other))


def _renumbered(join: Join, to: Mapping[int, int]) -> Join:
    return replace(
        join,
        one=replace(join.one, slab=to[join.one.slab]),
        other=replace(join.other, slab=to[join.other.slab]),
    )
