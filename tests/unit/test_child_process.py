"""Work in a child process: its result comes back, and nothing else of it stays."""

import os
import time

import pytest

from ledgerstone.child_process import run_apart
from ledgerstone.errors import ChildFailed


def _children() -> list[str]:
    with open(f"/proc/{os.getpid()}/task/{os.getpid()}/children", encoding="ascii") as told:  # noqa: PTH123  a file of the kernel's
        return told.read().split()


def test_a_child_s_result_is_returned() -> None:
    """Another process does the work, and is gone once its result is here."""
    before = _children()
    said = run_apart("import os, sys\nprint(os.getpid(), sys.stdin.read())", b"asked", 1, 30.0)
    number, asked = said.decode().split()
    assert int(number) != os.getpid()
    assert asked == "asked"
    assert _children() == before


def test_a_child_that_fails_is_a_fault_of_ours() -> None:
    """A child that raises comes to nothing, and says so."""
    with pytest.raises(ChildFailed):
        run_apart("1 // 0", b"", 1, 30.0)


def test_a_child_that_works_too_long_is_ended() -> None:
    """A child that takes more processor time than it may is ended, however long there is."""
    with pytest.raises(ChildFailed):
        run_apart("while True: pass", b"", 1, 30.0)


def test_a_child_that_is_late_is_ended() -> None:
    """A child that is not done in time is ended, and nobody waits on."""
    before, began_s = _children(), time.monotonic()
    with pytest.raises(ChildFailed):
        run_apart("import time\ntime.sleep(60)", b"", 1, 0.05)
    assert time.monotonic() - began_s < 5.0
    assert _children() == before
