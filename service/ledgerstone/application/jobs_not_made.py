"""Which value of a profile makes a typical job impossible, for the maker to look at again."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.typical_jobs import TypicalJob, typical_job
from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message, Percent
from ledgerstone.workshop.reading.loader import example_for, load_profile
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.starting.beginning import as_started

_TOO_HEAVY: Final = "too-heavy-to-handle"  # what the job says that no way takes
_UNTESTED: Final[KeyPath] = ("concrete", "untested_percent")
# Single values first, then all of a table: what is typed of it together.
_SUSPECTS: Final[tuple[KeyPath, ...]] = (
    _UNTESTED,
    *(("steel", key) for key in ("mesh_pitch_mm", "mesh_wire_mm", "bar_mm", "yield_mpa")),
    *(("steel", key) for key in ("material", "cover_mm")),
    *(("recipe", key) for key in ("largest_aggregate_mm", "fck_mpa", "face_coat")),
    ("concrete", "tested"),
    *(("lifting", key) for key in ("most_people", "pallets", "van")),
    *(("table", key) for key in ("length_mm", "width_mm")),
    *(("shaping", key) for key in ("thicknesses_mm", "strips")),
    ("mixer", "working_l"),
    ("handling", "ways"),
    *((table,) for table in ("steel", "lifting", "table", "concrete", "shaping", "handling")),
)
# Where a form asks for what stands in lists or in a whole table.
_FIELD_OF: Final[dict[KeyPath, KeyPath]] = {
    ("handling", "ways"): ("handling", "ways", 0, "most_kg"),
    ("handling",): ("handling", "ways", 0, "most_kg"),
    ("steel",): ("steel", "material"),
    ("table",): ("table", "length_mm"),
    ("lifting",): ("lifting", "most_people"),
    _UNTESTED: ("recipe", "fck_mpa"),
    ("concrete",): ("recipe", "fck_mpa"),
    ("shaping",): ("shaping", "thicknesses_mm"),
    ("recipe", "face_coat"): ("recipe", "largest_aggregate_mm"),
    ("concrete", "tested"): ("recipe", "fck_mpa"),
    ("shaping", "strips"): ("shaping", "thicknesses_mm"),
    ("lifting", "pallets"): ("lifting", "most_people"),
    ("lifting", "van"): ("lifting", "most_people"),
}
# What a job may be sent back by, and the field of a form at which to say so.
FIELD_OF_SUSPECT: Final[dict[KeyPath, KeyPath]] = {
    path: _FIELD_OF.get(path, path) for path in _SUSPECTS
}


@dataclass(frozen=True, slots=True)
class JobNotMade:
    """The place of a value by which a job is sent back, and what to say there."""

    job: TypicalJob
    path: KeyPath
    says: Message


def jobs_not_made(
    jobs: Sequence[TypicalJob], context: QuoteContext, *, is_brief: bool = False
) -> Iterator[JobNotMade]:
    """Yield each job that is sent back by a value, and the value's place.

    It is one without which the job is quoted: as a new file of the country has it. Where no single
    value nor table is, nothing is said but the job's own findings.

    Parameters
    ----------
    is_brief
        Whether all values are tried on the first of the jobs alone; on the others that one which
        the first was blamed on.
    """
    stopped = [job for job in jobs if job.stops is not None]
    if not stopped:
        return
    workshop = context.workshop
    usual = as_started(load_profile(example_for(workshop.workshop.country)))
    suspects = tuple(FIELD_OF_SUSPECT)
    for job in stopped:
        tried = sorted(suspects, key=lambda path: not _lifts(path)) if _is_heavy(job) else suspects
        path = next((p for p in tried if _goes_without(job, p, context, usual)), None)
        if path is not None:
            untested = workshop.concrete.untested_percent if path == _UNTESTED else None
            yield JobNotMade(job, FIELD_OF_SUSPECT[path], _blamed(job, untested))
        if is_brief and job is stopped[0]:
            suspects = () if path is None else (path,)


def not_made(job: TypicalJob) -> Message:
    """Say that a job is sent back, and why, where no value is to blame."""
    return Message("profile-not-made-at-all", job=job.message, why=job.stops or "")


def _blamed(job: TypicalJob, untested: float | None) -> Message:
    """Say beside a value that a job is sent back by it, and why.

    Parameters
    ----------
    untested
        The share of its strength that an untested mix is trusted with, where that decides.
    """
    named, why = job.message, job.stops or ""
    if untested is None:
        lifts = "yes" if _is_heavy(job) else "no"
        return Message("profile-not-made", job=named, why=why, lifts=lifts)
    percent = Percent(Decimal(f"{untested:g}"))
    return Message("profile-not-made-untested", job=named, why=why, percent=percent)


def _is_heavy(job: TypicalJob) -> bool:
    return isinstance(job.stops, Message) and job.stops.name == _TOO_HEAVY


def _lifts(path: KeyPath) -> bool:
    """Whether a value tells who or what lifts a slab."""
    return path[0] in ("lifting", "handling")


def _goes_without(job: TypicalJob, path: KeyPath, context: QuoteContext, usual: Workshop) -> bool:
    """Whether a job is quoted once a value is as usual; not where it is so already."""
    if _at(context.workshop, path) == _at(usual, path):
        return False
    changed = _with(context.workshop, path, _at(usual, path))
    made = typical_job(job.name, replace(context, workshop=changed), says_why=False)
    return made.stops is None


def _at(workshop: Workshop, path: KeyPath) -> object:
    """The table or the value of a profile at a place."""
    found: object = workshop
    for key in path:
        found = getattr(found, str(key))
    return found


def _with(workshop: Workshop, path: KeyPath, value: object) -> Workshop:
    """The profile with another table, or another value in one."""
    table, *keys = map(str, path)
    inner = replace(getattr(workshop, table), **{keys[0]: value}) if keys else value
    changed: dict[str, Any] = {table: inner}
    return replace(workshop, **changed)
