"""The changes of an order as messages: one sentence for all changes of one part.

The messages come from comparing the order as sent with the changed order; each part keeps the
name that the customer gave it, wherever it is now.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from ledgerstone.order import Order, Rectangle, Slab
from ledgerstone.outline import finished_size_mm
from ledgerstone.remedies.change import Change, differences
from ledgerstone.remedies.cut_words import cut_messages, piece_name
from ledgerstone.remedies.member_words import member_messages
from ledgerstone.remedies.opening_words import opening_messages
from ledgerstone.remedies.relief_words import relief_messages
from ledgerstone.remedies.state import SlabOrigin, State, without_openings
from ledgerstone.wording import Message, slab_name

_ALIKE_MM = 0.01  # rounding
Sentences = tuple[Message, ...]


def say(state: State) -> tuple[Sentences, ...]:
    """State what turns the order as sent into this one: slab by slab, then what is of all of them.

    Each item is the change of one part, in one or more sentences.
    """
    of_slabs: list[Sentences] = []
    for i, sent in enumerate(state.sent.slabs):
        of_slabs += _slab(state, i, slab_name(sent, i, len(state.sent.slabs)))
    whole = [(join,) for join in (*_joins(state), *_order(state.sent, state.order))]
    return tuple(dict.fromkeys([*of_slabs, *whole]))


def _slab(state: State, i: int, name: Message) -> Iterator[Sentences]:
    """Everything that changed about one slab of the order as sent."""
    sent, pieces = state.sent.slabs[i], state.of_slab(i)
    first, now = pieces[0]
    if first.plain:
        yield (_plain(name, now),)
        return
    if len(pieces) > 1:
        yield tuple(cut_messages(sent, name, pieces))
    yield from ((message,) for message in opening_messages(sent, pieces))
    yield from ((message,) for message in relief_messages(sent, pieces))
    every = [_members(piece, slab) for piece, slab in pieces]
    for k, (piece, slab) in enumerate(pieces):
        for part, changes in every[k].items():
            alike = all(other.get(part) == changes for other in every)
            own = name if alike else piece_name(name, pieces, k)
            yield member_messages(part, piece.was, slab, changes, own)


def _plain(name: Message, slab: Slab) -> Message:
    outline, thickness = slab.outline, slab.thickness
    if isinstance(outline, Rectangle):
        length, width = outline.length, outline.width
        return Message(
            "make-plain-rectangle", slab=name, length=length, width=width, thickness=thickness
        )
    return Message("make-plain", slab=name, thickness=thickness)


def _members(piece: SlabOrigin, slab: Slab) -> dict[str, list[Change]]:
    """What changed about a piece beside its openings and reliefs, by the part it is about."""
    groups: dict[str, list[Change]] = {}
    for change in differences((), piece.was, without_openings(slab)):
        groups.setdefault(str(change.path[0]), []).append(change)
    cast = (finished_size_mm(piece.was, 0.0), finished_size_mm(slab, 0.0))
    if "size_from" in groups and math.dist(*cast) < _ALIKE_MM:
        groups.pop("outline", None)  # now given in the order, at the size it had
        groups["size_from"] = groups.pop("size_from")  # stated last
    return groups


def _joins(state: State) -> Iterator[Message]:
    gone = len(state.sent.joins) - len({k for k in state.joins if k is not None})
    if gone:
        yield Message("leave-out-joins", count=gone)


def _order(sent: Order, now: Order) -> Iterator[Message]:
    """What changed of the order as a whole."""
    if now.heated_curing != sent.heated_curing:
        yield Message("cure-in-tent" if now.heated_curing else "leave-out-tent")
    if now.delivery.kind != sent.delivery.kind:
        yield Message("deliver-by", way=now.delivery.kind)
    if now.sample_tile != sent.sample_tile:
        yield Message("leave-out-tile")
    if now.needed_by != sent.needed_by and now.needed_by is not None:
        yield Message("give-us-until", day=now.needed_by)
