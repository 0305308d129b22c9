"""What refers to an item of a profile, and is taken out with it: it would be a fault alone."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any, Final

from ledgerstone.errors import ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message
from ledgerstone.workshop.editing import ProfileDraft
from ledgerstone.workshop.syntax import tables

_AN_ITEM: Final = 2  # steps of the path of a pigment


def take_out(draft: ProfileDraft, path: KeyPath) -> tuple[Message, ...]:
    """Leave out a value, a table or an item with what refers to it; return what else was removed.

    With a cement's own colour go the tiles that were read in it, with a pigment the shades that
    have a dose of it, unless no shade would be left.

    Raises
    ------
    NoSuchPlace
    """
    try:
        referring = dict(_referring(tables(draft.text), path))
    except (ProfileError, AttributeError, IndexError, KeyError, TypeError):
        referring = {}  # what does not read is a fault by itself
    draft.leave_out(path)
    for each in sorted(referring, reverse=True, key=_places):
        draft.leave_out(each)
    return tuple(dict.fromkeys(referring.values()))


def _places(path: KeyPath) -> tuple[int, ...]:
    return tuple(step for step in path if isinstance(step, int))


def _referring(raw: Mapping[str, Any], path: KeyPath) -> Iterator[tuple[KeyPath, Message]]:
    """Yield the items that refer to one, and what each is called."""
    pigments, palette = raw.get("pigments", []), raw.get("palette", [])
    if path[:2] == ("shade", "bases") and isinstance(path[-1], int):
        cement = raw["shade"]["bases"][path[-1]].get("cement")
        if not cement:
            return
        for k, pigment in enumerate(pigments):
            for j, sample in enumerate(pigment.get("samples", [])):
                if sample.get("cement") == cement:
                    yield ("pigments", k, "samples", j), _named("tiles", pigment)
    elif path[:1] == ("pigments",) and len(path) == _AN_ITEM:
        name = pigments[path[-1]].get("name")
        if not name or sum(pigment.get("name") == name for pigment in pigments) > 1:
            return
        coloured = [
            k
            for k, shade in enumerate(palette)
            if any(dose.get("pigment") == name for dose in shade.get("doses", []))
        ]
        for k in coloured if len(coloured) < len(palette) else ():
            yield ("palette", k), _named("shade", palette[k])


def _named(thing: str, item: Mapping[str, Any]) -> Message:
    return Message("profile-also-removed-part", thing=thing, name=str(item.get("name", "")))
