"""``init --ask``: each question is asked until its answer reads, and becomes a profile's value."""

from __future__ import annotations

import re
from typing import Any, Final, TextIO

from ledgerstone.cli.starting_questions import QUESTIONS, Question, in_country
from ledgerstone.workshop.consistency import inconsistencies
from ledgerstone.workshop.lines import Path
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.schemas import written

_COUNT: Final = 1 + len(QUESTIONS)


class Unanswered(Exception):
    """The answers ended before the questions did."""


def ask_country(usual: str, answers: TextIO, out: TextIO) -> str:
    """Ask in which country the workshop stands: much of the rest is usual there.

    Raises
    ------
    Unanswered
    """
    while True:
        asks = f"1/{_COUNT} Country, by its two letters (GB, DE, US) [{usual}]"
        answer = _asked(asks, answers, out)
        country = (answer or usual).upper()
        if re.fullmatch("[A-Z]{2}", country):
            return country
        out.write("    Write two letters, like GB.\n")


def answered(
    example: Workshop, country: str, answers: TextIO, out: TextIO
) -> tuple[Workshop, frozenset[Path]]:
    """Ask every other question, each again until its answer reads, and return what was answered.

    Returns
    -------
    workshop
        The example with the answers in it.
    confirmed
        The keys that were asked for: they are the maker's, whatever was answered.

    Raises
    ------
    Unanswered
    """
    workshop = in_country(example, country)
    confirmed: frozenset[Path] = frozenset({("workshop", "country")})
    for number, question in enumerate(QUESTIONS, 2):
        asks = f"{number}/{_COUNT} {question.asks}{_brackets(question, workshop)}"
        changed: Workshop | None = None
        while changed is None:
            changed, why = _tried(question, workshop, _asked(asks, answers, out))
            if changed is None:
                out.write(f"    {why}\n")
        workshop = changed
        confirmed |= set(question.paths)
    return workshop, confirmed


def _asked(asks: str, answers: TextIO, out: TextIO) -> str:
    out.write(f"{asks}: ")
    out.flush()
    line = answers.readline()
    if not line:
        raise Unanswered
    return line.strip()


def _brackets(question: Question, workshop: Workshop) -> str:
    now = question.now(workshop)
    return f" [{now}]" if now else ""


def _tried(question: Question, workshop: Workshop, text: str) -> tuple[Workshop | None, str]:
    """Put an answer in and look at what it does: the workshop, or the reason why not."""
    text = text or question.now(workshop)
    try:
        changed = question.put(workshop, text)
    except ValueError as reason:
        return None, str(reason)
    sections = {f.name: getattr(changed, f.name) for f in written(Workshop)}
    for path, says in inconsistencies(sections):
        if any(path[: len(asked)] == asked for asked in question.paths):
            return None, says
    return changed, ""


def confirmed_keys(workshop: Workshop, confirmed: frozenset[Path]) -> dict[str, list[str]]:
    """Give the keys that were asked for and are there, by their tables.

    An offer's own ``standing`` is another thing, so that its values are confirmed by none.
    """
    tables: dict[str, list[str]] = {}
    for path in sorted(confirmed, key=str):
        if path[0] != "offer" and _value_at(workshop, path) is not None:
            tables.setdefault(str(path[0]), []).append(str(path[-1]))
    return tables


def _value_at(workshop: Workshop, path: Path) -> object:
    part: Any = workshop
    for step in path:
        part = part[step] if isinstance(step, int) else getattr(part, step)
    return part
