"""Every rate of hours in proportion, so that typical jobs take as long as their maker says."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.typical_jobs import TYPICAL_JOB_NAMES, typical_job
from ledgerstone.errors import ProfileError
from ledgerstone.json_types import JSON, KeyPath
from ledgerstone.workshop.entry.entries import entry_of
from ledgerstone.workshop.form.confirming import confirm_all
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.first_quote import is_rate
from ledgerstone.workshop.keys.measures import measured
from ledgerstone.workshop.keys.numerals import decimal_of, in_proportion, number_of
from ledgerstone.workshop.reading.loader import read_profile, starting_tables
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.standing import KEYS, standings

_ROUNDS: Final = 3  # what does not grow with the rates (minutes are whole) is met again
_NEAR: Final = 0.01
_MOST_HOURS: Final = 10_000  # five years of one person; more is a slip
_HOURS: Final = re.compile(r"(?<=\d)\s*(?:h|hrs?\.?|hours?|std\.?|stunden?)$", re.IGNORECASE)
_DIGITS: Final = 4


@dataclass(frozen=True, slots=True)
class FittedHours:
    """What a maker said of the typical jobs, and the fitted result, in their order.

    Attributes
    ----------
    given
        The hours of labour that each takes; None where not given, or unreadable.
    took
        The hours that each of them took by the profile right after it was fitted; None where
        nothing was given, or it is sent back.
    """

    given: tuple[float | None, ...] = ()
    took: tuple[float | None, ...] = ()


def fit_hours(
    draft: ProfileDraft, given: Sequence[str], mark: str, context: QuoteContext
) -> FittedHours:
    """Scale every rate of hours of a profile to the maker's own; nothing while it has faults.

    Parameters
    ----------
    given
        The hours of labour that each typical job takes, in their order; empty where not given.

    Source
    ------
    The one factor ``f`` for which the relative misses ``f h / t - 1`` are least in squares:
    ``f = Σ r / Σ r²`` with ``r = h / t``.
    """
    hours = tuple(hours_of(text, mark) for text in given)
    takes = _takes(draft.text, given, context)
    for _ in range(_ROUNDS):
        factor = _factor(takes, hours)
        if factor is None:
            return FittedHours(hours, takes)
        if abs(factor - 1) < _NEAR:
            break
        scale(draft, list(_rates(tables(draft.text))), factor)
        takes = _takes(draft.text, given, context)
    _confirm_rates(draft)
    return FittedHours(hours, takes)


def hours_of(text: str, mark: str) -> float | None:
    """Return the hours of an entry as people write them: ``9.5``, ``about 9 h``, ``9 to 10``.

    None where it cannot be read, is not above zero, or is more than any job takes.
    """
    member = member_at(("handling", "ways", 0, "hours"))
    entry = _HOURS.sub("", text if member is None else entry_of(text, member, mark))
    number = number_of(entry, mark) or decimal_of(entry, mark)
    read = measured(entry, "hours") if number is None else Decimal(number)
    return float(read) if read and 0 < read <= _MOST_HOURS else None


def _takes(text: str, given: Sequence[str], context: QuoteContext) -> tuple[float | None, ...]:
    """The hours of each job that something was given for; none while a profile has faults."""
    try:
        by_it = replace(context, workshop=read_profile(text))
    except ProfileError:
        return ()
    jobs = zip(TYPICAL_JOB_NAMES, given, strict=False)
    return tuple(
        typical_job(name, by_it, says_why=False).hands_hours if told else None
        for name, told in jobs
    )


def _factor(takes: Sequence[float | None], given: Sequence[float | None]) -> float | None:
    ratios = [now / hours for now, hours in zip(takes, given, strict=False) if now and hours]
    return sum(ratios) / sum(ratio**2 for ratio in ratios) if ratios else None


def scale(draft: ProfileDraft, paths: Sequence[KeyPath], factor: float) -> None:
    """Write numbers of a profile in one proportion, each with the unit that it has."""
    for path in paths:
        written = draft.written(path)
        now = in_proportion(written, Decimal(repr(factor)), _rounded)
        if now != written:
            draft.put(path, now)
    draft.settle()


def _rounded(amount: Decimal) -> Decimal:
    return round(amount, _DIGITS - 1 - amount.adjusted())


def _rates(part: JSON) -> Iterator[KeyPath]:
    """Yield the path of every rate of hours in a document."""
    return (path for path in numbers_in(part) if is_rate(path))


def numbers_in(part: JSON, path: KeyPath = ()) -> Iterator[KeyPath]:
    """Yield the path of everything in a document that may be a number, with its unit or without."""
    if isinstance(part, Mapping | list):
        for key, value in part.items() if isinstance(part, Mapping) else enumerate(part):
            if key not in KEYS:
                yield from numbers_in(value, (*path, key))
    elif isinstance(part, int | Decimal | str) and not isinstance(part, bool):
        yield path


def _confirm_rates(draft: ProfileDraft) -> None:
    """Write that rates are the maker's that are as in a profile that is started."""
    raw = tables(draft.text)
    found = standings(raw, *starting_tables())
    confirm_all(draft, [path for path in _rates(raw) if found.get(path) == "invented"])
