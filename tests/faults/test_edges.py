"""The service without a proxy: malformed requests, slow requests, and its log."""

import json
import os
import signal
import socket
import threading
import time
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

import pytest

from faults.proxying import read_all
from ledgerstone.api.worker import HEADERS_S, WHOLE_S
from ledgerstone.codec.problem_kinds import PROBLEM_KINDS
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY
from support.serving import ORDER, TYPE, Served, ask, served, wait_for

HOST = b"Host: x\r\nConnection: close\r\n"
JSON = HOST + b"Content-Type: application/json\r\n"


@pytest.fixture(scope="module")
def log(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Where the server's own output goes."""
    return tmp_path_factory.mktemp("edges") / "log"


@pytest.fixture(scope="module")
def service(log: Path) -> Iterator[Served]:
    """A server for all of these; it logs into a file."""
    with log.open("wb") as errors, served(errors) as running:
        wait_for(lambda: len(running.workers) == 2)
        yield running


def sent(service: Served, text: bytes) -> tuple[int, bytes, bytes]:
    """Send bytes as they are; return the status, the head and the body."""
    with socket.create_connection(("127.0.0.1", service.port), timeout=30) as caller:
        with suppress(OSError):
            caller.sendall(text)
        head, _, body = read_all(caller).partition(b"\r\n\r\n")
    return int(head.split()[1]), head, body


@pytest.mark.parametrize(
    ("text", "status"),
    [
        (b"GET /\x01 HTTP/1.1\r\n" + HOST, 400),
        (b"nonsense\r\n", 400),
        (b"GET / HTTP/7.0\r\n" + HOST, 400),
        (b"GET / HTTP/1.1\r\nHo st: x\r\n", 400),
        (b"GET / HTTP/1.1\r\n" + HOST + b"Content-Length: x\r\n", 400),
        (b"GET /" + b"a" * 9000 + b" HTTP/1.1\r\n" + HOST, 414),
        (b"GET / HTTP/1.1\r\n" + HOST + b"X-Long: " + b"a" * 9000 + b"\r\n", 431),
        (b"GET / HTTP/1.1\r\n" + HOST + b"X-A: b\r\n" * 60, 431),
        (b"POST /v1/quotes HTTP/1.1\r\n" + JSON + b"Expect: a-miracle\r\n", 417),
        (b"POST /v1/quotes HTTP/1.1\r\n" + JSON + b"Transfer-Encoding: nonsense\r\n", 501),
        (b"POST /v1/quotes HTTP/1.1\r\n" + JSON
         + b"Transfer-Encoding: chunked\r\n\r\nzz\r\n{}", 400),
    ],
    ids=lambda part: str(part)[:60],
)  # fmt: skip
def test_what_is_no_request_is_a_problem(service: Served, text: bytes, status: int) -> None:
    """What the server itself cannot read is a problem document of a kind that has a page."""
    got, head, body = sent(service, text + b"\r\n")
    problem = json.loads(body)
    assert (got, problem["status"]) == (status, status)
    assert b"\r\nContent-Type: application/problem+json" in head
    kind = problem["type"].rpartition("/")[2]
    assert [one.status for one in PROBLEM_KINDS if one.name == kind] == [status]
    assert problem["instance"].rpartition(":")[2].encode() in head


def _dripped(service: Served, begins: bytes, results: list[tuple[float, bytes]]) -> None:
    """Begin a request and go on with a byte now and then; note how long it was borne, and how."""
    began_s, said = time.monotonic(), b""
    with socket.create_connection(("127.0.0.1", service.port), timeout=0.3) as caller:
        caller.sendall(begins)
        with suppress(ConnectionError, BrokenPipeError):
            while time.monotonic() - began_s < 30:
                with suppress(TimeoutError):
                    part = caller.recv(65536)
                    said += part
                    if not part:
                        break
                caller.sendall(b"a")
    results.append((time.monotonic() - began_s, said))


@pytest.mark.parametrize(
    ("begins", "most_s"),
    [
        (b"GET /v1/choices HTTP/1.1\r\n" + HOST + b"X-Slow: ", HEADERS_S),
        (b"POST /v1/quotes HTTP/1.1\r\n" + JSON + b"Content-Length: 9000\r\n\r\n{", WHOLE_S),
        (b"POST /v1/quotes HTTP/1.1\r\n" + JSON
         + b"Transfer-Encoding: chunked\r\n\r\n1000\r\n{", WHOLE_S),
    ],
    ids=("headers", "a body", "chunks"),
)  # fmt: skip
def test_two_that_drip_block_nobody_for_long(service: Served, begins: bytes, most_s: float) -> None:
    """As many as there are workers drip a byte each third of a second: all are cut off in time."""
    before = set(service.workers)
    results: list[tuple[float, bytes]] = []
    drips = [threading.Thread(target=_dripped, args=(service, begins, results)) for _ in range(2)]
    for drip in drips:
        drip.start()
    time.sleep(0.5)
    other = ask(service.port, "/v1/choices", None)
    for drip in drips:
        drip.join()
    print(f"borne {[round(took_s, 1) for took_s, _ in results]} s; another {other.took_s:.1f} s")
    assert other.status == 200
    assert other.took_s < most_s + 2.0
    assert all(took_s < most_s + 3.0 for took_s, _ in results)
    assert all(said.startswith(b"HTTP/1.1 408 ") for _, said in results)
    assert set(service.workers) == before


def test_who_reads_nothing_is_disconnected(service: Served) -> None:
    """A caller that takes no byte of a large answer does not keep a worker to itself."""
    before = set(service.workers)
    quote = json.loads(ask(service.port).body)
    path = quote["drawings"]["view"].partition("localhost")[2].replace(".svg", ".png?width=1600")
    callers = []
    for _ in range(2):
        caller = socket.socket()
        caller.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 1024)
        caller.connect(("127.0.0.1", service.port))
        caller.sendall(f"GET {path} HTTP/1.1\r\n".encode() + HOST + b"\r\n")
        callers.append(caller)
    time.sleep(0.5)
    answer = ask(service.port, "/v1/choices", None)
    for caller in callers:
        caller.close()
    assert answer.status == 200
    assert answer.took_s < 12.0
    assert set(service.workers) == before


def test_an_answer_is_closed_soon_though_the_caller_does_not(service: Served) -> None:
    """Two connections that stay open after the answer block no other; one of three tries."""
    callers, waits_s = [], list[float]()
    for _ in range(3):
        for _ in range(2):
            callers.append(socket.create_connection(("127.0.0.1", service.port)))
            callers[-1].sendall(b"GET /v1/health/live HTTP/1.1\r\n" + HOST + b"\r\n")
        answer = ask(service.port, "/v1/health/live", None)
        assert answer.status == 200
        waits_s.append(answer.took_s)
    assert min(waits_s) < 1.5
    for caller in callers:
        caller.close()


def test_no_line_of_the_log_tells_who_or_what(service: Served, log: Path) -> None:
    """A quote, its link, its drawing aborted amid its making, rubbish and time-outs: no secret."""
    quote = json.loads(ask(service.port).body)
    token, drawing = quote["token"], quote["drawings"]["plan"].partition("localhost")[2]
    ask(service.port, f"/v1/quotes/{token}", None)
    sent(service, f"GET /v1/quotes/{token} HTTP/9.9\r\n".encode() + HOST + b"\r\n")
    sent(service, f"POST /v1/quotes/{token}\x7f HTTP/1.1\r\n".encode() + HOST + b"\r\n")
    lines = len(log.read_text(encoding="utf-8").splitlines())
    _aborted(service, f"/v1/quotes?of={token}&drawn={drawing}")
    wait_for(lambda: "SystemExit" in log.read_text(encoding="utf-8"))
    text = log.read_text(encoding="utf-8")
    assert len(text.splitlines()) > lines
    for line in text.splitlines():
        assert json.loads(line)["time"]
    secrets = (
        token[:24],
        drawing.split("/")[3][:24],
        MAKER_KEY,
        "HR9",
        "127.0.0.1",
        "/v1/quotes/e",
    )
    label = EXAMPLE_ORDER["slabs"][0]["label"]
    for secret in (*secrets, label, "localhost", "HTTP/9.9", TYPE["Content-Type"]):
        assert secret not in text, secret


def _aborted(service: Served, path: str) -> None:
    """Have both workers aborted, as the arbiter aborts what takes too long, amid a request each.

    Each is stopped first, so that the signal is there before the drawing is done.
    """
    workers = service.workers
    for worker in workers:
        os.kill(worker, signal.SIGSTOP)
    callers = [socket.create_connection(("127.0.0.1", service.port)) for _ in range(2)]
    for caller in callers:
        caller.sendall(f"POST {path} HTTP/1.1\r\n".encode() + JSON
                       + b"Content-Length: 9000\r\n\r\n{")  # fmt: skip
    for worker in workers:
        os.kill(worker, signal.SIGCONT)
    time.sleep(0.7)
    for worker in workers:
        os.kill(worker, signal.SIGABRT)
    for caller in callers:
        read_all(caller)
        caller.close()


def test_after_a_reload_the_log_is_of_the_same_form(service: Served, log: Path) -> None:
    """A worker that ends by itself after a reload leaves a line of JSON, the server's own."""
    before = set(service.workers)
    service.process.send_signal(signal.SIGHUP)
    wait_for(lambda: len(service.workers) == 2 and not before & set(service.workers))
    lines = len(log.read_text(encoding="utf-8").splitlines())
    os.kill(service.workers[0], signal.SIGABRT)
    wait_for(lambda: "exited with code 1" in log.read_text(encoding="utf-8"))
    for line in log.read_text(encoding="utf-8").splitlines()[lines:]:
        assert json.loads(line)["level"] in ("info", "warning", "error", "critical")


def test_a_server_starts_though_nothing_can_be_written() -> None:
    """With both outputs on a full disk it starts, answers and takes its leave as ever."""
    with Path("/dev/full").open("wb") as full, served(full, out=full) as running:
        assert ask(running.port, body=ORDER).status == 200
        assert ask(running.port, body=b"{").status == 400
