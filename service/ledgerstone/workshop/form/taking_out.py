"""What refers to an item of a profile, and is taken out with it: it would be a fault alone."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any, Final, NamedTuple

from ledgerstone.errors import ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.reading.syntax import tables

_AN_ITEM: Final = 2  # steps of the path of a pigment


class TakenOut(NamedTuple):
    """What was taken out: the place of each in the order of removal, and what else it took along.

    Each place is as it was once those before it were gone.
    """

    places: tuple[KeyPath, ...]
    also: tuple[Message, ...] = ()


def take_out(draft: ProfileDraft, path: KeyPath) -> TakenOut:
    """Leave out a value, a table or an item with what refers to it.

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
    others = sorted(referring, reverse=True, key=_places)
    for each in others:
        draft.leave_out(each)
    return TakenOut((path, *others), tuple(dict.fromkeys(referring.values())))


def place_after(path: KeyPath, gone: Sequence[KeyPath]) -> KeyPath | None:
    """Return where a value stands once places were taken out in their order; None if it went too.

    Of a list, the items behind one that is taken out move up.
    """
    for place in gone:
        at = len(place) - 1
        if path[: at + 1] == place:
            return None
        step, out = path[at] if at < len(path) else None, place[-1]
        if (
            path[:at] == place[:at]
            and isinstance(step, int)
            and isinstance(out, int)
            and step > out
        ):
            path = (*path[:at], step - 1, *path[at + 1 :])
    return path


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
