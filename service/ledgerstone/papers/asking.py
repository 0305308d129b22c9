"""What a reply says was taken, and what it asks: one short paragraph, three questions at most."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, Final

from ledgerstone.wording import Listed, Message, Speech

MOST_ASKED: Final = 3
# What moves price and feasibility most comes first; by the end of its place in the order.
_WEIGHTS: Final = (
    re.compile(r"/outline(?:/(?:kind|length|width|diameter))?\Z"),
    re.compile(r"/thickness\Z"),
    re.compile(r"/notch(?:/\w+)?\Z"),
    re.compile(r"/cutouts/\d+(?:/(?:length|width|diameter))?\Z"),
    re.compile(r"/cutouts/\d+/centre(?:/[xy])?\Z"),
    re.compile(r"/delivery(?:/\w+)?\Z"),
    re.compile(r"/needed_by\Z"),
)


def taken_text(sentences: Sequence[str], speech: Speech) -> str:
    """Give what was taken as one paragraph: "We took it that …, that … and that …."."""
    lead = f"{speech.say(Message('letter-took-lead'))} "
    each = list(dict.fromkeys(sentence.strip() for sentence in sentences))
    led = [one.removeprefix(lead).rstrip(".") for one in each if one.startswith(lead)]
    others = [one for one in each if not one.startswith(lead)]
    if not led:
        return " ".join(others)
    facts = Listed(tuple(Message("letter-took-fact", fact=fact) for fact in led))
    return " ".join((speech.say(Message("letter-took", facts=facts)), *others))


def chosen_questions(missing: Iterable[Mapping[str, Any]]) -> tuple[str, ...]:
    """Give the three questions that move price and feasibility most, in that order."""
    ranked = sorted(missing, key=lambda one: _weight(str(one.get("at", ""))))
    return tuple(dict.fromkeys(str(one["asks"]) for one in ranked))[:MOST_ASKED]


def _weight(at: str) -> int:
    return next((i for i, pattern in enumerate(_WEIGHTS) if pattern.search(at)), len(_WEIGHTS))
