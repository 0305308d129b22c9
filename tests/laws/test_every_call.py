"""Whole orders through every call: nothing that is asked breaks the service."""

import pytest

from conftest import EXAMPLE_ORDER
from laws.every_call import Service, faults_of
from ledgerstone.application import drawings as module
from ledgerstone.drawing import draw_plan


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
