"""What a patch made of an order, read from the two documents alone: the order sent and the patched.

Nothing here knows how a remedy is found or said. Slabs beyond those that were sent are pieces of
them, by the joins that came with them; every opening is looked for among the pieces of its slab,
and where it now is is worked out in the plan of the slab as sent.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Final

from ledgerstone.quantities import Length
from support.documents import Json

SIZES: Final = ("length", "width", "diameter", "corner_radius")
_APPLIANCES: Final = ("hob", "sink", "basin", "bowl", "kochfeld", "spüle")
_MAX_SHARE: Final = 0.05
_SEEN_MM: Final = 0.06
_LONGEST_NAME: Final = 40
WHICH: Final = (
    "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth",
    "eleventh", "twelfth", "thirteenth", "fourteenth", "fifteenth", "sixteenth", "seventeenth",
    "eighteenth", "nineteenth", "twentieth",
)  # fmt: skip


def mm(value: object) -> float:
    """A length of a document in mm."""
    return Length.parse(value).mm


@dataclass(frozen=True, slots=True)
class Part:
    """One slab that a slab as sent became, and where its corner lies in that one's plan."""

    slab: Json
    index: int
    at_mm: tuple[float, float]


@dataclass(frozen=True, slots=True)
class Kept:
    """An opening or a relief as sent, and what it became; ``by_mm`` is how far it moved."""

    name: str
    was: Json
    now: Json
    by_mm: tuple[float, float]
    halved: bool = False


# --- names ----------------------------------------------------------------------------------


def short(label: str) -> str:
    """A label as it stands in a sentence: in one line, and cut where it is long."""
    tidy = " ".join(label.split())
    return tidy if len(tidy) <= _LONGEST_NAME else f"{tidy[: _LONGEST_NAME - 1].rstrip()}…"


def slab_name(order: Json, i: int) -> str:
    """A slab by its customer's name, or by its number."""
    slabs = order["slabs"]
    if slabs[i].get("label"):
        return f"“{short(slabs[i]['label'])}”"
    return "the slab" if len(slabs) == 1 else f"slab {i + 1}"


def thing_names(things: list[Json], words: Mapping[str, str]) -> list[str]:
    """Openings or reliefs by their labels; or by their kind, and which where several have none."""
    names = []
    for thing in things:
        kind = f"{words[thing['kind']]} cut-out" if words else thing["kind"]
        alike = [t for t in things if not t.get("label") and t["kind"] == thing["kind"]]
        which = next((k for k, one in enumerate(alike) if one is thing), 0)
        told = re.sub(r"(?i)^(the|an?)\s+", "", short(thing.get("label", "")))
        numbered = f"{WHICH[which]} {kind}" if len(alike) > 1 else kind
        names.append(f"the {told or numbered}")
    return names


OPENING_WORDS: Final = {
    "circle": "round",
    "rectangle": "rectangular",
    "slot": "slot",
    "polygon": "shaped",
}


# --- pieces ---------------------------------------------------------------------------------


def parts_of(sent: Json, made: Json) -> list[list[Part]]:
    """What each slab as sent became: itself, or its pieces with their places in it."""
    n, extra = len(sent["slabs"]), len(made["slabs"]) - len(sent["slabs"])
    new_joins = made.get("joins", [])[-extra:] if extra > 0 else []
    return [_connected(sent["slabs"][i], made, i, new_joins, n) for i in range(n)]


def _connected(sent: Json, made: Json, i: int, joins: list[Json], n: int) -> list[Part]:
    at: dict[int, tuple[float, float]] = {i: (0.0, 0.0)}
    while True:
        near = [
            (a, b, mm(join["gap"]))
            for join in joins
            for a, b in ((join["one"], join["other"]), (join["other"], join["one"]))
            if a["slab"] in at and b["slab"] not in at and b["slab"] >= n
        ]
        if not near:
            break
        one, other, gap = near[0]
        at[other["slab"]] = _beside((sent, made), at[one["slab"]], (one, other), gap)
    low = [min(place[axis] for place in at.values()) for axis in (0, 1)]
    return [Part(made["slabs"][k], k, (x - low[0], y - low[1])) for k, (x, y) in sorted(at.items())]


def _beside(
    slab_and_made: tuple[Json, Json], at: tuple[float, float], ends: tuple[Json, Json], gap: float
) -> tuple[float, float]:
    """Where a piece lies beside another: flush on the side that a notch does not take."""
    (sent, made), (one, _) = slab_and_made, ends
    mine, theirs = (cast_outline(made["slabs"][end["slab"]]) for end in ends)
    corner = sent["outline"].get("notch", {}).get("corner", "back-right")
    x, y = at
    up = mm(mine["width"]) - mm(theirs["width"]) if corner.startswith("front") else 0.0
    along = mm(mine["length"]) - mm(theirs["length"]) if corner.endswith("left") else 0.0
    return {
        "right": lambda: (x + mm(mine["length"]) + gap, y + up),
        "left": lambda: (x - mm(theirs["length"]) - gap, y + up),
        "back": lambda: (x + along, y + mm(mine["width"]) + gap),
        "front": lambda: (x + along, y - mm(theirs["width"]) - gap),
    }.get(one["side"], lambda: (x, y))()


# --- openings and reliefs -------------------------------------------------------------------


def kept_things(
    sent: Json, parts: list[Part], member: str
) -> tuple[list[Kept], list[str], list[str]]:
    """What became of openings or reliefs of one slab; the names of those lost; what came again."""
    things = sent.get(member, [])
    names = thing_names(things, OPENING_WORDS if member == "cutouts" else {})
    place = "centre" if member == "cutouts" else "at"
    left = [(part, one) for part in parts for one in part.slab.get(member, [])]
    whole = len(parts) == 1 and len(left) == len(things)
    kept, lost = [], []
    for thing, name in zip(things, names, strict=True):
        alike = left[:1] if whole else [pair for pair in left if _same(thing, pair[1])]
        if not alike:
            lost.append(name)
            continue
        part, now = min(alike, key=lambda pair: (_unlike(thing, pair[1]), _far(thing, pair, place)))
        left = [pair for pair in left if pair[1] is not now]
        other = [pair for pair in left if _same(now, pair[1]) and _far(thing, pair, place) < 5.0]
        halved = len(parts) > 1 and "open_to" in now and "open_to" not in thing and bool(other)
        if halved:
            left = [pair for pair in left if pair[1] is not other[0][1]]
        kept.append(Kept(name, thing, now, _moved(thing, now, part, place), halved))
    return kept, lost, [one.get("label") or one["kind"] for _, one in left]


def _same(one: Json, other: Json) -> bool:
    """Return whether two things may be one: of a label and a kind, and alike in size."""
    alike = one.get("label") == other.get("label") and one["kind"] == other["kind"]
    sizes = [one.get(s) for s in SIZES[:3]], [other.get(s) for s in SIZES[:3]]
    near = all(
        (a is None) == (b is None) and (a is None or abs(mm(a) - mm(b)) <= 0.15 * mm(a))
        for a, b in zip(*sizes, strict=True)
    )
    return alike and near


def _unlike(one: Json, other: Json) -> float:
    """How much two things of a kind differ, beside where they are."""
    sizes = sum(abs(a - b) for a, b, _ in sizes_of(one, other))
    return float(sizes + sum(one.get(name) != other.get(name) for name in ("heat", "rim")))


def _middle(thing: Json, place: str) -> tuple[float, float]:
    if place in thing:
        return mm(thing[place]["x"]), mm(thing[place]["y"])
    xs, ys = ([mm(p[axis]) for p in thing["points"]] for axis in ("x", "y"))
    return (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2


def _moved(was: Json, now: Json, part: Part, place: str) -> tuple[float, float]:
    a, b = _middle(was, place), _middle(now, place)
    return b[0] + part.at_mm[0] - a[0], b[1] + part.at_mm[1] - a[1]


def _far(thing: Json, pair: tuple[Part, Json], place: str) -> float:
    dx, dy = _moved(thing, pair[1], pair[0], place)
    return abs(dx) + abs(dy)


# --- what a fix may not do ------------------------------------------------------------------


def liberties(sent: Json, made: Json) -> Iterator[str]:
    """Say what a patch took that a fix may not: an opening, an appliance's size or turn, a size."""
    for i, (slab, parts) in enumerate(zip(sent["slabs"], parts_of(sent, made), strict=True)):
        kept, lost, new = kept_things(slab, parts, "cutouts")
        yield from (f"slab {i}: {name} is left out" for name in lost)
        yield from (f"slab {i}: a new opening, {name}" for name in new)
        for one in kept:
            yield from (f"slab {i}: {one.name} {what}" for what in _opening_liberties(one))
        yield from (f"slab {i}: {what}" for what in _slab_liberties(slab, parts))


def _opening_liberties(one: Kept) -> Iterator[str]:
    fixed = one.was.get("heat") or any(
        name in one.was.get("label", "").lower() for name in _APPLIANCES
    )
    turns = [thing.get("turn_degrees", 0) % 180 for thing in (one.was, one.now)]
    if turns[0] != turns[1] and one.was["kind"] != "circle":
        yield "is turned"
    ends_rounded = (one.was["kind"], one.now["kind"]) == ("rectangle", "slot")
    if one.was["kind"] != one.now["kind"] and not ends_rounded:
        yield "is of another kind"
        return
    for was, now, name in sizes_of(one.was, one.now):
        if abs(now - was) > (_SEEN_MM if fixed else _MAX_SHARE * was + _SEEN_MM):
            yield f"is {now:g} instead of {was:g} mm in {name}"


def sizes_of(was: Json, now: Json) -> Iterable[tuple[float, float, str]]:
    """The sizes that two things of a kind both have, but for radii."""
    return [
        (mm(was[name]), mm(now[name]), name) for name in SIZES[:3] if name in was and name in now
    ]


def cast_outline(slab: Json) -> Json:
    """The outline as it is cast: over units with what hangs over them, else as told."""
    outline: Json = slab["outline"]
    over = (
        slab.get("rests", {}).get("overhang", {}) if slab.get("size_from") == "over-units" else {}
    )
    more = {
        name: sum(mm(over[side]) for side in sides if side in over)
        for name, sides in (("length", ("left", "right")), ("width", ("front", "back")))
    }
    return outline | {k: mm(outline[k]) + by for k, by in more.items() if by and k in outline}


def _slab_liberties(slab: Json, parts: list[Part]) -> Iterator[str]:
    was = cast_outline(slab)
    fixed = slab.get("size_from") in ("between-walls", "over-units")
    if len(parts) == 1:
        now = cast_outline(parts[0].slab)
        if now["kind"] != was["kind"]:
            yield f"is a {now['kind']} instead of a {was['kind']}"
            return
        pairs = list(sizes_of(was, now))
        pairs += sizes_of(was.get("notch", {}), now.get("notch", {}))
    else:
        pairs = [*_reached(was, parts)]
    for before, after, name in pairs:
        most = 8.0 if fixed and len(parts) > 1 else _SEEN_MM if fixed else _MAX_SHARE * before + 1.0
        if abs(after - before) > most:
            yield f"is {after:g} instead of {before:g} mm in {name}"


def _reached(was: Json, parts: list[Part]) -> Iterator[tuple[float, float, str]]:
    for axis, name in enumerate(("length", "width")):
        ends = [part.at_mm[axis] + mm(cast_outline(part.slab)[name]) for part in parts]
        yield mm(was[name]), max(ends), name
