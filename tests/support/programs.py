"""Servers of our own that run beside tests, forked from a process that has everything loaded.

What a server loads takes two seconds of processor time, and a run of all tests starts some forty.
``run_beside`` runs a module as ``python -m`` does, with its own arguments, environment and outputs.
Tests of a start itself, and of what a server holds or how fast it is, start Python.
"""

from __future__ import annotations

import atexit
import gc
import os
import runpy
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import traceback
from collections.abc import Mapping, Sequence
from contextlib import suppress
from importlib import import_module
from multiprocessing.connection import Connection, wait
from multiprocessing.reduction import recv_handle, send_handle
from pathlib import Path
from typing import IO, Final, NoReturn, Protocol

from ledgerstone.settings import Settings
from ledgerstone.wording.catalogues import LANGUAGES, entry_of, sources
from ledgerstone.workshop.reading.loader import DEMONSTRATION, starting_tables

ROOT: Final = Path(__file__).resolve().parents[2]
_INPUT: Final = 0
_OUTPUTS: Final = (1, 2)
_ADDRESS: Final = "LEDGERSTONE_TESTS_PROGRAMS"  # where it is asked, in the environment of tests
_ONE_THREAD: Final = {"OMP_NUM_THREADS": "1", "OPENBLAS_NUM_THREADS": "1"}
_UNUSED_KEY: Final = "a signing key of a service that nobody asks"
# What a server loads, at its start or when it is first asked for it.
_LOADED: Final = (
    "gunicorn.app.wsgiapp",
    "ledgerstone.api.reload",
    "ledgerstone.api.worker",
    "ledgerstone.enquiry",
    "ledgerstone.mailbox",
    "ledgerstone.schedule.ical",
    "ledgerstone.schedule.plan_ics",
    "support.shared_results",
)


class Program(Protocol):
    """A running program, as far as tests have to do with one."""

    @property
    def pid(self) -> int:
        """Its process."""

    def poll(self) -> int | None:
        """Return its exit status; None while it runs."""

    def wait(self, timeout: float | None = None) -> int:
        """Wait for its end."""

    def send_signal(self, sig: int) -> None:
        """Send it a signal, unless it has ended."""


class Forked:
    """A program that was forked.

    Parameters
    ----------
    ends
        Tells its exit status once it has ended.
    """

    def __init__(self, pid: int, ends: Connection) -> None:
        self.pid = pid
        self._ends = ends
        self._status: int | None = None

    def poll(self) -> int | None:
        """Return its exit status; None while it runs."""
        if self._status is None and self._ends.poll():
            self._status = int(self._ends.recv())
        return self._status

    def wait(self, timeout: float | None = None) -> int:
        """Wait for its end.

        Raises
        ------
        subprocess.TimeoutExpired
        """
        if self._status is None and not self._ends.poll(timeout):
            raise subprocess.TimeoutExpired(str(self.pid), timeout or 0.0)
        status = self.poll()
        assert status is not None
        return status

    def send_signal(self, sig: int) -> None:
        """Send it a signal, unless it has ended."""
        if self.poll() is None:
            with suppress(ProcessLookupError):
                os.kill(self.pid, sig)


def read_once() -> None:
    """Read what a process reads once: every message, and the profiles that others start as."""
    for language in LANGUAGES:
        for name in sources(language):
            entry_of(language, name)
    starting_tables()


def load() -> None:
    """Start the process that programs are forked from, for this process and those it forks."""
    path = Path(tempfile.mkdtemp(prefix="programs")) / "asked"
    with socket.socket(socket.AF_UNIX) as listener:
        listener.bind(str(path))
        listener.listen()
        started = subprocess.Popen(
            [sys.executable, "-m", "support.programs", str(listener.fileno())],
            stdin=subprocess.PIPE,
            pass_fds=[listener.fileno()],
            env={**os.environ, **_ONE_THREAD, "PYTHONPATH": f"{ROOT / 'service'}:{ROOT / 'tests'}"},
        )
    os.environ[_ADDRESS] = str(path)
    atexit.register(_unload, started, path)


def _unload(started: subprocess.Popen[bytes], path: Path) -> None:
    started.communicate()  # the end of its input is its own
    path.unlink()
    path.parent.rmdir()


def run_beside(
    module: str,
    arguments: Sequence[object],
    environment: Mapping[str, str],
    outputs: tuple[IO[bytes] | int | None, IO[bytes] | int | None] = (None, None),
) -> Forked:
    """Run a module with arguments beside this process.

    Parameters
    ----------
    outputs
        Where its output and its errors go, as ``subprocess`` takes them; None is this process's.
    """
    if _ADDRESS not in os.environ:
        load()
    with socket.socket(socket.AF_UNIX) as asking:
        asking.connect(os.environ[_ADDRESS])
        told = Connection(asking.detach())
    told.send(([module, *map(str, arguments)], dict(environment)))
    for of, output in zip(_OUTPUTS, outputs, strict=True):
        _send_output(told, of if output is None else output)
    return Forked(int(told.recv()), told)


def _send_output(told: Connection, output: IO[bytes] | int) -> None:
    if output == subprocess.DEVNULL:
        with Path(os.devnull).open("wb") as nowhere:
            send_handle(told, nowhere.fileno(), os.getpid())
    else:
        send_handle(told, output if isinstance(output, int) else output.fileno(), os.getpid())


# --- the process that has everything loaded ---------------------------------------------------


def main() -> NoReturn:
    """Load what servers load, then fork each program that is asked for, until input ends."""
    for module in _LOADED:
        import_module(module)
    read_once()
    _work_out_once()
    gc.collect()
    gc.freeze()
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)  # those that wait for programs leave nothing
    listener = socket.socket(fileno=int(sys.argv[1]))
    while _INPUT not in wait([listener, _INPUT]):
        asking, _ = listener.accept()
        if os.fork() == 0:
            listener.close()
            _wait_for_program(Connection(asking.detach()))
        asking.close()
    os._exit(0)


def _work_out_once() -> None:
    """Make one service of the demonstration: what is kept for a profile is then there for all."""
    # Who asks for programs needs none of it.
    from ledgerstone.api.reload import service  # noqa: PLC0415

    service(Settings(workshop_path=DEMONSTRATION, signing_keys=(_UNUSED_KEY,)))


def _wait_for_program(told: Connection) -> NoReturn:
    """Fork one program, tell its process, and tell how it ended."""
    signal.signal(signal.SIGINT, signal.default_int_handler)
    signal.signal(signal.SIGCHLD, signal.SIG_DFL)
    arguments, environment = told.recv()
    outputs = [recv_handle(told) for _ in _OUTPUTS]
    pid = os.fork()
    if pid == 0:
        told.close()
        _become(outputs, arguments, environment)
    for output in outputs:
        os.close(output)
    with suppress(OSError):  # nobody may listen any more
        told.send(pid)
        told.send(os.waitstatus_to_exitcode(os.waitpid(pid, 0)[1]))
    os._exit(0)


def _become(outputs: list[int], arguments: list[str], environment: dict[str, str]) -> NoReturn:
    """Run a module as Python does that was started for it."""
    for of, output in zip(_OUTPUTS, outputs, strict=True):
        os.dup2(output, of)
        os.close(output)
    os.environ.clear()
    os.environ.update(environment)
    sys.argv = arguments
    status = 0
    try:
        runpy.run_module(arguments[0], run_name="__main__", alter_sys=True)
    except SystemExit as ended:
        status = ended.code if isinstance(ended.code, int) else int(ended.code is not None)
    except BaseException:  # noqa: BLE001 - as Python ends that was started for it
        traceback.print_exc()
        status = 1
    threading._shutdown()  # type: ignore[attr-defined]  # what Python waits for at its end
    atexit._run_exitfuncs()
    with suppress(OSError):
        sys.stdout.flush()
        sys.stderr.flush()
    os._exit(status)


if __name__ == "__main__":
    main()
