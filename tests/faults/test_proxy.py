"""The shipped proxy before real servers: slow callers, large bodies, a rush, and a dead replica."""

import json
import os
import signal
import threading
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager, suppress
from pathlib import Path

import pytest

from faults.proxying import Proxied, names, proxied
from support.hardest import crowded
from support.ports import free_port
from support.serving import ORDER, ROOT, Served, served, wait_for

pytestmark = pytest.mark.long

HALF = (
    b"POST /v1/quotes HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
    b"Content-Length: 900\r\n\r\n{"
)


@contextmanager
def _replicas(folder: Path, replicas: int, **more: str) -> Iterator[tuple[Proxied, list[Served]]]:
    """The proxy before real servers, each at an address of its own, all of one name and port."""
    port = free_port()
    hosts = [f"127.0.0.{1 + number}" for number in range(replicas)]
    with ExitStack() as stack:
        servers = [
            stack.enter_context(
                served(PORT=str(port), HOST=host, PROXIES="1", WEB=str(ROOT / "web"))
            )
            for host in hosts
        ]
        known = stack.enter_context(names(*hosts))
        running = stack.enter_context(proxied(folder, port, known, **more))
        wait_for(lambda: running.get("/v1/health/live").status == 200)
        yield running, servers


@pytest.fixture(scope="module")
def running(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Proxied]:
    """The proxy before one server of two workers."""
    with _replicas(tmp_path_factory.mktemp("proxy"), 1) as (one, _):
        yield one


def test_half_sent_bodies_block_nobody(running: Proxied) -> None:
    """Beside a dozen bodies that never come whole, a good caller is answered as fast as alone."""
    began_s = time.monotonic()
    alone = running.quote()
    alone_s = time.monotonic() - began_s
    slow = [running.begins(HALF) for _ in range(12)]
    began_s = time.monotonic()
    beside = [running.quote() for _ in range(4)]
    beside_s = (time.monotonic() - began_s) / 4
    for caller in slow:
        caller.close()
    print(f"alone {alone_s:.2f} s; beside twelve half-sent bodies {beside_s:.2f} s each")
    assert alone.status == 200
    assert [(one.status, one.body) for one in beside] == [(200, alone.body)] * 4
    assert beside_s < max(2.0, 4 * alone_s)


def test_one_byte_a_second_is_cut_off(running: Proxied) -> None:
    """A header that trickles is ended by the proxy after its ten seconds, and no worker waits."""
    caller = running.begins(b"GET /v1/choices HTTP/1.1\r\nHost: x\r\nX-Slow: ")
    began_s = time.monotonic()
    with caller, suppress(OSError):
        while time.monotonic() - began_s < 30:
            caller.sendall(b"a")
            time.sleep(1.0)
            caller.settimeout(0.01)
            with suppress(TimeoutError):
                if not caller.recv(1):
                    break
    took_s = time.monotonic() - began_s
    print(f"cut off after {took_s:.0f} s")
    assert took_s < 15


def test_too_large_a_body_is_a_problem_of_the_proxys(running: Proxied) -> None:
    """64 kB and one byte are refused as a problem document before the service sees them."""
    got = running.get(body=b" " * (64 * 1024 + 1))
    assert got.status == 413
    assert json.loads(got.body)["type"] == "/problems/too-large"


def test_counts_are_not_for_the_street(running: Proxied) -> None:
    """The proxy blocks the metrics, and serves the page's files itself."""
    assert running.get("/metrics").status == 404
    assert running.get("/").status == 200
    for style in (ROOT / "web").rglob("*.css"):
        address = "/" + style.relative_to(ROOT / "web").as_posix()
        got = running.get(address)
        assert (got.status, got.body) == (200, style.read_bytes()), address


def test_a_rush_from_one_address_is_asked_to_wait(running: Proxied) -> None:
    """Of a hundred calls at once forty-odd are let through; the rest are problem documents."""
    time.sleep(5.0)
    answers = [running.get("/v1/choices") for _ in range(100)]
    refused = [got.body for got in answers if got.status == 429]
    print(f"{100 - len(refused)} of 100 let through")
    assert {got.status for got in answers} == {200, 429}
    assert all(json.loads(body)["type"] == "/problems/too-many" for body in refused)


def test_a_dead_replica_is_bypassed(tmp_path: Path) -> None:
    """With one of two servers killed, every request gets a correct answer."""
    with _replicas(tmp_path, 2) as (two, servers):
        right = two.quote()
        workers = servers[0].workers
        servers[0].process.send_signal(signal.SIGKILL)
        for worker in workers:
            os.kill(worker, signal.SIGKILL)
        began_s = time.monotonic()
        answers = [two.quote() for _ in range(10)]
        same = [(got.status, got.body) == (200, right.body) for got in answers]
        print(f"{sum(same)} of 10 right in {time.monotonic() - began_s:.1f} s")
        assert all(same)


def _heavy(number: int) -> bytes:
    order = crowded(1, 20, "units", 20)
    order["slabs"][0]["outline"]["length"] -= number
    return json.dumps(order).encode()


def _timed(running: Proxied, path: str, body: bytes | None = None) -> tuple[int, float]:
    """Ask as an ordinary customer; return the status and how long it took, s."""
    began_s = time.monotonic()
    got = running.get(path, body, **{"X-Caller": "203.0.113.8"})
    return got.status, time.monotonic() - began_s


def test_heavy_orders_through_the_proxy_spare_the_others(tmp_path: Path) -> None:
    """Before two replicas, sixteen heavy orders at once and more of them hold no customer up."""
    as_said = "error_log /dev/null crit;"
    told = {as_said: f"{as_said} set_real_ip_from 127.0.0.1; real_ip_header X-Caller;"}
    stop = threading.Event()

    def attack(running: Proxied, number: int, statuses: list[int]) -> None:
        address = {"X-Caller": f"203.0.113.{20 + number % 3}"}
        while not stop.is_set():
            number += 100
            statuses.append(running.get(body=_heavy(number % 900), **address).status)
            stop.wait(0.2)

    with _replicas(tmp_path, 2, **told) as (two, _):
        statuses: list[int] = []
        _timed(two, "/")
        threads = [threading.Thread(target=attack, args=(two, k, statuses)) for k in range(16)]
        for thread in threads:
            thread.start()
        pages, asked = [], []
        for _ in range(6):
            pages += [_timed(two, path) for path in ("/", "/app.js")]
            asked.append(_timed(two, "/v1/health/live"))
            asked.append(_timed(two, "/v1/quotes", ORDER))
        stop.set()
        for thread in threads:
            thread.join()
    counts = {status: statuses.count(status) for status in sorted(set(statuses))}
    slowest = [max(took_s for _, took_s in seen) for seen in (pages, asked)]
    print(f"attackers {counts}; page {slowest[0]:.2f} s, health and quote {slowest[1]:.2f} s")
    assert {status for status, _ in (*pages, *asked)} == {200}
    assert slowest[0] <= 0.5
    assert slowest[1] <= 2.0
    assert set(statuses) <= {200, 422, 429, 503}
