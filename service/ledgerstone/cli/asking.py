"""``init --ask``: asks each question until the answer is valid, and sets the profile's value."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any, Final, TextIO

from ledgerstone.cli.moving import in_country
from ledgerstone.cli.question import Question
from ledgerstone.cli.starting_questions import NONE, QUESTIONS, role_at
from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message, Value
from ledgerstone.wording import Speech
from ledgerstone.workshop.consistency import inconsistencies
from ledgerstone.workshop.countries.public_holidays import COUNTRIES, country_fault
from ledgerstone.workshop.keys.values import ValueRejected
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.schemas import written

# What is asked after the questions: values of the first quote, the hours, materials and price of
# typical jobs, and steps whose values are confirmed with one answer.
VALUES_LEFT: Final = 7
OF_JOBS: Final = 3
STEPS_TO_CONFIRM: Final = 2
_COUNT: Final = 1 + len(QUESTIONS) + VALUES_LEFT + OF_JOBS + STEPS_TO_CONFIRM


class Unanswered(Exception):
    """The input ended before the last question was answered."""


@dataclass(frozen=True, slots=True)
class Prompter:
    """Asks questions on one stream and reads the answers from another, in one language."""

    answers: TextIO
    out: TextIO
    speech: Speech

    def answer(self, number: int, question: str, now: str, **more: Value) -> str:
        """Ask one question and return the answer.

        Parameters
        ----------
        more
            What else the question speaks of.

        Raises
        ------
        Unanswered
        """
        asks = Message("init-asks", **{"question": question, "count": 0, **more})
        return self.answer_to(number, self.speech.say(asks), now)

    def answer_to(self, number: int, asks: str, now: str) -> str:
        """Ask what is worded already and return the answer.

        Raises
        ------
        Unanswered
        """
        brackets = f" [{now}]" if now else ""
        self.out.write(f"{number}/{_COUNT} {asks}{brackets}: ")
        self.out.flush()
        line = self.answers.readline()
        if not line:
            raise Unanswered
        return line.strip()

    def say(self, message: Message) -> None:
        """Print a sentence, such as why an answer was rejected."""
        self.tell(self.speech.say(message))

    def tell(self, line: str) -> None:
        """Print a line."""
        self.out.write(f"    {line}\n")


def ask_country(usual: str, answers: TextIO, out: TextIO, speech: Speech) -> str:
    """Ask for the workshop's country, which sets the default of most other answers.

    Raises
    ------
    Unanswered
    """
    asking = Prompter(answers, out, speech)
    while True:
        country = asking.answer(1, "country", usual) or usual
        if country.upper() in COUNTRIES:
            return country.upper()
        asking.say(country_fault(country))


def answered(
    example: Workshop, country: str, asking: Prompter
) -> tuple[Workshop, frozenset[KeyPath]]:
    """Ask every other question, each until the answer is valid, and return the result.

    Returns
    -------
    workshop
        The example with the answers set.
    confirmed
        The keys that were asked for: they count as the maker's own, also if the default was kept.

    Raises
    ------
    Unanswered
    """
    workshop = in_country(example, country)
    confirmed: frozenset[KeyPath] = frozenset({("workshop", "country")})
    for number, question in enumerate(QUESTIONS, 2):
        if not question.is_asked(workshop):
            continue
        changed: Workshop | None = None
        while changed is None:
            now = question.now(workshop)
            shown = asking.speech.say(Message("init-none")) if now == NONE else now
            if question.is_number:
                shown = _with_marks(shown, asking.speech)
            given = asking.answer(number, question.asks, shown)
            changed, why = _tried(question, workshop, given or now)
            if why is not None:
                asking.say(why)
        workshop = changed
        confirmed |= set(question.paths)
    return workshop, confirmed


def _with_marks(shown: str, speech: Speech) -> str:
    """Write numbers of a default answer as the language does, several with semicolons."""
    text = speech.formats.number(shown)
    return text if text == shown else re.sub(",(?= )", ";", text)


def _tried(
    question: Question, workshop: Workshop, text: str
) -> tuple[Workshop | None, Message | None]:
    """Set an answer and check the profile: return the workshop, or the reason why not."""
    try:
        changed = question.put(workshop, text)
    except ValueRejected as reason:
        return None, reason.message
    sections = {f.name: getattr(changed, f.name) for f in written(Workshop)}
    for path, why in inconsistencies(sections):
        if any(path[: len(asked)] == asked for asked in question.paths):
            return None, why
    return changed, None


def confirmed_paths(workshop: Workshop, confirmed: frozenset[KeyPath]) -> list[KeyPath]:
    """Return the paths that were asked for and exist; a recipe's part is named by its role."""
    paths = (_by_number(workshop, path) for path in sorted(confirmed, key=str))
    return [path for path in paths if _value_at(workshop, path) is not None]


def _by_number(workshop: Workshop, path: KeyPath) -> KeyPath:
    if path[:2] != ("recipe", "constituents"):
        return path
    return (*path[:2], role_at(workshop, str(path[2])), *path[3:])


def _value_at(workshop: Workshop, path: KeyPath) -> object:
    part: Any = workshop
    for step in path:
        part = part[step] if isinstance(step, int) else getattr(part, step)
    return part
