"""A search for the request that costs the service most: hill climbing over the whole contract.

It begins at orders with as much of everything as the contract lets in, and at ordinary ones; in
each round it changes a few members of one of the dearest so far, or what is asked about it, and
keeps what costs more. A cost is processor time or memory of one request. What it tries hangs on
its seed alone.
"""

from __future__ import annotations

import copy
import math
import random
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any, Final

from ledgerstone.contract.example_orders import BENCH
from ledgerstone.json_types import JSON
from support.documents import Json
from support.strategies.tripping_orders import TRIPS

CostOf = Callable[[Json], float | None]
ChangeOf = Callable[[random.Random, Json], Json]

FURTHEST_MM: Final = 20_000.0
MOST: Final = {
    "slabs": 8, "cutouts": 20, "reliefs": 20, "points": 200, "units": 20, "at": 20, "lines": 20,
    "joins": 16,
}  # fmt: skip
KEPT: Final = 12
_WORDS: Final = ("kind", "profile", "open_to", "side", "corner", "for", "use", "place", "size_from")


# --- where it begins ------------------------------------------------------------------------


def _slots(count: int, length: float, width: float) -> list[Json]:
    """Slots on a grid of two rows, each turned otherwise."""
    across = max(1, math.ceil(count / 2))
    return [
        {
            "kind": "slot",
            "length": min(90.0, 0.6 * length / across),
            "width": 20,
            "turn_degrees": 17 + 3.7 * i,
            "centre": {"x": length * (i % across + 0.5) / across,
                       "y": width * (0.3 if i < across else 0.7)},
        }
        for i in range(count)
    ]  # fmt: skip


def many_sided(corners: int, length: float, width: float) -> Json:
    """Return an outline with ``corners`` corners, every second one set in."""
    turns = [2 * math.pi * k / corners for k in range(corners)]
    points = [
        {"x": round(length / 2 * (1 + (1 - 0.02 * (k % 2)) * math.cos(t)), 2),
         "y": round(width / 2 * (1 + (1 - 0.02 * (k % 2)) * math.sin(t)), 2)}
        for k, t in enumerate(turns)
    ]  # fmt: skip
    return {"kind": "polygon", "points": points}


def _rests(kind: str, count: int, length: float, width: float) -> Json:
    """Rests all over a slab; with no count the units are assumed."""
    spots = [
        {"x": length * (0.5 + i % 10) / 10, "y": width * (0.25 if i < 10 else 0.75)}
        for i in range(count)
    ]
    if kind == "units":
        told = {"units": [{"width": length / count}] * count} if count else {}
        return {"kind": kind, **told}
    if kind == "legs":
        return {"kind": kind, "at": spots, "pad": 40}
    lines = [{"start": spot, "end": {**spot, "x": spot["x"] + 60}, "depth": 30} for spot in spots]
    return {"kind": "ledges", "lines": lines}


def crowded(slabs: int, holes: int, rests: str, count: int, outline: Json | None = None) -> Json:
    """An order with much of everything, no two of its slabs alike."""
    length, width = 2600.0, 1150.0
    made = []
    for k in range(slabs):
        box = {"kind": "rectangle", "length": length - k, "width": width}
        made.append({
            "label": f"slab {k}",
            "outline": outline or box,
            "thickness": 50 + k if outline else 60,
            "cutouts": _slots(holes, length, width),
            "rests": _rests(rests, count, length, width),
        })  # fmt: skip
    return {"slabs": made}


def beginnings() -> list[Json]:
    """Crowded orders of every kind, then those that people might send."""
    star, frill = many_sided(60, 2600, 1150), many_sided(200, 2600, 1150)
    crowds = [
        crowded(slabs, holes, rests, count, outline)
        for slabs in (1, 2, 4, 8)
        for holes, rests, count, outline in (
            (20, "units", 20, None),
            (6, "units", 20, None),
            (20, "legs", 20, None),
            (2, "ledges", 20, None),
            (8, "units", 6, star),
            (0, "legs", 12, frill),
            (20, "units", 0, None),
        )
    ]
    return [*crowds, BENCH, *(order for _, order in TRIPS.values())]


# --- how it goes on -------------------------------------------------------------------------


def _nodes(
    node: object, path: tuple[str | int, ...] = ()
) -> Iterator[tuple[tuple[str | int, ...], Any]]:
    """Every member of a document, with its path."""
    items = (
        node.items()
        if isinstance(node, dict)
        else enumerate(node)
        if isinstance(node, list)
        else ()
    )
    for key, value in items:
        yield (*path, key), value
        yield from _nodes(value, (*path, key))


def _at(document: JSON, path: tuple[str | int, ...]) -> JSON:
    for key in path:
        document = document[key]
    return document


def changed(rng: random.Random, document: Json, others: list[Json]) -> Json:
    """Change one to four members of a document; it may no longer be understood."""
    new = copy.deepcopy(document)
    for _ in range(rng.randint(1, 4)):
        rng.choice(_CHANGES)(rng, new, others)
    return new


def _number(rng: random.Random, new: Json, _others: list[Json]) -> None:
    """Put another number for one: near it, or anything up to the contract's largest."""
    numbers = [p for p, v in _nodes(new) if isinstance(v, int | float) and not isinstance(v, bool)]
    if not numbers:
        return
    *path, key = rng.choice(numbers)
    holder = _at(new, tuple(path))
    old = float(holder[key])
    far = 10 ** rng.uniform(-1, math.log10(FURTHEST_MM)) * rng.choice((1, 1, 1, -1))
    near = old * rng.uniform(0.5, 1.6) + rng.uniform(-20, 20)
    holder[key] = round(rng.choice((near, near, far, old + rng.choice((-1, 1)))), 2)
    if key in ("quantity", "grooves"):
        holder[key] = max(1, int(holder[key]) % 25)


def _list(rng: random.Random, new: Json, _others: list[Json]) -> None:
    """Make a list longer by its own entries, changed a little, or shorter."""
    lists = [p for p, v in _nodes(new) if isinstance(v, list) and v]
    if not lists:
        return
    path = rng.choice(lists)
    held = _at(new, path)
    most = MOST.get(str(path[-1]), 4)
    if rng.random() < 0.25 and len(held) > 1:
        del held[rng.randrange(len(held))]
        return
    for _ in range(rng.choice((1, 1, 3, most))):
        if len(held) >= most:
            return
        held.insert(rng.randint(0, len(held)), copy.deepcopy(rng.choice(held)))
        entry = {"slabs": [held[-1]]} if path[-1] == "slabs" else {"at": held[-1]}
        _number(rng, entry, [])


def _borrowed(rng: random.Random, new: Json, others: list[Json]) -> None:
    """Take a member of another order's slab, or a whole slab."""
    slabs = rng.choice(others).get("slabs") or [{}]
    theirs = copy.deepcopy(rng.choice(slabs))
    mine = new.get("slabs") or [{}]
    if rng.random() < 0.2 and len(mine) < MOST["slabs"]:
        mine.append(theirs)
    elif theirs:
        name = rng.choice(sorted(theirs))
        for slab in mine if rng.random() < 0.5 else [rng.choice(mine)]:
            slab[name] = copy.deepcopy(theirs[name])


def _word(rng: random.Random, new: Json, others: list[Json]) -> None:
    """Take a word that another order has under the same name."""
    mine = [p for p, v in _nodes(new) if isinstance(v, str) and p[-1] in _WORDS]
    if not mine:
        return
    *path, key = rng.choice(mine)
    words = [v for o in others for p, v in _nodes(o) if p[-1] == key and isinstance(v, str)]
    _at(new, tuple(path))[key] = rng.choice(words or [_at(new, (*path, key))])


def _shaken(rng: random.Random, new: Json, _others: list[Json]) -> None:
    """Move every number of one slab a little, so that nothing in it is like another's."""
    slabs = new.get("slabs") or [{}]
    slab = rng.choice(slabs)
    much = rng.choice((0.001, 0.01, 0.1))
    for path, value in list(_nodes(slab)):
        if isinstance(value, float) and path[-1] not in ("quantity", "grooves"):
            *before, key = path
            _at(slab, tuple(before))[key] = round(value * rng.uniform(1 - much, 1 + much), 2)


def _left_out(rng: random.Random, new: Json, _others: list[Json]) -> None:
    """Leave out a member of one slab, or of what is in it, which the service then assumes."""
    slab = rng.choice(new.get("slabs") or [{}])
    members = [path for path, _ in _nodes(slab) if isinstance(path[-1], str)]
    if members:
        *before, key = rng.choice(members)
        del _at(slab, tuple(before))[key]


_CHANGES: Final = (_number, _number, _list, _list, _borrowed, _word, _shaken, _left_out)


@dataclass(frozen=True, slots=True)
class Dear:
    """A request and what it costs."""

    cost: float
    request: Json


def climb(
    cost: CostOf, seed: int, rounds: int, begin: Sequence[Json], change: ChangeOf
) -> list[Dear]:
    """Search, and return the dearest requests found, the dearest first.

    Parameters
    ----------
    cost
        None for what is not asked.
    change
        Changes a request a little, by chance.
    """
    rng = random.Random(seed)  # noqa: S311 - the same search each time
    best: list[Dear] = []
    for tried in range(len(begin) + rounds):
        if tried < len(begin):
            request = begin[tried]
        else:
            request = change(rng, best[int(len(best) * rng.random() ** 2)].request)
        spent = cost(request)
        if spent is not None:
            best.append(Dear(spent, request))
            best.sort(key=lambda one: -one.cost)
            del best[KEPT:]
    return best
