"""What has changed between an earlier offer and this one: in words, in price and in days."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date, timedelta
from typing import Any

from ledgerstone.codec.links import Offer
from ledgerstone.json_types import JSON
from ledgerstone.order import CORNERS
from ledgerstone.wording import capital, day_text

Members = Mapping[str, Any]
_SIZES = ("length", "width", "diameter")
_WAYS = {
    "collect": "collected from the workshop",
    "pallet": "delivered on a pallet",
    "own-van": "delivered by our own van",
    "fitted": "delivered and fitted",
}
_FROM = {
    "finished": "the finished sizes",
    "between-walls": "sizes between walls",
    "over-units": "sizes over the units",
    "template-to-follow": "a template that is to follow",
}


def change_members(before: Offer, now: Offer) -> dict[str, Any]:
    """Return how an offer differs from an earlier one, as ``ChangesSchema`` writes it."""
    return {
        "since": before,
        "revision": now.revision,
        "says": list(say_differences(before.order, now.order, before.area, now.area)),
        "price_change": {"currency": now.currency, "amount": now.total - before.total},
        "ready_later_days": (now.ready_on - before.ready_on) // timedelta(days=1),
    }


def say_differences(
    before: Members, now: Members, area_before: str | None = None, area_now: str | None = None
) -> Iterable[str]:
    """Say what differs between two orders as JSON, one thing a sentence."""
    yield from _slabs(before["slabs"], now["slabs"])
    if before.get("joins") != now.get("joins"):
        yield "How the slabs join is changed."
    yield from _delivery(before.get("delivery", {}), now.get("delivery", {}))
    if area_before != area_now and area_now is not None:
        yield f"The delivery is to: {area_now}."
    for key, says in _ASKED.items():
        if before.get(key, False) != now.get(key, False):
            yield says[bool(now.get(key))]
    if before.get("needed_by") != now.get("needed_by"):
        yield _needed_by(now.get("needed_by"))


_ASKED = {
    "sample_tile": ("No sample tile is asked for any more.", "A sample tile is asked for."),
    "templating": ("You measure it yourself.", "We come and measure it."),
    "heated_curing": ("It cures without the heated tent.", "It cures in our heated tent."),
}


def _needed_by(day: str | None) -> str:
    if day is None:
        return "It is no longer needed by a certain day."
    return f"It is needed by {day_text(date.fromisoformat(day))}."


def _slabs(before: list[Any], now: list[Any]) -> Iterable[str]:
    for i in range(max(len(before), len(now))):
        if i >= len(now):
            yield f"{capital(_name(before[i], i, 2))} is left out."
        elif i >= len(before):
            yield f"{capital(_name(now[i], i, 2))} is added."
        else:
            yield from _slab(before[i], now[i], _name(now[i], i, len(now)))


def _name(slab: Members, index: int, slabs: int) -> str:
    if slab.get("label"):
        return f"“{slab['label']}”"
    return "the slab" if slabs == 1 else f"slab {index + 1}"


def _slab(before: Members, now: Members, name: str) -> Iterable[str]:
    its = capital(name)
    if before.get("label") != now.get("label"):
        old = before.get("label")
        yield f"{its} was called “{old}”." if old else f"{its} has a name now."
    if before["outline"] != now["outline"]:
        yield _reshaped(its, _outline(before["outline"]), _outline(now["outline"]))
    if before["thickness"] != now["thickness"]:
        old, new = _length(before["thickness"]), _length(now["thickness"])
        yield f"{its} is {new} thick; it was {old}."
    for key, (says, usual) in _WORDS.items():
        old, new = before.get(key, usual), now.get(key, usual)
        if old != new:
            yield says.format(its=its, name=name, old=_word(old), new=_word(new))
    for key, what in _WHOLE.items():
        if before.get(key) != now.get(key):
            yield f"{what} {name} are changed."
    yield from _cutouts(before.get("cutouts", []), now.get("cutouts", []), name)


def _reshaped(its: str, old: str, new: str) -> str:
    return f"{its} is {new}; it was {old}." if old != new else f"{its} has another outline."


_WHOLE = {
    "edges": "The edges of",
    "reliefs": "The drainers and recesses of",
    "rests": "The rests of",
}
_WORDS: dict[str, tuple[str, Any]] = {
    "quantity": ("There are {new} of {name}; there were {old}.", 1),
    "use": ("{its} is used as {new}; it was {old}.", "worktop"),
    "size_from": ("{its} is made from {new}; it was {old}.", "finished"),
    "shade": ("{its} is in {new}; it was in {old}.", {}),
    "finish": ("{its} is {new}; it was {old}.", {}),
    "place": ("{its} goes {new}; it was {old}.", "indoors"),
}


def _word(value: JSON) -> str:
    if isinstance(value, Mapping) and "surface" in value:
        return f"{value['surface']} with the {value['sealer']} sealer"
    if isinstance(value, Mapping):
        return str(value.get("name") or value.get("match") or "the usual shade")
    places = {"indoors": "indoors", "outdoors": "outdoors", "wet-room": "in a wet room"}
    return _FROM.get(str(value), places.get(str(value), str(value)))


def _length(value: JSON) -> str:
    return value if isinstance(value, str) else f"{value:g} mm"


def _outline(outline: Members) -> str:
    sizes = " by ".join(_length(outline[part]) for part in _SIZES if part in outline)
    kinds = {"l-shape": "an L of ", "round": "round, ", "polygon": "a shape of "}
    says = kinds.get(outline["kind"], "") + (sizes or f"{len(outline.get('points', ()))} sides")
    if outline["kind"] == "l-shape":
        notch = outline["notch"]
        corner = str(notch["corner"]).replace("-", " ")
        says += f" less {_length(notch['length'])} by {_length(notch['width'])} at its {corner}"
    if "corner_radius" in outline:
        says += f" with corners of {_length(outline['corner_radius'])}"
    radii = outline.get("corner_radii", {})
    says += "".join(
        f", {corner.replace('-', ' ')} corner {_length(radii[corner])}"
        for corner in CORNERS
        if corner in radii
    )
    return says


def _cutouts(before: list[Any], now: list[Any], slab: str) -> Iterable[str]:
    for i in range(max(len(before), len(now))):
        if i >= len(now):
            yield f"{capital(_opening(before[i], i))} in {slab} is left out."
        elif i >= len(before):
            yield f"{capital(_opening(now[i], i))} is added to {slab}."
        elif before[i] != now[i]:
            yield from _cutout(before[i], now[i], _opening(now[i], i))


def _opening(cutout: Members, index: int) -> str:
    return f"the {cutout['label']}" if cutout.get("label") else f"cut-out {index + 1}"


def _cutout(before: Members, now: Members, name: str) -> Iterable[str]:
    its, said = capital(name), False
    old, new = ([c.get(part) for part in _SIZES] for c in (before, now))
    if old != new and before["kind"] == now["kind"]:
        said = True
        yield f"{its} is {_across(new)}; it was {_across(old)}."
    if before.get("centre") != now.get("centre") and now.get("centre"):
        said = True
        x, y = (_length(now["centre"][axis]) for axis in ("x", "y"))
        yield f"{its} is centred {x} from the left and {y} from the front."
    if not said or _apart(before) != _apart(now):
        yield f"{its} is made in another way."


def _across(sizes: list[Any]) -> str:
    told = [_length(size) for size in sizes if size is not None]
    return " by ".join(told) if len(told) > 1 else f"{''.join(told)} across"


def _apart(cutout: Members) -> dict[str, Any]:
    """A cut-out less what has sentences of its own."""
    return {k: v for k, v in cutout.items() if k not in (*_SIZES, "centre", "label")}


def _delivery(before: Members, now: Members) -> Iterable[str]:
    old, new = before.get("kind", "collect"), now.get("kind", "collect")
    if old != new:
        yield f"It is {_WAYS[new]}; it was to be {_WAYS[old]}."
    elif before != now:
        yield "What we know of the way in is changed."
