"""What jobs already done say of the profile's hours: which rate is off, by how much, how sure.

Each step's hours are linear in the profile's rates, so what a rate counts in a job (metres, square
metres, pieces, batches) is what the list of work grows by where that rate is an hour more.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, fields, replace

import numpy as np
from numpy.typing import NDArray

from ledgerstone.price.costing import mould_counts
from ledgerstone.quote import Quote
from ledgerstone.wording import workshop_speech
from ledgerstone.work import operations
from ledgerstone.workshop.records import Workshop

Floats = NDArray[np.float64]

RATE_SPREAD, LEAST_RATE_H = 0.5, 0.02  # a rate of the file is taken to be right within half
STEP_SPREAD, LEAST_STEP_H = 0.2, 0.03  # a step of one job strays by a fifth; both our judgement
SURE_SPREADS = 2.0  # a rate is off where it has moved by more than twice its spread
_GROUPS = ("per_job", "per_pour", "per_mould", "per_piece")


@dataclass(frozen=True, slots=True)
class StepHours:
    """One step of one job: its hours by the profile, what each rate counts in it, and really."""

    name: str
    would: float
    really: float
    counts: Mapping[str, float]


@dataclass(frozen=True, slots=True)
class LearnedRate:
    """One rate of the profile, as the file has it and as the jobs have it."""

    key: str
    was: float
    now: float
    spread: float
    jobs: int

    @property
    def spreads_off(self) -> float:
        """How far it has moved, in its own spreads."""
        return abs(self.now - self.was) / self.spread

    @property
    def is_off(self) -> bool:
        """Whether the jobs say that it is another one."""
        return self.spreads_off > SURE_SPREADS


def rates_of(workshop: Workshop) -> dict[str, float]:
    """Return every rate of hours in a profile, by its key."""
    rates = {
        f"hours.{group}.{f.name}": float(getattr(getattr(workshop.hours, group), f.name))
        for group in _GROUPS
        for f in fields(getattr(workshop.hours, group))
    }
    rates |= {f"finishes.{one.surface}.hours_per_m2": one.hours_per_m2 for one in workshop.finishes}
    rates |= {f"sealers.{one.name}.hours_per_m2_coat": one.hours_per_m2_coat
              for one in workshop.sealers}  # fmt: skip
    return rates


def steps_told(quote: Quote, really: Mapping[str, float], workshop: Workshop) -> list[StepHours]:
    """Set the steps whose hours were told beside what the profile says of them.

    A step is named as the job sheet names it, or by how its name begins.
    """
    would = _hours_by_step(quote, workshop)
    more = {key: _hours_by_step(quote, changed) for key, changed in _one_hour_more(workshop)}
    found = []
    for told, hours in really.items():
        names = _steps_named(told, would)
        counts = {
            key: sum(by_step.get(name, 0.0) - would[name] for name in names)
            for key, by_step in more.items()
        }
        used = {key: count for key, count in counts.items() if count > 1e-9}
        found.append(StepHours(told, sum(would[name] for name in names), hours, used))
    return found


def unknown_steps(quote: Quote, really: Mapping[str, float], workshop: Workshop) -> list[str]:
    """Return the steps told that the job has none of."""
    would = _hours_by_step(quote, workshop)
    return [told for told in really if not _steps_named(told, would)]


def _steps_named(told: str, would: Mapping[str, float]) -> list[str]:
    wanted = told.casefold()
    exact = [name for name in would if name.casefold() == wanted]
    return exact or [name for name in would if name.casefold().startswith(wanted)]


def _hours_by_step(quote: Quote, workshop: Workshop) -> dict[str, float]:
    """List a quote's work anew by a profile's hours, and add it up by step."""
    handled = [one.handled for one in quote.strength]
    steps = operations(
        quote.order,
        quote.shapes,
        workshop,
        tuple(one.cover_days for one in handled),
        tuple(one.way for one in handled),
        min_age_days=tuple(one.needs_age_days for one in handled),
        moulds=mould_counts(quote.order, quote.work),
        bars=tuple(len(steel.bars) for steel in quote.steel),
        with_tiles=any(step.stage == "sample" for step in quote.work),
    )
    speech = workshop_speech(workshop.workshop.language, workshop)
    hours: dict[str, float] = defaultdict(float)
    for step in steps:
        hours[speech.say(step.name)] += step.hands_hours
    return hours


def _one_hour_more(workshop: Workshop) -> Iterator[tuple[str, Workshop]]:
    """Yield the profile with one rate an hour more, for each."""
    hours = workshop.hours
    for group in _GROUPS:
        record = getattr(hours, group)
        for f in fields(record):
            longer = replace(record, **{f.name: getattr(record, f.name) + 1.0})
            changed = replace(workshop, hours=replace(hours, **{group: longer}))
            yield f"hours.{group}.{f.name}", changed
    for i, finish in enumerate(workshop.finishes):
        slower = replace(finish, hours_per_m2=finish.hours_per_m2 + 1.0)
        finishes = (*workshop.finishes[:i], slower, *workshop.finishes[i + 1 :])
        yield f"finishes.{finish.surface}.hours_per_m2", replace(workshop, finishes=finishes)
    for i, sealer in enumerate(workshop.sealers):
        thicker = replace(sealer, hours_per_m2_coat=sealer.hours_per_m2_coat + 1.0)
        sealers = (*workshop.sealers[:i], thicker, *workshop.sealers[i + 1 :])
        yield f"sealers.{sealer.name}.hours_per_m2_coat", replace(workshop, sealers=sealers)


# --- least squares --------------------------------------------------------------------------


def learned(told: Sequence[Sequence[StepHours]], rates: Mapping[str, float]) -> list[LearnedRate]:
    """Fit the rates to what each job's steps really took.

    Parameters
    ----------
    told
        Of each job, its steps.
    rates
        The file's values, which count as much as one observation of each rate.

    Notes
    -----
    Source: regularised least squares, the estimate ``x̂ = x₀ + Λ⁻¹ AᵀW (y − A x₀)`` with
    ``Λ = AᵀWA + P₀``; its covariance is ``Λ⁻¹``, from memory. The scatter of steps is taken from
    the residuals once there are as many steps again as rates.
    """
    steps = [step for job in told for step in job if step.counts]
    keys = [key for key in rates if any(key in step.counts for step in steps)]
    if not keys:
        return []
    a = np.array([[step.counts.get(key, 0.0) for key in keys] for step in steps])
    before = np.array([rates[key] for key in keys])
    missing = np.array([step.really - step.would for step in steps])
    size = np.maximum([step.would for step in steps], LEAST_STEP_H)
    found, covariance = _solved(a, missing, STEP_SPREAD * size, before)
    if len(steps) >= 2 * len(keys):
        left = (missing - a @ found) / size
        scatter = float(np.sqrt(np.sum(left**2) / (len(steps) - len(keys))))
        found, covariance = _solved(a, missing, max(scatter, STEP_SPREAD / 10) * size, before)
    spreads = np.sqrt(np.diag(covariance))
    return [
        LearnedRate(
            key,
            rates[key],
            max(0.0, float(before[k] + found[k])),
            float(spreads[k]),
            sum(any(key in step.counts for step in job) for job in told),
        )
        for k, key in enumerate(keys)
    ]


def _solved(a: Floats, missing: Floats, spread: Floats, before: Floats) -> tuple[Floats, Floats]:
    """Return what the rates have moved by, and their covariance."""
    weight = 1 / spread**2
    prior = 1 / np.maximum(RATE_SPREAD * before, LEAST_RATE_H) ** 2
    precision = a.T @ (weight[:, None] * a) + np.diag(prior)
    covariance: Floats = np.linalg.inv(precision).astype(np.float64)
    moved: Floats = covariance @ (a.T @ (weight * missing))
    return moved, covariance
