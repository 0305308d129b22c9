"""Changes to what a slab rests on, in the customer's words."""

from __future__ import annotations

from ledgerstone.checks.finding import side_words
from ledgerstone.order import Order, Rests
from ledgerstone.remedies.change import Change, member


def rest_words(order: Order, change: Change, name: str) -> str:
    """Say one change to the rests of a slab of that name."""
    old = member(order, change.path)
    if len(change.path) == 3:
        return _carried(old, change.new, name)
    part = str(change.path[3])
    if part == "overhang":
        return f"Let {side_words(str(change.path[4]))} overhang {change.new} instead of {old}."
    if part == "fixed":
        return f"Have {name} fixed down to its rests."
    return f"Change what {name} rests on."


def _carried(old: Rests, new: Rests, name: str) -> str:
    if new.kind == "legs":
        return _legs(old, new, name)
    return {
        "frame": f"Carry {name} on a frame under its sides.",
        "full": f"Bed {name} all over on a solid base.",
    }.get(new.kind, f"Change what {name} rests on.")


def _legs(old: Rests, new: Rests, name: str) -> str:
    if old.at == new.at[: len(old.at)]:
        return f"Stand {name} on two more legs, halfway along its front and its back."
    moved = [k for k, leg in enumerate(new.at) if leg not in old.at]
    if len(old.at) == len(new.at) and len(moved) == 1:
        to = new.at[moved[0]]
        return f"Move leg {moved[0] + 1} to {to.x} from the left and {to.y} from the front."
    return f"Carry {name} on legs nearer to its corners."
