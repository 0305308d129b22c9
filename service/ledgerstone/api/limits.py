"""Who is asked to wait: a client that asks too often, and anyone while too many wait already."""

from __future__ import annotations

import ipaddress
import logging
import math
import socket
import struct
import time
from collections import OrderedDict
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Final, Protocol

from flask import Flask, Response, request

from ledgerstone.api.lane import AtWork
from ledgerstone.api.problems import problem
from ledgerstone.message import Message
from ledgerstone.settings import Settings

MOST_CLIENTS: Final = 4096
# Calls that cost next to nothing, and that tell how the service is: they are never held up.
FREE: Final = ("/v1/health/", "/v1/choices", "/v1/openapi.yaml", "/metrics")
_BUSY_S = 2
PRICED: Final = (("POST", "/v1/quotes"), ("POST", "/v1/drawings"))
_ONE_EACH_S = 1
_FORWARDED: Final = ("Forwarded", "X-Forwarded-For", "X-Real-IP", "Via")
UNTOLD: Final = (
    "A proxy on this machine forwards requests, and LEDGERSTONE_PROXIES does not say so:"
    " its callers are not told apart, and none is limited by himself."
)
_log = logging.getLogger("ledgerstone")

# struct tcp_info of Linux (include/uapi/linux/tcp.h): eight bytes, then 32-bit numbers. On a
# socket that listens, tcpi_unacked is how many connections wait to be accepted.
_UNACKED_AT: Final = 8 + 4 * 4


class Listener(Protocol):
    """A socket that listens."""

    def getsockopt(self, level: int, option: int, length: int, /) -> bytes:
        """Return a socket's option."""


@dataclass(slots=True)
class Buckets:
    """One bucket of tokens a client: a request takes one, and time brings them back.

    Attributes
    ----------
    rate_per_s
        How many come back each second.
    most
        How many a bucket holds, which is how many may be asked at once.
    """

    rate_per_s: float
    most: int
    _left: OrderedDict[str, tuple[float, float]] = field(default_factory=OrderedDict)

    def wait_s(self, client: str, now_s: float) -> float:
        """Take a token and return 0, or return how long the client waits for one.

        The client that was longest quiet is forgotten where there are too many: it is full again.
        """
        left = self.left(client, now_s)
        waits = left < 1.0
        self._left.pop(client, None)
        self._left[client] = (left if waits else left - 1.0, now_s)
        if len(self._left) > MOST_CLIENTS:
            self._left.popitem(last=False)
        return (1.0 - left) / self.rate_per_s if waits else 0.0

    def left(self, client: str, now_s: float) -> float:
        """Return how many tokens a client has, none of them taken."""
        left, then_s = self._left.get(client, (float(self.most), now_s))
        return min(self.most, left + max(0.0, now_s - then_s) * self.rate_per_s)


@dataclass(slots=True)
class Gate:
    """Turns requests away while more than ``most_waiting`` connections wait to be accepted.

    What is turned away costs a millisecond, so the queue is short again at once, and what is let
    in has waited no longer than the queue is. All workers accept from one queue, so it is one
    gate for all of them.
    """

    most_waiting: int
    waiting: Callable[[], int] = lambda: 0

    def watch(self, listeners: Sequence[Listener]) -> None:
        """Count from now on what waits at these sockets."""
        self.waiting = lambda: sum(map(waiting_at, listeners))

    def is_full(self) -> bool:
        """Say whether too many wait."""
        return self.waiting() > self.most_waiting


def waiting_at(listener: Listener) -> int:
    """Return how many connections wait at a socket; 0 where the machine does not tell."""
    option = getattr(socket, "TCP_INFO", None)
    if option is None:
        return 0
    try:
        info = listener.getsockopt(socket.IPPROTO_TCP, option, 104)
    except OSError:
        return 0
    return int(struct.unpack_from("I", info, _UNACKED_AT)[0])


def client_of(address: str | None) -> str | None:
    """Name the client at an address: a whole /64 of IPv6 is one; this machine itself is none.

    Whoever asks from this machine is who runs it, and is held up by what holds for all together
    alone: the gate, the lane, a request's deadline and its budget.
    """
    try:
        ip = ipaddress.ip_address(address or "")
    except ValueError:
        return "unknown"
    if isinstance(ip, ipaddress.IPv6Address):
        ip = ip.ipv4_mapped or ip
    if ip.is_loopback:
        return None
    if isinstance(ip, ipaddress.IPv6Address):
        return str(ipaddress.ip_network((ip, 64), strict=False))
    return str(ip)


def is_forwarded() -> bool:
    """Say whether the request names somebody it was forwarded for: a proxy stands before us."""
    return any(name in request.headers for name in _FORWARDED)


def _tell_of_proxies(app: Flask) -> None:
    """Log once that this machine forwards for others, of whom we were not told.

    They all come from its own address, and so none of them is limited by himself.
    """
    told = False

    @app.before_request
    def _untold() -> None:
        nonlocal told
        if not told and client_of(request.remote_addr) is None and is_forwarded():
            told = True
            _log.warning("%s", UNTOLD)


def register(app: Flask, settings: Settings, gate: Gate, at_work: AtWork) -> None:
    """Ask to wait before anything of a request is read."""
    rate = settings.rate_per_s
    if not settings.proxies:
        _tell_of_proxies(app)
    buckets = Buckets(rate, settings.burst) if rate else None

    @app.before_request
    def _held_up() -> Response | None:
        if request.method == "OPTIONS" or not request.path.startswith("/v1/"):
            return None
        if request.path.startswith(FREE):
            return None
        client = client_of(request.remote_addr) if buckets else None
        wait_s = buckets.wait_s(client, time.monotonic()) if buckets and client else 0.0
        if wait_s > 0.0:
            seconds = math.ceil(wait_s)
            return waits(429, Message("asked-too-often", seconds=seconds), seconds)
        if gate.is_full():
            return waits(503, Message("asked-by-too-many", seconds=_BUSY_S), _BUSY_S)
        return _one_at_a_time(client_of(request.remote_addr), gate, at_work)

    @app.teardown_request
    def _done(_fault: BaseException | None) -> None:
        at_work.end()


def _one_at_a_time(client: str | None, gate: Gate, at_work: AtWork) -> Response | None:
    """While others wait, price one order of each caller at a time; alone, it may have every worker.

    A page that asks again has hung up on what it asked before, and that is soon left off.
    """
    if client is None or (request.method, request.path) not in PRICED:
        return None
    if gate.waiting() and at_work.elsewhere(client):
        return waits(429, Message("asked-one-at-a-time", seconds=_ONE_EACH_S), _ONE_EACH_S)
    at_work.begin(client)
    return None


def waits(status: int, why: Message, wait_s: int) -> Response:
    """Answer that a client should wait, and how long."""
    answer = problem(status, why)
    answer.headers["Retry-After"] = str(wait_s)
    return answer
