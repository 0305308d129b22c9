"""A language's messages are parsed when they are first said."""

import sys
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor

import pytest

from ledgerstone.wording.bundles import MessageBundle


@pytest.fixture
def hasty() -> Iterator[None]:
    """Have the interpreter change threads as often as it can."""
    before = sys.getswitchinterval()
    sys.setswitchinterval(1e-6)
    yield
    sys.setswitchinterval(before)


@pytest.mark.usefixtures("hasty")
def test_threads_that_ask_at_once_all_get_the_message() -> None:
    """One that is being parsed in another thread is waited for, not missing."""
    for _ in range(20):
        bundle = MessageBundle("de", "de-DE", {})
        with ThreadPoolExecutor(8) as threads:
            found = [*threads.map(bundle.pattern, ["problem-usual"] * 8)]
        assert len(found) == 8
