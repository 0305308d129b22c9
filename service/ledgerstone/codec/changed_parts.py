"""What has changed about the edges, openings, reliefs and rests of a slab, and about its joins."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import zip_longest
from typing import Any, Final

from ledgerstone import order as records
from ledgerstone.codec._look_schemas import EdgeSchema
from ledgerstone.codec._opening_schemas import CUTOUTS, RELIEFS
from ledgerstone.codec._rest_schemas import RESTS
from ledgerstone.drawing.saying import edge_facts, rests_facts, sides_named
from ledgerstone.json_types import Members
from ledgerstone.quantities import Length
from ledgerstone.remedies.step_words import Steps, describe_steps
from ledgerstone.wording import Listed, Message, Value, cut_short, side_name

_SIZES: Final = ("length", "width", "diameter")
_TURNED: Final = ("turn_degrees", "open_to", "rim", "corner_radius")


def changed_edges(before: Members, now: Members, slab: Message) -> Iterator[Message]:
    """State how edges are made now and were made before, sides that changed alike together."""
    alike: dict[tuple[str, str], list[str]] = {}
    edges: dict[str, Listed] = {}
    for side in dict.fromkeys((*before, *now)):
        was, made = (EdgeSchema().load(each.get(side, {})) for each in (before, now))
        if was != made:
            edges |= {repr(edge): edge_facts(edge) for edge in (was, made)}
            alike.setdefault((repr(was), repr(made)), []).append(side)
    for (old, new), sides in alike.items():
        named = sides_named(tuple(sides))
        yield Message("change-edge", slab=slab, sides=named, now=edges[new], was=edges[old])


# --- openings -------------------------------------------------------------------------------


def changed_cutouts(before: list[Any], now: list[Any], slab: Message) -> Iterator[Message]:
    """State which openings are left out, added, moved or made otherwise."""
    return _changed(before, now, slab, _cutout_name, _cutout)


def _changed(
    before: list[Any],
    now: list[Any],
    slab: Message,
    name_of: Callable[[Members, int], Message],
    differences: Callable[[Members, Members, Message], Iterator[Message]],
) -> Iterator[Message]:
    """State which parts of a slab are left out or added, and what differs in the others."""
    for i, (was, is_now) in enumerate(zip_longest(before, now)):
        if is_now is None:
            yield Message("change-cutout-left-out", cutout=name_of(was, i), slab=slab)
        elif was is None:
            yield Message("change-cutout-added", cutout=name_of(is_now, i), slab=slab)
        elif was != is_now:
            yield from differences(was, is_now, name_of(is_now, i))


def _cutout_name(cutout: Members, index: int) -> Message:
    if cutout.get("label"):
        return Message("cutout-labelled", label=cut_short(cutout["label"]))
    return Message("change-cutout-numbered", number=index + 1)


def _cutout(before: Members, now: Members, name: Message) -> Iterator[Message]:
    sentences = list(_cutout_changes(before, now, name))
    yield from sentences
    if not sentences or _apart(before) != _apart(now):
        yield Message("change-cutout-else", cutout=name)


def _cutout_changes(before: Members, now: Members, name: Message) -> Iterator[Message]:
    was, made = (CUTOUTS[each["kind"]]().load(each) for each in (before, now))
    old, new = ([each.get(part) for part in _SIZES] for each in (before, now))
    if old != new and was.kind == made.kind:
        yield Message("change-cutout-size", cutout=name, now=_across(new), was=_across(old))
    if was.centre and made.centre and (steps := _steps(was.centre, made.centre)):
        x, y = made.centre.x, made.centre.y
        yield Message("change-cutout-place", cutout=name, steps=Listed(steps), x=x, y=y)
    if was.corner_radius != made.corner_radius and made.corner_radius is not None:
        yield Message("change-cutout-corners", cutout=name, radius=made.corner_radius)
    if was.turn_degrees != made.turn_degrees:
        yield Message("change-cutout-turned", cutout=name, degrees=float(made.turn_degrees))
    if was.open_to != made.open_to and made.open_to is not None:
        yield Message("change-cutout-open", cutout=name, side=side_name(made.open_to))
    if was.rim != made.rim:
        yield Message("change-cutout-rim", cutout=name, rim=made.rim)


def _steps(was: records.Point, now: records.Point) -> Steps:
    return describe_steps(was, now, (0.0, 0.0))


def _across(sizes: list[Any]) -> Message:
    given = [Length.parse(size) for size in sizes if size is not None]
    if len(given) > 1:
        return Message("size-both", length=given[0], width=given[1])
    return Message("change-across", across=given[0])


def _apart(cutout: Members) -> dict[str, Any]:
    """A cut-out less what has sentences of its own."""
    described = (*_SIZES, *_TURNED, "centre", "label")
    return {key: value for key, value in cutout.items() if key not in described}


# --- reliefs --------------------------------------------------------------------------------


def changed_reliefs(before: list[Any], now: list[Any], slab: Message) -> Iterator[Message]:
    """State which reliefs are left out, added, moved or made otherwise."""
    return _changed(before, now, slab, _relief_name, _relief)


def _relief_name(relief: Members, index: int) -> Message:
    if relief.get("label"):
        return Message("relief-labelled", label=cut_short(relief["label"]))
    return Message("relief", kind=relief["kind"], nth=index + 1 if index else 0)


def _relief(before: Members, now: Members, name: Message) -> Iterator[Message]:
    was, made = (RELIEFS[each["kind"]]().load(each) for each in (before, now))
    sentences = []
    if steps := _steps(was.at, made.at):
        sentences.append(Message("change-relief-place", relief=name, steps=Listed(steps)))
    if was.depth != made.depth:
        sentences.append(Message("change-relief-depth", relief=name, now=made.depth, was=was.depth))
    old, new = ([each["outline"].get(part) for part in _SIZES] for each in (before, now))
    if old != new and was.outline.kind == made.outline.kind:
        sentences.append(
            Message("change-relief-size", relief=name, now=_across(new), was=_across(old))
        )
    yield from sentences or [Message("change-relief-else", relief=name)]


# --- rests and joins ------------------------------------------------------------------------


def changed_rests(before: Members | None, now: Members | None, slab: Message) -> Iterator[Message]:
    """State what carries a slab now, and what did before."""
    was, made = (
        None if each is None else RESTS[each["kind"]]().load(each) for each in (before, now)
    )
    sentences = list(_rests_changes(was, made, slab)) if made is not None else []
    yield from sentences or [Message("change-rests-else", slab=slab)]


def _rests_changes(
    was: records.Rests | None, now: records.Rests, slab: Message
) -> Iterator[Message]:
    before: Value = Message("change-not-given") if was is None else rests_facts(was)
    if was is None or before != rests_facts(now):
        yield Message("change-rests", slab=slab, now=rests_facts(now), was=before)
    if was is None or was.kind != now.kind:
        return
    for side, length in now.overhang.items():
        old = was.overhang.get(side, length.in_unit(0.0))
        if old != length:
            at = side_name(side)
            yield Message("change-overhang", slab=slab, side=at, now=length, was=old)
    if now.rails not in (None, was.rails):
        yield Message("change-rails", slab=slab, rails=now.rails)
    if len(was.at) == len(now.at) and was.at != now.at:
        yield Message("change-legs", slab=slab)


def changed_joins(before: list[Any], now: list[Any], names: list[Message]) -> Iterator[Message]:
    """State which slabs are joined that were not; what else changed about joins in one sentence."""
    new = [join for join in now if join not in before]
    for join in new:
        one, other = (names[join[end]["slab"]] for end in ("one", "other"))
        yield Message("change-joined", one=one, other=other)
    if not new and before != now:
        yield Message("change-joins")
