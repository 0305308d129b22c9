"""Whole orders through every call: nothing that is asked breaks the service."""

import json
import os
from collections import Counter
from typing import Final

import pytest

from laws.every_call import Answers, Service, faults_of
from laws.remedy_run import drawn
from ledgerstone.application import drawings as module
from ledgerstone.drawing import draw_plan
from support.demonstration import EXAMPLE_ORDER
from support.strategies.degenerate import degenerate_orders

EVERY_RUN = 8
SEARCHED: Final = 8  # at every run changes are searched for in one of so many
LONG: Final = 10_000


@pytest.fixture(scope="module")
def service() -> Service:
    """The service that the orders of this file are sent to."""
    return Service()


def test_the_example_order_goes_through_every_call(service: Service) -> None:
    """The order of the README is answered by every call, without a fault."""
    answers = service.answers(EXAMPLE_ORDER)
    assert faults_of(answers) == []
    assert {call.status for call in answers.calls} == {200}
    assert len(answers.calls) > 15


def test_a_fault_is_noticed(service: Service, monkeypatch: pytest.MonkeyPatch) -> None:
    """A drawing that raises, and one with a number that is none, are each among the faults."""

    def broken(*_: object, **__: object) -> str:
        raise ZeroDivisionError

    monkeypatch.setattr(module, "draw_plan", broken)
    wrong = faults_of(service.answers(EXAMPLE_ORDER))
    assert any("ZeroDivisionError" in fault for fault in wrong)
    monkeypatch.setattr(
        module, "draw_plan", lambda *a, **k: draw_plan(*a, **k).replace(' x="', ' x="nan ', 1)
    )
    assert any("nan" in fault for fault in faults_of(service.answers(EXAMPLE_ORDER)))


def test_degenerate_orders_go_through_every_call(service: Service) -> None:
    """Orders at the edges of the contract are answered by every call, and twice alike."""
    orders = drawn(degenerate_orders(), EVERY_RUN, 1)
    assert len(orders) == EVERY_RUN
    tried = [service.answers(order, searched=i % SEARCHED == 0) for i, order in enumerate(orders)]
    assert _broken(tried) == []
    assert {answers.quote.status for answers in tried} == {200, 400, 422}


@pytest.mark.long
def test_thousands_of_degenerate_orders_go_through_every_call(service: Service) -> None:
    """So are 10 000 of them, searched each; what takes over 4 s of processor time is listed.

    ``DEGENERATE_PART=3/10`` does the third of ten parts.
    """
    part, parts = map(int, os.environ.get("DEGENERATE_PART", "1/1").split("/"))
    outcomes: Counter[int] = Counter()
    broken: list[str] = []
    for order in drawn(degenerate_orders(), LONG // parts, 100 + part):
        answers = service.answers(order)
        outcomes[answers.quote.status] += 1
        broken += _broken([answers])
        for call in answers.slow():
            print(f"{call.cpu_s:.1f} s: {call.name} of {json.dumps(order)}")
    print(f"{sum(outcomes.values())} orders, by status {dict(outcomes)}; {len(broken)} faults")
    assert broken == []


def _broken(tried: list[Answers]) -> list[str]:
    """What went wrong, each with its order."""
    return [
        f"{fault}: {json.dumps(answers.order)}" for answers in tried for fault in faults_of(answers)
    ]
