"""The shipped proxy before real servers: slow callers, large bodies, a rush, and a dead replica."""

import json
import os
import re
import shutil
import signal
import socket
import ssl
import subprocess
import time
import urllib.error
import urllib.request
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path

import pytest

from faults.serving import ORDER, ROOT, TYPE, Served, free_port, served, wait_for

pytestmark = pytest.mark.long
CERTIFICATE = (
    "openssl req -x509 -newkey rsa:2048 -nodes -days 2 -subj /CN=localhost"
    " -keyout privkey.pem -out fullchain.pem"
)
UNSIGNED = ssl._create_unverified_context()  # noqa: S323 - our own certificate, made a moment ago

HALF = (
    b"POST /v1/quotes HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
    b"Content-Length: 900\r\n\r\n{"
)


@dataclass(frozen=True, slots=True)
class Proxied:
    """The proxy's port, and the servers behind it."""

    port: int
    servers: list[Served]

    def ask(self, path: str = "/v1/quotes", body: bytes | None = ORDER) -> tuple[int, bytes]:
        """Ask through the proxy, with TLS."""
        url = f"https://127.0.0.1:{self.port}{path}"
        request = urllib.request.Request(url, body, TYPE if body is not None else {})
        try:
            with urllib.request.urlopen(request, timeout=60, context=UNSIGNED) as got:  # noqa: S310  our own loopback address
                return got.status, got.read()
        except urllib.error.HTTPError as refused:
            return refused.code, refused.read()

    def begins(self, text: bytes) -> ssl.SSLSocket:
        """Open a connection, send the beginning of a request and leave it at that."""
        plain = socket.create_connection(("127.0.0.1", self.port), timeout=30)
        caller = UNSIGNED.wrap_socket(plain)
        caller.sendall(text)
        return caller


def _written(folder: Path, port: int, servers: list[Served]) -> Path:
    """Write the shipped settings with this machine's places and ports in theirs."""
    upstream = "; ".join(f"server 127.0.0.1:{s.port} max_fails=1 fail_timeout=2s" for s in servers)
    main = (ROOT / "docker/nginx.conf").read_text(encoding="utf-8")
    tls = (ROOT / "docker/nginx-tls.conf").read_text(encoding="utf-8")
    main = main.replace("/tmp/", f"{folder}/")  # noqa: S108 - the container's
    main = re.sub(r"server service:8000[^;]*", upstream, main)
    main = re.sub(r"listen \[.*", "", main)
    main = main.replace("listen 80 default_server", f"listen 127.0.0.1:{free_port()}")
    tls = re.sub(r"listen \[.*", "", tls).replace("listen 443", f"listen 127.0.0.1:{port}")
    tls = tls.replace("/etc/letsencrypt/live/ledgerstone", str(folder))
    tls = tls.replace("/srv/web", str(ROOT / "web"))
    (folder / "tls.conf").write_text(tls, encoding="utf-8")
    (folder / "nginx.conf").write_text(main, encoding="utf-8")
    return folder / "nginx.conf"


@contextmanager
def _proxied(folder: Path, replicas: int) -> Iterator[Proxied]:
    assert shutil.which("nginx"), "these tests need nginx: apt install nginx-light"
    subprocess.run(CERTIFICATE.split(), cwd=folder, check=True, capture_output=True)
    with ExitStack() as stack:
        servers = [
            stack.enter_context(served(PROXIES="1", WEB=str(ROOT / "web"))) for _ in range(replicas)
        ]
        port = free_port()
        settings = _written(folder, port, servers)
        nginx = subprocess.Popen(["nginx", "-c", str(settings), "-g", "daemon off; user root;"])
        proxied = Proxied(port, servers)
        try:
            wait_for(lambda: _live(proxied))
            yield proxied
        finally:
            nginx.send_signal(signal.SIGTERM)
            nginx.wait(timeout=20)


def _live(proxied: Proxied) -> bool:
    with suppress(OSError):
        return proxied.ask("/v1/health/live", None)[0] == 200
    return False


@pytest.fixture(scope="module")
def proxied(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Proxied]:
    """The proxy before one server of two workers."""
    with _proxied(tmp_path_factory.mktemp("proxy"), 1) as running:
        yield running


def test_half_sent_bodies_hold_up_nobody(proxied: Proxied) -> None:
    """Beside a dozen bodies that never come whole, a good caller is answered as fast as alone."""
    began_s = time.monotonic()
    alone = proxied.ask()
    alone_s = time.monotonic() - began_s
    slow = [proxied.begins(HALF) for _ in range(12)]
    began_s = time.monotonic()
    beside = [proxied.ask() for _ in range(4)]
    beside_s = (time.monotonic() - began_s) / 4
    for caller in slow:
        caller.close()
    print(f"alone {alone_s:.2f} s; beside twelve half-sent bodies {beside_s:.2f} s each")
    assert alone[0] == 200
    assert beside == [alone] * 4
    assert beside_s < max(2.0, 4 * alone_s)


def test_one_byte_a_second_is_cut_off(proxied: Proxied) -> None:
    """A header that trickles is ended by the proxy after its ten seconds, and no worker waits."""
    caller = proxied.begins(b"GET /v1/choices HTTP/1.1\r\nHost: x\r\nX-Slow: ")
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


def test_too_large_a_body_is_a_problem_of_the_proxys(proxied: Proxied) -> None:
    """64 kB and one byte are refused as a problem document before the service sees them."""
    status, body = proxied.ask(body=b" " * (64 * 1024 + 1))
    assert status == 413
    assert json.loads(body)["type"] == "/problems/too-large"


def test_counts_are_not_for_the_street(proxied: Proxied) -> None:
    """The proxy lets nobody at the counts, and serves the page's files itself."""
    assert proxied.ask("/metrics", None)[0] == 404
    assert proxied.ask("/", None)[0] == 200
    for style in (ROOT / "web").rglob("*.css"):
        address = "/" + style.relative_to(ROOT / "web").as_posix()
        assert proxied.ask(address, None) == (200, style.read_bytes()), address


def test_a_rush_from_one_address_is_told_to_wait(proxied: Proxied) -> None:
    """Of a hundred calls at once forty-odd are let through; the rest are problem documents."""
    time.sleep(5.0)
    answers = [proxied.ask("/v1/choices", None) for _ in range(100)]
    refused = [body for status, body in answers if status == 429]
    print(f"{100 - len(refused)} of 100 let through")
    assert {status for status, _ in answers} == {200, 429}
    assert all(json.loads(body)["type"] == "/problems/too-many" for body in refused)


def test_a_dead_replica_is_gone_round(tmp_path: Path) -> None:
    """One of two servers is killed outright: nobody gets a wrong answer, or none."""
    with _proxied(tmp_path, 2) as two:
        right = two.ask()
        workers = two.servers[0].workers
        two.servers[0].process.kill()
        for worker in workers:
            os.kill(worker, signal.SIGKILL)
        began_s = time.monotonic()
        answers = [two.ask() for _ in range(10)]
        print(
            f"{sum(a == right for a in answers)} of 10 right in {time.monotonic() - began_s:.1f} s"
        )
        assert answers == [right] * 10
