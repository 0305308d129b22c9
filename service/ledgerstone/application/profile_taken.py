"""What is taken of each value that a profile's form sends: said beside it while it stands so."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from ledgerstone.json_types import KeyPath
from ledgerstone.message import Listed, Message
from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.entry.local_units import in_local_unit
from ledgerstone.workshop.entry.typed import EMPTY, taken_of
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.taking_out import place_after
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.standing import LIFTS

TakenValue = tuple[Message, str]  # what is said of what was typed, and what was written for it


def still_there(
    taken: Mapping[KeyPath, TakenValue], draft: ProfileDraft
) -> tuple[tuple[KeyPath, Message], ...]:
    """Return what is taken of the spans that no later change wrote over."""
    draft.settle()
    return tuple(
        (path, says) for path, (says, toml) in taken.items() if draft.written(path) == toml
    )


def taken_at(
    draft: ProfileDraft,
    path: KeyPath,
    change: Mapping[str, Any],
    written_as: tuple[str, RegionalSettings, str],
) -> dict[KeyPath, TakenValue]:
    """Return what is taken of what was typed at a place, and how it is written in the file."""
    member = member_at(path)
    if member is None:
        return {}
    words = taken_of(member, change.get("values") or [change.get("value") or ""], *written_as)
    if not words:
        return {}
    return {path: (Message("profile-taken", value=words), draft.written(path))}


def counted_at(
    draft: ProfileDraft, path: KeyPath, place: RegionalSettings
) -> dict[KeyPath, TakenValue]:
    """Return what is taken of a number of bags."""
    member, toml = member_at(path), draft.written(path)
    value = "" if member is None else in_local_unit(member, toml, place)
    return {path: (Message("profile-taken", value=value), toml)} if value else {}


def followed_at(
    draft: ProfileDraft,
    path: KeyPath,
    followed: Mapping[KeyPath, str],
    place: RegionalSettings,
) -> dict[KeyPath, TakenValue]:
    """Return what follows from what was typed at a place, said beside it."""
    values = {
        at: in_local_unit(member, toml, place) or toml.strip('"')
        for at, toml in followed.items()
        if (member := member_at(at)) is not None and toml != EMPTY
    }
    if not values:
        return {}
    what = str(next(iter(values))[-1])  # one word for all that follows from one value
    listed = (
        Listed(tuple(_way_lifts(draft, at, weight) for at, weight in values.items()), "semicolon")
        if what in LIFTS
        else Listed(tuple(dict.fromkeys(values.values())))
    )
    said = Message("profile-follows", what=what.replace("_", "-"), value=listed)
    return {path: (said, draft.written(path))}


def _way_lifts(draft: ProfileDraft, at: KeyPath, weight: str) -> Message:
    """A way to lift by its name, and what it takes."""
    way = draft.written((*at[:-1], "name")).strip('"')
    return Message("profile-way-lifts", way=way, value=weight)


def after_taking_out(
    taken: Mapping[KeyPath, TakenValue], gone: Sequence[KeyPath]
) -> dict[KeyPath, TakenValue]:
    """Return what is taken at each place once others were taken out."""
    moved = ((place_after(path, gone), one) for path, one in taken.items())
    return {path: one for path, one in moved if path is not None}
