"""Changes in the customer's words: one sentence for everything that changes about one thing."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from typing import Any

from ledgerstone.checks.finding import cutout_words, side_words, slab_words
from ledgerstone.checks.thickness import relief_words
from ledgerstone.order import Order
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change, Path, member
from ledgerstone.remedies.rest_words import rest_words

_SEEN_MM = 0.05
_DELIVERY = {
    "collect": "Collect the order from the workshop.",
    "pallet": "Have it delivered on a pallet.",
    "own-van": "Have it delivered by our own van.",
    "fitted": "Have it delivered and fitted.",
}


def say_changes(order: Order, changes: Sequence[Change]) -> tuple[str, ...]:
    """Say changes to an order, in the order in which they are made."""
    grouped: dict[Path, list[Change]] = {}
    last: Path = ()
    for change in changes:
        new_piece = change.path[0] == "slabs" and int(change.path[1]) >= len(order.slabs)
        joined = change.path == ("joins",) and not _leaves_out(order, change)
        subject = last if new_piece or joined else _subject(change.path)
        grouped.setdefault(subject, []).append(change)
        last = subject
    return tuple(_sentence(order, subject, group) for subject, group in grouped.items())


def _subject(path: Path) -> Path:
    """The thing a path speaks of: a cut-out, an outline, rests, a delivery."""
    if path[:1] == ("slabs",) and len(path) > 3 and path[2] in ("cutouts", "reliefs"):
        return path[:4]
    if path[:1] == ("slabs",) and len(path) > 2:
        return path[:3]
    return path[:2] if path[0] == "slabs" else path[:1]


def _sentence(order: Order, subject: Path, changes: Sequence[Change]) -> str:
    what = subject[2] if len(subject) > 2 else subject[0]  # a part of a slab, or a whole one
    return _SAYS[str(what)](order, subject, changes)


def _slab(order: Order, subject: Path) -> str:
    index = int(subject[1])
    if index < len(order.slabs):
        return slab_words(order.slabs[index], index, len(order.slabs))
    return f"slab {index + 1}"


def _cutout(order: Order, subject: Path, changes: Sequence[Change]) -> str:
    index = int(subject[3])
    slab = order.slabs[int(subject[1])]
    name = cutout_words(slab, index)
    if len(subject) == len(changes[0].path) and changes[0].new is None:
        return f"Leave out {name}."
    says = [*_moves(order, changes, name), *_sizes(order, changes, name)]
    for change in changes:
        if change.path[-1] == "corner_radius" and change.new is not None:
            says.append(f"Round the corners of {name} to {change.new}.")
        if change.path[-1] == "turn_degrees":
            says.insert(0, f"Turn {name} a quarter round.")
        if change.path[-1] == "kind":
            says.append(f"Give {name} round ends.")
        if change.path[-1] == "open_to":
            says.append(f"Let {name} run out through {side_words(str(change.new))}.")
    return " ".join(says) or f"Change {name}."


def _moves(order: Order, changes: Sequence[Change], name: str) -> list[str]:
    steps = []
    for change in changes:
        if change.path[-2:-1] == ("centre",):
            old: Length = member(order, change.path)
            steps.append(_step(old, change.new.mm - old.mm, str(change.path[-1])))
        if change.path[-1] == "points":
            old_points = member(order, change.path)
            for axis in ("x", "y"):
                old = getattr(old_points[0], axis)
                moved = _middle(change.new, axis) - _middle(old_points, axis)
                steps.append(_step(old, moved, axis))
    steps = [step for step in steps if step]
    return [f"Move {name} {' and '.join(steps)}."] if steps else []


def _middle(points: Sequence[Any], axis: str) -> float:
    values: list[float] = [getattr(point, axis).mm for point in points]
    return (min(values) + max(values)) / 2


def _across(points: Sequence[Any], axis: str) -> float:
    values: list[float] = [getattr(point, axis).mm for point in points]
    return max(values) - min(values)


def _step(old: Length, by_mm: float, axis: str) -> str:
    if abs(by_mm) < _SEEN_MM:
        return ""
    towards = {
        ("x", True): "to the right",
        ("x", False): "to the left",
        ("y", True): "towards the back",
        ("y", False): "towards the front",
    }[axis, by_mm > 0]
    return f"{old.like(abs(by_mm), to_mm=1.0 if abs(by_mm) >= 1.0 else 0.1)} {towards}"


def _sizes(order: Order, changes: Sequence[Change], name: str) -> list[str]:
    for change in changes:
        if change.path[-1] == "points":
            old = member(order, change.path)
            across = [_across(points, "x") for points in (change.new, old)]
            if across[1] - across[0] > _SEEN_MM:
                now, was = (old[0].x.like(mm) for mm in across)
                return [f"Make {name} {now} across instead of {was}, smaller in proportion."]
    size = {str(c.path[-1]): c for c in changes if c.path[-1] in ("diameter", "length", "width")}
    if "diameter" in size:
        change = size["diameter"]
        return [f"Make {name} {change.new} across instead of {member(order, change.path)}."]
    if not size:
        return []
    first = next(iter(size.values()))
    base = first.path[:-1]
    now = {k: size[k].new if k in size else member(order, (*base, k)) for k in ("length", "width")}
    return [f"Make {name} {now['length']} by {now['width']}."]


def _outline(order: Order, subject: Path, changes: Sequence[Change]) -> str:
    name = _slab(order, subject)
    if any(change.path[-1] == "points" or len(change.path) == 3 for change in changes):
        return f"Make {name} smaller in proportion."
    ways = {"length": "long", "width": "deep", "diameter": "across"}
    says = [
        f"Make {'the notch of ' if 'notch' in change.path else ''}{name} {change.new}"
        f" {ways[str(change.path[-1])]} instead of {member(order, change.path)}."
        for change in changes
        if change.path[-1] in ways
    ]  # radii that shrink with their outline go without saying
    says = says or [f"Round the inside corner of {name} to {one.new}." for one in changes]
    return " ".join(says)


def _thickness(order: Order, subject: Path, changes: Sequence[Change]) -> str:
    old = member(order, changes[0].path)
    return f"Make {_slab(order, subject)} {changes[0].new} thick instead of {old}."


def _rests(order: Order, subject: Path, changes: Sequence[Change]) -> str:
    name = _slab(order, subject)
    says = [rest_words(order, change, name) for change in changes]
    return " ".join(dict.fromkeys(says))


def _word(change: Change) -> str:
    return str(getattr(change.new, "name", None) or change.new)


def _shade(order: Order, subject: Path, changes: Sequence[Change]) -> str:
    return f"Make {_slab(order, subject)} in {_word(changes[0])}."


def _finish(order: Order, subject: Path, changes: Sequence[Change]) -> str:
    parts = " and ".join(
        f"{change.new} sealer" if change.path[-1] == "sealer" else f"{change.new} surface"
        for change in changes
    )
    return f"Give {_slab(order, subject)} the {parts}."


def _delivery(_order: Order, _subject: Path, changes: Sequence[Change]) -> str:
    for change in changes:
        if change.path[-1] == "kind":
            return _DELIVERY[str(change.new)]
    return "Change the delivery."


def _heated_curing(_order: Order, _subject: Path, changes: Sequence[Change]) -> str:
    if changes[-1].new:
        return "Have it cured in our heated tent."
    return "Leave out the heated tent."


def _sample_tile(_order: Order, _subject: Path, _changes: Sequence[Change]) -> str:
    return "Leave the sample tile out, and the wait for your yes to it."


def _needed_by(_order: Order, _subject: Path, changes: Sequence[Change]) -> str:
    day: date = changes[0].new
    return f"Give us until {day:%-d %B %Y}."


def _edges(order: Order, subject: Path, changes: Sequence[Change]) -> str:
    return " ".join(dict.fromkeys(_edge(order, subject, change) for change in changes))


def _edge(order: Order, subject: Path, change: Change) -> str:
    side, name = side_words(str(change.path[3])), _slab(order, subject)
    if change.path[-1] == "size":
        profile = order.slabs[int(subject[1])].edges[str(change.path[3])].profile
        old = member(order, change.path)
        return f"Make the {profile} along {side} of {name} {change.new} instead of {old}."
    if change.path[-1] == "drip":
        return f"Leave out the drip beneath {side} of {name}."
    return f"Make the edge at {side} of {name} {change.new.profile}."


def _relief(order: Order, subject: Path, changes: Sequence[Change]) -> str:
    name = relief_words(order.slabs[int(subject[1])], int(subject[3]))
    if len(changes[0].path) == len(subject) and changes[0].new is None:
        return f"Leave out {name}."
    says, steps = [], []
    for change in changes:
        old, part = member(order, change.path), str(change.path[-1])
        if part == "depth":
            says.append(f"Make {name} {change.new} deep instead of {old}.")
        elif change.path[-2] == "at":
            steps.append(_step(old, change.new.mm - old.mm, part))
        else:
            way = {"length": "long", "width": "from front to back"}[part]
            says.append(f"Make {name} {change.new} {way} instead of {old}.")
    steps = [step for step in steps if step]
    return " ".join([*([f"Move {name} {' and '.join(steps)}."] if steps else []), *says])


def _leaves_out(order: Order, change: Change) -> bool:
    """Whether a join that was asked for is no longer there."""
    return any(join not in (change.new or ()) for join in order.joins)


def _joins(order: Order, _subject: Path, changes: Sequence[Change]) -> str:
    gone = sum(join not in (changes[-1].new or ()) for join in order.joins)
    what = "the join whose side is gone" if gone == 1 else "the joins whose sides are gone"
    return f"Leave out {what}: we agree with you how the pieces meet."


def _whole_slab(order: Order, _subject: Path, changes: Sequence[Change]) -> str:
    name = _slab(order, changes[0].path)
    if len(changes) == 1:
        plain = changes[0].new
        size = f"{plain.outline.length} by {plain.outline.width}, {plain.thickness} thick"
        return f"Make {name} a plain slab, {size}, bedded all over on a solid base."
    left, right = (changes[k].new.outline.length for k in (0, 1))
    return f"Make {name} of two pieces, {left} and {right} long, with a join between them."


_SAYS: dict[str, Callable[[Order, Path, Sequence[Change]], str]] = {
    "cutouts": _cutout,
    "outline": _outline,
    "thickness": _thickness,
    "rests": _rests,
    "shade": _shade,
    "finish": _finish,
    "edges": _edges,
    "reliefs": _relief,
    "delivery": _delivery,
    "needed_by": _needed_by,
    "heated_curing": _heated_curing,
    "sample_tile": _sample_tile,
    "slabs": _whole_slab,
    "joins": _joins,
}
