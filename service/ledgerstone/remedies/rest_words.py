"""Changes to what a slab rests on, as messages."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.order import Rests
from ledgerstone.remedies.step_words import describe_steps, moves_messages
from ledgerstone.wording import Listed, Message, side_name

_FOUR = 4  # legs, one at each corner of a box


def rest_messages(was: Rests | None, now: Rests | None, name: Message) -> Iterator[Message]:
    """State what changed about the rests of a slab of that name."""
    if now is None:
        return
    if was is None or was.kind != now.kind:
        yield Message("carry-on", slab=name, rests=now.kind)
        return
    for side, overhang in now.overhang.items():
        if side in was.overhang and was.overhang[side] != overhang:
            before = was.overhang[side]
            yield Message("overhang", side=side_name(side), now=overhang, was=before)
    if now.fixed and not was.fixed:
        yield Message("fix-down", slab=name)
    yield from _panels(was, now, name)
    yield from _exchanged(was, now, name)
    if now.rails != was.rails and now.rails is not None:
        yield Message("fit-rails", rails=now.rails, slab=name)
    gained = tuple(side_name(side) for side in now.sides if side not in was.sides)
    if gained and was.kind == "frame":
        yield Message("carry-on-frame-too", slab=name, sides=Listed(gained))
    if was.at != now.at:
        yield from _legs(was, now, name)


def _exchanged(was: Rests, now: Rests, name: Message) -> Iterator[Message]:
    """State which units have changed places."""
    pairs = zip(was.units, now.units, strict=False)
    moved = tuple(k + 1 for k, (old, new) in enumerate(pairs) if old != new)
    if len(now.units) == len(was.units) and moved:
        yield Message("exchange-units", units=Listed(moved), slab=name)


def _panels(was: Rests, now: Rests, name: Message) -> Iterator[Message]:
    """State which ends have a side panel now."""
    if len(now.units) > len(was.units):
        ends = [
            side
            for side, at in (("left", 0), ("right", -1))
            if now.units[at].width.mm < was.units[at].width.mm
        ]
        panel = now.units[0 if "left" in ends else -1].width
        end = "both" if len(ends) > 1 else ends[0]
        yield Message("fit-side-panel", panel=panel, end=end, slab=name)


def _legs(was: Rests, now: Rests, name: Message) -> Iterator[Message]:
    """State where legs go: one by one, or all of them alike."""
    if was.at == now.at[: len(was.at)]:
        yield Message("two-more-legs", slab=name)
        return
    steps = [
        (Message("leg", nth=k + 1), describe_steps(old, new, (0.0, 0.0)))
        for k, (old, new) in enumerate(zip(was.at, now.at, strict=False))
    ]
    xs, ys = ({getattr(leg, axis): None for leg in now.at} for axis in ("x", "y"))
    if len({step for _, step in steps}) > 1 and len(now.at) == len(xs) * len(ys) == _FOUR:
        left, front = (Listed(tuple(sorted(each))) for each in (xs, ys))
        yield Message("legs-at", slab=name, left=left, front=front)
        return
    alike = len({step for _, step in steps}) == 1
    moves = [(Message("legs"), steps[0][1])] if alike else steps
    yield from moves_messages(moves, None if name.name == "slab-only" else name)
