"""Whether sentences say what a patch changes: a second reading, from the two documents alone.

``unsaid`` lists what is wrong with what was said: a changed member that no sentence says under the
name of the thing it belongs to, a movement that is not the one made, a None, an empty sentence.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import Final

from ledgerstone.errors import QuantityError
from ledgerstone.json_types import JSON
from support.documents import Json
from support.oracles.patched_orders import (
    WHICH,
    Kept,
    Part,
    cast_outline,
    kept_things,
    mm,
    parts_of,
    sizes_of,
    slab_name,
)

Move = tuple[str, float, float]
_NEAR_MM: Final = 1.7  # a sixteenth of an inch
_WALLS_MM: Final = 8.0  # gaps at walls, which the told sizes of pieces do not have
_WAYS: Final = {
    "to the right": (0, 1.0),
    "to the left": (0, -1.0),
    "towards the back": (1, 1.0),
    "towards the front": (1, -1.0),
}
_AMOUNT: Final = r"(\d[\d ./]*(?: ft)?(?: \d[\d ./]* ?)?(?:mm|cm|m|in|ft))"
_STEP: Final = re.compile(rf"{_AMOUNT} ({'|'.join(_WAYS)})")
_DELIVERIES: Final = {
    "collect": "Collect",
    "pallet": "pallet",
    "own-van": "our own van",
    "fitted": "fitted",
}
_RESTS: Final = "rest|panel|board|frame|bed|rail|leg|bearer|fixed|overhang|ledge|unit|carr"
_LOOKS: Final = (
    "edges", "shade", "finish", "rests", "size_from", "thickness", "place", "use", "quantity",
)  # fmt: skip
_OF_PIECES: Final = ("rests", "edges", "size_from")  # what a cut changes without a word


def unsaid(sent: Json, made: Json, says: Sequence[str]) -> list[str]:
    """List what is wrong with sentences that say how one order became another."""
    text = " ".join(says)
    wrong = [
        f"says {word!r}" for word in ("None", "nan", "Change what", "Change the") if word in text
    ]
    wrong += ["says nothing" for one in says if not one.strip()]
    moves: list[Move] = []
    near, seen = _NEAR_MM, 0.06
    for i, (slab, parts) in enumerate(zip(sent["slabs"], parts_of(sent, made), strict=True)):
        name = slab_name(sent, i)
        if len(parts) > 1:
            fitted = slab.get("size_from", "finished") in ("between-walls", "over-units")
            near, seen = (_WALLS_MM, _WALLS_MM) if fitted else (near, seen)
        wrong += _pieces_unsaid(parts, name, text)
        wrong += _members_unsaid(slab, parts, name, says)
        for member in ("cutouts", "reliefs"):
            kept, lost, _ = kept_things(slab, parts, member)
            moves += [(k.name, *k.by_mm) for k in kept]
            wrong += [f"{k.name}: {what}" for k in kept for what in _thing_unsaid(k, text)]
            wrong += [f"{n} is left out, unsaid" for n in lost if not _left_out(n, says, text)]
        moves += _legs_moved(slab, parts, text)
    wrong += _moves_unsaid(moves, says, near, seen)
    return wrong + list(_order_unsaid(sent, made, text))


def _left_out(name: str, says: Sequence[str], text: str) -> bool:
    plain = re.search(r"\bplain slab\b", text) is not None
    return plain or any(one.startswith("Leave out") and name in one for one in says)


# --- movements ------------------------------------------------------------------------------


def _moves_unsaid(
    moves: list[Move], says: Sequence[str], near_mm: float, seen_mm: float
) -> Iterator[str]:
    """Each movement is stated once, and none is stated that was not made."""
    names = {name for name, _, _ in moves}
    said = _said_moves(says, names)
    left = [m for m in said if m[0] in names or not re.search(r"\blegs?$", m[0])]  # of a piece
    for name, dx, dy in moves:
        told = [m for m in left if m[0] == name]
        good = [m for m in told if abs(m[1] - dx) <= near_mm and abs(m[2] - dy) <= near_mm]
        if good:
            left.remove(good[0])
        elif max(abs(dx), abs(dy)) > seen_mm:
            yield f"{name} moves {dx:+.1f}, {dy:+.1f} mm; said: {told or 'nothing'}"
    yield from (f"a movement that is not made: {m}" for m in left)


def _said_moves(says: Sequence[str], names: set[str]) -> Iterator[Move]:
    for told in re.findall(r"(?:Move|On [^.]*?, move) (.*?)\.(?=\s|$)", " ".join(says)):
        for clause in told.split("; "):
            yield from _of_clause(clause, names)


def _legs_moved(slab: Json, parts: list[Part], text: str) -> list[Move]:
    """How far each leg moved, unless they are stated by where they stand."""
    was, now = (one.get("rests", {}) for one in (slab, parts[0].slab))
    same = len(parts) == 1 and was.get("kind") == now.get("kind") == "legs"
    if not same or len(was["at"]) != len(now["at"]) or "Stand the legs of" in text:
        return []
    pairs = zip(was["at"], now["at"], strict=True)
    by = [(mm(b["x"]) - mm(a["x"]), mm(b["y"]) - mm(a["y"])) for a, b in pairs]
    alike = all(math.dist(one, by[0]) < _NEAR_MM for one in by)
    names = ["the legs"] if alike else [f"the {WHICH[k]} leg" for k in range(len(by))]
    return [(name, *one) for name, one in zip(names, by, strict=False)]


def _of_clause(clause: str, names: set[str]) -> Iterator[Move]:
    """The things of a clause and how far they all go: names, then one step or two."""
    steps = list(_STEP.finditer(clause))
    if not steps:
        return
    by = [0.0, 0.0]
    for step in steps:
        axis, sign = _WAYS[step[2]]
        by[axis] += sign * _amount(step[1])
    who = clause[: steps[0].start()].strip()
    for name in sorted(names, key=len, reverse=True):
        pattern = rf"(?<!\w){re.escape(name)}(?!\w)"
        for _ in range(len(re.findall(pattern, who))):
            yield name, by[0], by[1]
        who = re.sub(pattern, "", who)
    if who.strip(" ,").replace("and", "").strip(" ,"):
        yield who.strip(" ,"), by[0], by[1]


def _amount(text: str) -> float:
    try:
        return mm(text.strip())
    except QuantityError:
        return float("nan")


# --- the rest -------------------------------------------------------------------------------


def _pieces_unsaid(parts: list[Part], name: str, text: str) -> Iterator[str]:
    if len(parts) > 1 and not re.search(rf"{re.escape(name)} of \w+ pieces", text):
        yield f"{name} is cut in {len(parts)}, unsaid"


def _thing_unsaid(kept: Kept, text: str) -> Iterator[str]:
    """What changed about an opening or a relief beside its place."""
    own = [s for s in re.findall(r"[^.]*(?:\.\d[^.]*)*\.", text) if kept.name in s]
    was, now = kept.was, kept.now
    if kept.halved and not any("through the middle" in s for s in own):
        yield "the joint runs through it, unsaid"
    sizes = [*sizes_of(was, now), *sizes_of(was.get("outline", {}), now.get("outline", {}))]
    if any(abs(a - b) > 0.06 for b, a, _ in sizes) and not any(
        s.startswith("Make") for s in map(str.strip, own)
    ):
        yield "another size, unsaid"
    for member, word in (
        ("turn_degrees", "Turn"), ("kind", "Give"), ("rim", "rim|cover"), ("depth", "deep"),
        ("heat", "heat"), ("corner_radius", "Round|smaller| by "),
    ):  # fmt: skip
        if was.get(member) != now.get(member) and not any(re.search(word, s) for s in own):
            yield f"another {member}, unsaid"
    opened = (was.get("open_to") is None) != (now.get("open_to") is None)
    if opened and not kept.halved and not any("run out" in s for s in own):
        yield "another open_to, unsaid"


def _members_unsaid(slab: Json, parts: list[Part], name: str, says: Sequence[str]) -> Iterator[str]:
    """Members of a slab beside its openings: each that changed is stated of it, or of its piece."""
    text = " ".join(says)
    if f"{name} a plain slab" in text:
        return
    if len(parts) == 1:
        outlines = [cast_outline(one) for one in (slab, parts[0].slab)]
        yield from _outline_unsaid(outlines[0], outlines[1], name, text)
    for part in parts:
        for member in _LOOKS:
            was, now = slab.get(member), part.slab.get(member)
            if _like(was, now) or (len(parts) > 1 and member in _OF_PIECES):
                continue
            if not any(_says_member(member, was, now, name, one) for one in _sentences(text)):
                yield f"{name}: another {member}, unsaid ({now!r})"


def _like(was: JSON, now: JSON) -> bool:
    """Return whether two members are the same, lengths in whatever unit."""
    if isinstance(was, dict) and isinstance(now, dict):
        return set(was) == set(now) and all(_like(was[k], now[k]) for k in was)
    if isinstance(was, list) and isinstance(now, list):
        return len(was) == len(now) and all(map(_like, was, now))
    if isinstance(was, str | int | float) and isinstance(now, str | int | float):
        return bool(was == now) or abs(_amount(str(was)) - _amount(str(now))) <= 1e-6
    return bool(was == now)


def _sentences(text: str) -> list[str]:
    return [one.strip() for one in re.findall(r"[^.]*(?:\.\d[^.]*)*\.", text)]


def _says_member(member: str, was: JSON, now: JSON, name: str, said: str) -> bool:
    if member in ("rests", "size_from"):
        word = _RESTS if member == "rests" else f"{re.escape(name)} keeps the size"
        return re.search(word, said, re.IGNORECASE) is not None
    if member == "edges":
        return name in said and re.search("edge|along|side|rim|notch", said) is not None
    if name not in said:
        return False
    if member == "thickness":
        return " thick" in said
    if isinstance(now, dict):
        told = [value for key, value in now.items() if (was or {}).get(key) != value]
        return any(str(value) in said for value in told)
    return str(now) in said


def _outline_unsaid(was: Json, now: Json, name: str, text: str) -> Iterator[str]:
    if was == now:
        return
    ways = {"length": "long", "width": "deep", "diameter": "across"}
    nouns = {"width": "depth"}  # of a slab whose name ends in a number
    pairs: Iterable[tuple[float, float, str]] = sizes_of(was, now)
    for before, after, size in pairs:
        told = rf"{ways.get(size, size)} instead of|a {nouns.get(size, size)} of [\d /]+\S* instead"
        if abs(before - after) > 0.06 and not re.search(told, text):
            yield f"{name}: another {size}, unsaid"
    if was["kind"] != now["kind"]:
        yield f"{name}: another kind of outline"
    sized = [one for one in _sentences(text) if name in one]
    if not sized:
        yield f"{name}: another outline, unsaid"


def _order_unsaid(sent: Json, made: Json, text: str) -> Iterator[str]:
    """Members of the order itself."""
    kinds = [one.get("delivery", {}).get("kind", "collect") for one in (sent, made)]
    if kinds[0] != kinds[1] and _DELIVERIES[kinds[1]] not in text:
        yield f"delivery {kinds[1]}, unsaid"
    if sent.get("needed_by") != made.get("needed_by"):
        day = date.fromisoformat(made["needed_by"]) if made.get("needed_by") else None
        if day is None or f"{day:%-d %B %Y}" not in text:
            yield "another day, unsaid"
    for member, word in (("heated_curing", "tent"), ("sample_tile", "tile")):
        if sent.get(member) != made.get(member) and word not in text:
            yield f"{member}, unsaid"
    joins = [len(one.get("joins", [])) for one in (sent, made)]
    if joins[1] != joins[0] and "join" not in text:
        yield "joins, unsaid"
