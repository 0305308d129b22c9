"""Work in a child process with a deadline, while the parent continues.

The child is a copy of its parent, so what it works with needs no loading; only its result is
written, into memory that both share, and read once the child has ended.
"""

from __future__ import annotations

import ctypes
import mmap
import os
import pickle
import resource
import signal
import subprocess
import sys
import time
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from typing import Any, Final, Generic, TypeVar

from ledgerstone.errors import ChildFailed

Result = TypeVar("Result")
MAX_BYTES: Final = 16 * 1024 * 1024  # of a result; memory is taken as it is written
BY_THE_CLOCK: Final = 6  # on a busy machine, elapsed time exceeds processor time by this factor
_LENGTH_BYTES: Final = 8
_LOOK_S: Final = 0.005
_give_back: Final = getattr(ctypes.CDLL(None), "malloc_trim", None)  # the GNU C library's alone


@dataclass(slots=True)
class ChildProcess(Generic[Result]):
    """One piece of work that goes on in a child process.

    Attributes
    ----------
    parent
        The process that began it: a copy of that one, made later, cannot wait for the child.
    """

    parent: int
    _pid: int
    _shared: mmap.mmap

    @property
    def is_ours(self) -> bool:
        """Whether this process is the one that began it."""
        return self.parent == os.getpid()

    def has_ended(self, wait_s: float = 0.0) -> bool:
        """Return whether the work has ended, waiting for it for some time at most."""
        until_s = time.monotonic() + wait_s
        while not self._is_gone():
            if time.monotonic() >= until_s:
                return False
            time.sleep(_LOOK_S)
        return True

    def result(self) -> Result | None:
        """Return the result once it has ended; None if it failed or took too long."""
        length = int.from_bytes(self._shared[:_LENGTH_BYTES], "big")
        if not length:
            return None
        result: Result = pickle.loads(  # noqa: S301 - our own child wrote it
            self._shared[_LENGTH_BYTES : _LENGTH_BYTES + length]
        )
        return result

    def give_up(self) -> None:
        """End work whose result is no longer needed."""
        if self.is_ours and not self._is_gone():
            os.kill(self._pid, signal.SIGKILL)
            os.waitpid(self._pid, 0)

    def _is_gone(self) -> bool:
        try:
            return os.waitpid(self._pid, os.WNOHANG)[0] != 0
        except ChildProcessError:
            return True  # a server that looks after its children has taken note of it first


def run_apart(script: str, request: bytes, seconds: int, wait_s: float) -> bytes:
    """Run a script in an interpreter of its own, which holds nothing of what this process does.

    What this process holds free is given back first, so that both hold little at once.

    Parameters
    ----------
    script
        Reads what is asked from its standard input, and writes its result to its output.
    seconds
        Of processor time, after which it is ended.
    wait_s
        How long to wait by the clock.

    Raises
    ------
    ChildFailed
        It failed, or took longer.
    OSError
        There is no room for another process.
    """
    if _give_back is not None:
        _give_back(0)
    limited = f"import resource\nresource.setrlimit(resource.RLIMIT_CPU, ({seconds}, {seconds}))\n"
    try:
        done = subprocess.run(  # noqa: S603 - our own script
            [sys.executable, "-I", "-c", limited + script],
            input=request,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            timeout=wait_s,
            check=True,
        )
    except subprocess.SubprocessError as fault:
        raise ChildFailed from fault
    return done.stdout


def begin(work: Callable[[], Result], seconds: int) -> ChildProcess[Result]:
    """Begin work in a child process.

    Parameters
    ----------
    seconds
        Of processor time, after which it is ended; by the clock six times as long.

    Raises
    ------
    OSError
        There is no room for another process.
    """
    shared = mmap.mmap(-1, MAX_BYTES)
    parent = os.getpid()
    pid = os.fork()
    if pid == 0:
        _work(work, seconds, shared)
    return ChildProcess(parent, pid, shared)


def _work(work: Callable[[], Any], seconds: int, shared: mmap.mmap) -> None:
    """Do the work of a child: hold no connection of the parent's, answer none of its signals."""
    with suppress(BaseException):
        for number in (signal.SIGALRM, signal.SIGTERM, signal.SIGINT, signal.SIGCHLD):
            signal.signal(number, signal.SIG_DFL)
        signal.alarm(BY_THE_CLOCK * seconds)
        resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds))
        os.closerange(0, os.sysconf("SC_OPEN_MAX"))
        written = pickle.dumps(work())
        shared[_LENGTH_BYTES : _LENGTH_BYTES + len(written)] = written
        shared[:_LENGTH_BYTES] = len(written).to_bytes(_LENGTH_BYTES, "big")
    os._exit(0)
