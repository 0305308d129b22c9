"""Rate limits: a client that asks too often, and anyone while the queue is too long."""

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

from ledgerstone.api.lane import ActiveClients
from ledgerstone.api.problems import retry_later
from ledgerstone.message import Message
from ledgerstone.settings import Settings

MAX_CLIENTS: Final = 4096
# Cheap calls that report the state of the service: never limited.
FREE: Final = ("/v1/health/", "/v1/choices", "/v1/openapi.yaml", "/metrics")
_BUSY_S = 2
PRICED_CALLS: Final = (("POST", "/v1/quotes"), ("POST", "/v1/drawings"))
_ONE_EACH_S = 1
_FORWARDED: Final = ("Forwarded", "X-Forwarded-For", "X-Real-IP", "Via")
UNDECLARED_PROXY: Final = (
    "A proxy on this machine forwards requests, and LEDGERSTONE_PROXIES does not declare it:"
    " its callers share one address, and have no rate limits of their own."
)
_log = logging.getLogger("ledgerstone")

# struct tcp_info of Linux (include/uapi/linux/tcp.h): eight bytes, then 32-bit numbers. On a
# listening socket, tcpi_unacked is the number of connections that wait to be accepted.
_UNACKED_AT: Final = 8 + 4 * 4


class Listener(Protocol):
    """A listening socket."""

    def getsockopt(self, level: int, option: int, length: int, /) -> bytes:
        """Return a socket's option."""


@dataclass(slots=True)
class Buckets:
    """Token buckets, one a client: a request takes a token, and tokens return with time.

    Attributes
    ----------
    rate_per_s
        Tokens that return each second.
    most
        Size of a bucket: the largest burst.
    """

    rate_per_s: float
    most: int
    _left: OrderedDict[str, tuple[float, float]] = field(default_factory=OrderedDict)

    def wait_s(self, client: str, now_s: float) -> float:
        """Take a token and return 0, or return the seconds until there is one.

        If there are too many clients, the one idle the longest is dropped: its bucket is full.
        """
        left = self.left(client, now_s)
        waits = left < 1.0
        self._left.pop(client, None)
        self._left[client] = (left if waits else left - 1.0, now_s)
        if len(self._left) > MAX_CLIENTS:
            self._left.popitem(last=False)
        return (1.0 - left) / self.rate_per_s if waits else 0.0

    def left(self, client: str, now_s: float) -> float:
        """Return how many tokens a client has, without taking one."""
        left, then_s = self._left.get(client, (float(self.most), now_s))
        return min(self.most, left + max(0.0, now_s - then_s) * self.rate_per_s)


@dataclass(slots=True)
class Gate:
    """Refuses requests while more than ``most_waiting`` connections wait to be accepted.

    A refusal costs a millisecond, so the queue is short again at once, and an accepted request has
    waited no longer than the queue is long. All workers accept from one queue, so one gate serves
    all of them.
    """

    most_waiting: int
    waiting: Callable[[], int] = lambda: 0

    def watch(self, listeners: Sequence[Listener]) -> None:
        """Count the connections that wait at these sockets from now on."""
        self.waiting = lambda: sum(map(waiting_at, listeners))

    def is_full(self) -> bool:
        """Return whether too many wait."""
        return self.waiting() > self.most_waiting


def waiting_at(listener: Listener) -> int:
    """Return how many connections wait at a socket; 0 if the system does not report it."""
    option = getattr(socket, "TCP_INFO", None)
    if option is None:
        return 0
    try:
        info = listener.getsockopt(socket.IPPROTO_TCP, option, 104)
    except OSError:
        return 0
    return int(struct.unpack_from("I", info, _UNACKED_AT)[0])


def client_of(address: str | None) -> str | None:
    """Return the client of an address: a whole /64 of IPv6 is one; None for this machine.

    A request from this machine is the operator's: only the gate, the lane, the request's deadline
    and its budget limit it.
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
    """Return whether a proxy has forwarded the request, by its headers."""
    return any(name in request.headers for name in _FORWARDED)


def _warn_of_proxies(app: Flask) -> None:
    """Log once that a proxy on this machine is not declared in the settings.

    All its callers then have this machine's address, and none has a rate limit of its own.
    """
    warned = False

    @app.before_request
    def _warn_once() -> None:
        nonlocal warned
        if not warned and client_of(request.remote_addr) is None and is_forwarded():
            warned = True
            _log.warning("%s", UNDECLARED_PROXY)


def register(app: Flask, settings: Settings, gate: Gate, active_clients: ActiveClients) -> None:
    """Limit requests before anything of their body is read."""
    rate = settings.rate_per_s
    if not settings.proxies:
        _warn_of_proxies(app)
    buckets = Buckets(rate, settings.burst) if rate else None

    @app.before_request
    def _limited() -> Response | None:
        if not _is_limited():
            return None
        client = client_of(request.remote_addr) if buckets else None
        wait_s = buckets.wait_s(client, time.monotonic()) if buckets and client else 0.0
        if wait_s > 0.0:
            seconds = math.ceil(wait_s)
            return retry_later(429, Message("asked-too-often", seconds=seconds), seconds)
        if gate.is_full():
            return retry_later(503, Message("asked-by-too-many", seconds=_BUSY_S), _BUSY_S)
        return _one_at_a_time(client_of(request.remote_addr), gate, active_clients)

    @app.teardown_request
    def _done(_fault: BaseException | None) -> None:
        active_clients.end()


def _is_limited() -> bool:
    """Return whether the rate limit applies: a costly call, or the page's form."""
    if request.method == "OPTIONS":
        return False
    return _is_form() or (request.path.startswith("/v1/") and not request.path.startswith(FREE))


def _is_priced() -> bool:
    return (request.method, request.path) in PRICED_CALLS or _is_form()


def _is_form() -> bool:
    """Return whether the request is the page's form, which is an order as well."""
    return request.method == "POST" and not request.path.startswith("/v1/")


def _one_at_a_time(
    client: str | None, gate: Gate, active_clients: ActiveClients
) -> Response | None:
    """While others wait, price one order of each client at a time.

    A page that asks again has closed its earlier request, which is soon abandoned.
    """
    if client is None or not _is_priced():
        return None
    if gate.waiting() and active_clients.elsewhere(client):
        return retry_later(429, Message("asked-one-at-a-time", seconds=_ONE_EACH_S), _ONE_EACH_S)
    active_clients.begin(client)
    return None
