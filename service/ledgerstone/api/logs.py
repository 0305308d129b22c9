"""Logs: one line of JSON a request, by its id; never a body, a link, a name or an address.

A line has the route's pattern, not the path, since a path can be a link. An internal fault is
logged by its kind and place in the code, never its message, since that can quote an order. Of a
library's records, the server's included, only the fixed words and numbers are kept.
"""

from __future__ import annotations

import json
import logging
import os
import sys
import threading
import time
import traceback
from datetime import UTC, datetime
from typing import Any, Final

from flask import Flask, Response, g, request

from ledgerstone.api.problems import request_id
from ledgerstone.media_types import PROBLEM_TYPE

LOGGER_NAME: Final = "ledgerstone"
REQUESTS: Final = "ledgerstone.request"
_log = logging.getLogger(REQUESTS)
_STDERR: Final = 2
_MAX_FRAMES: Final = 12


class JSONLines(logging.Formatter):
    """Writes a record as one line of JSON."""

    def format(self, record: logging.LogRecord) -> str:
        """Write one record."""
        when = datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds")
        entry: dict[str, Any] = {"time": when, "level": record.levelname.lower()}
        fields = getattr(record, "fields", None)
        entry |= fields if fields is not None else {"says": _words(record)}
        if record.exc_info and record.exc_info[1] is not None:
            entry |= _what_failed(record.exc_info[1])
        return json.dumps(entry, ensure_ascii=True)


def _words(record: logging.LogRecord) -> str:
    """Return a record's message; of a library's, only its format and the numbers in it."""
    if record.name.partition(".")[0] == LOGGER_NAME:
        return record.getMessage()
    arguments = record.args if isinstance(record.args, tuple) else ()
    shown = tuple(argument if isinstance(argument, int | float) else "…" for argument in arguments)
    try:
        return str(record.msg) % shown if shown else str(record.msg)
    except (TypeError, ValueError):
        return "…"


def _what_failed(fault: BaseException) -> dict[str, Any]:
    """Return the kind of a fault and where it arose, without its message."""
    frames = traceback.extract_tb(fault.__traceback__)[-_MAX_FRAMES:]
    at = [f"{os.path.basename(f.filename)}:{f.lineno} {f.name}" for f in frames]  # noqa: PTH119  a name, no path to walk
    return {"error": type(fault).__name__, "at": at}


class UnbufferedHandler(logging.Handler):
    """Writes each line unbuffered to a file descriptor; a full disk loses only that line."""

    def __init__(self, descriptor: int = _STDERR) -> None:
        super().__init__()
        self.descriptor = descriptor
        self.lost = 0
        self.setFormatter(JSONLines())

    def emit(self, record: logging.LogRecord) -> None:
        """Write one record; one that cannot be written is counted and dropped."""
        try:
            os.write(self.descriptor, f"{self.format(record)}\n".encode())
        except OSError:
            self.lost += 1


def start() -> None:
    """Send our records, and those of libraries and the interpreter, to standard error.

    An uncaught exception is logged like any other fault: by kind and place.
    """
    handler = UnbufferedHandler()
    for name in ("", LOGGER_NAME, "gunicorn.error"):
        logger = logging.getLogger(name)
        logger.handlers = [handler]
        logger.propagate = False
    logging.getLogger(LOGGER_NAME).setLevel(logging.INFO)
    sys.unraisablehook = _uncaught
    threading.excepthook = _uncaught


def _uncaught(what: sys.UnraisableHookArgs | threading.ExceptHookArgs) -> None:
    fault = what.exc_value
    where = (type(fault), fault, what.exc_traceback) if fault is not None else None
    logging.getLogger(LOGGER_NAME).error(
        "something failed where nothing waits for it", exc_info=where
    )


def register(app: Flask) -> None:
    """Log one line a request."""

    @app.before_request
    def _begin() -> None:
        g.began_s = time.perf_counter()

    @app.after_request
    def _line(response: Response) -> Response:
        _log.info("", extra={"fields": _request_fields(response)})
        return response


def _request_fields(response: Response) -> dict[str, Any]:
    rule = request.url_rule
    fields: dict[str, Any] = {
        "id": request_id(),
        "method": request.method if request.method in _METHODS else "other",
        "route": rule.rule if rule is not None else None,
        "status": response.status_code,
        "ms": round(1e3 * (time.perf_counter() - g.get("began_s", time.perf_counter())), 1),
        "bytes_in": request.content_length,
        "bytes_out": response.content_length,
    }
    if response.mimetype == PROBLEM_TYPE:
        fields["problem"] = g.get("problem")
    return fields


_METHODS: Final = ("GET", "HEAD", "POST", "OPTIONS", "PUT", "DELETE", "PATCH")
