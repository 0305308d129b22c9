"""How much one request may have worked out: counted from the order, before any of it is done."""

from datetime import date
from functools import partial

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.errors import TooIntricate
from ledgerstone.order import Order
from ledgerstone.quote import quote, work_out
from ledgerstone.remedies import OF_A_SLAB, Trials, find
from ledgerstone.remedies.budget import MOST_UNITS, Budget, budget_for
from ledgerstone.strength.effort import plate_effort, settling_effort
from ledgerstone.wording import english
from ledgerstone.workshop import Workshop
from support.calibration import JOBS
from support.hardest import crowded
from support.slabs import Json, box, hole, slab_json
from support.stages import Stages


def _order(workshop: Workshop, *slabs: Json) -> Order:
    return read_order({"slabs": list(slabs)}, workshop)


@pytest.mark.parametrize("name", list(JOBS))
def test_an_ordinary_job_leaves_most_of_the_budget(name: str, workshop: Workshop) -> None:
    """The first check of a job as workshops make them costs under a third of what there is."""
    assert budget_for(read_order(JOBS[name], workshop)).left > 2 / 3 * MOST_UNITS


def test_an_order_past_the_budget_is_refused_before_any_work(workshop: Workshop) -> None:
    """Eight slabs of twenty openings over twenty units are too intricate; no day is looked at."""
    order = read_order(crowded(8, 20, "units", 20), workshop)
    with pytest.raises(TooIntricate) as refused:
        quote(order, workshop=workshop, bookings=None, today=None)  # type: ignore[arg-type]  # never read
    assert "split it" in english(refused.value.message)
    assert refused.value.slabs == 8


def test_more_of_anything_is_more_work(workshop: Workshop) -> None:
    """More openings, more stations and a larger slab each cost more."""
    plain = slab_json(box(900, 600))
    more = (
        slab_json(box(1800, 600)),
        slab_json(box(900, 600), hole(100, 300, 300)),
        slab_json(box(900, 600), rests={"kind": "legs", "at": [{"x": 50, "y": 50}] * 4, "pad": 90}),
    )
    (least,) = _order(workshop, plain).slabs
    for slab in _order(workshop, *more).slabs:
        assert plate_effort(slab) + settling_effort(slab) > plate_effort(least) + settling_effort(
            least
        )


def test_equal_slabs_are_paid_for_once(workshop: Workshop) -> None:
    """Eight alike cost little more than one; eight of their own sizes cost eight times as much."""
    one = MOST_UNITS - budget_for(_order(workshop, slab_json(box(900, 600)))).left
    alike = MOST_UNITS - budget_for(_order(workshop, *[slab_json(box(900, 600))] * 8)).left
    own = [slab_json(box(900 + k, 600)) for k in range(8)]
    each = MOST_UNITS - budget_for(_order(workshop, *own)).left
    assert alike < 2.5 * one
    assert each > 7 * one


def test_what_is_kept_for_later_is_not_spent() -> None:
    """A budget that keeps units spends only the rest, and one of several parts of it."""
    budget = Budget(100.0)
    budget.keep(40.0, share=0.5, among=3)
    assert not budget.spends(10.1)
    assert budget.spends(10.0)
    budget.keep(0.0)
    assert budget.spends(90.0)
    assert not budget.spends(0.1)


def test_a_change_is_paid_for_by_each_who_tries_it(workshop: Workshop) -> None:
    """What was tried is tried again for its plan alone; another search of the order pays anew."""
    changed = _order(workshop, slab_json(box(905, 600)))
    budget = budget_for(_order(workshop, slab_json(box(900, 600))))
    costs = []
    for by in ("alone", "alone", "whole"):
        left = budget.left
        assert budget.tries(changed, by=by)
        costs.append(left - budget.left)
    assert costs[1] < costs[2] <= costs[0]


@pytest.mark.parametrize("units", [0.0, 3.0, 6.0, 12.0])
def test_a_search_that_runs_out_says_so(workshop: Workshop, units: float) -> None:
    """However little is left, the search of two slabs, one of them fine, ends with an answer."""
    document = {"slabs": [slab_json(box(900, 600), thickness=20), slab_json(box(905, 600))]}
    order = read_order(document, workshop)
    stages = Stages(order, workshop, (), date(2026, 11, 25))
    alone = partial(work_out, context=stages.context, stages=OF_A_SLAB)
    trials = Trials(lambda _state: None, alone)
    stops = work_out(order, stages.context).stops
    found = find(stages.planned, stages.context, stops, trials, budget=Budget(units))
    assert found.fix_all is None
    assert found.why_not
