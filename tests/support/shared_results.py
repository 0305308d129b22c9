"""Results of the stages that the tests of one process share, whichever service works them out.

What is kept affects how soon an answer comes, never the answer: that is held by tests that share
nothing (``unit/test_stages_cache.py``, ``laws``, ``faults``). Most others ask a service of their
own about one of a few slabs, and to solve those anew took a quarter of their time.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any, Final

import pytest

from ledgerstone.stages import cache
from ledgerstone.stages.cache import Results, StageCache
from ledgerstone.workshop.records import Workshop

_MOST: Final = 400  # of each kind, of one workshop
_KEPT: Final[list[tuple[list[Any], Results]]] = []


@contextmanager
def shared_results() -> Iterator[None]:
    """Share results among all caches that are used meanwhile, and with those before them."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(StageCache, "use_for", _use_for)
        patch.setattr(cache, "MAX_RESULTS", _MOST)
        patch.setattr(cache, "MAX_SHAPES", _MOST)
        yield


def _use_for(used: StageCache, workshop: Workshop) -> None:
    """Take the results of a profile that any test has asked about."""
    bearing = cache._bearing(workshop)
    found = next((results for known, results in _KEPT if known == bearing), None)
    if found is None:
        found = Results()
        _KEPT.append((bearing, found))
    used.results, used._workshop = found, workshop
