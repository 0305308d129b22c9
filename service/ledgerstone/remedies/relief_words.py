"""Reliefs that were moved, made smaller or left out, in the customer's words."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ledgerstone.order import Slab
from ledgerstone.remedies.change import differences
from ledgerstone.remedies.state import Piece
from ledgerstone.remedies.step_words import listed_all, moves_sentence, step_words
from ledgerstone.wording import relief_words

_WAYS = {"length": "long", "width": "from front to back", "diameter": "across"}


def relief_sentences(sent: Slab, pieces: Sequence[tuple[Piece, Slab]]) -> Iterator[str]:
    """Say what happened to the reliefs of one slab."""
    every = [
        (k, now, piece)
        for piece, slab in pieces
        for k, now in zip(piece.reliefs, slab.reliefs, strict=True)
    ]
    held = {k for k, _, _ in every}
    gone = [relief_words(sent, k) for k in range(len(sent.reliefs)) if k not in held]
    if gone:
        yield f"Leave out {listed_all(gone)}."
    yield from moves_sentence(
        [
            (relief_words(sent, k), step_words(sent.reliefs[k].at, now.at, piece.at_mm))
            for k, now, piece in every
        ]
    )
    for k, now, _ in every:
        was, name = sent.reliefs[k], relief_words(sent, k)
        for change in differences((), was.outline, now.outline):
            way = _WAYS.get(str(change.path[-1]))
            if way is not None:
                old = getattr(was.outline, str(change.path[-1]))
                yield f"Make {name} {change.new} {way} instead of {old}."
        if now.depth != was.depth:
            yield f"Make {name} {now.depth} deep instead of {was.depth}."
