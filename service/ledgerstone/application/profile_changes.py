"""Changes of a profile's text, one after the other, as its form sends them."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.hours_of_jobs import FittedHours, fit_hours
from ledgerstone.application.money_of_jobs import FittedMoney, fit_money
from ledgerstone.codec.order_in import escape
from ledgerstone.errors import Fault, NotUnderstood, ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message
from ledgerstone.workshop._placed_text import NoSuchPlace
from ledgerstone.workshop.bags import mix_from_bags
from ledgerstone.workshop.confirming import confirm, confirm_all, unconfirm
from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.editing import ProfileDraft
from ledgerstone.workshop.following import put_with_followers
from ledgerstone.workshop.loader import starting_tables
from ledgerstone.workshop.local_units import currency_of, in_local_unit, working_place
from ledgerstone.workshop.members import member_at
from ledgerstone.workshop.samples import sample_of
from ledgerstone.workshop.standing import standings
from ledgerstone.workshop.syntax import tables
from ledgerstone.workshop.taking_out import TakenOut, place_after, take_out
from ledgerstone.workshop.typed import is_list, is_none, taken_of, toml_list_of, toml_of

_EMPTY = '""'
_Taken = tuple[Message, str]  # what is said of what was typed, and what was written for it


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
        What is taken of each span that was typed, by its place, and what follows from a value.
    """

    text: str
    fitted: FittedHours
    removed: tuple[Message, ...] = ()
    taken: tuple[tuple[KeyPath, Message], ...] = ()
    money: FittedMoney = field(default_factory=FittedMoney)


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
    fitted, money = FittedHours(), FittedMoney()
    removed: list[Message] = []
    typed: set[KeyPath] = set()
    entered: set[KeyPath] = set()  # of every value that was typed, whatever came after it
    taken: dict[KeyPath, _Taken] = {}
    for i, change in enumerate(changes):
        path = path_of(change["pointer"])
        followed: dict[KeyPath, str] = {}
        if change["op"] != "set":  # what it confirms or moves is of the text as it is by then
            _confirm_typed(draft, typed)
        try:
            if change["op"] == "fit-hours":
                fitted = fit_hours(draft, change.get("values", []), mark, context)
            elif change["op"] == "fit-money":
                money = fit_money(draft, change.get("values", []), mark, context, entered)
            elif change["op"] == "mix-from-bags":
                removed += mix_from_bags(draft)
                taken.clear()  # it takes out parts and shades
                entered.clear()
            elif change["op"] == "confirm":
                confirm_all(draft, [path_of(value) for value in change.get("values", ())] or [path])
            else:
                out, followed = _change(draft, path, change, (mark, place), entered)
                removed += out.also
                taken = _after(taken, out.places)
                entered = {at for each in entered if (at := place_after(each, out.places))}
        except NoSuchPlace:
            message = Message("profile-no-such-place", pointer=change["pointer"])
            faults.append(Fault(f"/changes/{i}/pointer", message))
        else:
            is_set = change["op"] == "set"
            typed |= {path} if is_set else set()
            entered |= {path} if is_set else set()
            taken |= _taken(draft, path, change, (mark, place, currency))
            taken |= _followed(draft, path, followed, place)
    if faults:
        raise NotUnderstood.of(faults)
    _confirm_typed(draft, typed)
    also = tuple(dict.fromkeys(removed))
    return ChangedProfile(draft.text, fitted, also, _still_there(taken, draft), money)


def _still_there(
    taken: Mapping[KeyPath, _Taken], draft: ProfileDraft
) -> tuple[tuple[KeyPath, Message], ...]:
    """What is taken of the spans that no later change wrote over."""
    draft.settle()
    return tuple(
        (path, says) for path, (says, toml) in taken.items() if draft.written(path) == toml
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
    if not words:
        return {}
    return {path: (Message("profile-taken", value=words), draft.written(path))}


def _followed(
    draft: ProfileDraft,
    path: KeyPath,
    followed: Mapping[KeyPath, str],
    place: RegionalSettings,
) -> dict[KeyPath, _Taken]:
    """What follows from what was typed at a place, said beside it."""
    says = [
        _follows(at, in_local_unit(member, toml, place))
        for at, toml in followed.items()
        if (member := member_at(at)) is not None and toml != _EMPTY
    ]
    return {path: (says[-1], draft.written(path))} if says else {}


def _follows(path: KeyPath, value: str) -> Message:
    return Message("profile-follows", what=str(path[-1]).replace("_", "-"), value=value)


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
    entered: Collection[KeyPath],
) -> tuple[TakenOut, dict[KeyPath, str]]:
    """Make one change; return what was taken out by it, and what else was written.

    Parameters
    ----------
    written_as
        The mark between whole and tenth, and the units of numbers without one.
    entered
        What was typed before.

    Raises
    ------
    NoSuchPlace
    """
    member, operation = member_at(path), change["op"]
    if member is None or (operation == "set" and member.inner is not None):
        raise NoSuchPlace(path)
    if operation == "set" and is_none(member, change.get("value", "")):
        return (take_out(draft, path) if draft.written(path) else TakenOut(())), {}
    if operation == "set" and is_list(member):
        draft.put(path, toml_list_of(member, change.get("values", []), *written_as))
    elif operation == "set":
        toml = toml_of(member, change.get("value", ""), *written_as)
        return TakenOut(()), put_with_followers(draft, path, toml, written_as[1], entered)
    elif operation == "leave-out" and (member.inner is not None or draft.written(path)):
        return take_out(draft, path), {}
    elif operation == "add" and member.inner is not None and not isinstance(path[-1], int):
        draft.add(path, sample_of(member.inner, path, is_item=member.kind == "items"))
    elif operation == "unconfirm":
        unconfirm(draft, path)
    elif operation != "leave-out":
        raise NoSuchPlace(path)
    return TakenOut(()), {}


def path_of(pointer: str) -> KeyPath:
    """Return the path of a JSON Pointer into a profile."""
    parts = (part.replace("~1", "/").replace("~0", "~") for part in pointer.split("/")[1:])
    return tuple(int(part) if part.isdecimal() and len(part) < 5 else part for part in parts)


def pointer_of(path: KeyPath) -> str:
    """Return the JSON Pointer of a path in a profile."""
    return "".join(f"/{escape(str(step))}" for step in path)
