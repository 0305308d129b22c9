"""Changes to a slab's size, edges, looks and rests, as messages."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from ledgerstone.order import LShape, Outline, Rectangle, Slab
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change
from ledgerstone.remedies.rest_words import rest_messages
from ledgerstone.wording import Message, side_name

_SIZES = ("length", "width", "diameter", "thickness")


def member_messages(
    part: str, was: Slab, now: Slab, changes: Sequence[Change], name: Message
) -> tuple[Message, ...]:
    """State what changed about one part of a slab of that name."""
    return tuple(dict.fromkeys(_SENTENCES[part](was, now, changes, name)))


def _outline(was: Slab, now: Slab, changes: Sequence[Change], name: Message) -> Iterator[Message]:
    """Return whether radii only shrink with their outline, which is not stated."""
    if was.outline.kind != now.outline.kind:
        yield _shaped(now.outline, name)
        return
    sized = [change for change in changes if change.path[-1] in _SIZES]
    if not sized and any(change.path[-1] == "points" for change in changes):
        yield Message("make-smaller", thing=name)
    for change in sized:
        old = _given_size(was.outline, change)
        what = Message("notch-of", slab=name) if "notch" in change.path else name
        yield _sized(what, str(change.path[-1]), change.new, old)
    rounder = [change.new for change in changes if str(change.path[1]).startswith("corner")]
    if rounder and not sized:
        yield Message("round-inside-corner", slab=name, radius=rounder[0])


def _shaped(now: Outline, name: Message) -> Message:
    """Describe an outline that a cut leaves otherwise once sizes have changed too."""
    if isinstance(now, Rectangle | LShape):
        shape = "rectangle" if isinstance(now, Rectangle) else "l"
        return Message("reshape", slab=name, shape=shape, length=now.length, width=now.width)
    return Message("reshape-as-drawn", slab=name)


def _size_from(
    _was: Slab, _now: Slab, _changes: Sequence[Change], name: Message
) -> Iterator[Message]:
    yield Message("keeps-its-size", slab=name)


def _sized(name: Message, size: str, now: Length, was: Length | None) -> Message:
    """Describe a new size; after a name that ends in a number the size stands apart from it."""
    old = now if was is None else was
    if _ends_in_a_number(name):
        return Message("resize-numbered", thing=name, size=size, now=now, was=old)
    return Message("resize", thing=name, size=size, now=now, was=old)


def _ends_in_a_number(name: Message) -> bool:
    inner = name.values.get("slab")
    return _ends_in_a_number(inner) if isinstance(inner, Message) else name.name == "slab-numbered"


def _given_size(outline: Outline, change: Change) -> Length | None:
    record = getattr(outline, "notch", None) if "notch" in change.path else outline
    given: Length | None = getattr(record, str(change.path[-1]), None)
    return given


def _thickness(
    was: Slab, now: Slab, _changes: Sequence[Change], name: Message
) -> Iterator[Message]:
    yield _sized(name, "thickness", now.thickness, was.thickness)


def _rests(was: Slab, now: Slab, _changes: Sequence[Change], name: Message) -> Iterator[Message]:
    yield from rest_messages(was.rests, now.rests, name)


def _shade(_was: Slab, now: Slab, _changes: Sequence[Change], name: Message) -> Iterator[Message]:
    yield Message("reshade", slab=name, shade=now.shade.name or now.shade.match or "")


def _finish(was: Slab, now: Slab, _changes: Sequence[Change], name: Message) -> Iterator[Message]:
    surface = now.finish.surface if now.finish.surface != was.finish.surface else "same"
    sealer = now.finish.sealer
    if sealer == was.finish.sealer:
        yield Message("resurface", slab=name, surface=surface)
    else:
        yield Message("refinish", slab=name, surface=surface, sealer=sealer)


def _edges(was: Slab, now: Slab, changes: Sequence[Change], name: Message) -> Iterator[Message]:
    for side in dict.fromkeys(str(change.path[1]) for change in changes):
        old, new, at = was.edges.get(side), now.edges.get(side), side_name(side)
        if old is None or new is None:
            continue
        if old.size != new.size and old.size is not None and new.size is not None:
            yield Message(
                "edge-resize",
                profile=new.profile,
                side=at,
                slab=name,
                now=new.size,
                was=old.size,
            )
        if old.drip and not new.drip:
            yield Message("edge-without-drip", side=at, slab=name)
        if old.profile != new.profile:
            yield Message("edge-reprofile", profile=new.profile, side=at, slab=name)


_SENTENCES: dict[str, Callable[[Slab, Slab, Sequence[Change], Message], Iterator[Message]]] = {
    "outline": _outline,
    "size_from": _size_from,
    "thickness": _thickness,
    "rests": _rests,
    "shade": _shade,
    "finish": _finish,
    "edges": _edges,
}
