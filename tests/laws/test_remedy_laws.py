"""Laws of remedies, on random orders: what is shown is proved, and proved again by others."""

import os
from typing import Final

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from laws.remedy_run import Tally, run_part, show
from support.contexts import context_of
from support.documents import Json
from support.oracles.remedy_laws import hold_the_laws
from support.strategies.orders import TODAY, aimed_orders, cases, modest_orders, orders
from support.strategies.other_workshops import WORKSHOPS
from support.strategies.tripping_orders import TRIPS

CONTEXTS: Final = {name: context_of(workshop, TODAY) for name, workshop in WORKSHOPS.items()}
STOPPED: Final = sorted({name for name in TRIPS if name not in ("no-day-free", "young-concrete")})
_quiet = (HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much)
# Without shrinking: a failing order says enough as it is, and every trial costs a plate.
few = settings(
    max_examples=cases(3), deadline=None, suppress_health_check=_quiet, phases=[Phase.generate]
)


@few
@given(modest_orders())
def test_remedies_of_usual_orders_are_proved(order: Json) -> None:
    """On orders of usual sizes every remedy shown holds when others apply it, and comes again."""
    hold_the_laws(order, CONTEXTS["usual"])


@few
@given(orders())
def test_remedies_of_any_order_are_proved(order: Json) -> None:
    """On orders over the whole contract every remedy shown holds when others apply it."""
    hold_the_laws(order, CONTEXTS["usual"], twice=False)


@settings(few, max_examples=cases(16))
@given(st.sampled_from(STOPPED).flatmap(lambda name: st.tuples(st.just(name), aimed_orders(name))))
def test_remedies_of_orders_aimed_at_a_check_are_proved(aimed: tuple[str, Json]) -> None:
    """So they do on orders that go wrong in one way after another, at workshops of all kinds."""
    name, order = aimed
    hold_the_laws(order, CONTEXTS[TRIPS[name][0]], twice=False)


@pytest.mark.long
def test_remedies_of_thousands_of_orders_are_proved() -> None:
    """The same laws over 6 000 orders, in which every check trips twenty times.

    ``REMEDY_LAW_PART=3/10`` does the third of ten parts; the sum of parts is then printed by
    ``python -m laws.remedy_run sum``.
    """
    part, parts = map(int, os.environ.get("REMEDY_LAW_PART", "1/1").split("/"))
    total: Tally = run_part(part, parts)
    show(total)
    assert not total.broken
    assert parts > 1 or not total.seldom()
