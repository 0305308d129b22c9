"""Changes to what a slab rests on, in the customer's words."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.order import Rests
from ledgerstone.remedies.step_words import listed_all, moves_sentence, step_words
from ledgerstone.wording import side_words
from ledgerstone.wording.naming import ORDINALS

_FOUR = 4
_CARRIED = {
    "frame": "Carry {name} on a frame under its sides.",
    "full": "Bed {name} all over on a solid base.",
    "legs": "Carry {name} on four legs near its corners.",
}
_ON_A_BOARD = "Lay a solid board under {name}, and bed it on that all over."
_ON_A_FRAME = "Carry {name} on a frame with a solid board, and bed it on that all over."
_BEDDED = {
    **dict.fromkeys(("units", "frame"), _ON_A_BOARD),
    **dict.fromkeys(("legs", "ends", "ledges"), _ON_A_FRAME),
}


def rest_sentences(was: Rests | None, now: Rests | None, name: str) -> Iterator[str]:
    """Say what changed about the rests of a slab of that name."""
    if now is None:
        return
    if was is None or was.kind != now.kind:
        yield _carried(was, now).format(name=name)
        return
    for side, overhang in now.overhang.items():
        if side in was.overhang and was.overhang[side] != overhang:
            yield f"Let {side_words(side)} overhang {overhang} instead of {was.overhang[side]}."
    if now.fixed and not was.fixed:
        yield f"Have {name} fixed down to its rests."
    yield from _panels(was, now, name)
    yield from _exchanged(was, now, name)
    if now.rails != was.rails and now.rails is not None:
        yield f"Fit {now.rails} rails across the front and the back of the units of {name}."
    gained = [side_words(side) for side in now.sides if side not in was.sides]
    if gained and was.kind == "frame":
        yield f"Carry {name} on its frame at {listed_all(gained)} too."
    if was.at != now.at:
        yield _legs(was, now, name)


def _carried(was: Rests | None, now: Rests) -> str:
    if was is not None and now.kind == "full":
        return _BEDDED.get(was.kind, _CARRIED["full"])
    return _CARRIED.get(now.kind, "Change what {name} rests on.")


def _panels(was: Rests, now: Rests, name: str) -> Iterator[str]:
    """Say which ends have a side panel now."""
    if len(now.units) > len(was.units):
        ends = [
            side
            for side, at in (("left", 0), ("right", -1))
            if now.units[at].width.mm < was.units[at].width.mm
        ]
        which = "each end" if len(ends) > 1 else f"the {ends[0]} end"
        panel = now.units[0 if "left" in ends else -1].width
        yield f"Fit a side panel of {panel} under {which} of {name}."


def _exchanged(was: Rests, now: Rests, name: str) -> Iterator[str]:
    """Say which units have changed places."""
    pairs = zip(was.units, now.units, strict=False)
    moved = [k + 1 for k, (old, new) in enumerate(pairs) if old != new]
    if len(now.units) == len(was.units) and moved:
        yield f"Let units {listed_all([str(k) for k in moved])} of {name} change places."


def _legs(was: Rests, now: Rests, name: str) -> str:
    """Say where legs go: one by one, or all of them alike."""
    if was.at == now.at[: len(was.at)]:
        return f"Stand {name} on two more legs, halfway along its front and its back."
    steps = [
        (f"the {ORDINALS[k]} leg", step_words(old, new, (0.0, 0.0)))
        for k, (old, new) in enumerate(zip(was.at, now.at, strict=False))
    ]
    xs, ys = ({getattr(leg, axis): None for leg in now.at} for axis in ("x", "y"))
    if len({step for _, step in steps}) > 1 and len(now.at) == len(xs) * len(ys) == _FOUR:
        left, front = (" and ".join(map(str, sorted(each))) for each in (xs, ys))
        return f"Stand the legs of {name} at {left} from its left, and {front} from its front."
    alike = len({step for _, step in steps}) == 1
    told = [("the legs", steps[0][1])] if alike else steps
    return " ".join(moves_sentence(told, "" if name == "the slab" else name))
