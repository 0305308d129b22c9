"""The shipped proxy on loopback, as its own script starts it: with names, and servers behind it."""

from __future__ import annotations

import os
import re
import shutil
import signal
import socket
import socketserver
import ssl
import struct
import subprocess
import threading
import urllib.error
import urllib.request
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

from support.ports import free_port
from support.serving import ORDER, ROOT, TYPE, wait_for

CERTIFICATE = (
    "openssl req -x509 -newkey rsa:2048 -nodes -days 2 -subj /CN=localhost"
    " -keyout privkey.pem -out fullchain.pem"
)
UNSIGNED = ssl._create_unverified_context()  # noqa: S323 - our own certificate, made a moment ago
SHIPPED = ("nginx.conf", "nginx-tls.conf", "nginx-problem.conf", "proxy-start")


@dataclass(slots=True)
class Names:
    """A name server that knows one name, ``service``: its addresses can be changed."""

    port: int
    addresses: list[str]

    def answer(self, query: bytes) -> bytes:
        """Answer one query for an address of IPv4 (RFC 1035, 4.1)."""
        head = query[:2] + struct.pack(">HHHHH", 0x8180, 1, len(self.addresses), 0, 0)
        question = query[12 : query.index(b"\0", 12) + 5]
        found = (socket.inet_aton(one) for one in self.addresses)
        answers = (b"\xc0\x0c" + struct.pack(">HHIH", 1, 1, 1, 4) + one for one in found)
        return head + question + b"".join(answers)


@contextmanager
def names(*addresses: str) -> Iterator[Names]:
    """Answer for the name ``service``, on loopback."""

    class NameServer(socketserver.BaseRequestHandler):
        def handle(self) -> None:
            """Answer one datagram."""
            query, answering = self.request
            answering.sendto(known.answer(query), self.client_address)

    with socketserver.ThreadingUDPServer(("127.0.0.1", 0), NameServer) as server:
        known = Names(int(server.server_address[1]), list(addresses))
        threading.Thread(target=server.serve_forever, daemon=True).start()
        yield known
        server.shutdown()


@dataclass(frozen=True, slots=True)
class Got:
    """What the proxy answered."""

    status: int
    body: bytes
    headers: dict[str, str]


@dataclass(slots=True)
class Proxied:
    """The proxy: its ports, its folder, and what it wrote."""

    port: int
    plain_port: int
    folder: Path

    @property
    def log(self) -> str:
        """All that nginx and its script have written."""
        return (self.folder / "log").read_text(encoding="utf-8", errors="replace")

    def get(self, path: str = "/v1/quotes", body: bytes | None = None, **headers: str) -> Got:
        """Ask through the proxy, with TLS."""
        sent = {**(TYPE if body is not None else {}), **headers}
        request = urllib.request.Request(f"https://127.0.0.1:{self.port}{path}", body, sent)
        try:
            with urllib.request.urlopen(request, timeout=60, context=UNSIGNED) as got:  # noqa: S310  our own loopback address
                return _got(got.status, got.read(), got.headers)
        except urllib.error.HTTPError as refused:
            return _got(refused.code, refused.read(), refused.headers)

    def quote(self) -> Got:
        """Ask for the example order's quote."""
        return self.get(body=ORDER)

    def begins(self, text: bytes) -> ssl.SSLSocket:
        """Open a connection, send the beginning of a request and leave it at that."""
        plain = socket.create_connection(("127.0.0.1", self.port), timeout=30)
        caller = UNSIGNED.wrap_socket(plain)
        caller.sendall(text)
        return caller

    def raw(self, text: bytes) -> bytes:
        """Send bytes as they are and return all that comes back."""
        with self.begins(text) as caller:
            return read_all(caller)


def read_all(caller: socket.socket) -> bytes:
    """Read until the other side closes."""
    parts = []
    with suppress(OSError):
        while part := caller.recv(65536):
            parts.append(part)
    return b"".join(parts)


def _got(status: int, body: bytes, headers: Any) -> Got:  # noqa: ANN401  urllib's
    return Got(status, body, {name.lower(): value for name, value in headers.items()})


def _written(folder: Path, ports: tuple[int, int], upstream_port: int, resolver: str) -> None:
    """Write the shipped files with this machine's places and ports in theirs."""
    plain_port, port = ports
    cache = folder / "cache"
    cache.mkdir(exist_ok=True)
    (folder / "resolv.conf").write_text(f"search x\nnameserver {resolver}\n", encoding="utf-8")
    for name in SHIPPED:
        text = (ROOT / "docker" / name).read_text(encoding="utf-8")
        text = text.replace("/tmp/", f"{folder}/")  # noqa: S108 - the container's
        text = text.replace("/etc/letsencrypt/live/ledgerstone", str(folder))
        text = text.replace("/etc/nginx/ledgerstone-", f"{folder}/nginx-")
        text = text.replace("/var/cache/ledgerstone", str(cache))
        text = text.replace("/etc/resolv.conf", str(folder / "resolv.conf"))
        text = text.replace("/srv/web", str(ROOT / "web"))
        text = text.replace("service:8000", f"service:{upstream_port}").replace(
            "5s ipv6", "1s ipv6"
        )
        text = re.sub(r"listen 80\b", f"listen 127.0.0.1:{plain_port}", text)
        text = re.sub(r"listen 443\b", f"listen 127.0.0.1:{port}", text)
        text = text.replace("[::]:80", f"[::1]:{plain_port}").replace("[::]:443", f"[::1]:{port}")
        settings = f"-c {folder}/nginx.conf"
        text = text.replace(
            "nginx -g 'daemon off;'", f"nginx {settings} -g 'daemon off; user root;'"
        )
        text = text.replace("nginx -s", f"nginx {settings} -s")
        (folder / name).write_text(text, encoding="utf-8")


@contextmanager
def proxied(folder: Path, upstream_port: int, known: Names, **more: str) -> Iterator[Proxied]:
    """Run the proxy before whatever answers as ``service`` at a port.

    Parameters
    ----------
    more
        Texts of nginx.conf, and what stands in their place for this run.
    """
    assert shutil.which("nginx"), "these tests need nginx: tests/run brings it"
    subprocess.run(CERTIFICATE.split(), cwd=folder, check=True, capture_output=True)
    ports = free_port(), free_port()
    _written(folder, ports, upstream_port, f"127.0.0.1:{known.port}")
    main = folder / "nginx.conf"
    for was, is_now in more.items():
        text = main.read_text(encoding="utf-8")
        assert was in text
        main.write_text(text.replace(was, is_now), encoding="utf-8")
    with (folder / "log").open("wb") as log:
        nginx = subprocess.Popen(
            ["sh", folder / "proxy-start"], stdout=log, stderr=log, start_new_session=True
        )
    running = Proxied(ports[1], ports[0], folder)
    try:
        wait_for(lambda: _listens(running.port) or nginx.poll())
        assert nginx.poll() is None, running.log
        yield running
    finally:
        nginx.send_signal(signal.SIGTERM)
        nginx.wait(timeout=20)
        with suppress(ProcessLookupError):
            os.killpg(nginx.pid, signal.SIGTERM)  # what watches for a certificate


def _listens(port: int) -> bool:
    with suppress(OSError):
        socket.create_connection(("127.0.0.1", port), timeout=1).close()
        return True
    return False


@dataclass(slots=True)
class Upstream:
    """A server behind the proxy that answers everything alike, and notes what it was asked."""

    asked: list[str] = field(default_factory=list)


@contextmanager
def upstream(
    address: str, port: int, headers: Sequence[tuple[str, str]] = (), *, drops: bool = False
) -> Iterator[Upstream]:
    """Serve on loopback; where it drops, each connection ends without an answer."""
    noted = Upstream()

    class UpstreamHandler(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            """Note what was asked for, and answer it."""
            noted.asked.append(self.path)
            self.rfile.read(int(self.headers.get("Content-Length", 0)))
            if drops:
                return
            body = self.path.encode()
            self.send_response(200)
            for name, value in (*headers, ("Content-Length", str(len(body)))):
                self.send_header(name, value)
            self.end_headers()
            self.wfile.write(body)

        do_POST = do_GET  # noqa: N815  http.server's name

        def log_message(self, *_: object) -> None:
            """Say nothing."""

    with ThreadingHTTPServer((address, port), UpstreamHandler) as server:
        threading.Thread(target=server.serve_forever, daemon=True).start()
        yield noted
        server.shutdown()
