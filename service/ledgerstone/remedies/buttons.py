"""Which remedies are shown: each change once, and at most three for one thing to settle."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from ledgerstone.checks import Finding
from ledgerstone.remedies.found import Remedy
from ledgerstone.stages.keys import OrderKey

MAX_FOR_ONE_THING = 3  # more would hide the other things: our own choice
_TO_AN_OPENING = 5  # parts of a pointer: "", "slabs", which, "cutouts", which
Remedies = Mapping[str, tuple[Remedy, ...]]


def shown_once(remedies: Remedies, stops: Sequence[Finding]) -> dict[str, tuple[Remedy, ...]]:
    """Return the remedies to show: the best of every finding first, each change once."""
    things = _things([stop for stop in stops if stop.id in remedies])
    seen: set[OrderKey] = set()
    shown: dict[int, int] = {}
    kept: dict[str, list[Remedy]] = {name: [] for name in remedies}
    for rank in range(MAX_FOR_ONE_THING):
        for name, each in remedies.items():
            thing = things.get(name, -1)
            if rank >= len(each) or shown.get(thing, 0) >= MAX_FOR_ONE_THING:
                continue
            if each[rank].state.key not in seen:
                seen.add(each[rank].state.key)
                shown[thing] = shown.get(thing, 0) + 1
                kept[name].append(each[rank])
    return {name: tuple(each) for name, each in kept.items()}


def _things(stops: Sequence[Finding]) -> dict[str, int]:
    """Return a group number for each finding: findings that share an opening are in one group."""
    groups: list[tuple[set[str], set[str]]] = []
    for k, stop in enumerate(stops):
        about = _openings(stop) or {f"finding {k}"}
        names = {stop.id}
        met = [group for group in groups if group[1] & about]
        for group in met:
            names |= group[0]
            about |= group[1]
        groups = [group for group in groups if group not in met]
        groups.append((names, about))
    return {name: k for k, (names, _) in enumerate(groups) for name in names}


def _openings(stop: Finding) -> set[str]:
    parts = [pointer.split("/") for pointer in stop.at]
    return {
        "/".join(each[:_TO_AN_OPENING])
        for each in parts
        if len(each) >= _TO_AN_OPENING and each[3] == "cutouts"
    }
