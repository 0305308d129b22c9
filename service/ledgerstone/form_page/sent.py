"""What a form sends: every entry as it was typed, by its place in the order."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from ledgerstone.codec.strict_json import LONGEST_KEY, MAX_JSON_DEPTH
from ledgerstone.errors import NotUnderstood
from ledgerstone.message import Message

MAX_FIELDS: Final = 1000
MAX_FORM_ROWS: Final = 200  # of one list: as many as an outline may have points

Pairs = Sequence[tuple[str, str]]
Typed = dict[str, list[str]]


@dataclass(frozen=True, slots=True)
class Sent:
    """What was sent.

    Attributes
    ----------
    typed
        The entries of each place in the order, which is a JSON Pointer without its first slash.
    unit
        The unit of a number without one.
    is_edit
        Whether the form is only to have a row more or less.
    takes_fix
        Whether the one change that settles everything is to be made first.
    added
        The list that has one row more than were sent.
    """

    typed: Typed
    unit: str = "mm"
    is_edit: bool = False
    takes_fix: bool = False
    added: str = ""

    def rows(self, place: str) -> int:
        """Return how many rows a list has."""
        begins = f"{place}/"
        inside = (pointer for pointer in self.typed if pointer.startswith(begins))
        tails = (pointer[len(begins) :].split("/")[0] for pointer in inside)
        most = max((int(tail) + 1 for tail in tails if re.fullmatch(r"\d{1,4}", tail)), default=0)
        return min(most + (place == self.added), MAX_FORM_ROWS)

    def one(self, place: str) -> str:
        """Return the entry of a place; empty if there is none."""
        return self.typed.get(place, [""])[-1]


def read_sent(pairs: Pairs | None, places: Mapping[str, str]) -> Sent:
    """Read what a form sends.

    Parameters
    ----------
    pairs
        The names and entries that were sent; None if these could not be read.
    places
        Where the entry of a control goes, by its name; any other name is a place itself.

    Raises
    ------
    NotUnderstood
        It could not be read, or has names that are none.
    """
    if pairs is None:
        raise NotUnderstood.whole(Message("form-unreadable", most=MAX_FIELDS))
    typed: Typed = {}
    asked = {"unit": "mm", "add": "", "remove": "", "fix": ""}
    for name, value in pairs:
        if name in asked:
            asked[name] = value
            continue
        _check_name(name)
        typed.setdefault(places.get(name, name), []).append(value.strip())
    sent = Sent(typed, asked["unit"], takes_fix=bool(asked["fix"]))
    return _edited(sent, asked["add"], asked["remove"])


def _check_name(name: str) -> None:
    if len(name) > LONGEST_KEY or not name.isprintable() or name.count("/") >= MAX_JSON_DEPTH:
        raise NotUnderstood.whole(Message("json-key-unreadable", longest=LONGEST_KEY))


def _edited(sent: Sent, add: str, remove: str) -> Sent:
    """Add a row to a list or remove one, by the button that submitted the form."""
    if add:
        place, _, kind = add.partition(" ")
        typed = sent.typed
        if kind and sent.rows(place) < MAX_FORM_ROWS:
            typed = {**typed, f"{place}/{sent.rows(place)}/kind": [kind]}
        return Sent(typed, sent.unit, is_edit=True, added="" if kind else place)
    if remove:
        return Sent(_without_row(sent.typed, remove), sent.unit, is_edit=True)
    return sent


def _without_row(typed: Typed, row: str) -> Typed:
    """Remove a row and renumber those after it."""
    place, _, number = row.rpartition("/")
    if not re.fullmatch(r"\d{1,4}", number):
        return typed
    left: Typed = {}
    for pointer, values in typed.items():
        found = re.fullmatch(rf"{re.escape(place)}/(\d{{1,4}})(/.*)?", pointer)
        at = int(found[1]) if found else -1
        if found and at == int(number):
            continue
        later = found is not None and at > int(number)
        left[f"{place}/{at - 1}{found[2] or ''}" if later and found else pointer] = values
    return left
