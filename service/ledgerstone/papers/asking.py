"""What a reply says was taken, and what it asks: one short paragraph, three questions at most."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, Final

MOST_ASKED: Final = 3
_TOOK: Final = "We took it that "
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


def taken_text(sentences: Sequence[str]) -> str:
    """Give what was taken as one paragraph: "We took it that …, that … and that …."."""
    each = list(dict.fromkeys(sentence.strip() for sentence in sentences))
    led = [one.removeprefix(_TOOK).rstrip(".") for one in each if one.startswith(_TOOK)]
    others = [one for one in each if not one.startswith(_TOOK)]
    if len(led) > 1:
        first = f"{_TOOK}{', that '.join(led[:-1])} and that {led[-1]}."
    else:
        first = "".join(f"{_TOOK}{one}." for one in led)
    return " ".join(filter(None, (first, *others)))


def chosen_questions(missing: Iterable[Mapping[str, Any]]) -> tuple[str, ...]:
    """Give the three questions that move price and feasibility most, in that order."""
    ranked = sorted(missing, key=lambda one: _weight(str(one.get("at", ""))))
    return tuple(dict.fromkeys(str(one["asks"]) for one in ranked))[:MOST_ASKED]


def _weight(at: str) -> int:
    return next((i for i, pattern in enumerate(_WEIGHTS) if pattern.search(at)), len(_WEIGHTS))
