"""A profile tried on jobs already done: what it would have said, against what really happened."""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from statistics import median
from types import MappingProxyType
from typing import Any, Final

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.errors import Fault, NotUnderstood, TooIntricate
from ledgerstone.message import Message
from ledgerstone.quote import SentBack
from ledgerstone.wording import english

# What a job may say that really happened, its unit, and where in the profile to look.
MEASURES: Final[Mapping[str, tuple[str, str]]] = MappingProxyType(
    {
        "charged": ("", "[rates], and the prices beside each material"),
        "weighed_kg": ("kg", "recipe.weighed_kg_per_m3 and rates.steel_kg_per_m2"),
        "hours": ("h", "[hours], and hours_per_m2 of the finish"),
        "days": ("days", "[days] and [calendar]"),
    }
)
NEAR_PERCENT: Final = 5.0
_KEYS: Final = frozenset({"name", "ordered_on", "order", *MEASURES})


@dataclass(frozen=True, slots=True)
class PastJob:
    """One job done: the order, the day it was taken on, and what really happened."""

    name: str
    ordered_on: date
    order: Any
    really: Mapping[str, float]


@dataclass(frozen=True, slots=True)
class Tried:
    """What the profile says of a past job; ``stops`` says why it would not have made it."""

    job: PastJob
    would: Mapping[str, float]
    stops: str = ""

    def off_percent(self, measure: str) -> float:
        """How far the profile is off, in percent of what really happened: positive is over."""
        really = self.job.really[measure]
        return 100 * (self.would[measure] - really) / really

    @property
    def measures(self) -> list[str]:
        """What can be compared."""
        return [name for name in MEASURES if name in self.would and name in self.job.really]


def read_jobs(text: str, opened: Callable[[str], Any]) -> tuple[PastJob, ...]:
    """Read past jobs from TOML; an order stands there as a table, or as a JSON file's name.

    Raises
    ------
    NotUnderstood
        With every fault at its pointer.
    """
    try:
        read = tomllib.loads(text)
    except tomllib.TOMLDecodeError as reason:
        raise NotUnderstood((Fault("", Message("jobs-not-toml", reason=str(reason))),)) from reason
    jobs = read.get("jobs")
    if not isinstance(jobs, list) or not jobs or not all(isinstance(job, dict) for job in jobs):
        raise NotUnderstood((Fault("/jobs", Message("jobs-without-table")),))
    faults = tuple(fault for i, job in enumerate(jobs) for fault in _faults(i, job))
    if faults:
        raise NotUnderstood(faults)
    return tuple(_job(i, job, opened) for i, job in enumerate(jobs))


def _faults(i: int, job: Mapping[str, Any]) -> Iterator[Fault]:
    for key in sorted(set(job) - _KEYS):
        yield Fault(f"/jobs/{i}/{key}", Message("job-key-unknown", known=", ".join(sorted(_KEYS))))
    if type(job.get("ordered_on")) is not date:
        yield Fault(f"/jobs/{i}/ordered_on", Message("job-day-missing"))
    if not isinstance(job.get("order"), dict | str):
        yield Fault(f"/jobs/{i}/order", Message("job-order-missing"))
    for key in MEASURES:
        value = job.get(key, 1)
        if isinstance(value, bool) or not isinstance(value, int | float) or not value > 0:
            yield Fault(f"/jobs/{i}/{key}", Message("job-figure-wrong", key=key))


def _job(i: int, job: Mapping[str, Any], opened: Callable[[str], Any]) -> PastJob:
    order = job["order"]
    really = {key: float(job[key]) for key in MEASURES if key in job}
    name = str(job.get("name", f"job {i + 1}"))
    return PastJob(
        name, job["ordered_on"], opened(order) if isinstance(order, str) else order, really
    )


def try_job(job: PastJob, context: QuoteContext) -> Tried:
    """Ask the profile about a past job, as on the day it was ordered.

    Raises
    ------
    NotUnderstood
    """
    then = replace(context, today=job.ordered_on)
    try:
        answer = answer_order(job.order, then, search=False)
    except TooIntricate as fault:
        return Tried(job, {}, english(fault.message))
    if isinstance(answer, SentBack):
        stops = next(f.says for f in answer.findings if f.level == "stops")
        return Tried(job, {}, stops)
    pieces = zip(answer.order.slabs, answer.weights, strict=True)
    return Tried(
        job,
        {
            "charged": float(answer.price.total),
            "weighed_kg": sum(slab.quantity * weight.slab_kg for slab, weight in pieces),
            "hours": sum(step.hands_minutes for step in answer.work) / 60,
            "days": float((answer.lead_time.ready_on - job.ordered_on).days),
        },
    )


def report(tried: Sequence[Tried], currency: str) -> str:
    """Say job by job, and in all, how far the profile is off."""
    lines: list[str] = []
    for one in tried:
        lines += ["", f"{one.job.name}, ordered {one.job.ordered_on.isoformat()}"]
        if one.stops:
            lines.append(f"  would have been sent back: {one.stops}")
        lines += [_compared(one, name, currency) for name in one.measures]
    return "\n".join([*lines[1:], "", *_in_all(tried), ""])


def _compared(one: Tried, name: str, currency: str) -> str:
    unit = MEASURES[name][0] or currency
    would, really = one.would[name], one.job.really[name]
    places = 0 if name == "days" else 1 if name != "charged" else 2
    off = one.off_percent(name)
    told = f"would {Decimal(would):.{places}f}, really {Decimal(really):.{places}f} {unit}"
    return f"  {name:<11} {told:<44} {off:+.0f} %"


def _in_all(tried: Sequence[Tried]) -> Iterator[str]:
    """Yield each measure's middle, and where the profile should be looked at."""
    yield "In all"
    for name, (_, where) in MEASURES.items():
        offs = [one.off_percent(name) for one in tried if name in one.measures]
        if not offs:
            continue
        middle = median(offs)
        jobs = f"{len(offs)} job{'' if len(offs) == 1 else 's'}"
        wide = f"{min(offs):+.0f} to {max(offs):+.0f} %"
        verdict = "near enough" if abs(middle) <= NEAR_PERCENT else f"off: look at {where}"
        yield f"  {name:<11} {middle:+.0f} % in the middle of {jobs} ({wide}): {verdict}"
