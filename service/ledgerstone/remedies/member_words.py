"""Changes to a slab's size, edges, looks and rests, in the customer's words."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from ledgerstone.order import LShape, Outline, Rectangle, Slab
from ledgerstone.quantities import Length
from ledgerstone.remedies.change import Change
from ledgerstone.remedies.rest_words import rest_sentences
from ledgerstone.wording import capital, side_words

_WAYS = {"length": "long", "width": "deep", "diameter": "across", "thickness": "thick"}
_NOUNS = {"length": "length", "width": "depth", "diameter": "diameter", "thickness": "thickness"}


def member_sentence(part: str, was: Slab, now: Slab, changes: Sequence[Change], name: str) -> str:
    """Say what changed about one part of a slab of that name."""
    return " ".join(dict.fromkeys(_SAYS[part](was, now, changes, name)))


def _outline(was: Slab, now: Slab, changes: Sequence[Change], name: str) -> Iterator[str]:
    """Radii that shrink with their outline go without saying."""
    if was.outline.kind != now.outline.kind:
        yield _shaped(now.outline, name)
        return
    sized = [change for change in changes if change.path[-1] in _WAYS]
    if not sized and any(change.path[-1] == "points" for change in changes):
        yield f"Make {name} smaller in proportion."
    for change in sized:
        old = _told(was.outline, change)
        what = f"the notch of {name}" if "notch" in change.path else name
        yield _sized(what, str(change.path[-1]), change.new, old)
    rounder = [change.new for change in changes if str(change.path[1]).startswith("corner")]
    if rounder and not sized:
        yield f"Round the inside corner of {name} to {rounder[0]}."


def _shaped(now: Outline, name: str) -> str:
    """Say an outline that a cut leaves otherwise once sizes have changed too."""
    if isinstance(now, Rectangle):
        return f"Make {name} a rectangle, {now.length} by {now.width}."
    if isinstance(now, LShape):
        return f"Make {name} an L, {now.length} by {now.width}."
    return f"Give {name} the outline that is drawn."


def _sized(name: str, what: str, now: Length, was: Length | None) -> str:
    """Say a new size; after a name that ends in a number the size stands apart from it."""
    if name[-1:].isdigit():
        return f"Give {name} a {_NOUNS[what]} of {now} instead of {was}."
    return f"Make {name} {now} {_WAYS[what]} instead of {was}."


def _told(outline: Outline, change: Change) -> Length | None:
    record = getattr(outline, "notch", None) if "notch" in change.path else outline
    told: Length | None = getattr(record, str(change.path[-1]), None)
    return told


def _size_from(_was: Slab, _now: Slab, _changes: Sequence[Change], name: str) -> Iterator[str]:
    yield f"{capital(name)} keeps the size that it has over its units."


def _thickness(was: Slab, now: Slab, _changes: Sequence[Change], name: str) -> Iterator[str]:
    yield _sized(name, "thickness", now.thickness, was.thickness)


def _rests(was: Slab, now: Slab, _changes: Sequence[Change], name: str) -> Iterator[str]:
    yield from rest_sentences(was.rests, now.rests, name)


def _shade(_was: Slab, now: Slab, _changes: Sequence[Change], name: str) -> Iterator[str]:
    yield f"Make {name} in {now.shade.name or now.shade.match}."


def _finish(was: Slab, now: Slab, _changes: Sequence[Change], name: str) -> Iterator[str]:
    parts = []
    if now.finish.surface != was.finish.surface:
        parts.append(f"{now.finish.surface} surface")
    if now.finish.sealer != was.finish.sealer:
        parts.append(f"{now.finish.sealer} sealer")
    yield f"Give {name} the {' and '.join(parts)}."


def _edges(was: Slab, now: Slab, changes: Sequence[Change], name: str) -> Iterator[str]:
    for side in dict.fromkeys(str(change.path[1]) for change in changes):
        old, new, at = was.edges.get(side), now.edges.get(side), side_words(side)
        if old is None or new is None:
            continue
        if old.size != new.size:
            yield f"Make the {new.profile} along {at} of {name} {new.size} instead of {old.size}."
        if old.drip and not new.drip:
            yield f"Leave out the drip beneath {at} of {name}."
        if old.profile != new.profile:
            yield f"Make the edge at {at} of {name} {new.profile}."


_SAYS: dict[str, Callable[[Slab, Slab, Sequence[Change], str], Iterator[str]]] = {
    "outline": _outline,
    "size_from": _size_from,
    "thickness": _thickness,
    "rests": _rests,
    "shade": _shade,
    "finish": _finish,
    "edges": _edges,
}
