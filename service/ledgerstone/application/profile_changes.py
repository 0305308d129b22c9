"""Changes of a profile's text, one after the other, as its form sends them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.hours_of_jobs import FittedHours, fit_hours
from ledgerstone.codec.order_in import escape
from ledgerstone.errors import Fault, NotUnderstood, ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message
from ledgerstone.workshop._placed_text import NoSuchPlace
from ledgerstone.workshop.bags import mix_from_bags
from ledgerstone.workshop.confirming import confirm, confirm_all, unconfirm
from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.editing import ProfileDraft
from ledgerstone.workshop.loader import starting_tables
from ledgerstone.workshop.local_units import currency_of, working_place
from ledgerstone.workshop.members import member_at
from ledgerstone.workshop.samples import sample_of
from ledgerstone.workshop.standing import standings
from ledgerstone.workshop.syntax import tables
from ledgerstone.workshop.taking_out import TakenOut, place_after, take_out
from ledgerstone.workshop.typed import is_list, taken_of, toml_list_of, toml_of

_Taken = tuple[str, str]  # what is taken of a span, and what was written for it


@dataclass(frozen=True, slots=True)
class ChangedProfile:
    """A profile's text with changes made in it.

    Attributes
    ----------
    fitted
        The hours that it was last fitted to.
    removed
        What was removed with something that was taken out.
    taken
        What is taken of each span that was typed, by its place.
    """

    text: str
    fitted: FittedHours
    removed: tuple[Message, ...] = ()
    taken: tuple[tuple[KeyPath, str], ...] = ()


def changed(
    text: str, changes: list[dict[str, Any]], mark: str, context: QuoteContext
) -> ChangedProfile:
    """Return a profile with changes made in its text.

    Parameters
    ----------
    mark
        Between whole and tenth in the maker's language: ``.`` or ``,``.
    context
        By which typical jobs are worked out.

    Raises
    ------
    NotUnderstood
        A change cannot be applied.
    """
    draft, place, currency = ProfileDraft(text), *_place(text)
    faults: list[Fault] = []
    fitted = FittedHours()
    removed: list[Message] = []
    typed: set[KeyPath] = set()
    taken: dict[KeyPath, _Taken] = {}
    for i, change in enumerate(changes):
        path = path_of(change["pointer"])
        if change["op"] != "set":  # what it confirms or moves is of the text as it is by then
            _confirm_typed(draft, typed)
        try:
            if change["op"] == "fit-hours":
                fitted = fit_hours(draft, change.get("values", []), mark, context)
            elif change["op"] == "mix-from-bags":
                mix_from_bags(draft)
                taken.clear()  # it takes out parts and shades
            elif change["op"] == "confirm":
                confirm_all(draft, [path_of(value) for value in change.get("values", ())] or [path])
            else:
                out = _change(draft, path, change, (mark, place))
                removed += out.also
                taken = _after(taken, out.places)
        except NoSuchPlace:
            message = Message("profile-no-such-place", pointer=change["pointer"])
            faults.append(Fault(f"/changes/{i}/pointer", message))
        else:
            typed |= {path} if change["op"] == "set" else set()
            taken |= _taken(draft, path, change, (mark, place, currency))
    if faults:
        raise NotUnderstood.of(faults)
    _confirm_typed(draft, typed)
    also = tuple(dict.fromkeys(removed))
    return ChangedProfile(draft.text, fitted, also, _still_there(taken, draft))


def _still_there(
    taken: Mapping[KeyPath, _Taken], draft: ProfileDraft
) -> tuple[tuple[KeyPath, str], ...]:
    """What is taken of the spans that no later change wrote over."""
    draft.settle()
    return tuple(
        (path, words) for path, (words, toml) in taken.items() if draft.written(path) == toml
    )


def _taken(
    draft: ProfileDraft,
    path: KeyPath,
    change: Mapping[str, Any],
    written_as: tuple[str, RegionalSettings, str],
) -> dict[KeyPath, _Taken]:
    """What is taken of what was typed at a place, and how it is written in the file."""
    member = member_at(path)
    if change["op"] != "set" or member is None:
        return {}
    words = taken_of(member, change.get("values") or [change.get("value") or ""], *written_as)
    return {path: (words, draft.written(path))}


def _after(taken: Mapping[KeyPath, _Taken], gone: Sequence[KeyPath]) -> dict[KeyPath, _Taken]:
    """What is taken at each place once others were taken out."""
    if not gone:
        return dict(taken)
    moved = ((place_after(path, gone), told) for path, told in taken.items())
    return {path: told for path, told in moved if path is not None}


def _confirm_typed(draft: ProfileDraft, typed: set[KeyPath]) -> None:
    """Write that what was typed is the maker's where it is as in a profile that is started."""
    if not typed:
        return
    try:
        found = standings(tables(draft.text), *starting_tables())
    except ProfileError:
        return  # it is read, and said, once the whole has been changed
    for path in sorted(path for path in typed if found.get(path) == "invented"):
        confirm(draft, path)
    typed.clear()


def _place(text: str) -> tuple[RegionalSettings, str]:
    """The units that the workshop of a text works in, and its currency."""
    try:
        raw = tables(text)
    except ProfileError:
        raw = {}
    return working_place(raw), currency_of(raw)


def _change(
    draft: ProfileDraft,
    path: KeyPath,
    change: Mapping[str, Any],
    written_as: tuple[str, RegionalSettings],
) -> TakenOut:
    """Make one change, and return what was taken out by it.

    Parameters
    ----------
    written_as
        The mark between whole and tenth, and the units of numbers without one.

    Raises
    ------
    NoSuchPlace
    """
    member, operation = member_at(path), change["op"]
    if member is None or (operation == "set" and member.inner is not None):
        raise NoSuchPlace(path)
    if operation == "set" and is_list(member):
        draft.put(path, toml_list_of(member, change.get("values", []), *written_as))
    elif operation == "set":
        draft.put(path, toml_of(member, change.get("value", ""), *written_as))
    elif operation == "leave-out" and (member.inner is not None or draft.written(path)):
        return take_out(draft, path)
    elif operation == "add" and member.inner is not None and not isinstance(path[-1], int):
        draft.add(path, sample_of(member.inner, path, is_item=member.kind == "items"))
    elif operation == "unconfirm":
        unconfirm(draft, path)
    elif operation != "leave-out":
        raise NoSuchPlace(path)
    return TakenOut(())


def path_of(pointer: str) -> KeyPath:
    """Return the path of a JSON Pointer into a profile."""
    parts = (part.replace("~1", "/").replace("~0", "~") for part in pointer.split("/")[1:])
    return tuple(int(part) if part.isdecimal() and len(part) < 5 else part for part in parts)


def pointer_of(path: KeyPath) -> str:
    """Return the JSON Pointer of a path in a profile."""
    return "".join(f"/{escape(str(step))}" for step in path)
