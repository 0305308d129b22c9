"""The profile as a form: described for the maker, and tried with changes."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.resolving import read_members
from ledgerstone.application.typical_jobs import TypicalJob, typical_jobs
from ledgerstone.codec.order_in import escape
from ledgerstone.codec.workshop_schemas import WORKSHOP_FORM, WorkshopTrialSchema
from ledgerstone.errors import Fault, NotUnderstood, ProfileError, ProfileFault
from ledgerstone.json_types import JSON, KeyPath
from ledgerstone.message import Message
from ledgerstone.wording import Speech
from ledgerstone.wording.profile import choice_in, label_in, rests_on_in
from ledgerstone.workshop._placed_text import NoSuchPlace
from ledgerstone.workshop.confirming import confirm, unconfirm
from ledgerstone.workshop.describing import SUBJECT_OF, DescribedTable, DescribedValue, described
from ledgerstone.workshop.editing import ProfileDraft
from ledgerstone.workshop.loader import read_profile, starting_tables
from ledgerstone.workshop.members import member_at
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.samples import sample_of
from ledgerstone.workshop.standing import (
    ProfileStanding,
    is_demonstration,
    standing_of_profile,
    standings,
)
from ledgerstone.workshop.syntax import tables
from ledgerstone.workshop.typed import is_list, toml_list_of, toml_of

_SCHEMA: Final = WorkshopTrialSchema()


@dataclass(frozen=True, slots=True)
class ProfileFile:
    """A profile's file: its name, its text, and how it is written.

    Attributes
    ----------
    write
        Replaces the text of a given version; False if the file has another version by then.
    """

    name: str
    text: str
    writable: bool
    write: Callable[[str, str], bool]


def version_of(text: str) -> str:
    """Return the version of a text: 16 hexadecimal digits of its hash."""
    return hashlib.sha256(text.encode()).hexdigest()[:16]


def write_workshop(file: ProfileFile, speech: Speech) -> dict[str, Any]:
    """Describe the profile in its file."""
    raw, read = _read(file.text)
    return _written(_Tried(file, file.text, raw, read), (), speech, is_described=True)


def try_workshop(
    document: JSON, file: ProfileFile, context: QuoteContext, speech: Speech
) -> dict[str, Any]:
    """Try changes of the profile's file, and write them if asked to and if they are valid.

    Raises
    ------
    NotUnderstood
        A change cannot be applied, or the file has changed since.
    OSError
        The file cannot be written.
    """
    ask = read_members(_SCHEMA, document)
    if ask["version"] != version_of(file.text):
        raise NotUnderstood((Fault("/version", Message("profile-changed-since")),))
    if ask.get("save") and not file.writable:
        raise NotUnderstood((Fault("/save", Message("profile-not-writable")),))
    text = _changed(file.text, ask["changes"], speech.formats.point)
    raw, read = _read(text)
    jobs = typical_jobs(replace(context, workshop=read)) if isinstance(read, Workshop) else ()
    tried = _Tried(file, text, raw, read)
    written = _written(tried, jobs, speech, is_described=ask.get("described", False))
    if ask.get("save") and not written["faults"]:
        if not file.write(text, ask["version"]):
            raise NotUnderstood((Fault("/version", Message("profile-changed-since")),))
        written |= {"saved": True, "version": version_of(text)}
    return written


# --- changes --------------------------------------------------------------------------------


def _changed(text: str, changes: list[dict[str, Any]], mark: str) -> str:
    draft = ProfileDraft(text)
    faults: list[Fault] = []
    typed: set[KeyPath] = set()
    for i, change in enumerate(changes):
        path = _path_of(change["pointer"])
        if change["op"] != "set":  # what it confirms or moves is of the text as it is by then
            _confirm_typed(draft, typed)
        try:
            _change(draft, path, change, mark)
        except NoSuchPlace:
            says = Message("profile-no-such-place", pointer=change["pointer"])
            faults.append(Fault(f"/changes/{i}/pointer", says))
        else:
            typed |= {path} if change["op"] == "set" else set()
    if faults:
        raise NotUnderstood.of(faults)
    _confirm_typed(draft, typed)
    return draft.text


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


def _change(draft: ProfileDraft, path: KeyPath, change: Mapping[str, Any], mark: str) -> None:
    """Make one change.

    Raises
    ------
    NoSuchPlace
    """
    member, operation = member_at(path), change["op"]
    if member is None or (operation == "set" and member.inner is not None):
        raise NoSuchPlace(path)
    if operation == "set" and is_list(member):
        draft.put(path, toml_list_of(member, change.get("values", []), mark))
    elif operation == "set":
        draft.put(path, toml_of(member, change.get("value", ""), mark))
    elif operation == "leave-out" and (member.inner is not None or draft.written(path)):
        draft.leave_out(path)
    elif operation == "add" and member.inner is not None and not isinstance(path[-1], int):
        draft.add(path, sample_of(member.inner, path, is_item=member.kind == "items"))
    elif operation == "confirm":
        confirm(draft, path)
    elif operation == "unconfirm":
        unconfirm(draft, path)
    elif operation != "leave-out":
        raise NoSuchPlace(path)


def _path_of(pointer: str) -> KeyPath:
    parts = (part.replace("~1", "/").replace("~0", "~") for part in pointer.split("/")[1:])
    return tuple(int(part) if part.isdecimal() and len(part) < 5 else part for part in parts)


def _pointer(path: KeyPath) -> str:
    return "".join(f"/{escape(str(step))}" for step in path)


# --- what is written of it ------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class _Tried:
    """A profile's text, its TOML content, and the workshop it describes or all its faults."""

    file: ProfileFile
    text: str
    raw: dict[str, Any]
    read: Workshop | tuple[ProfileFault, ...]


def _written(
    tried: _Tried, jobs: Sequence[TypicalJob], speech: Speech, *, is_described: bool
) -> dict[str, Any]:
    file, raw, read = tried.file, tried.raw, tried.read
    share = standing_of_profile(raw, *starting_tables())
    answer = {
        "version": version_of(file.text),
        "file": file.name,
        "writable": file.writable,
        "demonstration": is_demonstration(raw),
        "currency": raw.get("workshop", {}).get("currency") if isinstance(read, Workshop) else None,
        "saved": False,
        "share": share,
        "invented": [_invented(share, *one, speech.language) for one in share.tables],
        "faults": [] if isinstance(read, Workshop) else [_fault(one, speech) for one in read],
        "jobs": [_job(job, _hour(read), speech) for job in jobs]
        if isinstance(read, Workshop)
        else [],
        "text": tried.text,
        **(
            _described(tried.text, raw, speech.language)
            if is_described
            else {"tables": None, "values": None}
        ),
    }
    written: dict[str, Any] = WORKSHOP_FORM.dump(answer)
    return written


def _read(text: str) -> tuple[dict[str, Any], Workshop | tuple[ProfileFault, ...]]:
    """Return a text's TOML content, and the workshop it describes or all its faults."""
    try:
        raw = tables(text)
    except ProfileError as error:
        return {}, error.faults
    try:
        return raw, read_profile(text)
    except ProfileError as error:
        return raw, error.faults


def _fault(fault: ProfileFault, speech: Speech) -> dict[str, str]:
    return {"pointer": _pointer(fault.path), "says": speech.say(fault.message)}


def _invented(share: ProfileStanding, table: str, count: int, language: str) -> dict[str, Any]:
    rests, holds = rests_on_in(language, table), table in share.priced
    return {"pointer": f"/{table}", "values": count, "holds": holds, "says": rests}


def _hour(workshop: Workshop) -> Decimal:
    """Return the price of an hour of labour, before tax."""
    return workshop.rates.hour * (1 + workshop.rates.margin_percent / 100)


def _job(job: TypicalJob, hour: Decimal, speech: Speech) -> dict[str, Any]:
    parts = (job.parts or {}).items()
    return {
        "name": speech.say(Message("typical-job", job=job.name)),
        "total": job.total,
        "hands_hours": job.hands_hours,
        "ready_on": job.ready_on,
        "parts": [_part(at, hours, hour) for at, hours in parts] or None,
        "says": None if job.stops is None else speech.say(job.stops),
    }


def _part(pointer: str, hours: float, hour: Decimal) -> dict[str, Any]:
    amount = hour * Decimal(str(round(hours, 4)))
    return {"pointer": pointer, "hands_hours": hours, "amount": amount}


def _described(text: str, raw: Mapping[str, Any], language: str) -> dict[str, Any]:
    found = list(described(text, raw, standings(raw, *starting_tables())))
    return {
        "tables": [_table(one, language) for one in found if isinstance(one, DescribedTable)],
        "values": [_value(one, language) for one in found if isinstance(one, DescribedValue)],
    }


def _table(one: DescribedTable, language: str) -> dict[str, Any]:
    return {
        "pointer": _pointer(one.path),
        "subject": SUBJECT_OF[str(one.path[0])],
        "kind": "item" if isinstance(one.path[-1], int) else one.member.kind,
        "label": label_in(language, one.member),
        "help": one.help,
        "there": one.there,
        "needed": one.member.needed,
    }


def _value(one: DescribedValue, language: str) -> dict[str, Any]:
    listed = isinstance(one.value, list)
    value = (
        {True: "true", False: "false"}.get(one.value) if isinstance(one.value, bool) else one.value
    )
    return {
        "pointer": _pointer(one.path),
        "kind": one.member.kind,
        "label": label_in(language, one.member),
        "help": one.help,
        "unit": one.member.unit,
        "needed": one.member.needed,
        "value": None if listed else value,
        "values": one.value if listed else None,
        "choices": one.member.choices or None,
        "choices_say": [choice_in(language, word) for word in one.member.choices] or None,
        "standing": one.standing,
    }
