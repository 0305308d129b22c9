"""Tests in several processes: they are collected once, and each process takes a file at a time.

The files of ``design`` are taken together: they read the whole tree, which a process does once.

``--workers 4`` forks once everything is collected, so that what the files of tests have loaded is
loaded once, and shared. Every other process takes the files from the end, so that those that wait,
which ``conftest`` puts first, and those that compute, which it puts last, run side by side. A
process asks for its next file before the last test of the one before,
so that a fixture of the session goes on from file to file. Nothing else is shared: a fixture of
the session is made once in each process, and each has a folder of its own for ``tmp_path``.
"""

from __future__ import annotations

import os
from collections import deque
from collections.abc import Iterator
from itertools import groupby, pairwise
from multiprocessing import get_context
from multiprocessing.connection import Connection, wait
from multiprocessing.context import ForkProcess
from pathlib import Path
from typing import Any, Final

import pytest

from support.ports import WORKER

Files = list[list[pytest.Item]]

_CONTEXT: Final = get_context("fork")
_TOGETHER: Final = "design"


def pytest_addoption(parser: pytest.Parser) -> None:
    """Add the option for the number of processes."""
    parser.addoption(
        "--workers", type=int, default=1, metavar="N", help="run files of tests in N processes"
    )


@pytest.hookimpl(tryfirst=True)
def pytest_runtestloop(session: pytest.Session) -> bool | None:
    """Run what was collected in several processes, where so many are asked for."""
    option = session.config.option
    if option.workers < 2 or option.collectonly or session.testsfailed:
        return None
    files = [list(items) for _, items in groupby(session.items, key=_taken_with)]
    workers = dict(_started(session, files, k) for k in range(option.workers))
    try:
        _follow(session, files, workers)
    finally:
        for process in workers.values():
            process.terminate()
            process.join()
    return True


def _taken_with(item: pytest.Item) -> Path:
    """Return what a test is taken with: its file, or its folder where that is read as one."""
    return item.path.parent if item.path.parent.name == _TOGETHER else item.path


def _started(session: pytest.Session, files: Files, number: int) -> tuple[Connection, ForkProcess]:
    """Start one process, and return it by the connection to it."""
    here, there = _CONTEXT.Pipe()
    folder: Path = session.config._tmp_path_factory.getbasetemp() / f"worker-{number}"  # type: ignore[attr-defined]  # pytest's own
    process = _CONTEXT.Process(target=_work, args=(session, files, there, folder, number))
    process.start()
    there.close()
    return here, process


# --- the process that collected -------------------------------------------------------------


def _follow(session: pytest.Session, files: Files, workers: dict[Connection, ForkProcess]) -> None:
    """Hand out files and report what comes back, until every process has ended.

    What a process sends is None where it asks for a file, the name of a test that begins, or the
    report of one.
    """
    hook, left = session.config.hook, deque(range(len(files)))
    takes = {worker: (left.popleft, left.pop)[k % 2] for k, worker in enumerate(workers)}
    running: dict[Connection, str] = {}
    unreported = {item.nodeid for item in session.items}
    while workers:
        for worker in wait(list(workers)):
            assert isinstance(worker, Connection)
            try:
                told = worker.recv()
            except EOFError:
                _ended(session, workers.pop(worker), running.get(worker, "no test"))
                continue
            if told is None:
                is_over = session.shouldfail or session.shouldstop or not left
                worker.send(None if is_over else takes[worker]())
            elif isinstance(told, str):
                running[worker] = told
            else:
                report = hook.pytest_report_from_serializable(config=session.config, data=told)
                hook.pytest_runtest_logreport(report=report)
                unreported -= {report.nodeid} if report.when == "teardown" else set()
    if unreported and not session.shouldstop:
        session.shouldfail = session.shouldfail or f"no report of {min(unreported)}"
    if session.shouldfail:
        raise session.Failed(session.shouldfail)


def _ended(session: pytest.Session, process: ForkProcess, test: str) -> None:
    """Stop where a process ended otherwise than at the end of its tests."""
    process.join()
    if process.exitcode:
        session.shouldfail = f"a process ended with {process.exitcode} during {test}"
        raise session.Failed(session.shouldfail)


# --- a process that runs tests ----------------------------------------------------------------


class _Reports:
    """Sends each report to the process that collected."""

    def __init__(self, config: pytest.Config, channel: Connection) -> None:
        self._config = config
        self._channel = channel

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Send a report as what can be written down of it."""
        to_serializable = self._config.hook.pytest_report_to_serializable
        data: dict[str, Any] = to_serializable(config=self._config, report=report)
        self._channel.send(data)


def _work(
    session: pytest.Session, files: Files, channel: Connection, folder: Path, number: int
) -> None:
    """Run file after file, each test in the order in which it was collected."""
    config = session.config
    os.environ[WORKER] = str(number)
    folder.mkdir(mode=0o700)
    config._tmp_path_factory._basetemp = folder  # type: ignore[attr-defined]  # pytest's own
    capture: Any = config.pluginmanager.getplugin("capturemanager")
    capture.stop_global_capturing()  # what was opened for it is every process's
    capture.start_global_capturing()
    capture.suspend_global_capture()
    config.pluginmanager.unregister(name="terminalreporter")
    config.pluginmanager.register(_Reports(config, channel))
    for item, following in _taken(files, channel):
        channel.send(item.nodeid)
        config.hook.pytest_runtest_protocol(item=item, nextitem=following)


def _taken(files: Files, channel: Connection) -> Iterator[tuple[pytest.Item, pytest.Item | None]]:
    """Each test of the files that this process takes, with the one after it."""
    items = _next_file(files, channel)
    while items:
        yield from pairwise(items)
        following = _next_file(files, channel)
        yield items[-1], following[0] if following else None
        items = following


def _next_file(files: Files, channel: Connection) -> list[pytest.Item]:
    """Ask for a file; no tests where none is left."""
    channel.send(None)
    number: int | None = channel.recv()
    return [] if number is None else files[number]
