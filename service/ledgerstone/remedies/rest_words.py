"""Changes to what a slab rests on, in the customer's words."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.checks.finding import side_words
from ledgerstone.order import Rests

_CARRIED = {
    "frame": "Carry {name} on a frame under its sides.",
    "full": "Bed {name} all over on a solid base.",
    "legs": "Carry {name} on four legs near its corners.",
}


def rest_sentences(was: Rests | None, now: Rests | None, name: str) -> Iterator[str]:
    """Say what changed about the rests of a slab of that name."""
    if now is None:
        return
    if was is None or was.kind != now.kind:
        yield _CARRIED.get(now.kind, "Change what {name} rests on.").format(name=name)
        return
    for side, overhang in now.overhang.items():
        if side in was.overhang and was.overhang[side] != overhang:
            yield f"Let {side_words(side)} overhang {overhang} instead of {was.overhang[side]}."
    if now.fixed and not was.fixed:
        yield f"Have {name} fixed down to its rests."
    if was.at != now.at:
        yield _legs(was, now, name)


def _legs(was: Rests, now: Rests, name: str) -> str:
    if was.at == now.at[: len(was.at)]:
        return f"Stand {name} on two more legs, halfway along its front and its back."
    moved = [k for k, leg in enumerate(now.at) if leg not in was.at]
    if len(was.at) == len(now.at) and len(moved) == 1:
        to = now.at[moved[0]]
        return f"Move leg {moved[0] + 1} to {to.x} from the left and {to.y} from the front."
    return f"Carry {name} on legs nearer to its corners."
