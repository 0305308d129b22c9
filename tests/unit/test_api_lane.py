"""One lane for heavy work, one caller at a time while others wait, and nothing for who has gone."""

import copy
import os
import socket
from collections.abc import Callable, Iterator
from contextlib import contextmanager

import pytest
from flask import Flask
from flask.testing import FlaskClient

from ledgerstone.api import Settings, create_app, lane
from ledgerstone.api.health import Running
from ledgerstone.api.lane import LIGHT_UNITS, ActiveClients, Lane, Pace
from ledgerstone.api.limits import Gate
from ledgerstone.api.worker import TimedSocket
from ledgerstone.errors import CallerGone, LaneTaken
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY
from support.hardest import crowded

ELSEWHERE = {"REMOTE_ADDR": "203.0.113.7"}  # RFC 5737: an address of no one's
HEAVY = crowded(1, 20, "units", 20)


@contextmanager
def _other_process(work: Callable[[], object]) -> Iterator[None]:
    """Do something in another process, which then stays as it is until we are done."""
    done, told = os.pipe()
    until, end = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(end)
        work()
        os.write(told, b"x")
        os.read(until, 1)
        os._exit(0)
    os.close(until)
    os.read(done, 1)
    try:
        yield
    finally:
        os.close(end)
        os.waitpid(child, 0)


def _app(running: Running) -> Flask:
    return create_app(Settings(maker_key=MAKER_KEY), running)


@pytest.fixture
def running() -> Running:
    """What all workers share."""
    return Running()


@pytest.fixture
def caller(running: Running) -> FlaskClient:
    """A caller of one worker."""
    return _app(running).test_client()


def test_one_process_is_in_the_lane_at_a_time() -> None:
    """A second process does not enter; one that ends without a word is in it no longer."""
    lane = Lane()
    with _other_process(lane.enter):
        assert not lane.enter()
    assert lane.enter()
    lane.leave()


def test_light_work_needs_no_lane() -> None:
    """Up to its light units a request goes on while another is in the lane, and no further."""
    lane = Lane()
    with _other_process(lane.enter):
        pace = Pace(lane, None)
        pace(LIGHT_UNITS)
        with pytest.raises(LaneTaken):
            pace(LIGHT_UNITS + 0.1)


def test_a_heavy_order_is_asked_to_retry(running: Running, caller: FlaskClient) -> None:
    """While a worker is in the lane heavy orders get 503 at once; small ones and health go on."""
    with _other_process(running.lane.enter):
        heavy = caller.post("/v1/quotes", json=HEAVY)
        assert heavy.status_code == 503
        assert heavy.get_json()["type"] == "/problems/busy"
        assert heavy.headers["Retry-After"] == "4"
        minimal = {"Prefer": "return=minimal"}
        assert caller.post("/v1/quotes", json=EXAMPLE_ORDER, headers=minimal).status_code == 200
        assert caller.get("/v1/health/ready").status_code == 200
    assert caller.post("/v1/quotes", json=HEAVY).status_code == 200


def test_a_search_that_finds_the_lane_taken_is_no_answer_without_it(
    running: Running, caller: FlaskClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    """An order that gets heavy amid its search is told to come again, not sent back with no fix."""
    order = copy.deepcopy(EXAMPLE_ORDER)
    order["slabs"][0]["cutouts"][0]["centre"]["y"] = "220 mm"
    monkeypatch.setattr(lane, "LIGHT_UNITS", 5.0)
    with _other_process(running.lane.enter):
        assert caller.post("/v1/quotes", json=order).status_code == 503
    assert "fix_all" in caller.post("/v1/quotes", json=order).get_json()


def test_the_lane_is_left_with_the_answer(running: Running, caller: FlaskClient) -> None:
    """After a heavy order, or a fault in it, another process may enter."""
    assert caller.post("/v1/quotes", json=HEAVY).status_code == 200
    entered = []
    done, told = os.pipe()
    if os.fork() == 0:
        os.write(told, b"1" if running.lane.enter() else b"0")
        os._exit(0)
    entered.append(os.read(done, 1))
    os.wait()
    assert entered == [b"1"]


def test_while_others_wait_each_caller_is_priced_once_at_a_time(running: Running) -> None:
    """A second order of one caller gets 429 while others wait; alone or for others it goes on."""
    running.gate = Gate(most_waiting=16, waiting=lambda: 1)
    client = _app(running).test_client()
    other = {"REMOTE_ADDR": "203.0.113.8"}
    work = running.active_clients

    def begins() -> None:
        work.take_row(1)
        work.begin("203.0.113.7")

    with _other_process(begins):
        refused = client.post("/v1/quotes", json=EXAMPLE_ORDER, environ_overrides=ELSEWHERE)
        assert (refused.status_code, refused.headers["Retry-After"]) == (429, "1")
        asked = {"json": EXAMPLE_ORDER, "headers": {"Prefer": "return=minimal"}}
        assert client.post("/v1/quotes", **asked, environ_overrides=other).status_code == 200
        assert client.get("/v1/choices", environ_overrides=ELSEWHERE).status_code == 200
        running.gate.waiting = lambda: 0
        assert client.post("/v1/quotes", **asked, environ_overrides=ELSEWHERE).status_code == 200
    running.gate.waiting = lambda: 1
    assert client.post("/v1/quotes", **asked, environ_overrides=ELSEWHERE).status_code == 200


def test_a_row_of_a_process_that_died_counts_for_nobody() -> None:
    """What a killed worker left in its row names no caller."""
    work = ActiveClients()
    with _other_process(lambda: work.begin("203.0.113.7")):
        work.take_row(1)
        assert work.elsewhere("203.0.113.7")
        assert not work.elsewhere("203.0.113.8")
    assert not work.elsewhere("203.0.113.7")


def test_no_work_is_done_for_who_has_gone() -> None:
    """A closed connection ends the work at its next piece; an open one, silent or not, does not."""
    ours, theirs = socket.socketpair()
    pace = Pace(Lane(), TimedSocket(ours))
    pace(1.0)
    theirs.sendall(b"more")
    pace(2.0)
    ours.recv(4)
    theirs.close()
    with pytest.raises(CallerGone):
        pace(3.0)
    ours.close()
