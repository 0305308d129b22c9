"""How much one request may have worked out: counted from the order, before any of it is done."""

from datetime import date
from functools import partial

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.errors import TooIntricate
from ledgerstone.order import Order
from ledgerstone.quote import quote, run_stages
from ledgerstone.remedies import OF_A_SLAB, Trials, find
from ledgerstone.remedies.budget import MAX_UNITS, Budget, layout_units
from ledgerstone.stages import StageContext
from ledgerstone.strength.effort import plate_effort, settling_effort
from ledgerstone.wording import english
from ledgerstone.workshop import Workshop
from support.calibration import JOBS
from support.documents import Json
from support.hardest import crowded, many_sided
from support.slabs import box, hole, slab_json
from support.stages import Stages

TODAY = date(2026, 11, 25)


def _order(workshop: Workshop, *slabs: Json) -> Order:
    return read_order({"slabs": list(slabs)}, workshop)


def _begun(order: Order) -> Budget:
    """A whole budget that has paid for an order's first check."""
    budget = Budget()
    budget.begin(order, TODAY)
    return budget


@pytest.mark.parametrize("name", list(JOBS))
def test_an_ordinary_job_leaves_most_of_the_budget(name: str, workshop: Workshop) -> None:
    """The first check of a job as workshops make them costs under a third of what there is."""
    assert _begun(read_order(JOBS[name], workshop)).left > 2 / 3 * MAX_UNITS


def test_an_order_past_the_budget_is_refused_before_any_work(workshop: Workshop) -> None:
    """Eight slabs of twenty openings over twenty units are too intricate; no day is looked at."""
    order = read_order(crowded(8, 20, "units", 20), workshop)
    with pytest.raises(TooIntricate) as refused:
        quote(order, StageContext(workshop, None, None))  # type: ignore[arg-type]  # never read
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


def test_more_to_choose_among_is_more_to_lay_out(workshop: Workshop) -> None:
    """A second opening, legs and a frilled outline each cost more to lay out, up to a bound."""
    one = slab_json(box(900, 600), hole(100, 300, 300))
    two = slab_json(box(900, 600), hole(100, 300, 300), hole(100, 600, 300))
    legs = {**one, "rests": {"kind": "legs", "at": [{"x": 50, "y": 50}] * 4, "pad": 90}}
    frills = [crowded(1, 2, "legs", 4, many_sided(points, 2600, 1150)) for points in (60, 200)]
    plain, *more = [layout_units(slab) for slab in _order(workshop, one, two, legs).slabs]
    assert min(more) > plain
    few, many = (layout_units(read_order(frill, workshop).slabs[0]) for frill in frills)
    assert max(more) < few == many < 5.0


def test_equal_slabs_are_paid_for_once(workshop: Workshop) -> None:
    """Eight alike cost little more than one; eight of their own sizes cost eight times as much."""
    one = MAX_UNITS - _begun(_order(workshop, slab_json(box(900, 600)))).left
    alike = MAX_UNITS - _begun(_order(workshop, *[slab_json(box(900, 600))] * 8)).left
    own = [slab_json(box(900 + k, 600)) for k in range(8)]
    each = MAX_UNITS - _begun(_order(workshop, *own)).left
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


def test_what_is_made_of_an_answer_is_paid_before_it(workshop: Workshop) -> None:
    """What is set aside is taken once, however often it is asked; what is not there is refused."""
    budget = _begun(_order(workshop, slab_json(box(900, 600))))
    left = budget.left
    for _ in range(2):
        budget.set_aside(10.0, 1)
        assert budget.left == pytest.approx(left - 10.0)
    with pytest.raises(TooIntricate):
        budget.set_aside(100.0, 1)


def test_a_check_that_ended_before_strength_is_charged_for_plans(workshop: Workshop) -> None:
    """What was set aside beside it stays paid."""
    order = _order(workshop, slab_json(box(900, 600), hole(100, 300, 300)))
    budget = Budget()
    budget.set_aside(10.0, 1)
    budget.begin(order, TODAY)
    checked = budget.left
    budget.had_plans_alone(order)
    assert checked < budget.left < MAX_UNITS - 10.0


def test_another_day_is_worked_out_again(workshop: Workshop) -> None:
    """One order twice in one request costs its plan again; on a colder day all of it."""
    order = _order(workshop, slab_json(box(900, 600)))
    budget = _begun(order)
    spent = [MAX_UNITS - budget.left]
    for day in (TODAY, date(2026, 7, 25)):
        left = budget.left
        budget.begin(order, day)
        spent.append(left - budget.left)
    assert spent[1] < 0.5 * spent[0]
    assert spent[2] == pytest.approx(spent[0])


def test_a_change_is_paid_for_by_each_who_tries_it(workshop: Workshop) -> None:
    """What was tried is tried again for its plan alone; another search of the order pays again."""
    changed = _order(workshop, slab_json(box(905, 600)))
    budget = _begun(_order(workshop, slab_json(box(900, 600))))
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
    stages = Stages(order, workshop, (), TODAY)
    alone = partial(run_stages, context=stages.context, groups=OF_A_SLAB)
    trials = Trials(lambda _state: None, alone)
    stops = run_stages(order, stages.context).stops
    found = find(stages.planned, stages.context, stops, trials, budget=Budget(units))
    assert found.fix_all is None
    assert found.why_not
