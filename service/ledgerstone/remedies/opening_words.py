"""Openings that were moved, resized or left out, in the customer's words."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.order import Cutout, Point, Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.remedies.state import Piece
from ledgerstone.remedies.step_words import listed_all, moves_sentence, step_words
from ledgerstone.wording import cutout_words, side_words


@dataclass(frozen=True, slots=True)
class _Now:
    """One opening as it was sent and as it now is, with the piece that holds it."""

    index: int
    was: Cutout
    now: Cutout
    piece: Piece


def opening_sentences(sent: Slab, pieces: Sequence[tuple[Piece, Slab]]) -> Iterator[str]:
    """Say what happened to the openings of one slab: movements all in one sentence."""
    here: dict[int, _Now] = {}
    for piece, slab in pieces:
        for k, now in zip(piece.cutouts, slab.cutouts, strict=True):
            here.setdefault(k, _Now(k, sent.cutouts[k], now, piece))
    gone = [cutout_words(sent, k) for k in range(len(sent.cutouts)) if k not in here]
    if gone:
        yield f"Leave out {listed_all(gone)}."
    for one in here.values():
        if one.now.turn_degrees != one.was.turn_degrees:
            yield f"Turn {cutout_words(sent, one.index)} a quarter round."
    moves = [(cutout_words(sent, k), _steps(here[k])) for k in sorted(here)]
    yield from moves_sentence(moves)
    for k in sorted(here):
        yield from _other(here[k], cutout_words(sent, k))


def _steps(one: _Now) -> str:
    if one.was.centre is not None and one.now.centre is not None:
        return step_words(one.was.centre, one.now.centre, one.piece.at_mm)
    if not one.was.points or len(one.was.points) != len(one.now.points):
        return ""
    was, now = (_middle(cutout.points) for cutout in (one.was, one.now))
    like = one.was.points[0]
    return step_words(_place(like, was), _place(like, now), one.piece.at_mm)


def _place(like: Point, at_mm: XY) -> Point:
    return Point(like.x.in_unit(at_mm[0]), like.y.in_unit(at_mm[1]))


def _middle(points: Sequence[Point]) -> XY:
    xs, ys = [p.x.mm for p in points], [p.y.mm for p in points]
    return (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2


def _other(one: _Now, name: str) -> Iterator[str]:
    """What changed beside its place."""
    was, now = one.was, one.now
    if cutout_size_mm(was) != cutout_size_mm(now):
        yield _size(was, now, name)
    if now.kind != was.kind:
        yield f"Give {name} round ends."
    elif now.corner_radius is not None and now.corner_radius != was.corner_radius:
        yield f"Round the corners of {name} to {now.corner_radius}."
    opened = now.open_to is not None and one.index not in one.piece.halved
    if opened and now.open_to != _side_now(one):
        yield f"Let {name} run out through {side_words(str(now.open_to))}."


def _side_now(one: _Now) -> str | None:
    """What the side that an opening was open to is called in its piece."""
    side, sides = one.was.open_to, one.piece.sides
    if side is None or sides is None:
        return side
    return sides[side][0] if side in sides else None


def _size(was: Cutout, now: Cutout, name: str) -> str:
    if now.diameter is not None:
        return f"Make {name} {now.diameter} across instead of {was.diameter}."
    if now.length is not None:
        return f"Make {name} {now.length} by {now.width} instead of {was.length} by {was.width}."
    like: Length = was.points[0].x
    across = [like.like(cutout_size_mm(cutout)[0]) for cutout in (now, was)]
    return f"Make {name} {across[0]} across instead of {across[1]}, smaller in proportion."
