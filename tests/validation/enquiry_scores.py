"""Scores answers to enquiries against what a careful maker would take from each message."""

from __future__ import annotations

import itertools
import json
import re
from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
ENQUIRIES = ROOT.parent / "shared" / "enquiries"
WITHIN_MM = 0.5
Row = dict[str, Any]
Dimensions = dict[str, float]
_OUTLINE = ("length", "width", "diameter")
_SIZED = re.compile(r"slab (\d+): ")


def rows(folder: Path = ENQUIRIES) -> list[Row]:
    """Messages with their truths and notes.

    Raises
    ------
    FileNotFoundError
        With where the set is looked for: it lies beside the checkout and is no part of it.
    """
    file = folder / "enquiries.jsonl"
    if not file.is_file():
        raise FileNotFoundError(
            f"The enquiries with their truths are not at {folder.parent.name}/{folder.name} beside"
            " this checkout. These tests cannot run without them."
        )
    notes = {one["id"]: one for one in _lines(folder / "notes.jsonl")}
    return [{**row, "notes": notes.get(row["id"], {})} for row in _lines(file)]


def _lines(file: Path) -> list[Row]:
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


def true_slabs(truth: Row) -> list[Slab]:
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


def read_slabs(answer: Row) -> list[Slab]:
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


def _slab_score(one: Slab, other: Slab) -> float:
    held = pairs(one.openings, other.openings, lambda a, b: _agreeing(a[1], b[1]))
    inner = sum(_agreeing(one.openings[i][1], other.openings[j][1]) for i, j in held)
    return (
        10 * _agreeing(one.own, other.own) + 3 * inner + (len(one.openings) == len(other.openings))
    )


def score_dimensions(row: Row, answer: Row) -> Score:
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

    matched = dict(pairs(truth, made, _slab_score))
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


# --- missing and doubtful ---------------------------------------------------------------------

Named = tuple[int | None, str, str]


def _of_phrase(phrase: str) -> set[Named]:
    """What a truth's entry is about: slab, thing, opening. A place without an axis is both."""
    found = _SIZED.match(phrase)
    slab = int(found[1]) - 1 if found else None
    rest = phrase[found.end() :] if found else phrase
    opening = re.match(r"(size|position) of the (.+?)(?: hole)?(?:,|:|$)", rest)
    if opening:
        axes = {"front to back": {"y"}, "left to right": {"x"}}
        said = next((axes[words] for words in axes if words in rest), {"x", "y"})
        things = {"size"} if opening[1] == "size" else said
        return {(slab, thing, opening[2]) for thing in things}
    for start, thing in (
        ("needed by", "needed_by"),
        ("delivery postcode", "postcode"),
        ("delivery", "delivery"),
        ("which side", "corner"),
        ("thickness", "thickness"),
        ("length", "length"),
        ("width", "width"),
        ("diameter", "diameter"),
    ):
        if rest.startswith(start):
            return {(slab, thing, "")}
    raise ValueError(phrase)


def _of_pointer(at: str, answer: Row) -> set[Named]:
    """What an answer's entry is about."""
    place = re.fullmatch(r"/slabs/(\d+)(?:/cutouts/(\d+))?(?:/(.+))?", at)
    if place is None:
        name = at.strip("/")
        things = {"delivery/postcode": "postcode", "delivery/kind": "delivery"}
        return {(None, things.get(name, name), "")}
    slab, name = int(place[1]), place[3] or ""
    if place[2] is None:
        name = {"outline/notch/corner": "corner"}.get(name, name.rpartition("/")[2])
        return {(slab, name, "")}
    what = answer["order"]["slabs"][slab]["cutouts"][int(place[2])]["label"]
    if name.startswith("centre"):
        return {(slab, axis, what) for axis in (name[-1] if name[-1] in "xy" else "xy")}
    return {(slab, "size", what)}


def score_asked(row: Row, answer: Row) -> Score:
    """Entries of the truth that are named, and entries about what is plainly said."""
    score = Score()
    truth = row["truth"]
    matched = {j: i for i, j in pairs(true_slabs(truth), _aligned(answer), _slab_score)}
    given: set[Named] = set()
    many = len(truth["slabs"]) > 1
    for entry in [*answer["missing"], *answer["doubtful"]]:
        for slab, thing, what in _of_pointer(entry["at"], answer):
            place = matched.get(slab, slab) if slab is not None else None
            given.add((place if many else None, thing, what))
    wanted: set[Named] = set()
    for phrase in [*truth["missing"], *truth["doubtful"]]:
        named = _of_phrase(phrase)
        wanted |= named
        hit = named & given if "position" not in phrase else (named if named & given else set())
        score.counts.update(asked=1, named=bool(hit))
        if not hit:
            score.wrong.append(f"{row['id']} not named: {phrase}")
    for one in sorted(given - wanted, key=str):
        score.counts["entries"] += 1
        if _plainly_said(one, truth):
            score.counts["false_alarms"] += 1
            score.wrong.append(f"{row['id']} asked though said: {one}")
    score.counts["entries"] += len(given & wanted)
    return score


def _aligned(answer: Row) -> list[Slab]:
    """Slabs by their index in the order, those without sizes too."""
    made = {
        int(re.findall(r"/slabs/(\d+)", e["at"])[0]) for e in answer["read"] if "/slabs" in e["at"]
    }
    by_index = dict(zip(sorted(made), read_slabs(answer), strict=False))
    return [by_index.get(i, Slab()) for i in range(len(answer["order"]["slabs"]))]


def _plainly_said(one: Named, truth: Row) -> bool:
    """Whether the truth has a value for what an entry is about."""
    slab, thing, what = one
    if thing in ("postcode", "delivery", "needed_by"):
        said = {**truth["delivery"], "needed_by": truth["needed_by"]}
        wants = truth["delivery"]["kind"] in ("pallet", "own-van", "fitted")
        return said[{"delivery": "kind"}.get(thing, thing)] is not None or (
            thing == "postcode" and not wants
        )
    slabs = truth["slabs"] if slab is None else truth["slabs"][slab : slab + 1]
    for one_slab in slabs:
        if what:
            cutouts = [c for c in one_slab["cutouts"] if c["what"] == what]
            key = {"size": "diameter"}.get(thing, thing)
            values = [c["centre"].get(key, c.get(key, c.get("length"))) for c in cutouts]
            if not cutouts or any(value is not None for value in values):
                return True
        elif thing == "thickness":
            return one_slab["thickness"] is not None
        elif thing == "corner":
            return (one_slab["outline"].get("notch") or {}).get("corner") is not None
        else:
            return one_slab["outline"].get(thing) is not None
    return False


# --- the rest ---------------------------------------------------------------------------------


def _contains(one: str | None, other: str | None) -> bool:
    if not one or not other:
        return not one and not other
    a, b = " ".join(one.lower().split()), " ".join(other.lower().split())
    return a in b or b in a


def score_rest(row: Row, answer: Row) -> Score:
    """Enquiry or not, customer, address, delivery, day, and each slab's words."""
    score = Score()
    truth = row["truth"]

    def check(name: str, is_right: bool, says: object = "") -> None:
        score.counts.update({f"{name}?": 1, name: int(is_right)})
        if not is_right:
            score.wrong.append(f"{row['id']} {name}: {says}")

    is_one = bool(truth["slabs"]) or row["kind"] != "not-an-enquiry"
    check("enquiry" if is_one else "no enquiry", answer["is_enquiry"] == is_one)
    customer, order = answer["customer"], answer["order"]
    check("customer", _contains(truth["customer"], customer["name"]), customer["name"])
    check("reply_to", truth["reply_to"] == customer["reply_to"], customer["reply_to"])
    if not is_one:
        return score
    delivery = order.get("delivery", {})
    for key, want in truth["delivery"].items():
        check(f"delivery {key}", delivery.get(key) == want, (delivery.get(key), want))
    check(
        "needed_by",
        order.get("needed_by") == truth["needed_by"],
        (order.get("needed_by"), truth["needed_by"]),
    )
    for i, j in pairs(true_slabs(truth), _aligned(answer), _slab_score):
        _score_slab(truth["slabs"][i], order["slabs"][j], _values(answer, j), check)
    return score


def _values(answer: Row, slab: int) -> Mapping[str, Any]:
    start = f"/slabs/{slab}/"
    return {
        e["at"].removeprefix(start): e.get("value")
        for e in answer["read"]
        if e["at"].startswith(start)
    }


def _score_slab(
    truth: Row, made: Row, values: Mapping[str, Any], check: Callable[..., None]
) -> None:
    outline = made.get("outline", {})
    check(
        "outline",
        outline.get("kind") == truth["outline"]["kind"],
        (outline.get("kind"), truth["outline"]["kind"]),
    )
    notch = truth["outline"].get("notch")
    if notch:
        corner = outline.get("notch", {}).get("corner")
        check("corner", corner == notch["corner"], (corner, notch["corner"]))
    check("quantity", made.get("quantity", 1) == truth["quantity"], made.get("quantity"))
    check("use", made.get("use") == truth["use"], (made.get("use"), truth["use"]))
    check("place", made.get("place") == truth["place"], (made.get("place"), truth["place"]))
    check(
        "shade",
        _contains(values.get("shade/name"), truth["shade"]),
        (values.get("shade/name"), truth["shade"]),
    )
    check(
        "finish",
        _contains(values.get("finish"), truth["finish"]),
        (values.get("finish"), truth["finish"]),
    )
    rims = sorted(str(cutout.get("rim")) for cutout in made.get("cutouts", []))
    wanted = sorted(str(cutout["rim"]) for cutout in truth["cutouts"])
    check("rims", rims == wanted, (rims, wanted))


# --- the table --------------------------------------------------------------------------------

Scored = list[tuple[Row, Score]]


def scored(all_rows: Iterable[Row], read: Callable[[str], Row]) -> Scored:
    """Every message with its score."""
    found = []
    for row in all_rows:
        answer = read(row["raw"])
        score = score_dimensions(row, answer)
        score.add(score_asked(row, answer))
        score.add(score_rest(row, answer))
        found.append((row, score))
    return found


def total(found: Scored) -> Score:
    """All counts together."""
    score = Score()
    for _, one in found:
        score.add(one)
    return score


def _kind(row: Row) -> str:
    return str(row["kind"])


def _origin(row: Row) -> str:
    return str(row["notes"].get("origin", "-"))


def table(found: Scored) -> str:
    """The scores by kind and by origin, and what else was read."""
    head = [f"{'':18}{'rows':>5}{'wanted':>8}{'given':>7}{'right':>7}"]
    head.append(f"{'precision':>11}{'recall':>8}{'invented':>10}{'named':>9}{'alarms':>8}")
    lines = ["".join(head)]
    for named in (_kind, _origin):
        names = sorted({named(row) for row, _ in found})
        lines += [_line(name, [one for one in found if named(one[0]) == name]) for name in names]
        lines.append("")
    lines.append(_line("in all", found))
    score = total(found)
    names = sorted(key[:-1] for key in score.counts if key.endswith("?"))
    lines += [
        "",
        *(f"{name:20}{score.counts[name]:>5} of {score.counts[name + '?']}" for name in names),
    ]
    return "\n".join(lines)


def _line(name: str, found: Scored) -> str:
    score = total(found)
    counts = score.counts
    precision, recall = score.share("right", "given"), score.share("right", "wanted")
    return (
        f"{name:18}{len(found):>5}{counts['wanted']:>8}{counts['given']:>7}{counts['right']:>7}"
        f"{precision:>11.3f}{recall:>8.3f}{counts['invented']:>10}"
        f"{counts['named']:>5}/{counts['asked']:<3}"
        f"{counts['false_alarms']:>5}/{counts['entries']:<3}"
    )
