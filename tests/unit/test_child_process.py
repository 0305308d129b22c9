"""Work in a child process: its result comes back, and nothing else of it stays."""

import os
import time

import pytest

from ledgerstone.child_process import do_apart
from ledgerstone.errors import ChildFailed


def _children() -> list[str]:
    with open(f"/proc/{os.getpid()}/task/{os.getpid()}/children", encoding="ascii") as told:  # noqa: PTH123  a file of the kernel's
        return told.read().split()


def test_what_is_done_apart_comes_back() -> None:
    """Another process does the work, and is gone once its result is here."""
    before = _children()
    assert do_apart(os.getpid, 1, 5.0) != os.getpid()
    assert _children() == before


def test_what_fails_apart_is_a_fault_of_ours() -> None:
    """A child that raises comes to nothing, and says so."""
    with pytest.raises(ChildFailed):
        do_apart(lambda: 1 // 0, 1, 5.0)


def test_what_takes_too_long_apart_is_ended() -> None:
    """A child that is not done in time is ended, and nobody waits on."""
    before, began_s = _children(), time.monotonic()
    with pytest.raises(ChildFailed):
        do_apart(lambda: time.sleep(60), 1, 0.05)
    assert time.monotonic() - began_s < 5.0
    assert _children() == before
