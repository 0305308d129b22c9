"""Scores what answers to enquiries ask, and what they read in words."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Any

from validation.enquiry_dimensions import (
    DimensionRow,
    Score,
    Slab,
    pairs,
    read_slabs,
    slab_score,
    true_slabs,
)

_SIZED = re.compile(r"slab (\d+): ")
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
        ("quantity", "quantity"),
    ):
        if rest.startswith(start):
            return {(slab, thing, "")}
    raise ValueError(phrase)


def _of_pointer(at: str, answer: DimensionRow) -> set[Named]:
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


def score_asked(row: DimensionRow, answer: DimensionRow) -> Score:
    """Entries of the truth that are named, and entries about what is plainly said."""
    score = Score()
    truth = row["truth"]
    matched = {j: i for i, j in pairs(true_slabs(truth), _aligned(answer), slab_score)}
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


def _aligned(answer: DimensionRow) -> list[Slab]:
    """Slabs by their index in the order, those without sizes too."""
    made = {
        int(re.findall(r"/slabs/(\d+)", e["at"])[0]) for e in answer["read"] if "/slabs" in e["at"]
    }
    by_index = dict(zip(sorted(made), read_slabs(answer), strict=False))
    return [by_index.get(i, Slab()) for i in range(len(answer["order"]["slabs"]))]


def _plainly_said(one: Named, truth: DimensionRow) -> bool:
    """Return whether the truth has a value for what an entry is about."""
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
        elif thing in ("thickness", "quantity"):
            return one_slab[thing] is not None
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


def score_rest(row: DimensionRow, answer: DimensionRow) -> Score:
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
    for i, j in pairs(true_slabs(truth), _aligned(answer), slab_score):
        _score_slab(truth["slabs"][i], order["slabs"][j], _values(answer, j), check)
    return score


def _values(answer: DimensionRow, slab: int) -> Mapping[str, Any]:
    start = f"/slabs/{slab}/"
    return {
        e["at"].removeprefix(start): e.get("value")
        for e in answer["read"]
        if e["at"].startswith(start)
    }


def _score_slab(
    truth: DimensionRow, made: DimensionRow, values: Mapping[str, Any], check: Callable[..., None]
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
