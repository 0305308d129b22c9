"""The documented schema, fuzzed on demand: ten times as many calls as every day."""

from typing import Any

import pytest
from schemathesis import Case

from api.fuzzing import DOCUMENT, ORDERS, answer_is_documented, each_day_alike


@pytest.mark.long
@DOCUMENT.include(method="GET").parametrize()
@each_day_alike(260)
def test_a_great_many_calls_are_fetched(case: Case[Any]) -> None:
    """No GET is answered by a fault of ours, each answer matches, each refusal is a problem."""
    answer_is_documented(case)


@pytest.mark.long
@ORDERS.include(method="POST").parametrize()
@each_day_alike(200)
def test_a_great_many_bodies_are_posted(case: Case[Any]) -> None:
    """Nor is any POST, of twenty times as many."""
    answer_is_documented(case)
