"""Killed workers, faulty profiles, a full disk: no wrong answer, and quick recovery."""

import json
import os
import signal
import socket
import threading
import time
from collections.abc import Iterator
from functools import partial
from pathlib import Path

import pytest

from ledgerstone.workshop import DEMONSTRATION
from support.calendars import calendar
from support.serving import Answer, Callers, Served, ask, served, told, wait_for

TEXT = DEMONSTRATION.read_text(encoding="utf-8")
RECOVERY_S = 2.0
IDLE_S = 1.5  # as the shipped settings have it
FAULTY = TEXT + "\nnonsense = \n"


@pytest.fixture(scope="module")
def service() -> Iterator[Served]:
    """One server for all of these faults: each has to leave it well."""
    with served() as running:
        yield running


def _same(answers: list[Answer], right: bytes) -> None:
    """Every answer that says 200 is the right one, to the byte; no other but 503 is given."""
    assert {a.status for a in answers} <= {0, 200, 503}
    assert all(a.body == right for a in answers if a.status == 200)


def _replaced(service: Served, victim: int) -> bool:
    return victim not in service.workers and len(service.workers) == 2


def _kill_each_second(service: Served, callers: Callers, seconds: int) -> list[float]:
    """Kill a worker each second; return how long after each the service was whole again.

    Whole is: as many workers as before, and a good answer since.
    """
    kills, staffed_s = [], []
    for _ in range(seconds):
        time.sleep(1.0)
        victim = service.workers[0]
        os.kill(victim, signal.SIGKILL)
        kills.append(time.monotonic())
        wait_for(partial(_replaced, service, victim))
        staffed_s.append(time.monotonic() - kills[-1])
    wait_for(lambda: any(a.status == 200 and a.began_s > kills[-1] for a in callers.answers))
    ends = sorted(a.began_s + a.took_s for a in callers.answers if a.status == 200)
    good_s = [next(end for end in ends if end > kill) - kill for kill in kills]
    return [max(both) for both in zip(staffed_s, good_s, strict=True)]


def _killed(service: Served, seconds: int) -> None:
    """Kill workers under load: no wrong answer, and what is asked next is answered within 2 s."""
    right = ask(service.port).body
    with Callers(service.port, 3) as callers:
        recovery_s = _kill_each_second(service, callers, seconds)
    print(
        f"{len(recovery_s)} kills: {told(callers.answers)};"
        f" slowest recovery {max(recovery_s):.2f} s"
    )
    _same(callers.answers, right)
    assert sum(a.status == 0 for a in callers.answers) <= len(recovery_s)
    assert ask(service.port).body == right
    wait_for(lambda: len(service.workers) == 2)
    assert max(recovery_s) <= RECOVERY_S


@pytest.mark.alone
def test_a_killed_worker_loses_its_own_request_alone(service: Served) -> None:
    """Three workers killed under load break three connections at most; recovery takes 2 s."""
    _killed(service, 3)


@pytest.mark.long
def test_a_worker_killed_each_second_for_half_a_minute(service: Served) -> None:
    """Thirty kills under load: as with three of them."""
    _killed(service, 30)


def test_a_reload_under_load_drops_nothing(tmp_path: Path) -> None:
    """A changed, a faulty and a corrected profile, all under load: no answer breaks."""
    path = tmp_path / "workshop.toml"
    path.write_text(TEXT, encoding="utf-8")
    with served(WORKSHOP=str(path)) as service:
        before = service.ready()["profile"]
        with Callers(service.port, 2) as callers:
            path.write_text(FAULTY, encoding="utf-8")
            service.process.send_signal(signal.SIGHUP)
            wait_for(lambda: "profile_refused" in service.ready())
            assert service.ready()["profile"] == before
            path.write_text(TEXT.replace("margin_percent = 40", "margin_percent = 41"), "utf-8")
            service.process.send_signal(signal.SIGHUP)
            wait_for(lambda: service.ready()["profile"] != before)
        totals = {json.loads(a.body)["price"]["total"] for a in callers.answers}
        print(told(callers.answers), sorted(totals))
        assert {a.status for a in callers.answers} == {200}
        assert len(totals) <= 2


def test_silent_connections_block_nobody_for_long(service: Served) -> None:
    """As many as there are workers are opened and say nothing, as browsers do: all is answered."""
    right = ask(service.port).body
    before = set(service.workers)
    silent = [socket.create_connection(("127.0.0.1", service.port)) for _ in range(4)]
    answer = ask(service.port)
    assert (answer.status, answer.body) == (200, right)
    assert answer.took_s < 4 / 2 * IDLE_S + RECOVERY_S
    assert all(one.recv(1) == b"" for one in silent)
    assert set(service.workers) == before
    for one in silent:
        one.close()


def test_a_changed_profile_is_loaded_though_nobody_asks(tmp_path: Path) -> None:
    """The file changes and no call comes: new workers do, and the next answer has its price."""
    path = tmp_path / "workshop.toml"
    path.write_text(TEXT, encoding="utf-8")
    with served(WORKSHOP=str(path)) as service:
        total = json.loads(ask(service.port).body)["price"]["total"]
        before = set(service.workers)
        path.write_text(TEXT.replace("margin_percent = 40", "margin_percent = 41"), "utf-8")
        wait_for(lambda: len(service.workers) == 2 and not before & set(service.workers))
        assert json.loads(ask(service.port).body)["price"]["total"] != total


@pytest.mark.long
def test_a_stop_finishes_what_runs() -> None:
    """SIGTERM while a quote is being made: it is answered whole, and the server ends with 0."""
    with served() as service:
        got: list[Answer] = []
        thread = threading.Thread(target=lambda: got.append(ask(service.port)))
        thread.start()
        time.sleep(0.05)
        service.process.send_signal(signal.SIGTERM)
        thread.join()
        assert service.process.wait(timeout=30) == 0
    assert [a.status for a in got] == [200]


@pytest.mark.long
def test_a_full_disk_for_logs_stops_no_answer() -> None:
    """Where no log line can be written, quotes and problems are answered as ever."""
    with Path("/dev/full").open("wb") as full, served(full) as service:
        assert ask(service.port).status == 200
        assert ask(service.port, body=b"{").status == 400


@pytest.mark.long
def test_a_calendar_that_breaks_under_load_is_reported_and_recovers(tmp_path: Path) -> None:
    """Spoilt, gone and back again, all under load: no answer breaks, and readiness says each."""
    path = tmp_path / "bookings.ics"
    path.write_text(calendar(), encoding="utf-8")
    with served(CALENDAR=str(path)) as service:
        assert service.ready()["calendar"]["status"] == "read"
        with Callers(service.port, 2) as callers:
            path.write_bytes(b"\x00 no calendar")
            wait_for(lambda: service.ready()["calendar"]["status"] == "not-read")
            path.unlink()
            wait_for(lambda: "age_hours" not in service.ready()["calendar"])
            path.write_text(calendar(), encoding="utf-8")
            wait_for(lambda: service.ready()["calendar"]["status"] == "read")
        print(told(callers.answers))
        assert {a.status for a in callers.answers} == {200}


@pytest.mark.long
def test_a_profile_that_goes_while_it_serves_changes_nothing(tmp_path: Path) -> None:
    """Its file removed, the service goes on through a reload and through a worker's death."""
    path = tmp_path / "workshop.toml"
    path.write_text(TEXT, encoding="utf-8")
    with served(WORKSHOP=str(path)) as service:
        right = ask(service.port).body
        path.unlink()
        service.process.send_signal(signal.SIGHUP)
        wait_for(lambda: "profile_refused" in service.ready())
        os.kill(service.workers[0], signal.SIGKILL)
        assert [ask(service.port).body == right for _ in range(4)] == [True] * 4
