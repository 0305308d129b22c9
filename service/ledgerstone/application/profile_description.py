"""A profile as its form shows it: tables and values in the workshop's units and words."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any, Literal

from ledgerstone.application.profile_changes import pointer_of
from ledgerstone.errors import ProfileFault
from ledgerstone.json_types import JSON, KeyPath
from ledgerstone.message import Message
from ledgerstone.wording import Speech
from ledgerstone.wording.profile import choice_in, label_in
from ledgerstone.wording.variants import words_of
from ledgerstone.workshop.entry.local_units import currency_of, number_shown, unit_named, unit_shown
from ledgerstone.workshop.entry.typed import NUMBERS
from ledgerstone.workshop.form.describing import (
    SUBJECT_OF,
    DescribedTable,
    DescribedValue,
    described,
)
from ledgerstone.workshop.form.first_quote import FirstStep, is_field
from ledgerstone.workshop.records.members import Member, member_at
from ledgerstone.workshop.standing import ValueStanding, is_demonstration


def write_description(
    text: str, raw: Mapping[str, Any], found: Mapping[KeyPath, ValueStanding], speech: Speech
) -> dict[str, Any]:
    """Describe every table and value of a profile, in a language and the units of its place.

    Parameters
    ----------
    found
        Whose each value is.
    """
    description = _Description(speech, is_foreign=is_demonstration(raw) and speech.language != "en")
    listed = list(described(text, raw, found))
    return {
        "tables": [
            description.table(entry) for entry in listed if isinstance(entry, DescribedTable)
        ],
        "values": [
            description.value(entry) for entry in listed if isinstance(entry, DescribedValue)
        ],
    }


def write_step(step: FirstStep, faults: Sequence[ProfileFault], speech: Speech) -> dict[str, Any]:
    """Write one step of the first quote; where one of its values has a fault it is not done."""
    at_fault = any(step.holds(fault.path) for fault in faults)
    return {
        "name": step.name,
        "title": speech.say(Message("first-step", step=step.name)),
        "asks": [pointer_of(path) for path in step.asks],
        "labels": [speech.say(first_ask(path, "form")) for path in step.asks],
        "stands": [pointer_of(path) for path in step.stands],
        "stands_say": [speech.say(first_ask(path, "form")) for path in step.stands],
        "shown": [pointer_of(path) for path in step.shown],
        "open": [pointer_of(path) for path in filter(is_field, step.shown)],
        "rest": [pointer_of(path) for path in step.rest],
        "done": step.is_done and not at_fault,
    }


def first_ask(path: KeyPath, on: Literal["form", "terminal"]) -> Message:
    """Return what a value is called where it is asked for.

    Parameters
    ----------
    on
        Where: an empty field says that there is none; an empty answer in a terminal keeps what
        stands.
    """
    table = next(str(part) for part in reversed(path[:-1]) if isinstance(part, str))
    return Message("first-ask", ask=f"{table}-{path[-1]}".replace("_", "-"), on=on)


def named_values(
    text: str, raw: Mapping[str, Any], paths: Sequence[KeyPath], speech: Speech
) -> Iterator[str]:
    """Yield a line for each of some values: the item it is of, its label, value and unit."""
    for entry in described(text, raw, {}):
        if isinstance(entry, DescribedValue) and entry.path in paths:
            label = label_in(speech.language, entry.member, speech.place, speech.own)
            item = _item_named(raw, entry.path, speech)
            value = _as_shown(entry, speech)
            unit = unit_shown(entry.member, speech.place, currency_of(raw))
            yield f"{item}{label}: {value} {unit if value[-1:].isdigit() else ''}".rstrip()


def _item_named(raw: JSON, path: KeyPath, speech: Speech) -> str:
    """The first text of the innermost item around a value, and a colon."""
    name = ""
    for k, step in enumerate(path[:-1]):
        raw, member = raw[step], member_at(path[: k + 1])
        if isinstance(step, int):
            key, name = next((each for each in raw.items() if isinstance(each[1], str)), ("", ""))
            named = member_at((*path[: k + 1], key)) if key else None
            name = _word_of(name, named, speech)
        elif k and isinstance(raw, Mapping):
            name = (
                label_in(speech.language, member, speech.place, speech.own) if member else str(step)
            )
    return f"{name}: " if name else ""


def _as_shown(value: DescribedValue, speech: Speech) -> str:
    """A value in words: a number with the language's mark, what is chosen by its name."""
    member, listed = value.member, isinstance(value.value, list)
    shown = value.value if isinstance(value.value, list) else [value.value]
    texts = [_shown(each, member, speech) or "" for each in shown]
    if member.kind in NUMBERS:
        texts = [speech.formats.number(text) for text in texts]
    between = "; " if listed and member.kind in NUMBERS else ", "
    return between.join(_word_of(text, member, speech) for text in texts)


def _word_of(text: str, member: Member | None, speech: Speech) -> str:
    """A text, or what is said for it where it is one of a few words."""
    is_word = member is not None and text in member.choices
    return choice_in(speech.language, text, speech.place, speech.own) if is_word else text


@dataclass(frozen=True, slots=True)
class _Description:
    """Describes tables and values.

    Attributes
    ----------
    is_foreign
        Whether the file's comments are in another language than the form.
    """

    speech: Speech
    is_foreign: bool

    def table(self, table: DescribedTable) -> dict[str, Any]:
        return {
            "pointer": pointer_of(table.path),
            "subject": SUBJECT_OF[str(table.path[0])],
            "kind": "item" if isinstance(table.path[-1], int) else table.member.kind,
            "label": self._label(table.member),
            "help": self._help(table.help),
            "there": table.there,
            "needed": table.member.needed,
        }

    def value(self, value: DescribedValue) -> dict[str, Any]:
        listed, member, place = isinstance(value.value, list), value.member, self.speech.place
        language = self.speech.language
        shown = (
            _list_shown(value.value, member, self.speech) if isinstance(value.value, list) else None
        )
        return {
            "pointer": pointer_of(value.path),
            "kind": member.kind,
            "label": self._label(member),
            "help": self._help(value.help),
            "unit": unit_named(member, place),
            "needed": member.needed,
            "value": None if listed else _shown(value.value, member, self.speech),
            "values": shown,
            "choices": member.choices or None,
            "choices_say": [
                choice_in(language, word, place, self.speech.own) for word in member.choices
            ]
            or None,
            "standing": value.standing,
        }

    def _label(self, member: Member) -> str:
        speech = self.speech
        return label_in(speech.language, member, speech.place, speech.own)

    def _help(self, text: str) -> str:
        words = words_of(self.speech.language, self.speech.place)
        return "" if self.is_foreign else words.exchanged(text)


def _list_shown(values: Sequence[object], member: Member, speech: Speech) -> list[str]:
    return [str(_shown(value, member, speech)) for value in values]


def _shown(value: object, member: Member, speech: Speech) -> str | None:
    """Return a value as it stands in the form: a measure as a number in the workshop's unit."""
    if value is None or isinstance(value, bool):
        return {True: "true", False: "false"}.get(value) if value is not None else None
    number = number_shown(value, member, speech.place)
    if number is not None:
        return number
    return value.isoformat() if isinstance(value, date) else str(value)
