"""What changed, in the customer's words: one sentence for everything that changes about one thing.

Everything is said by comparing the order as sent with the order as it stands, each thing under the
name that the customer gave it, wherever it has got to meanwhile.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from ledgerstone.order import Order, Rectangle, Slab
from ledgerstone.outline import finished_size_mm
from ledgerstone.remedies.change import Change, differences
from ledgerstone.remedies.cut_words import cut_sentence, piece_words
from ledgerstone.remedies.member_words import member_sentence
from ledgerstone.remedies.opening_words import opening_sentences
from ledgerstone.remedies.relief_words import relief_sentences
from ledgerstone.remedies.state import Piece, State, bare
from ledgerstone.wording import slab_words

_ALIKE_MM = 0.01
_DELIVERY = {
    "collect": "Collect the order from the workshop.",
    "pallet": "Have it delivered on a pallet.",
    "own-van": "Have it delivered by our own van.",
    "fitted": "Have it delivered and fitted.",
}


def say(state: State) -> tuple[str, ...]:
    """Say what turns the order as sent into this one: slab by slab, then what is of all of them."""
    said: list[str] = []
    for i, sent in enumerate(state.sent.slabs):
        said += _slab(state, i, slab_words(sent, i, len(state.sent.slabs)))
    return tuple(dict.fromkeys([*said, *_joins(state), *_order(state.sent, state.order)]))


def _slab(state: State, i: int, name: str) -> Iterator[str]:
    """Everything that changed about one slab of the order as sent."""
    sent, pieces = state.sent.slabs[i], state.of_slab(i)
    first, now = pieces[0]
    if first.plain:
        yield _plain(name, now)
        return
    if len(pieces) > 1:
        yield cut_sentence(sent, name, pieces)
    yield from opening_sentences(sent, pieces)
    yield from relief_sentences(sent, pieces)
    every = [_members(piece, slab) for piece, slab in pieces]
    for k, (piece, slab) in enumerate(pieces):
        for part, changes in every[k].items():
            alike = all(other.get(part) == changes for other in every)
            own = name if alike else piece_words(name, pieces, k)
            yield member_sentence(part, piece.was, slab, changes, own)


def _plain(name: str, slab: Slab) -> str:
    size = f"{slab.thickness} thick, bedded all over on a solid base."
    if isinstance(slab.outline, Rectangle):
        size = f"{slab.outline.length} by {slab.outline.width}, {size}"
    return f"Make {name} a plain slab, {size}"


def _members(piece: Piece, slab: Slab) -> dict[str, list[Change]]:
    """What changed about a piece beside its openings and reliefs, by the part it is about."""
    groups: dict[str, list[Change]] = {}
    for change in differences((), piece.was, bare(slab)):
        groups.setdefault(str(change.path[0]), []).append(change)
    cast = (finished_size_mm(piece.was, 0.0), finished_size_mm(slab, 0.0))
    if "size_from" in groups and math.dist(*cast) < _ALIKE_MM:
        groups.pop("outline", None)  # told outright now, it is as large as it was
        groups["size_from"] = groups.pop("size_from")  # said last
    return groups


def _joins(state: State) -> Iterator[str]:
    gone = len(state.sent.joins) - len({k for k in state.joins if k is not None})
    if gone:
        what = "the join whose side is gone" if gone == 1 else "the joins whose sides are gone"
        yield f"Leave out {what}: we agree with you how the pieces meet."


def _order(sent: Order, now: Order) -> Iterator[str]:
    """What changed of the order as a whole."""
    if now.heated_curing != sent.heated_curing:
        yield (
            "Have it cured in our heated tent."
            if now.heated_curing
            else "Leave out the heated tent."
        )
    if now.delivery.kind != sent.delivery.kind:
        yield _DELIVERY[now.delivery.kind]
    if now.sample_tile != sent.sample_tile:
        yield "Leave the sample tile out, and the wait for your yes to it."
    if now.needed_by != sent.needed_by and now.needed_by is not None:
        yield f"Give us until {now.needed_by:%-d %B %Y}."
