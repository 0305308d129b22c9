"""The documented schema, fuzzed on demand: ten times as many calls as every day."""

import pytest

from api.fuzzing import CALLS, allowed_bodies, every_body, hold_call_to_document


@pytest.mark.long
@pytest.mark.parametrize("path", [path for method, path in CALLS if method == "GET"])
def test_a_great_many_calls_are_fetched(path: str) -> None:
    """No GET is answered by an internal fault, each answer matches, each refusal is a problem."""
    hold_call_to_document(every_body(), "GET", path, 260)


@pytest.mark.long
@pytest.mark.parametrize("path", [path for method, path in CALLS if method == "POST"])
def test_a_great_many_bodies_are_posted(path: str) -> None:
    """Nor is any POST, of twenty times as many."""
    hold_call_to_document(allowed_bodies(), "POST", path, 200)
