"""Results of the stages that tests share, whichever service of whichever process works them out.

What is kept affects how soon an answer comes, never the answer: that is held by tests that share
nothing (``unit/test_stages_cache.py``, ``laws``, ``faults``). Most others ask a service of their
own about one of a few slabs, and to solve those anew took a quarter of their time.

A process keeps what it has worked out or read; between processes the results of the plate go as
files, each under what it depends on: the tables of the profile, and its key. The folder is one
run's.
"""

from __future__ import annotations

import atexit
import os
import pickle
import shutil
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from hashlib import sha256
from pathlib import Path
from typing import Any, Final

from ledgerstone.stages import cache
from ledgerstone.stages.cache import BoundedStore, K, Results, StageCache, V
from ledgerstone.workshop.records import Workshop

_FOLDER: Final = "LEDGERSTONE_TESTS_RESULTS"  # where they are, in the environment of tests
_MOST: Final = 400  # of each kind, of one workshop
_SOLVED: Final = ("handling", "in_place", "steel")  # what takes a plate, under keys of plain values
_KEPT: Final[list[tuple[list[Any], Results]]] = []


class _SharedStore(BoundedStore[K, V]):
    """A store that asks the folder before it computes."""

    def __init__(self, folder: Path) -> None:
        super().__init__(_MOST)
        self._folder = folder

    def get_or_compute(self, key: K, compute: Callable[[], V]) -> V:
        """Return what is kept under a key, here or by another process, or compute and keep it."""
        return super().get_or_compute(key, lambda: self._read_or_compute(key, compute))

    def _read_or_compute(self, key: K, compute: Callable[[], V]) -> V:
        file = self._folder / _name_of(key)
        if file.exists():
            found: V = pickle.loads(file.read_bytes())  # noqa: S301 - written below
            return found
        result = compute()
        begun = file.with_suffix(f".{os.getpid()}")
        begun.write_bytes(pickle.dumps(result))
        begun.replace(file)
        return result


@contextmanager
def shared_results() -> Iterator[None]:
    """Share results among all caches that are used meanwhile, and with those before them."""
    own = StageCache.use_for
    share()
    try:
        yield
    finally:
        StageCache.use_for = own  # type: ignore[method-assign]  # as it was


def share() -> None:
    """Share results as long as this process runs, and with those that it starts."""
    folder()
    StageCache.use_for = _use_for  # type: ignore[assignment, method-assign]  # it is every cache's


def folder() -> Path:
    """Return the folder; who asks first makes it, for itself and those that it then starts."""
    if _FOLDER not in os.environ:
        os.environ[_FOLDER] = tempfile.mkdtemp(prefix="results")
        atexit.register(_remove, os.environ[_FOLDER], os.getpid())
    return Path(os.environ[_FOLDER])


def _remove(made: str, by: int) -> None:
    """Remove the folder as the process ends that made it, not as one that it has forked does."""
    if os.getpid() == by:
        shutil.rmtree(made, ignore_errors=True)


def _use_for(used: StageCache, workshop: Workshop) -> None:
    """Take the results of a profile that any test has asked about."""
    bearing = cache._bearing(workshop)
    found = next((results for known, results in _KEPT if known == bearing), None)
    if found is None:
        found = _shared(bearing)
        _KEPT.append((bearing, found))
    used.results, used._workshop = found, workshop


def _shared(bearing: list[Any]) -> Results:
    """Return stores of a profile's results that other processes fill too."""
    results = Results()
    results.shapes, results.layouts = BoundedStore(_MOST), BoundedStore(_MOST)
    for kind in _SOLVED:
        kept = folder() / _name_of(bearing) / kind
        kept.mkdir(parents=True, exist_ok=True)
        setattr(results, kind, _SharedStore(kept))
    return results


def _name_of(key: object) -> str:
    return sha256(repr(key).encode()).hexdigest()
