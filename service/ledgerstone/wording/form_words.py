"""Keys of a profile's file that stand in a sentence, by their labels on its form."""

from __future__ import annotations

import re
from functools import cache
from typing import Final

from ledgerstone.errors import ProfileFault
from ledgerstone.json_types import KeyPath
from ledgerstone.message import Listed, Message
from ledgerstone.wording.capitals import capital
from ledgerstone.wording.profile import choice_in, label_in
from ledgerstone.wording.speech import Speech
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.members import Member, every_member, member_at, members_of

_CHOSEN: Final = ("role", "surface", "cement")  # values that are words of a choice
_KEY: Final = re.compile(
    r"\[\[?(?P<table>[a-z_]+(?:\.[a-z_]+)*)\]\]?"
    r"|\b(?P<set>[a-z]+(?:_[a-z0-9]+)*) = (?P<word>true|false)\b"
    r"|(?<![\w.@/-])(?P<key>[a-z]+(?:_[a-z0-9]+)+|[a-z]+(?:\.[a-z_0-9]+)+)(?![\w@/]|\.\w)"
)


def fault_on_form(fault: ProfileFault, speech: Speech) -> str:
    """Say a fault as it stands beside its field: by labels, and by the words that are chosen."""
    return capital(in_form_words(speech.say(_on_form(fault, speech)), fault.path, speech))


def _on_form(fault: ProfileFault, speech: Speech) -> Message:
    message, values = fault.message, fault.message.values
    if message.name == "fault-unfit":
        shown = {name: values[name] for name in ("wanted", "unit", "found", "text")}
        return Message("form-unfit", **shown)
    path = fault.path
    member = member_at(path) or member_at(path[:-1])
    if message.name != "fault-choice" or member is None:
        chosen = {
            name: choice_in(speech.language, word, speech.place, speech.own)
            for name, word in values.items()
            if name in _CHOSEN and isinstance(word, str)
        }
        return message.with_values({**values, **chosen}) if chosen else message
    words = tuple(
        choice_in(speech.language, word, speech.place, speech.own) for word in member.choices
    )
    shown = {"options": Listed(words, "or"), "found": values["found"], "text": values["text"]}
    return Message("form-choice", **shown)


def in_form_words(text: str, path: KeyPath, speech: Speech) -> str:
    """Return a sentence with keys of the file exchanged for their labels.

    Parameters
    ----------
    path
        The place that it is said of: a key is sought beside it first.
    """

    def labelled(found: re.Match[str]) -> str:
        name = found["table"] or found["set"] or found["key"]
        member = _member(name, path)
        if member is None:
            return found[0]
        label = label_in(speech.language, member, speech.place, speech.own)
        return speech.say(Message("form-key", label=label, word=found["word"] or "none"))

    return _KEY.sub(labelled, text)


def _member(name: str, path: KeyPath) -> Member | None:
    here = member_at(path[:-1]) if len(path) > 1 else None
    beside = members_of(here.inner) if here is not None and here.inner is not None else ()
    own = next((described for described in beside if described.name == name), None)
    return own or member_at(tuple(name.split("."))) or _by_name().get(name)


@cache
def _by_name() -> dict[str, Member]:
    """Every member of every record by its name; of several, the first."""
    found: dict[str, Member] = {}
    for described in every_member(Workshop):
        found.setdefault(described.name, described)
    return found
