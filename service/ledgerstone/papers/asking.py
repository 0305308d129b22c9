"""A reply's assumptions and questions: one short paragraph, three questions at most."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, Final

from ledgerstone.wording import Listed, Message, Speech

MAX_ASKED: Final = 3
# What moves price and feasibility most comes first; by the end of its place in the order.
_WEIGHTS: Final = (
    re.compile(r"/outline(?:/(?:kind|length|width|diameter))?\Z"),
    re.compile(r"/thickness\Z"),
    re.compile(r"/notch(?:/\w+)?\Z"),
    re.compile(r"/rests\Z"),
    re.compile(r"/needed_by\Z"),  # it has no default, and may stop the whole order
    re.compile(r"/cutouts/\d+(?:/(?:length|width|diameter))?\Z"),
    re.compile(r"/cutouts/\d+/centre(?:/[xy])?\Z"),
    re.compile(r"/delivery(?:/\w+)?\Z"),
)


def taken_text(sentences: Sequence[str], speech: Speech) -> str:
    """Return what was taken as one paragraph: "We took it that …, that … and that …."."""
    lead = f"{speech.say(Message('letter-took-lead'))} "
    each = list(dict.fromkeys(sentence.strip() for sentence in sentences))
    introduced = [
        sentence.removeprefix(lead).rstrip(".") for sentence in each if sentence.startswith(lead)
    ]
    others = [sentence for sentence in each if not sentence.startswith(lead)]
    if not introduced:
        return " ".join(others)
    facts = Listed(tuple(Message("letter-took-fact", fact=fact) for fact in introduced))
    return " ".join((speech.say(Message("letter-took", facts=facts)), *others))


def chosen_questions(missing: Iterable[Mapping[str, Any]]) -> tuple[str, ...]:
    """Return the three questions that move price and feasibility most, in that order."""
    return tuple(dict.fromkeys(str(question["asks"]) for question in _ranked(missing)))[:MAX_ASKED]


def taken_sentences(
    assumed: Iterable[Mapping[str, Any]], missing: Sequence[Mapping[str, Any]]
) -> tuple[str, ...]:
    """Return the sentences of what was taken, without that of which the letter asks."""
    asks = chosen_questions(missing)
    asked = [str(question.get("at", "")) for question in missing if question["asks"] in asks]
    return tuple(
        taken["says"]
        for taken in assumed
        if not any(f"{at}/".startswith(f"{taken['at']}/") for at in asked if at)
    )


def _ranked(missing: Iterable[Mapping[str, Any]]) -> list[Mapping[str, Any]]:
    return sorted(missing, key=lambda question: _weight(str(question.get("at", ""))))


def _weight(at: str) -> int:
    return next((i for i, pattern in enumerate(_WEIGHTS) if pattern.search(at)), len(_WEIGHTS))
