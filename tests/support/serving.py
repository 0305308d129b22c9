"""A real server on loopback to be pushed about, and callers that note all that they get."""

from __future__ import annotations

import http.client
import json
import os
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path
from typing import IO, Any, Self

from support.demonstration import EXAMPLE_ORDER, MAKER_KEY
from support.ports import free_port
from support.programs import Program, run_beside

ROOT = Path(__file__).resolve().parents[2]
ORDER = json.dumps(EXAMPLE_ORDER).encode()
TYPE = {"Content-Type": "application/json"}
# As it is shipped, but on the tests' own day.
DATED = ("--pythonpath", str(ROOT / "tests"), "support.dated_service:app")
SHARING = ("--pythonpath", str(ROOT / "tests"), "support.sharing_service:app")
SIGNING_KEY = "a signing key for servers on loopback alone"
TIMEOUT_S = 60.0  # a bound on waiting, not a measure: the machine may be busy


@dataclass(frozen=True, slots=True)
class Answer:
    """What a caller got, and when: status 0 is a connection that broke."""

    status: int
    body: bytes
    headers: dict[str, str]
    began_s: float
    took_s: float


def ask(
    port: int, path: str = "/v1/quotes", body: bytes | None = ORDER, host: str = "127.0.0.1"
) -> Answer:
    """Ask once, on a connection of its own."""
    began_s = time.monotonic()
    caller = http.client.HTTPConnection(host, port, timeout=TIMEOUT_S)
    try:
        caller.request("POST" if body is not None else "GET", path, body, TYPE if body else {})
        got = caller.getresponse()
        found = got.status, got.read(), {k.lower(): v for k, v in got.getheaders()}
    except (OSError, http.client.HTTPException):
        found = 0, b"", {}
    finally:
        caller.close()
    return Answer(*found, began_s, time.monotonic() - began_s)


@dataclass(slots=True)
class Served:
    """A running gunicorn with the shipped settings."""

    port: int
    process: Program

    @property
    def workers(self) -> list[int]:
        """The ids of its workers, of those that it started itself."""
        pid = self.process.pid
        told = Path(f"/proc/{pid}/task/{pid}/children").read_text(encoding="ascii")
        return [int(child) for child in told.split()]

    def ready(self) -> dict[str, Any]:
        """Return the answer of the readiness call."""
        told: dict[str, Any] = json.loads(ask(self.port, "/v1/health/ready", None).body)
        return told

    def processor_s(self) -> float:
        """Processor time of the server's first process, s."""
        told = Path(f"/proc/{self.process.pid}/stat").read_text(encoding="ascii")
        user, system = told.rpartition(")")[2].split()[11:13]
        return (int(user) + int(system)) / os.sysconf("SC_CLK_TCK")

    def rss_mb(self, what: str = "VmRSS") -> list[float]:
        """What each worker holds in memory, MB; ``VmHWM`` is the most that it ever held."""
        found = []
        for pid in self.workers:
            with suppress(FileNotFoundError):
                lines = Path(f"/proc/{pid}/status").read_text(encoding="utf-8").splitlines()
                found += [float(line.split()[1]) / 1024 for line in lines if line[:5] == what]
        return found

    def pss_mb(self) -> float:
        """What all its processes hold together, what they share counted once, MB."""
        rows = [
            Path(f"/proc/{pid}/smaps_rollup").read_text(encoding="ascii").split("\nPss:")[1]
            for pid in (self.process.pid, *self.workers)
        ]
        return sum(int(row.split()[0]) for row in rows) / 1024


@contextmanager
def served(
    errors: IO[bytes] | int = subprocess.DEVNULL,
    app: str | None = None,
    out: IO[bytes] | int = subprocess.DEVNULL,
    *,
    dated: bool = True,
    forked: bool = True,
    **told: str,
) -> Iterator[Served]:
    """Serve on loopback with two workers; ``told`` are more ``LEDGERSTONE_…`` settings.

    Parameters
    ----------
    app
        Another app than ours, under the same server and as many workers.
    dated
        Whether it is the tests' own day there; else the machine's, as it is shipped.
    forked
        Whether what servers load is loaded already; else Python is started, as it is in use.
    """
    port, host = int(told.pop("PORT", "0")) or free_port(), told.pop("HOST", "127.0.0.1")
    environment = {
        **os.environ,
        "LEDGERSTONE_MAKER_KEY": MAKER_KEY,
        "LEDGERSTONE_SIGNING_KEYS": SIGNING_KEY,
        "LEDGERSTONE_BASE_URL": "http://localhost",
        "WEB_CONCURRENCY": "2",
        **{f"LEDGERSTONE_{name}": value for name, value in told.items()},
    }
    shipped = ["--config", str(ROOT / "docker/gunicorn.conf.py"), "--chdir", str(ROOT / "service")]
    bare = ["--workers", "2", "--preload", "--chdir", str(ROOT / "tests"), app or ""]
    command = ["--bind", f"{host}:{port}"]
    command += bare if app else [*shipped, *(DATED if dated else ())]
    process: Program
    if forked:
        process = run_beside("gunicorn", command, environment, (out, errors))
    else:
        program = [sys.executable, "-m", "gunicorn", *command]
        process = subprocess.Popen(program, env=environment, stdout=out, stderr=errors)
    live = "/v1/health/live"
    try:
        wait_for(lambda: ask(port, live, None, host).status == 200 or process.poll())
        assert process.poll() is None
        yield Served(port, process)
    finally:
        process.send_signal(signal.SIGTERM)
        with suppress(subprocess.TimeoutExpired):
            process.wait(timeout=30)
        process.send_signal(signal.SIGKILL)
        process.wait()


def wait_for(what: Callable[[], object]) -> None:
    """Wait until something is so."""
    deadline_s = time.monotonic() + TIMEOUT_S
    while not what():
        assert time.monotonic() < deadline_s, "it did not come about in time"
        time.sleep(0.05)


@dataclass(slots=True)
class Callers:
    """Some callers that ask again and again until they are stopped."""

    port: int
    count: int
    pause_s: float = 0.0
    answers: list[Answer] = field(default_factory=list)
    _stop: threading.Event = field(default_factory=threading.Event)
    _threads: list[threading.Thread] = field(default_factory=list)

    def __enter__(self) -> Self:
        self._threads = [threading.Thread(target=self._ask) for _ in range(self.count)]
        for thread in self._threads:
            thread.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._stop.set()
        for thread in self._threads:
            thread.join()

    def _ask(self) -> None:
        while not self._stop.is_set():
            self.answers.append(ask(self.port))
            self._stop.wait(self.pause_s)


def told(answers: Sequence[Answer]) -> str:
    """How many answers of each status there were, and how long the good ones took."""
    counts = {s: sum(a.status == s for a in answers) for s in sorted({a.status for a in answers})}
    good = sorted(a.took_s for a in answers if a.status == 200)
    times = (
        f"; p50 {good[len(good) // 2]:.2f} s, p99 {good[int(0.99 * (len(good) - 1))]:.2f} s"
        if good
        else ""
    )
    return f"{counts}{times}"
