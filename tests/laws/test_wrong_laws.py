"""Laws of orders as people get them wrong: every change shown is proved, kept and said rightly."""

import json
import os
from collections import Counter
from typing import Final

import pytest

from laws.every_call import LONGEST_S, Service, faults_of
from laws.wrong_laws import broken
from ledgerstone.workshop import Workshop
from support.contexts import context_of
from support.strategies.orders import TODAY
from support.strategies.wrong_orders import wrong_order

EVERY_RUN = 4
WHOLE: Final = 5  # at every run all remedies are tried, and not the fix alone, of one in so many
LONG: Final = 10_000
SEED: Final = 31


def test_orders_got_wrong_are_answered_lawfully(workshop: Workshop) -> None:
    """No exception, no fix that does not quote or that takes a liberty, no wrong sentence."""
    context, wrong = context_of(workshop, TODAY), list[str]()
    for number in range(EVERY_RUN):
        order = wrong_order(SEED, number)
        found = broken(order, context, remedies=number % WHOLE == 0)
        wrong += [f"{fault}: {json.dumps(order)}" for fault in found]
    assert wrong == []


@pytest.mark.long
def test_thousands_of_orders_got_wrong_are_answered_lawfully(workshop: Workshop) -> None:
    """So are 10 000 through every call, each twice; what takes over 4 s of processor is listed.

    ``WRONG_PART=3/10`` does the third of ten parts.
    """
    part, parts = map(int, os.environ.get("WRONG_PART", "1/1").split("/"))
    service, context = Service(), context_of(workshop, TODAY)
    outcomes, wrong = Counter[int](), list[str]()
    for number in range(LONG // parts):
        order = wrong_order(100 + part, number)
        answers = service.answers(order)
        outcomes[answers.quote.status] += 1
        found = [*broken(order, context), *faults_of(answers)]
        wrong += [f"{fault}: {json.dumps(order)}" for fault in found]
        for call in answers.slow():
            print(f"{call.cpu_s:.1f} s, over {LONGEST_S:g}: {call.name} of {json.dumps(order)}")
    print(f"{sum(outcomes.values())} orders, by status {dict(outcomes)}; {len(wrong)} faults")
    assert wrong == []
