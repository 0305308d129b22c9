"""Who is asked to wait, and how long."""

import json
import socket
from dataclasses import replace
from pathlib import Path
from types import SimpleNamespace

import pytest
from flask.testing import FlaskClient
from hypothesis import given
from hypothesis import strategies as st

from ledgerstone.api import Settings, create_app
from ledgerstone.api.health import Running
from ledgerstone.api.limits import (
    MAX_CLIENTS,
    UNDECLARED_PROXY,
    Buckets,
    Gate,
    client_of,
    waiting_at,
)
from ledgerstone.wording import Message, english
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY

SETTINGS = Settings(maker_key=MAKER_KEY)
ELSEWHERE = {"REMOTE_ADDR": "203.0.113.7"}  # RFC 5737: an address of no one's


@pytest.fixture
def _no_time_passes(monkeypatch: pytest.MonkeyPatch) -> None:
    """A slow machine gives no token back between two requests."""
    monkeypatch.setattr("ledgerstone.api.limits.time", SimpleNamespace(monotonic=lambda: 1000.0))


def _client(settings: Settings, running: Running | None = None) -> FlaskClient:
    return create_app(settings, running).test_client()


def test_a_bucket_gives_what_it_holds_and_then_its_rate() -> None:
    """Three at once, then one each half second."""
    buckets = Buckets(rate_per_s=2.0, most=3)
    assert [buckets.wait_s("a", 10.0) for _ in range(4)] == [0.0, 0.0, 0.0, 0.5]
    assert buckets.wait_s("a", 10.25) == pytest.approx(0.25)
    assert buckets.wait_s("a", 10.5) == 0.0
    assert buckets.wait_s("b", 10.5) == 0.0


@given(st.lists(st.floats(0, 0.4), min_size=1, max_size=200), st.integers(1, 9))
def test_no_more_is_let_in_than_the_rate_and_the_bucket_allow(
    pauses_s: list[float], most: int
) -> None:
    """However the asking is spread, what is let in is at most the bucket and what came back."""
    buckets, now_s, let_in = Buckets(rate_per_s=5.0, most=most), 0.0, 0
    for pause_s in pauses_s:
        now_s += pause_s
        let_in += buckets.wait_s("a", now_s) == 0.0
    assert let_in <= most + 5.0 * now_s + 1e-6


def test_the_buckets_do_not_grow_without_end() -> None:
    """Of ever new clients only the latest are remembered."""
    buckets = Buckets(rate_per_s=1.0, most=1)
    for number in range(MAX_CLIENTS + 100):
        assert buckets.wait_s(str(number), 0.0) == 0.0
    assert len(buckets._left) == MAX_CLIENTS
    assert buckets.wait_s(str(MAX_CLIENTS + 99), 0.0) > 0.0


@pytest.mark.parametrize(
    ("address", "client"),
    [
        ("203.0.113.7", "203.0.113.7"),
        ("::ffff:203.0.113.7", "203.0.113.7"),
        ("2001:db8:1:2:3:4:5:6", "2001:db8:1:2::/64"),
        ("127.0.0.1", None),
        ("::1", None),
        ("", "unknown"),
        (None, "unknown"),
    ],
)
def test_a_client_is_identified_by_its_address(address: str | None, client: str | None) -> None:
    """A whole /64 of IPv6 is one client, and this machine is none."""
    assert client_of(address) == client


@pytest.mark.usefixtures("_no_time_passes")
def test_a_client_that_asks_too_often_waits() -> None:
    """The third of two is answered 429, with the seconds to wait and nothing of the order read."""
    client = _client(replace(SETTINGS, rate_per_s=0.5, burst=2))
    answers = [
        client.post("/v1/quotes", data=b"{", content_type="application/json",
                    environ_overrides=ELSEWHERE)
        for _ in range(3)
    ]  # fmt: skip
    assert [answer.status_code for answer in answers] == [400, 400, 429]
    assert answers[2].mimetype == "application/problem+json"
    assert answers[2].headers["Retry-After"] == "2"
    assert answers[2].get_json()["detail"] == english(Message("asked-too-often", seconds=2))
    assert client.get("/v1/health/live", environ_overrides=ELSEWHERE).status_code == 200
    assert client.get("/v1/choices", environ_overrides=ELSEWHERE).status_code == 200


@pytest.mark.usefixtures("_no_time_passes")
def test_a_form_sent_without_a_script_counts_too() -> None:
    """The page's own form is an order, and is held up like one; the page itself never is."""
    web = Path(__file__).resolve().parents[2] / "web"
    client = _client(replace(SETTINGS, rate_per_s=0.5, burst=2, web_folder=web))
    form = {"content_type": "application/x-www-form-urlencoded", "environ_overrides": ELSEWHERE}
    answers = [client.post("/", data=b"label=x", **form).status_code for _ in range(3)]
    assert answers == [400, 400, 429]
    with client.get("/", environ_overrides=ELSEWHERE) as page:
        assert page.status_code == 200


@pytest.mark.usefixtures("_no_time_passes")
def test_a_guess_at_the_makers_key_counts_too() -> None:
    """Who tries keys is held up like anyone else."""
    client = _client(replace(SETTINGS, rate_per_s=0.5, burst=2))
    tries = [
        client.post("/v1/replies", json={}, headers={"Authorization": f"Bearer {n}"},
                    environ_overrides=ELSEWHERE).status_code
        for n in range(3)
    ]  # fmt: skip
    assert tries == [401, 401, 429]


@pytest.mark.usefixtures("_no_time_passes")
def test_an_address_is_taken_from_a_header_only_behind_a_proxy() -> None:
    """Without a trusted proxy a made-up address changes nothing; with one, its address counts."""
    for proxies, statuses in ((0, [400, 429]), (1, [400, 400])):
        client = _client(replace(SETTINGS, rate_per_s=0.5, burst=1, proxies=proxies))
        found = [
            client.post("/v1/quotes", data=b"{", content_type="application/json",
                        headers={"X-Forwarded-For": f"198.51.100.{n}"},
                        environ_overrides=ELSEWHERE).status_code
            for n in range(2)
        ]  # fmt: skip
        assert found == statuses, proxies


def test_this_machine_is_limited_with_all_together_alone() -> None:
    """Who asks from here is never told 429; while too many wait, he is turned away like anyone."""
    waiting = [0]
    running = Running(gate=Gate(most_waiting=16, waiting=lambda: waiting[0]))
    client = _client(replace(SETTINGS, rate_per_s=0.5, burst=1), running)
    bad = {"data": b"{", "content_type": "application/json"}
    assert {client.post("/v1/quotes", **bad).status_code for _ in range(5)} == {400}
    waiting[0] = 17
    assert client.post("/v1/quotes", **bad).status_code == 503


@pytest.mark.parametrize(
    ("proxies", "address", "headers", "told"),
    [
        (0, "127.0.0.1", {"X-Forwarded-For": "203.0.113.7"}, 1),
        (0, "127.0.0.1", {}, 0),
        (0, "203.0.113.7", {"X-Forwarded-For": "198.51.100.1"}, 0),
        (1, "127.0.0.1", {"X-Forwarded-For": "203.0.113.7"}, 0),
    ],
)
def test_a_proxy_that_the_settings_lack_is_logged_once(
    proxies: int,
    address: str,
    headers: dict[str, str],
    told: int,
    caplog: pytest.LogCaptureFixture,
) -> None:
    """Where this machine forwards for others and no setting says so, one line says it, unnamed."""
    client = _client(replace(SETTINGS, proxies=proxies))
    caplog.set_level("WARNING", "ledgerstone")
    for _ in range(2):
        client.get("/v1/health/live", headers=headers, environ_overrides={"REMOTE_ADDR": address})
    said = [record.getMessage() for record in caplog.records]
    assert said == [UNDECLARED_PROXY] * told


def test_a_full_queue_turns_away_before_any_work() -> None:
    """While more wait than may, a quote is answered 503 with Retry-After, and health as ever."""
    waiting = [17]
    running = Running(gate=Gate(most_waiting=16, waiting=lambda: waiting[0]))
    client = _client(SETTINGS, running)
    turned = client.post("/v1/quotes", json=EXAMPLE_ORDER)
    assert (turned.status_code, turned.headers["Retry-After"]) == (503, "2")
    assert json.loads(turned.data)["type"].endswith("/busy")
    assert client.get("/v1/health/ready").status_code == 200
    waiting[0] = 16
    assert client.post("/v1/quotes", json=EXAMPLE_ORDER).status_code == 200


def test_what_waits_at_a_socket_is_counted() -> None:
    """Three callers that nobody has accepted yet are three that wait."""
    with socket.socket() as listener:
        listener.bind(("127.0.0.1", 0))
        listener.listen(8)
        callers = [socket.create_connection(listener.getsockname()) for _ in range(3)]
        gate = Gate(most_waiting=2)
        gate.watch([listener])
        assert waiting_at(listener) == 3
        assert gate.is_full()
        listener.accept()[0].close()
        assert not gate.is_full()
        for caller in callers:
            caller.close()
