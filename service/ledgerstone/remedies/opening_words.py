"""Openings that were moved, resized or left out, as messages."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.order import Cutout, Point, Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.remedies.state import SlabOrigin
from ledgerstone.remedies.step_words import Steps, describe_steps, moves_messages
from ledgerstone.wording import Listed, Message, cutout_name, side_name


@dataclass(frozen=True, slots=True)
class _Now:
    """One opening as it was sent and as it now is, with the piece that holds it."""

    index: int
    was: Cutout
    now: Cutout
    piece: SlabOrigin


def opening_messages(sent: Slab, pieces: Sequence[tuple[SlabOrigin, Slab]]) -> Iterator[Message]:
    """State what happened to the openings of one slab: movements all in one sentence."""
    here: dict[int, _Now] = {}
    for piece, slab in pieces:
        for k, now in zip(piece.cutouts, slab.cutouts, strict=True):
            here.setdefault(k, _Now(k, sent.cutouts[k], now, piece))
    gone = tuple(cutout_name(sent, k) for k in range(len(sent.cutouts)) if k not in here)
    if gone:
        yield Message("leave-out", things=Listed(gone))
    for opening in here.values():
        if opening.now.turn_degrees != opening.was.turn_degrees:
            yield Message("turn-a-quarter", cutout=cutout_name(sent, opening.index))
    moves = [(cutout_name(sent, k), _steps(here[k])) for k in sorted(here)]
    yield from moves_messages(moves)
    for k in sorted(here):
        yield from _other(here[k], cutout_name(sent, k))


def _steps(opening: _Now) -> Steps:
    if opening.was.centre is not None and opening.now.centre is not None:
        return describe_steps(opening.was.centre, opening.now.centre, opening.piece.at_mm)
    if not opening.was.points or len(opening.was.points) != len(opening.now.points):
        return ()
    was, now = (_middle(cutout.points) for cutout in (opening.was, opening.now))
    like = opening.was.points[0]
    return describe_steps(_place(like, was), _place(like, now), opening.piece.at_mm)


def _place(like: Point, at_mm: XY) -> Point:
    return Point(like.x.in_unit(at_mm[0]), like.y.in_unit(at_mm[1]))


def _middle(points: Sequence[Point]) -> XY:
    xs, ys = [p.x.mm for p in points], [p.y.mm for p in points]
    return (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2


def _other(one: _Now, name: Message) -> Iterator[Message]:
    """What changed beside its place."""
    was, now = one.was, one.now
    if cutout_size_mm(was) != cutout_size_mm(now):
        yield _size(was, now, name)
    if now.kind != was.kind:
        yield Message("give-round-ends", cutout=name)
    elif now.corner_radius is not None and now.corner_radius != was.corner_radius:
        yield Message("round-corners", cutout=name, radius=now.corner_radius)
    opened = now.open_to is not None and one.index not in one.piece.halved
    if opened and now.open_to != _side_now(one):
        yield Message("run-out", cutout=name, side=side_name(str(now.open_to)))


def _side_now(now: _Now) -> str | None:
    """What the side that an opening was open to is called in its piece."""
    side, sides = now.was.open_to, now.piece.sides
    if side is None or sides is None:
        return side
    return sides[side][0] if side in sides else None


def _size(was: Cutout, now: Cutout, name: Message) -> Message:
    if now.diameter is not None and was.diameter is not None:
        old = was.diameter
        return Message("resize", thing=name, size="diameter", now=now.diameter, was=old)
    if now.length and now.width and was.length and was.width:
        new, old_size = _both(now.length, now.width), _both(was.length, was.width)
        return Message("resize-both", thing=name, now=new, was=old_size)
    like: Length = was.points[0].x
    across = [like.like(cutout_size_mm(cutout)[0]) for cutout in (now, was)]
    return Message("resize-in-proportion", thing=name, now=across[0], was=across[1])


def _both(length: Length, width: Length) -> Message:
    return Message("size-both", length=length, width=width)
