"""A profile tried on past jobs: its figures against the reported ones."""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from decimal import Decimal
from statistics import median
from types import MappingProxyType
from typing import Any, Final

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.learning import (
    StepHours,
    learned,
    rates_of,
    reported_steps,
    unknown_steps,
)
from ledgerstone.codec.order_in import escape
from ledgerstone.errors import Fault, NotUnderstood, TooIntricate
from ledgerstone.message import Message
from ledgerstone.quote import Quote, SentBack
from ledgerstone.wording import english, workshop_speech
from ledgerstone.workshop.lines import KeyLines
from ledgerstone.workshop.records import Workshop

# The figures that a job may report, their unit, and the profile's tables that they depend on.
MEASURES: Final[Mapping[str, tuple[str, str]]] = MappingProxyType(
    {
        "charged": ("", "[rates], and the prices beside each material"),
        "weighed_kg": ("kg", "recipe.weighed_kg_per_m3 and rates.steel_kg_per_m2"),
        "hours": ("h", "[hours], and hours_per_m2 of the finish"),
        "days": ("days", "[days] and [calendar]"),
    }
)
NEAR_PERCENT: Final = 5.0
_STEPS: Final = "hours_by_step"
_KEYS: Final = frozenset({"name", "ordered_on", "order", _STEPS, *MEASURES})


@dataclass(frozen=True, slots=True)
class PastJob:
    """One past job: the order, the day it was placed, and its reported figures."""

    name: str
    ordered_on: date
    order: Any
    actual: Mapping[str, float]
    by_step: Mapping[str, float] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class TriedJob:
    """The profile's figures for a past job; ``stops`` says why it would have been sent back."""

    job: PastJob
    expected: Mapping[str, float]
    stops: str = ""
    steps: tuple[StepHours, ...] = ()

    def off_percent(self, measure: str) -> float:
        """Deviation of the profile, percent of the reported figure: positive is too high."""
        actual = self.job.actual[measure]
        return 100 * (self.expected[measure] - actual) / actual

    @property
    def measures(self) -> list[str]:
        """The figures that can be compared."""
        return [name for name in MEASURES if name in self.expected and name in self.job.actual]


def read_jobs(text: str, opened: Callable[[str], Any]) -> tuple[PastJob, ...]:
    """Read past jobs from TOML; an order is a table, or the name of a JSON file.

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


def line_of(text: str, fault: Fault) -> int:
    """Return the line of a fault in the list, or that of the table around it."""
    parts = [part.replace("~1", "/").replace("~0", "~") for part in fault.pointer.split("/")[1:]]
    path = tuple(int(part) if part.isdigit() else part for part in parts)
    return KeyLines(text).line(path)


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
    by_step = job.get(_STEPS, {})
    if not isinstance(by_step, dict):
        yield Fault(f"/jobs/{i}/{_STEPS}", Message("job-steps-not-table"))
        return
    for step, value in by_step.items():
        if isinstance(value, bool) or not isinstance(value, int | float) or value < 0:
            yield Fault(f"/jobs/{i}/{_STEPS}/{escape(step)}", Message("job-step-hours-wrong"))


def _job(i: int, job: Mapping[str, Any], opened: Callable[[str], Any]) -> PastJob:
    order = job["order"]
    actual = {key: float(job[key]) for key in MEASURES if key in job}
    name = str(job.get("name", f"job {i + 1}"))
    by_step = {step: float(hours) for step, hours in job.get(_STEPS, {}).items()}
    document = opened(order) if isinstance(order, str) else order
    return PastJob(name, job["ordered_on"], document, actual, by_step)


def try_job(job: PastJob, context: QuoteContext, i: int = 0) -> TriedJob:
    """Quote a past job, the ``i``-th listed, by the profile on the day it was ordered.

    Raises
    ------
    NotUnderstood
        The order is not understood, or a step is reported that is not in it.
    """
    then = replace(context, today=job.ordered_on)
    try:
        answer = answer_order(job.order, then, search=False)
    except NotUnderstood as fault:
        at = f"/jobs/{i}/order"
        faults = (Fault(f"{at}{one.pointer}", one.message) for one in fault.faults)
        raise NotUnderstood(tuple(faults)) from None
    except TooIntricate as fault:
        return TriedJob(job, {}, english(fault.message))
    if isinstance(answer, SentBack):
        stops = next(f.says for f in answer.findings if f.level == "stops")
        return TriedJob(job, {}, stops)
    _check_steps(job, answer, context.workshop, f"/jobs/{i}/{_STEPS}")
    pieces = zip(answer.order.slabs, answer.weights, strict=True)
    return TriedJob(
        job,
        {
            "charged": float(answer.price.total),
            "weighed_kg": sum(slab.quantity * weight.slab_kg for slab, weight in pieces),
            "hours": sum(step.hands_minutes for step in answer.work) / 60,
            "days": float((answer.lead_time.ready_on - job.ordered_on).days),
        },
        steps=tuple(reported_steps(answer, job.by_step, context.workshop)),
    )


def _check_steps(job: PastJob, answer: Quote, workshop: Workshop, at: str) -> None:
    """Refuse reported hours of a step that is not in the job.

    Raises
    ------
    NotUnderstood
    """
    speech = workshop_speech(workshop.workshop.language, workshop)
    known = ", ".join(dict.fromkeys(speech.say(step.name) for step in answer.work))
    unknown = unknown_steps(answer, job.by_step, workshop)
    if unknown:
        says = Message("job-step-unknown", known=known)
        raise NotUnderstood(tuple(Fault(f"{at}/{escape(step)}", says) for step in unknown))


def report(tried: Sequence[TriedJob], workshop: Workshop) -> str:
    """Report the profile's deviation by job and in all, and which of its rates are off."""
    currency = workshop.workshop.currency
    lines: list[str] = []
    for one in tried:
        lines += ["", f"{one.job.name}, ordered {one.job.ordered_on.isoformat()}"]
        if one.stops:
            lines.append(f"  would have been sent back: {one.stops}")
        lines += [_compared(one, name, currency) for name in one.measures]
    return "\n".join([*lines[1:], "", *_in_all(tried), *_by_step(tried, workshop), ""])


def _compared(one: TriedJob, name: str, currency: str) -> str:
    unit = MEASURES[name][0] or currency
    expected, actual = one.expected[name], one.job.actual[name]
    places = 0 if name == "days" else 1 if name != "charged" else 2
    off = one.off_percent(name)
    figures = f"would {Decimal(expected):.{places}f}, really {Decimal(actual):.{places}f} {unit}"
    return f"  {name:<11} {figures:<44} {off:+.0f} %"


def _in_all(tried: Sequence[TriedJob]) -> Iterator[str]:
    """Yield each figure's median deviation, and the profile's tables to check."""
    yield "In all"
    for name, (_, where) in MEASURES.items():
        offs = [one.off_percent(name) for one in tried if name in one.measures]
        if not offs:
            continue
        middle = median(offs)
        jobs = _jobs(len(offs))
        wide = f"{min(offs):+.0f} to {max(offs):+.0f} %"
        verdict = "near enough" if abs(middle) <= NEAR_PERCENT else f"off: look at {where}"
        yield f"  {name:<11} {middle:+.0f} % in the middle of {jobs} ({wide}): {verdict}"


def _by_step(tried: Sequence[TriedJob], workshop: Workshop) -> Iterator[str]:
    """Yield each step's hours in all jobs, and the rates that they contradict."""
    steps_by_name: dict[str, list[StepHours]] = {}
    for one in tried:
        for step in one.steps:
            steps_by_name.setdefault(step.name, []).append(step)
    if not steps_by_name:
        return
    yield from ("", "By step")
    for name, steps in steps_by_name.items():
        expected, actual = sum(step.expected for step in steps), sum(step.actual for step in steps)
        off = f"{100 * (expected - actual) / actual:+.0f} %" if actual else ""
        counted = f"would {expected:.1f}, really {actual:.1f} h in {_jobs(len(steps))}"
        yield f"  {name:<34} {counted:<44} {off}".rstrip()
    rates = learned([one.steps for one in tried], rates_of(workshop))
    off_rates = sorted((rate for rate in rates if rate.is_off), key=lambda rate: -rate.spreads_off)
    yield from ("", "Rates to write" if off_rates else "Rates: none is surely off yet")
    for rate in off_rates:
        beside = f"# was {rate.was:g}; ± {rate.spread:.2g} from {_jobs(rate.jobs)}"
        yield f"  {rate.key} = {rate.now:.2g}  {beside}"


def _jobs(count: int) -> str:
    return f"{count} job{'' if count == 1 else 's'}"
