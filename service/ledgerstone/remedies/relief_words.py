"""Reliefs that were moved, made smaller or left out, as messages."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ledgerstone.order import Slab
from ledgerstone.remedies.change import differences
from ledgerstone.remedies.state import SlabOrigin
from ledgerstone.remedies.step_words import describe_steps, moves_messages
from ledgerstone.wording import Listed, Message, relief_name

_SIZES = ("length", "width", "diameter")


def relief_messages(sent: Slab, pieces: Sequence[tuple[SlabOrigin, Slab]]) -> Iterator[Message]:
    """State what happened to the reliefs of one slab."""
    every = [
        (k, now, piece)
        for piece, slab in pieces
        for k, now in zip(piece.reliefs, slab.reliefs, strict=True)
    ]
    held = {k for k, _, _ in every}
    gone = tuple(relief_name(sent, k) for k in range(len(sent.reliefs)) if k not in held)
    if gone:
        yield Message("leave-out", things=Listed(gone))
    yield from moves_messages(
        [
            (relief_name(sent, k), describe_steps(sent.reliefs[k].at, now.at, piece.at_mm))
            for k, now, piece in every
        ]
    )
    for k, now, _ in every:
        was, name = sent.reliefs[k], relief_name(sent, k)
        for change in differences((), was.outline, now.outline):
            size = str(change.path[-1])
            if size in _SIZES:
                old = getattr(was.outline, size)
                yield Message("relief-resize", relief=name, size=size, now=change.new, was=old)
        if now.depth != was.depth:
            yield Message("relief-redepth", relief=name, now=now.depth, was=was.depth)
