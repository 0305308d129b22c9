"""Laws of remedies, on random orders: what is shown is proved, and proved again by others."""

import copy
from typing import Any

import jsonpatch
import pytest
from hypothesis import HealthCheck, Phase, given, settings

from laws.plan_strategies import Json
from laws.strategies import TODAY, modest_orders, orders
from ledgerstone.quote import Quote, SentBack
from ledgerstone.wire.answering import Desk
from ledgerstone.wire.remedies_out import write_fixes, write_remedies
from ledgerstone.workshop import DEMONSTRATION, load_profile

DESK = Desk(load_profile(DEMONSTRATION), TODAY)
_quiet = (HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much)
# Without shrinking: a failing order says enough as it is, and every trial costs a plate.
few = settings(
    max_examples=12, deadline=None, suppress_health_check=_quiet, phases=[Phase.generate]
)
many = settings(
    max_examples=5000, deadline=None, suppress_health_check=_quiet, phases=[Phase.generate]
)


def stops(answer: Quote | SentBack) -> set[str]:
    """Ids of what stops an order."""
    return {finding.id for finding in answer.findings if finding.level == "stops"}


def patched(order: Json, patch: list[dict[str, Any]]) -> Json:
    """The order with a patch applied by the independent library."""
    made: Json = jsonpatch.apply_patch(copy.deepcopy(order), patch)
    return made


def hold_the_laws(order: Json) -> None:
    """Every remedy settles what it says and adds no stop; a fix quotes at the price it named."""
    answer = DESK.answer(order)
    if isinstance(answer, Quote):
        return
    before = stops(answer)
    for finding in answer.findings:
        for remedy in write_remedies(order, answer.found, finding.id):
            assert remedy["verified"] is True
            after = stops(DESK.answer(patched(order, remedy["patch"]), search=False))
            assert finding.id not in after
            assert not after & set(remedy["settles"])
            assert after <= before
    fixes = write_fixes(order, answer.found, sorted(before))
    for name in {"fix_all", "nearest_makeable"} & set(fixes):
        quote = DESK.answer(patched(order, fixes[name]["patch"]), search=False)
        assert isinstance(quote, Quote)
        assert f"{quote.price.total:.2f}" == fixes[name]["price"]["total"]
    assert {"fix_all", "nearest_makeable", "why_no_fix"} & set(fixes)


@few
@given(modest_orders())
def test_remedies_of_usual_orders_are_proved(order: Json) -> None:
    """On orders of usual sizes every remedy shown holds when others apply it."""
    hold_the_laws(order)


@few
@given(orders())
def test_remedies_of_any_order_are_proved(order: Json) -> None:
    """On orders over the whole contract every remedy shown holds when others apply it."""
    hold_the_laws(order)


@settings(max_examples=4, deadline=None, suppress_health_check=_quiet, phases=[Phase.generate])
@given(modest_orders())
def test_the_same_order_gets_the_same_remedies(order: Json) -> None:
    """What was answered before changes nothing about the answer."""
    fresh = Desk(DESK.workshop, TODAY)
    one, other = DESK.answer(order), fresh.answer(order)
    if isinstance(one, SentBack) and isinstance(other, SentBack):
        assert one.found == other.found


@pytest.mark.long
@many
@given(orders())
def test_remedies_of_thousands_of_orders_are_proved(order: Json) -> None:
    """The same law, over thousands."""
    hold_the_laws(order)
