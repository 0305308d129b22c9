"""Jobs done teach the file its rates: which is off, by how much, and how sure that is."""

from dataclasses import replace
from datetime import date
from functools import cache
from io import StringIO
from pathlib import Path

import numpy as np
import pytest

from ledgerstone.application.answering import answer_order
from ledgerstone.application.learning import (
    MIN_RATE_H,
    RATE_SPREAD,
    STEP_SPREAD,
    LearnedRate,
    StepHours,
    learned,
    rates_of,
    reported_steps,
)
from ledgerstone.cli.past_jobs import run
from ledgerstone.quote import Quote
from ledgerstone.wording import Message, english
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile
from support.contexts import context_of
from support.slabs import box, hole, slab_json

HONED = {"finish": {"surface": "honed", "sealer": "matt"}, "rests": {"kind": "full"}}
SIZES = ((600, 400), (1200, 500), (2000, 600), (900, 300), (1500, 560))
SLOW_HONING, SLOW_SIDES = "finishes.honed.hours_per_m2", "hours.per_mould.side_per_m"
STEPS = ("Make the mould", "Run the bead", "Grind", "Finish: honed", "Demould")


@cache
def jobs_of() -> tuple[Quote, ...]:
    """Five honed slabs of several sizes, one with an opening, as the demonstration makes them."""
    context = context_of(load_profile(DEMONSTRATION), date(2026, 3, 2))
    quotes = []
    for length, width in SIZES:
        openings = [hole(200, length / 2, width / 2)] if length == 1500 else []
        slab = slab_json(box(length, width), *openings) | HONED
        answer = answer_order({"slabs": [slab]}, context, search=False)
        assert isinstance(answer, Quote)
        quotes.append(answer)
    return tuple(quotes)


def slower(workshop: Workshop) -> Workshop:
    """A workshop that hones at 5 h/m² and rips sides at 0.35 h/m; the file says 3.4 and 0.19."""
    finishes = tuple(
        replace(one, hours_per_m2=5.0) if one.surface == "honed" else one
        for one in workshop.finishes
    )
    sides = replace(workshop.hours.per_mould, side_per_m=0.35)
    return replace(workshop, finishes=finishes, hours=replace(workshop.hours, per_mould=sides))


def told(workshop: Workshop, count: int, scatter: float) -> list[list[StepHours]]:
    """So many jobs as the slower workshop does them, each step straying at random."""
    random, truth = np.random.default_rng(2026), slower(workshop)
    jobs = []
    for n in range(count):
        quote = jobs_of()[n % len(SIZES)]
        right = reported_steps(quote, dict.fromkeys(STEPS, 1.0), truth)
        strays = np.exp(random.normal(0.0, scatter, len(right)))
        actual = {s.name: s.expected_hours * stray for s, stray in zip(right, strays, strict=True)}
        jobs.append(reported_steps(quote, actual, workshop))
    return jobs


def rates_by_key(workshop: Workshop, count: int, scatter: float) -> dict[str, LearnedRate]:
    """Fit the file's rates to so many jobs."""
    return {one.key: one for one in learned(told(workshop, count, scatter), rates_of(workshop))}


def test_what_a_rate_counts_is_what_the_job_has(workshop: Workshop) -> None:
    """Metres of outline, square metres and pieces of a slab of 1200 by 500, by hand."""
    steps = {
        one.name: one for one in reported_steps(jobs_of()[1], dict.fromkeys(STEPS, 1.0), workshop)
    }
    mould = steps["Make the mould"].counts
    assert mould == pytest.approx({"hours.per_mould.base": 1.0, SLOW_SIDES: 3.4})
    assert steps["Finish: honed"].counts == pytest.approx({SLOW_HONING: 0.6 / 2})
    assert steps["Grind"].counts == pytest.approx({SLOW_HONING: 0.6 / 2})
    assert steps["Demould"].counts == pytest.approx({"hours.per_piece.demould": 1.0})


def test_the_fit_is_that_of_least_squares(workshop: Workshop) -> None:
    """The file's values as rows of their own: numpy's least squares finds the same rates."""
    jobs, rates = told(workshop, 1, 0.1), rates_of(workshop)
    found = learned(jobs, rates)
    keys, steps = [one.key for one in found], [step for job in jobs for step in job]
    spread = [STEP_SPREAD * step.expected_hours for step in steps]
    prior = [max(RATE_SPREAD * rates[key], MIN_RATE_H) for key in keys]
    rows = [[step.counts.get(key, 0) for key in keys] for step in steps]
    a = np.vstack([np.array(rows) / np.array(spread)[:, None], np.diag(1 / np.array(prior))])
    short = [
        (step.actual_hours - step.expected_hours) / s for step, s in zip(steps, spread, strict=True)
    ]
    moved = np.linalg.lstsq(a, np.array([*short, *[0.0] * len(keys)]), rcond=None)[0]
    assert len(steps) < 2 * len(keys)  # too few to tell how they scatter
    now = [one.now - rates[one.key] for one in found]
    assert now == pytest.approx(moved, abs=1e-9)


@pytest.mark.parametrize("count", [5, 10, 50])
def test_the_rates_that_are_off_are_found(workshop: Workshop, count: int) -> None:
    """With five jobs, ten and fifty, each step straying by 15 %: both rates, and no other."""
    rates = rates_by_key(workshop, count, 0.15)
    off = {key for key, rate in rates.items() if rate.is_off}
    assert off <= {SLOW_HONING, SLOW_SIDES}
    assert SLOW_HONING in off
    for key, truth in ((SLOW_HONING, 5.0), (SLOW_SIDES, 0.35)):
        assert abs(rates[key].now - truth) <= 3 * rates[key].spread
    assert rates[SLOW_HONING].jobs == count


def test_more_jobs_are_surer(workshop: Workshop) -> None:
    """The spread falls about as the root of the jobs: fifty tell three times as well as five."""
    few, many = (rates_by_key(workshop, count, 0.15)[SLOW_HONING] for count in (5, 50))
    assert many.spread < few.spread / 2
    assert abs(many.now - 5.0) < 0.25


def test_a_file_that_is_right_is_left_as_it_is(workshop: Workshop) -> None:
    """Jobs that took what the file says move no rate."""
    jobs = [reported_steps(quote, dict.fromkeys(STEPS, 1.0), workshop) for quote in jobs_of()]
    right = [[replace(step, actual_hours=step.expected_hours) for step in job] for job in jobs]
    assert not any(rate.is_off for rate in learned(right, rates_of(workshop)))
    assert all(rate.now == pytest.approx(rate.was) for rate in learned(right, rates_of(workshop)))


ORDER = (
    'order = { slabs = [{ outline = { kind = "rectangle", length = 1200, width = 500 },'
    ' thickness = 40, rests = { kind = "full" }, finish = { surface = "honed" } }] }\n'
)


def listed(tmp_path: Path, *jobs: str) -> tuple[int, str, str]:
    """Write a list of jobs and try the demonstration on it."""
    file = tmp_path / "jobs.toml"
    file.write_text("".join(f"[[jobs]]\nordered_on = 2026-03-02\n{ORDER}{one}\n" for one in jobs))
    out, err = StringIO(), StringIO()
    return run([str(file)], out, err), out.getvalue(), err.getvalue()


def test_the_command_says_which_rate_to_write(tmp_path: Path) -> None:
    """Six jobs whose honing took half as long again: the key, its figure and its spread."""
    slow = 'hours_by_step = { "Finish: honed" = 1.5, "Grind" = 1.5, "Demould" = 0.15 }'
    status, out, _ = listed(tmp_path, *[slow] * 6)
    assert status == 0
    (line,) = (row for row in out.splitlines() if SLOW_HONING in row)
    assert line.startswith(f"  {SLOW_HONING} = 5  # was 3.4; ± ")
    assert "from 6 jobs" in line
    assert "hours.per_piece.demould" not in out


@pytest.mark.parametrize(
    ("wrong", "line", "says"),
    [
        ("hours = -1", 8, english(Message("job-figure-wrong", key="hours"))),
        ("hours_by_step = 3", 8, "as a table"),
        ('hours_by_step = { "Demould" = -1 }', 8, "nought or more"),
        ('hours_by_step = { "Plastering" = 1 }', 8, "such step. It has"),
        ("hurs = 3", 8, "A job has"),
    ],
)
def test_a_fault_names_its_file_and_line(tmp_path: Path, wrong: str, line: int, says: str) -> None:
    """Where an editor can jump to it, in the second job here."""
    status, _, err = listed(tmp_path, "hours = 5", wrong)
    assert status == 1
    assert err.startswith(f"{tmp_path / 'jobs.toml'}:{line}: /jobs/1/")
    assert says in err
