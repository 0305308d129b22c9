"""Scores the dimensions of answers to enquiries against what a careful maker would take."""

from __future__ import annotations

import itertools
import json
import re
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
OWN = ROOT / "tests" / "data" / "enquiries.jsonl"
BESIDE = ROOT.parent / "shared" / "enquiries"
WITHIN_MM = 0.5
DimensionRow = dict[str, Any]
Dimensions = dict[str, float]
_OUTLINE = ("length", "width", "diameter")


def rows() -> list[DimensionRow]:
    """The messages of this repository with their truths, and those beside the checkout, if any."""
    notes = {note["id"]: note for note in _lines(BESIDE / "notes.jsonl")}
    beside = _lines(BESIDE / "enquiries.jsonl")
    return [*_lines(OWN), *({**row, "notes": notes.get(row["id"], {})} for row in beside)]


def _lines(file: Path) -> list[DimensionRow]:
    if not file.is_file():
        return []
    return [json.loads(line) for line in file.read_text("utf-8").splitlines() if line.strip()]


@dataclass
class Slab:
    """A slab's dimensions by name, and each opening's."""

    own: Dimensions = field(default_factory=dict)
    openings: list[tuple[str, Dimensions]] = field(default_factory=list)


@dataclass
class Score:
    """Counts of one message or of many."""

    counts: Counter[str] = field(default_factory=Counter)
    wrong: list[str] = field(default_factory=list)

    def add(self, other: Score) -> None:
        """Add another message's counts."""
        self.counts.update(other.counts)
        self.wrong += other.wrong

    def share(self, part: str, whole: str) -> float:
        """One count in another, 1 where there is nothing to count."""
        return self.counts[part] / self.counts[whole] if self.counts[whole] else 1.0


def true_slabs(truth: DimensionRow) -> list[Slab]:
    """Dimensions that a truth has."""
    slabs = []
    for one in truth["slabs"]:
        outline, notch = one["outline"], one["outline"].get("notch") or {}
        own = {key: outline.get(key) for key in _OUTLINE}
        own |= {f"notch.{key}": notch.get(key) for key in ("length", "width")}
        own["thickness"] = one.get("thickness")
        slab = Slab({key: value for key, value in own.items() if value is not None})
        for cutout in one["cutouts"]:
            sizes = {key: cutout.get(key) for key in _OUTLINE}
            sizes |= {f"centre.{axis}": cutout["centre"][axis] for axis in "xy"}
            slab.openings.append(
                (cutout["what"], {k: v for k, v in sizes.items() if v is not None})
            )
        slabs.append(slab)
    return slabs


def read_slabs(answer: DimensionRow) -> list[Slab]:
    """Dimensions that an answer took, by the pointers of its ``read``."""
    slabs: dict[int, Slab] = {}
    openings: dict[tuple[int, int], Dimensions] = {}
    for entry in answer["read"]:
        place = re.fullmatch(r"/slabs/(\d+)/(?:cutouts/(\d+)/)?(.+)", entry["at"])
        if place is None or entry.get("mm") is None:
            continue
        i, name = int(place[1]), place[3].removeprefix("outline/").replace("/", ".")
        slab = slabs.setdefault(i, Slab())
        if place[2] is None:
            slab.own[name] = entry["mm"]
        else:
            openings.setdefault((i, int(place[2])), {})[name] = entry["mm"]
    for (i, _), sizes in sorted(openings.items()):
        slabs[i].openings.append(("", sizes))
    return [slabs[i] for i in sorted(slabs)]


def _agreeing(one: Dimensions, other: Dimensions) -> int:
    return sum(key in other and abs(one[key] - other[key]) <= WITHIN_MM for key in one)


def pairs(
    ones: Sequence[Any], others: Sequence[Any], score: Callable[[Any, Any], float]
) -> list[tuple[int, int]]:
    """The pairing of two lists that scores most; all ways are tried."""
    few, many, turned = ones, others, False
    if len(ones) > len(others):
        few, many, turned = others, ones, True
    best: tuple[float, list[tuple[int, int]]] = (-1.0, [])
    for chosen in itertools.permutations(range(len(many)), len(few)):
        found = [(j, i) if turned else (i, j) for i, j in enumerate(chosen)]
        total = sum(score(ones[i], others[j]) for i, j in found)
        best = max(best, (total, found), key=lambda one: one[0])
    return best[1]


def slab_score(one: Slab, other: Slab) -> float:
    """How well two slabs agree, their own sizes first."""
    held = pairs(one.openings, other.openings, lambda a, b: _agreeing(a[1], b[1]))
    inner = sum(_agreeing(one.openings[i][1], other.openings[j][1]) for i, j in held)
    return (
        10 * _agreeing(one.own, other.own) + 3 * inner + (len(one.openings) == len(other.openings))
    )


def score_dimensions(row: DimensionRow, answer: DimensionRow) -> Score:
    """Right, given, wanted, invented and trapped dimensions of one message."""
    truth, made = true_slabs(row["truth"]), read_slabs(answer)
    score = Score()
    traps = [float(trap) for trap in row["notes"].get("traps", [])]

    def compare(want: Dimensions, give: Dimensions, where: str) -> None:
        score.counts.update(wanted=len(want), given=len(give))
        for key, value in give.items():
            if key not in want:
                score.counts["invented"] += 1
                score.wrong.append(f"{row['id']} {where} {key}: {value} where none is said")
            elif abs(want[key] - value) <= WITHIN_MM:
                score.counts["right"] += 1
                continue
            else:
                score.wrong.append(f"{row['id']} {where} {key}: {value}, said {want[key]}")
            score.counts["trapped"] += any(abs(value - trap) <= WITHIN_MM for trap in traps)

    matched = dict(pairs(truth, made, slab_score))
    for i, slab in enumerate(truth):
        other = made[matched[i]] if i in matched else Slab()
        compare(slab.own, other.own, f"slab {i}")
        held = dict(pairs(slab.openings, other.openings, lambda a, b: _agreeing(a[1], b[1])))
        for j, (what, sizes) in enumerate(slab.openings):
            compare(sizes, other.openings[held[j]][1] if j in held else {}, f"slab {i} {what}")
        for k in set(range(len(other.openings))) - set(held.values()):
            compare({}, other.openings[k][1], f"slab {i} opening too many")
    for k in set(range(len(made))) - set(matched.values()):
        compare({}, made[k].own, "slab too many")
        for _, sizes in made[k].openings:
            compare({}, sizes, "slab too many")
    score.counts["missed"] = score.counts["wanted"] - score.counts["right"]
    return score
