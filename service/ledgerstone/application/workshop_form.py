"""The profile as a form: described for the maker, and tried with changes."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from decimal import Decimal
from itertools import zip_longest
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.hours_of_jobs import FittedHours
from ledgerstone.application.jobs_not_made import jobs_not_made
from ledgerstone.application.money_of_jobs import why_not_met
from ledgerstone.application.priced_profile import PricedProfile, priced_without
from ledgerstone.application.profile_changes import ChangedProfile, changed, pointer_of
from ledgerstone.application.profile_description import write_description, write_step
from ledgerstone.application.resolving import read_members
from ledgerstone.application.typical_jobs import TypicalJob, typical_jobs
from ledgerstone.codec.workshop_schemas import WORKSHOP_FORM, WorkshopTrialSchema
from ledgerstone.errors import Fault, NotUnderstood, ProfileError, ProfileFault
from ledgerstone.json_types import JSON
from ledgerstone.message import Listed, Message, Money
from ledgerstone.wording import Speech, speech_in
from ledgerstone.wording.form_words import fault_on_form
from ledgerstone.wording.page import WORKSHOP_TEXTS, page_differences
from ledgerstone.wording.profile import rests_on_in
from ledgerstone.workshop.entry.local_units import working_place
from ledgerstone.workshop.form.first_quote import first_steps
from ledgerstone.workshop.reading.loader import read_profile, starting_tables
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.standing import (
    ProfileStanding,
    is_demonstration,
    standing_of_values,
    standings,
)

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
    return _written(
        _Tried(file, ChangedProfile(file.text, FittedHours()), raw, read),
        speech,
        is_described=True,
    )


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
    mark = speech.formats.point
    now = changed(file.text, ask["changes"], mark, context)
    raw, read = _read(now.text)
    if isinstance(read, Workshop):
        by_it = replace(context, workshop=read)
        jobs = typical_jobs(by_it)
        priced: PricedProfile | None = PricedProfile(now, read, jobs)
        blamed = jobs_not_made(jobs, by_it, is_brief=True)
        now = replace(now, taken=(*now.taken, *((one.path, one.says) for one in blamed)))
    else:
        priced = priced_without(file.text, ask["changes"], read, mark, context)
    tried = _Tried(file, now, raw, read, priced)
    written = _written(tried, speech, is_described=ask.get("described", False))
    if ask.get("save") and not written["faults"]:
        if not file.write(now.text, ask["version"]):
            raise NotUnderstood((Fault("/version", Message("profile-changed-since")),))
        written |= {"saved": True, "version": version_of(now.text)}
    return written


# --- what is written of it ------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class _Tried:
    """A profile with changes, its TOML content, and the workshop it describes or all its faults.

    Attributes
    ----------
    priced
        What typical jobs are worked out by, if they are.
    """

    file: ProfileFile
    now: ChangedProfile
    raw: dict[str, Any]
    read: Workshop | tuple[ProfileFault, ...]
    priced: PricedProfile | None = None


def _written(tried: _Tried, speech: Speech, *, is_described: bool) -> dict[str, Any]:
    file, raw, read = tried.file, tried.raw, tried.read
    speech = speech_in(speech.language, speech.own, working_place(raw))
    found = standings(raw, *starting_tables())
    share = standing_of_values(found)
    faults = () if isinstance(read, Workshop) else read
    text, removed = tried.now.text, Listed(tried.now.removed, joined="comma")
    answer = {
        "version": version_of(file.text),
        "file": file.name,
        "writable": file.writable,
        "demonstration": is_demonstration(raw),
        "currency": raw.get("workshop", {}).get("currency") if isinstance(read, Workshop) else None,
        "words": page_differences(speech.language, speech.place, speech.own, WORKSHOP_TEXTS),
        "saved": False,
        "share": share,
        "invented": [_invented(share, *table, speech) for table in share.tables],
        "steps": [write_step(step, faults, speech) for step in first_steps(raw, found)],
        "faults": [_fault(fault, speech) for fault in faults],
        "jobs": [] if tried.priced is None else list(_jobs(tried.priced, speech)),
        "also": speech.say(Message("profile-also-removed", things=removed))
        if tried.now.removed
        else None,
        "taken": [
            {"pointer": pointer_of(path), "says": speech.say(says)}
            for path, says in tried.now.taken
        ],
        "text": text,
        **(
            write_description(text, raw, found, speech)
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
    return {"pointer": pointer_of(fault.path), "says": fault_on_form(fault, speech)}


def _invented(share: ProfileStanding, table: str, count: int, speech: Speech) -> dict[str, Any]:
    rests, holds = (
        rests_on_in(speech.language, table, speech.place, speech.own),
        table in share.priced,
    )
    return {"pointer": f"/{table}", "values": count, "holds": holds, "says": rests}


def _hour(workshop: Workshop) -> Decimal:
    """Return the price of an hour of labour, before tax."""
    return workshop.rates.hour * (1 + workshop.rates.margin_percent / 100)


def _jobs(priced: PricedProfile, speech: Speech) -> Iterator[dict[str, Any]]:
    """Write each typical job, with the hours given for it."""
    now, workshop = priced.now, priced.workshop
    for job, given, took in zip_longest(priced.jobs, now.fitted.given, now.fitted.took):
        if job is not None:
            hour = _hour(workshop)
            written = {**_job(job, hour, speech), "told_hours": given, "fitted_hours": took}
            is_told = job.materials is not None
            yield written | _money(job, now, workshop, speech) if is_told else written


def _money(
    job: TypicalJob, now: ChangedProfile, workshop: Workshop, speech: Speech
) -> dict[str, Any]:
    """What was said to be bought and asked for a job, and why no price or markup makes it so."""
    asked, cost = now.money.asked, job.cost or Decimal(0)
    currency = workshop.workshop.currency
    below = Message("profile-below-cost", cost=Money(currency, cost))
    unmet = why_not_met(now.money, currency)
    return {
        "told_materials": now.money.materials,
        "told_asked": asked,
        "below_cost": speech.say(below) if asked is not None and asked < cost else None,
        "not_met": None if unmet is None else speech.say(unmet),
    }


def _job(job: TypicalJob, hour: Decimal, speech: Speech) -> dict[str, Any]:
    parts = (job.parts or {}).items()
    return {
        "name": speech.say(job.message),
        "total": job.total,
        "hands_hours": job.hands_hours,
        "ready_on": job.ready_on,
        "materials": job.materials,
        "asked": job.asked,
        "parts": [_part(at, hours, hour) for at, hours in parts] or None,
        "says": None if job.remark is None else speech.say(job.remark),
    }


def _part(pointer: str, hours: float, hour: Decimal) -> dict[str, Any]:
    amount = hour * Decimal(str(round(hours, 4)))
    return {"pointer": pointer, "hands_hours": hours, "amount": amount}
