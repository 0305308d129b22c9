"""``init --ask``: the hours of typical jobs, and what one answer confirms of each step's rest."""

from __future__ import annotations

from datetime import date

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.hours_of_jobs import fit_hours
from ledgerstone.application.profile_description import named_values
from ledgerstone.application.typical_jobs import typical_jobs
from ledgerstone.cli.asking import Prompter
from ledgerstone.cli.starting_questions import QUESTIONS
from ledgerstone.codec.tokens import Tokens
from ledgerstone.message import Message
from ledgerstone.settings import Settings
from ledgerstone.workshop.confirming import confirm_all
from ledgerstone.workshop.editing import ProfileDraft
from ledgerstone.workshop.first_quote import FirstStep, first_steps
from ledgerstone.workshop.loader import read_profile, starting_tables
from ledgerstone.workshop.standing import standings
from ledgerstone.workshop.syntax import tables

_YES = frozenset({"y", "yes", "j", "ja"})
_NO = frozenset({"n", "no", "nein"})
_JOBS_NUMBER = 2 + len(QUESTIONS)


def finish(draft: ProfileDraft, asking: Prompter, today: date) -> None:
    """Ask how long typical jobs take, and whether the other values of each step are right.

    Raises
    ------
    Unanswered
    """
    _ask_hours(draft, asking, today)
    raw = tables(draft.text)
    steps = first_steps(raw, standings(raw, *starting_tables()))
    for number, step in enumerate((step for step in steps if step.rest), _JOBS_NUMBER + 1):
        _ask_rest(draft, step, number, asking)


def _ask_hours(draft: ProfileDraft, asking: Prompter, today: date) -> None:
    context = QuoteContext(read_profile(draft.text), today, Tokens(Settings().signing_keys))
    for job in typical_jobs(context):
        length, width = job.size
        typical = Message(
            "typical-job", job=job.name, surface=job.surface, length=length, width=width
        )
        hours = job.hands_hours or 0.0
        asking.say(Message("init-job", job=typical, hours=round(hours, 1)))
    typed = asking.answer(_JOBS_NUMBER, "jobs", "")
    hours_typed = [part for part in typed.replace(";", " ").split() if part]
    fit_hours(draft, hours_typed, asking.speech.formats.point, context)


def _ask_rest(draft: ProfileDraft, step: FirstStep, number: int, asking: Prompter) -> None:
    text, rest = draft.text, (*step.rest, *step.open_asks, *step.open_rates)
    for line in named_values(text, tables(text), rest, asking.speech):
        asking.tell(line)
    while True:
        answer = asking.answer(number, "rest", "", count=len(rest)).casefold()
        if answer in _YES:
            confirm_all(draft, rest)
        if answer in _YES | _NO:
            return
