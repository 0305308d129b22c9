"""Fit the profile's hourly rates to reported jobs: which rate is off, by how much, how surely.

Each step's hours are linear in the profile's rates, so a rate's coefficient in a job (metres,
square metres, pieces, batches) is the growth of its hours when that rate is one hour larger.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, fields, replace

import numpy as np

from ledgerstone.arrays import FloatArray
from ledgerstone.price.costing import mould_counts
from ledgerstone.quote import Quote
from ledgerstone.wording import workshop_speech
from ledgerstone.work import Operation, operations
from ledgerstone.workshop.records import Workshop

RATE_SPREAD, MIN_RATE_H = 0.5, 0.02  # standard deviation of a rate: half of its value
STEP_SPREAD, MIN_STEP_H = 0.2, 0.03  # of a step's hours: a fifth; both by judgement
SURE_SPREADS = 2.0  # a rate is off if it moved by more than two standard deviations
_GROUPS = ("per_job", "per_pour", "per_mould", "per_piece")


@dataclass(frozen=True, slots=True)
class StepHours:
    """One step of one job, as the profile has it and as it was reported.

    Attributes
    ----------
    expected_hours, actual_hours
        Hours of hands, of all pieces.
    counts
        Of each rate by its key how much of what it is charged by the step has: metres, square
        metres, pieces or batches, as the rate's own unit is (``hours.per_mould.side_per_m``).
    """

    name: str
    expected_hours: float
    actual_hours: float
    counts: Mapping[str, float]


@dataclass(frozen=True, slots=True)
class LearnedRate:
    """One rate of the profile: its value in the file and its value fitted to the jobs.

    Attributes
    ----------
    was, now, spread
        In the file, fitted, and the fitted one's standard deviation: hours by what the rate is
        charged by (a metre, a square metre, a piece, a batch), which its key says.
    jobs
        How many jobs had it.
    """

    key: str
    was: float
    now: float
    spread: float
    jobs: int

    @property
    def spreads_off(self) -> float:
        """Change of the rate over its standard deviation, a pure number."""
        return abs(self.now - self.was) / self.spread

    @property
    def is_off(self) -> bool:
        """Whether the jobs contradict the file's value."""
        return self.spreads_off > SURE_SPREADS


def rates_of(workshop: Workshop) -> dict[str, float]:
    """Return every rate of labour of a profile by its key: hours by a metre, a piece and so on."""
    rates = {
        f"hours.{group}.{f.name}": float(getattr(getattr(workshop.hours, group), f.name))
        for group in _GROUPS
        for f in fields(getattr(workshop.hours, group))
    }
    rates |= {
        f"finishes.{finish.surface}.hours_per_m2": finish.hours_per_m2
        for finish in workshop.finishes
    }
    rates |= {f"sealers.{sealer.name}.hours_per_m2_coat": sealer.hours_per_m2_coat
              for sealer in workshop.sealers}  # fmt: skip
    return rates


def reported_steps(
    quote: Quote, actual: Mapping[str, float], workshop: Workshop
) -> list[StepHours]:
    """Compare the steps whose hours were reported with the profile's hours for them.

    A step has the job sheet's name, or the beginning of it; ``actual`` is its hours of hands.
    """
    expected = _hours_by_step(quote, workshop)
    more = {key: _hours_by_step(quote, changed) for key, changed in _one_hour_more(workshop)}
    found = []
    for reported, hours in actual.items():
        names = _steps_named(reported, expected)
        counts = {
            key: sum(by_step.get(name, 0.0) - expected[name] for name in names)
            for key, by_step in more.items()
        }
        used = {key: count for key, count in counts.items() if count > 1e-9}
        found.append(StepHours(reported, sum(expected[name] for name in names), hours, used))
    return found


def hours_by_rate(quote: Quote, workshop: Workshop) -> dict[str, float]:
    """Return the labour hours of a job by rate of the profile, by its key."""
    expected, rates = _hours_in_all(quote, workshop), rates_of(workshop)
    return {
        key: rates[key] * (_hours_in_all(quote, changed) - expected)
        for key, changed in _one_hour_more(workshop)
    }


def _hours_in_all(quote: Quote, workshop: Workshop) -> float:
    return sum(step.hands_hours for step in _work_listed(quote, workshop))


def unknown_steps(quote: Quote, actual: Mapping[str, float], workshop: Workshop) -> list[str]:
    """Return the reported steps that are not in the job."""
    expected = _hours_by_step(quote, workshop)
    return [reported for reported in actual if not _steps_named(reported, expected)]


def _steps_named(reported: str, expected: Mapping[str, float]) -> list[str]:
    wanted = reported.casefold()
    exact = [name for name in expected if name.casefold() == wanted]
    return exact or [name for name in expected if name.casefold().startswith(wanted)]


def _hours_by_step(quote: Quote, workshop: Workshop) -> dict[str, float]:
    """List a quote's work by a profile's rates, and return its hours by step."""
    speech = workshop_speech(workshop.workshop.language, workshop)
    hours: dict[str, float] = defaultdict(float)
    for step in _work_listed(quote, workshop):
        hours[speech.say(step.name)] += step.hands_hours
    return hours


def _work_listed(quote: Quote, workshop: Workshop) -> Sequence[Operation]:
    """List a quote's operations by a profile's rates."""
    handled = [assessed.handled for assessed in quote.strength]
    return operations(
        quote.order,
        quote.shapes,
        workshop,
        tuple(handling.under_cover_days for handling in handled),
        tuple(handling.way for handling in handled),
        min_age_days=tuple(handling.needs_age_days for handling in handled),
        moulds=mould_counts(quote.order, quote.work),
        bars=tuple(len(steel.bars) for steel in quote.steel),
        with_tiles=any(step.phase == "sample" for step in quote.work),
    )


def _one_hour_more(workshop: Workshop) -> Iterator[tuple[str, Workshop]]:
    """Yield each rate's key, and the profile with that rate one hour larger."""
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


def learned(
    reported: Sequence[Sequence[StepHours]], rates: Mapping[str, float]
) -> list[LearnedRate]:
    """Fit the rates to the reported hours of each job's steps.

    Parameters
    ----------
    reported
        The steps of each job.
    rates
        The file's values by key, hours, weighted as one observation of each rate.

    Source
    ------
    Regularised least squares, the estimate ``x̂ = x₀ + Λ⁻¹ AᵀW (y − A x₀)`` with
    ``Λ = AᵀWA + P₀``; its covariance is ``Λ⁻¹``, from memory. The scatter of steps is taken from
    the residuals once there are at least twice as many steps as rates.
    """
    steps = [step for job in reported for step in job if step.counts]
    keys = [key for key in rates if any(key in step.counts for step in steps)]
    if not keys:
        return []
    a = np.array([[step.counts.get(key, 0.0) for key in keys] for step in steps])
    before = np.array([rates[key] for key in keys])
    missing = np.array([step.actual_hours - step.expected_hours for step in steps])
    size = np.maximum([step.expected_hours for step in steps], MIN_STEP_H)
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
            sum(any(key in step.counts for step in job) for job in reported),
        )
        for k, key in enumerate(keys)
    ]


def _solved(
    a: FloatArray, missing: FloatArray, spread: FloatArray, before: FloatArray
) -> tuple[FloatArray, FloatArray]:
    """Return the changes of the rates, shape (n,), and their covariance, shape (n, n).

    Parameters
    ----------
    a
        Each step's count of each rate, shape (m, n).
    missing, spread
        Hours that each step took beyond the profile's, and their standard deviation, shape (m,).
    before
        The file's rates, shape (n,).
    """
    weight = 1 / spread**2
    prior = 1 / np.maximum(RATE_SPREAD * before, MIN_RATE_H) ** 2
    precision = a.T @ (weight[:, None] * a) + np.diag(prior)
    covariance: FloatArray = np.linalg.inv(precision).astype(np.float64)
    moved: FloatArray = covariance @ (a.T @ (weight * missing))
    return moved, covariance
