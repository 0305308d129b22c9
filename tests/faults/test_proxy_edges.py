"""The shipped proxy's own edges: what it refuses, keeps, limits and finds again, and its log."""

import json
import socket
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import ExitStack, suppress
from pathlib import Path

import pytest

from faults.proxying import Names, Proxied, names, proxied, read_all, upstream
from ledgerstone.codec.problem_kinds import PROBLEM_KINDS
from support.ports import free_port
from support.serving import ORDER, ROOT, served

TOKEN = "dG9rZW4tb2YtYS1xdW90ZS1mb3ItdGhlLWxvZw"  # noqa: S105 - looked for in the log
PROBLEM = "application/problem+json"
HOST = b"Host: x\r\nConnection: close\r\n"
KEPT = [("Cache-Control", "public, max-age=31536000, immutable"), ("Content-Type", "image/svg+xml")]


@pytest.fixture(scope="module")
def running(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Proxied]:
    """The proxy before a real server, that anybody may ask as often as they like."""
    with ExitStack() as stack:
        service = stack.enter_context(served(PROXIES="1", WEB=str(ROOT / "web")))
        known = stack.enter_context(names("127.0.0.1"))
        folder = tmp_path_factory.mktemp("proxy")
        unlimited = {"rate=10r/s": "rate=10000r/s", "rate=50r/s": "rate=10000r/s"}
        unlimited |= {"rate=5r/s": "rate=10000r/s"}
        yield stack.enter_context(proxied(folder, service.port, known, **unlimited))


def pages() -> list[str]:
    """The address of every page in the folder, by file and by folder."""
    files = [path.relative_to(ROOT / "web").as_posix() for path in (ROOT / "web").rglob("*.html")]
    assert "index.html" in files
    return ["/", "/desk/", *(f"/{name}" for name in files)]


@pytest.mark.parametrize("page", pages())
def test_every_page_says_who_may_frame_it(running: Proxied, page: str) -> None:
    """Each HTML file has the service's policy, whichever of its addresses it is asked by.

    The maker's page cannot be framed.
    """
    policy = running.get("/").headers["content-security-policy"]
    got = running.get(page)
    if page.startswith("/desk/"):
        assert "frame-ancestors 'none'" in got.headers["content-security-policy"]
        assert got.headers["x-robots-tag"] == "noindex, nofollow"
        return
    assert got.status == 200
    assert got.headers["content-type"].startswith("text/html")
    assert "frame-ancestors 'self'" in policy
    assert got.headers["content-security-policy"] == policy


@pytest.mark.parametrize(
    ("line", "headers", "status"),
    [
        (b"GET /%zz HTTP/1.1", HOST, 400),
        (b"GET /%00 HTTP/1.1", HOST, 400),
        (b"GET /..%2f..%2fetc/passwd HTTP/1.1", HOST, 400),
        (b"GET /" + b"a" * 20_000 + b" HTTP/1.1", HOST, 414),
        (b"GET / HTTP/1.1", HOST + b"X-Long: " + b"a" * 20_000 + b"\r\n", 431),
        (b"GET / HTTP/1.1", b"", 400),
        (b"G@T / HTTP/1.1", HOST, 400),
        (b"GET / HTTP/7.0", HOST, 505),
        (b"POST /v1/quotes HTTP/1.1", HOST + b"Transfer-Encoding: gzip\r\n", 501),
        (b"POST /v1/quotes HTTP/1.1", HOST + b"Content-Length: 70000\r\n", 413),
        (b"POST /v1/quotes HTTP/1.1", HOST + b"Content-Length: -1\r\n", 400),
        (b"POST /examples/workshop.css HTTP/1.1", HOST + b"Content-Length: 0\r\n", 405),
        (b"GET /nothing.css HTTP/1.1", HOST, 404),
        (b"GET /metrics HTTP/1.1", HOST, 404),
    ],
    ids=lambda part: str(part)[:40],
)
def test_what_the_proxy_refuses_is_a_problem_of_its_status(
    running: Proxied, line: bytes, headers: bytes, status: int
) -> None:
    """Address, method, header or length that nginx will not have: the body says the same status."""
    said = running.raw(line + b"\r\n" + headers + b"\r\n")
    head, _, body = said.partition(b"\r\n\r\n")
    problem = json.loads(body)
    assert int(head.split()[1]) == status
    assert problem["status"] == status
    assert f"Content-Type: {PROBLEM}".encode() in head
    assert problem["type"].rpartition("/")[2] in {kind.name for kind in PROBLEM_KINDS}


def test_without_tls_what_is_malformed_is_a_problem_too(running: Proxied) -> None:
    """Port 80 sends everybody to TLS, and refuses in the same words."""
    with socket.create_connection(("127.0.0.1", running.plain_port), timeout=10) as caller:
        caller.sendall(b"GET /%zz HTTP/1.1\r\n" + HOST + b"\r\n")
        said = read_all(caller)
    assert said.startswith(b"HTTP/1.1 400 ")
    assert json.loads(said.partition(b"\r\n\r\n")[2])["status"] == 400


def test_a_bad_chunk_size_is_not_understood(running: Proxied) -> None:
    """A body in chunks whose size is none is a problem, not an internal fault."""
    head = b"POST /v1/quotes HTTP/1.1\r\nContent-Type: application/json\r\n" + HOST
    said = running.raw(head + b"Transfer-Encoding: chunked\r\n\r\nzz\r\n{}\r\n0\r\n\r\n")
    assert said.startswith(b"HTTP/1.1 400 ")
    assert json.loads(said.partition(b"\r\n\r\n")[2])["status"] == 400


@pytest.fixture
def known() -> Iterator[Names]:
    """A name server whose one name is at 127.0.0.1."""
    with names("127.0.0.1") as server:
        yield server


def test_no_answer_and_none_in_time_are_distinguished(tmp_path: Path, known: Names) -> None:
    """A dead service is 502, a silent one 504, and the body says so."""
    port = free_port()
    hurried = {"proxy_read_timeout 25s": "proxy_read_timeout 1s"}
    with proxied(tmp_path, port, known, **hurried) as running:
        nobody = running.quote()
        with socket.create_server(("127.0.0.1", port)):
            silence = running.quote()
    assert (nobody.status, json.loads(nobody.body)["status"]) == (502, 502)
    assert (silence.status, json.loads(silence.body)["status"]) == (504, 504)
    assert silence.headers["retry-after"] == "5"


def test_a_request_is_given_to_one_server_alone(tmp_path: Path, known: Names) -> None:
    """A quote that a server drops goes to the next; a letter is not sent twice."""
    port = free_port()
    known.addresses.append("127.0.0.2")
    with (
        upstream("127.0.0.1", port, drops=True) as one,
        upstream("127.0.0.2", port, drops=True) as other,
        proxied(tmp_path, port, known) as running,
    ):
        assert running.get("/v1/requests", b"{}").status == 502
        assert one.asked + other.asked == ["/v1/requests"]
        assert running.quote().status == 502
        assert (one.asked + other.asked).count("/v1/quotes") == 2


def test_a_service_built_again_is_found_again(tmp_path: Path, known: Names) -> None:
    """The name moves to another address: within seconds the proxy asks there, not restarted."""
    port = free_port()
    with (
        upstream("127.0.0.1", port) as before,
        upstream("127.0.0.2", port) as after,
        proxied(tmp_path, port, known) as running,
    ):
        assert running.get("/v1/choices").status == 200
        known.addresses = ["127.0.0.2"]
        time.sleep(2.5)
        assert running.get("/v1/choices").status == 200
        running.get("/v1/choices")
    assert before.asked == ["/v1/choices"]
    assert len(after.asked) >= 1


def test_a_drawing_is_kept_under_what_the_service_knows(tmp_path: Path, known: Names) -> None:
    """Unknown members make no second copy; a member in another spelling is not passed as known."""
    port = free_port()
    address = f"/v1/drawings/{TOKEN}/plan.svg"
    with (
        upstream("127.0.0.1", port, KEPT) as service,
        proxied(tmp_path, port, known) as running,
    ):
        bodies = {running.get(f"{address}?x={number}").body for number in range(5)}
        assert service.asked == [address]
        assert bodies == {address.encode()}
        right = running.get(f"{address}?width=400&slab=1")
        assert running.get(f"{address}?slab=1&y=2&width=400").body == right.body
        assert service.asked[1:] == [f"{address}?slab=1&width=400&"]
        assert running.get(f"{address}?SLAB=2").body == running.get(f"{address}?slab=2").body
        assert service.asked[2:] == [f"{address}?slab=2&"]


def test_no_stranger_fills_the_drawings_cache(tmp_path: Path, known: Names) -> None:
    """A site that the service does not answer for gets the drawing, and no copy of its own."""
    port = free_port()
    address = f"/v1/drawings/{TOKEN}/plan.svg"
    allowed = [*KEPT, ("Access-Control-Allow-Origin", "https://maker.example"), ("Vary", "Origin")]
    with (
        upstream("127.0.0.1", port, allowed) as service,
        proxied(tmp_path, port, known) as running,
    ):
        for _ in range(2):
            running.get(address, Origin="https://maker.example", Accept="image/svg+xml")
            running.get(address, Origin="https://maker.example", Accept="*/*")
        assert len(service.asked) == 1
        running.get(address, Origin="https://stranger.example")
        running.get(address, Origin="https://stranger.example")
        assert len(service.asked) == 3
        held = [path for path in (tmp_path / "cache/drawings").rglob("*") if path.is_file()]
        assert len(held) == 1


def test_the_page_waits_for_no_worker(tmp_path: Path, known: Names) -> None:
    """Cached once, the page is served while the service is down, with its policy."""
    port = free_port()
    policy = ("Content-Security-Policy", "frame-ancestors 'self'")
    with proxied(tmp_path, port, known) as running:
        with upstream("127.0.0.1", port, [policy, ("Cache-Control", "no-cache")]) as service:
            first = running.get("/?quote=secret")
        assert service.asked == ["/?quote=secret"]
        time.sleep(6.0)
        with socket.create_server(("127.0.0.1", port)):
            waits_s = list[float]()
            for _ in range(3):
                began_s = time.monotonic()
                again = running.get("/")
                waits_s.append(time.monotonic() - began_s)
    assert (again.status, again.body) == (200, first.body)
    assert again.headers["content-security-policy"] == policy[1]
    assert min(waits_s) < 0.5  # a stall of the machine is no wait of the proxy's


def test_a_household_is_one_caller_and_its_neighbour_another(tmp_path: Path, known: Names) -> None:
    """Addresses of one /64 share a limit; those of the next are not held up by it."""
    port = free_port()
    as_said = "error_log /dev/null crit;"
    told = {
        as_said: f"{as_said} set_real_ip_from 127.0.0.1; real_ip_header X-Caller;",
        "rate=10r/s": "rate=1r/s",
    }
    with upstream("127.0.0.1", port), proxied(tmp_path, port, known, **told) as running:
        for number in range(70):
            last = running.get("/v1/choices", None, **{"X-Caller": f"2001:db8:1:2::{number + 1:x}"})
        neighbour = running.get("/v1/choices", None, **{"X-Caller": "2001:db8:1:3::1"})
        fourth = running.get("/v1/choices", None, **{"X-Caller": "192.0.2.1"})
    assert last.status == 429
    assert (neighbour.status, fourth.status) == (200, 200)


@pytest.mark.parametrize(
    "address", ["/", "/problems/busy", "/v1/health/live", "/examples/workshop.css"]
)
def test_nothing_is_without_a_limit(tmp_path: Path, known: Names, address: str) -> None:
    """The page, its files, the pages of problems and health are limited by caller as orders are."""
    port = free_port()
    slower = {"rate=50r/s": "rate=2r/s", "rate=10r/s": "rate=2r/s"}
    with (
        upstream("127.0.0.1", port),
        proxied(tmp_path, port, known, **slower) as running,
        ThreadPoolExecutor(8) as callers,
    ):
        answers = list(callers.map(lambda _: running.get(address), range(260)))
    assert {got.status for got in answers} == {200, 429}


def test_who_sends_keys_is_slowed_down(tmp_path: Path, known: Names) -> None:
    """Above the rate of a page being typed in, requests with a key are limited; others are not."""
    port = free_port()
    slower = {"rate=5r/s": "rate=1r/s", "rate=10r/s": "rate=10000r/s"}
    with upstream("127.0.0.1", port), proxied(tmp_path, port, known, **slower) as running:
        tried = [running.get("/v1/desk", None, Authorization=f"Bearer {n}") for n in range(60)]
        without = running.get("/v1/choices")
    assert {got.status for got in tried} == {200, 429}
    assert without.status == 200


def test_where_there_is_ipv6_it_is_listened_on(tmp_path: Path, known: Names) -> None:
    """The script adds the sockets of IPv6 on a machine that has it, and on no other."""
    has_one = Path("/proc/net/if_inet6").is_file() and Path("/proc/net/if_inet6").read_text("ascii")
    with proxied(tmp_path, free_port(), known) as running:
        assert (tmp_path / "ipv6-443.conf").exists() == bool(has_one)
        if has_one:
            socket.create_connection(("::1", running.port), timeout=5).close()


def test_the_proxys_log_names_nobody(tmp_path: Path, known: Names) -> None:
    """Failed handshakes, an unwritable cache and dead servers leave no address in the log."""
    port = free_port()
    with upstream("127.0.0.1", port, KEPT), proxied(tmp_path, port, known) as running:
        for rubbish in (b"\x16\x03\x01\x02\x00\x01\x00" + b"\xff" * 600, b"GET / HTTP/1.1\r\n\r\n"):
            with socket.create_connection(("127.0.0.1", running.port), timeout=5) as caller:
                caller.sendall(rubbish)
                read_all(caller)
        (tmp_path / "cache/drawings").rename(tmp_path / "cache/gone")
        (tmp_path / "cache/drawings").write_text("no folder", encoding="utf-8")
        with suppress(OSError):
            running.get(f"/v1/drawings/{TOKEN}/plan.svg")
        known.addresses = ["127.0.0.9"]
        time.sleep(2.5)
        assert running.get(f"/v1/quotes/{TOKEN}").status == 502
        running.get(body=ORDER)
    for told in (TOKEN, "client:", "request:", "127.0.0.1", "/v1/"):
        assert told not in running.log.replace(f"127.0.0.1:{known.port}", "")
