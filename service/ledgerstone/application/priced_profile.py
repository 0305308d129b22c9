"""What typical jobs are worked out by while something of a changed profile is at fault."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.profile_changes import ChangedProfile, changed, path_of
from ledgerstone.application.typical_jobs import TypicalJob, typical_jobs
from ledgerstone.errors import NotUnderstood, ProfileError, ProfileFault
from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.reading.loader import read_profile
from ledgerstone.workshop.records import Workshop

_Change = Mapping[str, Any]
_BEGINS: Final = frozenset({"add", "mix-from-bags"})
_MOST_FAULTS: Final = 20  # of a form that is full of them nothing is worked out
_ROUNDS: Final = 3  # what is left out may have been what another change is of
_EDITS: Final = frozenset({"set", "leave-out"}) | _BEGINS


@dataclass(frozen=True, slots=True)
class PricedProfile:
    """A changed profile, the workshop that it describes, and its typical jobs."""

    now: ChangedProfile
    workshop: Workshop
    jobs: tuple[TypicalJob, ...]


def priced_without(
    text: str,
    changes: Sequence[dict[str, Any]],
    faults: Sequence[ProfileFault],
    mark: str,
    context: QuoteContext,
) -> PricedProfile | None:
    """Work out typical jobs without the changes that are at fault; the file's values stand there.

    Parameters
    ----------
    mark
        Between whole and tenth in the maker's language: ``.`` or ``,``.

    Returns
    -------
    None where the profile has faults without them too, or too many.
    """
    kept = list(changes)
    if len(faults) > _MOST_FAULTS:
        return None
    for _ in range(_ROUNDS):
        gone = {place for fault in faults for change in kept for place in _at_fault(change, fault)}
        kept = [change for change in kept if not _is_within(change, gone)]
        try:
            now = changed(text, kept, mark, context)
            workshop = read_profile(now.text)
        except NotUnderstood:
            return None
        except ProfileError as error:
            faults = error.faults
        else:
            return PricedProfile(now, workshop, typical_jobs(replace(context, workshop=workshop)))
    return None


def _at_fault(change: _Change, fault: ProfileFault) -> Iterator[KeyPath]:
    """The place that a change leaves at fault, if it does: a value, or what was begun around it."""
    path = path_of(change["pointer"])
    depth = len(path)
    if change["op"] not in _EDITS:
        return
    if fault.path[:depth] == path:
        is_item = change["op"] in _BEGINS and fault.path[depth : depth + 1]
        yield fault.path[: depth + 1] if is_item and isinstance(fault.path[depth], int) else path
    elif path[: len(fault.path)] == fault.path:
        yield path


def _is_within(change: _Change, gone: set[KeyPath]) -> bool:
    """Whether a change is of a place that is left out, or begins one."""
    path = path_of(change["pointer"])
    if change["op"] in _BEGINS:
        return any(place[: len(path)] == path and len(place) - len(path) <= 1 for place in gone)
    return change["op"] in _EDITS and any(path[: len(place)] == place for place in gone)
