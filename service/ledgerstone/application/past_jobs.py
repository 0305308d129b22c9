"""A profile tried on past jobs: its figures against the reported ones."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
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
from ledgerstone.message import Figure, Message
from ledgerstone.quote import Quote, SentBack
from ledgerstone.wording import Speech, workshop_speech
from ledgerstone.workshop.reading.lines import KeyLines
from ledgerstone.workshop.records import Workshop

# The figures that a job may report, and their unit; money's is the workshop's.
MEASURES: Final[Mapping[str, str]] = MappingProxyType(
    {"charged": "", "weighed_kg": "kg", "hours": "h", "days": ""}
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
    stops: Message | str = ""
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
        line = re.search(r"at line (\d+)", str(reason))
        last = text.count("\n") + 1
        where = Message("jobs-not-toml", line=int(line[1]) if line is not None else last)
        raise NotUnderstood((Fault("", where),)) from reason
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
        faults = (Fault(f"{at}{found.pointer}", found.message) for found in fault.faults)
        raise NotUnderstood(tuple(faults)) from None
    except TooIntricate as fault:
        return TriedJob(job, {}, fault.message)
    if isinstance(answer, SentBack):
        stops = next(f.message for f in answer.findings if f.level == "stops")
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
        message = Message("job-step-unknown", known=known)
        raise NotUnderstood(tuple(Fault(f"{at}/{escape(step)}", message) for step in unknown))


def report(tried: Sequence[TriedJob], workshop: Workshop, speech: Speech) -> str:
    """Report the profile's deviation by job and in all, and which of its rates are off."""
    report = _Report(speech, workshop)
    lines: list[str] = []
    for job in tried:
        lines += ["", speech.say(Message("tried-job", name=job.job.name, day=job.job.ordered_on))]
        if job.stops:
            lines.append(f"  {speech.say(Message('tried-stopped', why=job.stops))}")
        lines += [report.compared(job, name) for name in job.measures]
    return "\n".join([*lines[1:], "", *report.in_all(tried), *report.by_step(tried), ""])


@dataclass(frozen=True, slots=True)
class _Report:
    """Says the deviations in one language."""

    speech: Speech
    workshop: Workshop

    def compared(self, job: TriedJob, name: str) -> str:
        expected, actual = job.expected[name], job.job.actual[name]
        places = 0 if name == "days" else 1 if name != "charged" else 2
        figures = Message(
            "tried-figures",
            expected=Figure(expected, places),
            actual=Figure(actual, places),
            unit=self._unit(name),
        )
        off = job.off_percent(name)
        return f"  {self._titled(name):<11} {self.speech.say(figures):<44} {off:+.0f} %"

    def in_all(self, tried: Sequence[TriedJob]) -> Iterator[str]:
        """Yield each figure's median deviation, and the profile's tables to check."""
        yield self.speech.say(Message("tried-all"))
        for name in MEASURES:
            offs = [job.off_percent(name) for job in tried if name in job.measures]
            if not offs:
                continue
            middle = median(offs)
            message = Message(
                "tried-middle",
                measure=name,
                count=len(offs),
                off=f"{middle:+.0f}",
                least=f"{min(offs):+.0f}",
                most=f"{max(offs):+.0f}",
                near="yes" if abs(middle) <= NEAR_PERCENT else "no",
            )
            yield f"  {self._titled(name):<11} {self.speech.say(message)}"

    def by_step(self, tried: Sequence[TriedJob]) -> Iterator[str]:
        """Yield each step's hours in all jobs, and the rates that they contradict."""
        steps_by_name: dict[str, list[StepHours]] = {}
        for step in (step for job in tried for step in job.steps):
            steps_by_name.setdefault(step.name, []).append(step)
        if not steps_by_name:
            return
        yield from ("", self.speech.say(Message("tried-by-step")))
        for name, steps in steps_by_name.items():
            expected = sum(step.expected_hours for step in steps)
            actual = sum(step.actual_hours for step in steps)
            off = f"{100 * (expected - actual) / actual:+.0f} %" if actual else ""
            hours = {"expected": Figure(expected, 1), "actual": Figure(actual, 1)}
            counted = self.speech.say(Message("tried-step", count=len(steps), **hours))
            yield f"  {name:<34} {counted:<44} {off}".rstrip()
        yield from self._rates(tried)

    def _rates(self, tried: Sequence[TriedJob]) -> Iterator[str]:
        rates = learned([job.steps for job in tried], rates_of(self.workshop))
        off_rates = sorted((rate for rate in rates if rate.is_off), key=lambda r: -r.spreads_off)
        yield from (
            "",
            self.speech.say(Message("tried-rates", off="some" if off_rates else "none")),
        )
        for rate in off_rates:
            values = {"was": f"{rate.was:g}", "spread": f"{rate.spread:.2g}"}
            beside = self.speech.say(Message("tried-rate", count=rate.jobs, **values))
            yield f"  {rate.key} = {rate.now:.2g}  # {beside}"

    def _titled(self, name: str) -> str:
        return self.speech.say(Message("tried-figure", measure=name))

    def _unit(self, name: str) -> str:
        if name == "days":
            return self.speech.say(Message("tried-days"))
        return MEASURES[name] or self.workshop.workshop.currency
