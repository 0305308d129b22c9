"""Every rate of hours in proportion, so that typical jobs take as long as their maker says."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.typical_jobs import typical_jobs
from ledgerstone.errors import ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.editing import ProfileDraft
from ledgerstone.workshop.first_quote import HOURS
from ledgerstone.workshop.loader import read_profile
from ledgerstone.workshop.syntax import tables
from ledgerstone.workshop.typed import number_of

_ROUNDS: Final = 3  # what does not grow with the rates (minutes are whole) is met again
_NEAR: Final = 0.01
_TABLES: Final = frozenset({HOURS, "finishes", "sealers", "edges", "packing", "handling"})
_AMOUNT: Final = re.compile(r"\d+(?:\.\d+)?")
_DIGITS: Final = 4


def fit_hours(draft: ProfileDraft, told: Sequence[str], mark: str, context: QuoteContext) -> None:
    """Scale every rate of hours of a profile; nothing is changed while it has faults.

    Parameters
    ----------
    told
        The hours of hands that each typical job takes, in their order; empty where not told.

    Source
    ------
    The one factor ``f`` for which the relative misses ``f h / t - 1`` are least in squares:
    ``f = Σ r / Σ r²`` with ``r = h / t``.
    """
    hours = [float(number) if (number := number_of(text, mark)) else 0.0 for text in told]
    for _ in range(_ROUNDS):
        factor = _factor(draft.text, hours, context)
        if factor is None or abs(factor - 1) < _NEAR:
            return
        _scale(draft, factor)


def _factor(text: str, told: Sequence[float], context: QuoteContext) -> float | None:
    try:
        workshop = read_profile(text)
    except ProfileError:
        return None
    jobs = typical_jobs(replace(context, workshop=workshop))
    ratios = [
        job.hands_hours / hours
        for job, hours in zip(jobs, told, strict=False)
        if job.hands_hours and hours > 0
    ]
    return sum(ratios) / sum(ratio**2 for ratio in ratios) if ratios else None


def _scale(draft: ProfileDraft, factor: float) -> None:
    for path in list(_rates(tables(draft.text))):
        written = draft.written(path)
        found = _AMOUNT.search(written)
        if found is not None and float(found[0]):
            now = _rounded(float(found[0]) * factor)
            draft.put(path, written[: found.start()] + now + written[found.end() :])
    draft.settle()


def _rounded(amount: float) -> str:
    exact = Decimal(repr(amount))
    return format(round(exact, _DIGITS - 1 - exact.adjusted()).normalize(), "f")


def _rates(part: Any, path: KeyPath = ()) -> Any:  # noqa: ANN401  any part of a document
    """Yield the path of every rate of hours in the tables that have them."""
    if isinstance(part, Mapping):
        for key, value in part.items():
            if path or key in _TABLES:
                yield from _rates(value, (*path, key))
    elif isinstance(part, list):
        for k, item in enumerate(part):
            yield from _rates(item, (*path, k))
    elif not isinstance(part, bool) and isinstance(part, int | Decimal | str):
        key = str(path[-1])
        if path[0] == HOURS or (key.startswith("hours") and key != "recoat_hours"):
            yield path
