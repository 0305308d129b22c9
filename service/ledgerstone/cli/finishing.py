"""``init --ask``: the hours of typical jobs, and what one answer confirms of each step's rest."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from datetime import date

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.hours_of_jobs import fit_hours
from ledgerstone.application.money_of_jobs import fit_money, why_not_met
from ledgerstone.application.profile_description import first_ask, named_values
from ledgerstone.application.typical_jobs import typical_jobs
from ledgerstone.cli.asking import OF_JOBS, VALUES_LEFT, Prompter
from ledgerstone.cli.starting_questions import QUESTIONS
from ledgerstone.codec.tokens import Tokens
from ledgerstone.errors import ProfileError, ProfileFault
from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message
from ledgerstone.settings import Settings
from ledgerstone.wording.profile import choice_in
from ledgerstone.workshop.entry.local_units import currency_of, unit_shown, working_place
from ledgerstone.workshop.entry.typed import EMPTY, is_none, toml_of
from ledgerstone.workshop.form.confirming import confirm_all
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.first_quote import JOB, FirstStep, first_steps
from ledgerstone.workshop.form.following import put_with_followers
from ledgerstone.workshop.reading.loader import read_profile, starting_tables
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.members import Member, member_at
from ledgerstone.workshop.standing import standings

_YES = frozenset({"y", "yes", "j", "ja"})
_NO = frozenset({"n", "no", "nein"})
_FIRST = 2 + len(QUESTIONS)


def finish(draft: ProfileDraft, asking: Prompter, today: date) -> None:
    """Ask what else a first quote needs, how a typical job goes, and what of the rest is right.

    Raises
    ------
    Unanswered
    """
    _ask_values(draft, asking)
    _ask_jobs(draft, asking, today)
    unsaid = (step for step in _steps(draft) if step.rest and step.name != JOB)
    for number, step in enumerate(unsaid, _FIRST + VALUES_LEFT + OF_JOBS):
        _ask_rest(draft, step, number, asking)


def _steps(draft: ProfileDraft) -> tuple[FirstStep, ...]:
    raw = tables(draft.text)
    return first_steps(raw, standings(raw, *starting_tables()))


def _ask_values(draft: ProfileDraft, asking: Prompter) -> None:
    """Ask for each value that is left once; one answer may open another question."""
    asked: list[KeyPath] = []
    while left := [path for path in _left(draft) if path not in asked]:
        asked.append(left[0])
        _ask_value(draft, asked, _FIRST + len(asked) - 1, asking)


def _left(draft: ProfileDraft) -> list[KeyPath]:
    """What is still to be asked: what is invented, and what an answer left empty."""
    draft.settle()
    return [
        path
        for step in _steps(draft)
        for path in step.asks
        if path in step.open_asks or _is_missing(draft, path)
    ]


def _is_missing(draft: ProfileDraft, path: KeyPath) -> bool:
    """Whether a number was left empty, such as what glass fibre reaches."""
    member = member_at(path)
    return draft.written(path) == EMPTY and member is not None and member.kind == "number"


def _ask_value(
    draft: ProfileDraft, asked: Sequence[KeyPath], number: int, asking: Prompter
) -> None:
    """Ask for the last of the values asked until it is valid; an empty answer keeps what stands."""
    path = asked[-1]
    line = next(named_values(draft.text, tables(draft.text), [path], asking.speech))
    label = asking.speech.say(first_ask(path, "terminal"))
    now, member = line.rpartition(": ")[2], member_at(path)
    if member is not None and _is_missing(draft, path):
        raw = tables(draft.text)
        unit = unit_shown(member, working_place(raw), currency_of(raw))
        label, now = f"{label} ({unit})", ""
    if member is not None and member.choices:
        label = f"{label} ({', '.join(_choices_said(member, asking))})"
    mark = asking.speech.formats.point
    while True:
        typed = _chosen(asking.answer_to(number, label, now), member, asking)
        tried = ProfileDraft(draft.text)
        _put(tried, path, typed, mark)
        faults = _faults(tried, asked)
        if not faults:
            break
        asking.say(faults[0].message)
    _put(draft, path, typed, mark)


def _choices_said(member: Member, asking: Prompter) -> dict[str, str]:
    """What may be chosen, each by what is said for it."""
    language, place = asking.speech.language, asking.speech.place
    return {choice_in(language, word, place): word for word in member.choices}


def _chosen(typed: str, member: Member | None, asking: Prompter) -> str:
    """Return the profile's word for what was chosen, however it was said."""
    if member is None or not member.choices:
        return typed
    said = {name.casefold(): word for name, word in _choices_said(member, asking).items()}
    return said.get(typed.casefold(), typed)


def _put(draft: ProfileDraft, path: KeyPath, typed: str, mark: str) -> None:
    """Write a value as it was typed, or say that it is right as it stands."""
    member, place = member_at(path), working_place(tables(draft.text))
    if member is not None and is_none(member, typed):
        draft.leave_out(path)
        return
    if member is not None and typed:
        put_with_followers(draft, path, toml_of(member, typed, mark, place), place)
    confirm_all(draft, [path])


def _faults(draft: ProfileDraft, asked: Collection[KeyPath]) -> tuple[ProfileFault, ...]:
    """The faults of a draft but those at what is asked after."""
    draft.settle()
    try:
        read_profile(draft.text)
    except ProfileError as error:
        coming = [path for path in _left(draft) if path not in asked]
        return tuple(fault for fault in error.faults if fault.path not in coming)
    return ()


def _ask_jobs(draft: ProfileDraft, asking: Prompter, today: date) -> None:
    context = QuoteContext(read_profile(draft.text), today, Tokens(Settings().signing_keys))
    jobs = typical_jobs(context)
    for job in jobs:
        hours = job.hands_hours or 0.0
        asking.say(Message("init-job", job=job.message, hours=round(hours, 1)))
    number, point = _FIRST + VALUES_LEFT, asking.speech.formats.point
    typed = asking.answer(number, "jobs", "")
    hours_typed = [part for part in typed.replace(";", " ").split() if part]
    fit_hours(draft, hours_typed, point, context)
    money = [
        asking.answer(number + k, name, "") for k, name in enumerate(("materials", "asked"), 1)
    ]
    fitted = fit_money(draft, money, point, context, _theirs(draft))
    why = why_not_met(fitted, context.workshop.workshop.currency)
    if why is not None:
        asking.say(why)


def _theirs(draft: ProfileDraft) -> frozenset[KeyPath]:
    """What was answered: nothing that is bought was worked out from a job before."""
    found = standings(tables(draft.text), *starting_tables())
    return frozenset(path for path, word in found.items() if word == "yours")


def _ask_rest(draft: ProfileDraft, step: FirstStep, number: int, asking: Prompter) -> None:
    text, rest = draft.text, step.rest
    for line in named_values(text, tables(text), rest, asking.speech):
        asking.tell(line)
    while True:
        answer = asking.answer(number, "rest", "", count=len(rest)).casefold()
        if answer in _YES:
            confirm_all(draft, rest)
        if answer in _YES | _NO:
            return
