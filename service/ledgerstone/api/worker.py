"""The server's worker: deadlines for reading, problem documents for bad requests, private logs.

gunicorn's own synchronous worker has no deadline for reading, answers bad requests in HTML, and
logs client addresses. A quote is bound by the processor, where threads gain nothing; so the worker
stays synchronous.
"""

from __future__ import annotations

import json
import logging
import select
import socket
import time
import uuid
from contextlib import suppress
from typing import Any, Final

from gunicorn.glogging import Logger
from gunicorn.http import errors, get_parser
from gunicorn.workers.sync import SyncWorker

from ledgerstone.api.logs import REQUESTS, start
from ledgerstone.codec.problem_kinds import BY_STATUS, PROBLEMS
from ledgerstone.wording import english

# Browsers open connections in advance and leave them idle. A real request follows at once, across
# the world in less than half a second.
NEXT_REQUEST_S: Final = 1.5
HEADERS_S: Final = 3.0  # for 8 kB
WHOLE_S: Final = 6.0  # for 64 kB of body too
SEND_S: Final = 8.0  # for one piece of an answer
LINGER_S: Final = 0.3  # to read the rest of a request, so that the answer is not reset
_MAX_LINGERED: Final = 65536
_log = logging.getLogger("ledgerstone")
_requests = logging.getLogger(REQUESTS)


class TooSlow(TimeoutError):
    """A request was not complete by its deadline."""


_STATUS: Final = (
    (errors.LimitRequestLine, 414),
    (errors.LimitRequestHeaders, 431),
    (errors.ExpectationFailed, 417),
    (errors.UnsupportedTransferCoding, 501),
    (errors.ParseException, 400),
    (TooSlow, 408),
)


class TimedSocket:
    """A connection with a deadline for the whole request, however slowly the bytes arrive.

    Parameters
    ----------
    connection
        The connection to wrap.
    """

    def __init__(self, connection: socket.socket) -> None:
        self._connection = connection
        self._began_s = time.monotonic()
        self._until_s = self._began_s + HEADERS_S

    def allow_body(self) -> None:
        """Extend the deadline to that of the whole request, once its headers are read."""
        self._until_s = self._began_s + WHOLE_S

    def recv(self, size: int) -> bytes:
        """Read what has arrived.

        Raises
        ------
        TooSlow
            The deadline has passed.
        """
        try:
            self._connection.settimeout(max(1e-3, self._until_s - time.monotonic()))
            return self._connection.recv(size)
        except TimeoutError:
            raise TooSlow from None
        finally:
            self._connection.settimeout(SEND_S)

    def is_gone(self) -> bool:
        """Return whether the peer has closed the connection: no caller waits for the answer."""
        try:
            self._connection.settimeout(0.0)
            return not self._connection.recv(1, socket.MSG_PEEK)
        except BlockingIOError:
            return False
        except OSError:
            return True
        finally:
            self._connection.settimeout(SEND_S)

    def __getattr__(self, name: str) -> Any:  # noqa: ANN401  all else is the connection's
        return getattr(self._connection, name)


class ServerLog(Logger):  # type: ignore[misc]  # gunicorn has no types
    """gunicorn's log in the service's format, also after a reload, which configures it again."""

    def setup(self, cfg: object) -> None:
        """Have gunicorn set its log up, and take it over."""
        super().setup(cfg)
        start()


class AnsweringWorker(SyncWorker):  # type: ignore[misc]  # gunicorn has no types
    """Answers one request of each connection, or reports its fault, and closes it."""

    def handle(self, listener: object, client: socket.socket, addr: object) -> None:
        """Answer the one request of a connection; close an idle one."""
        ready, _, _ = select.select([client], [], [], NEXT_REQUEST_S)
        if not ready:
            client.close()
            return
        request = None
        timed = TimedSocket(client)
        client.settimeout(SEND_S)
        try:
            request = next(get_parser(self.cfg, timed, addr))
            timed.allow_body()
            self.handle_request(listener, request, timed, addr)
        except (errors.NoMoreData, StopIteration):
            pass  # the client disconnected, or the answer had begun when it failed
        except BaseException as fault:  # noqa: BLE001 - an abort by the arbiter is one
            self.handle_error(request, client, addr, fault)
        finally:
            _close(client)

    def handle_error(
        self,
        req: object,  # noqa: ARG002 - gunicorn names all four
        client: socket.socket,
        addr: object,  # noqa: ARG002
        exc: BaseException,
    ) -> None:
        """Answer with a problem document, and log the fault by its kind and place only."""
        if isinstance(exc, OSError) and not isinstance(exc, TooSlow):
            return  # the client has disconnected, or reads too slowly
        status = next((status for kind, status in _STATUS if isinstance(exc, kind)), 500)
        number = str(uuid.uuid4())
        if status == 500:
            _log.error("request %s failed in the server", number, exc_info=exc)
        _requests.info("", extra={"fields": {"id": number, "route": None, "status": status}})
        with suppress(OSError):
            client.settimeout(0.0)
            client.send(_problem(status, number))


def _problem(status: int, number: str) -> bytes:
    """Write a whole answer: a problem document and its headers."""
    kind = BY_STATUS[status]
    body = json.dumps(
        {
            "type": PROBLEMS + kind.name,
            "title": english(kind.title),
            "status": status,
            "detail": english(kind.usual),
            "instance": f"urn:uuid:{number}",
        }
    ).encode()
    lines = (
        f"HTTP/1.1 {status} {english(kind.title)}",
        "Connection: close",
        "Content-Type: application/problem+json",
        f"Content-Length: {len(body)}",
        "Cache-Control: no-store",
        "Content-Security-Policy: default-src 'none'; frame-ancestors 'none'",
        "X-Content-Type-Options: nosniff",
        f"X-Request-Id: {number}",
    )
    return "\r\n".join((*lines, "", "")).encode() + body


def _close(client: socket.socket) -> None:
    """Close a connection, reading on for a moment so that the answer arrives (RFC 9112, 9.6)."""
    until_s, read = time.monotonic() + LINGER_S, 0
    with suppress(OSError):
        client.shutdown(socket.SHUT_WR)
        while read < _MAX_LINGERED and (left_s := until_s - time.monotonic()) > 0:
            client.settimeout(left_s)
            part = client.recv(4096)
            if not part:
                break
            read += len(part)
    client.close()
