"""The differences between an earlier offer and this one: in words, in price and in days."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import Any

from ledgerstone.codec.changed_parts import (
    changed_cutouts,
    changed_edges,
    changed_joins,
    changed_reliefs,
    changed_rests,
)
from ledgerstone.codec.links import LinkedOffer
from ledgerstone.json_types import Members
from ledgerstone.order import CORNERS
from ledgerstone.quantities import Length
from ledgerstone.wording import Listed, Message, Speech, Value, cut_short


def change_members(before: LinkedOffer, now: LinkedOffer, speech: Speech) -> dict[str, Any]:
    """Return how an offer differs from an earlier one, as ``ChangesSchema`` writes it."""
    differences = say_differences(before.order, now.order, before.area, now.area)
    return {
        "since": before,
        "revision": now.revision,
        "says": list(map(speech.say, differences)),
        "price_change": {"currency": now.currency, "amount": now.total - before.total},
        "ready_later_days": (now.ready_on - before.ready_on) // timedelta(days=1),
    }


def say_differences(
    before: Members, now: Members, area_before: str | None = None, area_now: str | None = None
) -> Iterator[Message]:
    """Yield the differences between two orders (JSON), one message each."""
    yield from _slabs(before["slabs"], now["slabs"])
    names = [_name(slab, i, len(now["slabs"])) for i, slab in enumerate(now["slabs"])]
    yield from changed_joins(before.get("joins", []), now.get("joins", []), names)
    yield from _delivery(before.get("delivery", {}), now.get("delivery", {}))
    if area_before != area_now and area_now is not None:
        yield Message("change-area", area=area_now)
    for key in ("sample_tile", "templating", "heated_curing"):
        if before.get(key, False) != now.get(key, False):
            asked = "yes" if now.get(key) else "no"
            yield Message("change-asked", what=key.replace("_", "-"), asked=asked)
    if before.get("needed_by") != now.get("needed_by"):
        yield _needed_by(now.get("needed_by"))


def _needed_by(day: str | None) -> Message:
    if day is None:
        return Message("change-not-needed-by")
    return Message("change-needed-by", day=date.fromisoformat(day))


def _slabs(before: list[Any], now: list[Any]) -> Iterator[Message]:
    for i in range(max(len(before), len(now))):
        if i >= len(now):
            yield Message("change-left-out", thing=_name(before[i], i, 2))
        elif i >= len(before):
            yield Message("change-slab-added", slab=_name(now[i], i, 2))
        else:
            yield from _slab(before[i], now[i], _name(now[i], i, len(now)))


def _name(slab: Members, index: int, slabs: int) -> Message:
    if slab.get("label"):
        return Message("slab-labelled", label=cut_short(slab["label"]))
    return Message("slab-only") if slabs == 1 else Message("slab-numbered", number=index + 1)


def _slab(before: Members, now: Members, name: Message) -> Iterator[Message]:
    if before.get("label") != now.get("label"):
        old = before.get("label")
        yield (
            Message("change-label", slab=name, old=cut_short(old))
            if old
            else Message("change-label-first", slab=name)
        )
    if before["outline"] != now["outline"]:
        yield _reshaped(name, _outline(before["outline"]), _outline(now["outline"]))
    if before["thickness"] != now["thickness"]:
        was, thick = (Length.parse(slab["thickness"]) for slab in (before, now))
        yield Message("change-thickness", slab=name, now=thick, was=was)
    if before.get("quantity", 1) != now.get("quantity", 1):
        count, old_count = now.get("quantity", 1), before.get("quantity", 1)
        yield Message("change-quantity", slab=name, now=count, was=old_count)
    yield from _chosen(before, now, name)
    yield from changed_edges(before.get("edges", {}), now.get("edges", {}), name)
    yield from changed_reliefs(before.get("reliefs", []), now.get("reliefs", []), name)
    if before.get("rests") != now.get("rests"):
        yield from changed_rests(before.get("rests"), now.get("rests"), name)
    yield from changed_cutouts(before.get("cutouts", []), now.get("cutouts", []), name)


def _chosen(before: Members, now: Members, name: Message) -> Iterator[Message]:
    """Yield which choices of a slab differ."""
    for key, usual in (("use", "worktop"), ("size_from", "finished"), ("place", "indoors")):
        was, chosen = str(before.get(key, usual)), str(now.get(key, usual))
        if was != chosen and key == "use":
            yield Message("change-use", slab=name, now=_use(chosen), was=_use(was))
        elif was != chosen and key == "size_from":
            yield Message("change-size-from", slab=name, now=_source(chosen), was=_source(was))
        elif was != chosen:
            yield Message("change-place", slab=name, now=_place(chosen), was=_place(was))
    if before.get("shade") != now.get("shade"):
        old, new = (_shade(slab.get("shade", {})) for slab in (before, now))
        yield Message("change-shade", slab=name, now=new, was=old)
    if before.get("finish") != now.get("finish"):
        old, new = (_finish(slab.get("finish", {})) for slab in (before, now))
        yield Message("change-finish", slab=name, now=new, was=old)


def _use(use: str) -> Message:
    return Message("change-use-name", use=use)


def _source(source: str) -> Message:
    return Message("change-source-name", source=source)


def _place(place: str) -> Message:
    return Message("change-place-name", place=place)


def _shade(shade: Members) -> Value:
    named: str = shade.get("name") or shade.get("match") or ""
    return named or Message("change-usual-shade")


def _finish(finish: Members) -> Message:
    surface, sealer = finish.get("surface", ""), finish.get("sealer", "")
    return Message("change-finish-name", surface=surface, sealer=sealer)


def _reshaped(name: Message, was: Value, now: Value) -> Message:
    if was == now:
        return Message("change-outline-else", slab=name)
    return Message("change-outline", slab=name, now=now, was=was)


def _outline(outline: Members) -> Listed:
    radii = outline.get("corner_radii", {})
    corners: list[Value] = [
        Message("change-corner", corner=corner, radius=Length.parse(radii[corner]))
        for corner in CORNERS
        if corner in radii
    ]
    if "corner_radius" in outline:
        corners = [
            Message("change-corners", radius=Length.parse(outline["corner_radius"])),
            *corners,
        ]
    return Listed((_sized(outline), *corners), joined="comma")


def _sized(outline: Members) -> Message:
    if outline["kind"] == "polygon":
        return Message("change-polygon", sides=len(outline.get("points", ())))
    if outline["kind"] == "round":
        return Message("change-round", across=Length.parse(outline["diameter"]))
    length, width = (Length.parse(outline[part]) for part in ("length", "width"))
    if outline["kind"] == "rectangle":
        return Message("size-both", length=length, width=width)
    notch = outline["notch"]
    return Message(
        "change-l",
        length=length,
        width=width,
        notch_length=Length.parse(notch["length"]),
        notch_width=Length.parse(notch["width"]),
        corner=notch["corner"],
    )


def _delivery(before: Members, now: Members) -> Iterator[Message]:
    old, new = before.get("kind", "collect"), now.get("kind", "collect")
    if old != new:
        yield Message("change-delivery", now=_way(new), was=_way(old))
    elif before != now:
        yield Message("change-way-in")


def _way(way: str) -> Message:
    return Message("change-way-name", way=way)
