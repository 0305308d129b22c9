"""Changes of a profile's text, one after the other, as its form sends them."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass, field
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.hours_of_jobs import FittedHours, fit_hours
from ledgerstone.application.money_of_jobs import FittedMoney, fit_money
from ledgerstone.application.profile_taken import (
    TakenValue,
    after_taking_out,
    counted_at,
    followed_at,
    still_there,
    taken_at,
)
from ledgerstone.codec.order_in import escape
from ledgerstone.errors import Fault, NotUnderstood, ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message
from ledgerstone.wording import workshop_speech
from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.entry.local_units import currency_of, working_place
from ledgerstone.workshop.entry.typed import (
    is_list,
    is_none,
    toml_list_of,
    toml_of,
)
from ledgerstone.workshop.form.bags import batch_in_bags, mix_from_bags
from ledgerstone.workshop.form.confirming import confirm, confirm_all, unconfirm
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.following import put_with_followers
from ledgerstone.workshop.form.placed_text import NoSuchPlace
from ledgerstone.workshop.form.samples import sample_of
from ledgerstone.workshop.form.taking_out import TakenOut, place_after, take_out
from ledgerstone.workshop.reading.loader import starting_tables
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.standing import key_of, standings

BATCH: Final[KeyPath] = ("mixer", "working_l")
_NOBODYS: Final = ("invented", "usual")


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
    making = _Making(ProfileDraft(text), mark, *_place(text), context)
    faults = []
    for i, change in enumerate(changes):
        try:
            making.make(change, path_of(change["pointer"]))
        except NoSuchPlace:
            message = Message("profile-no-such-place", pointer=change["pointer"])
            faults.append(Fault(f"/changes/{i}/pointer", message))
    if faults:
        raise NotUnderstood.of(faults)
    return making.made()


@dataclass(slots=True)
class _Making:
    """A profile's draft while changes are made in it, one after the other.

    Attributes
    ----------
    typed
        The values that were typed since it was last written whose they are.
    entered
        Every value that was typed.
    """

    draft: ProfileDraft
    mark: str
    place: RegionalSettings
    currency: str
    context: QuoteContext
    fitted: FittedHours = field(default_factory=FittedHours)
    money: FittedMoney = field(default_factory=FittedMoney)
    removed: list[Message] = field(default_factory=list)
    typed: set[KeyPath] = field(default_factory=set)
    entered: set[KeyPath] = field(default_factory=set)
    taken: dict[KeyPath, TakenValue] = field(default_factory=dict)

    def make(self, change: Mapping[str, Any], path: KeyPath) -> None:
        """Make one change.

        Raises
        ------
        NoSuchPlace
        """
        operation, values = change["op"], change.get("values", [])
        if operation != "set":  # what it confirms or moves is of the text as it is by then
            _confirm_typed(self.draft, self.typed)
        if operation == "fit-hours":
            self.fitted = fit_hours(self.draft, values, self.mark, self.context)
        elif operation == "fit-money":
            self.money = fit_money(self.draft, values, self.mark, self.context, self.entered)
        elif operation == "mix-from-bags":
            name = self._said(Message("init-bag"))
            self.removed += mix_from_bags(self.draft, self.place, name)
            self.taken.clear()  # it takes out parts and shades
            self.entered.clear()
        elif operation == "confirm":
            confirm_all(self.draft, [path_of(value) for value in values] or [path])
        else:
            self._edit(change, path)

    def _edit(self, change: Mapping[str, Any], path: KeyPath) -> None:
        """Set a value, take something out or add it."""
        written_as = (self.mark, self.place)
        in_bags = path == BATCH and batch_in_bags(self.draft, change.get("value", ""), self.mark)
        if in_bags:
            change = {**change, "value": in_bags.strip('"').replace(".", self.mark)}
        out, followed = _change(
            self.draft, path, change, written_as, self.entered, line_of=self._line
        )
        self.removed += out.also
        if out.places:
            self.taken = after_taking_out(self.taken, out.places)
            self.entered = {at for each in self.entered if (at := place_after(each, out.places))}
        if change["op"] == "set":
            self.typed.add(path)
            self.entered.add(path)
            self.taken |= taken_at(self.draft, path, change, (*written_as, self.currency))
            if in_bags:
                self.taken |= counted_at(self.draft, path, self.place)
            self.taken |= followed_at(self.draft, path, followed, self.place)

    def _said(self, message: Message) -> str:
        """A text of the file, in the workshop's language."""
        served = self.context.workshop
        return workshop_speech(served.workshop.language, served).say(message)

    def _line(self, kind: str) -> str:
        """What customers read of a sealer of a kind that nobody described."""
        return self._said(Message("sealer-line", kind=kind))

    def made(self) -> ChangedProfile:
        """Return the profile as it is by then."""
        _confirm_typed(self.draft, self.typed)
        also = tuple(dict.fromkeys(self.removed))
        taken = still_there(self.taken, self.draft)
        return ChangedProfile(self.draft.text, self.fitted, also, taken, self.money)


def _confirm_typed(draft: ProfileDraft, typed: set[KeyPath]) -> None:
    """Write that what was typed is the maker's where it is as in a profile that is started."""
    if not typed:
        return
    try:
        found = standings(tables(draft.text), *starting_tables())
    except ProfileError:
        return  # it is read, and said, once the whole has been changed
    for path in sorted(path for path in typed if found.get(path) in _NOBODYS):
        if found[path] == "invented" or draft.written((*path[:-1], key_of(path[:-1]), path[-1])):
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
    *,
    line_of: Callable[[str], str],
) -> tuple[TakenOut, dict[KeyPath, str]]:
    """Make one change; return what was taken out by it, and what else was written.

    Parameters
    ----------
    written_as
        The mark between whole and tenth, and the units of numbers without one.
    entered
        What was typed before.
    line_of
        What customers read of a sealer of a kind.

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
        place = written_as[1]
        followed = put_with_followers(draft, path, toml, place, entered, line_of=line_of)
        return TakenOut(()), followed
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
